// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "drawing/page_furniture.h"
#include "drawing/scale.h"
#include "drawing/sheet_layout.h"
#include "drawing/sheet_views.h"

namespace baywright::detail {
namespace {

constexpr double kBetweenWalls = 8;
/// Walls are drawn smaller rather than on more pages than this.
constexpr std::size_t kFewPages = 3;

struct PlacedWall {
  std::size_t page = 0;
  Vec2 corner = Vec2::Zero();
};

/// In rows from the top left, as one reads; nothing when a wall alone is larger than a page.
std::optional<std::vector<PlacedWall>> inRows(const std::vector<SheetView>& walls, const PageBox& area) {
  std::vector<PlacedWall> placed;
  std::size_t page = 0;
  std::size_t rowStart = 0;
  Vec2 next(area.min().x(), area.max().y());  // upper left corner of the next wall
  double rowHeight = 0;
  // A row hangs together: its walls stand on one floor line as far as their dimensions reach equally low.
  const auto endRow = [&] {
    for (; rowStart < placed.size(); ++rowStart) placed[rowStart].corner.y() = next.y() - rowHeight;
    next = {area.min().x(), next.y() - rowHeight - kBetweenWalls};
    rowHeight = 0;
  };
  for (const SheetView& wall : walls) {
    if ((wall.size.array() > area.sizes().array()).any()) return std::nullopt;
    if (next.x() + wall.size.x() > area.max().x()) endRow();
    if (next.y() - std::max(rowHeight, wall.size.y()) < area.min().y()) {
      if (rowHeight > 0) endRow();
      if (next.y() - wall.size.y() < area.min().y()) {
        ++page;
        next = {area.min().x(), area.max().y()};
      }
    }
    placed.push_back({page, {next.x(), 0}});
    next.x() += wall.size.x() + kBetweenWalls;
    rowHeight = std::max(rowHeight, wall.size.y());
  }
  endRow();
  return placed;
}

std::vector<SheetView> wallsAt(const SheetInput& input, double denominator, ViewDrawer& drawer) {
  std::vector<SheetView> views;
  for (const Wall& wall : input.job.room.walls)
    views.push_back(sheetView(input, {ViewKind::Wall, wall.id}, denominator, drawer));
  return views;
}

struct Composition {
  double denominator = 0;
  std::vector<SheetView> walls;
  std::vector<PlacedWall> placed;

  std::size_t pages() const { return placed.back().page + 1; }
};

std::optional<Composition> composed(const SheetInput& input, const PageBox& area, double denominator,
                                    ViewDrawer& drawer) {
  Composition composition{denominator, wallsAt(input, denominator, drawer), {}};
  auto placed = inRows(composition.walls, area);
  if (!placed) return std::nullopt;
  composition.placed = std::move(*placed);
  return composition;
}

/// The largest usual scale at which the walls take a few pages; else the largest at which they fit at all.
std::optional<Composition> bestComposition(const SheetInput& input, const PageBox& area, ViewDrawer& drawer) {
  std::optional<Composition> largest;
  for (const double denominator : scaleLadder(scaleFamilyOf(input.job.units))) {
    auto composition = composed(input, area, denominator, drawer);
    if (!composition) continue;
    if (composition->pages() <= kFewPages) return composition;
    if (!largest) largest = std::move(composition);
  }
  return largest;
}

}  // namespace

/// Every wall from inside, to scale, with its openings and what hangs on it: to mark walls by.
Result<std::vector<SheetPage>> makeWallsSheet(const SheetInput& input) {
  if (input.job.room.walls.size() < 3)
    return fail("The room has no walls yet.", {}, "Trace or type its floor first.");
  if (input.request.scale && !isScale(*input.request.scale)) {
    return fail("The scale of a sheet lies between 1:1 and 1:1000.", {},
                "Leave it out to get the one that fits best.");
  }
  const SheetLayout layout = layoutOf(input.request.paper, input.request.orientation);
  ViewDrawer drawer;
  const auto composition =
      input.request.scale ? composed(input, layout.laterDrawing, *input.request.scale, drawer)
                          : bestComposition(input, layout.laterDrawing, drawer);
  if (!composition) {
    return fail("A wall is too long for this paper at " + scaleName(input.request.scale.value_or(1000)) + ".",
                {}, "Take larger paper, or leave the scale out to get the one that fits best.");
  }
  std::vector<SheetPage> pages(composition->pages());
  TitleBlock fields = titleBlockOf(input.job, "Wall elevations");
  for (std::size_t i = 0; i < pages.size(); ++i) {
    SheetPage& page = pages[i];
    page.title = "Walls";
    page.widthMm = layout.page.sizes().x();
    page.heightMm = layout.page.sizes().y();
    page.scaleDenominator = composition->denominator;
    page.marks = borderMarks(layout.frame);
    for (std::size_t k = 0; k < composition->walls.size(); ++k) {
      const PlacedWall& place = composition->placed[k];
      if (place.page == i) page.marks.append(placed(composition->walls[k].marks, {1, place.corner}));
    }
    page.marks.append(rulerMarks(PageBox(layout.frame)));
    fields.scale = scaleText(composition->denominator);
    fields.sheet = std::to_string(i + 1) + " of " + std::to_string(pages.size());
    page.marks.append(titleBlockMarks(fields, layout.frame));
  }
  return pages;
}

}  // namespace baywright::detail
