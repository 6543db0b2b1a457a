// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_plumb.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

#include "survey/scan_cube_map.h"
#include "survey/scan_robust.h"

namespace baywright {
namespace {

constexpr double kLeastWall = 2.0;     ///< square metres
constexpr double kLeastSpread = 0.3;   ///< metres of height, as a standard deviation
constexpr double kHuber = 0.003;       ///< radians: beyond it a wall is not plumb itself
constexpr double kWallBand = 0.08;     ///< metres either side of a wall's line
constexpr double kLeastReach = 0.015;  ///< metres
constexpr double kFloorBand = 0.15;    ///< metres either side of the floor that may be floor

struct WallLean {
  Vec2 normal{1, 0};
  double lean = 0;
  double weight = 0;
};

/// A patch on a wall: (1, place along it, height), and how far it lies off the wall's line.
struct WallPlace {
  Eigen::Vector3d row = Eigen::Vector3d::Zero();
  double distance = 0;
  double area = 0;
};

std::vector<WallPlace> placesOn(const LevelScan& scan, const ScanLine& line) {
  std::vector<WallPlace> places;
  for (const ScanPatch& patch : scan.flat.patches) {
    const Vec2 p = flat(patch.centre);
    const double distance = line.distance(p);
    if (std::abs(distance) > kWallBand || std::abs(patch.normal.z()) > 0.3) continue;
    if (std::abs(flat(patch.normal).normalized().dot(line.normal)) < 0.94) continue;
    places.push_back(
        {{1, line.along().dot(p) - line.middle, patch.centre.z()}, distance, patch.size * patch.size});
  }
  return places;
}

/// By least squares, reweighted so that the leaf of a door or a radiator, low and a little off the wall, does
/// not make it lean.
std::optional<WallLean> leanOf(const LevelScan& scan, const ScanLine& line) {
  const auto places = placesOn(scan, line);
  Eigen::Vector3d plane = Eigen::Vector3d::Zero();
  double rms = kWallBand / kTukey;
  double weights = 0;
  double heights = 0;
  double squares = 0;
  for (int round = 0; round < 6; ++round) {
    const double reach = std::clamp(kTukey * rms, kLeastReach, kWallBand);
    Eigen::Vector3d sums = Eigen::Vector3d::Zero();
    Mat3 products = Mat3::Zero();
    double residuals = 0;
    weights = heights = squares = 0;
    for (const WallPlace& place : places) {
      const double residual = place.distance - plane.dot(place.row);
      const double u = residual / reach;
      if (std::abs(u) >= 1) continue;
      const double weight = place.area * (1 - u * u) * (1 - u * u);
      products += weight * place.row * place.row.transpose();
      sums += weight * place.distance * place.row;
      weights += weight;
      residuals += weight * residual * residual;
      heights += weight * place.row.z();
      squares += weight * place.row.z() * place.row.z();
    }
    if (weights < kLeastWall) return std::nullopt;
    plane = products.ldlt().solve(sums);
    rms = std::sqrt(residuals / weights);
  }
  const double spread = std::sqrt(std::max(0.0, squares / weights - heights * heights / weights / weights));
  if (spread < kLeastSpread) return std::nullopt;
  return WallLean{line.normal, plane.z(), weights * spread * spread};
}

struct FloorPoint {
  Vec3 place = Vec3::Zero();
  double share = 0;  ///< of its square's say
};

std::vector<FloorPoint> floorPoints(const LevelScan& scan, const Progress& progress) {
  std::vector<FloorPoint> floor;
  CubeMap squares;
  std::vector<std::uint32_t> squareOf;
  std::vector<double> counts;
  for (std::size_t i = 0; i < scan.samples.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) return {};
    const std::uint32_t patch = scan.flat.patchOf[i];
    // Cubes cut noise in two: samples without a patch are as good as their neighbours.
    if (patch != kNoPatch && std::abs(scan.flat.patches[patch].normal.z()) < 0.9) continue;
    if (std::abs(scan.samples[i].z()) > kFloorBand) continue;
    if (!scan.roof.isIndoors(scan.samples[i].cast<double>())) continue;
    CubeMap::Cube at = cubeAt(scan.samples[i], kPatchSize);
    at.z() = 0;
    squareOf.push_back(squares.indexOf(at));
    if (squareOf.back() == counts.size()) counts.push_back(0);
    counts[squareOf.back()] += 1;
    floor.push_back({scan.samples[i].cast<double>(), 0});
  }
  for (std::size_t i = 0; i < floor.size(); ++i) floor[i].share = 1 / counts[squareOf[i]];
  return floor;
}

}  // namespace

std::optional<Vec2> commonLean(const LevelScan& scan, const std::vector<ScanLine>& lines) {
  std::vector<WallLean> walls;
  for (const ScanLine& line : lines)
    if (const auto wall = leanOf(scan, line)) walls.push_back(*wall);
  Vec2 lean = Vec2::Zero();
  for (int round = 0; round < 10; ++round) {
    Mat2 squares = Mat2::Zero();
    Vec2 sums = Vec2::Zero();
    for (const WallLean& wall : walls) {
      const double residual = std::abs(wall.lean - wall.normal.dot(lean));
      const double weight = wall.weight * (round == 0 || residual < kHuber ? 1 : kHuber / residual);
      squares += weight * wall.normal * wall.normal.transpose();
      sums += weight * wall.lean * wall.normal;
    }
    const Eigen::SelfAdjointEigenSolver<Mat2> solver(squares);
    if (!(solver.eigenvalues()[0] > 0.05 * solver.eigenvalues()[1])) return std::nullopt;
    lean = squares.ldlt().solve(sums);
  }
  return lean;
}

LevelScan settledOnFloor(LevelScan scan, const Progress& progress) {
  const auto floor = floorPoints(scan, progress);
  Vec3 plane = Vec3::Zero();  // z = plane . (1, x, y)
  double rms = kFloorBand / kTukey;
  for (int round = 0; round < 6; ++round) {
    if (progress.stop()) return scan;
    const double reach = std::clamp(kTukey * rms, 0.02, kFloorBand);
    Mat3 products = Mat3::Zero();
    Vec3 sums = Vec3::Zero();
    double weights = 0;
    double squares = 0;
    for (const auto& [p, share] : floor) {
      const Vec3 row(1, p.x(), p.y());
      const double residual = p.z() - plane.dot(row);
      const double u = residual / reach;
      if (std::abs(u) >= 1) continue;
      const double weight = share * (1 - u * u) * (1 - u * u);
      products += weight * row * row.transpose();
      sums += weight * p.z() * row;
      weights += weight;
      squares += weight * residual * residual;
    }
    const Eigen::LDLT<Mat3> solver(products);
    if (weights <= 0 || solver.info() != Eigen::Success || solver.rcond() < 1e-6) return scan;
    plane = solver.solve(sums);
    rms = std::sqrt(squares / weights);
  }
  ScanLevel level;
  const Vec3 up = Vec3(-plane.y(), -plane.z(), 1).normalized();
  level.levelFromScan = Eigen::Quaterniond::FromTwoVectors(up, Vec3::UnitZ()).toRotationMatrix();
  level.floor = up.z() * plane.x();
  scan.floorScatter = rms;
  return levelled(std::move(scan), level);
}

LevelScan plumbed(LevelScan scan, const Vec2& lean) {
  ScanLevel level;
  const Vec3 up = Vec3(lean.x(), lean.y(), 1).normalized();
  level.levelFromScan = Eigen::Quaterniond::FromTwoVectors(up, Vec3::UnitZ()).toRotationMatrix();
  double heights = 0;
  double weights = 0;
  for (const ScanPatch& patch : scan.flat.patches) {
    if (std::abs(patch.centre.z()) > kFloorBand || std::abs(patch.normal.z()) < 0.9) continue;
    if (!scan.roof.isIndoors(patch.centre)) continue;
    const double weight = patch.size * patch.size;
    heights += weight * (level.levelFromScan * patch.centre).z();
    weights += weight;
  }
  level.floor = weights > 0 ? heights / weights : 0;
  const Vec3 normal = level.levelFromScan.col(2);  // of the floor, which was z = 0
  scan.floorSlope = -normal.head<2>() / normal.z();
  scan.floorMiddle = -level.floor;
  return levelled(std::move(scan), level);
}

}  // namespace baywright
