// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>

#include "clearance/door_geometry.h"
#include "drawing/fixture_outline.h"
#include "drawing/room_section.h"
#include "drawing/scene_parts.h"
#include "geometry/polygon_sets.h"
#include "geometry/solid.h"
#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

// Walls under a ceiling that nobody measured end here.
constexpr double kUnknownHeight = 2.4;
// A wall looks at the ceiling just inside its face.
constexpr double kInside = 1e-4;

// The wall's face from floor to ceiling without its openings, fronts into the room.
class WallFace {
 public:
  WallFace(const Room& room, const WallLine& line)
      : room_(room),
        line_(line),
        section_(sectionOf(room, {line.start + kInside * line.inward, line.along})) {}

  MeshBuilder mesh() {
    const auto breaks = breaksAlong();
    for (std::size_t i = 0; i + 1 < breaks.size(); ++i) addColumn(breaks[i], breaks[i + 1]);
    return std::move(mesh_);
  }

 private:
  std::vector<double> breaksAlong() const {
    std::vector<double> breaks{0, line_.length};
    const auto add = [&](double x) {
      if (x > 0 && x < line_.length) breaks.push_back(x);
    };
    for (const RoomStretch& stretch : section_) {
      for (const CeilingStretch& part : stretch.ceiling) add(part.from), add(part.to);
    }
    for (const Opening& opening : room_.openings) {
      if (opening.wall != line_.wall) continue;
      add(opening.offset.value);
      add(opening.offset.value + opening.width.value);
    }
    std::sort(breaks.begin(), breaks.end());
    return breaks;
  }

  // Heights are asked just inside the column, so that a step belongs to the side it is on.
  double heightNear(double x, double middle) const {
    return heightAt(section_, x + (middle > x ? kInside : -kInside)).value_or(kUnknownHeight);
  }

  void addColumn(double from, double to) {
    if (to - from < 2 * kInside) return;
    const double middle = (from + to) / 2;
    const double topFrom = heightNear(from, middle);
    const double topTo = heightNear(to, middle);
    double solidFrom = 0;
    for (const Opening& opening : room_.openings) {
      const bool here = opening.wall == line_.wall && opening.offset.value < middle &&
                        middle < opening.offset.value + opening.width.value;
      if (!here) continue;
      addQuad({from, to}, {0, 0}, {opening.sill.value, opening.sill.value});
      solidFrom = opening.sill.value + opening.height.value;
    }
    addQuad({from, to}, {solidFrom, solidFrom}, {topFrom, topTo});
  }

  void addQuad(const Vec2& along, const Vec2& bottom, const Vec2& top) {
    if (top.x() <= bottom.x() && top.y() <= bottom.y()) return;
    const Vec2 a = line_.at(along.x());
    const Vec2 b = line_.at(along.y());
    // The room is to the left of the wall's direction: seen from there, `a` is on the right.
    mesh_.addFace(std::array{raised(b, bottom.y()), raised(a, bottom.x()),
                             raised(a, std::max(top.x(), bottom.x())),
                             raised(b, std::max(top.y(), bottom.y()))});
  }

  const Room& room_;
  const WallLine& line_;
  std::vector<RoomStretch> section_;
  MeshBuilder mesh_;
};

// Where a part ends below a higher one its edge is closed by an upright face that looks away from it.
void addSteps(MeshBuilder& mesh, const Room& room, const CeilingPart& part, const Ring& ring) {
  constexpr double kBeside = 1e-3;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Vec2& a = ring[i];
    const Vec2& b = ring[(i + 1) % ring.size()];
    const Vec2 outward = -leftOf((b - a).stableNormalized());  // the ring turns counter-clockwise
    const auto beyond = ceilingAt(room, (a + b) / 2 + kBeside * outward);
    if (!beyond || beyond->part == part.id || !isInside(room, (a + b) / 2 + kBeside * outward)) continue;
    const double highA = ceilingHeightAt(room, a + kBeside * outward).value_or(beyond->height);
    const double highB = ceilingHeightAt(room, b + kBeside * outward).value_or(beyond->height);
    const double lowA = part.heightAt(a);
    const double lowB = part.heightAt(b);
    if (highA <= lowA && highB <= lowB) continue;
    mesh.addFace(std::array{raised(a, lowA), raised(b, lowB), raised(b, std::max(highB, lowB)),
                            raised(a, std::max(highA, lowA))});
  }
}

MeshBuilder ceilingMesh(const Room& room, const CeilingPart& part) {
  MeshBuilder mesh;
  const auto regions = intersectionOf({Polygon{ceilingRegion(room, part), {}}}, {Polygon{outline(room), {}}});
  if (!regions) return mesh;
  const SlopedPlane plane{part.anchor, part.height.value, part.slope};
  for (const Polygon& region : *regions) {
    mesh.addRegion(region, plane, MeshBuilder::Front::Down);
    addSteps(mesh, room, part, region.outer);
  }
  return mesh;
}

MeshBuilder fixtureMesh(const Fixture& fixture) {
  MeshBuilder mesh;
  if (const auto* cylinder = std::get_if<CylinderShape>(&fixture.shape)) {
    mesh.addCylinder({raised(cylinder->centre, fixture.bottom.value),
                      raised(cylinder->centre, fixture.top.value), cylinder->radius});
    return mesh;
  }
  const Prism prism{outlineOf(fixture.shape), SlopedPlane::level(fixture.bottom.value),
                    SlopedPlane::level(fixture.top.value)};
  if (const auto pieces = prismPieces(prism)) {
    for (const ConvexPolyhedron& piece : *pieces) mesh.addBody(piece);
  }
  return mesh;
}

// Leaf, glass or panel as a slab in the opening, just behind the wall's face.
MeshBuilder closedPanel(const OpeningPlace& place, double thickness) {
  MeshBuilder mesh;
  const Vec2 middle = place.middle() - (thickness / 2 + 0.01) * place.inward;
  const UprightBox slab{middle,
                        std::atan2(place.along.y(), place.along.x()),
                        {(place.end - place.start).norm(), thickness},
                        place.bottom,
                        place.top};
  if (const auto body = boxFrom(slab)) mesh.addBody(*body);
  return mesh;
}

void addOpening(std::vector<SceneSolid>& solids, const Room& room, const Opening& opening) {
  const auto place = openingPlace(room, opening.id);
  if (!place) return;
  constexpr double kGlass = 0.02;
  if (opening.kind == OpeningKind::Window) {
    addSolid(solids, closedPanel(*place, kGlass), {opening.id, Layer::Openings, 0.35, {}});
  } else if (opening.kind == OpeningKind::HingedDoor) {
    addSolid(solids, closedPanel(*place, opening.leafThickness), {opening.id, Layer::Openings, 1, {}});
  } else if (opening.kind == OpeningKind::SectionalDoor) {
    MeshBuilder mesh = opening.staysOpen ? MeshBuilder{} : closedPanel(*place, opening.panelThickness);
    if (const auto bodies = sectionalDoor(room, opening)) {
      for (const ConvexPolyhedron& track : bodies->tracks) mesh.addBody(track);
      if (opening.staysOpen && bodies->open) mesh.addBody(*bodies->open);
    }
    addSolid(solids, std::move(mesh), {opening.id, Layer::Openings, 1, {}});
  }
}

}  // namespace

std::vector<SceneSolid> roomSolids(const SceneInput& input) {
  const Room& room = input.job.room;
  std::vector<SceneSolid> solids;
  if (room.walls.size() >= 3) {
    MeshBuilder floor;
    floor.addRegion({outline(room), {}}, SlopedPlane::level(0), MeshBuilder::Front::Up);
    addSolid(solids, std::move(floor), {{}, Layer::Floor, 1, {}});
    for (const WallLine& line : wallLines(room))
      addSolid(solids, WallFace(room, line).mesh(), {line.wall, Layer::Walls, 1, {}});
    if (input.options.ceiling) {
      for (const CeilingPart& part : room.ceiling)
        addSolid(solids, ceilingMesh(room, part), {part.id, Layer::Overhead, 1, {}});
    }
  }
  for (const Opening& opening : room.openings) addOpening(solids, room, opening);
  for (const Fixture& fixture : room.fixtures)
    addSolid(solids, fixtureMesh(fixture), {fixture.id, Layer::Fixtures, 1, {}});
  return solids;
}

}  // namespace baywright::detail
