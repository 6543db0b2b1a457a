// SPDX-License-Identifier: Apache-2.0
#include "drawing/scan_picture.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <functional>

#include "drawing/scan_samples.h"
#include "drawing/wall_face.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

constexpr double kPixel = 0.010;
constexpr double kCoarsest = 0.040;
constexpr double kMostPixels = 6e6;
// Round the room, metres: what else was seen helps to find one's way.
constexpr double kAround = 1.0;

// On the plan: slices of the height that count, in metres. Floor and rugs lie below, ceilings above.
constexpr double kLowest = 0.15;
constexpr double kSlice = 0.05;
constexpr int kSlices = 40;

// On a wall: how far before and behind the face something is still its own.
constexpr double kBefore = 0.60;
constexpr double kBehind = 0.30;
// Relief of this size changes the ink most, metres.
constexpr double kRelief = 0.08;

ScanPicture blank(const Eigen::AlignedBox2d& area) {
  ScanPicture picture;
  if (area.isEmpty()) return picture;
  const Vec2 size = area.sizes();
  picture.pixel = std::max(kPixel, std::sqrt(size.x() * size.y() / kMostPixels));
  picture.width = std::max(1, static_cast<int>(std::ceil(size.x() / picture.pixel)));
  picture.height = std::max(1, static_cast<int>(std::ceil(size.y() / picture.pixel)));
  picture.upperLeft = {area.min().x(), area.max().y()};
  return picture;
}

/// Which pixel a point of the view falls on; nothing outside.
std::optional<std::size_t> pixelAt(const ScanPicture& picture, double x, double y) {
  const double column = (x - picture.upperLeft.x()) / picture.pixel;
  const double row = (picture.upperLeft.y() - y) / picture.pixel;
  if (!(column >= 0 && row >= 0 && column < picture.width && row < picture.height)) return std::nullopt;
  return static_cast<std::size_t>(row) * static_cast<std::size_t>(picture.width) +
         static_cast<std::size_t>(column);
}

std::size_t pixelsOf(const ScanPicture& picture) {
  return static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height);
}

Eigen::AlignedBox2d planArea(const RoomScan& scan, const Room& room) {
  Eigen::AlignedBox2d area;
  if (const auto box = planBox(room)) {
    area = {Vec2(box->low.array() - kAround), Vec2(box->high.array() + kAround)};
    return area;
  }
  if (scan.points) {
    for (const Eigen::Vector3f& p : *scan.points) area.extend(Vec2(p.x(), p.y()));
  } else if (scan.mesh) {
    const Aabb3& bounds = scan.mesh->bounds();
    if (!bounds.empty()) area = {flat(bounds.low), flat(bounds.high)};
  }
  return area;
}

/// Values of pixels, made coarser until what was seen by few points is no mere dust of dots.
template <class T>
struct Grid {
  ScanPicture picture;  ///< place and size only
  std::vector<T> values;
  std::size_t samples = 0;

  Grid(const Eigen::AlignedBox2d& area, T nothing)
      : picture(blank(area)), values(pixelsOf(picture), nothing) {}

  template <class Join>
  void take(double x, double y, const Join& join) {
    const auto pixel = pixelAt(picture, x, y);
    if (!pixel) return;
    ++samples;
    values[*pixel] = join(values[*pixel]);
  }

  /// Joins four pixels into one as long as they are finer than the samples lie apart; `surface` square metres
  /// were seen by them.
  template <class Join>
  void coarsenTo(double surface, const Join& join) {
    if (samples == 0) return;
    const double apart = std::sqrt(surface / static_cast<double>(samples));
    while (picture.pixel < std::min(apart, kCoarsest)) halve(join);
  }

 private:
  template <class Join>
  void halve(const Join& join) {
    const auto old = static_cast<std::size_t>(picture.width);
    const auto oldRows = static_cast<std::size_t>(picture.height);
    picture.width = (picture.width + 1) / 2;
    picture.height = (picture.height + 1) / 2;
    picture.pixel *= 2;
    std::vector<T> coarse;
    coarse.reserve(pixelsOf(picture));
    for (std::size_t row = 0; row < oldRows; row += 2) {
      for (std::size_t column = 0; column < old; column += 2) {
        T joined = values[row * old + column];
        const bool right = column + 1 < old;
        if (right) joined = join(joined, values[row * old + column + 1]);
        if (row + 1 < oldRows) {
          joined = join(joined, values[(row + 1) * old + column]);
          if (right) joined = join(joined, values[(row + 1) * old + column + 1]);
        }
        coarse.push_back(joined);
      }
    }
    values = std::move(coarse);
  }
};

ScanPicture onPlan(const RoomScan& scan, const Room& room, const Progress& progress) {
  using Slices = std::uint64_t;
  Grid<Slices> grid(planArea(scan, room), 0);
  if (grid.values.empty()) return {};
  const bool done = detail::forSamplesOf(scan, grid.picture.pixel, progress, [&](const Eigen::Vector3f& p) {
    const double slice = (static_cast<double>(p.z()) - kLowest) / kSlice;
    if (!(slice >= 0 && slice < kSlices)) return;
    grid.take(p.x(), p.y(), [&](Slices seen) { return seen | Slices{1} << static_cast<unsigned>(slice); });
  });
  if (!done || grid.samples == 0) return {};
  // What stands upright is seen edge-on: a fair part of the samples falls on few pixels.
  const Vec2 size = grid.picture.pixel * Vec2(grid.picture.width, grid.picture.height);
  grid.coarsenTo(size.prod() / 4, std::bit_or<Slices>());

  // As dark as can be are the places where a sparse scan saw most of the height that it sees anywhere.
  std::vector<int> counts;
  for (const Slices slices : grid.values) {
    if (slices != 0) counts.push_back(std::popcount(slices));
  }
  const auto most = counts.begin() + static_cast<std::ptrdiff_t>(counts.size() * 95 / 100);
  std::nth_element(counts.begin(), most, counts.end());
  const double full = std::max(1, *most);
  grid.picture.ink.resize(grid.values.size());
  std::transform(grid.values.begin(), grid.values.end(), grid.picture.ink.begin(), [&](Slices slices) {
    // Roots: one slice is seen already, and a wall behind a shelf is still told from the shelf.
    return static_cast<std::uint8_t>(
        std::lround(255 * std::sqrt(std::min(1.0, std::popcount(slices) / full))));
  });
  return std::move(grid.picture);
}

/// Ink for something `before` metres in front of the face.
std::uint8_t inkAt(double before) {
  constexpr double kOnFace = 90;
  const double relief = std::tanh(before / kRelief);
  return static_cast<std::uint8_t>(std::lround(kOnFace - (relief > 0 ? 60 : 150) * relief));
}

ScanPicture onWall(const RoomScan& scan, const WallLine& wall, const Room& room, const Progress& progress) {
  constexpr double kUnknownHeight = 3.0;  // only for drawing
  constexpr float kNothing = -1000;
  const double top = ceilingOverFace(room, wall, 0, wall.length).value_or(kUnknownHeight) + kAround;
  Grid<float> grid({Vec2(-kAround / 4, -kAround / 4), Vec2(wall.length + kAround / 4, top)}, kNothing);
  const bool done = detail::forSamplesOf(scan, grid.picture.pixel, progress, [&](const Eigen::Vector3f& p) {
    const Vec3 world = p.cast<double>();
    const double distance = (flat(world) - wall.start).dot(wall.inward);
    if (distance > kBefore || distance < -kBehind) return;
    const Vec2 at = onFace(wall, world);
    // The viewer sees what is nearest to him.
    grid.take(at.x(), at.y(), [&](float seen) { return std::max(seen, static_cast<float>(distance)); });
  });
  if (!done || grid.samples == 0) return {};
  grid.coarsenTo(wall.length * top, [](float a, float b) { return std::max(a, b); });
  grid.picture.ink.resize(grid.values.size());
  std::transform(grid.values.begin(), grid.values.end(), grid.picture.ink.begin(),
                 [](float distance) { return distance > kNothing ? inkAt(distance) : std::uint8_t{0}; });
  return std::move(grid.picture);
}

}  // namespace

ScanPicture scanPictureOf(const RoomScan& scan, const DrawnView& view, const Job& job,
                          const Progress& progress) {
  if (view.kind == ViewKind::Plan) return onPlan(scan, job.room, progress);
  const auto wall = view.kind == ViewKind::Wall ? wallLine(job.room, view.wall) : std::nullopt;
  if (!wall || wall->length <= 0) return {};
  return onWall(scan, *wall, job.room, progress);
}

}  // namespace baywright
