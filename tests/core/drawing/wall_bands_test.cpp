// SPDX-License-Identifier: Apache-2.0
#include "drawing/wall_bands.h"

#include <gtest/gtest.h>

#include "geometry/polygon.h"
#include "geometry/polygon_sets.h"
#include "support/job_builder.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

double areaOf(const std::vector<WallBand>& bands) {
  PolygonSet all;
  for (const WallBand& band : bands) {
    for (const auto& solid : band.solids) all.push_back({solid, {}});
  }
  return area(unionOf(all).value());
}

double sumOf(const std::vector<WallBand>& bands) {
  double sum = 0;
  for (const WallBand& band : bands) {
    for (const auto& solid : band.solids) sum += signedArea(solid);
  }
  return sum;
}

TEST(WallBands, OfARectangleMeetAtTheirMitresWithoutOverlap) {
  const auto bands = wallBands(garage(6, 4).job().room);
  ASSERT_EQ(bands.size(), 4u);
  const double masonry = 6.2 * 4.2 - 6.0 * 4.0;  // 0.1 m all around
  EXPECT_NEAR(sumOf(bands), masonry, 1e-9);
  EXPECT_NEAR(areaOf(bands), masonry, 1e-4);
}

TEST(WallBands, OfAConcaveRoomMeetAtItsInwardCornerToo) {
  const auto bands = wallBands(lShapedRoom(6, 4, 2, 1.5).job().room);
  const double outside = 6.2 * 4.2 - 2 * 1.5;  // the notch keeps its size, moved by the thickness
  const double inside = 6.0 * 4.0 - 2 * 1.5;
  EXPECT_NEAR(sumOf(bands), outside - inside, 1e-9);
  EXPECT_NEAR(areaOf(bands), outside - inside, 1e-4);
}

TEST(WallBands, FollowDifferentThicknesses) {
  Job job = garage(6, 4).job();
  job.room.walls[1].thickness = 0.3;
  EXPECT_NEAR(sumOf(wallBands(job.room)), 6.4 * 4.2 - 24.0, 1e-9);
}

TEST(WallBands, AreCutThroughByOpenings) {
  const auto whole = wallBands(garage(6, 4).job().room);
  const auto cut =
      wallBands(garage(6, 4).withDoor("A", 1.0, 0.9).withWindow("A", 3.0, 1.5, 0.9, 1.2).job().room);
  EXPECT_EQ(cut[0].solids.size(), 3u);
  EXPECT_NEAR(sumOf(whole) - sumOf(cut), (0.9 + 1.5) * 0.1, 1e-9);
  // two faces for each of three pieces, two jambs for each of two openings
  EXPECT_EQ(cut[0].edges.size(), 3u * 2 + 2 * 2);
}

TEST(WallBands, BearAnOpeningThatReachesTheCorner) {
  const auto bands = wallBands(garage(6, 4).withPassage("A", 0, 1.0).job().room);
  double length = 0;
  for (const auto& solid : bands[0].solids) length += signedArea(solid) / 0.1;
  EXPECT_NEAR(length, 5.0 + 2 * 0.05, 1e-9);  // the mitred ends belong half to the neighbours
}

TEST(WallBands, OfASharpCornerStayShort) {
  const Job job = roomOver({{0, 0}, {6, 0}, {0, 0.5}}).uncheckedJob();
  for (const WallBand& band : wallBands(job.room)) {
    for (const auto& solid : band.solids) {
      for (const Vec2& p : solid) EXPECT_LT(p.norm(), 8) << p.transpose();
    }
  }
}

TEST(WallBands, OfARoomBeforeSurveyAreNone) {
  EXPECT_TRUE(wallBands(Room{}).empty());
}

}  // namespace
}  // namespace baywright::detail
