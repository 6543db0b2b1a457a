// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "drawing/marks.h"
#include "drawing/page_furniture.h"
#include "drawing/sheet_blocks.h"
#include "drawing/sheet_layout.h"
#include "drawing/sheets.h"
#include "drawing/text_width.h"
#include "job/room_geometry.h"
#include "survey/measuring_tasks.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

const std::string kSection = "To be measured on site";

/// Paper round the sketch for letters and lengths, and how far those stand off the walls. Millimetres.
constexpr double kAround = 16;
constexpr double kLetterOff = 6;
constexpr double kLengthOff = 4;
constexpr double kHeightOff = 5;  ///< a height's number, off the place where it is read
constexpr double kCornerLetter = 5;
constexpr double kJamb = 1.5;  ///< half the stroke at each end of an opening
/// A box that a figure is written into by hand: 7 mm is a line of writing paper.
constexpr double kBoxHeight = 7;
constexpr double kBoxWidth = 34;
constexpr double kSketchBoxWidth = 18;
constexpr double kRowHeight = kBoxHeight + 2;
constexpr double kNumberWidth = 8;
constexpr double kWhyWidth = 36;
constexpr double kPad = 3;

/// Takes world metres to the page: centred in the area, as large as fits.
Placing sketchOf(const Job& job, const PageBox& area) {
  const auto box = planBox(job.room);
  const Vec2 space = area.sizes() - 2 * Vec2(kAround, kAround);
  Placing placing;
  placing.scale = (space.array() / box->size().array()).minCoeff();
  placing.offset = area.center() - placing.scale * box->centre();
  return placing;
}

bool asksFor(const MeasuringTask& task, const WallLine& line) {
  return task.what == "wall " + line.name;
}

/// The middle of the box for a wall's length on the sketch, outside of the room.
Vec2 boxPlace(const WallLine& line, const Placing& sketch) {
  // The box lies level, so it must stand off by as much of it as points at the wall.
  const double reach =
      std::abs(line.inward.x()) * kSketchBoxWidth / 2 + std::abs(line.inward.y()) * kBoxHeight / 2;
  return sketch(line.at(line.length / 2)) - (reach + 1) * line.inward;
}

Path emptyBox(const Vec2& centre, double width) {
  const Vec2 half(width / 2, kBoxHeight / 2);
  return rectangle(Layer::Labels, {centre - half, centre + half});
}

Text label(const Vec2& middle, std::string text, double height) {
  Text mark = textAt(Layer::Labels, middle - Vec2(0, height / 2), std::move(text), TextAnchor::Centre);
  mark.heightMm = height;
  mark.onGround = true;
  return mark;
}

/// A label that runs along a wall.
Text alongWall(const Vec2& middle, std::string text, double height, const Vec2& along) {
  const double angle = readableAngle(std::atan2(along.y(), along.x()));
  Text mark = label(middle, std::move(text), height);
  mark.angle = angle;
  mark.at = middle - height / 2 * Vec2(-std::sin(angle), std::cos(angle));
  return mark;
}

/// Outside the room, but inside at a corner that points into it: there the walls' lengths stand outside.
Vec2 letterPlace(const std::vector<WallLine>& lines, std::size_t corner, const Placing& sketch) {
  const WallLine& line = lines[corner];
  const WallLine& before = lines[(corner + lines.size() - 1) % lines.size()];
  const Vec2 inward = line.inward + before.inward;
  const double sense = cross(before.along, line.along) < 0 ? 1 : -1;
  const Vec2 away = inward.norm() > 1e-6 ? Vec2(inward.normalized()) : line.inward;
  return sketch(line.start) + sense * kLetterOff * away;
}

void addWalls(Linework& marks, const Job& job, const std::vector<MeasuringTask>& tasks,
              const Placing& sketch) {
  const std::vector<WallLine> lines = wallLines(job.room);
  Ring ring;
  for (const WallLine& line : lines) ring.push_back(sketch(line.start));
  marks.paths.push_back(polygon(Layer::Walls, ring));
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const WallLine& line = lines[i];
    marks.texts.push_back(label(letterPlace(lines, i, sketch), line.name, kCornerLetter));
    marks.texts.back().bold = true;
    const Vec2 middle = sketch(line.at(line.length / 2));
    const auto asks = [&](const MeasuringTask& task) { return asksFor(task, line); };
    if (std::any_of(tasks.begin(), tasks.end(), asks)) {
      marks.paths.push_back(emptyBox(boxPlace(line, sketch), kSketchBoxWidth));
    } else {
      marks.texts.push_back(alongWall(middle - kLengthOff * line.inward, formatLength(line.length, job.units),
                                      kLabelText, line.along));
    }
  }
  for (const Opening& opening : job.room.openings) {
    const auto place = openingPlace(job.room, opening.id);
    if (!place) continue;
    for (const Vec2& jamb : {place->start, place->end})
      marks.paths.push_back(polyline(
          Layer::Openings, {sketch(jamb) - kJamb * place->inward, sketch(jamb) + kJamb * place->inward}));
    marks.texts.push_back(alongWall(sketch(place->middle()) + kLengthOff * place->inward, opening.name,
                                    kBodyText, leftOf(place->inward)));
  }
}

/// Where the number of a task stands on the sketch: a wall's in the corner of its box.
Vec2 numberPlace(const MeasuringTask& task, const std::vector<WallLine>& lines, const Placing& sketch) {
  const auto wall =
      std::find_if(lines.begin(), lines.end(), [&](const WallLine& line) { return asksFor(task, line); });
  if (wall != lines.end())
    return boxPlace(*wall, sketch) + Vec2(kLabelText - kSketchBoxWidth / 2, kBoxHeight / 2 - kLabelText);
  const Vec2 from = sketch(*task.from);
  // Clear of where two diagonals cross, which may be the middle of the room.
  if (!task.to) return from + Vec2(0, kHeightOff);
  return from + 0.4 * (sketch(*task.to) - from);
}

/// The number of each task where it is to be measured, those of one place in one text, and a dashed line
/// along diagonals.
void addTasks(Linework& marks, const Job& job, const std::vector<MeasuringTask>& tasks,
              const Placing& sketch) {
  const std::vector<WallLine> lines = wallLines(job.room);
  std::vector<Text> numbers;
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    const MeasuringTask& task = tasks[i];
    if (!task.from) continue;
    if (task.what.starts_with("diagonal")) {
      Path line = polyline(Layer::Survey, {sketch(*task.from), sketch(task.to.value_or(*task.from))});
      line.dash = LineDash::Dashed;
      marks.paths.push_back(line);
    }
    Text number = label(numberPlace(task, lines, sketch), std::to_string(i + 1), kLabelText);
    const auto here = std::find_if(numbers.begin(), numbers.end(), [&](const Text& other) {
      return (other.at - number.at).norm() < kLabelText;
    });
    if (here == numbers.end())
      numbers.push_back(std::move(number));
    else
      here->text += ", " + number.text;
  }
  marks.texts.insert(marks.texts.end(), numbers.begin(), numbers.end());
}

Text cell(double x, double baseline, const std::string& text, double width) {
  Text mark = textAt(Layer::Labels, {x, baseline}, fitText(text, kLabelText, width, FontFace::Regular));
  mark.heightMm = kLabelText;
  return mark;
}

Block taskRow(std::size_t number, const MeasuringTask& task, double width) {
  Block row;
  row.section = kSection;
  row.heightMm = kRowHeight;
  const double baseline = -kRowHeight / 2 - kLabelText / 2;
  const double boxAt = width - kBoxWidth;
  const double whyAt = boxAt - kWhyWidth;
  row.marks.texts = {cell(0, baseline, std::to_string(number), kNumberWidth),
                     cell(kNumberWidth, baseline, task.what, whyAt - kNumberWidth - 2),
                     cell(whyAt, baseline, task.why, kWhyWidth - 2)};
  row.marks.paths.push_back(emptyBox({width - kBoxWidth / 2, -kRowHeight / 2}, kBoxWidth));
  return row;
}

std::vector<Block> taskBlocks(const std::vector<MeasuringTask>& tasks, double width) {
  std::vector<Block> blocks{headingBlock(kSection, width)};
  if (tasks.empty()) {
    blocks.push_back(paragraphBlock("Nothing: every figure of this room has been read.", width));
    return blocks;
  }
  for (std::size_t i = 0; i < tasks.size(); ++i) blocks.push_back(taskRow(i + 1, tasks[i], width));
  blocks.push_back(
      paragraphBlock("Write each figure as read, with its unit, and T for tape or L for laser beside it. "
                     "Numbers on the sketch "
                     "say where. Letters are corners; wall A runs from corner A to corner B.",
                     width));
  return blocks;
}

/// Where sketch and table go on the first page.
struct Areas {
  PageBox sketch;
  PageBox table;
};

/// Beside each other where the paper has a column of text; else the table below, as high as it must be.
Areas areasOf(const SheetLayout& layout, const std::vector<MeasuringTask>& tasks) {
  if (layout.column) {
    PageBox column = *layout.column;
    column.min().y() = layout.signOff.min().y() + kPad;  // nobody signs a sketch
    return {layout.drawing, column};
  }
  double height = 0;
  for (const Block& block : taskBlocks(tasks, layout.drawing.sizes().x())) height += block.heightMm;
  const double border = std::min(layout.drawing.center().y(), layout.drawing.min().y() + height + kPad);
  Areas areas{layout.drawing, layout.drawing};
  areas.sketch.min().y() = border;
  areas.table.max().y() = border;
  return areas;
}

SheetPage blankPage(const SheetLayout& layout) {
  SheetPage page;
  page.title = "Measuring list";
  page.widthMm = layout.page.sizes().x();
  page.heightMm = layout.page.sizes().y();
  page.marks = borderMarks(layout.frame);
  return page;
}

}  // namespace

/// The room's sketch with corner letters and the lengths that are known, and a numbered box for each figure
/// that is still to be read. A sketch is as large as fits and not to scale, whatever the request says.
Result<std::vector<SheetPage>> makeMeasuringSheet(const SheetInput& input) {
  if (input.job.room.walls.size() < 3) {
    return fail("The room has no walls yet, so there is no sketch to measure by.", {},
                "Trace or type its floor first, as roughly as you like.");
  }
  const SheetLayout layout = layoutOf(input.request.paper, input.request.orientation);
  const std::vector<MeasuringTask> tasks = measuringTasks(input.job);
  const Areas areas = areasOf(layout, tasks);
  const Placing sketch = sketchOf(input.job, areas.sketch);

  const PageMarks tables = flow(taskBlocks(tasks, areas.table.sizes().x()), {{0, areas.table}},
                                [&](std::size_t) { return layout.laterText; });
  std::vector<SheetPage> pages;
  for (const Linework& table : tables) {
    pages.push_back(blankPage(layout));
    pages.back().marks.append(table);
  }
  if (pages.empty()) pages.push_back(blankPage(layout));
  addWalls(pages.front().marks, input.job, tasks, sketch);
  addTasks(pages.front().marks, input.job, tasks, sketch);

  TitleBlock fields = titleBlockOf(input.job, "Measuring list");
  for (std::size_t i = 0; i < pages.size(); ++i) {
    fields.sheet = std::to_string(i + 1) + " of " + std::to_string(pages.size());
    pages[i].marks.append(titleBlockMarks(fields, layout.frame));
  }
  return pages;
}

}  // namespace baywright::detail
