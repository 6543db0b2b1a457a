// SPDX-License-Identifier: Apache-2.0
#include "survey/network.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "survey/reading_sigma.h"
#include "survey_list.h"

namespace baywright {
namespace {

using testing::SurveyList;

TEST(SurveyNetwork, NamesReadingsByTheirCorners) {
  SurveyList list(4);
  list.wall('D', 4).diagonal('C', 'A', 7).angle('B', 90).offset('A', 'C', 4);
  const SurveyNetwork network = list.network();
  EXPECT_EQ(network.observations[0].what, "wall D");
  EXPECT_EQ(network.observations[0].to, 0);
  EXPECT_EQ(network.observations[1].what, "diagonal A-C");
  EXPECT_EQ(network.observations[2].what, "angle at B");
  EXPECT_EQ(network.observations[3].what, "corner C from wall A");
}

TEST(SurveyNetwork, PassesOverWhatIsSetAsideAndCeilingHeights) {
  SurveyList list(4);
  list.wall('A', 4).wall('B', 4).add(MeasurementKind::CeilingHeight, {}, {}, {}, 2.4);
  list.readings[1].used = false;
  EXPECT_EQ(list.network().observations.size(), 1u);
}

TEST(SurveyNetwork, CountsInnerAnglesOnTheRoomsSideInEitherOrder) {
  SurveyList list(6);
  list.add(MeasurementKind::Angle, list.id('C'), list.id('E'), list.id('D'), 1.5 * kPi);
  list.add(MeasurementKind::Angle, list.id('E'), list.id('C'), list.id('D'), 1.5 * kPi);
  const Ring corners{{0, 0}, {7, 0}, {7, 3}, {4, 3}, {4, 5}, {0, 5}};
  const SurveyNetwork network = list.network();
  for (const Observation& o : network.observations) EXPECT_NEAR(observed(o, corners), 1.5 * kPi, 1e-12);
}

TEST(SurveyNetwork, SettlesWhatHasNoSign) {
  SurveyList list(6);
  list.offset('C', 'E', 2).angle('A', 90);
  list.add(MeasurementKind::Angle, list.id('C'), list.id('E'), list.id('A'), 0.5);
  // Wall C runs back along y = 3; corner E lies behind it, seen from the room: to its right.
  const Ring corners{{0, 0}, {7, 0}, {7, 3}, {4, 3}, {4, 5}, {0, 5}};
  const auto made = settled(list.network().observations, corners);
  EXPECT_EQ(made[0].value, -2);
  EXPECT_NEAR(misclosure(made[0], corners), 0, 1e-12);
  EXPECT_LT(observed(made[2], corners), kPi);
}

TEST(SurveyNetwork, NamesWallsByBothEndsWhereTheirLettersRunBackwards) {
  SurveyList list(4);
  EXPECT_EQ(lengthName(list.network(), 1, 2), "wall B");
  EXPECT_EQ(lengthName(list.network(), 0, 3), "wall D");
  EXPECT_EQ(lengthName(*networkOf(list.walls, {}, true), 3, 0), "wall D-A");
  std::reverse(list.walls.begin() + 1, list.walls.end());  // A, D, C, B
  ASSERT_TRUE(lettersRunClockwise(list.walls));
  const SurveyNetwork turned = *networkOf(list.walls, {});
  EXPECT_EQ(lengthName(turned, 0, 1), "wall D-A");
  EXPECT_EQ(lengthName(turned, 2, 1), "wall C-D");
  EXPECT_EQ(lengthName(turned, 0, 3), "wall A-B");
  EXPECT_EQ(lengthName(turned, 1, 3), "diagonal B-D");
  EXPECT_EQ(lengthName(turned, 2, 0), "diagonal A-C");
}

TEST(SurveyNetwork, RefusesReadingsThatNameNothing) {
  const auto refusal = [](SurveyList list) {
    const auto made = networkOf(list.walls, list.readings);
    return made ? std::string() : made.error().sentence();
  };
  SurveyList list(4);
  EXPECT_NE(
      refusal(SurveyList(4).add(MeasurementKind::Diagonal, Id{1}, Id{77}, {}, 4)).find("not in the room"),
      std::string::npos);
  EXPECT_NE(refusal(SurveyList(4).diagonal('A', 'A', 4)).find("twice"), std::string::npos);
  EXPECT_NE(refusal(SurveyList(4).wall('A', -1)).find("wall A"), std::string::npos);
  EXPECT_NE(refusal(SurveyList(4).wall('A', std::nan(""))), "");
  EXPECT_NE(refusal(SurveyList(4).angle('A', 400)).find("360"), std::string::npos);
  EXPECT_NE(refusal(SurveyList(4).offset('A', 'B', 1)).find("end of wall"), std::string::npos);
  EXPECT_NE(refusal(SurveyList(4).add(MeasurementKind::WallLength, Id{1}, Id{3}, {}, 4)).find("diagonal"),
            std::string::npos);
  EXPECT_NE(refusal(SurveyList(2)), "");
}

// Each analytical derivative against a central difference.
TEST(SurveyNetwork, DerivativesAreSlopes) {
  const Ring corners{{0.2, -0.1}, {7, 0.3}, {6.8, 3.1}, {4, 2.9}, {4.4, 5}, {0.1, 5.2}};
  SurveyList list(6);
  list.wall('F', 1)
      .diagonal('B', 'E', 1)
      .angle('D', 200)
      .angle('A', 90)
      .offset('B', 'E', 2)
      .offset('E', 'A', 2);
  list.add(MeasurementKind::Angle, list.id('B'), list.id('E'), list.id('C'), 1);
  for (const Observation& o : settled(list.network().observations, corners)) {
    const Eigen::RowVectorXd row = derivative(o, corners);
    for (std::size_t i = 0; i < 2 * corners.size(); ++i) {
      Ring high = corners;
      Ring low = corners;
      high[i / 2](static_cast<Eigen::Index>(i % 2)) += 1e-6;
      low[i / 2](static_cast<Eigen::Index>(i % 2)) -= 1e-6;
      EXPECT_NEAR(row(static_cast<Eigen::Index>(i)), (observed(o, high) - observed(o, low)) / 2e-6, 1e-8)
          << o.what << " " << i;
    }
  }
}

TEST(ReadingSigma, FollowsTheInstrument) {
  Measurement reading;
  reading.value = 5;
  for (const Instrument how : {Instrument::Tape, Instrument::Laser, Instrument::Guess}) {
    reading.how = how;
    EXPECT_EQ(readingSigma(reading), instrumentSigma(how, 5));
  }
  reading.kind = MeasurementKind::Angle;
  reading.how = Instrument::Laser;
  EXPECT_NEAR(readingSigma(reading), 0.2 * kPi / 180, 1e-12);
}

}  // namespace
}  // namespace baywright
