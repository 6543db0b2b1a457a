// SPDX-License-Identifier: Apache-2.0
#include "job/edit_placement.h"

#include "job/detail/editing.h"
#include "job/detail/place.h"

namespace baywright {

using detail::withActiveOption;

Result<Job> moveBay(Job job, const Vec2& by) {
  return withActiveOption(std::move(job), [&](Option& option) { option.placement.bay.origin += by; });
}

Result<Job> setBayPose(Job job, const BayPose& pose) {
  return withActiveOption(std::move(job), [&](Option& option) { option.placement.bay = pose; });
}

Result<Job> turnBay(Job job, double angle, const Vec2& pivot) {
  return withActiveOption(std::move(job),
                          [&](Option& option) { detail::turnBay(option.placement, angle, pivot); });
}

Result<Job> moveMat(Job job, const Vec2& by) {
  return withActiveOption(std::move(job), [&](Option& option) { detail::moveMat(option.placement, by); });
}

Result<Job> moveStrikePoint(Job job, Hand hand, const Vec2& by) {
  return withActiveOption(std::move(job),
                          [&](Option& option) { detail::moveStrikePoint(option.placement, hand, by); });
}

Result<Job> setStrikeDistance(Job job, double distance) {
  return withActiveOption(std::move(job), [&](Option& option) {
    Placement& placement = option.placement;
    detail::moveMat(placement, {placement.strikeDistance - distance, 0});
    placement.strikeDistance = distance;
  });
}

Result<Job> setStrikeOffset(Job job, Hand hand, double offset) {
  return withActiveOption(std::move(job), [&](Option& option) {
    (hand == Hand::Right ? option.placement.strikeRightHanded : option.placement.strikeLeftHanded) = offset;
  });
}

Result<Job> moveMonitor(Job job, const Vec3& by) {
  return withActiveOption(std::move(job), [&](Option& option) { option.placement.monitor += by; });
}

Result<Job> setMonitorPlace(Job job, const Vec3& place) {
  return withActiveOption(std::move(job), [&](Option& option) { option.placement.monitor = place; });
}

Result<Job> moveProjector(Job job, const Vec3& by) {
  return withActiveOption(std::move(job), [&](Option& option) { option.placement.projector.lens += by; });
}

Result<Job> setProjectorMount(Job job, const ProjectorMount& mount) {
  return withActiveOption(std::move(job), [&](Option& option) { option.placement.projector = mount; });
}

Result<Job> setPlacement(Job job, const Placement& placement) {
  return withActiveOption(std::move(job), [&](Option& option) { option.placement = placement; });
}

}  // namespace baywright
