// SPDX-License-Identifier: Apache-2.0
#include "survey/survey_check.h"

#include <algorithm>
#include <cmath>

#include "geometry/polygon_sets.h"
#include "geometry/polygon_validity.h"
#include "job/find.h"
#include "job/limits.h"
#include "job/room_geometry.h"
#include "survey/adjustment.h"
#include "survey/blunder_test.h"
#include "units/length_text.h"

namespace baywright {
namespace {

/// A reading this many of its sigmas away from the room as drawn was not taken into it.
constexpr double kNotTaken = 4;
/// Floor without a ceiling that is smaller than this is a gap between parts. Square metres.
constexpr double kUncovered = 0.01;

class Remarks {
 public:
  explicit Remarks(const Job& job) : job_(job), lines_(wallLines(job.room)) {}

  std::vector<SurveyRemark> all() {
    if (lines_.empty()) {
      add(SurveyRemarkKind::Missing, "no_room", {}, "The room has no walls yet.");
      return std::move(remarks_);
    }
    crossings();
    shapes();
    readings();
    ceiling();
    for (const Opening& opening : job_.room.openings) checkOpening(opening);
    guesses();
    std::stable_sort(remarks_.begin(), remarks_.end(),
                     [](const SurveyRemark& a, const SurveyRemark& b) { return a.kind < b.kind; });
    return std::move(remarks_);
  }

 private:
  void add(SurveyRemarkKind kind, std::string key, std::vector<Id> subjects, std::string sentence) {
    for (const Id id : subjects) key += "/" + std::to_string(id.value);
    remarks_.push_back({kind, std::move(key), std::move(subjects), std::move(sentence)});
  }
  std::string text(double metres) const { return formatLength(metres, job_.units); }

  void crossings() {
    for (const EdgeCrossing& crossing : selfCrossings({outline(job_.room), {}})) {
      const WallLine& a = lines_[static_cast<std::size_t>(crossing.firstEdge)];
      const WallLine& b = lines_[static_cast<std::size_t>(crossing.secondEdge)];
      add(SurveyRemarkKind::Wrong, "crossing", {a.wall, b.wall},
          "Walls " + a.name + " and " + b.name + " cross or touch. Move a corner, or read them again.");
    }
  }

  void shapes() {
    const std::size_t count = lines_.size();
    for (std::size_t i = 0; i < count; ++i) {
      const WallLine& line = lines_[i];
      if (line.length < kShortWall)
        add(SurveyRemarkKind::Doubtful, "short_wall", {line.wall},
            "Wall " + line.name + " is only " + text(line.length) + " long. Is it a wall?");
      const WallLine& before = lines_[(i + count - 1) % count];
      const double turn = std::atan2(cross(before.along, line.along), before.along.dot(line.along));
      if (std::abs(turn) < kHardlyTurns && count > 3)
        add(SurveyRemarkKind::Doubtful, "hardly_turns", {line.wall},
            "Walls " + before.name + " and " + line.name +
                " are almost one straight wall. Join them, or read "
                "the angle between them.");
      for (std::size_t j = 0; j < count; ++j) {
        if (j == i || (j + 1) % count == i) continue;
        const double distance = distanceTo(lines_[j], line.start);
        if (distance > 0 && distance < kNearlyMeet)
          add(SurveyRemarkKind::Doubtful, "nearly_meet", {line.wall, lines_[j].wall},
              "Corner " + line.name + " ends " + text(distance) + " from wall " + lines_[j].name +
                  " and nearly meets it. Should they touch?");
      }
    }
  }

  static double distanceTo(const WallLine& line, const Vec2& p) {
    const double along = std::clamp((p - line.start).dot(line.along), 0.0, line.length);
    return (p - line.at(along)).norm();
  }

  void readings() {
    const bool isAny =
        std::any_of(job_.measurements.begin(), job_.measurements.end(),
                    [](const Measurement& m) { return m.used && m.kind != MeasurementKind::CeilingHeight; });
    if (!isAny) return;
    const auto network = networkOf(job_.room.walls, job_.measurements);
    if (!network) return add(SurveyRemarkKind::Wrong, "readings", {}, network.error().sentence());
    const Ring drawn = outline(job_.room);
    const auto adjustment = adjust(*network, signedArea(drawn) > 0 ? drawn : Ring{});
    if (!adjustment) return add(SurveyRemarkKind::Missing, "readings", {}, adjustment.error().sentence());
    blunders(*network, *adjustment);
    unchecked(*adjustment);
    notTaken(*network, drawn);
  }

  void blunders(const SurveyNetwork& network, const SurveyAdjustment& adjustment) {
    const BlunderTest test = testForBlunders(network, adjustment, job_.units);
    for (const Suspicion& suspicion : test.suspicions) {
      std::vector<Id> subjects;
      for (const SuspectReading& suspect : suspicion.suspects)
        if (suspect.reading) subjects.push_back(suspect.reading);
      add(SurveyRemarkKind::Wrong, "blunder", subjects, suspicion.sentence);
    }
    if (!test.agree && test.suspicions.empty())
      add(SurveyRemarkKind::Doubtful, "readings_disagree", {}, test.sentences.back());
  }

  void unchecked(const SurveyAdjustment& adjustment) {
    if (adjustment.assumed.empty() && adjustment.degreesOfFreedom > 0) return;
    const std::string note = adjustment.assumed.empty()
                                 ? "Nothing checks the readings: an error in one would not show. Read one "
                                   "diagonal more."
                                 : adjustment.notes.front();
    add(SurveyRemarkKind::Missing, "unchecked", {}, note);
  }

  void notTaken(const SurveyNetwork& network, const Ring& drawn) {
    for (const Observation& o : settled(network.observations, drawn)) {
      if (o.kind == ObservationKind::Angle) continue;
      const double miss = misclosure(o, drawn);
      if (std::abs(miss) <= kNotTaken * o.sigma || std::abs(miss) < 0.01) continue;
      add(SurveyRemarkKind::Doubtful, "not_taken", {o.reading},
          "The plan differs from what was read for " + o.what + " by " + text(std::abs(miss)) +
              ". Adjust the walls to the readings, or read it again.");
    }
  }

  void ceiling() {
    for (const CeilingPart& part : job_.room.ceiling) {
      if (!part.height.known)
        add(SurveyRemarkKind::Missing, "ceiling_height", {part.id},
            "The height of " + part.name + " is not measured.");
      else if (part.height.how == Instrument::Guess)
        add(SurveyRemarkKind::Missing, "ceiling_guess", {part.id},
            "The height of " + part.name + " is a guess. Measure it.");
    }
    PolygonSet covered;
    for (const CeilingPart& part : job_.room.ceiling) {
      if (part.region.empty()) return;
      covered.push_back({part.region, {}});
    }
    const auto open = differenceOf({{outline(job_.room), {}}}, covered);
    if (open && area(*open) > kUncovered)
      add(SurveyRemarkKind::Missing, "no_ceiling", {},
          "A part of the floor has no ceiling over it. Add one, or widen a part that there is.");
  }

  void checkOpening(const Opening& opening) {
    const auto line = wallLine(job_.room, opening.wall);
    const std::string name = opening.name.empty() ? "An opening" : opening.name;
    if (!line)
      return add(SurveyRemarkKind::Wrong, "no_wall", {opening.id}, name + " is in no wall. Place it again.");
    const double end = opening.offset.value + opening.width.value;
    if (opening.width.value > line->length + limits::kOpeningSlack)
      add(SurveyRemarkKind::Wrong, "wider_than_wall", {opening.id, line->wall},
          name + " is " + text(opening.width.value) + " wide, but wall " + line->name + " is only " +
              text(line->length) + " long. Read both again.");
    else if (opening.offset.value < -limits::kOpeningSlack || end > line->length + limits::kOpeningSlack)
      add(SurveyRemarkKind::Wrong, "past_end", {opening.id, line->wall},
          name + " reaches past the end of wall " + line->name + " by " +
              text(std::max(end - line->length, -opening.offset.value)) + ". Read its offset again.");
    overlaps(opening, name);
    underCeiling(opening, *line, name);
    for (const auto& [dimension, what] : {std::pair{&opening.offset, "offset"},
                                          {&opening.width, "width"},
                                          {&opening.height, "height"},
                                          {&opening.sill, "sill"}}) {
      if (dimension->known && dimension->how != Instrument::Guess) continue;
      add(SurveyRemarkKind::Missing, std::string("opening_") + what, {opening.id},
          "The " + std::string(what) + " of " + name + " is " +
              (dimension->known ? "a guess" : "not measured") + ".");
    }
  }

  void overlaps(const Opening& opening, const std::string& name) {
    for (const Opening& other : job_.room.openings) {
      if (other.wall != opening.wall || !(opening.id < other.id)) continue;
      const double shared =
          std::min(opening.offset.value + opening.width.value, other.offset.value + other.width.value) -
          std::max(opening.offset.value, other.offset.value);
      if (shared > limits::kOpeningSlack)
        add(SurveyRemarkKind::Wrong, "overlap", {opening.id, other.id},
            name + " and " + other.name + " overlap by " + text(shared) + ". Read their offsets again.");
    }
  }

  void underCeiling(const Opening& opening, const WallLine& line, const std::string& name) {
    if (!opening.height.known) return;
    const double top = opening.sill.value + opening.height.value;
    for (const double at : {opening.offset.value, opening.offset.value + opening.width.value}) {
      const double along = std::clamp(at, 0.0, line.length);
      const auto over = ceilingAt(job_.room, line.at(along));
      if (!over || over->height >= top - 0.001) continue;
      const CeilingPart* part = findById(job_.room.ceiling, over->part);
      if (part && !part->height.known) continue;
      add(SurveyRemarkKind::Doubtful, "above_ceiling", {opening.id, over->part},
          name + " reaches " + text(top - over->height) + " above the ceiling. Read one of them again.");
      return;
    }
  }

  /// One remark for each wall, or one for all where they are many, as those of a drawing.
  void guessedWalls() {
    constexpr std::size_t kFew = 2;
    std::vector<Id> walls;
    std::vector<std::string> sentences;
    double worst = 0;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      const WallLine& line = lines_[i];
      const double sigma =
          std::hypot(line.startCovariance.sigmaAlong(line.along), line.endCovariance.sigmaAlong(line.along));
      // Ends of a wall that was read are uncertain together, not apart.
      if (sigma <= kGuessedWall || isWallRead(job_.room.walls, i, job_.measurements)) continue;
      worst = std::max(worst, sigma);
      walls.push_back(line.wall);
      sentences.push_back("The length of wall " + line.name + " is only known to ± " + text(2 * sigma) +
                          ". Measure it.");
    }
    if (walls.size() > kFew)
      return add(SurveyRemarkKind::Missing, "wall_guess", walls,
                 "The lengths of " + std::to_string(walls.size()) + " walls are only known to ± " +
                     text(2 * worst) + " or a little better. Measure them.");
    for (std::size_t i = 0; i < walls.size(); ++i)
      add(SurveyRemarkKind::Missing, "wall_guess", {walls[i]}, sentences[i]);
  }

  void guesses() {
    guessedWalls();
    for (const Fixture& fixture : job_.room.fixtures) {
      const bool isGuess = fixture.planInstrument == Instrument::Guess ||
                           fixture.bottom.how == Instrument::Guess || fixture.top.how == Instrument::Guess ||
                           !fixture.bottom.known || !fixture.top.known;
      if (isGuess)
        add(SurveyRemarkKind::Missing, "fixture_guess", {fixture.id},
            "Place or height of " + (fixture.name.empty() ? std::string("a fixture") : fixture.name) +
                " is a guess. Measure it.");
    }
  }

  const Job& job_;
  std::vector<WallLine> lines_;
  std::vector<SurveyRemark> remarks_;
};

}  // namespace

std::vector<SurveyRemark> checkSurvey(const Job& job) {
  return Remarks(job).all();
}

}  // namespace baywright
