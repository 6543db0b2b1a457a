// SPDX-License-Identifier: Apache-2.0
#include "drawing/scan_glance.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

#include "job/limits.h"
#include "survey/scan_planes.h"

namespace baywright {
namespace {

constexpr double kAcross = 150;    // samples along the scan's diagonal, on a mesh
constexpr double kOutside = 0.01;  // share of the points beyond either end that may be outliers
constexpr double kLid = 0.85;      // of the height: what is above hides the room

/// From which the scan is seen: turned by so much about its upright axis, and looked down on.
constexpr double kTurn = 30 * kPi / 180;
constexpr double kDown = 35 * kPi / 180;

Vec2 seen(const Vec3& p) {
  const double depth = std::sin(kTurn) * p.x() + std::cos(kTurn) * p.y();
  return {std::cos(kTurn) * p.x() - std::sin(kTurn) * p.y(),
          std::cos(kDown) * p.z() + std::sin(kDown) * depth};
}

double depthOf(const Vec3& p) {
  return std::cos(kDown) * (std::sin(kTurn) * p.x() + std::cos(kTurn) * p.y()) - std::sin(kDown) * p.z();
}

/// Without the outermost points either way.
Range innerRange(const std::vector<Vec3>& points, int axis) {
  std::vector<double> places;
  places.reserve(points.size());
  for (const Vec3& p : points) places.push_back(p[axis]);
  const auto at = [&](double share) {
    const auto place = places.begin() + std::lround(share * static_cast<double>(places.size() - 1));
    std::nth_element(places.begin(), place, places.end());
    return *place;
  };
  const double low = at(kOutside), high = at(1 - kOutside);
  const double slack = 2 * kOutside * (high - low);
  return {low - slack, high + slack};
}

}  // namespace

std::vector<Eigen::Vector3f> glanceSamples(const ScanGeometry& scan) {
  if (scan.points.empty()) return {};
  Eigen::AlignedBox3f box;
  for (const Eigen::Vector3f& p : scan.points) box.extend(p);
  const auto all = surfaceSamples(scan, std::max(1e-9, static_cast<double>(box.diagonal().norm()) / kAcross));
  const std::size_t stride = all.size() / kMostGlanced + 1;
  std::vector<Eigen::Vector3f> some;
  // Scattered over the list: every n-th of a regular mesh would make stripes.
  for (std::size_t i = 0; i < all.size() && some.size() < kMostGlanced; ++i) {
    const std::uint64_t scattered = (static_cast<std::uint64_t>(i) * 0x9E3779B97F4A7C15u) >> 40;
    if (scattered % stride == 0) some.push_back(all[i]);
  }
  return some;
}

ScanGlance glanceAt(std::span<const Eigen::Vector3f> samples, UpAxis up,
                    std::optional<double> metresPerUnit) {
  ScanGlance glance;
  if (samples.empty()) return glance;
  const Mat3 upright = uprightFrom(up);
  std::vector<Vec3> points;
  points.reserve(samples.size());
  for (const Eigen::Vector3f& p : samples) points.push_back(upright * p.cast<double>());
  const Range x = innerRange(points, 0), y = innerRange(points, 1), z = innerRange(points, 2);
  const double height = z.high - z.low;
  std::erase_if(points, [&](const Vec3& p) {
    return !x.contains(p.x()) || !y.contains(p.y()) || !z.contains(p.z()) || p.z() > z.low + kLid * height;
  });
  std::stable_sort(points.begin(), points.end(),
                   [](const Vec3& a, const Vec3& b) { return depthOf(a) > depthOf(b); });
  for (const Vec3& p : points) glance.dots.push_back({seen(p), height > 0 ? (p.z() - z.low) / height : 0});
  if (metresPerUnit && *metresPerUnit > 0) {
    const Vec3 feet((x.low + x.high) / 2, (y.low + y.high) / 2, z.low);
    glance.person = Segment2{seen(feet), seen(feet + kGlancePerson / *metresPerUnit * Vec3::UnitZ())};
  }
  return glance;
}

}  // namespace baywright
