// SPDX-License-Identifier: Apache-2.0
#include "optics/mounting_zone.h"

#include <limits>

#include "optics_scene.h"

namespace baywright {
namespace {

constexpr AimNeeds kExact{.coverage = 1.0, .spill = 0.0};

/// With an offset that suits the height and nothing to correct, distance is throw ratio times width.
TEST(MountingZone, IsTheThrowRangeTimesTheWidthWhenNothingElseLimits) {
  Projector projector = centredProjector();
  projector.shiftUpMax = 0.6;
  const auto zone = mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, kExact).value();
  EXPECT_NEAR(zone.nearest, 1.0 * 3.2, 1.5e-3);
  EXPECT_NEAR(zone.farthest, 1.5 * 3.2, 1.5e-3);
}

TEST(MountingZone, LessNeedWidensIt) {
  Projector projector = centredProjector();
  projector.shiftUpMax = 0.6;
  const auto exact = mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, kExact).value();
  const auto relaxed =
      mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, {.coverage = 0.9, .spill = 0.2}).value();
  // Nine tenths of the area from the widest zoom: sides shrink by sqrt(0.9), and distance with them.
  EXPECT_NEAR(relaxed.nearest, 3.2 * std::sqrt(0.9), 1.5e-3);
  EXPECT_NEAR(relaxed.farthest, 4.8 / std::sqrt(0.8), 1.5e-3);
  EXPECT_LT(relaxed.nearest, exact.nearest);
}

TEST(MountingZone, FindsTheFewCentimetresOfAProjectorWithoutZoom) {
  Projector projector = centredProjector();
  projector.throwMin = projector.throwMax = 1.2;
  projector.shiftUpMax = 0.6;
  const AimNeeds needs{.coverage = 0.99, .spill = 0.01};
  const auto zone = mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, needs).value();
  EXPECT_NEAR(zone.nearest, 3.84 * std::sqrt(0.99), 1.5e-3);
  EXPECT_NEAR(zone.farthest, 3.84 / std::sqrt(0.99), 1.5e-3);
  EXPECT_FALSE(zone.region.empty());
}

TEST(MountingZone, FocusLimitsIt) {
  Projector projector = centredProjector();
  projector.shiftUpMax = 0.6;
  projector.distanceMin = 3.5;
  projector.distanceMax = 4.0;
  const auto zone = mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, kExact).value();
  EXPECT_EQ(zone.nearest, 3.5);
  EXPECT_EQ(zone.farthest, 4.0);
}

TEST(MountingZone, EveryPlaceInsideWorksAndBeyondTheEdgeDoesNot) {
  Projector projector = centredProjector();
  projector.offset = 0.4;
  projector.shiftSideMax = 0.1;
  const AimNeeds needs{.coverage = 0.98, .spill = 0.3};
  const auto zone = mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.4, needs).value();
  ASSERT_GE(zone.region.size(), 6u);
  const Vec2 middle = centroid(Polygon{zone.region, {}});
  const auto works = [&](const Vec2& dr) {
    const ProjectorMount mount{.lens = {dr.x(), dr.y(), 2.4}};
    const auto aim = aimAt(wideScreen(), projector, mount, needs);
    return aim && aim->works;
  };
  EXPECT_TRUE(works(middle));
  for (const Vec2& corner : zone.region) {
    EXPECT_TRUE(works(corner + 0.02 * (middle - corner))) << corner.transpose();
    EXPECT_FALSE(works(corner + 0.02 * (corner - middle))) << corner.transpose();
  }
}

TEST(MountingZone, IsTheSameOnBothSides) {
  Projector projector = centredProjector();
  projector.offset = 0.4;
  const auto zone = mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.4, {}).value();
  ASSERT_FALSE(zone.region.empty());
  for (const Vec2& corner : zone.region)
    EXPECT_EQ(std::count(zone.region.begin(), zone.region.end(), Vec2{corner.x(), -corner.y()}), 1);
  EXPECT_TRUE(locate(zone.region, centroid(Polygon{zone.region, {}})) == Location::Inside);
}

TEST(MountingZone, IsEmptyWhereNoAimWorks) {
  Projector projector = centredProjector();
  projector.keystoneMax = 0;
  const auto zone = mountingZone(wideScreen(), projector, MountKind::Ceiling, 4.0, {}).value();
  EXPECT_EQ(zone.farthest, 0);
  EXPECT_TRUE(zone.region.empty());
}

TEST(MountingZone, TakesAnyFiniteKit) {
  Projector projector = centredProjector();
  projector.distanceMax = 1e300;
  projector.keystoneMax = 3;
  projector.shiftUpMax = -1;
  const auto zone = mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, {});
  ASSERT_TRUE(zone);
  EXPECT_LE(zone->nearest, zone->farthest);
}

TEST(MountingZone, ReachesFartherToTheSideWithMoreShift) {
  Projector projector = centredProjector();
  projector.keystoneMax = 0;
  projector.shiftUpMax = 0.8;
  double before = 0;
  for (const double side : {0.05, 0.15, 0.3}) {
    projector.shiftSideMax = side;
    const auto zone = mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, kExact).value();
    double widest = 0;
    for (const Vec2& corner : zone.region) widest = std::max(widest, corner.y());
    EXPECT_NEAR(widest, side * 3.2, 2e-3);
    EXPECT_GT(widest, before);
    before = widest;
  }
}

TEST(MountingZone, RefusesKitWithoutRange) {
  Projector projector = centredProjector();
  projector.throwMax = 0.5;
  EXPECT_FALSE(mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, {}));
  projector = centredProjector();
  projector.distanceMax = projector.distanceMin;
  EXPECT_FALSE(mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, {}));
  projector.distanceMax = std::numeric_limits<double>::infinity();
  EXPECT_FALSE(mountingZone(wideScreen(), projector, MountKind::Ceiling, 2.2, {}));
  Screen flat = wideScreen();
  flat.width = 0;
  EXPECT_FALSE(mountingZone(flat, centredProjector(), MountKind::Ceiling, 2.2, {}));
}

}  // namespace
}  // namespace baywright
