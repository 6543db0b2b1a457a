// SPDX-License-Identifier: Apache-2.0
#include "clearance/swing_findings.h"

#include <algorithm>
#include <iterator>

#include "clearance/freeing_move.h"
#include "clearance/quantities.h"
#include "clearance/scan_margin.h"
#include "clearance/swing_words.h"
#include "clearance/wording.h"
#include "units/length_text.h"

namespace baywright {
namespace {

struct Group {
  std::string_view category;
  std::vector<std::size_t> known;
};

/// In the order in which the obstacles first name their categories.
std::vector<Group> groupsOf(const CheckInput& input, const SwingQuestion& question) {
  std::vector<Group> groups;
  for (std::size_t i = 0; i < input.obstacles.size(); ++i) {
    const RoomObstacle& obstacle = input.obstacles[i];
    if (!question.concerns(obstacle) || !obstacle.missing.empty()) continue;
    const std::string_view category = categoryOf(obstacle);
    auto group =
        std::find_if(groups.begin(), groups.end(), [&](const Group& g) { return g.category == category; });
    if (group == groups.end()) group = groups.insert(group, Group{category, {}});
    group->known.push_back(i);
  }
  return groups;
}

class Collector {
 public:
  Collector(const CheckInput& input, const SwingQuestion& question, const SwingSetting& setting)
      : input_(input), question_(question), setting_(setting) {
    needs_.clearance = setting.zone.clearance;
    needs_.placementSigma = input.option.placement.sigma;
    needs_.strikeDistance = input.option.placement.strikeDistance;
  }

  void addGroup(CheckResult& result, const Group& group) const {
    const SwingEnvelope& envelope = setting_.zone.swing->expected;
    const auto worst = tightest(envelope, setting_.expected, input_.obstacles, group.known, needs_);
    const auto bound =
        tightest(setting_.zone.swing->fullExtension, setting_.bound, input_.obstacles, group.known, needs_);
    if (!worst || !bound) return;
    Finding finding = findingFor(group.category, input_.obstacles[worst->obstacle], *worst, *bound);
    finding.sentence += othersText(group, *worst);
    finding.sentence += hintText(group, *worst);
    add(result, group.category, std::move(finding), *worst, *bound);
  }

  void addScan(CheckResult& result, const ScanObstacle& scan) const {
    const auto worst = tightest(setting_.zone.swing->expected, setting_.expected, scan, needs_);
    const auto bound = tightest(setting_.zone.swing->fullExtension, setting_.bound, scan, needs_);
    RoomObstacle surface;
    surface.id = scan.id;
    surface.name = "the scan " + scan.name;
    if (!worst || !bound) return;
    add(result, "scan", findingFor("scan", surface, *worst, *bound), *worst, *bound);
  }

  /// Asks for what is missing about one obstacle, unless it cannot matter.
  void addMissing(CheckResult& result, std::size_t index) const {
    const RoomObstacle& obstacle = input_.obstacles[index];
    const auto worst =
        tightest(setting_.zone.swing->expected, setting_.expected, input_.obstacles, {&index, 1}, needs_);
    if (!worst || verdictOf(worst->margin) == Verdict::Clear) return;
    Finding finding = blank(obstacle.id, "missing/" + idText(obstacle.id));
    const auto sameKey = [&](const Finding& other) { return other.key == finding.key; };
    if (std::any_of(result.findings.begin(), result.findings.end(), sameKey)) return;
    finding.points = std::pair(worst->closest.onFirst, worst->closest.onSecond);
    finding.sentence =
        "Measure " + obstacle.missing + ": " + finding.subject + " may come within reach of it.";
    finding.source = "a clearance needs a measurement";
    result.findings.push_back(std::move(finding));
  }

 private:
  Finding blank(Id other, std::string_view aspect) const {
    Finding finding;
    finding.check = question_.check;
    finding.key = finding.check + "/" + idText(setting_.zone.golfer) + "/" + idText(setting_.zone.club) +
                  "/" + std::string(aspect);
    finding.subjects = {setting_.zone.golfer, setting_.zone.club};
    if (other) finding.subjects.push_back(other);
    finding.subject = swingSubject(setting_);
    return finding;
  }

  /// Of the same category, what else is not clear.
  std::string othersText(const Group& group, const SwingMargin& worst) const {
    if (verdictOf(worst.margin) == Verdict::Clear) return {};
    std::vector<Id> seen = {input_.obstacles[worst.obstacle].id};
    std::vector<std::string> names;
    for (const std::size_t index : group.known) {
      const RoomObstacle& obstacle = input_.obstacles[index];
      if (std::find(seen.begin(), seen.end(), obstacle.id) != seen.end() || isFarFrom(obstacle)) continue;
      const auto its =
          tightest(setting_.zone.swing->expected, setting_.expected, input_.obstacles, {&index, 1}, needs_);
      if (!its || verdictOf(its->margin) == Verdict::Clear) continue;
      seen.push_back(obstacle.id);
      names.push_back(obstacle.name);
    }
    if (names.empty()) return {};
    constexpr std::size_t kNamed = 3;
    std::string text;
    for (std::size_t i = 0; i < std::min(names.size(), kNamed); ++i) {
      const bool last = i + 1 == names.size();
      text += (i == 0 ? "" : last ? " and " : ", ") + names[i];
    }
    if (names.size() > kNamed) text += " and " + std::to_string(names.size() - kNamed) + " more";
    return " " + startingSentence(text) + (names.size() == 1 ? " is" : " are") + " not clear either.";
  }

  /// Too far to be anything but clear.
  bool isFarFrom(const RoomObstacle& obstacle) const {
    constexpr double kManySigmas = 3;
    const double sigma = setting_.expected.sigmaLargest + largestSigma(obstacle) + needs_.placementSigma;
    return lowerBound(setting_.expected.bounds, obstacle) > needs_.clearance + kManySigmas * sigma + 0.1;
  }

  /// Where the swing would be tightest after a shift.
  PlaceAfter placeAfter(std::vector<std::size_t> which, double sense = 1) const {
    return [this, which = std::move(which), sense](const Vec3& shift) -> std::optional<TightPlace> {
      const auto worst = tightest(setting_.zone.swing->expected, shifted(setting_.expected, sense * shift),
                                  input_.obstacles, which, needs_);
      if (!worst) return std::nullopt;
      return TightPlace{sense > 0 ? worst->closest : reversed(worst->closest), worst->margin};
    };
  }

  std::vector<std::size_t> piecesOf(const Group& group, Id id) const {
    std::vector<std::size_t> pieces;
    std::copy_if(group.known.begin(), group.known.end(), std::back_inserter(pieces),
                 [&](std::size_t index) { return input_.obstacles[index].id == id; });
    return pieces;
  }

  /// What to move, and how far, to be clear of all of this category; of kit and people, which to move.
  std::string hintText(const Group& group, const SwingMargin& worst) const {
    const RoomObstacle& obstacle = input_.obstacles[worst.obstacle];
    const UnitSystem& units = input_.job.units;
    const BayPose& bay = setting_.zone.bay;
    const bool moves = obstacle.kind == ObstacleKind::Bystander || obstacle.kind == ObstacleKind::Monitor ||
                       obstacle.kind == ObstacleKind::Projector ||
                       obstacle.kind == ObstacleKind::ProjectorMount;
    const TightPlace now{moves ? reversed(worst.closest) : worst.closest, worst.margin};
    const PlaceAfter after = moves ? placeAfter(piecesOf(group, obstacle.id), -1) : placeAfter(group.known);
    if (const auto move = freeingMove(now, after, bay, units)) {
      if (obstacle.kind == ObstacleKind::Frame)
        return movingText("the strike point", move->distance, wayInBay(move->way), units);
      const std::string way = obstacle.inBay ? wayInBay(move->way) : wayInRoom(move->way);
      return movingText(moves ? obstacle.name : "the bay", move->distance, way, units);
    }
    if (moves) return {};
    const auto height = freeingDrop(now, after, units);
    return height ? " It would take " + formatLength(*height, units) + " more height." : std::string();
  }

  Finding findingFor(std::string_view category, const RoomObstacle& obstacle, const SwingMargin& worst,
                     const SwingMargin& bound) const {
    Finding finding = blank(obstacle.id, category);
    finding.margin = worst.margin;
    finding.verdict = verdictOf(worst.margin);
    finding.points = std::pair(worst.closest.onFirst, worst.closest.onSecond);
    finding.moment = worst.capsule.moment;
    finding.sentence =
        swingSentence({finding.subject, obstacle.name, setting_.zone.hand, needs_.clearance, worst, bound},
                      input_.job.units);
    finding.source =
        setting_.zone.swing->measured
            ? "swing taped on site; clearance: common practice, no source"
            : "two-link swing model from stature and club; clearance: common practice, no source";
    return finding;
  }

  void add(CheckResult& result, std::string_view category, Finding finding, const SwingMargin& worst,
           const SwingMargin& bound) const {
    result.findings.push_back(std::move(finding));
    const std::string golfer = idText(setting_.zone.golfer);
    const std::string club = idText(setting_.zone.club);
    result.figures.push_back(
        {figureName({"swing", golfer, club, category, "margin"}), worst.margin.value, "m"});
    result.figures.push_back(
        {figureName({"swing", golfer, club, category, "bound_margin"}), bound.margin.value, "m"});
  }

  const CheckInput& input_;
  const SwingQuestion& question_;
  const SwingSetting& setting_;
  SwingNeeds needs_;
};

std::string_view categoryOf(FixtureKind kind) {
  switch (kind) {
    case FixtureKind::Shelving:
      return "shelving";
    case FixtureKind::Beam:
      return "beam";
    case FixtureKind::Duct:
      return "duct";
    case FixtureKind::Light:
      return "light";
    case FixtureKind::Fan:
      return "fan";
    case FixtureKind::Column:
      return "column";
    case FixtureKind::Opener:
      return "opener";
    case FixtureKind::Furniture:
      return "furniture";
    case FixtureKind::PowerOutlet:
    case FixtureKind::DataOutlet:
      return "outlet";
    case FixtureKind::Other:
      break;
  }
  return "other";
}

}  // namespace

std::string_view categoryOf(const RoomObstacle& obstacle) {
  switch (obstacle.kind) {
    case ObstacleKind::Wall:
      return "wall";
    case ObstacleKind::Window:
      return "window";
    case ObstacleKind::Ceiling:
      return "ceiling";
    case ObstacleKind::Fixture:
      return categoryOf(obstacle.fixture.value_or(FixtureKind::Other));
    case ObstacleKind::SectionalDoor:
      return "open_door";
    case ObstacleKind::DoorTrack:
      return "door_track";
    case ObstacleKind::Projector:
      return "projector";
    case ObstacleKind::ProjectorMount:
      return "mount";
    case ObstacleKind::Monitor:
      return "monitor";
    case ObstacleKind::Frame:
      return "frame";
    case ObstacleKind::Bystander:
      return "bystander";
  }
  return "other";
}

std::string swingSubject(const SwingSetting& setting) {
  return setting.golfer->name.empty() ? setting.club->name : setting.club->name + ", " + setting.golfer->name;
}

CheckResult swingFindings(const CheckInput& input, const SwingQuestion& question) {
  CheckResult result;
  const std::vector<Group> groups = groupsOf(input, question);
  for (const SwingSetting& setting : input.swings) {
    if (!setting.zone.swing) continue;
    const Collector collector(input, question, setting);
    for (const Group& group : groups) collector.addGroup(result, group);
    for (std::size_t i = 0; i < input.obstacles.size(); ++i) {
      const RoomObstacle& obstacle = input.obstacles[i];
      if (!obstacle.missing.empty() && question.concerns(obstacle)) collector.addMissing(result, i);
    }
    if (!question.scans) continue;
    for (const ScanObstacle& scan : input.scans) collector.addScan(result, scan);
  }
  return result;
}

}  // namespace baywright
