// SPDX-License-Identifier: Apache-2.0
#include "survey/measuring_tasks.h"

#include <algorithm>
#include <cmath>

#include "geometry/polygon.h"
#include "job/edit_fixtures.h"
#include "job/room_geometry.h"
#include "survey/adjustment.h"
#include "survey/advice.h"
#include "survey/survey_check.h"

namespace baywright {
namespace {

std::string whyOf(const Dimension& dimension) {
  return dimension.known ? "guessed" : "not measured";
}
bool isOpen(const Dimension& dimension) {
  return !dimension.known || dimension.how == Instrument::Guess;
}

class Tasks {
 public:
  explicit Tasks(const Job& job) : job_(job), lines_(wallLines(job.room)) {}

  std::vector<MeasuringTask> all() {
    if (lines_.size() < 3) return {};
    walls();
    diagonals();
    for (const CeilingPart& part : job_.room.ceiling)
      if (isOpen(part.height))
        tasks_.push_back({"height of " + part.name,
                          whyOf(part.height),
                          {part.id},
                          centroid({ceilingRegion(job_.room, part), {}}),
                          {}});
    for (const Opening& opening : job_.room.openings) openingTasks(opening);
    for (const Fixture& fixture : job_.room.fixtures) fixtureTasks(fixture);
    return std::move(tasks_);
  }

 private:
  void walls() {
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      const WallLine& line = lines_[i];
      const double sigma =
          std::hypot(line.startCovariance.sigmaAlong(line.along), line.endCovariance.sigmaAlong(line.along));
      if (isWallRead(job_.room.walls, i, job_.measurements) || sigma <= kGuessedWall) continue;
      tasks_.push_back({"wall " + line.name, "not measured", {line.wall}, line.start, line.end});
    }
  }

  /// As if every wall had been read as drawn, and the readings that there are.
  void diagonals() {
    const Ring ring = outline(job_.room);
    if (signedArea(ring) <= 0) return;
    std::vector<Measurement> readings = job_.measurements;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (isWallRead(job_.room.walls, i, job_.measurements)) continue;
      Measurement wall;
      wall.id = Id{job_.lastId + 1 + static_cast<std::uint32_t>(i)};
      wall.from = lines_[i].wall;
      wall.value = lines_[i].length;
      wall.how = Instrument::Laser;
      readings.push_back(wall);
    }
    auto network = networkOf(job_.room.walls, readings);
    for (int round = 0; network && round < kMostDiagonals; ++round) {
      const auto adjustment = adjust(*network, ring);
      if (!adjustment) return;
      const auto advice = adviseReading(*network, *adjustment, Instrument::Laser, job_.units);
      if (!advice) return;
      const auto start = wallLine(job_.room, advice->from);
      const auto end = wallLine(job_.room, advice->to);
      if (!start || !end) return;
      tasks_.push_back({advice->what,
                        advice->isCheck ? "checks the others" : "corner " + advice->weakCorner + " is weak",
                        {advice->from, advice->to},
                        start->start,
                        end->start});
      Measurement diagonal;
      diagonal.id = Id{job_.lastId + 1000 + static_cast<std::uint32_t>(round)};
      diagonal.kind = MeasurementKind::Diagonal;
      diagonal.from = advice->from;
      diagonal.to = advice->to;
      diagonal.value = (end->start - start->start).norm();
      diagonal.how = Instrument::Laser;
      readings.push_back(diagonal);
      network = networkOf(job_.room.walls, readings);
    }
  }

  void openingTasks(const Opening& opening) {
    const auto place = openingPlace(job_.room, opening.id);
    const auto line = wallLine(job_.room, opening.wall);
    if (!place || !line) return;
    const auto want = [&](const Dimension& dimension, const std::string& what, const Vec2& from,
                          const Vec2& to) {
      if (isOpen(dimension)) tasks_.push_back({what, whyOf(dimension), {opening.id}, from, to});
    };
    want(opening.offset, opening.name + " from corner " + line->name, line->start, place->start);
    want(opening.width, "width of " + opening.name, place->start, place->end);
    want(opening.sill, "sill of " + opening.name, place->middle(), place->middle());
    want(opening.height, "height of " + opening.name, place->middle(), place->middle());
  }

  void fixtureTasks(const Fixture& fixture) {
    const Vec2 middle = middleOf(fixture.shape);
    const std::string name = fixture.name.empty() ? "fixture" : fixture.name;
    if (fixture.planInstrument == Instrument::Guess)
      tasks_.push_back({"place and size of " + name, "guessed", {fixture.id}, middle, {}});
    if (isOpen(fixture.bottom))
      tasks_.push_back({"underside of " + name, whyOf(fixture.bottom), {fixture.id}, middle, {}});
    if (isOpen(fixture.top))
      tasks_.push_back({"top of " + name, whyOf(fixture.top), {fixture.id}, middle, {}});
  }

  const Job& job_;
  std::vector<WallLine> lines_;
  std::vector<MeasuringTask> tasks_;
};

}  // namespace

std::vector<MeasuringTask> measuringTasks(const Job& job) {
  return Tasks(job).all();
}

}  // namespace baywright
