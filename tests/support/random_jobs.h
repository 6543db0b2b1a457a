// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>
#include <string>
#include <vector>

#include "geometry/mesh.h"
#include "job/job.h"
#include "job/limits.h"

namespace baywright::testing {

/// Numbers from a seed, the same with every standard library.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}

  double between(double low, double high) {
    constexpr double kSteps = 9007199254740992.0;  // 2^53
    return low + (high - low) * (static_cast<double>(engine_() >> 11) / kSteps);
  }
  double in(Range range) { return between(range.low, range.high); }
  int count(int low, int high) {
    return low + static_cast<int>(engine_() % static_cast<std::uint64_t>(high - low + 1));
  }
  bool coin() { return (engine_() & 1) != 0; }
  template <class E>
  E one(std::initializer_list<E> choices) {
    return *(choices.begin() + count(0, static_cast<int>(choices.size()) - 1));
  }
  std::string text() {
    static const std::vector<std::string> words = {
        "Robin",       "Größe 2", "left \"bay\"", "тест", "a\\b/c", "第一",
        "line\nbreak", "",        "Garage door",  "½″",   "x",      "Sam"};
    return words[static_cast<std::size_t>(count(0, static_cast<int>(words.size()) - 1))];
  }
  Vec2 point(double reach) { return {between(-reach, reach), between(-reach, reach)}; }
  Dimension dimension(Range range) {
    return {
        in(range),
        one({Instrument::Tape, Instrument::Laser, Instrument::Drawing, Instrument::Scan, Instrument::Guess}),
        coin()};
  }

 private:
  std::mt19937_64 engine_;
};

/// A valid job with some of everything in it, about a room of some metres. Nothing in it need fit.
class RandomJob {
 public:
  explicit RandomJob(std::uint64_t seed) : dice_(seed) {}

  Job make() {
    job_.info = {
        dice_.text(), dice_.text(), dice_.text(), dice_.text(), "12", "B", "2031-02-03", dice_.text(), ""};
    job_.units = {dice_.one({LengthUnit::FeetInches, LengthUnit::Metres, LengthUnit::Millimetres}),
                  dice_.one({8, 16, 32}), dice_.coin() ? '.' : ','};
    room();
    people();
    for (int i = dice_.count(1, 3); i > 0; --i) option();
    job_.activeOption =
        job_.options[static_cast<std::size_t>(dice_.count(0, static_cast<int>(job_.options.size()) - 1))].id;
    job_.requirements.swingClearance = dice_.between(0, 1);
    job_.requirements.ambient = dice_.between(0, 500);
    measurements();
    scans();
    return job_;
  }

 private:
  /// Corners at growing angles about the middle: simple, counter-clockwise, often concave.
  void room() {
    Room& room = job_.room;
    room.name = dice_.text();
    const int corners = dice_.count(3, 9);
    for (int i = 0; i < corners; ++i) {
      const double angle = (i + dice_.between(0.1, 0.9)) * 2 * std::numbers::pi / corners;
      Wall wall;
      wall.id = job_.takeId();
      wall.name = std::string(1, static_cast<char>('A' + i));
      wall.start = dice_.between(2, 6) * Vec2(std::cos(angle), std::sin(angle));
      const double a = dice_.between(0, 0.1);
      const double b = dice_.between(0, 0.1);
      wall.startCovariance = {a * a, dice_.between(-0.9, 0.9) * a * b, b * b};
      wall.thickness = dice_.between(0, 0.5);
      room.walls.push_back(wall);
    }
    ceiling();
    for (std::size_t i = 0; i < room.walls.size(); ++i)
      if (dice_.coin()) opening(i);
    for (int i = dice_.count(0, 6); i > 0; --i) fixture();
  }

  void ceiling() {
    for (int i = dice_.count(1, 3); i > 0; --i) {
      CeilingPart part;
      part.id = job_.takeId();
      part.name = dice_.text();
      if (dice_.coin()) part.region = {{-3, -3}, {dice_.between(0, 4), -3}, {3, dice_.between(0, 4)}};
      part.anchor = dice_.point(2);
      part.height = dice_.dimension({2.2, 4});
      part.slope = dice_.point(0.1);
      job_.room.ceiling.push_back(part);
    }
  }

  void opening(std::size_t wall) {
    const Room& room = job_.room;
    const double length = (room.walls[(wall + 1) % room.walls.size()].start - room.walls[wall].start).norm();
    if (length < 0.3) return;
    Opening opening;
    opening.id = job_.takeId();
    opening.wall = room.walls[wall].id;
    opening.name = dice_.text();
    opening.kind = dice_.one(
        {OpeningKind::HingedDoor, OpeningKind::SectionalDoor, OpeningKind::Window, OpeningKind::Passage});
    opening.width = dice_.dimension({0.1, 0.8 * length});
    opening.offset = dice_.dimension({0, length - opening.width.value});
    opening.sill = dice_.dimension({0, 1});
    opening.height = dice_.dimension({0.5, 2.5});
    opening.isExit = dice_.coin();
    opening.hinge = dice_.one({HingeSide::Start, HingeSide::End});
    opening.swing = dice_.one({LeafSwing::IntoRoom, LeafSwing::OutOfRoom});
    opening.openAngle = dice_.in({0.5, 3});
    opening.trackDepth = dice_.between(0, 3);
    opening.staysOpen = dice_.coin();
    job_.room.openings.push_back(opening);
  }

  void fixture() {
    Fixture fixture;
    fixture.id = job_.takeId();
    fixture.name = dice_.text();
    fixture.kind =
        dice_.one({FixtureKind::Shelving, FixtureKind::Beam, FixtureKind::Fan, FixtureKind::Other});
    const Vec2 centre = dice_.point(4);
    switch (dice_.count(0, 2)) {
      case 0:
        fixture.shape = BoxShape{centre, dice_.between(-3, 3), dice_.between(0.1, 3), dice_.between(0.1, 1)};
        break;
      case 1:
        fixture.shape = PrismShape{{centre, centre + Vec2(dice_.between(0.1, 2), 0), centre + Vec2(0, 1)}};
        break;
      default:
        fixture.shape = CylinderShape{centre, dice_.between(0.01, 0.5)};
    }
    fixture.bottom = dice_.dimension({-1, 2});
    fixture.top = dice_.dimension({2.1, 4});
    fixture.breakable = dice_.coin();
    job_.room.fixtures.push_back(fixture);
  }

  void people() {
    for (int i = dice_.count(0, 3); i > 0; --i) {
      Golfer golfer;
      golfer.id = job_.takeId();
      golfer.name = dice_.text();
      golfer.hand = dice_.one({Hand::Right, Hand::Left});
      golfer.stature = dice_.dimension(limits::kStature);
      for (int club = dice_.count(0, 3); club > 0; --club)
        golfer.clubs.push_back(
            {job_.takeId(), dice_.text(), dice_.in(limits::kClubLength), dice_.in(limits::kClubLie)});
      if (!golfer.clubs.empty() && dice_.coin()) {
        golfer.reach = MeasuredReach{golfer.clubs.front().id, {}, {}};
        if (dice_.coin()) golfer.reach->highest = dice_.dimension({2, 3.2});
        if (dice_.coin()) golfer.reach->behind = dice_.dimension({0.5, 2.5});
      }
      golfer.swings = dice_.coin();
      job_.golfers.push_back(golfer);
    }
    if (dice_.coin()) job_.bystanders.push_back({job_.takeId(), dice_.text(), dice_.point(4), 0.4, 1.7});
  }

  void option() {
    Option option = newJob().options.front();
    for (Id* id : {&option.id, &option.kit.frame.id, &option.kit.screen.id, &option.kit.mat.id,
                   &option.kit.monitor.id, &option.kit.projector.id})
      *id = job_.takeId();
    option.name = dice_.text();
    option.kit.frame.width = dice_.between(2, 5);
    option.kit.screen.gain = dice_.between(0.5, 2);
    option.kit.projector.throwMin = dice_.between(0.3, 1.2);
    option.kit.projector.throwMax = dice_.between(1.2, 2);
    option.kit.projector.body = {dice_.between(0.1, 0.5), dice_.between(0.1, 0.5), dice_.between(0.05, 0.3)};
    option.kit.hasMonitor = dice_.coin();
    option.kit.hasProjector = dice_.coin();
    Placement& placement = option.placement;
    placement.bay = {dice_.point(3), dice_.between(-3, 3)};
    placement.strikeDistance = dice_.between(2, 5);
    placement.strikeRightHanded = dice_.between(-1, 1);
    placement.monitor = {dice_.between(-4, 0), dice_.between(-1, 1), dice_.between(0, 3)};
    placement.projector.lens = {dice_.between(-5, -0.5), dice_.between(-1, 1), dice_.between(0, 3)};
    placement.projector.kind = dice_.one({MountKind::Ceiling, MountKind::Floor, MountKind::Wall});
    placement.projector.pitch = dice_.between(-0.5, 0.5);
    job_.options.push_back(option);
  }

  void measurements() {
    const auto corner = [&] {
      const auto last = static_cast<int>(job_.room.walls.size()) - 1;
      return job_.room.walls[static_cast<std::size_t>(dice_.count(0, last))].id;
    };
    for (int i = dice_.count(0, 5); i > 0; --i) {
      Measurement m;
      m.id = job_.takeId();
      m.kind = dice_.one({MeasurementKind::WallLength, MeasurementKind::Diagonal, MeasurementKind::Angle,
                          MeasurementKind::Offset, MeasurementKind::CeilingHeight});
      m.from = corner();
      m.to = corner();
      m.at = corner();
      m.position = dice_.point(4);
      m.value = dice_.between(0, 6);
      m.how = dice_.one({Instrument::Tape, Instrument::Laser});
      m.used = dice_.coin();
      m.note = dice_.text();
      job_.measurements.push_back(m);
    }
  }

  void scans() {
    for (int i = dice_.count(0, 2); i > 0; --i) {
      PlanScan scan;
      scan.id = job_.takeId();
      scan.name = dice_.text();
      scan.file = std::make_shared<const Blob>(Blob{"plan one.png", bytes()});
      scan.worldFromPixel << 0.01, 0.001, dice_.between(-5, 5), -0.001, -0.01, dice_.between(-5, 5), 1e-5, 0,
          1;
      scan.opacity = dice_.between(0, 1);
      scan.scaled = dice_.coin();
      scan.locked = dice_.coin();
      job_.planScans.push_back(scan);
    }
    if (dice_.coin()) {
      RoomScan scan;
      scan.id = job_.takeId();
      scan.name = dice_.text();
      scan.file = std::make_shared<const Blob>(Blob{"room.ply", bytes()});
      std::vector<Eigen::Vector3f> vertices;
      for (int v = dice_.count(3, 20); v > 0; --v)
        vertices.emplace_back(raised(dice_.point(5), dice_.between(0, 3)).cast<float>());
      if (dice_.coin())
        scan.points = std::make_shared<const std::vector<Eigen::Vector3f>>(vertices);
      else
        scan.mesh =
            std::make_shared<const TriangleMesh>(*TriangleMesh::from(vertices, {{0, 1, 2}, {2, 1, 0}}));
      job_.roomScans.push_back(scan);
    }
    if (dice_.coin())
      job_.originals.push_back(
          {job_.takeId(), dice_.text(), std::make_shared<const Blob>(Blob{"old list.csv", bytes()})});
  }

  std::string bytes() {
    std::string made;
    for (int i = dice_.count(0, 400); i > 0; --i) made.push_back(static_cast<char>(dice_.count(0, 255)));
    return made;
  }

  Dice dice_;
  Job job_;
};

inline Job randomJob(std::uint64_t seed) {
  return RandomJob(seed).make();
}

}  // namespace baywright::testing
