// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <cmath>

namespace baywright {

/// How many pieces an edge of a triangle is cut into so that its samples lie no farther apart than `spacing`
/// (metres, > 0); bounded, for a scanned triangle may be kilometres long.
inline int piecesAlong(const Eigen::Vector3f& a, const Eigen::Vector3f& b, const Eigen::Vector3f& c,
                       double spacing) {
  constexpr double kMostPieces = 1000;
  const double longest =
      static_cast<double>(std::max({(b - a).norm(), (c - b).norm(), (a - c).norm()}));
  return static_cast<int>(std::clamp(std::ceil(longest / spacing), 1.0, kMostPieces));
}

/// Calls `take` with the middles of the pieces * pieces equal parts of a triangle.
template <class Take>
void sampleTriangle(const Eigen::Vector3f& a, const Eigen::Vector3f& b, const Eigen::Vector3f& c, int pieces,
                    const Take& take) {
  const float step = 1.0f / static_cast<float>(pieces);
  for (int i = 0; i < pieces; ++i)
    for (int j = 0; i + j < pieces; ++j)
      for (int half = 0; half < (i + j + 1 < pieces ? 2 : 1); ++half) {
        const float shift = half == 0 ? 1.0f / 3 : 2.0f / 3;
        const float u = (static_cast<float>(i) + shift) * step;
        const float v = (static_cast<float>(j) + shift) * step;
        take(a + u * (b - a) + v * (c - a));
      }
}

}  // namespace baywright
