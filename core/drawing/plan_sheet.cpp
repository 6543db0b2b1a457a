// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>

#include "drawing/marks.h"
#include "drawing/page_furniture.h"
#include "drawing/scale.h"
#include "drawing/sheet_blocks.h"
#include "drawing/sheet_layout.h"
#include "drawing/sheet_views.h"
#include "drawing/sheets.h"
#include "units/number_text.h"

namespace baywright::detail {
namespace {

constexpr double kBetweenViews = 8;

// The views at one scale, and how many of them the first page holds; the rest go on pages of their own.
struct Composition {
  double denominator = 0;
  std::vector<SheetView> views;
  std::vector<Vec2> corners;                    // of the views on the first page
  std::vector<std::vector<Vec2>> laterCorners;  // one entry a further page with views
};

std::vector<Vec2> sizesOf(std::span<const SheetView> views) {
  std::vector<Vec2> sizes;
  for (const SheetView& view : views) sizes.push_back(view.size);
  return sizes;
}

// Pages for views that the first one had no room for: both on one, else one each; nullopt when one is too
// large.
std::optional<std::vector<std::vector<Vec2>>> laterPages(std::span<const SheetView> views,
                                                         const PageBox& area) {
  if (views.empty()) return std::vector<std::vector<Vec2>>{};
  if (auto together = arranged(sizesOf(views), area, kBetweenViews))
    return std::vector<std::vector<Vec2>>{std::move(*together)};
  std::vector<std::vector<Vec2>> pages;
  for (const SheetView& view : views) {
    auto alone = arranged({view.size}, area, kBetweenViews);
    if (!alone) return std::nullopt;
    pages.push_back(std::move(*alone));
  }
  return pages;
}

std::optional<Composition> composed(const SheetInput& input, const SheetLayout& layout, double denominator,
                                    ViewDrawer& drawer) {
  Composition composition;
  composition.denominator = denominator;
  for (const ViewKind kind : {ViewKind::Plan, ViewKind::DownRange, ViewKind::Side}) {
    composition.views.push_back(sheetView(input, kind, denominator, drawer));
  }
  const std::span views(composition.views);
  for (std::size_t count = views.size(); count > 0; --count) {
    auto corners = arranged(sizesOf(views.first(count)), layout.drawing, kBetweenViews);
    if (!corners) continue;
    auto later = laterPages(views.subspan(count), layout.laterDrawing);
    if (!later) return std::nullopt;
    composition.corners = std::move(*corners);
    composition.laterCorners = std::move(*later);
    return composition;
  }
  return std::nullopt;
}

std::optional<Composition> bestComposition(const SheetInput& input, const SheetLayout& layout,
                                           ViewDrawer& drawer) {
  for (const double denominator : scaleLadder(scaleFamilyOf(input.job.units))) {
    if (auto composition = composed(input, layout, denominator, drawer)) return composition;
  }
  return std::nullopt;
}

// What would do instead: a larger sheet of the same family at this scale, or a smaller scale on this sheet.
tl::unexpected<Problem> doesNotFit(const SheetInput& input, double denominator, ViewDrawer& drawer) {
  const SheetRequest& request = input.request;
  const PaperStyle& asked = styleOf(request.paper);
  std::string next;
  for (const PaperStyle& style : paperStyles()) {
    if (style.family != asked.family || style.longMm <= asked.longMm) continue;
    if (!composed(input, layoutOf(style.size, request.orientation), denominator, drawer)) continue;
    next = "Take " + std::string(style.name) + " paper";
    break;
  }
  if (const auto best = bestComposition(input, layoutOf(request.paper, request.orientation), drawer)) {
    next += (next.empty() ? "Print at " : ", or print at ") + scaleName(best->denominator);
  }
  return fail("At " + scaleName(denominator) + " the plan does not fit on " + std::string(asked.name) + ".",
              {}, next.empty() ? "Choose a smaller scale." : next + ".");
}

class PlanSheet {
 public:
  PlanSheet(const SheetInput& input, const SheetLayout& layout, const Composition& composition)
      : input_(input), layout_(layout), composition_(composition) {}

  std::vector<SheetPage> pages() {
    addFirstPage();
    addLaterViews();
    addScreen();
    addText();
    finish();
    return std::move(pages_);
  }

 private:
  SheetPage& addPage(std::string title) {
    SheetPage page;
    page.title = std::move(title);
    page.widthMm = layout_.page.sizes().x();
    page.heightMm = layout_.page.sizes().y();
    page.marks = borderMarks(layout_.frame);
    pages_.push_back(std::move(page));
    return pages_.back();
  }

  void placeViews(SheetPage& page, std::size_t first, const std::vector<Vec2>& corners) {
    page.scaleDenominator = composition_.denominator;
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const SheetView& view = composition_.views[first + i];
      page.marks.append(placed(view.marks, {1, corners[i]}));
      const auto scans = underlaysOf(input_.job, view, corners[i]);
      page.underlays.insert(page.underlays.end(), scans.begin(), scans.end());
    }
  }

  void addFirstPage() {
    SheetPage& page = addPage("Plan");
    placeViews(page, 0, composition_.corners);
    shown_ = page.marks;
    page.marks.append(rulerMarks(layout_.rulers));
    page.marks.append(signOffMarks(input_.job, input_.assessment, layout_.signOff));
    if (layout_.column) {
      const double left = layout_.signOff.min().x();
      page.marks.paths.push_back(
          polyline(Layer::Labels, {{left, layout_.signOff.max().y()}, {left, layout_.frame.max().y()}}));
    }
  }

  void addLaterViews() {
    std::size_t first = composition_.corners.size();
    for (const std::vector<Vec2>& corners : composition_.laterCorners) {
      SheetPage& page = addPage("Elevations");
      placeViews(page, first, corners);
      page.marks.append(rulerMarks(PageBox(layout_.frame)));
      first += corners.size();
    }
  }

  /// The screen seen face on has a page and a scale of its own, so that its figures can be read.
  void addScreen() {
    if (!input_.assessment.picture) return;
    ViewDrawer drawer;
    for (const double denominator : scaleLadder(scaleFamilyOf(input_.job.units))) {
      const SheetView view = sheetView(input_, ViewKind::ScreenFace, denominator, drawer);
      const auto corners = arranged({view.size}, layout_.laterDrawing, kBetweenViews);
      if (!corners) continue;
      SheetPage& page = addPage("Picture on the screen");
      page.scaleDenominator = denominator;
      page.marks.append(placed(view.marks, {1, corners->front()}));
      page.marks.append(rulerMarks(PageBox(layout_.frame)));
      return;
    }
  }

  void addText() {
    const double width = layout_.textWidth;
    std::vector<Block> blocks;
    std::vector<FlowBox> boxes;
    const auto legend = legendBlocks(shown_, width);
    if (layout_.column) {
      // The legend stays beside the drawing, at the foot of the column.
      PageBox column = *layout_.column;
      for (auto block = legend.rbegin(); block != legend.rend(); ++block) {
        column.min().y() += block->heightMm;
        pages_.front().marks.append(placed(block->marks, {1, column.min()}));
      }
      column.min().y() += kSectionGap;
      boxes.push_back({0, column});
    } else {
      blocks = legend;
    }
    for (auto& section :
         {findingBlocks(input_.job, input_.assessment, width), cautionBlocks(input_.job, width)}) {
      blocks.insert(blocks.end(), section.begin(), section.end());
    }
    const PageMarks texts = flow(blocks, boxes, [&](std::size_t) { return layout_.laterText; });
    for (std::size_t i = 0; i < texts.size(); ++i) {
      SheetPage& page = i == 0 && layout_.column ? pages_.front() : addPage("Findings and cautions");
      page.marks.append(texts[i]);
    }
  }

  void finish() {
    TitleBlock fields = titleBlockOf(input_.job, "Bay plan");
    for (std::size_t i = 0; i < pages_.size(); ++i) {
      fields.scale = pages_[i].scaleDenominator > 0 ? scaleText(pages_[i].scaleDenominator) : std::string();
      fields.sheet = std::to_string(i + 1) + " of " + std::to_string(pages_.size());
      pages_[i].marks.append(titleBlockMarks(fields, layout_.frame));
    }
  }

  const SheetInput& input_;
  const SheetLayout& layout_;
  const Composition& composition_;
  std::vector<SheetPage> pages_;
  Linework shown_;
};

}  // namespace

Result<std::vector<SheetPage>> makePlanSheet(const SheetInput& input) {
  if (input.job.room.walls.size() < 3) {
    return fail("The room has no walls yet, so there is no plan to print.", {},
                "Trace or type its floor first.");
  }
  if (input.request.scale && !isScale(*input.request.scale)) {
    return fail("The scale of a sheet lies between 1:1 and 1:1000.", {},
                "Leave it out to get the one that fits best.");
  }
  const SheetLayout layout = layoutOf(input.request.paper, input.request.orientation);
  ViewDrawer drawer;
  const auto composition = input.request.scale ? composed(input, layout, *input.request.scale, drawer)
                                               : bestComposition(input, layout, drawer);
  if (!composition) return doesNotFit(input, input.request.scale.value_or(1000), drawer);
  return PlanSheet(input, layout, *composition).pages();
}

}  // namespace baywright::detail
