// SPDX-License-Identifier: Apache-2.0
#include "survey/line_detect.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace baywright {
namespace {

/// White paper on which strokes are drawn with their true coverage of each pixel, by 8 by 8 samples.
class Sheet {
 public:
  Sheet(int width, int height)
      : image_{width, height, {}}, ink_(static_cast<std::size_t>(width * height), 0) {}

  void stroke(const Segment2& line, double width) {
    const Vec2 along = (line.b - line.a).normalized();
    const double length = (line.b - line.a).norm();
    fill([&](const Vec2& p) {
      const double t = along.dot(p - line.a);
      return t >= 0 && t <= length && std::abs(cross(along, p - line.a)) <= 0.5 * width;
    });
  }
  template <class Inside>
  void fill(Inside inside) {
    constexpr int kSamples = 8;
    for (int y = 0; y < image_.height; ++y)
      for (int x = 0; x < image_.width; ++x) {
        int hits = 0;
        for (int i = 0; i < kSamples * kSamples; ++i)
          hits += inside({x + (i % kSamples + 0.5) / kSamples, y + (i / kSamples + 0.5) / kSamples});
        double& ink = ink_[static_cast<std::size_t>(y * image_.width + x)];
        ink = std::max(ink, hits / 64.0);
      }
  }
  GrayImage scanned(double noise, unsigned seed = 1) {
    std::mt19937 random(seed);
    image_.pixels.clear();
    for (const double ink : ink_) {
      // A sum of uniform numbers is near enough to Gaussian, and the same with every library.
      double sum = -6;
      for (int i = 0; i < 12; ++i) sum += static_cast<double>(random()) / 4294967296.0;
      image_.pixels.push_back(
          static_cast<std::uint8_t>(std::clamp(std::lround(235 - 190 * ink + noise * sum), 0L, 255L)));
    }
    return image_;
  }

 private:
  GrayImage image_;
  std::vector<double> ink_;
};

/// How far a line's ends lie from a true line, and how far it is turned.
struct Miss {
  double across = 1e9;
  double degrees = 1e9;
  double short_ = 1e9;  ///< by how much it falls short of, or overshoots, the true length
};

Miss missOf(const std::vector<DetectedLine>& lines, const Segment2& truth) {
  const Vec2 along = (truth.b - truth.a).normalized();
  Miss best;
  for (const DetectedLine& line : lines) {
    const Vec2 direction = (line.segment.b - line.segment.a).normalized();
    Miss miss;
    miss.across = std::max(std::abs(cross(along, line.segment.a - truth.a)),
                           std::abs(cross(along, line.segment.b - truth.a)));
    miss.degrees = std::asin(std::min(1.0, std::abs(cross(along, direction)))) * 180 / kPi;
    miss.short_ = std::max(std::min((line.segment.a - truth.a).norm(), (line.segment.a - truth.b).norm()),
                           std::min((line.segment.b - truth.a).norm(), (line.segment.b - truth.b).norm()));
    if (miss.across + miss.short_ < best.across + best.short_) best = miss;
  }
  return best;
}

TEST(LineDetect, FindsPenLinesAtAnyTurnAndNoise) {
  for (const double noise : {0.0, 10.0, 20.0})
    for (const double degrees : {0.0, 0.7, 12.0, 33.0, 45.0, 90.0, 118.0, 171.3}) {
      SCOPED_TRACE(testing::Message() << "noise " << noise << ", " << degrees << " degrees");
      const Vec2 along(std::cos(degrees * kPi / 180), std::sin(degrees * kPi / 180));
      const Segment2 truth{Vec2(150.3, 150.8) - 100 * along, Vec2(150.3, 150.8) + 100 * along};
      Sheet sheet(300, 300);
      sheet.stroke(truth, 3);
      const auto lines = detectLines(sheet.scanned(noise));
      ASSERT_TRUE(lines);
      ASSERT_FALSE(lines->empty());
      const Miss miss = missOf({lines->front()}, truth);
      EXPECT_LT(miss.across, 0.5);
      EXPECT_LT(miss.degrees, 0.2);
      EXPECT_LT(miss.short_, 3);
      EXPECT_NEAR(lines->front().stroke, 3, 0.8);
      EXPECT_EQ(lines->size(), 1u);
    }
}

TEST(LineDetect, FindsTheFacesOfAFilledWall) {
  Sheet sheet(300, 200);
  sheet.fill([](const Vec2& p) { return p.x() > 40.25 && p.x() < 260.75 && p.y() > 80.4 && p.y() < 104.1; });
  const auto lines = detectLines(sheet.scanned(8));
  ASSERT_TRUE(lines);
  for (const double y : {80.4, 104.1}) {
    const Miss miss = missOf(*lines, {{40.25, y}, {260.75, y}});
    EXPECT_LT(miss.across, 0.5);
    EXPECT_LT(miss.degrees, 0.2);
  }
  EXPECT_EQ(lines->front().stroke, 0);
}

// A plan of rooms with a door's arc and some lettering-like marks, turned by 3 degrees.
TEST(LineDetect, FindsTheWallsOfAPlan) {
  const Eigen::Rotation2Dd turn(3 * kPi / 180);
  const auto at = [&](double x, double y) -> Vec2 { return turn * Vec2(x, y) + Vec2(60, 40); };
  const std::vector<Segment2> walls = {{at(0, 0), at(400, 0)},     {at(400, 0), at(400, 260)},
                                       {at(400, 260), at(0, 260)}, {at(0, 260), at(0, 0)},
                                       {at(150, 0), at(150, 110)}, {at(150, 150), at(150, 260)}};
  Sheet sheet(520, 380);
  for (const Segment2& wall : walls) sheet.stroke(wall, 4);
  sheet.fill([&](const Vec2& p) {
    const Vec2 v = p - at(150, 110);
    return std::abs(v.norm() - 40) < 0.7 && v.x() > 0 && v.y() > 0;
  });
  for (int i = 0; i < 12; ++i) sheet.stroke({at(200 + 12 * i, 120), at(204 + 12 * i, 128)}, 2);
  const auto lines = detectLines(sheet.scanned(12));
  ASSERT_TRUE(lines);
  for (const Segment2& wall : walls) {
    const Miss miss = missOf(*lines, wall);
    EXPECT_LT(miss.across, 0.5);
    EXPECT_LT(miss.degrees, 0.2);
    EXPECT_LT(miss.short_, 5);
  }
  EXPECT_LE(lines->size(), 12u);
  const auto directions = dominantDirections(*lines);
  ASSERT_GE(directions.size(), 2u);
  EXPECT_NEAR(directions[0].angle * 180 / kPi, 3, 0.1);
  EXPECT_NEAR(directions[1].angle * 180 / kPi, 93, 0.1);
}

TEST(LineDetect, SeesNothingInNoise) {
  for (unsigned seed = 1; seed <= 5; ++seed) {
    const auto lines = detectLines(Sheet(400, 400).scanned(25, seed));
    ASSERT_TRUE(lines);
    EXPECT_TRUE(lines->empty()) << seed;
  }
}

TEST(LineDetect, KeepsTheStrongest) {
  Sheet sheet(300, 300);
  for (int i = 0; i < 8; ++i) sheet.stroke({{20, 30 + 30.0 * i}, {60 + 25.0 * i, 30 + 30.0 * i}}, 3);
  LineDetectOptions options;
  options.most = 3;
  const auto lines = detectLines(sheet.scanned(5), options);
  ASSERT_TRUE(lines);
  ASSERT_EQ(lines->size(), 3u);
  EXPECT_NEAR(lines->at(0).segment.a.y(), 240, 0.5);
  EXPECT_NEAR(lines->at(2).segment.a.y(), 180, 0.5);
}

TEST(LineDetect, RefusesPicturesThatAreNone) {
  EXPECT_FALSE(detectLines({}));
  EXPECT_FALSE(detectLines({10, 10, std::vector<std::uint8_t>(99, 0)}));
  EXPECT_FALSE(detectLines({-1, -100, std::vector<std::uint8_t>(100, 0)}));
  GrayImage large{6000, 5000, {}};
  large.pixels.assign(30'000'000, 255);
  const auto refused = detectLines(large);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().next, "Scale it down.");
  EXPECT_TRUE(detectLines({1, 1, {7}})->empty());
}

TEST(LineDetect, StopsWhenAsked) {
  Progress progress;
  progress.cancelled = [] { return true; };
  Sheet sheet(400, 400);
  sheet.stroke({{20, 20}, {300, 200}}, 3);
  EXPECT_FALSE(detectLines(sheet.scanned(0), {}, progress));
}

TEST(LineDetect, HasNoDirectionWithoutLines) {
  EXPECT_TRUE(dominantDirections({}).empty());
}

// Lines a little to either side of level are one direction, not two at 0 and 180 degrees.
TEST(LineDetect, JoinsDirectionsAcrossLevel) {
  const std::vector<DetectedLine> lines = {{{{0, 0}, {100, 0.5}}, 100, 0}, {{{0, 9}, {100, 8.5}}, 100, 0}};
  const auto directions = dominantDirections(lines);
  ASSERT_EQ(directions.size(), 1u);
  EXPECT_NEAR(std::sin(directions[0].angle), 0, 1e-6);
}

}  // namespace
}  // namespace baywright
