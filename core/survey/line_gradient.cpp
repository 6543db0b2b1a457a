// SPDX-License-Identifier: Apache-2.0
#include "survey/line_gradient.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace baywright::detail {

namespace {

constexpr int kReach = 3;

std::array<float, 2 * kReach + 1> smoothingKernel() {
  std::array<float, 2 * kReach + 1> kernel{};
  float sum = 0;
  for (int i = -kReach; i <= kReach; ++i) {
    const double t = i / kSmoothing;
    kernel[static_cast<std::size_t>(i + kReach)] = static_cast<float>(std::exp(-0.5 * t * t));
    sum += kernel[static_cast<std::size_t>(i + kReach)];
  }
  for (float& k : kernel) k /= sum;
  return kernel;
}

// One pass along rows, transposing, so that two passes smooth both ways and end as they began.
std::vector<float> smoothedTransposed(const std::vector<float>& in, int width, int height) {
  const auto kernel = smoothingKernel();
  std::vector<float> out(in.size());
  for (int y = 0; y < height; ++y) {
    const float* row = in.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(width);
    for (int x = 0; x < width; ++x) {
      float sum = 0;
      for (int k = -kReach; k <= kReach; ++k)
        sum += kernel[static_cast<std::size_t>(k + kReach)] * row[std::clamp(x + k, 0, width - 1)];
      out[static_cast<std::size_t>(x) * static_cast<std::size_t>(height) + static_cast<std::size_t>(y)] = sum;
    }
  }
  return out;
}

float noiseLevel(const GradientField& field) {
  // Every so many pixels will do.
  constexpr std::size_t kSamples = 200'000;
  const std::size_t step = std::max<std::size_t>(1, field.gx.size() / kSamples);
  std::vector<float> sizes;
  for (std::size_t i = 0; i < field.gx.size(); i += step)
    sizes.push_back(std::hypot(field.gx[i], field.gy[i]));
  const auto quarter = sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 4);
  std::nth_element(sizes.begin(), quarter, sizes.end());
  // A quarter of the gradients of Gaussian noise are smaller than 0.759 standard deviations (Rayleigh).
  constexpr float kQuarter = 0.759f;
  constexpr float kAboveNoise = 2.5f;
  constexpr float kWeakest = 3.0f;  // grey levels a pixel: the faintest pencil
  return std::max(kWeakest, kAboveNoise * *quarter / kQuarter);
}

}  // namespace

GradientField gradientsOf(const GrayImage& image) {
  std::vector<float> values(image.pixels.begin(), image.pixels.end());
  values = smoothedTransposed(values, image.width, image.height);
  values = smoothedTransposed(values, image.height, image.width);
  GradientField field{image.width, image.height, {}, {}, 0};
  field.gx.assign(values.size(), 0);
  field.gy.assign(values.size(), 0);
  for (int y = 1; y + 1 < image.height; ++y)
    for (int x = 1; x + 1 < image.width; ++x) {
      const std::size_t i = field.index(x, y);
      field.gx[i] = 0.5f * (values[i + 1] - values[i - 1]);
      field.gy[i] = 0.5f * (values[field.index(x, y + 1)] - values[field.index(x, y - 1)]);
    }
  field.least = noiseLevel(field);
  return field;
}

}  // namespace baywright::detail
