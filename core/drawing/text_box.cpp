// SPDX-License-Identifier: Apache-2.0
#include "drawing/text_box.h"

#include "drawing/mark_shapes.h"
#include "drawing/text_width.h"

namespace baywright {

Eigen::AlignedBox2d boxOf(const Text& text, double unitsPerMm) {
  const double width =
      textWidthMm(text.text, text.heightMm, text.bold ? FontFace::Bold : FontFace::Regular) * unitsPerMm;
  const double height = text.heightMm * unitsPerMm;
  const double left = text.anchor == TextAnchor::Left     ? 0
                      : text.anchor == TextAnchor::Centre ? -width / 2
                                                          : -width;
  const Eigen::Rotation2Dd turn(text.angle);
  Eigen::AlignedBox2d box;
  for (const double x : {left, left + width}) {
    for (const double y : {-height / 3, height}) box.extend(text.at + turn * Vec2(x, y));
  }
  return box;
}

std::optional<Eigen::AlignedBox2d> inkExtent(const Linework& linework, double unitsPerMm) {
  const Linework marks = exploded(linework, unitsPerMm);
  Eigen::AlignedBox2d box;
  if (const auto paths = marks.extent()) box = *paths;
  for (const Text& text : marks.texts) box.extend(boxOf(text, unitsPerMm));
  if (box.isEmpty()) return std::nullopt;
  return box;
}

}  // namespace baywright
