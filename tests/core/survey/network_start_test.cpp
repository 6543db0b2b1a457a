// SPDX-License-Identifier: Apache-2.0
#include "survey/network_start.h"

#include <gtest/gtest.h>

#include "survey_list.h"

namespace baywright {
namespace {

using testing::readOff;
using testing::SurveyList;

bool isNear(const Ring& a, const Ring& b, double tolerance) {
  for (std::size_t i = 0; i < b.size(); ++i)
    if ((a[i] - b[i]).norm() > tolerance) return false;
  return true;
}

TEST(NetworkStart, FindsRoomsOfRightAnglesFromTheirWalls) {
  const Ring rooms[] = {
      {{0, 0}, {6, 0}, {6, 4}, {0, 4}},
      {{0, 0}, {7, 0}, {7, 3}, {4, 3}, {4, 5.5}, {0, 5.5}},
      {{0, 0}, {2.5, 0}, {2.5, 1.2}, {4.1, 1.2}, {4.1, 0}, {7, 0}, {7, 5}, {0, 5}},
      {{0, 0}, {9, 0}, {9, 2}, {6.5, 2}, {6.5, 4}, {8, 4}, {8, 7.3}, {3, 7.3}, {3, 5}, {0, 5}},
  };
  for (const Ring& room : rooms)
    EXPECT_TRUE(isNear(startingCorners(readOff(room).network()).front(), room, 1e-9)) << room.size();
}

TEST(NetworkStart, IsNotLedAstrayByOneBlunder) {
  const Ring room{{0, 0}, {7, 0}, {7, 3}, {4, 3}, {4, 5.5}, {0, 5.5}};
  for (std::size_t wrong = 0; wrong < 6; ++wrong) {
    SurveyList list = readOff(room, {"AC", "AD", "AE", "BD", "DF"});
    list.readings[wrong].value += 1;
    bool isThere = false;
    for (const Ring& start : startingCorners(list.network())) isThere |= isNear(start, room, 1.01);
    EXPECT_TRUE(isThere) << wrong;
  }
}

TEST(NetworkStart, KeepsTheLikelierPlaceWhereManyReadingsAgreeOnAnother) {
  // The last corner hangs on two walls only, so that it may lie on either side; nearly everything else was
  // read, the walls twice and each time a little off.
  const Ring bay{{0, 0},      {5.66, 0},   {5.69, 3.79}, {4.29, 3.8},
                 {3.7, 4.76}, {2.0, 4.77}, {1.42, 3.79}, {0.03, 3.85}};
  SurveyList list =
      readOff(bay, {"AC", "AD", "AE", "AF", "AG", "BD", "BE", "BF", "BG", "CG", "DF", "DG", "EG"});
  for (std::size_t i = 0; i < 8; ++i)
    list.wall(static_cast<char>('A' + i), list.readings[i].value + (i % 2 == 0 ? 0.004 : -0.003));
  EXPECT_TRUE(isNear(startingCorners(list.network()).front(), bay, 0.05))
      << startingCorners(list.network()).front().back().transpose();
}

TEST(NetworkStart, IsNeverEmpty) {
  for (int corners = 3; corners < 20; ++corners) {
    const auto starts = startingCorners(SurveyList(corners).network());
    ASSERT_FALSE(starts.empty()) << corners;
    EXPECT_EQ(starts.front().size(), static_cast<std::size_t>(corners));
  }
}

}  // namespace
}  // namespace baywright
