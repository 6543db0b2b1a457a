// SPDX-License-Identifier: Apache-2.0
#include "drawing/screen_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "drawing/ball_marks.h"
#include "drawing/board.h"
#include "drawing/finding_marks.h"
#include "drawing/marks.h"
#include "drawing/screen_light.h"
#include "geometry/polygon_sets.h"
#include "job/thing_lookup.h"
#include "optics/screen_face.h"
#include "units/length_text.h"
#include "units/number_text.h"
#include "units/quantity_text.h"

namespace baywright::detail {
namespace {

using Box = Eigen::AlignedBox2d;

constexpr double kSmallText = 1.8;

Box faceBox(const ViewInput& input) {
  return {Vec2(0, 0), Vec2(input.kit().screen.width, input.kit().screen.height)};
}

void drawSurround(Board& board, const ViewInput& input) {
  const Frame& frame = input.kit().frame;
  const Screen& screen = input.kit().screen;
  const double floor = -screen.bottom;
  const Vec2 low((screen.width - frame.width) / 2, floor);
  board.add(rectangle(Layer::Bay, {low, low + Vec2(frame.width, frame.height)}, frame.id));
  Path face = rectangle(Layer::Bay, faceBox(input), screen.id);
  face.weight = LineWeight::Thick;
  board.add(std::move(face));
  const double beyond = board.mm(6);
  board.add(polyline(Layer::Walls, {low - Vec2(beyond, 0), low + Vec2(frame.width + beyond, 0)}));
}

// The union of outlines, so that limbs that overlap are one shadow.
std::vector<Ring> together(const std::vector<std::vector<Vec2>>& outlines) {
  PolygonSet all;
  for (const auto& outline : outlines) {
    if (outline.size() >= 3) all.push_back({outline, {}});
  }
  std::vector<Ring> rings;
  for (const Polygon& polygon : unionOf(all).value_or(PolygonSet{})) {
    rings.push_back(polygon.outer);
    rings.insert(rings.end(), polygon.holes.begin(), polygon.holes.end());
  }
  return rings;
}

bool isAboutPicture(const Finding& finding) {
  return finding.check.starts_with("picture");
}

// What the findings say of a thing in the light; clear when they say nothing.
Verdict verdictAbout(const Assessment& assessment, Id id) {
  Verdict worst = Verdict::Clear;
  for (const Finding& finding : assessment.findings) {
    const bool named =
        std::find(finding.subjects.begin(), finding.subjects.end(), id) != finding.subjects.end();
    if (named && isAboutPicture(finding)) worst = std::max(worst, finding.verdict);
  }
  return worst;
}

void label(Board& board, const Vec2& at, std::string text, Id id, std::initializer_list<double> rows) {
  std::vector<Text> candidates;
  for (const double row : rows) {
    Text mark = textAt(Layer::Labels, at + Vec2(0, board.mm(row * 2 * kSmallText)), text, TextAnchor::Centre);
    mark.heightMm = kSmallText;
    mark.onGround = true;
    mark.id = id;
    candidates.push_back(std::move(mark));
  }
  board.addWhereFree(candidates);
}

void drawShadows(Board& board, const ViewInput& input) {
  const PictureZone& zone = *input.assessment.picture;
  for (const PictureZone::GolferShadow& each : zone.shadows) {
    const auto worst = together(each.shadow.outlinesAtWorst);
    if (!worst.empty()) {
      Path area = areaOf(Layer::People, worst, Fill::Soft, each.golfer);
      area.verdict = verdictAbout(input.assessment, each.golfer);
      area.dash = LineDash::Dashed;
      board.addHatched(std::move(area));
      const Vec2 middle = centroid(Polygon{worst.front(), {}});
      label(board, middle,
            nameOf(input.job, each.golfer) + ": " +
                formatQuantity(each.shadow.worst, QuantityKind::Ratio, input.job.units) + " at worst",
            each.golfer, {0, 1, -1, 2, -2});
    }
    const auto address = together(each.shadow.outlinesAtAddress);
    if (!address.empty()) board.add(areaOf(Layer::People, address, Fill::None, each.golfer));
  }
  for (const Obstruction& part : zone.obstructions.parts) {
    const Id id = part.obstacle < zone.obstructedBy.size() ? zone.obstructedBy[part.obstacle] : Id{};
    Path area = areaOf(Layer::Fixtures, {part.outlineOnScreen}, Fill::Soft, id);
    area.verdict = verdictAbout(input.assessment, id);
    board.addHatched(std::move(area));
    label(board, centroid(Polygon{part.outlineOnScreen, {}}), nameOf(input.job, id), id, {0, 1, -1, 2, -2});
  }
}

std::string pixels(double value, const UnitSystem& units) {
  return std::string(value > 0 ? "+" : "").append(formatNumber(std::round(value), 0, units));
}

// From the thrown picture's corner to where the projector's own adjustment must bring it.
void drawCornerMoves(Board& board, const ViewInput& input) {
  const PictureZone& zone = *input.assessment.picture;
  constexpr double kSeen_px = 0.5;
  const bool moved = std::any_of(zone.corners.moves.begin(), zone.corners.moves.end(),
                                 [](const Vec2& move) { return move.norm() >= kSeen_px; });
  if (!moved) return;
  Path target = polygon(Layer::Beam, {zone.corners.target.begin(), zone.corners.target.end()},
                        input.kit().projector.id);
  target.dash = LineDash::Continuous;
  board.add(std::move(target));
  const Vec2 centre = faceBox(input).center();
  for (std::size_t i = 0; i < zone.corners.moves.size(); ++i) {
    const Vec2& from = zone.picture.cornersOnScreen[i];
    const Vec2& to = zone.corners.target[i];
    if ((to - from).norm() > board.mm(0.5)) {
      DimensionMark arrow;
      arrow.layer = Layer::Beam;
      arrow.from = from;
      arrow.to = to;
      arrow.arrows = true;
      board.add(std::move(arrow));
    }
    const Vec2& move = zone.corners.moves[i];
    Text text = textAt(Layer::Dimensions, from,
                       pixels(move.x(), input.job.units) + ", " + pixels(move.y(), input.job.units) + " px",
                       from.x() < centre.x() ? TextAnchor::Left : TextAnchor::Right);
    text.heightMm = kSmallText;
    text.onGround = true;
    text.at += Vec2(from.x() < centre.x() ? board.mm(1) : board.mm(-1),
                    from.y() > centre.y() ? board.mm(1.5) : board.mm(-3.5));
    board.add(std::move(text));
  }
}

// The box in which shots within two standard deviations arrive.
void drawArrivals(Board& board, const ViewInput& input) {
  const ScreenFace face = faceOf(input.kit().screen);
  for (const BallZone* each : differentShots(input.assessment)) {
    const BallZone& zone = *each;
    const auto arrivals = arrivalBox(zone);
    if (!arrivals) continue;
    const Box box(screenFromBay(face, {0, arrivals->min().x(), arrivals->min().y()}),
                  screenFromBay(face, {0, arrivals->max().x(), arrivals->max().y()}));
    board.add(rectangle(Layer::Capture, box));
    std::string words = "shots within two deviations";
    if (zone.heightAtScreen) {
      const Vec2 mean = screenFromBay(face, {0, zone.ball.y(), *zone.heightAtScreen});
      board.add(polyline(Layer::Capture, {{box.min().x(), mean.y()}, {box.max().x(), mean.y()}}));
      words += ", the mean at " + formatLength(*zone.heightAtScreen, input.job.units);
    }
    Text text = textAt(Layer::Labels, {box.center().x(), box.max().y() + board.mm(1)}, std::move(words),
                       TextAnchor::Centre);
    text.heightMm = kSmallText;
    text.onGround = true;
    board.addWhereFree(std::array{text});
  }
}

void drawScreenDimensions(Board& board, const ViewInput& input) {
  const Screen& screen = input.kit().screen;
  const double below = screen.bottom + board.mm(8);
  const double aside = (input.kit().frame.width - screen.width) / 2 + board.mm(8);
  const auto add = [&](const Vec2& from, const Vec2& to, double offset) {
    DimensionMark dimension;
    dimension.from = from;
    dimension.to = to;
    dimension.offset = offset;
    dimension.text = formatLength((to - from).norm(), input.job.units);
    dimension.id = screen.id;
    board.add(std::move(dimension));
  };
  add({screen.width, 0}, {0, 0}, below);
  add({0, 0}, {0, screen.height}, aside);
  if (screen.bottom > displayStep(input.job.units))
    add({screen.width, -screen.bottom}, {screen.width, 0}, -aside);
}

}  // namespace

Linework screenViewOf(const ViewInput& input) {
  Board board(input.options.metresPerMm);
  drawSurround(board, input);
  if (input.assessment.picture) {
    const PictureZone& zone = *input.assessment.picture;
    if (input.options.beam) {
      drawLightTints(board, input);
      board.add(polygon(Layer::Beam,
                        {zone.picture.cornersOnScreen.begin(), zone.picture.cornersOnScreen.end()},
                        input.kit().projector.id));
      drawCornerMoves(board, input);
      drawNinePoints(board, input);
      drawLightContours(board, input);
    }
    drawShadows(board, input);
    if (input.options.labels) drawLightLegend(board, input);
  }
  if (input.options.capture) drawArrivals(board, input);
  if (input.options.dimensions) drawScreenDimensions(board, input);
  return std::move(board).take();
}

}  // namespace baywright::detail
