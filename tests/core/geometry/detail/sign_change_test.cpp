// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/sign_change.h"

#include <gtest/gtest.h>

#include <cmath>

namespace baywright::detail {
namespace {

struct Counted {
  double root = 0;
  int calls = 0;
};
template <class Function>
Counted solve(const Function& f, double low, double high) {
  Counted result;
  result.root = signChange(
      [&](double x) {
        ++result.calls;
        return f(x);
      },
      low, high);
  return result;
}

TEST(SignChange, OfASmoothFunctionTakesFewSteps) {
  const Counted c = solve([](double x) { return x * x - 2; }, 0, 2);
  EXPECT_NEAR(c.root, std::sqrt(2.0), 1e-15);
  EXPECT_LT(c.calls, 20);
}

TEST(SignChange, SurvivesFlatPiecesCornersAndSteps) {
  const Counted flat = solve([](double x) { return x < 0.9 ? -1e-30 : x - 0.9 + 1e-30; }, 0, 1);
  EXPECT_NEAR(flat.root, 0.9, 1e-15);
  const Counted corner = solve([](double x) { return x < 0.3 ? 1e-9 * (x - 0.3) : 1e9 * (x - 0.3); }, 0, 1);
  EXPECT_NEAR(corner.root, 0.3, 1e-15);
  const Counted step = solve([](double x) { return x < 0.7 ? -1.0 : 1.0; }, 0, 1);
  EXPECT_NEAR(step.root, 0.7, 1e-15);
  for (const Counted& c : {flat, corner, step}) EXPECT_LT(c.calls, 180);
}

TEST(SignChange, StopsAtAnExactZero) {
  EXPECT_EQ(solve([](double x) { return x < 0.25 ? -1.0 : (x > 0.75 ? 1.0 : 0.0); }, 0, 1).calls, 3);
}

}  // namespace
}  // namespace baywright::detail
