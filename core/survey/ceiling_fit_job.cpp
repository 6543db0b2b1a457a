// SPDX-License-Identifier: Apache-2.0
#include "survey/ceiling_fit_job.h"

#include "job/measurement_place.h"
#include "job/room_geometry.h"
#include "job/validate.h"

namespace baywright {

std::vector<CeilingReading> ceilingReadings(const Room& room, std::span<const Measurement> readings) {
  std::vector<CeilingReading> heights;
  for (const Measurement& reading : readings) {
    if (reading.kind != MeasurementKind::CeilingHeight || !reading.used) continue;
    heights.push_back({reading.id, placeOf(room, reading), reading.value, reading.how});
  }
  return heights;
}

CeilingFit fitCeiling(const Room& room, std::span<const Measurement> readings, const UnitSystem& units) {
  return fitCeiling(outline(room), ceilingReadings(room, readings), units);
}

Result<Job> takeCeiling(Job job, const CeilingFit& fit) {
  const std::vector<CeilingPart> old = std::move(job.room.ceiling);
  job.room.ceiling = fit.parts;
  for (std::size_t i = 0; i < fit.parts.size(); ++i)
    job.room.ceiling[i].id = i < old.size() ? old[i].id : job.takeId();
  return validated(std::move(job));
}

}  // namespace baywright
