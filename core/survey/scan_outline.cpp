// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_outline.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <map>
#include <set>

#include "survey/scan_coverage.h"
#include "survey/scan_faces.h"
#include "survey/scan_min_cut.h"
#include "survey/scan_ring.h"

namespace baywright {
namespace {

/// Square metres a metre of edge without a wall: the dearest at which enough of the floor is left. Dear gaps
/// keep out what is seen through a wide opening; cheap ones take in a room of which a wall was not seen.
constexpr double kGapCosts[] = {1.8, 1.0, 0.4};
constexpr double kHiddenGap = 0.25;    ///< of that, where nothing was seen on one side of the edge
constexpr double kGoesOn = 1.5;        ///< metres that a wall may go on unseen
constexpr double kNoWall = 5;          ///< times a gap: along a line that nobody saw, off its jog
constexpr double kBeyondAll = 1e6;     ///< of what reaches the frame round the scan: no room does
constexpr double kBesideEdge = 0.15;   ///< metres from an edge at which that is looked at
constexpr double kEnoughFloor = 0.5;   ///< of what the cheapest gives
constexpr double kEdgeCost = 0.02;     ///< and with one: of two equal outlines the simpler
constexpr double kUnseenInside = 0.6;  ///< weight of unseen floor inside against seen floor outside
constexpr double kGate = 0.6;  ///< share of an edge with wall up at the ceiling that makes a lintel of it
constexpr double kOpenBelow = 0.5;      ///< share of a lintel that must be open below to be passed under
constexpr double kSeenBeyond = 0.7;     ///< of the floor beyond,
constexpr double kClosedBeyond = 0.45;  ///< and of its own edge, for it to be part of the room
constexpr double kShallow = 0.50;       ///< metres under a lintel that are the depth of an opening
constexpr double kDeepestReveal = 0.30;
constexpr double kLeastReveal = 0.05;     ///< metres that a leaf lies back
constexpr double kShortestSide = 0.08;    ///< metres: a jog that a scan can be trusted with
constexpr double kNoStep = 0.03;          ///< metres: a step that is none
constexpr double kShortestUnseen = 0.20;  ///< where hardly any of it was seen
constexpr double kHardlySeen = 0.25;
constexpr double kShortestBend = 1.00;  ///< between walls nearly in line: a bowed wall is one wall
constexpr double kBend = 0.995;         ///< cosine of 6 degrees
constexpr double kAlike = 0.985;        ///< cosine of 10 degrees
constexpr double kAskew = 0.5;          ///< cosine of 60 degrees
constexpr double kFrameMargin = 0.5;    ///< metres

/// Points in two bands, or overhead, where little but walls and lintels stands, make a place of a line a
/// wall's.
constexpr std::uint32_t kUpperBands = 0b11111u << (kSeenBands - 5);
constexpr std::uint32_t kTopBand = 1u << (kSeenBands - 1);
constexpr std::uint32_t kLintelBand =
    1u << (kSeenBands - 2);                        ///< likewise, but for the front of a high cupboard
constexpr std::uint32_t kPersonBands = 0b111110u;  ///< from a tenth to six tenths of the height

/// What stands on an edge: shares of its length.
struct EdgeFacts {
  double wall = 0;
  double top = 0;
  double openBelow = 1;
};

EdgeFacts factsOf(const ScanLine& line, const Vec2& a, const Vec2& b) {
  const double ta = line.along().dot(a);
  const double tb = line.along().dot(b);
  const auto first = static_cast<long>(std::floor((std::min(ta, tb) - line.seenFrom) / kSeenStep));
  const auto last = static_cast<long>(std::floor((std::max(ta, tb) - line.seenFrom) / kSeenStep));
  double walls = 0;
  double tops = 0;
  double open = 0;
  for (long i = first; i <= last; ++i) {
    const bool isKnown = i >= 0 && i < static_cast<long>(line.seen.size());
    const std::uint32_t seen = isKnown ? line.seen[static_cast<std::size_t>(i)] : 0;
    if (std::popcount(seen) >= 2 || (seen & kUpperBands)) walls += 1;
    const bool isFront = std::popcount(seen & kPersonBands) >= 3;
    if ((seen & kTopBand) || ((seen & kLintelBand) && !isFront)) tops += 1;
    if (!(seen & kPersonBands)) open += 1;
  }
  const auto count = static_cast<double>(last - first + 1);
  return {walls / count, tops / count, open / count};
}

/// A side that goes on nearly as one of its neighbours does, or leads askew from one wall to another beside
/// it.
bool isBend(const SideRing& ring, std::size_t side, const std::vector<ScanLine>& lines) {
  const std::size_t n = ring.lines.size();
  const auto normal = [&](std::size_t i) -> const Vec2& {
    return lines[static_cast<std::size_t>(ring.lines[i % n])].normal;
  };
  const double after = std::abs(normal(side).dot(normal(side + 1)));
  const double before = std::abs(normal(side).dot(normal(side + n - 1)));
  if (after > kBend || before > kBend) return true;
  return std::abs(normal(side + 1).dot(normal(side + n - 1))) > kAlike && std::min(after, before) > kAskew;
}

/// The wall's own face where a side runs along the leaf of a wide door that lies back in it: a line before
/// the side with a lintel along it, and with wall at both of its ends where the side has none.
const ScanLine* faceBefore(const ScanLine& side, const Vec2& a, const Vec2& b,
                           const std::vector<ScanLine>& lines) {
  const Vec2 inward = leftOf((b - a).normalized());
  constexpr int kPlaces = 40;
  constexpr int kEndPlaces = 3;
  for (const ScanLine& line : lines) {
    if (std::abs(line.normal.dot(inward)) < kBend) continue;
    const Vec2 middle = 0.5 * (a + b);
    const double before = -line.distance(middle) * (line.normal.dot(inward) < 0 ? -1 : 1);
    if (before < kLeastReveal || before > kDeepestReveal) continue;
    int lintel = 0;
    bool atStart = false;
    bool atEnd = false;
    for (int i = 0; i < kPlaces; ++i) {
      const Vec2 from = a + (b - a) * i / kPlaces;
      const Vec2 to = a + (b - a) * (i + 1) / kPlaces;
      const EdgeFacts face = factsOf(line, from, to);
      const EdgeFacts back = factsOf(side, from, to);
      lintel += face.top > 0.5 ? 1 : 0;
      const bool isJamb = face.wall > 0.5 && back.wall < 0.5;
      atStart |= isJamb && i < kEndPlaces;
      atEnd |= isJamb && i >= kPlaces - kEndPlaces;
    }
    // Of a low lintel only parts are told from the ceiling.
    if (lintel >= 0.2 * kPlaces && atStart && atEnd) return &line;
  }
  return nullptr;
}

/// Sides that have become one line, with nothing but a step of no height between them.
void joinInLine(ScanOutline& outline) {
  for (std::size_t i = 0; i < outline.sides.size() && outline.sides.size() > 4;) {
    const std::size_t n = outline.sides.size();
    const std::size_t step = (i + 1) % n;
    const std::size_t next = (i + 2) % n;
    const ScanLine& a = outline.sides[i];
    const ScanLine& b = outline.sides[next];
    const auto onFirst = [&](const Vec2& p) -> Vec2 { return p - a.distance(p) * a.normal; };
    const bool isOne = a.normal.dot(b.normal) > kBend &&
                       std::abs(b.distance(onFirst(outline.corners[step]))) < kNoStep &&
                       std::abs(b.distance(onFirst(outline.corners[(next + 1) % n]))) < kNoStep;
    if (!isOne || std::abs(a.normal.dot(outline.sides[step].normal)) > kAskew) {
      ++i;
      continue;
    }
    outline.seen[i] = std::max(outline.seen[i], outline.seen[next]);
    for (const std::size_t gone : {std::max(step, next), std::min(step, next)}) {
      const auto at = static_cast<std::ptrdiff_t>(gone);
      outline.sides.erase(outline.sides.begin() + at);
      outline.seen.erase(outline.seen.begin() + at);
      outline.corners.erase(outline.corners.begin() + at);
    }
    i = 0;
  }
}

class Chooser {
 public:
  Chooser(const std::vector<ScanLine>& lines, const PlanFaces& plan, const PlanCoverage& coverage)
      : lines_(lines), plan_(plan), coverage_(coverage), seen_(seenShares(coverage, plan, lines)) {}

  std::vector<bool> choose(std::vector<std::string>& notes) {
    double most = 0;
    for (auto cost = std::rbegin(kGapCosts); cost != std::rend(kGapCosts); ++cost) {
      auto chosen = cheapest(*cost);
      const double floor = seenFloor(chosen);
      most = std::max(most, floor);
      if (floor >= kEnoughFloor * most) inside_ = std::move(chosen);
    }
    return withoutWhatIsBeyond(notes);
  }

 private:
  EdgeFacts facts(const FaceEdge& edge) const {
    if (edge.line == kFrameEdge) return {};
    return factsOf(lines_[static_cast<std::size_t>(edge.line)],
                   plan_.vertices[static_cast<std::size_t>(edge.from)],
                   plan_.vertices[static_cast<std::size_t>(edge.to)]);
  }

  /// What a metre of an edge without a wall costs, as a share of the full gap: less where a wall may be that
  /// was not seen, that is where nothing was seen on one side of it and its line goes on as a wall close by.
  double gapShare(const FaceEdge& edge) const {
    if (edge.line == kFrameEdge) return 1;
    const ScanLine& line = lines_[static_cast<std::size_t>(edge.line)];
    const Vec2& a = plan_.vertices[static_cast<std::size_t>(edge.from)];
    const Vec2& b = plan_.vertices[static_cast<std::size_t>(edge.to)];
    const Vec2 across = kBesideEdge * leftOf((b - a).normalized());
    const int steps = std::max(1, static_cast<int>((b - a).norm() / kSeenStep));
    double cost = 0;
    for (int i = 0; i < steps; ++i) {
      const Vec2 p = a + (i + 0.5) / steps * (b - a);
      const bool isOpen = coverage_.at(p + across) > 0 && coverage_.at(p - across) > 0;
      const bool mayBe = mayGoOn(line, line.along().dot(p));
      cost += !mayBe && line.area == 0 ? kNoWall : isOpen || !mayBe ? 1 : kHiddenGap;
    }
    return cost / steps;
  }

  /// A line that nobody saw (scan_hidden_lines.h) is a wall where it was put, any other near where it was
  /// seen.
  static bool mayGoOn(const ScanLine& line, double along) {
    const auto step = [&](double place) {
      return static_cast<long>(std::floor((place - line.seenFrom) / kSeenStep));
    };
    const auto last = static_cast<long>(line.seen.size()) - 1;
    if (line.area == 0) return step(along) >= -1 && step(along) <= last + 1;
    const long to = std::min(last, step(along + kGoesOn));
    for (long i = std::max(0l, step(along - kGoesOn)); i <= to; ++i)
      if (std::popcount(line.seen[static_cast<std::size_t>(i)]) >= 3) return true;
    return false;
  }

  std::vector<bool> cheapest(double gapCost) const {
    MinCut cut(plan_.faces.size());
    for (std::size_t f = 0; f < plan_.faces.size(); ++f) {
      const PlanFace& face = plan_.faces[f];
      cut.cost(f, kUnseenInside * face.area * (1 - seen_[f].share), face.area * seen_[f].worth);
      for (const FaceEdge& edge : face.edges) {
        const double gap = gapCost * (1 - facts(edge).wall) * gapShare(edge);
        const double cost = plan_.length(edge) * (kEdgeCost + gap);
        if (edge.neighbour == kNoFace)
          cut.cost(f, kBeyondAll, 0);
        else if (edge.from < edge.to)
          cut.parting(f, static_cast<std::size_t>(edge.neighbour), cost);
      }
    }
    return cut.solve();
  }

  double seenFloor(const std::vector<bool>& inside) const {
    double area = 0;
    for (std::size_t f = 0; f < inside.size(); ++f)
      if (inside[f]) area += plan_.faces[f].area * seen_[f].share;
    return area;
  }

  bool isInside(int face) const { return face != kNoFace && inside_[static_cast<std::size_t>(face)]; }

  /// Parts of the inside that lintels part; each face's part, -1 outside.
  std::vector<int> parts() const {
    std::vector<int> part(plan_.faces.size(), -1);
    int count = 0;
    for (std::size_t start = 0; start < part.size(); ++start) {
      if (!inside_[start] || part[start] >= 0) continue;
      std::vector<std::size_t> open{start};
      part[start] = count;
      while (!open.empty()) {
        const PlanFace& face = plan_.faces[open.back()];
        open.pop_back();
        for (const FaceEdge& edge : face.edges) {
          if (!isInside(edge.neighbour)) continue;
          const auto next = static_cast<std::size_t>(edge.neighbour);
          if (part[next] >= 0 || facts(edge).top >= kGate) continue;
          part[next] = count;
          open.push_back(next);
        }
      }
      ++count;
    }
    return part;
  }

  struct Part {
    double area = 0;
    double seen = 0;
    double edge = 0;                                 ///< length toward the outside
    double walled = 0;                               ///< of that
    std::map<int, std::pair<double, double>> gates;  ///< to other parts: length, and of that open below
  };

  std::vector<Part> measured(const std::vector<int>& part) const {
    std::vector<Part> found(static_cast<std::size_t>(1 + *std::max_element(part.begin(), part.end())));
    for (std::size_t f = 0; f < part.size(); ++f) {
      if (part[f] < 0) continue;
      Part& p = found[static_cast<std::size_t>(part[f])];
      p.area += plan_.faces[f].area;
      p.seen += plan_.faces[f].area * seen_[f].share;
      for (const FaceEdge& edge : plan_.faces[f].edges) {
        const double length = plan_.length(edge);
        const EdgeFacts edgeFacts = facts(edge);
        if (!isInside(edge.neighbour)) {
          p.edge += length;
          p.walled += length * edgeFacts.wall;
        } else if (const int other = part[static_cast<std::size_t>(edge.neighbour)]; other != part[f]) {
          p.gates[other].first += length;
          p.gates[other].second += length * edgeFacts.openBelow;
        }
      }
    }
    return found;
  }

  std::vector<bool> withoutWhatIsBeyond(std::vector<std::string>& notes) const {
    const auto part = parts();
    if (part.empty() || *std::max_element(part.begin(), part.end()) < 0) return inside_;
    const auto found = measured(part);
    std::set<int> room;
    room.insert(
        static_cast<int>(std::max_element(found.begin(), found.end(),
                                          [](const Part& a, const Part& b) { return a.seen < b.seen; }) -
                         found.begin()));
    for (bool grew = true; grew;) {
      grew = false;
      for (int p = 0; p < static_cast<int>(found.size()); ++p)
        if (!room.contains(p) && belongs(found[static_cast<std::size_t>(p)], room))
          grew = room.insert(p).second;
    }
    double beyond = 0;
    std::vector<bool> chosen(inside_.size());
    for (std::size_t f = 0; f < part.size(); ++f) {
      chosen[f] = room.contains(part[f]);
      if (part[f] >= 0 && !chosen[f]) beyond += plan_.faces[f].area * seen_[f].share;
    }
    if (beyond > 1)
      notes.push_back("About " + std::to_string(std::lround(beyond)) +
                      " square metres that were seen beyond openings were left out.");
    return chosen;
  }

  static bool belongs(const Part& part, const std::set<int>& room) {
    double gate = 0;
    double open = 0;
    for (const auto& [other, lengths] : part.gates) {
      if (!room.contains(other)) continue;
      gate += lengths.first;
      open += lengths.second;
    }
    if (part.area < kShallow * gate) return false;  // the reveal of a door, closed by its leaf
    return gate > 0 && open >= kOpenBelow * gate && part.seen >= kSeenBeyond * part.area &&
           part.walled >= kClosedBeyond * part.edge;
  }

  const std::vector<ScanLine>& lines_;
  const PlanFaces& plan_;
  const PlanCoverage& coverage_;
  std::vector<SeenFloor> seen_;
  std::vector<bool> inside_;
};

}  // namespace

Result<ScanOutline> outlineOf(const LevelScan& scan, const std::vector<ScanLine>& lines,
                              const Progress& progress) {
  const char* next = "Walls are found where their upper part was scanned.";
  if (lines.size() < 3)
    return fail("The scan has too few upright surfaces for the walls of a room.", {}, next);
  const PlanCoverage coverage = coverageOf(scan, progress);
  if (progress.stop()) return fail("The import was cancelled.");
  const Vec2 margin(kFrameMargin, kFrameMargin);
  const PlanFaces plan = facesBetween(lines, coverage.low - margin, coverage.high + margin);
  ScanOutline outline;
  Chooser chooser(lines, plan, coverage);
  const auto inside = chooser.choose(outline.notes);
  const auto seenOf = [&](const SideRing& r, std::size_t i) {
    return factsOf(lines[static_cast<std::size_t>(r.lines[i])], r.corners[i],
                   r.corners[(i + 1) % r.corners.size()])
        .wall;
  };
  const SideRing ring = tidied(largestRing(plan, inside), lines, [&](const SideRing& r, std::size_t i) {
    if (isBend(r, i, lines)) return kShortestBend;
    return seenOf(r, i) < kHardlySeen ? kShortestUnseen : kShortestSide;
  });
  if (ring.corners.size() < 3) return fail("The walls of the scan enclose no floor.", {}, next);
  outline.corners = ring.corners;
  for (std::size_t i = 0; i < ring.lines.size(); ++i) {
    ScanLine side = lines[static_cast<std::size_t>(ring.lines[i])];
    const Vec2& a = ring.corners[i];
    const Vec2& b = ring.corners[(i + 1) % ring.corners.size()];
    if (const ScanLine* face = faceBefore(side, a, b, lines)) side = *face;
    outline.seen.push_back(factsOf(side, a, b).wall);
    if (side.normal.dot(leftOf(b - a)) < 0) {
      // The same line seen from its other side; its places along it count the other way.
      side.normal = -side.normal;
      side.offset = -side.offset;
      side.middle = -side.middle;
      side.seenFrom = -(side.seenFrom + kSeenStep * static_cast<double>(side.seen.size()));
      std::reverse(side.seen.begin(), side.seen.end());
    }
    outline.sides.push_back(std::move(side));
  }
  joinInLine(outline);
  return outline;
}

}  // namespace baywright
