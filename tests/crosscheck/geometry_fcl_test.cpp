// SPDX-License-Identifier: Apache-2.0
// Gaps of capsules and boxes beside FCL's 0.7, a peer on another road (libccd's GJK and MPR). It is no judge
// of truth: in about one pair in a thousand it errs by millimetres. There exhaustive search says who is
// right.
#include <gtest/gtest.h>

#include <cmath>

#include "brute_force.h"
#include "fcl_pairs.h"

namespace baywright {
namespace {

double searched(const test::FclPair& pair) {
  const Segment3 axis{pair.capsule.a, pair.capsule.b};
  const double toAxis = test::leastConvex(
      [&](double share) { return test::distanceTo(pair.box, axis.a + share * (axis.b - axis.a)); });
  return toAxis - pair.capsule.radius;
}

TEST(Fcl, FindsTheSameGapsOrIsWrong) {
  constexpr int kPairs = 200000;
  constexpr double kSame = 1e-4;
  test::RandomShapes random(41);
  int apart = 0;
  int differing = 0;
  for (int i = 0; i < kPairs; ++i) {
    const test::FclPair pair = test::randomFclPair(random);
    const double ours = closest(pair.capsule, pair.box).distance;
    if (ours < 0.001) continue;  // FCL tells no depth here, only that they meet
    ++apart;
    const double theirs = test::fclDistance(pair);
    if (std::abs(theirs - ours) < kSame) continue;
    ++differing;
    EXPECT_NEAR(ours, searched(pair), 1e-6) << "where FCL says " << theirs;
  }
  EXPECT_GT(apart, kPairs / 2);
  EXPECT_LT(differing, apart / 100);
}

}  // namespace
}  // namespace baywright
