// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

#include "job/job.h"
#include "job/thing_lookup.h"
#include "job/validate.h"

namespace baywright::testing {

inline constexpr double operator""_deg(long double degrees) {
  return static_cast<double>(degrees) * std::numbers::pi / 180;
}
inline constexpr double operator""_deg(unsigned long long degrees) {
  return static_cast<double>(degrees) * std::numbers::pi / 180;
}

/// Builds a job in the words of the trade; metres and radians.
///
///     const Job job = garage(6.0, 4.5).withCeiling(2.41).withShelf("A", 1.0, 1.8, 0.4, 1.9)
///                         .withGolfer(1.88, Hand::Left, "Robin").withClub(1.156).bayAt(4.6, 2.25, 0).job();
///
/// The floor's first corner is the world's origin. Wall A runs along x at y = 0, B along y at x = length, C
/// back, D down. Everything is as if shot with a laser. The job starts with newJob()'s kit, its bay in the
/// middle of wall B's side, looking at it, and a flat ceiling of 2.70 m.
class JobBuilder {
 public:
  explicit JobBuilder(const std::vector<Vec2>& corners) : job_(newJob()) { floor(corners); }

  // --- the room
  JobBuilder& withCeiling(double height) {
    job_.room.ceiling.clear();
    return addCeiling({}, height, Vec2::Zero(), Vec2::Zero());
  }
  /// `low` at y = 0, `high` at y = yFar.
  JobBuilder& withSlopedCeiling(double low, double high, double yFar) {
    job_.room.ceiling.clear();
    return addCeiling({}, low, Vec2::Zero(), {0, (high - low) / yFar});
  }
  /// A lower (or the only) part over a region, beside those there are.
  JobBuilder& withCeilingPart(std::vector<Vec2> region, double height, Vec2 slope = Vec2::Zero()) {
    const Vec2 anchor = region.empty() ? Vec2(0, 0) : region.front();
    return addCeiling(std::move(region), height, anchor, slope);
  }
  /// Stands on the floor against a wall, from `offset` along it.
  JobBuilder& withShelf(const std::string& wall, double offset, double width, double depth, double height,
                        const std::string& name = "Shelf") {
    const auto [start, along] = lineOf(wall);
    const Vec2 centre = start + (offset + width / 2) * along + depth / 2 * leftOf(along);
    const BoxShape box{centre, std::atan2(along.y(), along.x()), width, depth};
    return addFixture(name, FixtureKind::Shelving, box, 0, height);
  }
  JobBuilder& withBox(const std::string& name, Vec2 centre, double width, double depth, double bottom,
                      double top, double heading = 0, FixtureKind kind = FixtureKind::Other) {
    return addFixture(name, kind, BoxShape{centre, heading, width, depth}, bottom, top);
  }
  /// Hangs between two points of the plan.
  JobBuilder& withBeam(Vec2 from, Vec2 to, double breadth, double bottom, double top,
                       const std::string& name = "Beam") {
    const Vec2 along = to - from;
    const BoxShape box{0.5 * (from + to), std::atan2(along.y(), along.x()), along.norm(), breadth};
    return addFixture(name, FixtureKind::Beam, box, bottom, top);
  }
  JobBuilder& withColumn(Vec2 centre, double radius, double top, const std::string& name = "Column") {
    return addFixture(name, FixtureKind::Column, CylinderShape{centre, radius}, 0, top);
  }
  JobBuilder& withLight(Vec2 centre, double radius, double bottom, double top,
                        const std::string& name = "Light") {
    return addFixture(name, FixtureKind::Light, CylinderShape{centre, radius}, bottom, top);
  }
  JobBuilder& withPrism(const std::string& name, std::vector<Vec2> outline, double bottom, double top) {
    return addFixture(name, FixtureKind::Other, PrismShape{std::move(outline)}, bottom, top);
  }

  // --- openings; `offset` along the wall from its start
  JobBuilder& withDoor(const std::string& wall, double offset, double width = 0.9,
                       HingeSide hinge = HingeSide::Start, LeafSwing swing = LeafSwing::IntoRoom,
                       const std::string& name = "Door") {
    Opening& door = addOpening(OpeningKind::HingedDoor, wall, offset, width, 0, 2.03, name);
    door.hinge = hinge;
    door.swing = swing;
    door.isExit = true;
    return *this;
  }
  JobBuilder& withWindow(const std::string& wall, double offset, double width, double sill, double height,
                         const std::string& name = "Window") {
    addOpening(OpeningKind::Window, wall, offset, width, sill, height, name);
    return *this;
  }
  JobBuilder& withSectionalDoor(const std::string& wall, double offset, double width, double height,
                                const std::string& name = "Garage door") {
    addOpening(OpeningKind::SectionalDoor, wall, offset, width, 0, height, name);
    return *this;
  }
  JobBuilder& withPassage(const std::string& wall, double offset, double width, double height = 2.1,
                          const std::string& name = "Passage") {
    addOpening(OpeningKind::Passage, wall, offset, width, 0, height, name).isExit = true;
    return *this;
  }
  /// The door last added may be open while someone swings.
  JobBuilder& thatStaysOpen() {
    job_.room.openings.back().staysOpen = true;
    return *this;
  }

  // --- people
  JobBuilder& withGolfer(double stature, Hand hand = Hand::Right, const std::string& name = "Golfer") {
    Golfer golfer;
    golfer.id = job_.takeId();
    golfer.name = name;
    golfer.hand = hand;
    golfer.stature = taped(stature);
    job_.golfers.push_back(golfer);
    return *this;
  }
  /// Of the golfer last added. The defaults are a driver: 45.5 in, 58 degrees.
  JobBuilder& withClub(double length = 1.156, double lie = 1.012, const std::string& name = "Driver") {
    job_.golfers.back().clubs.push_back({job_.takeId(), name, length, lie});
    return *this;
  }
  /// Of the golfer last added, with the club last added.
  JobBuilder& withMeasuredReach(double highest, double behind) {
    Golfer& golfer = job_.golfers.back();
    golfer.reach = MeasuredReach{golfer.clubs.back().id, taped(highest), taped(behind)};
    return *this;
  }
  JobBuilder& withBystander(Vec2 position, const std::string& name = "Onlooker") {
    Bystander bystander;
    bystander.id = job_.takeId();
    bystander.name = name;
    bystander.position = position;
    job_.bystanders.push_back(bystander);
    return *this;
  }

  // --- the bay
  /// Where the middle of the screen's face stands, and which way a shot flies.
  JobBuilder& bayAt(double x, double y, double heading) {
    placement().bay = {{x, y}, heading};
    return *this;
  }
  JobBuilder& withFrame(double width, double height, double depth = 1.5) {
    kit().frame.width = width;
    kit().frame.height = height;
    kit().frame.depth = depth;
    return *this;
  }
  JobBuilder& withScreen(double width, double height, double bottom = 0.05) {
    kit().screen.width = width;
    kit().screen.height = height;
    kit().screen.bottom = bottom;
    return *this;
  }
  /// Ball to screen, with the mat and monitor there too; r of the strike points for each hand.
  JobBuilder& strikingFrom(double distance, double rightHanded = 0, double leftHanded = 0) {
    placement().monitor.x() += placement().strikeDistance - distance;
    placement().matCentre.x() = -distance;
    placement().strikeDistance = distance;
    placement().strikeRightHanded = rightHanded;
    placement().strikeLeftHanded = leftHanded;
    return *this;
  }
  /// A lens of one throw ratio, hung or stood at (d, r, u).
  JobBuilder& withProjector(double throwRatio, Vec3 lens, MountKind mount = MountKind::Ceiling) {
    kit().hasProjector = true;
    kit().projector.throwMin = kit().projector.throwMax = throwRatio;
    placement().projector.throwRatio = throwRatio;
    placement().projector.lens = lens;
    placement().projector.kind = mount;
    return *this;
  }
  JobBuilder& withoutProjector() {
    kit().hasProjector = false;
    return *this;
  }
  JobBuilder& withoutMonitor() {
    kit().hasMonitor = false;
    return *this;
  }

  // --- the rest
  JobBuilder& inUnits(LengthUnit unit) {
    job_.units.length = unit;
    return *this;
  }
  /// Anything that has no verb of its own.
  JobBuilder& with(const std::function<void(Job&)>& change) {
    change(job_);
    return *this;
  }

  /// The job; the test fails if it is not a valid one.
  Job job() const {
    for (const Problem& problem : validate(job_)) ADD_FAILURE() << problem.sentence();
    return job_;
  }
  /// The job as it is, for tests of what refuses it.
  Job uncheckedJob() const { return job_; }

  Kit& kit() { return job_.options.front().kit; }
  Placement& placement() { return job_.options.front().placement; }

 private:
  struct Line {
    Vec2 start;
    Vec2 along;
  };

  void floor(const std::vector<Vec2>& corners) {
    job_.room.name = "Room";
    for (std::size_t i = 0; i < corners.size(); ++i) {
      Wall wall;
      wall.id = job_.takeId();
      wall.name = std::string(1, static_cast<char>('A' + i));
      wall.start = corners[i];
      wall.startCovariance =
          PlanCovariance::isotropic(instrumentSigma(Instrument::Laser, 5) / std::sqrt(2.0));
      job_.room.walls.push_back(wall);
    }
    withCeiling(2.70);
    double length = 0;
    double width = 0;
    for (const Vec2& corner : corners) {
      length = std::max(length, corner.x());
      width = std::max(width, corner.y());
    }
    bayAt(length - 0.5, width / 2, 0);
  }

  JobBuilder& addCeiling(std::vector<Vec2> region, double height, Vec2 anchor, Vec2 slope) {
    CeilingPart part;
    part.id = job_.takeId();
    part.name = job_.room.ceiling.empty() ? "Ceiling" : "Ceiling part";
    part.region = std::move(region);
    part.anchor = anchor;
    part.height = shot(height);
    part.slope = slope;
    job_.room.ceiling.push_back(part);
    return *this;
  }

  JobBuilder& addFixture(const std::string& name, FixtureKind kind, FixtureShape shape, double bottom,
                         double top) {
    Fixture fixture;
    fixture.id = job_.takeId();
    fixture.name = name;
    fixture.kind = kind;
    fixture.shape = std::move(shape);
    fixture.bottom = shot(bottom);
    fixture.top = shot(top);
    fixture.planInstrument = Instrument::Laser;
    job_.room.fixtures.push_back(fixture);
    return *this;
  }

  Opening& addOpening(OpeningKind kind, const std::string& wall, double offset, double width, double sill,
                      double height, const std::string& name) {
    Opening opening;
    opening.id = job_.takeId();
    opening.wall = wallNamed(wall).id;
    opening.name = name;
    opening.kind = kind;
    opening.offset = shot(offset);
    opening.width = shot(width);
    opening.sill = shot(sill);
    opening.height = shot(height);
    job_.room.openings.push_back(opening);
    return job_.room.openings.back();
  }

  const Wall& wallNamed(const std::string& name) const {
    for (const Wall& wall : job_.room.walls)
      if (wall.name == name) return wall;
    ADD_FAILURE() << "The room has no wall " << name;
    return job_.room.walls.front();
  }
  Line lineOf(const std::string& name) const {
    const Wall& wall = wallNamed(name);
    const auto index = static_cast<std::size_t>(&wall - job_.room.walls.data());
    const Vec2 end = job_.room.walls[(index + 1) % job_.room.walls.size()].start;
    return {wall.start, (end - wall.start).normalized()};
  }

  Job job_;
};

/// A rectangle, `length` along x and `width` along y.
inline JobBuilder garage(double length, double width) {
  return JobBuilder({{0, 0}, {length, 0}, {length, width}, {0, width}});
}
/// An L: the corner at (length, width) is missing by cutLength along x and cutWidth along y.
inline JobBuilder lShapedRoom(double length, double width, double cutLength, double cutWidth) {
  return JobBuilder({{0, 0},
                     {length, 0},
                     {length, width - cutWidth},
                     {length - cutLength, width - cutWidth},
                     {length - cutLength, width},
                     {0, width}});
}
/// Any floor; corners counter-clockwise.
inline JobBuilder roomOver(const std::vector<Vec2>& corners) {
  return JobBuilder(corners);
}

/// A hall with room on all sides for one tall golfer with a driver; the projector hangs well in front of the
/// swing.
inline JobBuilder roomyHall() {
  return garage(12.0, 9.0)
      .withCeiling(4.5)
      .withGolfer(1.88, Hand::Right, "Robin")
      .withClub()
      .bayAt(10.0, 4.5, 0)
      .strikingFrom(4.5)
      .withProjector(0.6, {-1.8, 0, 2.30});
}

/// The id of what has this name; the test fails where there is none.
inline Id idNamed(const Job& job, const std::string& name) {
  for (const Thing& thing : allThings(job))
    if (thing.name == name) return thing.id;
  ADD_FAILURE() << "Nothing in the job is called " << name;
  return {};
}

}  // namespace baywright::testing
