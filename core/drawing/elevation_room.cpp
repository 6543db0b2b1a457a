// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "clearance/door_geometry.h"
#include "drawing/elevation_parts.h"
#include "drawing/finding_marks.h"
#include "drawing/fixture_outline.h"
#include "drawing/marks.h"
#include "drawing/silhouette.h"
#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

// Floor and ceiling are drawn this thick, metres; the job does not know more.
constexpr double kSlab = 0.10;
// Walls end here where the ceiling over them is not known.
constexpr double kUnknownHeight = 2.4;

Ring box(double x0, double x1, double y0, double y1) {
  const auto [left, right] = std::minmax(x0, x1);
  return {{left, y0}, {right, y0}, {right, y1}, {left, y1}};
}

void addPoche(Board& board, std::vector<Ring> rings, Id id) {
  Path solid = areaOf(Layer::Walls, std::move(rings), Fill::Poche, id);
  solid.stroked = false;
  solid.weight = LineWeight::Thin;
  board.add(std::move(solid));
}

void drawWallCut(Board& board, const WallCut& cut, double height) {
  std::vector<Ring> solids;
  std::vector<std::vector<Vec2>> edges;
  const auto addPiece = [&](double bottom, double top) {
    if (top <= bottom) return;
    solids.push_back(box(cut.x, cut.xOuter, bottom, top));
    edges.push_back({{cut.x, bottom}, {cut.x, top}});
  };
  if (cut.opening) {
    addPiece(0, std::min(cut.openingBottom, height));
    addPiece(std::min(cut.openingTop, height), height);
    for (const double level : {cut.openingBottom, cut.openingTop}) {
      if (level > 0 && level < height) edges.push_back({{cut.x, level}, {cut.xOuter, level}});
    }
    // The leaf or glass in it.
    const double middle = (cut.x + cut.xOuter) / 2;
    board.add(polyline(Layer::Openings,
                       {{middle, cut.openingBottom}, {middle, std::min(cut.openingTop, height)}},
                       *cut.opening));
  } else {
    addPiece(0, height);
  }
  if (!solids.empty()) addPoche(board, std::move(solids), cut.wall);
  if (!edges.empty()) board.add(strokes(Layer::Walls, std::move(edges), cut.wall));
}

// The underside, and the slab over it; at a step the lower part's slab is carried up to the higher one.
void drawCeilingCut(Board& board, const RoomStretch& stretch) {
  for (std::size_t i = 0; i < stretch.ceiling.size(); ++i) {
    const CeilingStretch& part = stretch.ceiling[i];
    const double left = i == 0 ? stretch.left.xOuter : part.from;
    const double right = i + 1 == stretch.ceiling.size() ? stretch.right.xOuter : part.to;
    const Vec2 up(0, kSlab);
    const double rise = (part.heightTo - part.heightFrom) / (part.to - part.from);
    const Vec2 a(left, part.heightFrom + rise * (left - part.from));
    const Vec2 b(right, part.heightTo + rise * (right - part.to));
    std::vector<Ring> slabs{{a, b, b + up, a + up}};
    std::vector<std::vector<Vec2>> edges{{{part.from, part.heightFrom}, {part.to, part.heightTo}}};
    if (i + 1 < stretch.ceiling.size()) {
      const double next = stretch.ceiling[i + 1].heightFrom;
      const double low = std::min(part.heightTo, next);
      const double high = std::max(part.heightTo, next);
      const double lowerSide = part.heightTo < next ? -kSlab : kSlab;
      if (high > low) {
        slabs.push_back(box(part.to, part.to + lowerSide, low + kSlab, high + kSlab));
        edges.push_back({{part.to, low}, {part.to, high}});
      }
    }
    addPoche(board, std::move(slabs), part.part);
    Path line = strokes(Layer::Walls, std::move(edges), part.part);
    if (!part.known) line.dash = LineDash::Dashed;
    board.add(std::move(line));
  }
}

bool isSpokenOf(const ViewInput& input, Id id) {
  const auto findings = shownFindings(input.assessment, input.options);
  return std::any_of(findings.begin(), findings.end(), [&](const Finding* finding) {
    return std::find(finding->subjects.begin(), finding->subjects.end(), id) != finding->subjects.end();
  });
}

}  // namespace

void drawFixtureName(Board& board, const Fixture& fixture, const Vec2& middle) {
  std::vector<Text> places;
  for (const double rows : {0.0, -1.0, 1.0, -2.0}) {
    const double y = middle.y() - board.mm(0.9) + rows * board.mm(3.2);
    Text name = textAt(Layer::Labels, {middle.x(), y}, fixture.name, TextAnchor::Centre);
    name.heightMm = kSmallText;
    name.id = fixture.id;
    name.onGround = true;
    places.push_back(std::move(name));
  }
  board.addWhereFree(places);
}

void drawSection(Board& board, const Sight& sight) {
  for (const RoomStretch& stretch : sight.section) {
    addPoche(board, {box(stretch.left.xOuter, stretch.right.xOuter, -kSlab, 0)}, {});
    board.add(polyline(Layer::Walls, {{stretch.left.xOuter, 0}, {stretch.right.xOuter, 0}}));
    const bool covered = !stretch.ceiling.empty();
    drawWallCut(board, stretch.left, covered ? stretch.ceiling.front().heightFrom : kUnknownHeight);
    drawWallCut(board, stretch.right, covered ? stretch.ceiling.back().heightTo : kUnknownHeight);
    drawCeilingCut(board, stretch);
  }
}

void drawOpeningsBeyond(Board& board, const ViewInput& input, const Sight& sight) {
  const Room& room = input.job.room;
  for (const Opening& opening : room.openings) {
    const auto place = openingPlace(room, opening.id);
    if (!place) continue;
    const bool facesUs = place->inward.dot(sight.away) < -0.1;  // a wall seen nearly edge-on shows nothing
    if (facesUs && sight.depthOf(place->middle()) > 0) {
      board.add(
          polygon(Layer::Openings,
                  box(sight.cut.xOf(place->start), sight.cut.xOf(place->end), place->bottom, place->top),
                  opening.id));
    }
    if (opening.kind != OpeningKind::SectionalDoor) continue;
    const auto bodies = sectionalDoor(room, opening);
    if (!bodies) continue;
    for (const ConvexPolyhedron& track : bodies->tracks) {
      board.add(polygon(Layer::Overhead, silhouetteOf(track, sight), opening.id));
    }
    if (opening.staysOpen && bodies->open) {
      board.add(polygon(Layer::Overhead, silhouetteOf(*bodies->open, sight), opening.id));
    }
  }
}

void drawFixtures(Board& board, const ViewInput& input, const Sight& sight) {
  for (const Fixture& fixture : input.job.room.fixtures) {
    Eigen::AlignedBox2d extent;  // along the cut, and beyond it
    for (const Vec2& p : outlineOf(fixture.shape)) extent.extend(Vec2(sight.cut.xOf(p), sight.depthOf(p)));
    if (extent.isEmpty()) continue;
    const double left = extent.min().x();
    const double right = extent.max().x();
    const double nearest = extent.min().y();
    const double farthest = extent.max().y();
    const bool isCut = nearest < 0 && farthest > 0;
    if (farthest <= 0 && !isSpokenOf(input, fixture.id)) continue;
    Path outline =
        polygon(Layer::Fixtures, box(left, right, fixture.bottom.value, fixture.top.value), fixture.id);
    if (isCut) {
      outline.weight = LineWeight::Thick;
      outline.fill = Fill::Soft;
    } else if (farthest <= 0) {
      outline.dash = LineDash::Dashed;
    }
    board.add(std::move(outline));
    if (input.options.labels) {
      drawFixtureName(board, fixture, {(left + right) / 2, (fixture.bottom.value + fixture.top.value) / 2});
    }
  }
}

}  // namespace baywright::detail
