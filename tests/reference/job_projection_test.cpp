// SPDX-License-Identifier: Apache-2.0
// Problems of projection, from a job's text to its figures, against closed forms of the pinhole (Hartley &
// Zisserman, Multiple View Geometry, 2nd ed., ch. 6: x = f X / Z) and Lambert's law.
#include <array>
#include <cmath>
#include <tuple>

#include "textbook.h"

namespace baywright::reference {
namespace {

using namespace testing;

constexpr double kPanelAspect = 1920.0 / 1080;

/// A bare hall, the lens's axis through the middle of the panel at 1.2 m and 3.6 m from the screen.
JobBuilder hall(double throwRatio) {
  JobBuilder builder = garage(12, 9);
  builder.withCeiling(4.5).bayAt(10, 4.5, 0).withScreen(3.0, 2.25, 0.075).withoutMonitor();
  builder.withProjector(throwRatio, {-3.6, 0, 1.2});
  builder.kit().projector.offset = 0;
  builder.kit().projector.shiftUpMax = builder.kit().projector.shiftSideMax = 1;
  builder.kit().projector.keystoneMax = 1;
  return builder;
}

/// Where the ray (across, up) per unit of distance along the axis meets the screen, (s, t), after yaw then
/// nothing else: turned about the vertical through the lens.
Vec2 afterYaw(double across, double up, double yaw) {
  const double along = std::cos(yaw) - across * std::sin(yaw);
  const double side = std::sin(yaw) + across * std::cos(yaw);
  return {1.5 + 3.6 * side / along, 1.2 - 0.075 + 3.6 * up / along};
}

// Throw ratio = distance / width (IEC 62471-5).
TEST(ProjectionProblem, ThrowRatio) {
  const Textbook answer(hall(1.5));
  EXPECT_NEAR(answer["picture.throw_distance"], 3.6, 1e-12);
  EXPECT_NEAR(answer["picture.width"], 2.4, 1e-12);
  EXPECT_NEAR(answer["picture.height"], 2.4 / kPanelAspect, 1e-12);
  EXPECT_NEAR(answer["picture.area"], 2.4 * 2.4 / kPanelAspect, 1e-12);
  EXPECT_NEAR(answer["picture.coverage"], 2.4 * 1.35 / (3.0 * 2.25), 1e-12);
  EXPECT_NEAR(answer["picture.pixel_largest"], 2.4 / 1920, 1e-12);
  EXPECT_NEAR(answer["picture.edge_ratio_across"], 1, 1e-12);
}

// Shift moves the picture by its share of the picture and leaves it a rectangle.
TEST(ProjectionProblem, LensShift) {
  const Textbook answer(hall(1.5).with([](Job& j) {
    j.options[0].placement.projector.shiftUp = 0.4;
    j.options[0].placement.projector.shiftSide = -0.1;
  }));
  const double left = 1.5 - 1.2 - 0.24;
  const double top = 1.125 + 0.675 + 0.4 * 1.35;
  EXPECT_NEAR(answer["picture.on_screen.top_left.s"], left, 1e-12);
  EXPECT_NEAR(answer["picture.on_screen.bottom_left.s"], left, 1e-12);
  EXPECT_NEAR(answer["picture.on_screen.top_left.t"], top, 1e-12);
  EXPECT_NEAR(answer["picture.on_screen.top_right.t"], top, 1e-12);
  EXPECT_NEAR(answer["picture.on_screen.top_right.s"], left + 2.4, 1e-12);
}

// An offset of half the height puts an edge of the picture on the axis: the lower one of a projector that
// stands, the upper one of one that hangs.
TEST(ProjectionProblem, OffsetOfAStandingAndAHangingProjector) {
  const auto withOffset = [](MountKind kind) {
    return Textbook(hall(1.5).with([&](Job& j) {
      j.options[0].kit.projector.offset = 0.5;
      j.options[0].placement.projector.kind = kind;
    }));
  };
  EXPECT_NEAR(withOffset(MountKind::Floor)["picture.on_screen.bottom_left.t"], 1.125, 1e-12);
  EXPECT_NEAR(withOffset(MountKind::Ceiling)["picture.on_screen.top_left.t"], 1.125, 1e-12);
}

// Keystone under yaw: edges stand as cos(yaw - a) to cos(yaw + a), a the half angle of the picture.
TEST(ProjectionProblem, KeystoneUnderYaw) {
  const double yaw = 18_deg;
  const Textbook answer(hall(1.2).with([&](Job& j) { j.options[0].placement.projector.yaw = yaw; }));
  const double half = 0.5 / 1.2;
  const double up = half / kPanelAspect;
  const Vec2 topLeft = afterYaw(-half, up, yaw);
  const Vec2 topRight = afterYaw(half, up, yaw);
  const Vec2 bottomRight = afterYaw(half, -up, yaw);
  EXPECT_NEAR(answer["picture.on_screen.top_left.s"], topLeft.x(), 1e-9);
  EXPECT_NEAR(answer["picture.on_screen.top_left.t"], topLeft.y(), 1e-9);
  EXPECT_NEAR(answer["picture.on_screen.top_right.s"], topRight.x(), 1e-9);
  EXPECT_NEAR(answer["picture.on_screen.top_right.t"], topRight.y(), 1e-9);
  EXPECT_NEAR(answer["picture.on_screen.bottom_right.t"], bottomRight.y(), 1e-9);
  const double angle = std::atan(half);
  EXPECT_NEAR(answer["picture.edge_ratio_across"], std::cos(yaw - angle) / std::cos(yaw + angle), 1e-9);
  EXPECT_NEAR(answer["picture.keystone_across"], yaw, 1e-9);
  EXPECT_NEAR(answer["picture.keystone_up"], 0, 1e-9);
}

TEST(ProjectionProblem, KeystoneUnderPitch) {
  const double pitch = -12_deg;
  const Textbook answer(hall(1.2).with([&](Job& j) { j.options[0].placement.projector.pitch = pitch; }));
  const double angle = std::atan(0.5 / 1.2 / kPanelAspect);
  EXPECT_NEAR(answer["picture.edge_ratio_up"], std::cos(-pitch - angle) / std::cos(-pitch + angle), 1e-9);
  EXPECT_NEAR(answer["picture.keystone_up"], pitch, 1e-9);
  EXPECT_NEAR(answer["picture.on_screen.top_left.t"], 1.125 + 3.6 * std::tan(pitch + angle), 1e-9);
  EXPECT_NEAR(answer["picture.on_screen.bottom_left.t"], 1.125 + 3.6 * std::tan(pitch - angle), 1e-9);
}

// Corner moves are where the screen's corners lie on the panel: the inverse of the pinhole. Point (x, y) of
// the screen's plane in units of the distance, seen after a yaw: ((x cos - sin) / (cos + x sin), y / (cos + x
// sin)).
TEST(ProjectionProblem, CornerMovesAreTheHomographysInverse) {
  const double yaw = 10_deg;
  const Textbook answer(hall(0.9).with([&](Job& j) { j.options[0].placement.projector.yaw = yaw; }));
  const auto onPanel = [&](double s, double t) {
    const double x = (s - 1.5) / 3.6;
    const double y = (t - 1.125) / 3.6;
    const double along = std::cos(yaw) + x * std::sin(yaw);
    const Vec2 at((x * std::cos(yaw) - std::sin(yaw)) / along, y / along);
    const double pixelsPerUnit = 1920 * 0.9;
    return Vec2(960 + pixelsPerUnit * at.x(), 540 - pixelsPerUnit * at.y());
  };
  EXPECT_NEAR(answer["picture.corner.top_left.x"], onPanel(0, 2.25).x(), 1e-6);
  EXPECT_NEAR(answer["picture.corner.top_left.y"], onPanel(0, 2.25).y(), 1e-6);
  EXPECT_NEAR(answer["picture.corner.top_right.x"], onPanel(3, 2.25).x() - 1920, 1e-6);
  EXPECT_NEAR(answer["picture.corner.bottom_right.y"], onPanel(3, 0).y() - 1080, 1e-6);
  EXPECT_NEAR(answer["picture.corner.bottom_left.x"], onPanel(0, 0).x(), 1e-6);
}

// E = flux / area, L = E g / pi (Lambert); (Ew + Ea) / (Eb + Ea) with ambient light: 3000 lm on 3.000 m
// by 1.875 m are 533.3 lx, 169.8 cd/m2 and 27.3:1 in 20 lx with 2000:1 native.
TEST(ProjectionProblem, Light) {
  const Textbook answer(hall(1.2).withScreen(3.0, 1.875, 1.2 - 0.9375).with([](Job& j) {
    j.options[0].kit.projector.panelWidth = 1920;
    j.options[0].kit.projector.panelHeight = 1200;
    j.options[0].kit.projector.lumens = 3000;
    j.options[0].kit.projector.contrast = 2000;
    j.options[0].kit.screen.gain = 1;
    j.requirements.ambient = 20;
  }));
  EXPECT_NEAR(answer["picture.mean_illuminance"], 533.33, 0.01);
  EXPECT_NEAR(answer["picture.mean_luminance"], 169.77, 0.01);
  EXPECT_NEAR(answer["picture.contrast"], 27.3, 0.05);
  EXPECT_NEAR(answer["picture.lumens_on_screen"], 3000, 1e-6);
  EXPECT_NEAR(answer["picture.uniformity"], 1, 1e-12);
}

// A panel that shines evenly, turned by a yaw: light falls off as the cube of the distance along the axis in
// units of the ray, (cos + x sin)^-3 over the screen; nine points as in ISO/IEC 21118 annex B.
TEST(ProjectionProblem, NinePointsUnderYaw) {
  const double yaw = 15_deg;
  const Textbook answer(hall(0.6).with([&](Job& j) { j.options[0].placement.projector.yaw = yaw; }));
  const auto relative = [&](double s) {
    const double x = (s - 1.5) / 3.6;
    return std::pow(std::cos(yaw) + x * std::sin(yaw), -3);
  };
  EXPECT_NEAR(answer["picture.coverage"], 1, 1e-12);
  EXPECT_NEAR(answer["picture.uniformity"], relative(2.5) / relative(0.5), 1e-9);
  EXPECT_NEAR(answer["picture.nine_points.1"] / answer["picture.nine_points.2"],
              relative(0.5) / relative(1.5), 1e-9);
  EXPECT_NEAR(answer["picture.nine_points.9"] / answer["picture.nine_points.3"], 1, 1e-9);
  // In the middle: lumens over the picture's area at one distance unit, per square distance.
  const double middle = 3500 / ((1 / 0.6) * (1 / 0.6) / kPanelAspect * 3.6 * 3.6) * relative(1.5);
  EXPECT_NEAR(answer["picture.nine_points.5"], middle, 1e-6 * middle);
}

// Thales: a plate halfway between lens and screen throws a shadow twice as wide and twice as high.
TEST(ProjectionProblem, ShadowOfAPlateHalfway) {
  const Textbook answer(hall(1.2).with([](Job& j) {
    Fixture plate;
    plate.id = j.takeId();
    plate.name = "Plate";
    plate.shape = BoxShape{{10 - 1.799, 4.5}, 0, 0.002, 0.30};
    plate.bottom = shot(1.1);
    plate.top = shot(1.3);
    j.room.fixtures.push_back(plate);
  }));
  const double picture = 3.0 * 3.0 / kPanelAspect;
  EXPECT_NEAR(answer["picture.obstruction"], 0.60 * 0.40 / picture, 1e-9);
}

// One minute of arc, 1/3437.75: a pixel of 2 mm blends from 6.88 m on (ANSI/HFES 100).
TEST(ProjectionProblem, PixelsBlend) {
  const Textbook answer(hall(1.5));
  EXPECT_NEAR(answer["picture.pixels_blend_from"], 2.4 / 1920 * 3437.75, 1e-4);
}

// A panel of one shape on a screen of another: the largest rectangle of the panel's shape, and bars beside or
// above it. 16:9 on 16:9, 16:10, 4:3 and a square of 2.4 m: 2.4 / (16 / 9) = 1.35 high.
TEST(ProjectionProblem, LetterboxOnScreensOfOtherShapes) {
  struct Shape {
    double width, height, fittedWidth, fittedHeight;
  };
  for (const Shape& shape : {Shape{3.2, 1.8, 3.2, 1.8},
                             {3.2, 2.0, 3.2, 1.8},
                             {2.8, 2.1, 2.8, 1.575},
                             {2.4, 2.4, 2.4, 1.35},
                             {4.2, 1.8, 3.2, 1.8}}) {
    const Textbook answer(hall(1.2).withFrame(4.6, 2.6).withScreen(shape.width, shape.height, 0.1));
    EXPECT_NEAR(answer["picture.letterbox.width"], shape.fittedWidth, 1e-12);
    EXPECT_NEAR(answer["picture.letterbox.height"], shape.fittedHeight, 1e-12);
    EXPECT_NEAR(answer["picture.letterbox.bar_beside"], (shape.width - shape.fittedWidth) / 2, 1e-12);
    EXPECT_NEAR(answer["picture.letterbox.bar_above"], (shape.height - shape.fittedHeight) / 2, 1e-12);
    const double screenAspect = shape.width / shape.height;
    EXPECT_NEAR(answer["picture.aspect_loss"],
                1 - std::min(kPanelAspect, screenAspect) / std::max(kPanelAspect, screenAspect), 1e-12);
  }
}

// A lens anywhere, turned about all three axes, shifted both ways: each corner is where its ray meets the
// plane of the screen. The ray is turned step by step, roll about d, pitch about the level axis, yaw about
// the vertical.
TEST(ProjectionProblem, AnyAttitude) {
  const double yaw = 0.31, pitch = -0.37, roll = 0.09, up = 0.12, side = -0.21, throwRatio = 0.85;
  const Vec3 lens(-2.4, -0.7, 2.15);
  const Textbook answer(hall(throwRatio).with([&](Job& j) {
    ProjectorMount& mount = j.options[0].placement.projector;
    mount.lens = lens;
    mount.yaw = yaw;
    mount.pitch = pitch;
    mount.roll = roll;
    mount.shiftUp = up;
    mount.shiftSide = side;
  }));
  const double width = 1 / throwRatio;
  const double height = width / kPanelAspect;
  const auto cornerAt = [&](double across, double above) {
    double d = 1, r = (across + side) * width, u = (above + up) * height;
    std::tie(r, u) =
        std::pair(r * std::cos(roll) + u * std::sin(roll), u * std::cos(roll) - r * std::sin(roll));
    std::tie(d, u) =
        std::pair(d * std::cos(pitch) - u * std::sin(pitch), d * std::sin(pitch) + u * std::cos(pitch));
    std::tie(d, r) = std::pair(d * std::cos(yaw) - r * std::sin(yaw), d * std::sin(yaw) + r * std::cos(yaw));
    const double far = -lens.x() / d;
    return Vec2(1.5 + lens.y() + far * r, lens.z() + far * u - 0.075);
  };
  const std::array<std::pair<const char*, Vec2>, 4> corners = {{{"top_left", cornerAt(-0.5, 0.5)},
                                                                {"top_right", cornerAt(0.5, 0.5)},
                                                                {"bottom_right", cornerAt(0.5, -0.5)},
                                                                {"bottom_left", cornerAt(-0.5, -0.5)}}};
  for (const auto& [name, place] : corners) {
    EXPECT_NEAR(answer[std::string("picture.on_screen.") + name + ".s"], place.x(), 1e-9) << name;
    EXPECT_NEAR(answer[std::string("picture.on_screen.") + name + ".t"], place.y(), 1e-9) << name;
  }
}

// Room light at which (E + A) / (E / 2000 + A) = 15: A = E (1 - 15 / 2000) / 14 = 37.8 lx for 533.3 lx.
TEST(ProjectionProblem, RoomLightForAContrast) {
  const Textbook answer(hall(1.2).withScreen(3.0, 1.875, 1.2 - 0.9375).with([](Job& j) {
    j.options[0].kit.projector.panelHeight = 1200;
    j.options[0].kit.projector.lumens = 3000;
    j.options[0].kit.projector.contrast = 2000;
    j.requirements.ambient = 60;
  }));
  EXPECT_NEAR(answer["picture.ambient_allowed"], 37.81, 0.01);
  EXPECT_EQ(answer.finding("picture_brightness/contrast").verdict, Verdict::Blocked);
}

// A round pole of radius 60 mm halfway between lens and screen: its edges are tangents, 2 * 3.6 tan asin(0.06
// / 1.8) wide on the screen.
TEST(ProjectionProblem, ShadowOfAPole) {
  const Textbook answer(hall(1.2).withColumn({10 - 1.8, 4.5}, 0.06, 3));
  const double width = 2 * 3.6 * std::tan(std::asin(0.06 / 1.8));
  EXPECT_NEAR(answer["picture.obstruction"], width / 3.0,
              0.01 * width / 3.0);  // circumscribed: never too little
  EXPECT_GE(answer["picture.obstruction"], width / 3.0);
}

}  // namespace
}  // namespace baywright::reference
