// SPDX-License-Identifier: Apache-2.0
#include "geometry/convex_polyhedron.h"

#include <gtest/gtest.h>

#include "random_shapes.h"

namespace baywright {
namespace {

const std::vector<Vec3> kTetrahedron{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
const std::vector<std::vector<int>> kTetrahedronFaces{{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {0, 3, 2}};

/// Every face looks outward, every edge lies between the faces that it names, loops turn left about their
/// normals.
void expectSound(const ConvexPolyhedron& body) {
  for (const auto& face : body.faces()) {
    EXPECT_NEAR(face.normal.norm(), 1, 1e-14);
    EXPECT_LT(face.normal.dot(body.middle()), face.offset);
    const auto loop = body.corners(face);
    const Vec3 turn =
        (body.vertex(loop[1]) - body.vertex(loop[0])).cross(body.vertex(loop[2]) - body.vertex(loop[1]));
    EXPECT_GT(turn.dot(face.normal), 0);
    for (const int corner : loop) EXPECT_NEAR(face.normal.dot(body.vertex(corner)), face.offset, 1e-7);
  }
  EXPECT_EQ(body.vertices().size() + body.faces().size(), body.edges().size() + 2);
  for (const auto& edge : body.edges()) {
    const auto& left = body.faces()[static_cast<std::size_t>(edge.left)];
    const Vec3 inward = left.normal.cross(body.vertex(edge.to) - body.vertex(edge.from));
    Vec3 inFace = Vec3::Zero();
    for (const int corner : body.corners(left)) inFace += body.vertex(corner) - body.vertex(edge.from);
    EXPECT_GT(inward.dot(inFace), 0) << "left is not to the left";
    for (const int face : {edge.left, edge.right}) {
      const auto& plane = body.faces()[static_cast<std::size_t>(face)];
      EXPECT_NEAR(plane.normal.dot(body.vertex(edge.from)), plane.offset, 1e-7);
      EXPECT_NEAR(plane.normal.dot(body.vertex(edge.to)), plane.offset, 1e-7);
    }
  }
}

TEST(ConvexPolyhedron, BoxHasThreeAxesEachWay) {
  const auto box = boxFrom(UprightBox{{1, 2}, 0.3, {4, 2}, 0.5, 1.5});
  ASSERT_TRUE(box);
  expectSound(*box);
  EXPECT_EQ(box->faces().size(), 6U);
  EXPECT_EQ(box->edges().size(), 12U);
  EXPECT_EQ(box->faceAxes().size(), 3U);
  EXPECT_EQ(box->edgeAxes().size(), 3U);
  EXPECT_NEAR(box->volume(), 8, 1e-12);
  EXPECT_NEAR((box->middle() - Vec3(1, 2, 1)).norm(), 0, 1e-14);
  EXPECT_NEAR(box->bounds().high.x(), 1 + 2 * std::cos(0.3) + std::sin(0.3), 1e-14);
}

TEST(ConvexPolyhedron, BoxRefusesASideOfNothing) {
  EXPECT_FALSE(boxFrom(UprightBox{{0, 0}, 0, {1, 0}, 0, 1}));
  EXPECT_FALSE(boxFrom(UprightBox{{0, 0}, 0, {1, 1}, 1, 1}));
  EXPECT_FALSE(boxFrom(UprightBox{{0, 0}, 0, {1, -1}, 0, 1}));
  EXPECT_FALSE(boxFrom(UprightBox{{0, 0}, 0, {1, std::nan("")}, 0, 1}));
  EXPECT_FALSE(boxFrom(TiltedBox{Vec3::Zero(), Vec3(1, 1, 0).asDiagonal()}));
}

TEST(ConvexPolyhedron, FacesMayBeListedInsideOut) {
  const auto body = ConvexPolyhedron::fromFaces(kTetrahedron, kTetrahedronFaces);
  auto reversed = kTetrahedronFaces;
  for (auto& loop : reversed) std::reverse(loop.begin(), loop.end());
  const auto other = ConvexPolyhedron::fromFaces(kTetrahedron, reversed);
  ASSERT_TRUE(body && other);
  expectSound(*body);
  expectSound(*other);
  EXPECT_NEAR(body->volume(), 1.0 / 6, 1e-15);
  EXPECT_EQ(body->volume(), other->volume());
}

struct BadBody {
  const char* reason;
  std::vector<Vec3> vertices;
  std::vector<std::vector<int>> faces;
};

TEST(ConvexPolyhedron, SaysWhyItRefusesABody) {
  auto withGap = kTetrahedronFaces;
  withGap[3] = {0, 2, 1};
  const std::vector<Vec3> dented{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.1, 0.1, 0.1}};
  const std::vector<std::vector<int>> dentedFaces{{0, 2, 1}, {0, 1, 3}, {0, 3, 2},
                                                  {1, 2, 4}, {2, 3, 4}, {3, 1, 4}};
  const std::vector<BadBody> cases{
      {"least four", {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}}, kTetrahedronFaces},
      {"does not exist", kTetrahedron, {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {0, 3, 9}}},
      {"three corners", kTetrahedron, {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {0, 3}}},
      {"not a finite", {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, std::nan("")}}, kTetrahedronFaces},
      {"twice the same way", kTetrahedron, withGap},
      {"twice the same way", kTetrahedron, {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {0, 2, 3}}},
      {"not convex", dented, dentedFaces},
      {"flat", {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0.2, 0.2, 1e-8}}, kTetrahedronFaces},
      {"belongs to no face", {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0, 0, 0.1}}, kTetrahedronFaces},
  };
  for (const BadBody& bad : cases) {
    const auto body = ConvexPolyhedron::fromFaces(bad.vertices, bad.faces);
    ASSERT_FALSE(body) << bad.reason;
    EXPECT_NE(body.error().sentence().find(bad.reason), std::string::npos) << body.error().sentence();
  }
}

TEST(ConvexPolyhedron, BentFaceIsRefusedAndARoundedOneTaken) {
  std::vector<Vec3> corners;
  for (int i = 0; i < 8; ++i) corners.emplace_back(i & 1 ? 1 : 0, i & 2 ? 1 : 0, i & 4 ? 1 : 0);
  const std::vector<std::vector<int>> faces{{0, 4, 6, 2}, {1, 3, 7, 5}, {0, 1, 5, 4},
                                            {2, 6, 7, 3}, {0, 2, 3, 1}, {4, 5, 7, 6}};
  corners[7].z() += 5e-8;
  EXPECT_TRUE(ConvexPolyhedron::fromFaces(corners, faces));
  corners[7].z() += 1e-4;
  EXPECT_FALSE(ConvexPolyhedron::fromFaces(corners, faces));
}

TEST(Prism, OfASquareIsItsBox) {
  const Prism prism{{{0, 0}, {2, 0}, {2, 1}, {0, 1}}, SlopedPlane::level(1), SlopedPlane::level(1.5)};
  const auto body = convexPrismFrom(prism);
  ASSERT_TRUE(body);
  expectSound(*body);
  EXPECT_NEAR(body->volume(), 1, 1e-15);
  EXPECT_EQ(body->bounds(), (Aabb3{Vec3(0, 0, 1), Vec3(2, 1, 1.5)}));
}

TEST(Prism, ClockwiseAndWithStraightCornersIsTheSame) {
  const Prism prism{
      {{0, 1}, {1, 1}, {2, 1}, {2, 0.5}, {2, 0}, {0, 0}}, SlopedPlane::level(0), SlopedPlane::level(3)};
  const auto body = convexPrismFrom(prism);
  ASSERT_TRUE(body);
  expectSound(*body);
  EXPECT_EQ(body->vertices().size(), 8U);
  EXPECT_NEAR(body->volume(), 6, 1e-14);
}

TEST(Prism, UnderASlopedCeilingHasTheMeanHeight) {
  // Slab between a ceiling that rises 1 in 4 along x from 2.0 m and the level 4 m.
  const Prism prism{{{0, 0}, {4, 0}, {4, 2}, {0, 2}}, {{0, 0}, 2.0, {0.25, 0}}, SlopedPlane::level(4)};
  const auto body = convexPrismFrom(prism);
  ASSERT_TRUE(body);
  expectSound(*body);
  EXPECT_NEAR(body->volume(), 8 * 1.5, 1e-13);
}

TEST(Prism, PlanesMayMeetAlongAnEdgeOrAtACorner) {
  const std::vector<Vec2> square{{0, 0}, {1, 0}, {1, 1}, {0, 1}};
  const auto wedge = convexPrismFrom({square, SlopedPlane::level(0), {{0, 0}, 0, {1, 0}}});
  ASSERT_TRUE(wedge);
  expectSound(*wedge);
  EXPECT_EQ(wedge->vertices().size(), 6U);
  EXPECT_NEAR(wedge->volume(), 0.5, 1e-15);
  const auto tip = convexPrismFrom({square, SlopedPlane::level(0), {{0, 0}, 0, {1, 1}}});
  ASSERT_TRUE(tip);
  expectSound(*tip);
  EXPECT_EQ(tip->vertices().size(), 7U);
  EXPECT_NEAR(tip->volume(), 1, 1e-15);
}

TEST(Prism, SaysWhyItRefuses) {
  const std::vector<Vec2> square{{0, 0}, {1, 0}, {1, 1}, {0, 1}};
  const auto crossed = convexPrismFrom({square, SlopedPlane::level(0.5), {{0, 0}, 0, {1, 0}}});
  ASSERT_FALSE(crossed);
  EXPECT_NE(crossed.error().what.find("below"), std::string::npos);
  const auto concave =
      convexPrismFrom({{{0, 0}, {2, 0}, {1, 0.5}, {0, 2}}, SlopedPlane::level(0), SlopedPlane::level(1)});
  ASSERT_FALSE(concave);
  EXPECT_NE(concave.error().what.find("convex"), std::string::npos);
  EXPECT_FALSE(convexPrismFrom({square, SlopedPlane::level(1), SlopedPlane::level(1)}));
  EXPECT_FALSE(convexPrismFrom({{{0, 0}, {1, 0}, {2, 0}}, SlopedPlane::level(0), SlopedPlane::level(1)}));
  EXPECT_FALSE(convexPrismFrom({{}, SlopedPlane::level(0), SlopedPlane::level(1)}));
  EXPECT_FALSE(convexPrismFrom({square, SlopedPlane::level(0), SlopedPlane::level(std::nan(""))}));
}

TEST(ConvexPolyhedron, StaysSoundWhenMovedAndMirrored) {
  test::RandomShapes random(5);
  for (int i = 0; i < 200; ++i) {
    const ConvexPolyhedron body = random.polyhedron(2);
    expectSound(body);
    const ConvexPolyhedron moved = transformed(body, random.motion(5));
    expectSound(moved);
    EXPECT_NEAR(moved.volume(), body.volume(), 1e-12);
    const ConvexPolyhedron mirrored = transformed(body, worldFromBay({{3, 1}, 0.2}));
    expectSound(mirrored);
    EXPECT_NEAR(mirrored.volume(), body.volume(), 1e-12);
  }
}

TEST(ConvexPolyhedron, EqualsItselfOnly) {
  const auto box = boxFrom(UprightBox{{0, 0}, 0, {1, 1}, 0, 1}).value();
  EXPECT_EQ(box, boxFrom(UprightBox{{0, 0}, 0, {1, 1}, 0, 1}).value());
  EXPECT_FALSE(box == boxFrom(UprightBox{{0, 0}, 0, {1, 1}, 0, 2}).value());
}

}  // namespace
}  // namespace baywright
