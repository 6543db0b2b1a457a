// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <random>

#include "scan_synthetic.h"
#include "survey/scan_cube_map.h"
#include "survey/scan_faces.h"
#include "survey/scan_line_fit.h"
#include "survey/scan_min_cut.h"
#include "survey/scan_ring.h"
#include "survey/scan_suggest.h"

namespace baywright {
namespace {

using namespace testing;

ScanLine lineAt(const Vec2& normal, double offset) {
  ScanLine line;
  line.normal = normal.normalized();
  line.offset = offset;
  return line;
}

TEST(CubeMap, NumbersCubesInTheOrderOfAskingAlsoBelowZero) {
  CubeMap map;
  for (int i = 0; i < 3000; ++i) EXPECT_EQ(map.indexOf({-i, i % 7, 3 * i}), static_cast<std::uint32_t>(i));
  EXPECT_EQ(map.indexOf({-5, 5, 15}), 5u);
  EXPECT_EQ(map.cube(8), CubeMap::Cube(-8, 1, 24));
  EXPECT_FALSE(map.existing({1, 1, 1}));
  EXPECT_EQ(map.size(), 3000u);
}

TEST(MinCut, FindsTheCheapestOfAllLabellings) {
  std::mt19937 engine(7);
  const auto cost = [&] { return static_cast<double>(engine() % 1000) / 100; };
  constexpr std::size_t kThings = 7;
  for (int round = 0; round < 50; ++round) {
    MinCut cut(kThings);
    double inside[kThings];
    double outside[kThings];
    double parting[kThings][kThings] = {};
    for (std::size_t i = 0; i < kThings; ++i) {
      inside[i] = cost();
      outside[i] = cost();
      cut.cost(i, inside[i], outside[i]);
      for (std::size_t j = 0; j < i; ++j) {
        parting[i][j] = engine() % 2 ? cost() / 3 : 0;
        cut.parting(i, j, parting[i][j]);
      }
    }
    const auto total = [&](auto isInside) {
      double sum = 0;
      for (std::size_t i = 0; i < kThings; ++i) {
        sum += isInside(i) ? inside[i] : outside[i];
        for (std::size_t j = 0; j < i; ++j)
          if (isInside(i) != isInside(j)) sum += parting[i][j];
      }
      return sum;
    };
    double least = 1e9;
    for (unsigned labels = 0; labels < 1u << kThings; ++labels)
      least = std::min(least, total([&](std::size_t i) { return (labels >> i & 1) != 0; }));
    const auto solved = cut.solve();
    EXPECT_NEAR(total([&](std::size_t i) { return solved[i]; }), least, 1e-9);
  }
}

TEST(ScanFaces, CoverTheFrameOnceAndKnowTheirNeighbours) {
  const std::vector<ScanLine> lines{lineAt({1, 0}, 1), lineAt({0, 1}, 2), lineAt({1, 1}, 3),
                                    lineAt({1, 0.02}, 1.01)};
  const PlanFaces plan = facesBetween(lines, {-1, -1}, {5, 4});
  double area = 0;
  for (std::size_t f = 0; f < plan.faces.size(); ++f) {
    area += plan.faces[f].area;
    EXPECT_EQ(sidesOf(lines, centroid({plan.faces[f].ring, {}})), plan.faces[f].sides);
    for (const FaceEdge& edge : plan.faces[f].edges) {
      EXPECT_EQ(edge.neighbour == kNoFace, edge.line == kFrameEdge);
      if (edge.neighbour == kNoFace) continue;
      // Across an edge only its own line changes sides.
      const std::uint64_t changed =
          plan.faces[f].sides ^ plan.faces[static_cast<std::size_t>(edge.neighbour)].sides;
      EXPECT_EQ(changed, 1ull << edge.line);
    }
  }
  EXPECT_NEAR(area, 30, 1e-9);
}

TEST(ScanRing, WalksRoundWhatIsInside) {
  const std::vector<ScanLine> lines{lineAt({1, 0}, 0), lineAt({1, 0}, 3), lineAt({1, 0}, 5),
                                    lineAt({0, 1}, 0), lineAt({0, 1}, 2), lineAt({0, 1}, 4)};
  const PlanFaces plan = facesBetween(lines, {-1, -1}, {6, 5});
  const auto isInside = [](const Vec2& p) {
    return p.x() > 0 && p.y() > 0 && p.x() < 5 && p.y() < (p.x() < 3 ? 4 : 2);
  };
  std::vector<bool> inside;
  for (const PlanFace& face : plan.faces) inside.push_back(isInside(centroid({face.ring, {}})));
  const SideRing ring = largestRing(plan, inside);
  EXPECT_EQ(ring.corners.size(), 6u);
  EXPECT_NEAR(signedArea(ring.corners), 16, 1e-9);
}

TEST(ScanRing, LeavesOutAJogThatIsTooShort) {
  const std::vector<ScanLine> lines{lineAt({0, 1}, 0), lineAt({1, 0}, 6),    lineAt({0, 1}, 4),
                                    lineAt({1, 0}, 2), lineAt({0, 1}, 4.03), lineAt({1, 0}, 0)};
  const SideRing ring{{0, 1, 2, 3, 4, 5}, {{0, 0}, {6, 0}, {6, 4}, {2, 4}, {2, 4.03}, {0, 4.03}}};
  const SideRing tidy = tidied(ring, lines, [](const SideRing&, std::size_t) { return 0.08; });
  EXPECT_EQ(tidy.lines, (std::vector<int>{0, 1, 2, 5}));
  EXPECT_NEAR(signedArea(tidy.corners), 24, 1e-9);
  EXPECT_EQ(tidied(ring, lines, [](const SideRing&, std::size_t) { return 0.02; }).lines.size(), 6u);
}

TEST(ScanLineFit, IsNotDrawnByAThirdOfWrongPoints) {
  std::mt19937 engine(3);
  const Vec2 normal(std::cos(0.4), std::sin(0.4));
  std::vector<WeightedPoint> points;
  for (int i = 0; i < 900; ++i) {
    const double noise = (static_cast<double>(engine() % 1000) / 500 - 1) * 0.01;
    const double wrong = i % 3 == 0 ? 0.05 + static_cast<double>(engine() % 1000) / 10000 : 0;
    points.push_back({(2 + noise + wrong) * normal + (i * 0.005) * leftOf(normal), 1});
  }
  ScanLine line = lineAt({std::cos(0.41), std::sin(0.41)}, 2.0);
  for (int i = 0; i < 8; ++i) line = fittedLine(points, line, 0.04);
  EXPECT_NEAR(line.offset, 2, 0.001);
  EXPECT_NEAR(cross(line.normal, normal), 0, 0.001);
  EXPECT_NEAR(line.rms, 0.01 / std::sqrt(3.0), 0.0015);
}

TEST(ScanGeometry, TurnsEachAxisUpWithoutMirroring) {
  for (const auto up :
       {UpAxis::PlusX, UpAxis::MinusX, UpAxis::PlusY, UpAxis::MinusY, UpAxis::PlusZ, UpAxis::MinusZ}) {
    Vec3 axis = Vec3::Zero();
    axis[static_cast<int>(up) / 2] = static_cast<int>(up) % 2 == 0 ? 1 : -1;
    EXPECT_EQ(uprightFrom(up) * axis, Vec3::UnitZ());
    EXPECT_NEAR(uprightFrom(up).determinant(), 1, 1e-15);
    EXPECT_EQ(upAxisFrom(nameOf(up)), up);
  }
  EXPECT_EQ(upAxisFrom("+Y"), UpAxis::PlusY);
  EXPECT_FALSE(upAxisFrom("up"));
}

/// The room in another unit with another axis up.
ScanGeometry exported(UpAxis up, double metresPerUnit) {
  FakeScan fake = rectangleRoom(6, 4.5);
  fake.things = {{Vec3(2, 2, 0), Vec3(3.2, 2.7, 0.75)}, {Vec3(0.02, 0.5, 0), Vec3(0.42, 2.3, 0.8)}};
  ScanGeometry scan = scanned(fake);
  const Eigen::Matrix3f back = (uprightFrom(up).transpose() / metresPerUnit).cast<float>();
  for (Eigen::Vector3f& p : scan.points) p = back * p;
  return scan;
}

TEST(ScanSuggest, NamesTheAxisThatPointsUp) {
  for (const auto up : {UpAxis::PlusY, UpAxis::MinusX, UpAxis::PlusZ}) {
    const auto suggestions = suggestUp(exported(up, 1));
    ASSERT_EQ(suggestions.size(), 6u);
    EXPECT_EQ(suggestions[0].up, up) << suggestions[0].reason;
    EXPECT_TRUE(suggestions[0].isPlausible);
  }
}

TEST(ScanSuggest, CountsSurfacesAndNotPointsRoundTheScanner) {
  ScanGeometry scan = exported(UpAxis::PlusZ, 1);
  // A third as many points again on two small upright plates, as a scanner sees its own mount.
  const std::size_t some = scan.points.size() / 3;
  for (std::size_t i = 0; i < some; ++i) {
    const auto t = static_cast<float>(i) / static_cast<float>(some);
    scan.points.push_back({i % 2 ? 2.9f : 3.1f, 2 + 0.3f * t, 1.2f + 0.3f * std::fmod(37 * t, 1.0f)});
  }
  EXPECT_EQ(suggestUp(scan)[0].up, UpAxis::PlusZ);
}

TEST(ScanSuggest, TakesTheLevelFloorAndNotASlopeWithABeamForTheLowerEnd) {
  FakeScan fake = rectangleRoom(6, 4.5);
  fake.ceiling = [](const Vec2& p) { return 2.2 + 0.25 * p.y(); };
  fake.things = {{Vec3(0.5, 2.9, 2.5), Vec3(5.5, 3.1, 2.9)}};
  const ScanGeometry upright = scanned(fake);
  for (const auto up : {UpAxis::PlusZ, UpAxis::MinusZ, UpAxis::PlusY}) {
    ScanGeometry scan = upright;
    const Eigen::Matrix3f back = uprightFrom(up).transpose().cast<float>();
    for (Eigen::Vector3f& p : scan.points) p = back * p;
    EXPECT_EQ(suggestUp(scan)[0].up, up) << suggestUp(scan)[0].reason;
  }
}

TEST(ScanSuggest, TakesTheCustomaryWayUpInAnEmptyRoom) {
  const auto suggestions = suggestUp(scanned(rectangleRoom(6, 4.5)));
  EXPECT_EQ(suggestions[0].up, UpAxis::PlusZ);
  EXPECT_NE(suggestions[0].reason.find("nothing tells which is the floor"), std::string::npos);
}

TEST(ScanSuggest, NamesTheUnitWithAReason) {
  for (const auto& [metres, name] :
       {std::pair(1.0, "metres"), std::pair(0.001, "millimetres"), std::pair(0.3048, "feet")}) {
    const auto suggestions = suggestUnits(exported(UpAxis::PlusY, metres), UpAxis::PlusY);
    EXPECT_EQ(suggestions[0].name, name);
    EXPECT_NEAR(suggestions[0].floorToCeiling, 2.6, 0.05);
    EXPECT_NE(suggestions[0].reason.find(std::string(" m if the unit is ") + name), std::string::npos);
  }
}

TEST(ScanSuggest, PutsWhatTheFormatStatesFirst) {
  ScanGeometry scan = exported(UpAxis::PlusZ, 1);
  scan.statedUp = UpAxis::PlusY;
  scan.statedMetresPerUnit = 0.01;
  EXPECT_EQ(suggestUp(scan)[0].up, UpAxis::PlusY);
  EXPECT_EQ(suggestUnits(scan, UpAxis::PlusY)[0].name, "centimetres");
}

}  // namespace
}  // namespace baywright
