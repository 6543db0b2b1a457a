// SPDX-License-Identifier: Apache-2.0
// OpenCV's calib3d (Apache-2.0) as judge of the projection and of the maps between panel and screen.
#include <gtest/gtest.h>

#include <opencv2/calib3d.hpp>
#include <opencv2/imgproc.hpp>
#include <random>

#include "optics/keystone.h"
#include "optics/obstruction.h"

namespace baywright {
namespace {

constexpr int kMounts = 300;

class Random {
 public:
  explicit Random(std::uint32_t seed) : engine_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_()) / 4294967296.0);
  }

 private:
  std::mt19937 engine_;
};

Screen screenOf(double width, double height) {
  Screen screen;
  screen.width = width;
  screen.height = height;
  screen.bottom = 0.2;
  return screen;
}

Projector projectorOf(Random& random) {
  Projector projector;
  projector.panelWidth = 1920;
  projector.panelHeight = 1200;
  projector.offset = random.between(-0.6, 0.6);
  return projector;
}

ProjectorMount mountOf(Random& random) {
  ProjectorMount mount;
  mount.kind = random.between(0, 1) < 0.5 ? MountKind::Ceiling : MountKind::Floor;
  mount.lens = {-random.between(2, 6), random.between(-1.5, 1.5), random.between(0.2, 2.8)};
  mount.yaw = random.between(-0.5, 0.5);
  mount.pitch = random.between(-0.5, 0.5);
  mount.roll = random.between(-0.3, 0.3);
  mount.throwRatio = random.between(0.6, 2.2);
  mount.shiftUp = random.between(-0.5, 0.5);
  mount.shiftSide = random.between(-0.3, 0.3);
  return mount;
}

/// OpenCV's camera: x right, y down, z ahead, right-handed, so the bay (left-handed) enters with u turned
/// down. Everything is derived from the mount's own numbers by OpenCV's rotations, nothing from
/// ProjectorLens.
struct Camera {
  cv::Matx33d rotation;
  cv::Vec3d translation;
  cv::Matx33d matrix;
};

cv::Matx33d turnAbout(const cv::Vec3d& axis, double angle) {
  cv::Matx33d rotation;
  cv::Rodrigues(axis * angle, rotation);
  return rotation;
}

/// (d, r, u) as (r, -u, d).
cv::Vec3d cameraAxes(const Vec3& p) {
  return {p.y(), -p.z(), p.x()};
}

Camera cameraOf(const Projector& projector, const ProjectorMount& mount) {
  // About y (down): positive turns z toward x, to the right. About x (right): positive turns z toward -y, up.
  // About z (ahead): positive turns x toward y, clockwise from behind.
  const cv::Matx33d bayFromCamera =
      turnAbout({0, 1, 0}, mount.yaw) * turnAbout({1, 0, 0}, mount.pitch) * turnAbout({0, 0, 1}, mount.roll);
  Camera camera;
  camera.rotation = bayFromCamera.t();
  camera.translation = -(camera.rotation * cameraAxes(mount.lens));
  const double focal = mount.throwRatio * projector.panelWidth;  // pixels: width at distance 1 is 1 / ratio
  const double offset = mount.kind == MountKind::Ceiling ? -projector.offset : projector.offset;
  // The axis meets the panel below its middle by as much as the picture is moved up, and to the left
  // likewise.
  camera.matrix = {focal, 0,     (0.5 - mount.shiftSide) * projector.panelWidth,
                   0,     focal, (0.5 + offset + mount.shiftUp) * projector.panelHeight,
                   0,     0,     1};
  return camera;
}

Vec2 projected(const Camera& camera, const Vec3& point) {
  cv::Vec3d turn;
  cv::Rodrigues(camera.rotation, turn);
  std::vector<cv::Point3d> points{cv::Point3d(cameraAxes(point))};
  std::vector<cv::Point2d> pixels;
  cv::projectPoints(points, turn, camera.translation, camera.matrix, cv::noArray(), pixels);
  return {pixels[0].x, pixels[0].y};
}

cv::Point2d cvPoint(const Vec2& p) {
  return {p.x(), p.y()};
}

Vec2 through(const cv::Mat& map, const Vec2& p) {
  std::vector<cv::Point2d> in{cvPoint(p)}, out;
  cv::perspectiveTransform(in, out, map);
  return {out[0].x, out[0].y};
}

cv::Mat cvHomography(const std::array<Vec2, 4>& from, const std::array<Vec2, 4>& to) {
  std::vector<cv::Point2d> a, b;
  for (std::size_t i = 0; i < 4; ++i) {
    a.push_back(cvPoint(from[i]));
    b.push_back(cvPoint(to[i]));
  }
  return cv::findHomography(a, b, 0);
}

TEST(OpenCv, PanelFromBayIsProjectPoints) {
  Random random(1);
  for (int i = 0; i < kMounts; ++i) {
    const Projector projector = projectorOf(random);
    const ProjectorMount mount = mountOf(random);
    const ProjectorLens lens = lensOf(projector, mount).value();
    const Camera camera = cameraOf(projector, mount);
    for (int k = 0; k < 10; ++k) {
      const Vec3 point{random.between(-1.5, 0), random.between(-1.5, 1.5), random.between(0, 2.5)};
      const auto ours = panelFromBay(lens, point);
      if (!ours || lensFromBay(lens, point).x() < 0.1) continue;
      const Vec2 theirs = projected(camera, point);
      EXPECT_NEAR((*ours - theirs).norm(), 0, 1e-7 * (1 + theirs.norm()));
    }
  }
}

TEST(OpenCv, PictureCornersProjectBackToThePanelsCorners) {
  Random random(2);
  int pictures = 0;
  for (int i = 0; i < kMounts; ++i) {
    const Projector projector = projectorOf(random);
    const ProjectorMount mount = mountOf(random);
    const auto picture = pictureOf(screenOf(3, 2), projector, mount);
    if (!picture) continue;
    ++pictures;
    const Camera camera = cameraOf(projector, mount);
    const auto corners = picture->lens.panelCorners();
    for (std::size_t k = 0; k < 4; ++k)
      EXPECT_NEAR((projected(camera, picture->cornersInBay[k]) - corners[k]).norm(), 0, 1e-6);
  }
  EXPECT_GT(pictures, kMounts / 2);
}

TEST(OpenCv, ScreenFromPanelIsFindHomography) {
  Random random(3);
  for (int i = 0; i < kMounts; ++i) {
    const auto picture = pictureOf(screenOf(3, 2), projectorOf(random), mountOf(random));
    if (!picture || picture->area > 100) continue;
    const cv::Mat theirs = cvHomography(picture->lens.panelCorners(), picture->cornersOnScreen);
    for (int k = 0; k < 10; ++k) {
      const Vec2 pixel{random.between(0, 1920), random.between(0, 1200)};
      EXPECT_NEAR((mapped(picture->screenFromPanel, pixel).value() - through(theirs, pixel)).norm(), 0, 1e-6);
    }
  }
}

TEST(OpenCv, CornerMovesAreAPerspectiveWarpOntoTheScreen) {
  Random random(4);
  for (int i = 0; i < kMounts; ++i) {
    const Projector projector = projectorOf(random);
    const auto picture = pictureOf(screenOf(3, 2), projector, mountOf(random));
    if (!picture || picture->area > 100) continue;
    const auto fit = fitCorners(*picture, projector, CornerFill::Screen);
    if (!fit) continue;
    // What the projector does: warps the image's corners to the moved ones; what light does: panel to screen.
    const auto own = picture->lens.panelCorners();
    const cv::Mat warp = cvHomography(own, fit->onPanel);
    const cv::Mat light = cvHomography(own, picture->cornersOnScreen);
    const cv::Mat both = light * warp;
    for (const Vec2& image : {Vec2{960, 600}, Vec2{100, 1100}, Vec2{1800, 30}}) {
      // An undistorted picture: straight scaling from image to screen.
      const Vec2 straight{3 * image.x() / 1920, 2 * (1 - image.y() / 1200)};
      EXPECT_NEAR((through(both, image) - straight).norm(), 0, 1e-5);
    }
  }
}

TEST(OpenCv, CoverageIsIntersectConvexConvex) {
  Random random(5);
  for (int i = 0; i < kMounts; ++i) {
    const auto picture = pictureOf(screenOf(3, 2), projectorOf(random), mountOf(random));
    if (!picture || picture->area > 100) continue;
    std::vector<cv::Point2f> quad, face, common;
    for (const Vec2& p : picture->cornersOnScreen)
      quad.emplace_back(static_cast<float>(p.x()), static_cast<float>(p.y()));
    for (const Vec2& p : picture->face.corners())
      face.emplace_back(static_cast<float>(p.x()), static_cast<float>(p.y()));
    const double area = static_cast<double>(cv::intersectConvexConvex(quad, face, common));
    EXPECT_NEAR(picture->coverage, area / 6, 1e-4) << "single precision there";
  }
}

// The shadow of a box is the hull of its projected corners: projectPoints, convexHull and contourArea.
TEST(OpenCv, ShadowOfABoxIsTheHullOfItsProjectedCorners) {
  Random random(6);
  int shaded = 0;
  for (int i = 0; i < kMounts; ++i) {
    const Projector projector = projectorOf(random);
    const ProjectorMount mount = mountOf(random);
    const auto picture = pictureOf(screenOf(3, 2), projector, mount);
    if (!picture || picture->litOnPanel.empty()) continue;
    TiltedBox box;
    box.centre = {random.between(-1.5, -0.6), random.between(-1, 1), random.between(0.3, 2)};
    box.halfAxes = Vec3{0.1, 0.2, 0.15}.asDiagonal();
    const ConvexPolyhedron body = boxFrom(box).value();
    const Camera camera = cameraOf(projector, mount);
    std::vector<cv::Point2f> pixels, hull, lit, common;
    bool ahead = true;
    for (const Vec3& corner : body.vertices()) {
      ahead = ahead && lensFromBay(picture->lens, corner).x() > 0.1;
      const Vec2 pixel = projected(camera, corner);
      pixels.emplace_back(static_cast<float>(pixel.x()), static_cast<float>(pixel.y()));
    }
    if (!ahead) continue;
    cv::convexHull(pixels, hull);
    for (const Vec2& p : picture->litOnPanel)
      lit.emplace_back(static_cast<float>(p.x()), static_cast<float>(p.y()));
    const double share =
        static_cast<double>(cv::intersectConvexConvex(hull, lit, common)) / signedArea(picture->litOnPanel);
    const double ours = obstructionBy(*picture, std::array{Solid(body)}).share;
    EXPECT_NEAR(ours, share, 1e-3);
    shaded += ours > 0.001;
  }
  EXPECT_GT(shaded, 50);
}

}  // namespace
}  // namespace baywright
