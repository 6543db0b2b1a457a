// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "optics/picture.h"

namespace baywright {

inline double degrees(double angle) {
  return angle * kPi / 180;
}

/// A screen of 3.2 by 1.8 m (16:9) with its middle 1.2 m above the floor.
inline Screen wideScreen() {
  Screen screen;
  screen.width = 3.2;
  screen.height = 1.8;
  screen.bottom = 0.3;
  return screen;
}

/// 1920 x 1080, throw 1.0 to 1.5, axis through the picture's middle, generous limits.
inline Projector centredProjector() {
  Projector projector;
  projector.throwMin = 1.0;
  projector.throwMax = 1.5;
  projector.offset = 0;
  projector.keystoneMax = degrees(30);
  return projector;
}

/// Hangs opposite the screen's middle and fills it exactly: 3.2 m of picture from 3.84 m.
inline ProjectorMount squareMount() {
  ProjectorMount mount;
  mount.lens = {-3.84, 0, 1.2};
  mount.throwRatio = 1.2;
  return mount;
}

/// Turned like that, and hung so that the axis still goes through the screen's middle from 3.84 m.
inline ProjectorMount turnedMount(double pitch, double yaw, double throwRatio) {
  ProjectorMount mount;
  mount.pitch = pitch;
  mount.yaw = yaw;
  mount.throwRatio = throwRatio;
  const Vec3 axis{std::cos(pitch) * std::cos(yaw), std::cos(pitch) * std::sin(yaw), std::sin(pitch)};
  mount.lens = Vec3{0, 0, 1.2} - 3.84 * axis;
  return mount;
}

inline Picture seen(const Screen& screen, const Projector& projector, const ProjectorMount& mount) {
  const Result<Picture> picture = pictureOf(screen, projector, mount);
  EXPECT_TRUE(picture) << picture.error().sentence();
  return picture.value();
}

/// Mounts that all throw a picture somewhere near the screen; each seed gives the same ones everywhere
/// (std::mt19937 and no library distribution).
class RandomMounts {
 public:
  explicit RandomMounts(std::uint32_t seed) : engine_(seed) {}

  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_()) / 4294967296.0);
  }

  ProjectorMount next() {
    ProjectorMount mount;
    mount.kind = engine_() % 2 ? MountKind::Ceiling : MountKind::Floor;
    mount.lens = {-between(2, 5), between(-1, 1), between(0.4, 2.6)};
    mount.yaw = between(-0.4, 0.4);
    mount.pitch = between(-0.4, 0.4);
    mount.roll = between(-0.2, 0.2);
    mount.throwRatio = between(0.8, 2.0);
    mount.shiftUp = between(-0.5, 0.5);
    mount.shiftSide = between(-0.3, 0.3);
    return mount;
  }

 private:
  std::mt19937 engine_;
};

inline void expectNear(const Vec2& a, const Vec2& b, double tolerance) {
  EXPECT_NEAR(a.x(), b.x(), tolerance);
  EXPECT_NEAR(a.y(), b.y(), tolerance);
}

inline void expectNear(const Vec3& a, const Vec3& b, double tolerance) {
  EXPECT_NEAR((a - b).norm(), 0, tolerance) << a.transpose() << " against " << b.transpose();
}

}  // namespace baywright
