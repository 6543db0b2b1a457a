// SPDX-License-Identifier: Apache-2.0
#include "survey/adjustment.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <random>

#include "geometry/polygon_validity.h"
#include "job/edit.h"
#include "survey_list.h"

namespace baywright {
namespace {

using testing::readOff;
using testing::SurveyList;

const Ring kRectangle{{0, 0}, {6, 0}, {6, 4}, {0, 4}};
const Ring kLShape{{0, 0}, {7, 0}, {7, 3}, {4, 3}, {4, 5.5}, {0, 5.5}};

void expectFloor(const SurveyAdjustment& made, const Ring& corners, double tolerance) {
  ASSERT_EQ(made.corners.size(), corners.size());
  for (std::size_t i = 0; i < corners.size(); ++i)
    EXPECT_LT((made.corners[i].position - corners[i]).norm(), tolerance)
        << i << ": " << made.corners[i].position.transpose() << " for " << corners[i].transpose();
}

SurveyAdjustment adjusted(const SurveyList& list) {
  const auto made = adjust(list.network());
  EXPECT_TRUE(made.has_value()) << made.error().sentence();
  return made.value_or(SurveyAdjustment{});
}

// A pentagon with readings rounded to a millimetre. Expected: scipy 1.10.1, scipy.optimize.least_squares with
// method='lm' and all tolerances 1e-15 over the same weighted residuals; covariance inv(J^T J), redundancy
// 1 - diag(J inv(J^T J) J^T).
TEST(SurveyAdjustment, AgreesWithAGeneralSolver) {
  SurveyList list(5);
  list.wall('A', 6.012).wall('B', 2.488).wall('C', 3.208).wall('D', 3.662).wall('E', 4.019);
  list.diagonal('A', 'C', 6.763)
      .diagonal('A', 'D', 5.711)
      .diagonal('B', 'D', 4.932)
      .diagonal('B', 'E', 7.189);
  list.angle('D', 139.0).offset('A', 'D', 4.352);
  SurveyNetwork network = list.network();
  const double sigmas[] = {.003, .003, .003, .003, .003, .004, .004, .004, .004, 0.3 * kPi / 180, .005};
  for (std::size_t i = 0; i < 11; ++i) network.observations[i].sigma = sigmas[i];
  const auto made = adjust(network);
  ASSERT_TRUE(made.has_value()) << made.error().sentence();
  expectFloor(
      *made,
      {{0, 0}, {6.01200989, 0}, {6.29517437, 2.47203734}, {3.69644611, 4.3530533}, {0.05011449, 4.01861341}},
      2e-8);
  EXPECT_NEAR(made->weightedSquares, 0.4445290860984358, 1e-8);
  EXPECT_NEAR(made->tail, 0.9786715168141428, 1e-8);
  EXPECT_EQ(made->degreesOfFreedom, 4);
  const double redundancy[] = {0.16303402, 0.17093961, 0.17680864, 0.15250728, 0.09690751, 0.32187559,
                               0.41132459, 0.51783987, 0.38755061, 0.88147366, 0.71973861};
  const double w[] = {-0.008166,  -0.16310589, -0.04270129, 0.30998404, 0.07936511, -0.06580446,
                      0.09331034, 0.48312175,  -0.32759159, 0.49107646, -0.24831069};
  for (std::size_t i = 0; i < 11; ++i) {
    EXPECT_NEAR(made->readings[i].redundancy, redundancy[i], 1e-6) << i;
    EXPECT_NEAR(made->readings[i].standardised, -w[i], 2e-5)
        << i;  // adjusted - read, scipy's is read - adjusted
  }
  EXPECT_NEAR(made->corners[1].covariance.sigmaAlong({1, 0}), 2.74457534e-3, 1e-9);
  EXPECT_NEAR(made->corners[2].covariance.sigmaAlong({1, 0}), 3.52764813e-3, 1e-9);
  EXPECT_NEAR(made->corners[2].covariance.sigmaAlong({0, 1}), 2.75151395e-3, 1e-9);
  EXPECT_NEAR(made->corners[4].covariance.sigmaAlong({1, 0}), 3.92051176e-3, 1e-9);
  EXPECT_NEAR(made->corners[4].covariance.sigmaAlong({0, 1}), 2.84202493e-3, 1e-9);
}

TEST(SurveyAdjustment, TakesRoomsAsSquareWhereOnlyWallsWereRead) {
  const SurveyAdjustment made = adjusted(readOff(kRectangle));
  expectFloor(made, kRectangle, 1e-9);
  EXPECT_EQ(made.assumed.size(), 4u);
  ASSERT_EQ(made.notes.size(), 1u);
  EXPECT_NE(made.notes[0].find("A, B, C and D"), std::string::npos) << made.notes[0];
  // Four right angles to half a degree each hold the shear to a quarter of a degree over 4 m: 17 mm.
  EXPECT_NEAR(made.corners[3].covariance.sigmaAlong({1, 0}), 4 * kSquareSigma / 2, 1e-3);
}

TEST(SurveyAdjustment, AssumesNothingWhereADiagonalSays) {
  const Ring skew{{0, 0}, {6, 0}, {6.21, 4.05}, {0.17, 3.92}};
  const SurveyAdjustment made = adjusted(readOff(skew, {"AC"}));
  expectFloor(made, skew, 1e-9);
  EXPECT_TRUE(made.assumed.empty());
  EXPECT_TRUE(made.notes.empty());
  EXPECT_EQ(made.degreesOfFreedom, 0);
  for (const AdjustedReading& reading : made.readings) EXPECT_EQ(reading.standardised, 0) << reading.what;
}

TEST(SurveyAdjustment, FindsTheTurnsOfAnLShapeFromItsWalls) {
  expectFloor(adjusted(readOff(kLShape)), kLShape, 1e-9);
  const Ring other{{0, 0}, {4, 0}, {4, 2}, {7, 2}, {7, 6}, {0, 6}};
  expectFloor(adjusted(readOff(other)), other, 1e-9);
}

TEST(SurveyAdjustment, FindsAWallThatWasNotRead) {
  SurveyList list = readOff(kLShape);
  list.readings.erase(list.readings.begin() + 3);
  expectFloor(adjusted(list), kLShape, 1e-6);
  SurveyList half(4);
  half.wall('A', 6).wall('B', 4);
  expectFloor(adjusted(half), kRectangle, 1e-6);
}

TEST(SurveyAdjustment, FindsBaysWithSlantedWallsFromDiagonals) {
  const Ring bay{{0, 0}, {5, 0}, {5, 3}, {4, 4}, {1.2, 4.3}, {0, 3.1}};
  expectFloor(adjusted(readOff(bay, {"AC", "AD", "AE", "BD", "BF"})), bay, 1e-8);
}

TEST(SurveyAdjustment, SaysWhereAnotherShapeFitsAsWell) {
  // Two walls alone hold corner F, which may lie on either side of the line from E to A.
  const Ring bay{{0, 0}, {5, 0}, {5, 3}, {4, 4}, {1.2, 4.3}, {0, 3.1}};
  const SurveyAdjustment made = adjusted(readOff(bay, {"AC", "AD", "AE", "BD"}));
  expectFloor(made, bay, 1e-8);
  EXPECT_TRUE(made.shapeIsDoubtful);
  EXPECT_FALSE(adjusted(readOff(bay, {"AC", "AD", "AE", "BD", "BF"})).shapeIsDoubtful);
  EXPECT_FALSE(adjusted(readOff(kRectangle, {"AC"})).shapeIsDoubtful);
}

TEST(SurveyAdjustment, SaysWhereASquareRoomCouldBeAnotherSquareRoom) {
  // From its walls alone a niche is no other than a pier of the same size.
  const SurveyAdjustment niche =
      adjusted(readOff({{0, 0}, {6, 0}, {6, 4}, {4, 4}, {4, 4.6}, {2.5, 4.6}, {2.5, 4}, {0, 4}}));
  EXPECT_TRUE(niche.shapeIsDoubtful);
  // One shape only closes with the walls of these.
  EXPECT_FALSE(adjusted(readOff(kRectangle)).shapeIsDoubtful);
  EXPECT_FALSE(adjusted(readOff(kLShape)).shapeIsDoubtful);
}

TEST(SurveyAdjustment, FindsAChamferFromAngles) {
  const Ring chamfered{{0, 0}, {5, 0}, {5, 3}, {4, 4}, {0, 4}};
  SurveyList list = readOff(chamfered);
  list.angle('C', 135).angle('D', 135);
  expectFloor(adjusted(list), chamfered, 1e-6);
}

TEST(SurveyAdjustment, GivesTheSameForReadingsInAnyOrder) {
  SurveyList list = readOff(kLShape, {"AC", "AD", "BD", "DF", "AE"});
  list.offset('A', 'E', 5.5).angle('D', 270);
  const SurveyAdjustment first = adjusted(list);
  expectFloor(first, kLShape, 1e-8);
  std::mt19937 random(3);
  for (int round = 0; round < 20; ++round) {
    std::shuffle(list.readings.begin(), list.readings.end(), random);
    const SurveyAdjustment made = adjusted(list);
    expectFloor(made, first.ring(), 1e-9);
    EXPECT_LT((made.covariance - first.covariance).norm(), 1e-12);
  }
}

TEST(SurveyAdjustment, KeepsTheFirstCornerAndWallOfARoomThatIsDrawn) {
  SurveyList list = readOff(kRectangle, {"AC", "BD"});
  const Vec2 along(0.6, 0.8);
  Room room;
  room.walls = list.walls;
  for (std::size_t i = 0; i < 4; ++i) {
    const Vec2 drawn = kRectangle[i] + Vec2(i == 2 ? 0.3 : 0, i == 3 ? -0.2 : 0);
    room.walls[i].start = Vec2(10, -3) + drawn.x() * along + drawn.y() * leftOf(along);
  }
  const auto made = adjust(room, list.readings);
  ASSERT_TRUE(made.has_value());
  for (std::size_t i = 0; i < 4; ++i) {
    const Vec2 expected = Vec2(10, -3) + kRectangle[i].x() * along + kRectangle[i].y() * leftOf(along);
    EXPECT_LT((made->corners[i].position - expected).norm(), 1e-9);
  }
  // Corner B is known along the first wall only, so its covariance has that direction.
  EXPECT_NEAR(made->corners[1].covariance.sigmaAlong(leftOf(along)), 0, 1e-9);
  EXPECT_GT(made->corners[1].covariance.sigmaAlong(along), 5e-4);
  EXPECT_NEAR(std::tan(made->corners[1].ellipse.heading), along.y() / along.x(), 1e-6);
  EXPECT_EQ(made->corners[0].ellipse.major, 0);
}

TEST(SurveyAdjustment, TakesDrawnLengthsForWallsThatNobodyReadYet) {
  SurveyList list(6);
  list.wall('A', 7.05);
  Room room;
  room.walls = list.walls;
  for (std::size_t i = 0; i < 6; ++i) room.walls[i].start = kLShape[i];
  const auto made = adjust(room, list.readings);
  ASSERT_TRUE(made.has_value()) << made.error().sentence();
  EXPECT_NEAR(made->corners[1].position.x(), 7.05, 1e-3);
  EXPECT_NEAR(made->corners[4].position.y(), 5.5, 0.05);
  EXPECT_EQ(made->notes.size(), 2u);
}

TEST(SurveyAdjustment, SaysWhichCornersAreNotDetermined) {
  SurveyList list(6);
  list.wall('A', 7).wall('B', 3);
  const auto made = adjust(list.network());
  ASSERT_FALSE(made.has_value());
  EXPECT_NE(made.error().sentence().find("corner"), std::string::npos);
}

TEST(SurveyAdjustment, MoreReadingsNeverMakeACornerWorse) {
  SurveyList few = readOff(kLShape, {"AC", "AD", "BD", "AE"});
  SurveyList many = readOff(kLShape, {"AC", "AD", "BD", "AE", "DF", "CF"});
  const auto a = adjusted(few);
  const auto b = adjusted(many);
  for (std::size_t i = 0; i < 6; ++i)
    EXPECT_LE(b.corners[i].ellipse.major, a.corners[i].ellipse.major + 1e-12);
}

/// A room of right angles: a rectangle that loses a few of its corners, each for a smaller rectangle.
Ring randomRoom(std::mt19937& random, int cuts) {
  std::uniform_real_distribution<double> size(3.5, 9);
  std::uniform_real_distribution<double> share(0.2, 0.6);
  const double w = size(random);
  const double h = size(random);
  Ring ring{{0, 0}, {w, 0}, {w, h}, {0, h}};
  for (int tries = 0; tries < 50 && cuts > 0; ++tries) {
    const std::size_t i = 2 + random() % (ring.size() - 2);
    const Vec2 corner = ring[i];
    const Vec2 back = share(random) * (ring[i - 1] - corner);
    const Vec2 on = share(random) * (ring[(i + 1) % ring.size()] - corner);
    Ring cut = ring;
    cut[i] = corner + back;
    cut.insert(cut.begin() + static_cast<std::ptrdiff_t>(i) + 1, {corner + back + on, corner + on});
    if (signedArea(cut) <= 0 || !selfCrossings({cut, {}}).empty()) continue;
    ring = cut;
    --cuts;
  }
  return ring;
}

TEST(SurveyAdjustment, FindsRoomsOfRightAnglesFromNoisyWallsInAnyOrder) {
  std::mt19937 random(42);
  std::normal_distribution<double> noise(0, 0.0015);
  for (int round = 0; round < 60; ++round) {
    const Ring room = randomRoom(random, round % 5);
    SurveyList list = readOff(room);
    for (Measurement& reading : list.readings) reading.value += noise(random);
    std::shuffle(list.readings.begin(), list.readings.end(), random);
    expectFloor(adjusted(list), room, 0.06);
  }
}

// Monte Carlo: what the covariance promises is how the corners scatter when readings scatter.
TEST(SurveyAdjustment, PromisesTheScatterThatNoiseGives) {
  const Ring skew{{0, 0}, {6, 0}, {6.21, 4.05}, {0.17, 3.92}};
  const SurveyList exact = readOff(skew, {"AC", "BD"});
  const SurveyNetwork network = exact.network();
  const auto promised = adjust(network);
  std::mt19937 random(11);
  std::normal_distribution<double> normal;
  Mat2 scatter = Mat2::Zero();
  double squares = 0;
  constexpr int kRounds = 2000;
  for (int round = 0; round < kRounds; ++round) {
    SurveyNetwork noisy = network;
    for (Observation& o : noisy.observations) o.value += o.sigma * normal(random);
    const auto made = adjust(noisy, skew);
    ASSERT_TRUE(made.has_value());
    const Vec2 off = made->corners[2].position - skew[2];
    scatter += off * off.transpose() / kRounds;
    squares += made->weightedSquares / kRounds;
  }
  // The standard error of a variance from 2000 draws is 3 %.
  EXPECT_NEAR(scatter(0, 0) / promised->corners[2].covariance.xx, 1, 0.12);
  EXPECT_NEAR(scatter(1, 1) / promised->corners[2].covariance.yy, 1, 0.12);
  EXPECT_NEAR(squares, 1, 0.12);  // the mean of chi-square of one degree
}

TEST(SurveyAdjustment, IsFastEnoughForEveryKeystroke) {
  Ring ring;
  for (int i = 0; i < 12; ++i)
    ring.push_back({5 * std::cos(i * kPi / 6) + (i % 2) * 0.3, 4 * std::sin(i * kPi / 6)});
  SurveyList list = readOff(ring, {"AC", "AD", "AE", "AF", "AG", "AH", "AI", "AJ", "AK", "BD", "BE", "CF"});
  Room room;
  room.walls = list.walls;
  for (std::size_t i = 0; i < 12; ++i) room.walls[i].start = ring[i] + Vec2(0.01, -0.02) * (i % 3);
  const auto start = std::chrono::steady_clock::now();
  constexpr int kRounds = 20;
  for (int round = 0; round < kRounds; ++round) ASSERT_TRUE(adjust(room, list.readings).has_value());
  const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
  RecordProperty("milliseconds", std::to_string(1000 * taken.count() / kRounds));
  // Ten times what it takes, for busy machines and builds without optimisation.
  EXPECT_LT(taken.count() / kRounds, 0.05);
}

TEST(ErrorEllipse, FollowsItsCovariance) {
  const ErrorEllipse ellipse = errorEllipse95({4e-6, 0, 1e-6});
  EXPECT_NEAR(ellipse.major, 2.4477468e-3 * 2, 1e-9);
  EXPECT_NEAR(ellipse.minor, 2.4477468e-3, 1e-9);
  EXPECT_NEAR(ellipse.heading, 0, 1e-12);
  EXPECT_NEAR(errorEllipse95({2e-6, 1e-6, 2e-6}).heading, kPi / 4, 1e-12);
}

TEST(TakeAdjustment, MovesCornersAndKeepsIdsAndOpenings) {
  Job job = newJob();
  job = *setRoomOutline(job, kRectangle, Instrument::Drawing);
  Opening door;
  door.wall = job.room.walls[1].id;
  door.offset = taped(2.9);
  door.width = taped(0.9);
  job = *addOpening(job, door);
  std::vector<Measurement> readings;
  for (std::size_t i = 0; i < 4; ++i) {
    Measurement m;
    m.id = job.takeId();
    m.from = job.room.walls[i].id;
    m.value = i % 2 == 0 ? 6.0 : 3.7;
    readings.push_back(m);
  }
  const auto made = adjust(job.room, readings);
  ASSERT_TRUE(made.has_value());
  const auto after = takeAdjustment(job, *made);
  ASSERT_TRUE(after.has_value()) << after.error().sentence();
  EXPECT_NEAR(after->room.walls[2].start.y(), 3.7, 1e-9);
  EXPECT_EQ(after->room.walls[2].id, job.room.walls[2].id);
  EXPECT_EQ(after->room.walls[2].startCovariance, made->corners[2].covariance);
  EXPECT_NEAR(after->room.openings[0].offset.value, 2.8, 1e-9);
}

}  // namespace
}  // namespace baywright
