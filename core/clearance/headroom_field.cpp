// SPDX-License-Identifier: Apache-2.0
#include "clearance/headroom_field.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "clearance/obstacles.h"
#include "clearance/shifted_swing.h"
#include "job/find.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
/// Distances of nodes that are worked out first, in nodes; each halves the one before.
constexpr std::array kStrides = {16, 8, 4, 2, 1};

struct Bounds {
  double low = -kInfinity;
  double high = kInfinity;
};

class FieldMaker {
 public:
  FieldMaker(const Room& room, ShiftedSwing swing, double clearance, Search search)
      : floor_{outline(room), {}}, swing_(std::move(swing)), clearance_(clearance), search_(search) {}

  /// False when asked to stop.
  bool fill(GridField& field, const Progress& progress) {
    bounds_.assign(static_cast<std::size_t>(field.columns) * static_cast<std::size_t>(field.rows), {});
    double done = 0;
    for (const int stride : kStrides) {
      const int coarser = stride == kStrides.front() ? 0 : 2 * stride;
      for (int row = 0; row < field.rows; row += stride) {
        if (progress.stop()) return false;
        for (int column = 0; column < field.columns; column += stride) {
          if (coarser == 0 || row % coarser != 0 || column % coarser != 0)
            settle(field, column, row, coarser);
        }
      }
      done += 1.0 / kStrides.size();
      progress.at(done);
    }
    for (std::size_t i = 0; i < bounds_.size(); ++i) field.values[i] = bounds_[i].low;
    return true;
  }

 private:
  Bounds& at(const GridField& field, int column, int row) {
    return bounds_[static_cast<std::size_t>(row * field.columns + column)];
  }

  /// By what the nodes of the coarser grid round it say, or exactly where that leaves zero near.
  void settle(const GridField& field, int column, int row, int coarser) {
    Bounds& bounds = at(field, column, row);
    if (coarser > 0 && search_ == Search::Tree) {
      for (const int c : {column / coarser * coarser, (column / coarser + 1) * coarser}) {
        for (const int r : {row / coarser * coarser, (row / coarser + 1) * coarser}) {
          if (c >= field.columns || r >= field.rows) continue;
          const double away = field.cell * std::hypot(c - column, r - row);
          bounds.low = std::max(bounds.low, at(field, c, r).low - away);
          bounds.high = std::min(bounds.high, at(field, c, r).high + away);
        }
      }
      // Wider than needed here, so that the bounds still serve the finer nodes about this one.
      const double band = (kExactBand + coarser) * field.cell;
      if (bounds.low > band || bounds.high < -band) return;
    }
    const double exact = marginAt(field.node(column, row));
    bounds = {exact, exact};
  }

  double marginAt(const Vec2& ball) {
    const BoundaryPoint edge = closestOnBoundary(floor_, ball);
    const double inside = locate(floor_, ball) == Location::Outside ? -edge.distance : edge.distance;
    return std::min(inside, swing_.distanceAt(ball, search_) - clearance_);
  }

  Polygon floor_;
  ShiftedSwing swing_;
  double clearance_;
  Search search_;
  std::vector<Bounds> bounds_;
};

Result<GridField> gridOver(const Room& room, double cell) {
  if (!(cell >= 0.01 && cell <= 1)) return fail("A standing zone has cells of 0.01 m to 1 m.");
  const auto box = planBox(room);
  if (!box) return fail("The room has no walls yet.", "room", "Measure it or trace a plan first.");
  GridField field;
  field.cell = cell;
  field.low = box->low.array() - 1.5 * cell;
  const Vec2 count = (box->size() / cell).array() + 4;
  if (count.x() * count.y() > static_cast<double>(kMostNodes)) {
    return fail("The standing zone would have more than a million nodes.", {}, "Choose larger cells.");
  }
  field.columns = static_cast<int>(count.x());
  field.rows = static_cast<int>(count.y());
  field.values.assign(static_cast<std::size_t>(field.columns) * static_cast<std::size_t>(field.rows), 0);
  return field;
}

Result<Swing> swingFor(const Job& job, const HeadroomQuestion& question) {
  const Golfer* golfer = findById(job.golfers, question.golfer);
  if (!golfer) return fail("This golfer is not in the job.");
  const Club* club = findById(golfer->clubs, question.club);
  if (!club) return fail("This club is not in " + golfer->name + "'s bag.");
  return swingOf(*golfer, *club);
}

}  // namespace

Result<std::optional<HeadroomField>> headroomField(const Job& job, const HeadroomQuestion& question,
                                                   const Progress& progress, Search search) {
  auto swing = swingFor(job, question);
  if (!swing) return tl::unexpected(swing.error());
  auto field = gridOver(job.room, question.cell);
  if (!field) return tl::unexpected(field.error());
  Obstacles obstacles = roomObstacles(job);
  std::erase_if(obstacles, [](const RoomObstacle& o) { return o.kind == ObstacleKind::Bystander; });
  RigidMap map = worldFromBay(BayPose{Vec2::Zero(), question.heading});
  map.offset = Vec3(0, 0, job.option().kit.mat.thickness);
  FieldMaker maker(job.room, ShiftedSwing(placed(swing->expected, map), std::move(obstacles)),
                   job.requirements.swingClearance, search);
  if (!maker.fill(*field, progress)) return std::optional<HeadroomField>();
  HeadroomField answer{std::move(*field), {}};
  answer.zone = zeroContours(answer.margin);
  return std::optional(std::move(answer));
}

}  // namespace baywright
