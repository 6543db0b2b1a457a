// SPDX-License-Identifier: Apache-2.0
// Makes the example job from the scanned plan that make_plan_scan.py draws:
//   make_example PLAN.jpg OUT.bayjob
// Building, people and kit are invented. The job is made with the program's own verbs, so it is always one
// that the program could have made; the same plan gives the same bytes.
#include <cstdio>
#include <string>

#include "job/edit.h"
#include "job/job.h"
#include "jobfile/atomic_file.h"
#include "jobfile/job_archive.h"

namespace baywright {
namespace {

// From make_plan_scan.py: pixels of the picture, and where two corners of the room fell in it.
const Vec2 kPicture(1240, 1753);
const Vec2 kCornerPixel(261.19, 1338.90);    // (0, 0)
const Vec2 kFarCornerPixel(239.84, 465.15);  // (0, 7.4)
constexpr double kSide = 7.4;

/// The plan scaled and turned by two corners, as a fitter does it by two clicks.
Mat3 worldFromPlan() {
  const Vec2 seen = kFarCornerPixel - kCornerPixel;
  const double scale = kSide / seen.norm();
  // Pixels run down, the world up: mirror, then turn the seen side onto the world's y axis.
  const double angle = kPi / 2 - std::atan2(-seen.y(), seen.x());
  Mat3 map;
  map << scale * std::cos(angle), scale * std::sin(angle), 0, scale * std::sin(angle),
      -scale * std::cos(angle), 0, 0, 0, 1;
  map.block<2, 1>(0, 2) = -(map * Vec3(kCornerPixel.x(), kCornerPixel.y(), 1)).head<2>();
  return map;
}

Id wallNamed(const Job& job, const std::string& name) {
  for (const Wall& wall : job.room.walls) {
    if (wall.name == name) return wall.id;
  }
  return {};
}

Opening opening(const Job& job, const std::string& wall, OpeningKind kind, const std::string& name,
                double offset, double width, double sill, double height) {
  Opening result;
  result.wall = wallNamed(job, wall);
  result.kind = kind;
  result.name = name;
  result.offset = taped(offset);
  result.width = taped(width);
  result.sill = taped(sill);
  result.height = taped(height);
  return result;
}

Fixture box(const std::string& name, FixtureKind kind, const BoxShape& shape, double bottom, double top) {
  Fixture fixture;
  fixture.name = name;
  fixture.kind = kind;
  fixture.shape = shape;
  fixture.bottom = taped(bottom);
  fixture.top = taped(top);
  fixture.planInstrument = Instrument::Tape;
  return fixture;
}

CeilingPart ceiling(const std::string& name, std::vector<Vec2> region, double height, const Vec2& slope) {
  CeilingPart part;
  part.name = name;
  part.region = std::move(region);
  part.anchor = part.region.front();
  part.height = shot(height);
  part.slope = slope;
  return part;
}

Golfer golfer(const std::string& name, Hand hand, double stature, std::vector<Club> clubs) {
  Golfer result;
  result.name = name;
  result.hand = hand;
  result.stature = taped(stature);
  result.clubs = std::move(clubs);
  return result;
}

Club club(const std::string& name, double length, double lieDegrees) {
  return {{}, name, length, lieDegrees * kPi / 180};
}

Result<Job> room(Job job) {
  const std::vector<Vec2> floor = {{0, 0}, {6.4, 0}, {6.4, 4.2}, {5.2, 4.2}, {5.2, 7.4}, {0, 7.4}};
  Result<Job> result = setRoomOutline(std::move(job), floor, Instrument::Laser);
  const auto then = [&](auto edit) {
    if (result) result = edit(std::move(*result));
  };
  then([](Job j) {
    CeilingPart flat =
        ceiling("Flat ceiling", {{1.0, 0}, {6.4, 0}, {6.4, 4.2}, {5.2, 4.2}, {5.2, 7.4}, {1.0, 7.4}}, 2.85,
                Vec2(0, 0));
    flat.id = j.room.ceiling.front().id;
    return setCeilingPart(std::move(j), flat);
  });
  then([](Job j) {
    return addCeilingPart(std::move(j), ceiling("Roof slope", {{0, 0}, {1.0, 0}, {1.0, 7.4}, {0, 7.4}}, 2.20,
                                                Vec2(0.65 / 1.0, 0)));
  });
  then([](Job j) {
    Opening door = opening(j, "A", OpeningKind::SectionalDoor, "Garage door", 1.2, 4.0, 0, 2.2);
    door.trackHeadroom = 0.4;
    door.trackDepth = 2.7;
    return addOpening(std::move(j), door);
  });
  then([](Job j) {
    Opening door = opening(j, "B", OpeningKind::HingedDoor, "Yard door", 1.0, 0.9, 0, 2.03);
    door.isExit = true;
    return addOpening(std::move(j), door);
  });
  then([](Job j) {
    return addOpening(j, opening(j, "F", OpeningKind::Window, "Window", 5.0, 1.0, 1.1, 1.0));
  });
  then([](Job j) {
    return addFixture(std::move(j),
                      box("Shelving", FixtureKind::Shelving, {{0.225, 4.1}, kPi / 2, 2.4, 0.45}, 0, 1.9));
  });
  then([](Job j) {
    return addFixture(std::move(j),
                      box("Door opener", FixtureKind::Opener, {{3.2, 3.2}, 0, 0.35, 0.45}, 2.55, 2.82));
  });
  then([](Job j) {
    Fixture light = box("Tube light", FixtureKind::Light, {{4.9, 2.2}, 0, 1.2, 0.12}, 2.75, 2.85);
    light.breakable = true;
    return addFixture(std::move(j), light);
  });
  then([](Job j) {
    return addFixture(std::move(j), box("Power outlet", FixtureKind::PowerOutlet,
                                        {{5.19, 5.2}, kPi / 2, 0.08, 0.02}, 0.3, 0.4));
  });
  return result;
}

Result<Job> peopleAndKit(Job job) {
  Result<Job> result =
      addGolfer(std::move(job),
                golfer("Wren", Hand::Right, 1.91, {club("Driver", 1.156, 58), club("7-iron", 0.940, 62.5)}));
  const auto then = [&](auto edit) {
    if (result) result = edit(std::move(*result));
  };
  then([](Job j) {
    return addGolfer(std::move(j), golfer("Marlow", Hand::Left, 1.68, {club("Driver", 1.131, 58)}));
  });
  then([](Job j) {
    Bystander person;
    person.name = "Chair";
    person.position = Vec2(5.7, 3.4);
    return addBystander(std::move(j), person);
  });
  then([](Job j) {
    Kit kit = j.option().kit;
    kit.frame.name = "Frame 340";
    kit.frame.width = 3.4;
    kit.frame.height = 2.6;
    kit.frame.depth = 1.2;
    kit.screen.name = "Screen 320 x 200";
    kit.screen.width = 3.2;
    kit.screen.height = 2.0;
    kit.screen.bottom = 0.35;
    kit.screen.restitution = 0.04;
    kit.projector.name = "Projector, short throw";
    kit.projector.throwMin = 0.75;
    kit.projector.throwMax = 0.95;
    kit.projector.panelWidth = 1920;
    kit.projector.panelHeight = 1200;
    kit.projector.lumens = 5000;
    kit.projector.offset = 0.55;
    kit.projector.shiftUpMax = 0.1;
    kit.projector.keystoneMax = 0.5;
    return setKit(std::move(j), kit);
  });
  then([](Job j) {
    Placement place = j.option().placement;
    place.bay = {Vec2(2.44, 7.0), kPi / 2};
    place.strikeDistance = 3.0;
    place.matCentre = Vec2(-3.0, 0);
    place.monitor = Vec3(-5.5, 0, 0);
    place.projector.kind = MountKind::Ceiling;
    place.projector.lens = Vec3(-2.6, 0, 2.47);
    place.projector.throwRatio = 0.80;
    return setPlacement(std::move(j), place);
  });
  return result;
}

Result<Job> example(const std::string& planBytes) {
  Job job = newJob();
  job.units = {LengthUnit::Metres, 16, '.'};
  job.info = {"Garage bay, Orchard Row 7",
              "A. Customer (invented)",
              "Orchard Row 7, garage",
              "The example's fitting firm",
              "DEMO-001",
              "A",
              "2026-11-25",
              "The fitter",
              "The customer"};
  PlanScan scan;
  scan.name = "Builder's plan";
  scan.file = std::make_shared<const Blob>(Blob{"builders-plan.jpg", planBytes});
  scan.worldFromPixel = worldFromPlan();
  scan.scaled = true;
  scan.locked = true;
  scan.opacity = 0.35;
  Result<Job> result = addPlanScan(std::move(job), scan);
  if (result) result = room(std::move(*result));
  if (result) result = renameRoom(std::move(*result), "Garage");
  if (result) result = peopleAndKit(std::move(*result));
  return result;
}

int run(int argc, char** argv) {
  if (argc != 3) {
    std::fprintf(stderr, "usage: make_example PLAN.jpg OUT.bayjob\n");
    return 2;
  }
  const Result<std::string> plan = readWholeFile(argv[1], 16u << 20);
  const Result<Job> job = plan ? example(*plan) : tl::unexpected(plan.error());
  const Result<void> saved = job ? saveJob(*job, argv[2]) : tl::unexpected(job.error());
  if (saved) return 0;
  std::fprintf(stderr, "%s\n", saved.error().sentence().c_str());
  return 1;
}

}  // namespace
}  // namespace baywright

int main(int argc, char** argv) {
  return baywright::run(argc, argv);
}
