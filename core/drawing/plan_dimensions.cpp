// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <optional>

#include "drawing/bay_plan.h"
#include "drawing/plan_parts.h"
#include "drawing/room_ray.h"
#include "job/room_geometry.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

// From a wall's outer face to its dimension line, on paper.
constexpr double kOutside_mm = 7;

class BayDimensions {
 public:
  BayDimensions(Board& board, const ViewInput& input)
      : board_(board), input_(input), bay_{input.placement().bay} {}

  void draw() {
    const Frame& frame = input_.kit().frame;
    const double half = frame.width / 2;
    const double front = frame.behindScreen - frame.depth;
    const double middle = (front + frame.behindScreen) / 2;
    toWall({Vec2(front, half), Vec2(middle, half)}, input_.placement().bay.right());
    toWall({Vec2(front, -half), Vec2(middle, -half)}, -input_.placement().bay.right());
    toWall({Vec2(frame.behindScreen, half / 2), Vec2(frame.behindScreen, -half / 2)},
           input_.placement().bay.down());
    // Left of the way from one to the other is down-range, so the line stands inside the frame.
    between({front, half}, {front, -half}, {board_.mm(-5), board_.mm(-10)}, frame.id);
    between({front, half}, {frame.behindScreen, half}, {board_.mm(-5), board_.mm(-9)}, frame.id);
    const auto strikes = strikePoints(input_.job);
    const Vec3& first = strikes.front();
    between({first.x(), first.y()}, {0, first.y()},
            {0, board_.mm(6), board_.mm(-6), board_.mm(12), board_.mm(-12)}, input_.kit().mat.id);
    for (const Vec3& strike : strikes) {
      if (std::abs(strike.y()) < displayStep(input_.job.units)) continue;
      between({strike.x(), 0}, {strike.x(), strike.y()}, {board_.mm(8), board_.mm(-8)}, input_.kit().mat.id);
    }
  }

 private:
  DimensionMark mark(const Vec2& from, const Vec2& to, Id id) const {
    DimensionMark dimension;
    dimension.from = from;
    dimension.to = to;
    dimension.text = formatLength((to - from).norm(), input_.job.units);
    dimension.id = id;
    return dimension;
  }

  // From one of these points (d, r) straight to the wall. A text that has no room between them stands over
  // the frame rather than outside, where the walls have theirs.
  void toWall(const std::array<Vec2, 2>& starts, const Vec2& direction) {
    std::vector<DimensionMark> candidates;
    for (const Vec2& start : starts) {
      const Vec2 from = bay_(start.x(), start.y());
      const auto distance = distanceToWall(input_.job.room, from, direction);
      if (!distance || *distance < displayStep(input_.job.units)) continue;
      candidates.push_back(mark(from + *distance * direction, from, input_.kit().frame.id));
    }
    for (std::size_t i = 0, inward = candidates.size(); i < inward; ++i)
      candidates.push_back(mark(candidates[i].to, candidates[i].from, input_.kit().frame.id));
    board_.addWhereFree(candidates);
  }

  void between(const Vec2& from, const Vec2& to, std::initializer_list<double> offsets, Id id) {
    std::vector<DimensionMark> candidates;
    for (const double offset : offsets) {
      candidates.push_back(mark(bay_(from.x(), from.y()), bay_(to.x(), to.y()), id));
      candidates.back().offset = offset;
    }
    board_.addWhereFree(candidates);
  }

  Board& board_;
  const ViewInput& input_;
  BayPlan bay_;
};

}  // namespace

void drawWallLengths(Board& board, const ViewInput& input) {
  const Room& room = input.job.room;
  const auto lines = wallLines(room);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const WallLine& line = lines[i];
    DimensionMark dimension;
    // The room lies to the left of start -> end, so the dimension stands outside.
    dimension.from = line.end;
    dimension.to = line.start;
    dimension.offset = room.walls[i].thickness + board.mm(kOutside_mm);
    dimension.text = formatLength(line.length, input.job.units);
    if (!line.name.empty()) dimension.text = line.name + "  " + dimension.text;
    dimension.id = line.wall;
    DimensionMark farther = dimension;
    farther.offset += board.mm(kOutside_mm);
    board.addWhereFree(std::array{dimension, farther});
  }
}

void drawBayDimensions(Board& board, const ViewInput& input) {
  BayDimensions(board, input).draw();
}

}  // namespace baywright::detail
