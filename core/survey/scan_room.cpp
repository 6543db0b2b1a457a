// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_room.h"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>

#include "geometry/polygon_validity.h"
#include "job/enum_names.h"
#include "job/room_geometry.h"
#include "survey/scan_blocks.h"
#include "survey/scan_ceiling.h"
#include "survey/scan_lines.h"
#include "survey/scan_openings.h"
#include "survey/scan_outline.h"
#include "survey/scan_planes.h"
#include "survey/scan_plumb.h"
#include "survey/scan_side_fit.h"
#include "survey/scan_squaring.h"
#include "survey/scan_things.h"

namespace baywright {
namespace {

constexpr double kHardlySeen = 0.5;     ///< share of a wall
constexpr double kMoreThanWalls = 1.3;  ///< times the scatter of walls: not mere noise
constexpr double kBentFloor = 0.015;    ///< metres of scatter about the floor's plane

std::string fixed(double value, int decimals) {
  char text[64];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

/// From the levelled scan to the world: a turn about z and a shift.
struct PlanMove {
  double angle = 0;
  Vec2 shift = Vec2::Zero();

  Vec2 operator()(const Vec2& p) const { return turned(p) + shift; }
  Vec2 turned(const Vec2& v) const {
    return {std::cos(angle) * v.x() - std::sin(angle) * v.y(),
            std::sin(angle) * v.x() + std::cos(angle) * v.y()};
  }
};

/// All that was found, in the levelled scan, the longest wall first.
struct Found {
  LevelScan scan;
  ScanOutline outline;
  std::vector<CeilingPlane> ceiling;
  ScanOpenings openings;
  ScanThings things;
  double fall = 0;   ///< of the floor against the walls, radians
  double noise = 0;  ///< usual scatter about walls, metres
};

void startAtLongest(ScanOutline& outline) {
  const std::size_t n = outline.corners.size();
  std::size_t longest = 0;
  const auto length = [&](std::size_t i) {
    return (outline.corners[(i + 1) % n] - outline.corners[i]).norm();
  };
  for (std::size_t i = 1; i < n; ++i)
    if (length(i) > length(longest)) longest = i;
  const auto turn = static_cast<std::ptrdiff_t>(longest);
  std::rotate(outline.corners.begin(), outline.corners.begin() + turn, outline.corners.end());
  std::rotate(outline.sides.begin(), outline.sides.begin() + turn, outline.sides.end());
  std::rotate(outline.seen.begin(), outline.seen.begin() + turn, outline.seen.end());
}

double usualScatter(const ScanOutline& outline) {
  std::vector<double> scatters;
  for (const ScanLine& side : outline.sides) scatters.push_back(side.rms);
  std::sort(scatters.begin(), scatters.end());
  return scatters[scatters.size() / 2];
}

tl::unexpected<Problem> cancelled() {
  return fail("The import was cancelled.");
}

Result<Found> find(const ScanGeometry& upright, const Progress& progress) {
  Found found;
  found.scan.samples = surfaceSamples(upright, kSampleSpacing, progress);
  found.scan.flat = flatPatches(found.scan.samples, progress);
  progress.at(0.3);
  if (progress.stop()) return cancelled();
  const auto level = levelOf(found.scan.flat);
  if (!level) return tl::unexpected(level.error());
  found.scan = settledOnFloor(levelled(std::move(found.scan), *level), progress);
  auto lines = uprightLines(found.scan, progress);
  progress.at(0.5);
  if (progress.stop()) return cancelled();
  const auto lean = commonLean(found.scan, lines);
  if (lean && lean->norm() > kFallingFloor && lean->norm() < kMostTilt) {
    found.fall = lean->norm();
    found.scan = plumbed(std::move(found.scan), *lean);
    lines = uprightLines(found.scan, progress);
  }
  progress.at(0.7);
  if (progress.stop()) return cancelled();
  auto outline = outlineOf(found.scan, lines, progress);
  if (!outline) return tl::unexpected(outline.error());
  found.outline = std::move(*outline);
  settleSides(found.scan, found.outline, progress);
  squareSides(found.outline);
  if (progress.stop()) return cancelled();
  if (!validated(Polygon{found.outline.corners, {}}))
    return fail("The walls of the scan cross each other where they should enclose the floor.", {},
                "Scan the room again, its walls from floor to ceiling.");
  startAtLongest(found.outline);
  found.noise = usualScatter(found.outline);
  found.ceiling = ceilingOf(found.scan, found.outline, lines, progress);
  progress.at(0.8);
  if (progress.stop()) return cancelled();
  const auto grids = wallGrids(found.scan, found.outline, found.ceiling, progress);
  if (progress.stop()) return cancelled();
  found.openings = openingsOf(grids);
  if (progress.stop()) return cancelled();
  found.things = thingsOf(found.scan, found.outline, found.ceiling, grids, found.noise, progress);
  if (progress.stop()) return cancelled();
  progress.at(0.9);
  return found;
}

PlanMove toWorld(const ScanOutline& outline) {
  const Vec2 along = outline.corners[1] - outline.corners[0];
  PlanMove move;
  move.angle = -std::atan2(along.y(), along.x());
  move.shift = -move.turned(outline.corners[0]);
  return move;
}

/// Where two lines cross, each known across itself so well.
PlanCovariance cornerCovariance(const ScanLine& a, double sigmaA, const ScanLine& b, double sigmaB,
                                const PlanMove& move) {
  Mat2 normals;
  normals.row(0) = move.turned(a.normal);
  normals.row(1) = move.turned(b.normal);
  const Mat2 inverse = normals.inverse();
  const Mat2 c = inverse * Vec2(sigmaA * sigmaA, sigmaB * sigmaB).asDiagonal() * inverse.transpose();
  return {c(0, 0), 0.5 * (c(0, 1) + c(1, 0)), c(1, 1)};
}

class Builder {
 public:
  explicit Builder(const Found& found) : found_(found), move_(toWorld(found.outline)) {}

  RecognisedRoom build(const ScanGeometry& upright, const Progress& progress) {
    made_.room.name = "Scanned room";
    walls();
    blocks();
    ceiling();
    openings();
    fixtures();
    scan(upright, progress);
    remarks();
    return std::move(made_);
  }

 private:
  Id takeId() { return Id{++lastId_}; }

  /// The fit's uncertainty at a corner with the scanner's own.
  double sigmaAt(const ScanLine& side, const Vec2& corner) const {
    const double drift = instrumentSigma(Instrument::Scan, 1) / std::sqrt(2.0);
    return std::hypot(side.fitSigma(side.along().dot(corner)), drift);
  }

  void walls() {
    const ScanOutline& outline = found_.outline;
    const std::size_t n = outline.corners.size();
    for (std::size_t i = 0; i < n; ++i) {
      const ScanLine& before = outline.sides[(i + n - 1) % n];
      const ScanLine& side = outline.sides[i];
      const Vec2& corner = outline.corners[i];
      Wall wall;
      wall.id = takeId();
      wall.name = wallLetters(i);
      wall.start = i == 0 ? Vec2(0, 0) : move_(corner);
      if (i == 1) wall.start.y() = 0;  // the first wall runs along x, but for rounding
      wall.startCovariance =
          cornerCovariance(before, sigmaAt(before, corner), side, sigmaAt(side, corner), move_);
      made_.residuals.push_back({"wall " + wall.name + " against the scan", side.rms, 0});
      if (outline.seen[i] < kHardlySeen)
        made_.notes.push_back("Only " + fixed(100 * outline.seen[i], 0) + " % of wall " + wall.name +
                              " was seen: check it with a tape.");
      made_.room.walls.push_back(std::move(wall));
    }
  }

  void blocks() {
    const auto& walls = made_.room.walls;
    for (const ScanBlock& block : blocksOf(found_.outline))
      made_.notes.push_back(
          "Walls " + walls[block.first].name + " to " + walls[block.last].name +
          " bound a block that stands out by " + fixed(block.depth, 2) + " m, " + fixed(block.width, 2) +
          " m wide: a cupboard as high as the room looks like that, " + "with the room's wall behind it.");
  }

  void ceilingPart(const CeilingPlane& plane, const Ring& region) {
    CeilingPart part;
    for (const Vec2& p : region) part.region.push_back(move_(p));
    part.id = takeId();
    const std::string kind = plane.slope.isZero() ? "Ceiling" : "Sloped ceiling";
    part.name =
        made_.room.ceiling.empty() ? kind : kind + " " + std::to_string(made_.room.ceiling.size() + 1);
    part.anchor = move_(plane.anchor);
    part.height = {plane.height, Instrument::Scan, true};
    part.slope = move_.turned(plane.slope);
    made_.residuals.push_back({part.name + " against the scan", plane.rms, 0});
    made_.room.ceiling.push_back(std::move(part));
  }

  void ceiling() {
    for (const CeilingPlane& plane : found_.ceiling) {
      if (!plane.isPartial) ceilingPart(plane, {});
      for (const Ring& region : plane.regions) ceilingPart(plane, region);
    }
    if (!made_.room.ceiling.empty()) return;
    CeilingPart part;
    part.id = takeId();
    part.name = "Ceiling";
    part.height = notMeasured(2.4);
    made_.room.ceiling.push_back(std::move(part));
    made_.notes.push_back("The scan shows no ceiling: measure its height.");
  }

  void openings() {
    std::map<std::string, int> counts;
    for (const ScanOpening& found : found_.openings.found) {
      Opening opening = found.opening;
      opening.id = takeId();
      opening.wall = made_.room.walls[found.side].id;
      const std::string name = opening.kind == OpeningKind::Window    ? "window"
                               : opening.kind == OpeningKind::Passage ? "passage"
                                                                      : "door";
      opening.name = "Scanned " + name + " " + std::to_string(++counts[name]);
      made_.room.openings.push_back(std::move(opening));
    }
    for (std::size_t i = 0; i < found_.openings.notes.size(); ++i) {
      std::string note = found_.openings.notes[i];
      note.replace(note.find('%'), 1, made_.room.walls[found_.openings.noteSides[i]].name);
      made_.notes.push_back(std::move(note));
    }
    if (counts["door"] + counts["passage"] > 0)
      made_.notes.push_back(
          "What kind of door each opening has, and which way it opens, is a guess by its width.");
  }

  void fixtures() {
    std::map<FixtureKind, int> counts;
    for (Fixture fixture : found_.things.fixtures) {
      fixture.id = takeId();
      std::string name(nameOfKind(fixture.kind));
      fixture.name = "Scanned " + name + " " + std::to_string(++counts[fixture.kind]);
      auto& box = std::get<BoxShape>(fixture.shape);
      box.centre = move_(box.centre);
      box.heading += move_.angle;
      made_.room.fixtures.push_back(std::move(fixture));
    }
  }

  static std::string_view nameOfKind(FixtureKind kind) {
    for (const auto& [value, name] : enumNames(FixtureKind{}))
      if (value == kind) return kind == FixtureKind::Other ? "thing" : name;
    return "thing";
  }

  /// From the upright scan to the world, all at once, so that nothing is rounded twice.
  void scan(const ScanGeometry& upright, const Progress& progress) {
    RoomScan scan;
    scan.id = takeId();
    scan.name = "Scan";
    scan.sigma = std::max(instrumentSigma(Instrument::Scan, 1), found_.noise);
    const Mat3 turn =
        Eigen::AngleAxisd(move_.angle, Vec3::UnitZ()).toRotationMatrix() * found_.scan.fromUpright;
    const Vec3 shift =
        raised(move_.turned(Vec2(found_.scan.shift.head<2>())) + move_.shift, found_.scan.shift.z());
    std::vector<Eigen::Vector3f> points;
    points.reserve(upright.points.size());
    for (std::size_t i = 0; i < upright.points.size(); ++i) {
      if (i % kSamplesBetweenLooks == 0 && progress.stop()) return;
      points.push_back((turn * upright.points[i].cast<double>() + shift).cast<float>());
    }
    if (upright.isMesh()) {
      auto mesh = TriangleMesh::from(std::move(points), upright.triangles);
      if (mesh) scan.mesh = std::make_shared<const TriangleMesh>(std::move(*mesh));
    } else {
      scan.points = std::make_shared<const std::vector<Eigen::Vector3f>>(std::move(points));
    }
    made_.scans.push_back(std::move(scan));
  }

  void remarks() {
    for (const std::string& note : found_.outline.notes) made_.notes.push_back(note);
    const double degrees = 180 / kPi;
    const double tilt = std::acos(std::clamp(found_.scan.fromUpright(2, 2), -1.0, 1.0));
    if (tilt > 0.1 / degrees)
      made_.notes.push_back("The scan was tilted by " + fixed(tilt * degrees, 1) +
                            " degrees and has been levelled by its floor.");
    if (found_.fall > 0)
      made_.notes.push_back("The floor falls by " + fixed(found_.fall * degrees, 1) +
                            " degrees against the walls; the walls were taken for plumb.");
    made_.residuals.push_back({"floor against the scan", found_.scan.floorScatter, 0});
    if (found_.scan.floorScatter > kBentFloor && found_.scan.floorScatter > kMoreThanWalls * found_.noise)
      made_.notes.push_back("The floor is uneven by " + fixed(1000 * found_.scan.floorScatter, 0) +
                            " mm, or the scan is bent.");
    const ScanThings& things = found_.things;
    if (things.small > 0)
      made_.skipped.push_back(std::to_string(things.small) + (things.small == 1 ? " thing" : " things") +
                              " smaller than " + fixed(100 * kLeastThing, 0) +
                              " cm made no fixture; clearances still see the points.");
    if (things.tooMany > 0)
      made_.skipped.push_back("Of the things found, the " + std::to_string(things.fixtures.size()) +
                              " largest are proposed; clearances still see the points of " +
                              std::to_string(things.tooMany) + " more.");
    if (things.unrecognised > 0)
      made_.skipped.push_back(std::to_string(things.unrecognised) +
                              " points in the room belong to nothing recognised; clearances still see them.");
    if (things.outside > 0)
      made_.skipped.push_back(std::to_string(things.outside) +
                              " points lie beyond the walls; they stay in the scan.");
  }

  const Found& found_;
  PlanMove move_;
  std::uint32_t lastId_ = 0;
  RecognisedRoom made_;
};

}  // namespace

Result<RecognisedRoom> recogniseRoom(const ScanGeometry& upright, const Progress& progress) {
  bool isStopped = false;
  Progress sticky;  // stages look again after one that was stopped
  sticky.report = progress.report;
  sticky.cancelled = [&] { return isStopped = isStopped || progress.stop(); };
  const auto found = find(upright, sticky);
  if (!found) return tl::unexpected(found.error());
  auto made = Builder(*found).build(upright, sticky);
  if (isStopped) return cancelled();
  progress.at(1);
  return made;
}

}  // namespace baywright
