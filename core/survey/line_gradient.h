// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/line_detect.h"

namespace baywright::detail {

/// Gradients of a picture that was smoothed a little. Value (x, y) is the gradient at pixel coordinates
/// (x + 0.5, y + 0.5), the pixel's middle. The outermost pixels have none.
struct GradientField {
  int width = 0;
  int height = 0;
  std::vector<float> gx;
  std::vector<float> gy;
  float least = 0;  ///< weaker ones are taken for noise

  std::size_t index(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
  }
  Vec2 at(std::size_t i) const { return {gx[i], gy[i]}; }
  Vec2 place(std::size_t i) const {
    const auto w = static_cast<std::size_t>(width);
    return {static_cast<double>(i % w) + 0.5, static_cast<double>(i / w) + 0.5};
  }
};

/// Smoothing widens an edge to about this many pixels to either side of it.
inline constexpr double kSmoothing = 1.0;

/// `least` is set from the picture's own noise: from the weakest quarter of its gradients, as most pixels of
/// a plan are bare paper.
GradientField gradientsOf(const GrayImage& image);

}  // namespace baywright::detail
