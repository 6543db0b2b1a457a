// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "job/detail/validation.h"
#include "job/find.h"

namespace baywright::detail {
namespace {

void checkFrame(ProblemList& problems, const Frame& frame, const std::string& where) {
  problems.length("width", frame.width, limits::kFrameSize, where);
  problems.length("height", frame.height, limits::kFrameSize, where);
  problems.length("depth", frame.depth, limits::kFrameDepth, where);
  problems.length("depth behind the screen", frame.behindScreen, {0, std::max(frame.depth, 0.0)}, where);
  problems.length("tube", frame.tube, limits::kTube, where);
  problems.length("tolerance", frame.tolerance, limits::kTolerance, where);
}

void checkScreen(ProblemList& problems, const Screen& screen, const std::string& where) {
  problems.length("width", screen.width, limits::kScreenSize, where);
  problems.length("height", screen.height, limits::kScreenSize, where);
  problems.length("lower edge", screen.bottom, limits::kScreenBottom, where);
  problems.length("travel", screen.travel, limits::kScreenTravel, where);
  problems.number("gain", screen.gain, limits::kScreenGain, where);
  problems.number("restitution", screen.restitution, limits::kRestitution, where);
}

void checkMat(ProblemList& problems, const Mat& mat, const std::string& where) {
  problems.length("width", mat.width, limits::kMatSize, where);
  problems.length("length", mat.length, limits::kMatSize, where);
  problems.length("thickness", mat.thickness, limits::kMatThickness, where);
}

/// A box along, across and up, told by those words.
void checkSize(ProblemList& problems, const Vec3& size, Range range, const std::string& where) {
  problems.length("size along", size.x(), range, where);
  problems.length("size across", size.y(), range, where);
  problems.length("height", size.z(), range, where);
}

void checkProjector(ProblemList& problems, const Projector& projector, const std::string& where) {
  problems.number("shortest throw ratio", projector.throwMin, limits::kThrowRatio, where);
  problems.number("longest throw ratio", projector.throwMax, limits::kThrowRatio, where);
  if (projector.throwMin > projector.throwMax)
    problems.add("The shortest throw ratio is above the longest.", where);
  problems.number("panel's width in pixels", projector.panelWidth, limits::kPanelPixels, where);
  problems.number("panel's height in pixels", projector.panelHeight, limits::kPanelPixels, where);
  problems.number("light in lumens", projector.lumens, limits::kLumens, where);
  problems.number("contrast", projector.contrast, limits::kContrastRatio, where);
  problems.number("lens offset", projector.offset, limits::kLensOffset, where);
  problems.number("lens shift upward", projector.shiftUpMax, limits::kLensShift, where);
  problems.number("lens shift sideways", projector.shiftSideMax, limits::kLensShift, where);
  problems.length("shortest distance", projector.distanceMin, limits::kFocus, where);
  problems.length("longest distance", projector.distanceMax, limits::kFocus, where);
  if (projector.distanceMin > projector.distanceMax)
    problems.add("The shortest distance is above the longest.", where);
  problems.angle("keystone range", projector.keystoneMax, limits::kKeystone, where);
  checkSize(problems, projector.body, limits::kBodySize, where);
  problems.number("mass in kg", projector.mass, limits::kMass, where);
}

void checkMount(ProblemList& problems, const ProjectorMount& mount, const std::string& where) {
  if (mount.lens.x() >= 0)
    problems.add("The projector's lens is " + problems.text(mount.lens.x()) +
                     " behind the screen's face, but must be on the golfer's side.",
                 where, "Give it a distance in front of the screen.");
  else
    problems.length("lens distance", -mount.lens.x(), {0, limits::kInBay.high}, where);
  problems.length("lens offset to the right", mount.lens.y(), limits::kInBay, where);
  problems.length("lens height", mount.lens.z(), limits::kInBay, where);
  problems.angle("yaw", mount.yaw, limits::kAxisTurn, where);
  problems.angle("pitch", mount.pitch, limits::kAxisTurn, where);
  problems.angle("roll", mount.roll, limits::kAxisTurn, where);
  problems.number("throw ratio", mount.throwRatio, limits::kThrowRatio, where);
  problems.number("used lens shift upward", mount.shiftUp, limits::kUsedShift, where);
  problems.number("used lens shift sideways", mount.shiftSide, limits::kUsedShift, where);
}

void checkPlacement(ProblemList& problems, const Placement& placement, const std::string& where) {
  problems.point("bay's origin", placement.bay.origin, where);
  problems.angle("bay's heading", placement.bay.heading, limits::kHeading, where);
  problems.length("distance from strike point to screen", placement.strikeDistance, limits::kStrikeDistance,
                  where);
  problems.length("right-hander's strike point", placement.strikeRightHanded, limits::kInBay, where);
  problems.length("left-hander's strike point", placement.strikeLeftHanded, limits::kInBay, where);
  problems.length("mat's place along the bay", placement.matCentre.x(), limits::kInBay, where);
  problems.length("mat's place across the bay", placement.matCentre.y(), limits::kInBay, where);
  for (const double part : placement.monitor) problems.length("monitor's place", part, limits::kInBay, where);
  checkMount(problems, placement.projector, where + " / projector");
  problems.length("tolerance of placing", placement.sigma, limits::kTolerance, where);
}

}  // namespace

std::vector<Problem> checkOptions(const Job& job) {
  ProblemList problems(job.units);
  if (job.options.empty()) problems.add("The job has no option.", "options", "Add a set of kit.");
  if (!job.options.empty() && !findById(job.options, job.activeOption))
    problems.add("The active option, " + std::to_string(job.activeOption.value) + ", is not there.",
                 "activeOption");
  for (const Option& option : job.options) {
    const std::string where = "options / " + option.name;
    checkFrame(problems, option.kit.frame, where + " / frame");
    checkScreen(problems, option.kit.screen, where + " / screen");
    checkMat(problems, option.kit.mat, where + " / mat");
    checkSize(problems, option.kit.monitor.size, limits::kMonitorSize, where + " / monitor");
    checkProjector(problems, option.kit.projector, where + " / projector");
    checkPlacement(problems, option.placement, where + " / placement");
  }
  return problems.take();
}

}  // namespace baywright::detail
