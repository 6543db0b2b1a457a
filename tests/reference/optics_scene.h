// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include "optics/picture.h"

namespace baywright::reference {

inline constexpr double kFoot = 0.3048;
inline constexpr double kInch = 0.0254;
inline constexpr double kDegree = kPi / 180;

/// A screen whose middle is at the lens's height, 1 m above the floor or more.
inline Screen screenOf(double width, double height) {
  Screen screen;
  screen.width = width;
  screen.height = height;
  screen.bottom = 0;
  return screen;
}

/// Square pixels, lens axis through the picture's middle.
inline Projector panelOf(int columns, int rows) {
  Projector projector;
  projector.panelWidth = columns;
  projector.panelHeight = rows;
  projector.offset = 0;
  projector.keystoneMax = 1;
  return projector;
}

inline ProjectorMount opposite(const Screen& screen, double distance, double throwRatio) {
  ProjectorMount mount;
  mount.lens = {-distance, 0, screen.bottom + 0.5 * screen.height};
  mount.throwRatio = throwRatio;
  return mount;
}

}  // namespace baywright::reference
