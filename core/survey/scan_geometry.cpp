// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_geometry.h"

#include <array>
#include <utility>

namespace baywright {
namespace {

constexpr std::array kNames = {std::pair{UpAxis::PlusX, "x"}, std::pair{UpAxis::MinusX, "-x"},
                               std::pair{UpAxis::PlusY, "y"}, std::pair{UpAxis::MinusY, "-y"},
                               std::pair{UpAxis::PlusZ, "z"}, std::pair{UpAxis::MinusZ, "-z"}};

}  // namespace

std::string_view nameOf(UpAxis up) {
  for (const auto& [axis, name] : kNames)
    if (axis == up) return name;
  return {};
}

std::optional<UpAxis> upAxisFrom(std::string_view word) {
  if (word.starts_with('+')) word.remove_prefix(1);
  std::string low(word);
  for (char& c : low)
    if (c >= 'X' && c <= 'Z') c = static_cast<char>(c - 'X' + 'x');
  for (const auto& [axis, name] : kNames)
    if (low == name) return axis;
  return std::nullopt;
}

Mat3 uprightFrom(UpAxis up) {
  Mat3 turn;
  switch (up) {
    case UpAxis::PlusX:
      turn << 0, 1, 0, 0, 0, 1, 1, 0, 0;
      break;
    case UpAxis::MinusX:
      turn << 0, 0, 1, 0, 1, 0, -1, 0, 0;
      break;
    case UpAxis::PlusY:
      turn << 0, 0, 1, 1, 0, 0, 0, 1, 0;
      break;
    case UpAxis::MinusY:
      turn << 1, 0, 0, 0, 0, 1, 0, -1, 0;
      break;
    case UpAxis::PlusZ:
      turn.setIdentity();
      break;
    case UpAxis::MinusZ:
      turn << 0, 1, 0, 1, 0, 0, 0, 0, -1;
      break;
  }
  return turn;
}

ScanGeometry upright(ScanGeometry scan, double metresPerUnit, UpAxis up) {
  const Eigen::Matrix3f map = (metresPerUnit * uprightFrom(up)).cast<float>();
  for (Eigen::Vector3f& p : scan.points) p = map * p;
  scan.origin.setZero();
  scan.statedMetresPerUnit = 1;
  scan.statedUp = UpAxis::PlusZ;
  return scan;
}

}  // namespace baywright
