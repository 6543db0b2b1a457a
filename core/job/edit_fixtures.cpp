// SPDX-License-Identifier: Apache-2.0
#include "job/edit_fixtures.h"

#include "geometry/polygon.h"
#include "job/detail/angle.h"
#include "job/detail/editing.h"

namespace baywright {
namespace {

Vec2 turnedPoint(const Vec2& point, double angle, const Vec2& pivot) {
  const Mat2 turn = Eigen::Rotation2Dd(angle).toRotationMatrix();
  return pivot + turn * (point - pivot);
}

}  // namespace

Vec2 middleOf(const FixtureShape& shape) {
  if (const auto* prism = std::get_if<PrismShape>(&shape)) return centroid({prism->outline, {}});
  if (const auto* cylinder = std::get_if<CylinderShape>(&shape)) return cylinder->centre;
  return std::get<BoxShape>(shape).centre;
}

FixtureShape translated(FixtureShape shape, const Vec2& by) {
  if (auto* box = std::get_if<BoxShape>(&shape)) box->centre += by;
  if (auto* cylinder = std::get_if<CylinderShape>(&shape)) cylinder->centre += by;
  if (auto* prism = std::get_if<PrismShape>(&shape))
    for (Vec2& corner : prism->outline) corner += by;
  return shape;
}

FixtureShape turned(FixtureShape shape, double angle, const Vec2& pivot) {
  if (auto* box = std::get_if<BoxShape>(&shape)) {
    box->centre = turnedPoint(box->centre, angle, pivot);
    box->heading = detail::wrappedAngle(box->heading + angle);
  }
  if (auto* cylinder = std::get_if<CylinderShape>(&shape))
    cylinder->centre = turnedPoint(cylinder->centre, angle, pivot);
  if (auto* prism = std::get_if<PrismShape>(&shape))
    for (Vec2& corner : prism->outline) corner = turnedPoint(corner, angle, pivot);
  return shape;
}

Result<Job> addFixture(Job job, Fixture fixture) {
  return detail::appended(std::move(job), &Room::fixtures, std::move(fixture));
}

Result<Job> setFixture(Job job, const Fixture& fixture) {
  return detail::replaced(std::move(job), &Room::fixtures, fixture, "fixture");
}

Result<Job> moveFixture(Job job, Id id, const Vec2& by) {
  Fixture* fixture = findById(job.room.fixtures, id);
  if (!fixture) return detail::notThere("fixture");
  fixture->shape = translated(std::move(fixture->shape), by);
  return validated(std::move(job));
}

Result<Job> turnFixture(Job job, Id id, double angle) {
  Fixture* fixture = findById(job.room.fixtures, id);
  if (!fixture) return detail::notThere("fixture");
  const Vec2 middle = middleOf(fixture->shape);
  fixture->shape = turned(std::move(fixture->shape), angle, middle);
  return validated(std::move(job));
}

}  // namespace baywright
