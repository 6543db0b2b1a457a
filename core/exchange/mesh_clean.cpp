// SPDX-License-Identifier: Apache-2.0
#include "exchange/mesh_clean.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

namespace baywright {
namespace {

constexpr std::size_t kMostSampled = 100'000;
constexpr std::uint32_t kGone = std::numeric_limits<std::uint32_t>::max();

/// False for NaN as well.
bool isNumber(const Vec3& p) {
  return p.cwiseAbs().maxCoeff() < kLargestCoordinate && p.allFinite();
}

struct Middle {
  Vec3 median = Vec3::Zero();
  double reach = 0;  ///< along any axis
};

double quantile(std::vector<double>& values, double share) {
  const auto at = static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
  std::nth_element(values.begin(), values.begin() + at, values.end());
  return values[static_cast<std::size_t>(at)];
}

/// Of an even sample of the finite points; there must be one.
Middle middleOf(const std::vector<Vec3>& points) {
  const std::size_t stride = points.size() / kMostSampled + 1;
  std::vector<Vec3> sample;
  for (std::size_t i = 0; i < points.size(); i += stride)
    if (isNumber(points[i])) sample.push_back(points[i]);
  for (std::size_t i = 0; sample.empty() && i < points.size(); ++i)
    if (isNumber(points[i])) sample.push_back(points[i]);
  Middle middle;
  double span = 0;
  double largest = 0;
  for (int axis = 0; axis < 3; ++axis) {
    std::vector<double> values;
    for (const Vec3& p : sample) values.push_back(p[axis]);
    middle.median[axis] = quantile(values, 0.5);
    const double upper = quantile(values, 0.75);
    span = std::max(span, upper - quantile(values, 0.25));
    const auto [low, high] = std::minmax_element(values.begin(), values.end());
    largest = std::max(largest, *high - *low);
  }
  middle.reach = kFarOff * span;
  // Most points in one place say nothing of how far the others may be.
  if (!(span > 0)) middle.reach = largest;
  return middle;
}

bool isNear(const Vec3& p, const Middle& middle) {
  return (p - middle.median).cwiseAbs().maxCoeff() <= middle.reach;
}

/// Places of kept points, and the points themselves moved there.
std::vector<std::uint32_t> keepPoints(const std::vector<Vec3>& points, const Middle& middle,
                                      ScanGeometry& scan) {
  std::vector<std::uint32_t> place(points.size(), kGone);
  scan.origin = middle.median;
  scan.points.reserve(points.size());
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (!isNumber(points[i])) {
      ++scan.notFinite;
    } else if (!isNear(points[i], middle)) {
      ++scan.farOff;
    } else {
      place[i] = static_cast<std::uint32_t>(scan.points.size());
      scan.points.push_back((points[i] - middle.median).cast<float>());
    }
  }
  return place;
}

std::size_t edgesOfMoreThanTwo(const std::vector<TriangleMesh::Corners>& triangles) {
  std::vector<std::uint64_t> edges;
  edges.reserve(3 * triangles.size());
  for (const auto& corners : triangles)
    for (std::size_t i = 0; i < 3; ++i) {
      const auto [low, high] = std::minmax(corners[i], corners[(i + 1) % 3]);
      edges.push_back(static_cast<std::uint64_t>(low) << 32 | high);
    }
  std::sort(edges.begin(), edges.end());
  std::size_t found = 0;
  for (std::size_t i = 0; i < edges.size();) {
    std::size_t end = i;
    while (end < edges.size() && edges[end] == edges[i]) ++end;
    if (end - i > 2) ++found;
    i = end;
  }
  return found;
}

/// The share of the surface whose front looks away from the scan's middle, where nobody scanned from.
double shareFacingOutward(const ScanGeometry& scan) {
  double outward = 0;
  double all = 0;
  for (const auto& [a, b, c] : scan.triangles) {
    const Vec3 pa = scan.points[a].cast<double>();
    const Vec3 normal = (scan.points[b].cast<double>() - pa).cross(scan.points[c].cast<double>() - pa);
    all += normal.norm();
    if (normal.dot(pa) > 0) outward += normal.norm();
  }
  return all > 0 ? outward / all : 0;
}

void remark(ScanGeometry& scan) {
  if (scan.triangles.size() > kMostTrianglesLookedOver) return;
  if (const std::size_t edges = edgesOfMoreThanTwo(scan.triangles))
    scan.notes.push_back("In the mesh " + std::to_string(edges) +
                         " edges belong to more than two triangles; it was taken as it is.");
  if (shareFacingOutward(scan) > 0.5)
    scan.notes.push_back("Most triangles show their back to the room; their sides are not used.");
}

}  // namespace

Result<ScanGeometry> cleaned(RawScan raw) {
  ScanGeometry scan;
  scan.statedMetresPerUnit = raw.metresPerUnit;
  scan.statedUp = raw.up;
  scan.thinnedOut = raw.thinnedOut;
  scan.notes = std::move(raw.notes);
  constexpr std::size_t kFewest = 3;
  const bool hasFinite = std::any_of(raw.points.begin(), raw.points.end(), isNumber);
  if (!hasFinite) return fail("The scan has no point whose coordinates are numbers.");
  const bool isMesh = !raw.triangles.empty();
  const auto place = keepPoints(raw.points, middleOf(raw.points), scan);
  raw.points = {};
  if (scan.points.size() < kFewest)
    return fail("The scan has only " + std::to_string(scan.points.size()) + " points.", {},
                "A room needs thousands.");
  if (!isMesh) return scan;
  std::erase_if(raw.triangles, [&](TriangleMesh::Corners& corners) {
    for (std::uint32_t& corner : corners) corner = place[corner];
    return std::any_of(corners.begin(), corners.end(), [](std::uint32_t corner) { return corner == kGone; });
  });
  scan.triangles = std::move(raw.triangles);
  if (scan.triangles.empty()) return fail("No triangle of the mesh has corners that can be used.");
  remark(scan);
  return scan;
}

}  // namespace baywright
