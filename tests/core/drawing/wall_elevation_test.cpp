// SPDX-License-Identifier: Apache-2.0
#include "drawing/wall_elevation.h"

#include <gtest/gtest.h>

#include "drawing/sheets.h"
#include "drawing/views.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

Linework wallOf(const Job& job, const std::string& name) {
  return viewLinework({ViewKind::Wall, idNamed(job, "Wall " + name)}, job, Assessment{}, {});
}

Eigen::AlignedBox2d drawnOf(const Linework& linework, Id id, Layer layer) {
  Eigen::AlignedBox2d box;
  for (const Path& path : linework.paths) {
    if (path.id != id || path.layer != layer) continue;
    for (const auto& ring : path.rings)
      for (const Vec2& p : ring) box.extend(p);
  }
  return box;
}

TEST(WallElevation, ShowsFaceOpeningsAndWhatHangsOnTheWall) {
  const Job job = garage(8, 6)
                      .withCeiling(2.5)
                      .withWindow("A", 2, 1, 0.9, 1.2)
                      .withDoor("B", 1)
                      .withShelf("A", 5, 1, 0.4, 1.8)
                      .withBox("Crate", {4, 4}, 1, 1, 0, 1)
                      .job();
  const Linework drawn = wallOf(job, "A");
  const auto face = drawnOf(drawn, idNamed(job, "Wall A"), Layer::Floor);
  EXPECT_TRUE(face.isApprox(Eigen::AlignedBox2d(Vec2(0, 0), Vec2(8, 2.5)), 1e-9));
  EXPECT_TRUE(drawnOf(drawn, idNamed(job, "Window"), Layer::Openings)
                  .isApprox(Eigen::AlignedBox2d(Vec2(5, 0.9), Vec2(6, 2.1)), 1e-9));
  EXPECT_TRUE(drawnOf(drawn, idNamed(job, "Shelf"), Layer::Fixtures)
                  .isApprox(Eigen::AlignedBox2d(Vec2(2, 0), Vec2(3, 1.8)), 1e-9));
  EXPECT_TRUE(drawnOf(drawn, idNamed(job, "Door"), Layer::Openings).isEmpty());
  EXPECT_TRUE(drawnOf(drawn, idNamed(job, "Crate"), Layer::Fixtures).isEmpty());  // four metres away
}

TEST(WallElevation, FollowsASlopeAndAStepOfTheCeiling) {
  const Job sloped = garage(8, 6).withSlopedCeiling(2.4, 3.0, 6).job();
  const auto face = drawnOf(wallOf(sloped, "B"), idNamed(sloped, "Wall B"), Layer::Floor);
  EXPECT_NEAR(face.max().y(), 3.0, 2e-3);
  EXPECT_NEAR(face.sizes().x(), 6, 1e-9);
  const Job stepped =
      garage(8, 6).withCeiling(3.0).withCeilingPart({{0, 0}, {3, 0}, {3, 6}, {0, 6}}, 2.2).job();
  const Linework drawn = wallOf(stepped, "A");
  bool hasStep = false;
  for (const Path& path : drawn.paths) {
    if (path.layer != Layer::Floor) continue;
    for (std::size_t i = 0; i + 1 < path.rings.at(0).size(); ++i) {
      const Vec2& p = path.rings[0][i];
      const Vec2& q = path.rings[0][i + 1];
      hasStep |= std::abs(p.x() - q.x()) < 1e-9 && std::abs(p.x() - 5) < 1e-9 &&
                 std::abs(std::abs(p.y() - q.y()) - 0.8) < 1e-9;
    }
  }
  EXPECT_TRUE(hasStep);
}

TEST(WallElevation, EndsInAnEdgeAtACornerThatPointsIntoTheRoom) {
  // An L: wall C ends, and wall D starts, at the corner that points into the room.
  const Job job = JobBuilder({{0, 0}, {8, 0}, {8, 3}, {4, 3}, {4, 6}, {0, 6}}).withCeiling(2.5).job();
  const auto extent = [&](const std::string& name) {
    Eigen::AlignedBox2d box;
    for (const Path& path : wallOf(job, name).paths) {
      for (const auto& ring : path.rings)
        for (const Vec2& p : ring) box.extend(p);
    }
    return box;
  };
  // Wall C is 4 m long. Its left end is that corner; on the right wall B is cut.
  EXPECT_NEAR(extent("C").min().x(), 0, 1e-9);
  EXPECT_GT(extent("C").max().x(), 4.05);
}

TEST(WallElevation, OfNoWallIsEmpty) {
  const Job job = garage(8, 6).job();
  EXPECT_TRUE(viewLinework({ViewKind::Wall, {}}, job, Assessment{}, {}).paths.empty());
  EXPECT_TRUE(viewLinework({ViewKind::Wall, {}}, newJob(), Assessment{}, {}).paths.empty());
}

TEST(WallsSheet, PrintsEveryWallOnceToScaleWithinTheFrame) {
  const Job job = JobBuilder({{0, 0}, {8, 0}, {8, 3}, {4, 3}, {4, 6}, {0, 6}}).withCeiling(2.5).job();
  for (const PaperSize paper : {PaperSize::A4, PaperSize::A3}) {
    SheetRequest request;
    request.paper = paper;
    const auto pages = makeSheet("walls", job, Assessment{}, request);
    ASSERT_TRUE(pages) << pages.error().sentence();
    std::size_t captions = 0;
    for (const SheetPage& page : *pages) {
      EXPECT_GT(page.scaleDenominator, 0);
      const auto extent = page.marks.extent();
      ASSERT_TRUE(extent);
      EXPECT_GE(extent->min().minCoeff(), 0);
      EXPECT_LE(extent->max().x(), page.widthMm);
      EXPECT_LE(extent->max().y(), page.heightMm);
      for (const Text& text : page.marks.texts)
        captions += text.text.find(" from inside") != std::string::npos ? 1 : 0;
    }
    EXPECT_EQ(captions, 6U);
  }
}

TEST(WallsSheet, SaysWhatToDoWhereAWallDoesNotFit) {
  SheetRequest request;
  request.scale = 5;
  const auto pages = makeSheet("walls", garage(8, 6).job(), Assessment{}, request);
  ASSERT_FALSE(pages);
  EXPECT_NE(pages.error().sentence().find("larger paper"), std::string::npos);
}

}  // namespace
}  // namespace baywright
