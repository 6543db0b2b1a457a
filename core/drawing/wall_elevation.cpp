// SPDX-License-Identifier: Apache-2.0
#include "drawing/wall_elevation.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "drawing/elevation_parts.h"
#include "drawing/fixture_outline.h"
#include "drawing/marks.h"
#include "drawing/wall_face.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

// What is farther from the wall than this is not the wall's business, metres; the frame may be farther.
constexpr double kNear = 1.0;
constexpr double kFrameNear = 1.5;
// What touches the wall is drawn as part of it.
constexpr double kTouching = 0.02;

constexpr double kFirstTier_mm = 8;
constexpr double kTier_mm = 7;

/// A wall with what its elevation needs to know of its neighbours.
struct Face {
  WallLine wall;
  WallLine left;   ///< starts where the wall ends
  WallLine right;  ///< ends where the wall starts
};

std::optional<Face> faceOf(const Room& room, Id wall) {
  const auto lines = wallLines(room);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (lines[i].wall == wall && lines[i].length > 0)
      return Face{lines[i], lines[(i + 1) % lines.size()], lines[(i + lines.size() - 1) % lines.size()]};
  }
  return std::nullopt;
}

/// The neighbour comes toward the viewer and is cut; where it goes away from him the wall ends in an edge.
bool isCut(const WallLine& wall, const WallLine& neighbour, bool startsHere) {
  const Vec2 away = startsHere ? neighbour.along : Vec2(-neighbour.along);
  return away.dot(wall.inward) > 0;
}

double thicknessOf(const Room& room, Id wall) {
  const Wall* found = findById(room.walls, wall);
  return found ? found->thickness : 0;
}

/// The stretch of the room before the face, cut to the wall's length.
RoomStretch stretchOf(const Room& room, const Face& face) {
  const double length = face.wall.length;
  RoomStretch stretch;
  stretch.left.wall = face.left.wall;
  stretch.left.xOuter = isCut(face.wall, face.left, true) ? -thicknessOf(room, face.left.wall) : 0;
  stretch.right.wall = face.right.wall;
  stretch.right.x = length;
  stretch.right.xOuter =
      length + (isCut(face.wall, face.right, false) ? thicknessOf(room, face.right.wall) : 0);
  stretch.ceiling = ceilingBefore(room, face.wall);
  return stretch;
}

std::vector<Vec2> faceRing(const Face& face, const RoomStretch& stretch, double unknownHeight) {
  std::vector<Vec2> ring{{0, 0}, {face.wall.length, 0}};
  for (auto part = stretch.ceiling.rbegin(); part != stretch.ceiling.rend(); ++part) {
    ring.push_back({part->to, part->heightTo});
    ring.push_back({part->from, part->heightFrom});
  }
  if (stretch.ceiling.empty()) {
    ring.push_back({face.wall.length, unknownHeight});
    ring.push_back({0, unknownHeight});
  }
  return ring;
}

Path dashed(Path path) {
  path.dash = LineDash::Dashed;
  return path;
}

/// Leaf, panels or glass, as drawing offices show them in an elevation.
void drawFilling(Board& board, const Opening& opening, const FaceBox& box) {
  const double left = box.min().x();
  const double right = box.max().x();
  const double low = box.min().y();
  const double high = box.max().y();
  if (opening.kind == OpeningKind::HingedDoor) {
    // The lines meet at the hinges; a wall's start is on the right.
    const double hinge = opening.hinge == HingeSide::Start ? right : left;
    const double lock = opening.hinge == HingeSide::Start ? left : right;
    Path swing =
        polyline(Layer::Openings, {{lock, low}, {hinge, (low + high) / 2}, {lock, high}}, opening.id);
    // Solid toward the viewer, dashed away from him.
    swing.dash = opening.swing == LeafSwing::IntoRoom ? LineDash::Continuous : LineDash::Dashed;
    board.add(std::move(swing));
  } else if (opening.kind == OpeningKind::SectionalDoor) {
    constexpr double kPanel = 0.5;  // metres, about
    const int panels = std::max(1, static_cast<int>(std::lround((high - low) / kPanel)));
    std::vector<std::vector<Vec2>> joints;
    for (int i = 1; i < panels; ++i) {
      const double y = low + (high - low) * i / panels;
      joints.push_back({{left, y}, {right, y}});
    }
    if (!joints.empty()) board.add(strokes(Layer::Openings, std::move(joints), opening.id));
    // The room over the opening that the tracks take up.
    board.add(dashed(rectangle(Layer::Overhead, {Vec2(left, high), Vec2(right, high + opening.trackHeadroom)},
                               opening.id)));
  } else if (opening.kind == OpeningKind::Window) {
    const double middle = (left + right) / 2;
    board.add(strokes(Layer::Openings, {{{middle, low}, {middle, high}}}, opening.id));
  }
}

Text smallText(const Vec2& at, std::string words, Id id) {
  Text text = textAt(Layer::Labels, at, std::move(words), TextAnchor::Centre);
  text.heightMm = kSmallText;
  text.id = id;
  text.onGround = true;
  return text;
}

class WallElevation {
 public:
  WallElevation(const ViewInput& input, const Face& face)
      : input_(input),
        room_(input.job.room),
        face_(face),
        board_(input.options.metresPerMm),
        sight_{
            ViewKind::Wall, input.placement().bay, {face.wall.end, -face.wall.along}, -face.wall.inward, {}} {
    sight_.section = {stretchOf(room_, face_)};
  }

  Linework draw() && {
    drawFace();
    drawOpenings();
    drawFrame();
    drawNearFixtures();
    if (input_.options.dimensions) drawDimensions();
    if (input_.options.labels) drawNeighbours();
    return std::move(board_).take();
  }

 private:
  const RoomStretch& stretch() const { return sight_.section.front(); }

  void drawFace() {
    constexpr double kUnknownHeight = 2.4;  // only for drawing
    Path face =
        areaOf(Layer::Floor, {faceRing(face_, stretch(), kUnknownHeight)}, Fill::Soft, face_.wall.wall);
    face.stroked = false;
    board_.add(std::move(face));
    drawSection(board_, sight_);
  }

  void drawOpenings() {
    for (const Opening& opening : room_.openings) {
      if (opening.wall != face_.wall.wall) continue;
      const auto box = faceBoxOf(room_, face_.wall.wall, opening.id);
      if (!box) continue;
      board_.add(rectangle(Layer::Openings, *box, opening.id));
      drawFilling(board_, opening, *box);
      if (input_.options.labels) {
        const Vec2 at(box->center().x(), box->max().y() - board_.mm(2.5 * kSmallText));
        board_.addWhereFree(std::vector{smallText(at, opening.name, opening.id),
                                        smallText(box->center(), opening.name, opening.id)});
      }
    }
  }

  void drawFrame() {
    const Frame& frame = input_.kit().frame;
    FaceBox box;
    double nearest = std::numeric_limits<double>::infinity();
    for (const double d : {frame.behindScreen - frame.depth, frame.behindScreen}) {
      for (const double r : {-frame.width / 2, frame.width / 2}) {
        const Vec3 foot = worldFromBay(sight_.bay, Vec3(d, r, 0));
        nearest = std::min(nearest, -sight_.depthOf(flat(foot)));
        box.extend(sight_(foot));
      }
    }
    if (nearest > kFrameNear || box.max().x() < 0 || box.min().x() > face_.wall.length) return;
    box.extend(box.min() + Vec2(0, frame.height));
    board_.add(dashed(rectangle(Layer::Bay, box, frame.id)));
  }

  void drawNearFixtures() {
    struct Near {
      const Fixture* fixture;
      FaceBox box;
      double distance;
    };
    std::vector<Near> near;
    for (const Fixture& fixture : room_.fixtures) {
      const auto box = faceBoxOf(room_, face_.wall.wall, fixture.id);
      if (!box || box->isEmpty() || box->max().x() <= 0 || box->min().x() >= face_.wall.length) continue;
      double nearest = std::numeric_limits<double>::infinity();
      double farthest = -nearest;
      for (const Vec2& p : outlineOf(fixture.shape)) {
        nearest = std::min(nearest, -sight_.depthOf(p));
        farthest = std::max(farthest, -sight_.depthOf(p));
      }
      if (nearest <= kNear && farthest >= 0) near.push_back({&fixture, *box, nearest});
    }
    // What is nearer to the viewer lies over the rest.
    std::stable_sort(near.begin(), near.end(),
                     [](const Near& a, const Near& b) { return a.distance < b.distance; });
    for (const Near& each : near) {
      Path outline = rectangle(Layer::Fixtures, each.box, each.fixture->id);
      outline.fill = Fill::Soft;
      if (each.distance > kTouching) outline.dash = LineDash::Dashed;
      board_.add(std::move(outline));
      if (input_.options.labels) drawFixtureName(board_, *each.fixture, each.box.center());
    }
  }

  // Under the floor, in the first of the rows from `row` on where its text covers no other; says which.
  int level(double from, double to, int row, Id id) {
    constexpr int kRows = 3;
    if (std::abs(to - from) < displayStep(input_.job.units)) return row;
    std::vector<DimensionMark> candidates(kRows);
    const auto offsetOf = [&](int each) { return board_.mm(kFirstTier_mm + kTier_mm * each); };
    for (int i = 0; i < kRows; ++i) {
      DimensionMark& dimension = candidates[static_cast<std::size_t>(i)];
      // From right to left, so that it stands below.
      dimension.from = {std::max(from, to), 0};
      dimension.to = {std::min(from, to), 0};
      dimension.offset = offsetOf(row + i);
      dimension.text = formatLength(std::abs(to - from), input_.job.units);
      dimension.id = id;
    }
    board_.addWhereFree(candidates);
    const double chosen = board_.marks().dimensions.back().offset;
    while (offsetOf(row) < chosen) ++row;
    return row;
  }

  void upright(double x, double low, double high, double offset, Id id) {
    if (high - low < displayStep(input_.job.units)) return;
    DimensionMark dimension;
    dimension.from = {x, low};
    dimension.to = {x, high};
    dimension.offset = offset;
    dimension.text = formatLength(high - low, input_.job.units);
    dimension.id = id;
    board_.add(std::move(dimension));
  }

  std::optional<FaceBox> outletOnFace(const Fixture& fixture) const {
    if (fixture.kind != FixtureKind::PowerOutlet && fixture.kind != FixtureKind::DataOutlet)
      return std::nullopt;
    double nearest = std::numeric_limits<double>::infinity();
    for (const Vec2& p : outlineOf(fixture.shape)) nearest = std::min(nearest, std::abs(sight_.depthOf(p)));
    const auto box = faceBoxOf(room_, face_.wall.wall, fixture.id);
    if (nearest > kTouching || !box) return std::nullopt;
    const double middle = box->center().x();
    return middle > 0 && middle < face_.wall.length ? box : std::nullopt;
  }

  void drawDimensions() {
    std::vector<double> jambs{0, face_.wall.length};
    for (const Opening& opening : room_.openings) {
      const auto box = faceBoxOf(room_, face_.wall.wall, opening.id);
      if (!box) continue;
      jambs.push_back(box->min().x());
      jambs.push_back(box->max().x());
      const double x = box->min().x() + 0.25 * box->sizes().x();
      upright(x, 0, box->min().y(), 0, opening.id);
      upright(x, box->min().y(), box->max().y(), 0, opening.id);
    }
    for (const Fixture& fixture : room_.fixtures) {
      // An outlet is marked by its middle.
      const auto box = outletOnFace(fixture);
      if (!box) continue;
      jambs.push_back(box->center().x());
      upright(box->center().x(), 0, box->center().y(), 0, fixture.id);
    }
    std::sort(jambs.begin(), jambs.end());
    int lastRow = -1;
    if (jambs.size() > 2) {
      for (std::size_t i = 0; i + 1 < jambs.size(); ++i)
        lastRow = std::max(lastRow, level(jambs[i], jambs[i + 1], 0, {}));
    }
    level(0, face_.wall.length, lastRow + 1, face_.wall.wall);
    if (stretch().ceiling.empty()) return;
    const CeilingStretch& first = stretch().ceiling.front();
    const CeilingStretch& last = stretch().ceiling.back();
    const double outside = board_.mm(kFirstTier_mm);
    if (first.known) upright(0, 0, first.heightFrom, outside - stretch().left.xOuter, first.part);
    if (last.known)
      upright(face_.wall.length, 0, last.heightTo, -(outside + stretch().right.xOuter - face_.wall.length),
              last.part);
  }

  // Which walls the cuts at both ends are.
  void drawNeighbours() {
    const double y = board_.mm(2);
    board_.add(smallText({stretch().left.xOuter - board_.mm(4), y}, face_.left.name, face_.left.wall));
    board_.add(smallText({stretch().right.xOuter + board_.mm(4), y}, face_.right.name, face_.right.wall));
  }

  const ViewInput& input_;
  const Room& room_;
  const Face& face_;
  Board board_;
  Sight sight_;
};

}  // namespace

Linework wallElevationOf(const ViewInput& input, Id wall) {
  const auto face = faceOf(input.job.room, wall);
  return face ? WallElevation(input, *face).draw() : Linework{};
}

}  // namespace baywright::detail
