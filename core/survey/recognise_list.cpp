// SPDX-License-Identifier: Apache-2.0
#include "survey/recognise_list.h"

#include <algorithm>
#include <cmath>

#include "geometry/polygon_validity.h"
#include "job/find.h"
#include "job/limits.h"
#include "job/room_geometry.h"
#include "survey/adjustment.h"
#include "survey/advice.h"
#include "survey/blunder_test.h"
#include "survey/ceiling_fit_job.h"
#include "survey/recognise_list_mirror.h"
#include "units/length_text.h"

namespace baywright {
namespace {

std::string kindWord(OpeningKind kind) {
  switch (kind) {
    case OpeningKind::HingedDoor:
      return "Door";
    case OpeningKind::SectionalDoor:
      return "Garage door";
    case OpeningKind::Window:
      return "Window";
    case OpeningKind::Passage:
      break;
  }
  return "Passage";
}

/// Square metres. Less is no floor but walls that lie on each other.
constexpr double kSmallestFloor = 0.5;

class Recogniser {
 public:
  explicit Recogniser(const MeasuringList& list) : list_(list) { made_.measurements = list.readings; }

  Result<RecognisedRoom> room() {
    if (const auto ok = addWalls(); !ok) return tl::unexpected(ok.error());
    addCeiling();
    for (const Opening& opening : list_.openings) addOpening(opening);
    noteOrder();
    return isClockwise() ? detail::mirrored(std::move(made_)) : std::move(made_);
  }

 private:
  bool isClockwise() const { return list_.order == LetterOrder::Clockwise; }

  /// As if letters ran counter-clockwise: a room where they do not is mirrored in the end.
  Result<SurveyNetwork> networkNow() const {
    return networkOf(list_.walls, made_.measurements, isClockwise());
  }

  Result<void> addWalls() {
    auto network = networkNow();
    if (!network) return tl::unexpected(network.error());
    auto adjustment = adjust(*network);
    if (adjustment ? setAside(*network, *adjustment) : setAsideUnfit(*network)) {
      network = networkNow();
      if (network) adjustment = adjust(*network);
    }
    if (!adjustment) return tl::unexpected(withAllWalls(adjustment.error()));
    const Ring ring = adjustment->ring();
    if (!selfCrossings({ring, {}}).empty() || signedArea(ring) <= 0)
      return fail("The walls that were read cross each other." + suspicions(), "readings",
                  "Check their order: each wall runs from its own letter's corner to the next letter's.");
    if (signedArea(ring) < kSmallestFloor)
      return fail("The walls that were read enclose no floor." + suspicions(), "readings",
                  "Look for a wall that is too long, or one that was left out.");
    made_.room.walls = list_.walls;
    made_.room = adjustedRoom(std::move(made_.room), *adjustment);
    for (const AdjustedReading& reading : adjustment->readings)
      made_.residuals.push_back({reading.what, reading.residual, reading.standardised});
    made_.notes = adjustment->notes;
    if (const auto advice = adviseReading(*network, *adjustment, usualInstrument(), list_.units))
      made_.notes.push_back(advice->sentence);
    return {};
  }

  void noteOrder() {
    // A rectangle is its own mirror image; any other room is not.
    const bool isOwnImage = list_.walls.size() == 4 && list_.openings.empty();
    if (list_.order == LetterOrder::NotSaid && !isOwnImage)
      made_.notes.push_back(
          "The list does not say which way round its letters run. They were taken to run counter-clockwise "
          "seen from above; if they run clockwise the room is mirrored: add a row 'order' with the value "
          "clockwise.");
    if (list_.order == LetterOrder::Clockwise)
      made_.notes.push_back(
          "The list's letters run clockwise seen from above. Corners keep their letters; a wall of the plan "
          "is named after the corner at its right as one looks at it, so that wall A of the list, between "
          "corners A and B, is wall B of the plan.");
  }

  std::string suspicions() const {
    std::string text;
    for (const std::string& sentence : made_.suspicious) text += " " + sentence;
    return text;
  }

  /// A list that leaves out the last walls looks like one of a room with fewer.
  Problem withAllWalls(Problem problem) const {
    problem.next += std::string(problem.next.empty() ? "" : " ") + "If the room has walls beyond wall " +
                    list_.walls.back().name + ", add a row 'corners' that says how many.";
    return problem;
  }

  /// True when some reading is out now.
  bool setAside(const SurveyNetwork& network, const SurveyAdjustment& adjustment) {
    const BlunderTest test = testForBlunders(network, adjustment, list_.units);
    made_.suspicious = test.sentences;
    bool isAny = false;
    for (std::size_t i = 0; i < test.suspicions.size(); ++i) {
      // After blunders that cannot be told apart nothing that follows is sure.
      const SuspectReading* culprit = test.suspicions[i].culprit();
      Measurement* reading = culprit ? findById(made_.measurements, culprit->reading) : nullptr;
      if (!reading) break;
      reading->used = false;
      made_.suspicious[i] += " It was set aside here.";
      isAny = true;
    }
    return isAny;
  }

  /// Where all readings cannot be adjusted together: the likeliest of each blunder's suspects go.
  bool setAsideUnfit(const SurveyNetwork& network) {
    const auto test = testWhereNothingFits(network, list_.units);
    if (!test) return false;
    for (const Suspicion& suspicion : test->suspicions) {
      Measurement* reading = findById(made_.measurements, suspicion.suspects.front().reading);
      if (!reading) return false;
      reading->used = false;
      made_.suspicious.push_back(suspicion.sentence + (suspicion.culprit()
                                                           ? " It was set aside here."
                                                           : " With the first of them nothing fits: it was "
                                                             "set aside here."));
    }
    return true;
  }

  /// The instrument that most readings were taken with, the first of equals.
  Instrument usualInstrument() const {
    Instrument usual = Instrument::Tape;
    std::ptrdiff_t most = 0;
    for (const Measurement& reading : list_.readings) {
      const auto count = std::count_if(list_.readings.begin(), list_.readings.end(),
                                       [&](const Measurement& other) { return other.how == reading.how; });
      if (count > most) usual = reading.how;
      most = std::max(most, count);
    }
    return usual;
  }

  void addCeiling() {
    for (Measurement& reading : made_.measurements)
      if (const Wall* corner = findById(made_.room.walls, reading.at);
          corner && reading.kind == MeasurementKind::CeilingHeight)
        reading.position = corner->start;
    const CeilingFit fit = fitCeiling(made_.room, made_.measurements, list_.units);
    std::uint32_t id = list_.lastId;
    for (CeilingPart part : fit.parts) {
      part.id = Id{++id};
      made_.room.ceiling.push_back(std::move(part));
    }
    made_.residuals.insert(made_.residuals.end(), fit.residuals.begin(), fit.residuals.end());
    made_.notes.insert(made_.notes.end(), fit.notes.begin(), fit.notes.end());
    made_.suspicious.insert(made_.suspicious.end(), fit.suspicious.begin(), fit.suspicious.end());
  }

  void addOpening(Opening opening) {
    const auto wall = wallLine(made_.room, opening.wall);
    if (opening.name.empty()) opening.name = freeName(kindWord(opening.kind));
    const auto skip = [&](const std::string& why) {
      made_.skipped.push_back(opening.name + " in wall " + wall->name + " " + why +
                              " and was left out. Read it again.");
    };
    if (opening.width.value > wall->length + limits::kOpeningSlack) return skip("is wider than its wall");
    const double last = wall->length - opening.width.value;
    const double place = std::clamp(opening.offset.value, 0.0, last);
    const double slide = std::abs(place - opening.offset.value);
    if (slide > kOpeningSlide) return skip("reaches " + formatLength(slide, list_.units) + " past its wall");
    if (slide > limits::kOpeningSlack)
      made_.notes.push_back(opening.name + " was slid by " + formatLength(slide, list_.units) +
                            " so that it stays in wall " + wall->name + ".");
    opening.offset.value = place;
    for (const Opening& other : made_.room.openings) {
      if (other.wall != opening.wall) continue;
      if (opening.offset.value < other.offset.value + other.width.value - limits::kOpeningSlack &&
          other.offset.value < opening.offset.value + opening.width.value - limits::kOpeningSlack)
        return skip("overlaps " + other.name);
    }
    made_.room.openings.push_back(std::move(opening));
  }

  std::string freeName(const std::string& word) const {
    std::string name = word;
    for (int number = 2; isTaken(name); ++number) name = word + " " + std::to_string(number);
    return name;
  }
  bool isTaken(const std::string& name) const {
    return std::any_of(made_.room.openings.begin(), made_.room.openings.end(),
                       [&](const Opening& opening) { return opening.name == name; });
  }

  const MeasuringList& list_;
  RecognisedRoom made_;
};

}  // namespace

Result<RecognisedRoom> recogniseList(const MeasuringList& list) {
  return Recogniser(list).room();
}

}  // namespace baywright
