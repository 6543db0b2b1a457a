// SPDX-License-Identifier: Apache-2.0
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

Job withRestitution(double restitution) {
  return roomyHall().with([&](Job& j) { j.options[0].kit.screen.restitution = restitution; }).job();
}

TEST(BallRebound, IsSlowerFromASofterScreen) {
  const double hard = figureOf(assess(withRestitution(0.3)), "ball.right.rebound.speed");
  const double soft = figureOf(assess(withRestitution(0.1)), "ball.right.rebound.speed");
  EXPECT_GT(hard, soft);
}

TEST(BallRebound, JudgesBySpeedAtTheStrikePoint) {
  EXPECT_EQ(findingOf(withRestitution(0.3), "ball_rebound/right").verdict, Verdict::Blocked);
  const Finding dead = findingOf(withRestitution(0.0), "ball_rebound/right");
  EXPECT_EQ(dead.verdict, Verdict::Clear);
  EXPECT_TRUE(contains(dead.sentence, "balls stop")) << dead.sentence;
}

TEST(BallRebound, GivesTheEnergyThatTheScreenTakes) {
  // 45.93 g at 70 m/s is 112.5 J; a few metres of air take about 2 %.
  EXPECT_NEAR(figureOf(assess(withRestitution(0.1)), "ball.right.rebound.energy"), 112.5 * 0.97,
              112.5 * 0.03);
}

}  // namespace
}  // namespace baywright
