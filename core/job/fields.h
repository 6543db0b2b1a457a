// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <concepts>
#include <string_view>
#include <type_traits>
#include <variant>

#include "job/job.h"

namespace baywright {

/// The one list of what a job stores. visitFields(visit, thing) calls visit(name, field) for each field of a
/// thing, const or not, in the order and under the name it has in a file. Saving, loading and the checks that
/// concern every number walk this list, so a new field is added here and nowhere else.
///
///     visitFields([](std::string_view name, const auto& field) { ... }, golfer);
template <class T, class Stored>
concept ConstOrNot = std::same_as<std::remove_const_t<T>, Stored>;

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<ProjectInfo> auto& info) {
  visit("title", info.title);
  visit("customer", info.customer);
  visit("site", info.site);
  visit("owner", info.owner);
  visit("number", info.number);
  visit("revision", info.revision);
  visit("date", info.date);
  visit("creator", info.creator);
  visit("approver", info.approver);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<UnitSystem> auto& units) {
  visit("length", units.length);
  visit("inchFraction", units.inchFraction);
  visit("decimal", units.decimal);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Dimension> auto& dimension) {
  visit("value", dimension.value);
  visit("how", dimension.how);
  visit("known", dimension.known);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<PlanCovariance> auto& covariance) {
  visit("xx", covariance.xx);
  visit("xy", covariance.xy);
  visit("yy", covariance.yy);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Wall> auto& wall) {
  visit("id", wall.id);
  visit("name", wall.name);
  visit("start", wall.start);
  visit("startCovariance", wall.startCovariance);
  visit("thickness", wall.thickness);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<CeilingPart> auto& part) {
  visit("id", part.id);
  visit("name", part.name);
  visit("region", part.region);
  visit("anchor", part.anchor);
  visit("height", part.height);
  visit("slope", part.slope);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Opening> auto& opening) {
  visit("id", opening.id);
  visit("wall", opening.wall);
  visit("name", opening.name);
  visit("kind", opening.kind);
  visit("offset", opening.offset);
  visit("width", opening.width);
  visit("sill", opening.sill);
  visit("height", opening.height);
  visit("isExit", opening.isExit);
  visit("hinge", opening.hinge);
  visit("swing", opening.swing);
  visit("leafThickness", opening.leafThickness);
  visit("openAngle", opening.openAngle);
  visit("trackHeadroom", opening.trackHeadroom);
  visit("trackDepth", opening.trackDepth);
  visit("panelThickness", opening.panelThickness);
  visit("staysOpen", opening.staysOpen);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<BoxShape> auto& box) {
  visit("centre", box.centre);
  visit("heading", box.heading);
  visit("width", box.width);
  visit("depth", box.depth);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<PrismShape> auto& prism) {
  visit("outline", prism.outline);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<CylinderShape> auto& cylinder) {
  visit("centre", cylinder.centre);
  visit("radius", cylinder.radius);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Fixture> auto& fixture) {
  visit("id", fixture.id);
  visit("name", fixture.name);
  visit("kind", fixture.kind);
  visit("shape", fixture.shape);
  visit("bottom", fixture.bottom);
  visit("top", fixture.top);
  visit("planInstrument", fixture.planInstrument);
  visit("breakable", fixture.breakable);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Room> auto& room) {
  visit("name", room.name);
  visit("walls", room.walls);
  visit("ceiling", room.ceiling);
  visit("openings", room.openings);
  visit("fixtures", room.fixtures);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Club> auto& club) {
  visit("id", club.id);
  visit("name", club.name);
  visit("length", club.length);
  visit("lie", club.lie);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<MeasuredReach> auto& reach) {
  visit("club", reach.club);
  visit("highest", reach.highest);
  visit("behind", reach.behind);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Golfer> auto& golfer) {
  visit("id", golfer.id);
  visit("name", golfer.name);
  visit("hand", golfer.hand);
  visit("stature", golfer.stature);
  visit("clubs", golfer.clubs);
  visit("reach", golfer.reach);
  visit("swings", golfer.swings);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Bystander> auto& bystander) {
  visit("id", bystander.id);
  visit("name", bystander.name);
  visit("position", bystander.position);
  visit("radius", bystander.radius);
  visit("height", bystander.height);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Frame> auto& frame) {
  visit("id", frame.id);
  visit("name", frame.name);
  visit("width", frame.width);
  visit("height", frame.height);
  visit("depth", frame.depth);
  visit("behindScreen", frame.behindScreen);
  visit("tube", frame.tube);
  visit("tolerance", frame.tolerance);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Screen> auto& screen) {
  visit("id", screen.id);
  visit("name", screen.name);
  visit("width", screen.width);
  visit("height", screen.height);
  visit("bottom", screen.bottom);
  visit("travel", screen.travel);
  visit("gain", screen.gain);
  visit("restitution", screen.restitution);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Mat> auto& mat) {
  visit("id", mat.id);
  visit("name", mat.name);
  visit("width", mat.width);
  visit("length", mat.length);
  visit("thickness", mat.thickness);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<LaunchMonitor> auto& monitor) {
  visit("id", monitor.id);
  visit("name", monitor.name);
  visit("size", monitor.size);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Projector> auto& projector) {
  visit("id", projector.id);
  visit("name", projector.name);
  visit("throwMin", projector.throwMin);
  visit("throwMax", projector.throwMax);
  visit("panelWidth", projector.panelWidth);
  visit("panelHeight", projector.panelHeight);
  visit("lumens", projector.lumens);
  visit("contrast", projector.contrast);
  visit("offset", projector.offset);
  visit("shiftUpMax", projector.shiftUpMax);
  visit("shiftSideMax", projector.shiftSideMax);
  visit("distanceMin", projector.distanceMin);
  visit("distanceMax", projector.distanceMax);
  visit("keystoneMax", projector.keystoneMax);
  visit("body", projector.body);
  visit("mass", projector.mass);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Kit> auto& kit) {
  visit("frame", kit.frame);
  visit("screen", kit.screen);
  visit("mat", kit.mat);
  visit("monitor", kit.monitor);
  visit("projector", kit.projector);
  visit("hasMonitor", kit.hasMonitor);
  visit("hasProjector", kit.hasProjector);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<BayPose> auto& pose) {
  visit("origin", pose.origin);
  visit("heading", pose.heading);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<ProjectorMount> auto& mount) {
  visit("kind", mount.kind);
  visit("lens", mount.lens);
  visit("yaw", mount.yaw);
  visit("pitch", mount.pitch);
  visit("roll", mount.roll);
  visit("throwRatio", mount.throwRatio);
  visit("shiftUp", mount.shiftUp);
  visit("shiftSide", mount.shiftSide);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Placement> auto& placement) {
  visit("bay", placement.bay);
  visit("strikeDistance", placement.strikeDistance);
  visit("strikeRightHanded", placement.strikeRightHanded);
  visit("strikeLeftHanded", placement.strikeLeftHanded);
  visit("matCentre", placement.matCentre);
  visit("monitor", placement.monitor);
  visit("projector", placement.projector);
  visit("sigma", placement.sigma);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Option> auto& option) {
  visit("id", option.id);
  visit("name", option.name);
  visit("kit", option.kit);
  visit("placement", option.placement);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Requirements> auto& wanted) {
  visit("swingClearance", wanted.swingClearance);
  visit("frameAbove", wanted.frameAbove);
  visit("frameBeside", wanted.frameBeside);
  visit("frameBehind", wanted.frameBehind);
  visit("exitWidth", wanted.exitWidth);
  visit("wayWidth", wanted.wayWidth);
  visit("reboundSpeed", wanted.reboundSpeed);
  visit("ballSpeed", wanted.ballSpeed);
  visit("ballSpin", wanted.ballSpin);
  visit("altitude", wanted.altitude);
  visit("dispersionUp", wanted.dispersionUp);
  visit("dispersionSide", wanted.dispersionSide);
  visit("meanLaunch", wanted.meanLaunch);
  visit("captureShare", wanted.captureShare);
  visit("coverage", wanted.coverage);
  visit("spill", wanted.spill);
  visit("uniformity", wanted.uniformity);
  visit("contrast", wanted.contrast);
  visit("ambient", wanted.ambient);
  visit("shadow", wanted.shadow);
  visit("obstruction", wanted.obstruction);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Measurement> auto& measurement) {
  visit("id", measurement.id);
  visit("kind", measurement.kind);
  visit("from", measurement.from);
  visit("to", measurement.to);
  visit("at", measurement.at);
  visit("position", measurement.position);
  visit("value", measurement.value);
  visit("how", measurement.how);
  visit("used", measurement.used);
  visit("note", measurement.note);
}

/// The bytes of a scan and its geometry are fields too: a visitor decides what to do with them.
template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<PlanScan> auto& scan) {
  visit("id", scan.id);
  visit("name", scan.name);
  visit("file", scan.file);
  visit("page", scan.page);
  visit("pdfDotsPerMetre", scan.pdfDotsPerMetre);
  visit("worldFromPixel", scan.worldFromPixel);
  visit("scaled", scan.scaled);
  visit("opacity", scan.opacity);
  visit("locked", scan.locked);
  visit("visible", scan.visible);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<RoomScan> auto& scan) {
  visit("id", scan.id);
  visit("name", scan.name);
  visit("file", scan.file);
  visit("mesh", scan.mesh);
  visit("points", scan.points);
  visit("sigma", scan.sigma);
  visit("isObstacle", scan.isObstacle);
  visit("visible", scan.visible);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Original> auto& original) {
  visit("id", original.id);
  visit("name", original.name);
  visit("file", original.file);
}

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Job> auto& job) {
  visit("lastId", job.lastId);
  visit("info", job.info);
  visit("units", job.units);
  visit("room", job.room);
  visit("golfers", job.golfers);
  visit("bystanders", job.bystanders);
  visit("options", job.options);
  visit("activeOption", job.activeOption);
  visit("requirements", job.requirements);
  visit("measurements", job.measurements);
  visit("planScans", job.planScans);
  visit("roomScans", job.roomScans);
  visit("originals", job.originals);
}

/// True for the things above.
template <class T>
concept HasFields = requires(T& thing) {
  visitFields([](std::string_view, auto&) {}, thing);
};

/// The word in a file for each shape of a fixture.
inline std::string_view shapeName(const BoxShape&) {
  return "box";
}
inline std::string_view shapeName(const PrismShape&) {
  return "prism";
}
inline std::string_view shapeName(const CylinderShape&) {
  return "cylinder";
}

}  // namespace baywright
