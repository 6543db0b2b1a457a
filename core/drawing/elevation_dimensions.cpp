// SPDX-License-Identifier: Apache-2.0
#include <array>

#include "drawing/elevation_parts.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

constexpr double kFirstTier_mm = 8;
constexpr double kTier_mm = 7;

class ElevationDimensions {
 public:
  ElevationDimensions(Board& board, const ViewInput& input, const Sight& sight)
      : board_(board), input_(input), sight_(sight) {}

  void draw() {
    if (sight_.view == ViewKind::Side) {
      drawAlong();
    } else {
      drawAcross();
    }
    drawHeights();
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

  // Under the floor, shortest nearest to it.
  void level(double from, double to, Id id) {
    if (std::abs(to - from) < displayStep(input_.job.units)) return;
    DimensionMark dimension = mark({std::max(from, to), 0}, {std::min(from, to), 0}, id);
    dimension.offset = board_.mm(kFirstTier_mm + kTier_mm * tier_++);
    board_.add(std::move(dimension));
  }

  // Upright, `offset` to the left of it (drawing units, negative: to the right).
  void upright(double x, double bottom, double top, double offset, Id id) {
    if (top - bottom < displayStep(input_.job.units)) return;
    DimensionMark dimension = mark({x, bottom}, {x, top}, id);
    dimension.offset = offset;
    board_.add(std::move(dimension));
  }

  void drawRoomWidth() {
    for (const RoomStretch& stretch : sight_.section) {
      if (stretch.left.x <= 0 && stretch.right.x >= 0) level(stretch.left.x, stretch.right.x, {});
    }
  }

  void drawAlong() {
    level(-input_.placement().strikeDistance, 0, input_.kit().mat.id);
    if (input_.kit().hasProjector) level(input_.placement().projector.lens.x(), 0, input_.kit().projector.id);
    drawRoomWidth();
  }

  void drawAcross() {
    const Frame& frame = input_.kit().frame;
    level(-frame.width / 2, frame.width / 2, frame.id);
    drawRoomWidth();
  }

  void drawHeights() {
    const Frame& frame = input_.kit().frame;
    const bool side = sight_.view == ViewKind::Side;
    // Inside the frame, where nothing else stands.
    const double frameX = side ? frame.behindScreen - frame.depth : frame.width / 2;
    upright(frameX, 0, frame.height, side ? board_.mm(-6) : board_.mm(6), frame.id);
    if (const auto ceiling = heightAt(sight_.section, side ? 0.0 : frameX)) {
      upright(side ? 0.0 : frameX, frame.height, *ceiling, 0, frame.id);
    }
    if (side && input_.kit().hasProjector) {
      const Vec3& lens = input_.placement().projector.lens;
      upright(lens.x(), 0, lens.z(), 0, input_.kit().projector.id);
    }
    for (const RoomStretch& stretch : sight_.section) {
      if (stretch.ceiling.empty()) continue;
      const CeilingStretch& first = stretch.ceiling.front();
      const CeilingStretch& last = stretch.ceiling.back();
      const double outside = board_.mm(kFirstTier_mm);
      upright(stretch.left.x, 0, first.heightFrom, stretch.left.x - stretch.left.xOuter + outside,
              first.part);
      upright(stretch.right.x, 0, last.heightTo, -(stretch.right.xOuter - stretch.right.x + outside),
              last.part);
    }
  }

  Board& board_;
  const ViewInput& input_;
  const Sight& sight_;
  int tier_ = 0;
};

}  // namespace

void drawDimensions(Board& board, const ViewInput& input, const Sight& sight) {
  ElevationDimensions(board, input, sight).draw();
}

}  // namespace baywright::detail
