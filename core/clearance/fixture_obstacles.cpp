// SPDX-License-Identifier: Apache-2.0
#include <cmath>

#include "clearance/obstacles.h"
#include "clearance/wording.h"

namespace baywright {
namespace {

/// Fixtures are taped from the nearest wall, over about this length.
constexpr double kOffsetRun = 3.0;
/// A person fits under what hangs from here on (80 in, ADA Standards fig. 8(a)).
constexpr double kStandUnder = 2.032;
/// How exactly a bystander keeps to a place (common practice, no source).
constexpr double kBystanderSigma = 0.05;

struct Heights {
  double bottom = 0;
  double top = 0;
};

/// From floor to kUnmeasuredTop where nobody measured.
Heights heightsOf(const Fixture& fixture) {
  return {fixture.bottom.known ? fixture.bottom.value : 0,
          fixture.top.known ? fixture.top.value : kUnmeasuredTop};
}

std::vector<Solid> solidsOf(const Fixture& fixture) {
  const Heights z = heightsOf(fixture);
  std::vector<Solid> solids;
  if (const auto* box = std::get_if<BoxShape>(&fixture.shape)) {
    const auto body =
        boxFrom(UprightBox{box->centre, box->heading, {box->width, box->depth}, z.bottom, z.top});
    if (body) solids.push_back(*body);
  } else if (const auto* round = std::get_if<CylinderShape>(&fixture.shape)) {
    const auto body =
        solidFrom(Cylinder{raised(round->centre, z.bottom), raised(round->centre, z.top), round->radius});
    if (body) solids.push_back(*body);
  } else {
    const auto& prism = std::get<PrismShape>(fixture.shape);
    const auto pieces = prismPieces({prism.outline, SlopedPlane::level(z.bottom), SlopedPlane::level(z.top)});
    if (pieces) solids.assign(pieces->begin(), pieces->end());
  }
  return solids;
}

std::string missingOf(const Fixture& fixture, const std::string& name) {
  if (!fixture.bottom.known && !fixture.top.known) return "the underside and the top of " + name;
  if (!fixture.bottom.known) return "the underside of " + name;
  return fixture.top.known ? "" : "the top of " + name;
}

}  // namespace

Obstacles fixtureObstacles(const Job& job) {
  Obstacles obstacles;
  for (const Fixture& fixture : job.room.fixtures) {
    RoomObstacle like;
    like.id = fixture.id;
    like.kind = ObstacleKind::Fixture;
    like.name = inSentence(fixture.name);
    like.fixture = fixture.kind;
    const double plan = instrumentSigma(fixture.planInstrument, kOffsetRun);
    like.uncertainty.atFrom = like.uncertainty.atTo = PlanCovariance::isotropic(plan);
    like.uncertainty.bottom = fixture.bottom.uncertain().sigma;
    like.uncertainty.top = fixture.top.uncertain().sigma;
    like.breakable = fixture.breakable;
    like.missing = missingOf(fixture, like.name);
    like.overhead = fixture.bottom.value >= kStandUnder;
    for (Solid& solid : solidsOf(fixture)) {
      obstacles.push_back(withSolid(like, std::move(solid)));
    }
  }
  return obstacles;
}

Obstacles bystanderObstacles(const Job& job) {
  Obstacles obstacles;
  for (const Bystander& person : job.bystanders) {
    const Cylinder body{raised(person.position, 0), raised(person.position, person.height), person.radius};
    if (!solidFrom(body)) continue;
    RoomObstacle obstacle;
    obstacle.id = person.id;
    obstacle.kind = ObstacleKind::Bystander;
    obstacle.name = person.name;  // a person's own, whatever it looks like
    obstacle.uncertainty.atFrom = obstacle.uncertainty.atTo = PlanCovariance::isotropic(kBystanderSigma);
    obstacle.breakable = true;
    obstacles.push_back(withSolid(std::move(obstacle), body));
  }
  return obstacles;
}

}  // namespace baywright
