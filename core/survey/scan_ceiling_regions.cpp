// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_ceiling_regions.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/polygon_sets.h"
#include "survey/scan_cube_map.h"
#include "survey/scan_faces.h"

namespace baywright {
namespace {

constexpr double kSnap = 0.15;         ///< metres to a face or wall that the end of a plane goes to
constexpr double kOnPlane = 0.03;      ///< metres from a plane that tell where it ends
constexpr double kEndBin = 0.02;       ///< metres
constexpr double kSameLine = 0.05;     ///< metres between two lines that are one
constexpr double kParallel = 0.998;    ///< cosine of 3.6 degrees
constexpr double kLeastCrease = 0.05;  ///< difference of slopes below which planes meet nowhere in particular
constexpr double kHangsBelow = 0.03;   ///< metres
constexpr double kLeastRegion = 0.10;  ///< square metres
constexpr double kEdgeCost = 0.10;     ///< square metres of other planes' spots a metre of edge is worth
constexpr int kSweeps = 8;
constexpr std::size_t kMostDividers = 44;

/// Bands of height, as ScanLine::seen has them, in which the face of a step is seen, and a wall besides.
constexpr std::uint32_t kStepBands = 0b111u << (kSeenBands - 3);
constexpr std::uint32_t kWallBands = 0b111110u;

/// Places on each plane: samples close to it, in or beside the squares of its spots.
std::vector<std::vector<Vec2>> placesOn(const std::vector<CeilingPlane>& planes,
                                        const std::vector<CeilingSpot>& spots, const LevelScan& scan,
                                        const Progress& progress) {
  const auto squareAt = [](const Vec2& p) { return cubeAt(raised(p, 0).cast<float>(), kPatchSize); };
  CubeMap squares;
  std::vector<std::uint32_t> owners;  // a bit a plane
  for (const CeilingSpot& spot : spots) {
    if (spot.plane < 0) continue;
    for (int n = 0; n < 9; ++n) {
      const auto square = squares.indexOf(squareAt(spot.place) + CubeMap::Cube(n % 3 - 1, n / 3 - 1, 0));
      if (square == owners.size()) owners.push_back(0);
      owners[square] |= 1u << spot.plane;
    }
  }
  std::vector<std::vector<Vec2>> places(planes.size());
  for (std::size_t i = 0; i < scan.samples.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) return places;
    const Vec3 p = scan.samples[i].cast<double>();
    if (p.z() < RoofMap::kLeastHeadroom) continue;
    const auto square = squares.existing(squareAt(flat(p)));
    if (!square) continue;
    for (std::size_t plane = 0; plane < planes.size(); ++plane)
      if ((owners[*square] >> plane & 1) && std::abs(p.z() - planes[plane].at(flat(p))) < kOnPlane)
        places[plane].push_back(flat(p));
  }
  return places;
}

/// Along an axis, where places become half as dense as they usually are.
std::optional<std::pair<double, double>> endsAlong(const Vec2& axis, const std::vector<Vec2>& places) {
  if (places.empty()) return std::nullopt;
  double low = axis.dot(places[0]);
  double high = low;
  for (const Vec2& p : places) {
    low = std::min(low, axis.dot(p));
    high = std::max(high, axis.dot(p));
  }
  std::vector<double> counts(static_cast<std::size_t>((high - low) / kEndBin) + 1, 0);
  for (const Vec2& p : places) counts[static_cast<std::size_t>((axis.dot(p) - low) / kEndBin)] += 1;
  auto sorted = counts;
  const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
  std::nth_element(sorted.begin(), middle, sorted.end());
  std::size_t first = 0;
  std::size_t last = counts.size() - 1;
  while (first < last && counts[first] < 0.5 * *middle) ++first;
  while (last > first && counts[last] < 0.5 * *middle) --last;
  return std::pair(low + kEndBin * static_cast<double>(first), low + kEndBin * static_cast<double>(last + 1));
}

class Dividers {
 public:
  explicit Dividers(const ScanOutline& outline) : outline_(outline) {
    for (const ScanLine& side : outline.sides) add(side);
  }

  /// Faces of steps, and of beams too: they cut where nothing changes, which does no harm.
  void addSteps(const std::vector<ScanLine>& lines) {
    for (const ScanLine& line : lines) {
      double steps = 0;
      double walls = 0;
      for (const std::uint32_t seen : line.seen) {
        steps += (seen & kStepBands) && !(seen & kWallBands);
        walls += (seen & kWallBands) != 0;
      }
      if (steps * kSeenStep > 0.5 && steps > walls && crossesFloor(line)) add(line);
    }
  }

  void addCreases(const std::vector<CeilingPlane>& planes) {
    for (std::size_t i = 0; i < planes.size(); ++i)
      for (std::size_t j = 0; j < i; ++j) {
        const Vec2 slope = planes[i].slope - planes[j].slope;
        if (slope.norm() < kLeastCrease) continue;
        ScanLine crease;
        crease.normal = slope.normalized();
        crease.offset = (planes[j].at(Vec2::Zero()) - planes[i].at(Vec2::Zero())) / slope.norm();
        if (crossesFloor(crease)) add(crease);
      }
  }

  /// Where each plane ends along the walls, or the face or wall near there.
  void addEnds(const std::vector<std::vector<Vec2>>& places, const std::vector<ScanLine>& lines) {
    const Vec2 along = longestSide();
    for (const std::vector<Vec2>& own : places)
      for (const Vec2& axis : {along, leftOf(along)})
        if (const auto ends = endsAlong(axis, own)) {
          addAcross(axis, ends->first, lines);
          addAcross(axis, ends->second, lines);
        }
  }

  const std::vector<ScanLine>& lines() const { return lines_; }

 private:
  Vec2 longestSide() const {
    std::size_t longest = 0;
    const std::size_t n = outline_.corners.size();
    const auto length = [&](std::size_t i) {
      return (outline_.corners[(i + 1) % n] - outline_.corners[i]).norm();
    };
    for (std::size_t i = 1; i < n; ++i)
      if (length(i) > length(longest)) longest = i;
    return outline_.sides[longest].along();
  }

  bool crossesFloor(const ScanLine& line) const {
    double low = 0;
    double high = 0;
    for (const Vec2& corner : outline_.corners) {
      low = std::min(low, line.distance(corner));
      high = std::max(high, line.distance(corner));
    }
    return low < -kSameLine && high > kSameLine;
  }

  void addAcross(const Vec2& axis, double place, const std::vector<ScanLine>& lines) {
    ScanLine end;
    end.normal = axis;
    end.offset = place;
    double nearest = kSnap;
    for (const ScanLine& line : lines) {
      const double facing = line.normal.dot(axis);
      if (std::abs(facing) < kParallel) continue;
      const double at = line.offset / facing;
      if (std::abs(at - place) >= nearest) continue;
      nearest = std::abs(at - place);
      end.normal = line.normal;
      end.offset = line.offset;
    }
    add(end);
  }

  void add(const ScanLine& line) {
    if (lines_.size() >= kMostDividers) return;
    const Vec2 middle = centroid({outline_.corners, {}});
    for (const ScanLine& known : lines_)
      if (std::abs(known.normal.dot(line.normal)) > kParallel) {
        const double sign = known.normal.dot(line.normal) < 0 ? -1 : 1;
        if (std::abs(known.distance(middle) - sign * line.distance(middle)) < kSameLine) return;
      }
    lines_.push_back(line);
  }

  const ScanOutline& outline_;
  std::vector<ScanLine> lines_;
};

/// Which plane each piece of the floor belongs to.
class Labels {
 public:
  Labels(const PlanFaces& plan, const ScanOutline& outline, const std::vector<CeilingSpot>& spots,
         const std::vector<ScanLine>& lines, std::size_t planes)
      : plan_(plan),
        votes_(plan.faces.size(), std::vector<double>(planes)),
        of_(plan.faces.size(), kOutside) {
    for (std::size_t f = 0; f < of_.size(); ++f)
      if (locate(outline.corners, centroid({plan.faces[f].ring, {}})) == Location::Inside) of_[f] = kNone;
    vote(spots, lines);
    for (std::size_t f = 0; f < of_.size(); ++f) {
      const auto most = std::max_element(votes_[f].begin(), votes_[f].end());
      if (of_[f] != kOutside && *most > 0) of_[f] = static_cast<int>(most - votes_[f].begin());
    }
    for (int sweep = 0; sweep < kSweeps && smooth(); ++sweep) {
    }
  }

  int of(std::size_t face) const { return of_[face]; }

  static constexpr int kOutside = -2;
  static constexpr int kNone = -1;

 private:
  void vote(const std::vector<CeilingSpot>& spots, const std::vector<ScanLine>& lines) {
    for (const CeilingSpot& spot : spots) {
      if (spot.plane < 0) continue;
      const std::uint64_t sides = sidesOf(lines, spot.place);
      for (std::size_t f = 0; f < plan_.faces.size(); ++f)
        if (plan_.faces[f].sides == sides) votes_[f][static_cast<std::size_t>(spot.plane)] += spot.area;
    }
  }

  /// True where something changed.
  bool smooth() {
    bool changed = false;
    for (std::size_t f = 0; f < of_.size(); ++f) {
      if (of_[f] == kOutside) continue;
      std::vector<double> worth = votes_[f];
      for (const FaceEdge& edge : plan_.faces[f].edges) {
        if (edge.neighbour == kNoFace) continue;
        const int beside = of_[static_cast<std::size_t>(edge.neighbour)];
        if (beside >= 0) worth[static_cast<std::size_t>(beside)] += kEdgeCost * plan_.length(edge);
      }
      const auto best = std::max_element(worth.begin(), worth.end());
      if (*best <= 0 || static_cast<int>(best - worth.begin()) == of_[f]) continue;
      of_[f] = static_cast<int>(best - worth.begin());
      changed = true;
    }
    return changed;
  }

  const PlanFaces& plan_;
  std::vector<std::vector<double>> votes_;
  std::vector<int> of_;
};

/// Without holes: cut through the middle of each.
void addSimple(const Polygon& polygon, std::vector<Ring>& rings, int depth = 0) {
  if (polygon.holes.empty() || depth > 8) {
    const Ring ring = simplified(polygon.outer, 0.001);
    if (ring.size() >= 3 && signedArea(ring) > kLeastRegion) rings.push_back(ring);
    return;
  }
  const Vec2 cut = centroid({polygon.holes[0], {}});
  constexpr double kFar = 1000;
  for (const double side : {-kFar, kFar}) {
    const Ring half{{cut.x(), cut.y() - kFar},
                    {cut.x() + side, cut.y() - kFar},
                    {cut.x() + side, cut.y() + kFar},
                    {cut.x(), cut.y() + kFar}};
    const auto pieces = intersectionOf({polygon}, {Polygon{half, {}}});
    if (!pieces) continue;
    for (const Polygon& piece : *pieces) addSimple(piece, rings, depth + 1);
  }
}

}  // namespace

void giveRegions(std::vector<CeilingPlane>& planes, const std::vector<CeilingSpot>& spots,
                 const LevelScan& scan, const ScanOutline& outline, const std::vector<ScanLine>& lines,
                 const Progress& progress) {
  if (planes.size() < 2) return;
  Dividers dividers(outline);
  dividers.addSteps(lines);
  dividers.addCreases(planes);
  dividers.addEnds(placesOn(planes, spots, scan, progress), lines);
  Vec2 low = outline.corners[0];
  Vec2 high = low;
  for (const Vec2& corner : outline.corners) {
    low = low.cwiseMin(corner);
    high = high.cwiseMax(corner);
  }
  const PlanFaces plan = facesBetween(dividers.lines(), low - Vec2(1, 1), high + Vec2(1, 1));
  const Labels labels(plan, outline, spots, dividers.lines(), planes.size());
  for (std::size_t p = 0; p < planes.size(); ++p) {
    PolygonSet own;
    double wrong = 0;
    for (std::size_t f = 0; f < plan.faces.size(); ++f) {
      const int label = labels.of(f);
      if (label < 0) continue;
      const Vec2 middle = centroid({plan.faces[f].ring, {}});
      if (label == static_cast<int>(p))
        own.push_back({plan.faces[f].ring, {}});
      else if (planes[p].at(middle) < planes[static_cast<std::size_t>(label)].at(middle) - kHangsBelow)
        wrong += plan.faces[f].area;
    }
    if (wrong < kLeastRegion) continue;
    const auto joined = unionOf(own);
    if (!joined) continue;
    for (const Polygon& polygon : *joined) addSimple(polygon, planes[p].regions);
    planes[p].isPartial = true;
  }
  // A plane that lost all its places to others is none.
  std::erase_if(planes, [](const CeilingPlane& plane) { return plane.isPartial && plane.regions.empty(); });
}

}  // namespace baywright
