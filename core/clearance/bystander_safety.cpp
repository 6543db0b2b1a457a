// SPDX-License-Identifier: Apache-2.0
#include <cmath>

#include "clearance/checks.h"
#include "clearance/freeing_move.h"
#include "clearance/quantities.h"
#include "clearance/wording.h"
#include "geometry/polygon.h"

namespace baywright {
namespace {

/// How exactly people keep to a place (common practice, no source).
constexpr double kStandingSigma = 0.05;

struct Zone {
  Polygon ring;  ///< world plan
  std::string words;
};

std::vector<Zone> zonesOf(const CheckInput& input) {
  std::vector<Zone> zones;
  const auto add = [&](const Ring& inBay, const char* words) {
    if (inBay.size() < 3) return;
    Ring ring;
    for (const Vec2& p : inBay) ring.push_back(flat(worldFromBay(input.option.placement.bay, raised(p, 0))));
    zones.push_back({{std::move(ring), {}}, words});
  };
  for (const BallSetting& ball : input.balls) {
    if (!ball.zone.danger) continue;
    add(ball.zone.danger->direct, "where a struck ball may fly");
    add(ball.zone.danger->returning, "where balls come back");
  }
  return zones;
}

struct Nearest {
  double distance;  ///< from the person's edge to the zone, negative inside
  Vec2 at;
};
Nearest nearestTo(const Polygon& zone, const Bystander& person) {
  const BoundaryPoint edge = closestOnBoundary(zone, person.position);
  const bool inside = locate(zone, person.position) == Location::Inside;
  return {(inside ? -edge.distance : edge.distance) - person.radius, edge.point};
}

struct WorstPlace {
  const Zone* zone = nullptr;
  Nearest nearest{};
};
/// Of all zones the one that the person is deepest in, or nearest to.
WorstPlace worstPlace(const std::vector<Zone>& zones, const Bystander& person) {
  WorstPlace worst;
  for (const Zone& zone : zones) {
    const Nearest nearest = nearestTo(zone.ring, person);
    if (!worst.zone || nearest.distance < worst.nearest.distance) worst = {&zone, nearest};
  }
  return worst;
}

/// The person as what can be moved: out across the nearest edge.
TightPlace tightPlace(const Nearest& nearest, const Bystander& person, double sigma) {
  TightPlace place;
  place.margin = {nearest.distance, sigma};
  const bool inside = nearest.distance + person.radius < 0;
  const Vec2 out = inside ? Vec2(nearest.at - person.position) : Vec2(person.position - nearest.at);
  place.closest.escape = raised(out.norm() > 0 ? Vec2(out.normalized()) : Vec2::Zero(), 0);
  return place;
}

/// Where the person would be out of every zone.
std::string hintText(const CheckInput& input, const std::vector<Zone>& zones, const Bystander& person,
                     const TightPlace& now) {
  const UnitSystem& units = input.job.units;
  const PlaceAfter after = [&](const Vec3& shift) -> std::optional<TightPlace> {
    Bystander moved = person;
    moved.position += flat(shift);
    return tightPlace(worstPlace(zones, moved).nearest, moved, now.margin.sigma);
  };
  const auto move = freeingMove(now, after, input.option.placement.bay, units);
  return move ? movingText(person.name, move->distance, wayInRoom(move->way), units) : std::string();
}

}  // namespace

CheckResult checkBystanderSafety(const CheckInput& input) {
  CheckResult result;
  for (const BallSetting& ball : input.balls) {
    if (!ball.zone.danger) continue;
    const std::string_view hand = ball.zone.hand == Hand::Right ? "right" : "left";
    const auto area = [](const Ring& ring) { return ring.size() < 3 ? 0.0 : std::abs(signedArea(ring)); };
    result.figures.push_back(
        {figureName({"ball", hand, "danger", "direct_area"}), area(ball.zone.danger->direct), "m2"});
    result.figures.push_back(
        {figureName({"ball", hand, "danger", "returning_area"}), area(ball.zone.danger->returning), "m2"});
  }
  const std::vector<Zone> zones = zonesOf(input);
  if (zones.empty()) return result;
  const double sigma = std::hypot(kStandingSigma, input.option.placement.sigma);
  for (const Bystander& person : input.job.bystanders) {
    const auto [worstZone, worst] = worstPlace(zones, person);
    Finding finding;
    finding.check = "bystander_safety";
    finding.key = "bystander_safety/" + idText(person.id);
    finding.subjects = {person.id};
    finding.subject = person.name;
    finding.margin = Uncertain{worst.distance, sigma};
    finding.verdict = verdictOf(*finding.margin);
    finding.points = std::pair(raised(person.position, 0), raised(worst.at, 0));
    finding.sentence =
        finding.verdict == Verdict::Blocked
            ? person.name + " is " + missingText(*finding.margin, input.job.units) + " inside the place " +
                  worstZone->words + "."
            : person.name + ": " +
                  marginText(*finding.margin, std::string("from the place ") + worstZone->words,
                             input.job.units);
    finding.sentence += hintText(input, zones, person, tightPlace(worst, person, sigma));
    finding.source = "nobody in front of the ball nor within a shank's angle: common practice, no source";
    result.findings.push_back(std::move(finding));
    result.figures.push_back({figureName({"bystander", idText(person.id), "margin"}), worst.distance, "m"});
  }
  return result;
}

}  // namespace baywright
