// SPDX-License-Identifier: Apache-2.0
#include "drawing/scene_scans.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "drawing/fixture_outline.h"
#include "drawing/scan_samples.h"
#include "job/room_geometry.h"
#include "survey/scan_cube_map.h"

namespace baywright::detail {
namespace {

constexpr double kCube = 0.05;
// More would make the 3D view slow where OpenGL runs on the processor.
constexpr std::size_t kMostCubes = 60'000;

/// Cubes of the scan that hold something, and whether the model accounts for each.
struct Cubes {
  double size = kCube;
  CubeMap map;

  Vec3 middle(std::uint32_t index) const {
    return size * (map.cube(index).cast<double>() + Vec3::Constant(0.5));
  }
};

Cubes cubesOf(const RoomScan& scan, double size) {
  Cubes cubes;
  cubes.size = size;
  forSamplesOf(scan, size / 2, {}, [&](const Eigen::Vector3f& p) { cubes.map.indexOf(cubeAt(p, size)); });
  return cubes;
}

/// Knows which places the model of a room accounts for.
class Model {
 public:
  Model(const Room& room, double reach) : room_(room), lines_(wallLines(room)), reach_(reach) {
    for (const Fixture& fixture : room.fixtures) fixtures_.push_back({&fixture, outlineOf(fixture.shape)});
  }

  bool explains(const Vec3& p) const {
    if (lines_.empty()) return false;
    const Vec2 at = flat(p);
    if (p.z() < reach_ || !isInside(room_, at)) return true;
    const auto ceiling = ceilingHeightAt(room_, at);
    return (ceiling && p.z() > *ceiling - reach_) || isAtWall(at) || isInFixture(at, p.z());
  }

 private:
  bool isAtWall(const Vec2& at) const {
    return std::any_of(lines_.begin(), lines_.end(), [&](const WallLine& line) {
      const double along = (at - line.start).dot(line.along);
      return std::abs((at - line.start).dot(line.inward)) < reach_ && along > -reach_ &&
             along < line.length + reach_;
    });
  }
  bool isInFixture(const Vec2& at, double z) const {
    return std::any_of(fixtures_.begin(), fixtures_.end(), [&](const auto& entry) {
      const auto& [fixture, ring] = entry;
      if (z < fixture->bottom.value - reach_ || z > fixture->top.value + reach_) return false;
      return locate(ring, at) != Location::Outside ||
             (closestOnBoundary(Polygon{ring, {}}, at).point - at).norm() < reach_;
    });
  }

  const Room& room_;
  std::vector<WallLine> lines_;
  std::vector<std::pair<const Fixture*, Ring>> fixtures_;
  double reach_;
};

void addFreeFaces(MeshBuilder& mesh, const Cubes& cubes, std::uint32_t index) {
  const CubeMap::Cube cube = cubes.map.cube(index);
  for (int axis = 0; axis < 3; ++axis) {
    for (const int side : {-1, 1}) {
      CubeMap::Cube beside = cube;
      beside[axis] += side;
      if (std::abs(beside[axis]) >= CubeMap::kMost || cubes.map.existing(beside)) continue;
      const int u = (axis + 1) % 3;
      const int v = (axis + 2) % 3;
      std::array<Vec3, 4> corners;
      for (int i = 0; i < 4; ++i) {
        CubeMap::Cube corner = cube;
        corner[axis] += side > 0 ? 1 : 0;
        // Counter-clockwise seen from outside.
        const bool first = i == 1 || i == 2;
        const bool second = i >= 2;
        corner[side > 0 ? u : v] += first ? 1 : 0;
        corner[side > 0 ? v : u] += second ? 1 : 0;
        corners[static_cast<std::size_t>(i)] = cubes.size * corner.cast<double>();
      }
      mesh.addFace(corners);
    }
  }
}

/// `cubesAt(size)` gives the scan's cubes of that size.
template <class CubesAt>
MeshBuilder leftover(const Room& room, const CubesAt& cubesAt) {
  for (double size = kCube;; size *= 2) {
    const Cubes& cubes = cubesAt(size);
    // Noise and what recognition rounds off stay within a cube and a half.
    const Model model(room, 1.5 * size);
    std::vector<std::uint32_t> left;
    for (std::uint32_t i = 0; i < cubes.map.size(); ++i) {
      if (!model.explains(cubes.middle(i))) left.push_back(i);
    }
    if (left.size() > kMostCubes) continue;
    MeshBuilder mesh;
    for (const std::uint32_t index : left) addFreeFaces(mesh, cubes, index);
    return mesh;
  }
}

bool isSame(const RoomScan& a, const RoomScan& b) {
  return a.points == b.points && a.mesh == b.mesh;
}

}  // namespace

struct ScanLeftovers::Entry {
  RoomScan scan;
  Room room;
  MeshBuilder mesh;
  std::map<double, Cubes> cubes;  ///< by size: a wall that is dragged asks for the same again and again

  void lookAt(const Room& seen) {
    room = seen;
    mesh = leftover(room, [this](double size) -> const Cubes& {
      const auto found = cubes.find(size);
      return found != cubes.end() ? found->second : cubes.emplace(size, cubesOf(scan, size)).first->second;
    });
  }
};

ScanLeftovers::ScanLeftovers() = default;
ScanLeftovers::~ScanLeftovers() = default;

MeshBuilder leftoverOf(const RoomScan& scan, const Room& room) {
  return ScanLeftovers().of(scan, room);
}

const MeshBuilder& ScanLeftovers::of(const RoomScan& scan, const Room& room) {
  auto found = std::find_if(entries_.begin(), entries_.end(),
                            [&](const auto& entry) { return isSame(entry->scan, scan); });
  if (found == entries_.end()) {
    entries_.push_back(std::make_unique<Entry>(Entry{scan, {}, {}, {}}));
    found = entries_.end() - 1;
    (*found)->lookAt(room);
  } else if (!((*found)->room == room)) {
    (*found)->lookAt(room);
  }
  return (*found)->mesh;
}

void ScanLeftovers::keepOnly(const std::vector<RoomScan>& scans) {
  std::erase_if(entries_, [&](const auto& entry) {
    return std::none_of(scans.begin(), scans.end(),
                        [&](const RoomScan& scan) { return isSame(scan, entry->scan); });
  });
}

std::vector<SceneSolid> scanSolids(const SceneInput& input, ScanLeftovers& leftovers) {
  std::vector<SceneSolid> solids;
  leftovers.keepOnly(input.job.roomScans);
  for (const RoomScan& scan : input.job.roomScans) {
    if (!scan.visible) continue;
    SceneLook look;
    look.id = scan.id;
    look.layer = Layer::Survey;
    addSolid(solids, leftovers.of(scan, input.job.room), look);
  }
  return solids;
}

}  // namespace baywright::detail
