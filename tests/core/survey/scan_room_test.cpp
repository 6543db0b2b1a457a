// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_room.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <optional>

#include "job/room_geometry.h"
#include "job/validate.h"
#include "scan_synthetic.h"
#include "survey/take_room.h"

namespace baywright {
namespace {

using namespace testing;

constexpr double kWallTolerance = 0.010;             // metres
constexpr double kAngleTolerance = 0.3 * kPi / 180;  // radians

RecognisedRoom recognised(const FakeScan& fake) {
  auto room = recogniseRoom(scanned(fake), {});
  EXPECT_TRUE(room) << room.error().sentence();
  return room ? *room : RecognisedRoom();
}

/// The true outline as the world frame has it: turned and moved so that its longest side starts at the origin
/// and runs along x.
Ring worldOutline(const Ring& outline) {
  std::size_t longest = 0;
  const std::size_t n = outline.size();
  const auto side = [&](std::size_t i) -> Vec2 { return outline[(i + 1) % n] - outline[i]; };
  for (std::size_t i = 1; i < n; ++i)
    if (side(i).norm() > side(longest).norm() + 1e-9) longest = i;
  const double angle = std::atan2(side(longest).y(), side(longest).x());
  const Eigen::Rotation2Dd turn(-angle);
  Ring world;
  for (std::size_t i = 0; i < n; ++i) world.push_back(turn * (outline[(longest + i) % n] - outline[longest]));
  return world;
}

/// Each wall: the middle of the found one lies on the true one's line, and they run alike; corners where they
/// should be.
void expectWalls(const Room& room, const Ring& truth) {
  ASSERT_EQ(room.walls.size(), truth.size());
  const auto lines = wallLines(room);
  for (std::size_t i = 0; i < truth.size(); ++i) {
    const Vec2 along = (truth[(i + 1) % truth.size()] - truth[i]).normalized();
    const Vec2 middle = 0.5 * (lines[i].start + lines[i].end);
    EXPECT_LT(std::abs(cross(along, middle - truth[i])), kWallTolerance) << "wall " << i;
    EXPECT_LT(std::abs(std::asin(cross(along, lines[i].along))), kAngleTolerance) << "wall " << i;
    EXPECT_LT((lines[i].start - truth[i]).norm(), 2 * kWallTolerance) << "corner " << i;
  }
}

FakeScan furnished(FakeScan fake) {
  fake.yaw = 0.7;
  fake.tilt = 2 * kPi / 180;
  fake.shift = Vec3(3, -2, 1);
  fake.outliers = 300;
  fake.holes = {{0, 2, 2.9, 0, 2.03}, {fake.outline.size() - 1, 1, 3.4, 0, 2.1}};
  fake.things = {{Vec3(0.02, 0.5, 0), Vec3(0.42, 2.3, 1.9)}, {Vec3(2, 2, 0), Vec3(3.2, 2.7, 0.75)}};
  return fake;
}

class ScanRoomNoise : public ::testing::TestWithParam<double> {};

TEST_P(ScanRoomNoise, FindsTheWallsOfAnLShapeWithThingsHolesAndOutliers) {
  FakeScan fake = furnished(lShapedRoom());
  fake.noise = GetParam();
  const auto made = recognised(fake);
  expectWalls(made.room, worldOutline(fake.outline));
  ASSERT_EQ(made.room.ceiling.size(), 1u);
  EXPECT_NEAR(made.room.ceiling[0].height.value, 2.6, 0.010);
  EXPECT_EQ(made.room.ceiling[0].slope, Vec2(0, 0));
}

TEST_P(ScanRoomNoise, FindsASlopeThatMeetsALevelCeiling) {
  FakeScan fake = furnished(lShapedRoom());
  fake.noise = GetParam();
  fake.ceiling = [](const Vec2& p) { return std::min(3.0, 1.6 + 0.5 * p.y()); };
  const auto made = recognised(fake);
  expectWalls(made.room, worldOutline(fake.outline));
  ASSERT_EQ(made.room.ceiling.size(), 2u);
  for (const Vec2& p : {Vec2(1, 0.5), Vec2(6, 2), Vec2(2, 5), Vec2(3.5, 3.4)})
    EXPECT_NEAR(*ceilingHeightAt(made.room, p), fake.ceiling(p), 0.015) << p.transpose();
  for (const CeilingPart& part : made.room.ceiling)
    if (!part.slope.isZero()) {
      EXPECT_NEAR(std::atan(part.slope.y()), std::atan(0.5), kAngleTolerance);
      EXPECT_NEAR(std::atan(part.slope.x()), 0, kAngleTolerance);
    }
}

TEST_P(ScanRoomNoise, FindsAStepInTheCeiling) {
  FakeScan fake = furnished(lShapedRoom());
  fake.noise = GetParam();
  fake.ceiling = [](const Vec2& p) { return p.x() < 1.8 ? 2.3 : 2.8; };
  const auto made = recognised(fake);
  expectWalls(made.room, worldOutline(fake.outline));
  ASSERT_EQ(made.room.ceiling.size(), 2u);
  EXPECT_NEAR(*ceilingHeightAt(made.room, {1.75, 1}), 2.3, 0.010);
  EXPECT_NEAR(*ceilingHeightAt(made.room, {1.85, 1}), 2.8, 0.010);
  EXPECT_NEAR(*ceilingHeightAt(made.room, {1, 5}), 2.3, 0.010);
  EXPECT_NEAR(*ceilingHeightAt(made.room, {7, 0.2}), 2.8, 0.010);
  EXPECT_EQ(made.room.fixtures.size(), fake.things.size());  // the face of the step is no beam
}

TEST_P(ScanRoomNoise, FindsAHigherPartThatALowerOneSurrounds) {
  FakeScan fake = rectangleRoom(6.2, 5.1);
  fake.noise = GetParam();
  fake.yaw = 0.4;
  fake.ceiling = [](const Vec2& p) {
    return p.x() > 1 && p.x() < 5.2 && p.y() > 0.9 && p.y() < 4.2 ? 2.74 : 2.41;
  };
  const auto made = recognised(fake);
  expectWalls(made.room, worldOutline(fake.outline));
  // The faces of the steps along x were not scanned.
  for (const Vec2& p : {Vec2(0.5, 2.5), Vec2(0.92, 2.5), Vec2(1.08, 2.5), Vec2(3, 0.82), Vec2(3, 0.98),
                        Vec2(5.1, 4.1), Vec2(5.8, 4.8), Vec2(3, 2.5)})
    EXPECT_NEAR(*ceilingHeightAt(made.room, p), fake.ceiling(p), 0.010) << p.transpose();
  EXPECT_TRUE(made.room.fixtures.empty());  // the faces of the steps are no beams
}

TEST_P(ScanRoomNoise, FindsARidge) {
  FakeScan fake = rectangleRoom(5, 4);
  fake.noise = GetParam();
  fake.yaw = -1;
  fake.ceiling = [](const Vec2& p) { return 1.2 + 0.9 * std::min(p.y(), 4 - p.y()); };
  const auto made = recognised(fake);
  // Either long side may come out longer by a hair; the room looks the same from both.
  expectWalls(made.room, worldOutline(fake.outline));
  ASSERT_EQ(made.room.ceiling.size(), 2u);
  for (const double y : {0.3, 1.0, 1.9, 2.1, 3.0, 3.7})
    EXPECT_NEAR(*ceilingHeightAt(made.room, {2.5, y}), fake.ceiling({2.5, y}), 0.015) << y;
}

INSTANTIATE_TEST_SUITE_P(Millimetres, ScanRoomNoise, ::testing::Values(0.005, 0.010, 0.020));

TEST(ScanRoom, FindsWallsAtAnyAngle) {
  FakeScan fake;
  fake.outline = {{0, 0}, {6.5, 0}, {7.4, 2.2}, {5.1, 4.9}, {1.2, 4.4}, {-0.6, 2.0}};
  fake.noise = 0.008;
  fake.yaw = 2.2;
  expectWalls(recognised(fake).room, worldOutline(fake.outline));
}

TEST(ScanRoom, PutsBoxesRoundWhatStandsAndHangs) {
  FakeScan fake = furnished(lShapedRoom());
  fake.things.push_back({Vec3(0, 3.5, 2.35), Vec3(4.5, 3.7, 2.6)});
  const auto made = recognised(fake);
  ASSERT_EQ(made.room.fixtures.size(), 3u);
  const auto expectBox = [&](FixtureKind kind, const Vec3& low, const Vec3& high) {
    const auto found = std::find_if(made.room.fixtures.begin(), made.room.fixtures.end(),
                                    [&](const Fixture& f) { return f.kind == kind; });
    ASSERT_NE(found, made.room.fixtures.end());
    const auto& box = std::get<BoxShape>(found->shape);
    EXPECT_LT((box.centre - 0.5 * flat(low + high)).norm(), 0.03);
    EXPECT_NEAR(std::max(box.width, box.depth), flat(high - low).maxCoeff(), 0.03);
    EXPECT_NEAR(std::min(box.width, box.depth), flat(high - low).minCoeff(), 0.03);
    EXPECT_NEAR(found->bottom.value, low.z(), 0.03);
    EXPECT_NEAR(found->top.value, high.z(), 0.03);
    EXPECT_EQ(found->top.how, Instrument::Scan);
  };
  const Vec3 atWall(0, 0.5, 0);  // what almost touches a wall is taken to stand against it
  expectBox(FixtureKind::Shelving, atWall, fake.things[0].high);
  expectBox(FixtureKind::Furniture, fake.things[1].low, fake.things[1].high);
  expectBox(FixtureKind::Beam, fake.things[2].low, fake.things[2].high);
}

// With 20 mm of noise so short a side is not told from the corners beside it.
TEST(ScanRoom, KeepsTheShortSidesOfAChimneyBreastSquare) {
  for (const double noise : {0.005, 0.010}) {
    FakeScan fake;
    fake.outline = {{0, 0}, {6.6, 0}, {6.6, 4.4}, {4.3, 4.4}, {4.3, 4.05}, {2.9, 4.05}, {2.9, 4.4}, {0, 4.4}};
    fake.noise = noise;
    fake.yaw = 0.3;
    expectWalls(recognised(fake).room, worldOutline(fake.outline));
  }
}

TEST(ScanRoom, MakesOneOfTheBoxesOnARackAndNoneOfCrumbs) {
  FakeScan fake = rectangleRoom(6.6, 4.9);
  fake.spacing = 0.02;
  for (int level = 0; level < 3; ++level)
    for (int i = 0; i < 8; ++i) {
      const Vec3 low(1 + 0.42 * i, 0.05, 0.05 + 0.6 * level);
      fake.things.push_back({low, low + Vec3(0.3 + 0.01 * i, 0.4, 0.25 + 0.02 * (i % 4))});
    }
  for (int i = 0; i < 6; ++i) {
    const Vec3 low(0.5 + 0.9 * i, 2.5 + 0.1 * i, 0);
    fake.things.push_back({low, low + Vec3(0.16, 0.16, 0.18)});
  }
  const auto made = recognised(fake);
  ASSERT_EQ(made.room.fixtures.size(), 1u);
  const auto& box = std::get<BoxShape>(made.room.fixtures[0].shape);
  EXPECT_EQ(made.room.fixtures[0].kind, FixtureKind::Shelving);
  EXPECT_NEAR(std::max(box.width, box.depth), 3.31, 0.05);
  EXPECT_NEAR(made.room.fixtures[0].top.value, 1.54, 0.05);
  EXPECT_TRUE(std::any_of(made.skipped.begin(), made.skipped.end(), [](const std::string& sentence) {
    return sentence.starts_with("6 things smaller than 25 cm made no fixture");
  }));
}

TEST(ScanRoom, TakesAThingThatHidesTheWallBehindItToReachThere) {
  FakeScan fake = rectangleRoom(6.6, 4.9);
  fake.things = {{Vec3(2, 0.55, 0), Vec3(4.2, 0.6, 2.0)}};  // only the face of a cupboard was seen
  fake.holes = {{0, 2.0, 4.2, 0, 2.0}};
  const auto made = recognised(fake);
  ASSERT_EQ(made.room.fixtures.size(), 1u);
  const auto& box = std::get<BoxShape>(made.room.fixtures[0].shape);
  EXPECT_NEAR(std::min(box.width, box.depth), 0.6, 0.03);
}

TEST(ScanRoom, HandsTheWholeScanBackInTheWorldFrame) {
  const FakeScan fake = furnished(lShapedRoom());
  const ScanGeometry scan = scanned(fake);
  const auto made = recogniseRoom(scan, {});
  ASSERT_TRUE(made);
  ASSERT_EQ(made->scans.size(), 1u);
  ASSERT_TRUE(made->scans[0].points);
  const auto& points = *made->scans[0].points;
  ASSERT_EQ(points.size(), scan.points.size());
  // Rigid: distances stay.
  for (std::size_t i = 100; i + 9000 < points.size(); i += 9000)
    EXPECT_NEAR((points[i] - points[i + 9000]).norm(), (scan.points[i] - scan.points[i + 9000]).norm(), 1e-4);
  std::size_t onFloor = 0;
  std::size_t onFirstWall = 0;
  for (const Eigen::Vector3f& p : points) {
    onFloor += std::abs(p.z()) < 0.02f;
    onFirstWall += std::abs(p.y()) < 0.02f && p.x() > 0 && p.x() < 7.2f && p.z() > 0 && p.z() < 2.6f;
  }
  EXPECT_GT(onFloor, 25000u);
  EXPECT_GT(onFirstWall, 15000u);
}

TEST(ScanRoom, MakesARoomThatAJobMayHold) {
  for (const double noise : {0.005, 0.020}) {
    FakeScan fake = furnished(lShapedRoom());
    fake.noise = noise;
    fake.ceiling = [](const Vec2& p) { return p.x() < 1.8 ? 2.3 : 2.8; };
    const auto made = recognised(fake);
    const auto job = takeRoom(newJob(), made);
    ASSERT_TRUE(job) << job.error().sentence();
    EXPECT_EQ(job->roomScans.size(), 1u);
    for (const Problem& problem : validate(*job)) ADD_FAILURE() << problem.sentence();
  }
}

TEST(ScanRoom, KnowsCornersToAboutACentimetreAndWorseWhereWallsMeetFlat) {
  FakeScan fake = rectangleRoom(6, 4.5);
  const auto square = recognised(fake);
  for (const Wall& wall : square.room.walls) {
    const double sigma = wall.startCovariance.sigmaAlong({1, 0});
    EXPECT_GT(sigma, 0.006);
    EXPECT_LT(sigma, 0.012);
  }
  fake.outline = {{0, 0}, {6, 0}, {6, 4.5}, {3, 5.0}, {0, 4.5}};
  const auto flat = recognised(fake);
  ASSERT_EQ(flat.room.walls.size(), 5u);
  // The corner at (3, 5) lies on walls that bend by 19 degrees: along them it is known three times worse.
  const PlanCovariance& c = flat.room.walls[3].startCovariance;
  EXPECT_GT(c.sigmaAlong({1, 0}), 2.5 * c.sigmaAlong({0, 1}));
}

TEST(ScanRoom, KeepsWallsPlumbOverAFallingFloor) {
  FakeScan fake = rectangleRoom(6, 4.5);
  ScanGeometry scan = scanned(fake);
  for (Eigen::Vector3f& p : scan.points)
    if (p.z() < 0.1f) p.z() -= 0.02f * (p.x() - 3);  // 2 % down to the door
  const auto made = recogniseRoom(scan, {});
  ASSERT_TRUE(made) << made.error().sentence();
  expectWalls(made->room, worldOutline(fake.outline));
  EXPECT_TRUE(std::any_of(made->notes.begin(), made->notes.end(), [](const std::string& note) {
    return note.find("floor falls by 1.1") != std::string::npos;
  }));
  EXPECT_NEAR(*ceilingHeightAt(made->room, {3, 2}), 2.6, 0.010);
  EXPECT_TRUE(made->room.fixtures.empty());  // its ends, 6 cm up and down, are floor
}

TEST(ScanRoom, NotesTheFrontOfACupboardThatIsAsHighAsARoom) {
  FakeScan fake;
  fake.outline = {{0, 0}, {6.6, 0}, {6.6, 4.4}, {3.3, 4.4}, {3.3, 3.8}, {0, 3.8}};
  ScanGeometry scan = scanned(fake);
  std::erase_if(scan.points, [](const Eigen::Vector3f& p) {  // its top, 25 cm below the ceiling
    return p.x() < 3.25f && p.y() > 3.7f && p.z() > 2.35f && p.z() < 2.57f;
  });
  const auto made = recogniseRoom(scan, {});
  ASSERT_TRUE(made);
  EXPECT_TRUE(std::any_of(made->notes.begin(), made->notes.end(), [](const std::string& note) {
    return note.find("ends below the ceiling: it may be the front of a cupboard") != std::string::npos;
  }));
  const auto whole = recognised(fake);
  EXPECT_TRUE(std::none_of(whole.notes.begin(), whole.notes.end(), [](const std::string& note) {
    return note.find("ends below the ceiling") != std::string::npos;
  }));
}

TEST(ScanRoom, TellsTheRoomFromAYardSeenThroughItsDoor) {
  FakeScan fake = rectangleRoom(6.3, 5.4);
  fake.noise = 0.010;
  fake.holes = {{1, 0.4, 5.0, 0, 2.12}};
  ScanGeometry scan = scanned(fake);
  // More ground than the room has floor, lower than it, and a fence behind it.
  std::mt19937 engine(4);
  const auto rough = [&] { return 0.04f * (static_cast<float>(engine() % 1000) / 1000 - 0.5f); };
  for (float x = -9; x < 18; x += 0.05f)
    for (float y = -9; y < 15; y += 0.05f)
      if (x < -0.2f || y < -0.2f || x > 6.5f || y > 5.6f) scan.points.emplace_back(x, y, rough() - 0.12f);
  for (float y = -9; y < 15; y += 0.03f)
    for (float z = -0.12f; z < 2.5f; z += 0.03f) scan.points.emplace_back(18 + rough(), y, z);
  const auto made = recogniseRoom(scan, {});
  ASSERT_TRUE(made) << made.error().sentence();
  expectWalls(made->room, worldOutline(fake.outline));
  EXPECT_NEAR(*ceilingHeightAt(made->room, {3, 2}), 2.6, 0.010);
}

TEST(ScanRoom, TakesTrianglesWhicheverWayTheyFace) {
  // A closed room of twelve large triangles, some inside out.
  ScanGeometry scan;
  for (const float z : {0.f, 2.5f})
    for (const auto& [x, y] :
         {std::pair(0.f, 0.f), std::pair(6.f, 0.f), std::pair(6.f, 4.f), std::pair(0.f, 4.f)})
      scan.points.push_back({x, y, z});
  scan.triangles = {{0, 1, 2}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}};
  for (std::uint32_t i = 0; i < 4; ++i) {
    const std::uint32_t next = (i + 1) % 4;
    scan.triangles.push_back({i, next, next + 4});
    scan.triangles.push_back({i + 4, i, next + 4});
  }
  const auto made = recogniseRoom(scan, {});
  ASSERT_TRUE(made) << made.error().sentence();
  ASSERT_EQ(made->room.walls.size(), 4u);
  EXPECT_NEAR(floorArea(made->room), 24, 0.01);
  EXPECT_NEAR(made->room.ceiling[0].height.value, 2.5, 0.001);
  ASSERT_TRUE(made->scans[0].mesh);
  EXPECT_EQ(made->scans[0].mesh->triangleCount(), 12u);
}

TEST(ScanRoom, NotesAWallThatWasHardlySeen) {
  FakeScan fake = rectangleRoom(6, 4.5);
  fake.holes = {{1, 0.4, 3.9, 0, 3}};
  const auto made = recognised(fake);
  EXPECT_NEAR(floorArea(made.room), 27, 0.2);
  EXPECT_TRUE(std::any_of(made.notes.begin(), made.notes.end(), [](const std::string& note) {
    return note.starts_with("Only ") && note.ends_with("was seen: check it with a tape.");
  }));
}

TEST(ScanRoom, SaysWhereNoCeilingWasScanned) {
  ScanGeometry scan = scanned(rectangleRoom(6, 4.5));
  std::erase_if(scan.points, [](const Eigen::Vector3f& p) { return p.z() > 2.45f; });
  const auto made = recogniseRoom(scan, {});
  ASSERT_TRUE(made) << made.error().sentence();
  ASSERT_EQ(made->room.ceiling.size(), 1u);
  EXPECT_FALSE(made->room.ceiling[0].height.known);
}

TEST(ScanRoom, GivesTheSameBitsEachTime) {
  const ScanGeometry scan = scanned(furnished(lShapedRoom()));
  EXPECT_EQ(recogniseRoom(scan, {})->room, recogniseRoom(scan, {})->room);
}

TEST(ScanRoom, RefusesWhatIsNoRoom) {
  ScanGeometry scan;
  EXPECT_FALSE(recogniseRoom(scan, {}));
  scan.points.assign(5000, Eigen::Vector3f(1, 2, 3));
  EXPECT_FALSE(recogniseRoom(scan, {}));
  scan.points.clear();
  for (int i = 0; i < 100; ++i)
    for (int j = 0; j < 100; ++j)
      scan.points.push_back({0.05f * static_cast<float>(i), 0.05f * static_cast<float>(j), 0});
  const auto floorOnly = recogniseRoom(scan, {});
  ASSERT_FALSE(floorOnly);
  EXPECT_NE(floorOnly.error().what.find("upright surfaces"), std::string::npos);
}

TEST(ScanRoom, StopsWhenAsked) {
  Progress progress;
  progress.cancelled = [] { return true; };
  const auto made = recogniseRoom(scanned(rectangleRoom(4, 3)), progress);
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().what, "The import was cancelled.");
}

}  // namespace
}  // namespace baywright
