// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <random>

#include "support/job_builder.h"

namespace baywright::testing {

/// A garage with a few things in it and one or two golfers, some of it in each other's way. The same seed
/// gives the same job.
inline Job randomJob(unsigned seed) {
  std::mt19937 random(seed);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  const double length = between(6, 9);
  const double width = between(4, 7);
  JobBuilder builder =
      random() % 2 ? garage(length, width) : lShapedRoom(length, width, length * 0.35, width * 0.3);
  const double low = between(2.4, 3.2);
  builder.withSlopedCeiling(low, low + between(-0.1, 0.8), width);
  if (random() % 2) {
    builder.withCeilingPart({{0, 0}, {length / 3, 0}, {length / 3, width / 2}, {0, width / 2}}, low - 0.2);
  }
  if (random() % 2) {
    const double x = between(1, length - 1);
    builder.withBeam({x, 0}, {x + between(-0.5, 0.5), width}, 0.2, low - 0.15, low + 0.2);
  }
  if (random() % 2) builder.withShelf("A", 0.5, 2.0, between(0.3, 0.6), between(1.0, 2.2));
  if (random() % 2)
    builder.withColumn({between(1, length - 1), between(1, width - 1)}, between(0.05, 0.2), 3);
  if (random() % 2) builder.withLight({between(1, length - 1), between(1, width - 1)}, 0.25, low - 0.12, low);
  builder.withDoor("D", between(0.3, 1.0));
  builder.withGolfer(between(1.5, 2.0), random() % 2 ? Hand::Left : Hand::Right, "Robin")
      .withClub(between(0.9, 1.2));
  if (random() % 2) builder.withGolfer(between(1.5, 2.0), Hand::Left, "Kim").withClub();
  builder.bayAt(length - between(0.4, 1.5), width / 2 + between(-0.4, 0.4), between(-0.2, 0.2));
  builder.strikingFrom(between(2.4, 3.4), between(-0.2, 0.3), between(-0.3, 0.2));
  return builder.uncheckedJob();
}

}  // namespace baywright::testing
