// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "geometry/homography.h"
#include "job/detail/validation.h"
#include "job/find.h"

namespace baywright::detail {
namespace {

void checkUnits(ProblemList& problems, const UnitSystem& units) {
  if (std::find(kInchFractions.begin(), kInchFractions.end(), units.inchFraction) == kInchFractions.end())
    problems.add("There is no tape with 1/" + std::to_string(units.inchFraction) + " inch.", "units",
                 "Choose 8, 16 or 32.");
  if (units.decimal != '.' && units.decimal != ',')
    problems.add("The decimal separator is neither a point nor a comma.", "units");
}

void checkRequirements(ProblemList& problems, const Requirements& r) {
  const std::string where = "requirements";
  const Range clearance{0, 5};
  const Range share{0, 1};
  problems.length("clearance of the swing", r.swingClearance, clearance, where);
  problems.length("clearance above the frame", r.frameAbove, clearance, where);
  problems.length("clearance beside the frame", r.frameBeside, clearance, where);
  problems.length("clearance behind the frame", r.frameBehind, clearance, where);
  problems.length("clear width at an exit", r.exitWidth, clearance, where);
  problems.length("clear width of the way", r.wayWidth, clearance, where);
  problems.number("speed after rebound", r.reboundSpeed, {0, 100}, where);
  problems.number("ball speed", r.ballSpeed, {1, 150}, where);
  problems.number("spin of the ball", r.ballSpin, {0, 1500}, where);
  problems.number("altitude in metres", r.altitude, {-500, 6000}, where);
  problems.angle("dispersion upward", r.dispersionUp, {0, 1}, where);
  problems.angle("dispersion sideways", r.dispersionSide, {0, 1}, where);
  problems.angle("mean launch angle", r.meanLaunch, {-0.5, 1.5}, where);
  problems.number("share of shots to be caught", r.captureShare, share, where);
  problems.number("share of the screen to be filled", r.coverage, share, where);
  problems.number("share of the picture beside the screen", r.spill, share, where);
  problems.number("uniformity", r.uniformity, share, where);
  problems.number("contrast", r.contrast, {1, 1e5}, where);
  problems.number("room light in lx", r.ambient, {0, 1e5}, where);
  problems.number("shaded share of the picture", r.shadow, share, where);
  problems.number("obstructed share of the picture", r.obstruction, share, where);
}

void checkCorner(ProblemList& problems, const Room& room, Id corner, const char* role,
                 const std::string& where) {
  if (!findById(room.walls, corner))
    problems.add(std::string("The corner ") + role + " is not there.", where, "Choose another corner.");
}

void checkMeasurement(ProblemList& problems, const Room& room, const Measurement& m,
                      const std::string& where) {
  const bool isAngle = m.kind == MeasurementKind::Angle;
  if (m.kind == MeasurementKind::CeilingHeight)
    problems.point("place", m.position, where);
  else
    checkCorner(problems, room, m.from, "it starts from", where);
  if (isAngle || m.kind == MeasurementKind::Diagonal || m.kind == MeasurementKind::Offset)
    checkCorner(problems, room, m.to, "it goes to", where);
  if (isAngle) checkCorner(problems, room, m.at, "it is taken at", where);
  if (isAngle)
    problems.angle("angle", m.value, {0, 2 * kPi}, where);
  else
    problems.length("reading", m.value, {m.kind == MeasurementKind::Offset ? -1000.0 : 0.0, 1000}, where);
}

/// Somebody may take the original out again under its name: that must not lead anywhere.
void checkFileName(ProblemList& problems, const BlobPtr& file, const std::string& where) {
  if (!file) return;
  const std::string& name = file->fileName;
  if (name.empty() || name == "." || name == ".." || name.find_first_of("/\\\n") != std::string::npos)
    problems.add("The file has a name that is none, or a path: \"" + name + "\".", where);
}

}  // namespace

std::vector<Problem> checkRecord(const Job& job) {
  ProblemList problems(job.units);
  checkUnits(problems, job.units);
  checkRequirements(problems, job.requirements);
  for (std::size_t i = 0; i < job.measurements.size(); ++i)
    checkMeasurement(problems, job.room, job.measurements[i], "measurements / " + std::to_string(i + 1));
  return problems.take();
}

std::vector<Problem> checkScans(const Job& job) {
  ProblemList problems(job.units);
  for (const PlanScan& scan : job.planScans) {
    const std::string where = "planScans / " + scan.name;
    checkFileName(problems, scan.file, where);
    if (!inverse(Homography{scan.worldFromPixel}))
      problems.add("The picture's scale and position squeeze it flat.", where, "Set its scale again.");
    problems.number("opacity", scan.opacity, {0, 1}, where);
    problems.number("page", scan.page, {0, 1e5}, where);
    problems.number("resolution", scan.pdfDotsPerMetre, limits::kDotsPerMetre, where);
  }
  for (const RoomScan& scan : job.roomScans) {
    const std::string where = "roomScans / " + scan.name;
    checkFileName(problems, scan.file, where);
    problems.length("accuracy", scan.sigma, limits::kScanSigma, where);
    if (scan.mesh && scan.points)
      problems.add("The scan has both triangles and points, but must have one of them.", where);
  }
  for (const Original& original : job.originals) {
    const std::string where = "originals / " + original.name;
    checkFileName(problems, original.file, where);
    if (!original.file) problems.add("The original has no file.", where, "Bring the file again.");
  }
  return problems.take();
}

}  // namespace baywright::detail
