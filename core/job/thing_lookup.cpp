// SPDX-License-Identifier: Apache-2.0
#include "job/thing_lookup.h"

#include <algorithm>
#include <array>

#include "geometry/homography.h"
#include "geometry/mesh.h"
#include "job/edit_fixtures.h"
#include "job/find.h"
#include "job/measurement_place.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

struct KindWords {
  ThingKind kind;
  std::string_view name;
};
constexpr std::array kKindWords = {KindWords{ThingKind::Wall, "Wall"},
                                   KindWords{ThingKind::Opening, "Opening"},
                                   KindWords{ThingKind::CeilingPart, "Ceiling"},
                                   KindWords{ThingKind::Fixture, "Fixture"},
                                   KindWords{ThingKind::Golfer, "Golfer"},
                                   KindWords{ThingKind::Club, "Club"},
                                   KindWords{ThingKind::Bystander, "Bystander"},
                                   KindWords{ThingKind::Option, "Option"},
                                   KindWords{ThingKind::Frame, "Frame"},
                                   KindWords{ThingKind::Screen, "Screen"},
                                   KindWords{ThingKind::Mat, "Mat"},
                                   KindWords{ThingKind::Monitor, "Launch monitor"},
                                   KindWords{ThingKind::Projector, "Projector"},
                                   KindWords{ThingKind::Measurement, "Measurement"},
                                   KindWords{ThingKind::PlanScan, "Plan"},
                                   KindWords{ThingKind::RoomScan, "Scan"},
                                   KindWords{ThingKind::Original, "Original"}};

/// Lists the things of a job kind by kind, and names those that have no name by their number.
class Lister {
 public:
  explicit Lister(const Job& job) : job_(job) {}

  std::vector<Thing> list() {
    listRoom();
    listPeople();
    listOptions();
    listRecord();
    return std::move(things_);
  }

 private:
  template <class T>
  void add(ThingKind kind, const T& thing, const std::string& name, Id owner, std::optional<Vec2> position) {
    std::string shown = name;
    if (shown.empty()) shown = std::string(kindName(kind)) + " " + std::to_string(++count_);
    things_.push_back({thing.id, kind, std::move(shown), owner, position});
  }
  void startCounting() { count_ = 0; }

  void listRoom() {
    for (const WallLine& line : wallLines(job_.room)) {
      const std::string name = line.name.empty() ? "" : "Wall " + line.name;
      add(ThingKind::Wall, *findById(job_.room.walls, line.wall), name, {}, 0.5 * (line.start + line.end));
    }
    startCounting();
    for (const Opening& opening : job_.room.openings) {
      const auto place = openingPlace(job_.room, opening.id);
      add(ThingKind::Opening, opening, opening.name, opening.wall,
          place ? std::optional(place->middle()) : std::nullopt);
    }
    startCounting();
    for (const CeilingPart& part : job_.room.ceiling) {
      const Ring region = ceilingRegion(job_.room, part);
      add(ThingKind::CeilingPart, part, part.name, {},
          region.empty() ? std::nullopt : std::optional(centroid({region, {}})));
    }
    startCounting();
    for (const Fixture& fixture : job_.room.fixtures)
      add(ThingKind::Fixture, fixture, fixture.name, {}, middleOf(fixture.shape));
  }

  void listPeople() {
    startCounting();
    for (const Golfer& golfer : job_.golfers)
      add(ThingKind::Golfer, golfer, golfer.name, {}, strikePoint(golfer));
    startCounting();
    for (const Golfer& golfer : job_.golfers)
      for (const Club& club : golfer.clubs)
        add(ThingKind::Club, club, club.name, golfer.id, strikePoint(golfer));
    startCounting();
    for (const Bystander& bystander : job_.bystanders)
      add(ThingKind::Bystander, bystander, bystander.name, {}, bystander.position);
  }

  void listOptions() {
    startCounting();
    for (const Option& option : job_.options)
      add(ThingKind::Option, option, option.name, {}, option.placement.bay.origin);
    for (const Option& option : job_.options) {
      const Kit& kit = option.kit;
      const Placement& placement = option.placement;
      const Vec2 origin = placement.bay.origin;
      const auto inWorld = [&](const Vec3& inBay) { return flat(worldFromBay(placement.bay, inBay)); };
      add(ThingKind::Frame, kit.frame, kit.frame.name, option.id, origin);
      add(ThingKind::Screen, kit.screen, kit.screen.name, option.id, origin);
      add(ThingKind::Mat, kit.mat, kit.mat.name, option.id, inWorld(raised(placement.matCentre, 0)));
      if (kit.hasMonitor)
        add(ThingKind::Monitor, kit.monitor, kit.monitor.name, option.id, inWorld(placement.monitor));
      if (kit.hasProjector)
        add(ThingKind::Projector, kit.projector, kit.projector.name, option.id,
            inWorld(placement.projector.lens));
    }
    std::stable_sort(things_.begin(), things_.end(),
                     [](const Thing& a, const Thing& b) { return a.kind < b.kind; });
  }

  void listRecord() {
    startCounting();
    for (const Measurement& measurement : job_.measurements)
      add(ThingKind::Measurement, measurement, measurement.note, {},
          measurement.kind == MeasurementKind::CeilingHeight ? std::optional(placeOf(job_.room, measurement))
                                                             : std::nullopt);
    startCounting();
    for (const PlanScan& scan : job_.planScans) {
      const auto corner = mapped(Homography{scan.worldFromPixel}, Vec2::Zero());
      add(ThingKind::PlanScan, scan, scan.name, {}, corner ? std::optional(*corner) : std::nullopt);
    }
    startCounting();
    for (const RoomScan& scan : job_.roomScans)
      add(ThingKind::RoomScan, scan, scan.name, {},
          scan.mesh && !scan.mesh->bounds().empty() ? std::optional(flat(scan.mesh->bounds().centre()))
                                                    : std::nullopt);
    startCounting();
    for (const Original& original : job_.originals)
      add(ThingKind::Original, original, original.name, {}, std::nullopt);
  }

  std::optional<Vec2> strikePoint(const Golfer& golfer) const {
    if (job_.options.empty()) return std::nullopt;
    const Placement& placement = job_.option().placement;
    return flat(worldFromBay(placement.bay, placement.strikePoint(golfer.hand)));
  }

  const Job& job_;
  std::vector<Thing> things_;
  int count_ = 0;
};

bool owns(const Option& option, Id id) {
  const Kit& kit = option.kit;
  return id == option.id || id == kit.frame.id || id == kit.screen.id || id == kit.mat.id ||
         id == kit.monitor.id || id == kit.projector.id;
}

}  // namespace

std::string_view kindName(ThingKind kind) {
  for (const KindWords& words : kKindWords)
    if (words.kind == kind) return words.name;
  return {};
}

std::vector<Thing> allThings(const Job& job) {
  return Lister(job).list();
}

std::optional<Thing> findThing(const Job& job, Id id) {
  const std::vector<Thing> things = allThings(job);
  const Thing* found = findById(things, id);
  return found ? std::optional(*found) : std::nullopt;
}

std::string nameOf(const Job& job, Id id) {
  const auto thing = findThing(job, id);
  return thing ? thing->name : "Nothing";
}

const Option* optionOf(const Job& job, Id id) {
  if (!id) return nullptr;
  const auto found = std::find_if(job.options.begin(), job.options.end(),
                                  [&](const Option& option) { return owns(option, id); });
  return found == job.options.end() ? nullptr : &*found;
}

}  // namespace baywright
