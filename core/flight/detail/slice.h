// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "flight/arrival.h"

namespace baywright::detail {

/// A flight within a vertical plane: s along the direction from the ball, z up from the floor.
struct PlanePath {
  Vec2 velocity;      ///< (s, z) at t = 0
  Vec2 acceleration;  ///< (s, z), kept
  double height = 0;  ///< z at t = 0; s is 0

  Vec2 at(double t) const { return Vec2(0, height) + t * velocity + (0.5 * t * t) * acceleration; }
  Vec2 velocityAt(double t) const { return velocity + t * acceleration; }
  /// First time at which s is reached going forward; s >= 0.
  std::optional<double> timeAtDistance(double s) const;
  /// When the path crosses z upward or downward, at t >= 0; downward at once if it starts there or lower and
  /// sinks.
  std::optional<double> timeUpThrough(double z) const;
  std::optional<double> timeDownThrough(double z) const;
};

/// The plane d = const in which the frame's front members stand.
double mouthOf(const Frame& frame);

/// An obstacle grown by the ball's radius face by face: inside is normal.dot(p) <= offset for all faces.
struct GrownObstacle {
  Id id;
  std::vector<std::pair<Vec3, double>> faces;
  Aabb3 bounds;
};

/// What all slices of one question share. Holds a reference: the input must outlive it.
class FlightSpace {
 public:
  explicit FlightSpace(const CaptureInput& input);

  const CaptureInput& input() const { return input_; }
  const std::vector<GrownObstacle>& obstacles() const { return obstacles_; }
  PlanePath path(double launchAngle) const;

 private:
  const CaptureInput& input_;
  std::vector<GrownObstacle> obstacles_;
  double areaOverMass_ = 0;  ///< density / 2 * area / mass: acceleration = this * coefficient * speed^2
  Coefficients atLaunch_;
  Coefficients onTheWay_;
  double third_ = 0;  ///< a third of the time to the screen
};

/// All flights in one direction.
class Slice {
 public:
  Slice(const FlightSpace& space, double direction);

  Arrival arrival(double launchAngle) const;
  /// Spans between two launch angles, in order.
  std::vector<LaunchSpan> spans(double lowest, double highest) const;
  /// Distance from the ball to the plane d = down; none when shots fly away from it.
  std::optional<double> distanceTo(double down) const;

 private:
  struct Contact {
    Meets meets;
    double time;
    Id obstacle;
  };
  /// Inside is along * s + up * z <= limit.
  struct HalfPlane {
    double along, up, limit;
  };
  /// An obstacle cut by this plane.
  struct Section {
    Id id;
    double from, to;   ///< s of its bounds
    double low, high;  ///< z of its bounds
    std::vector<HalfPlane> sides;
  };
  /// Where shots cross the plane of the frame's mouth, sideways.
  enum class Lane { Inside, Post, Outside };

  void cutObstacles();
  void placeFrame();
  Contact contact(const PlanePath& path) const;
  std::optional<Contact> frameContact(const PlanePath& path) const;
  Contact insideContact(const PlanePath& path, double from) const;
  std::optional<Contact> outsideContact(const PlanePath& path) const;
  std::optional<double> entry(const Section& section, const PlanePath& path, double until) const;
  double acrossAt(double s) const { return input_.ball.y() + s * along_.y(); }

  const FlightSpace& space_;
  const CaptureInput& input_;
  Vec2 along_;                     ///< (d, r) of the direction
  std::vector<Section> sections_;  ///< nearest first
  std::optional<double> toMouth_, toScreen_, toSideFromInside_, toSideFromOutside_;
  Lane lane_ = Lane::Inside;
  bool startsInside_ = false;
};

}  // namespace baywright::detail
