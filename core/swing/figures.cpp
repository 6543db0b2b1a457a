// SPDX-License-Identifier: Apache-2.0
#include "swing/figures.h"

#include <limits>

namespace baywright {
namespace {

Extreme farthest(std::span<const SwingCapsule> capsules, const Vec3& direction) {
  Extreme best;
  best.value = -std::numeric_limits<double>::infinity();
  for (const SwingCapsule& each : capsules) {
    const double a = direction.dot(each.capsule.a);
    const double b = direction.dot(each.capsule.b);
    const Vec3& end = a >= b ? each.capsule.a : each.capsule.b;
    const double value = (a >= b ? a : b) + each.capsule.radius;
    if (value > best.value) best = {value, end + each.capsule.radius * direction, each.moment, each.part};
  }
  return best;
}

}  // namespace

EnvelopeFigures figuresOf(std::span<const SwingCapsule> capsules, Hand hand) {
  if (capsules.empty()) return {};
  const Vec3 beyond(0, hand == Hand::Right ? 1 : -1, 0);
  const Vec3 target(1, 0, 0);
  return {farthest(capsules, {0, 0, 1}), farthest(capsules, -beyond), farthest(capsules, target),
          farthest(capsules, -target), farthest(capsules, beyond)};
}

}  // namespace baywright
