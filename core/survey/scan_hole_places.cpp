// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_hole_places.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <vector>

namespace baywright::detail {
namespace {

/// The place of a reveal's face near an edge's first guess: its points heap up there.
template <class Along, class Beside>
std::optional<double> revealPlace(const WallGrid& grid, double guess, double side, Along place,
                                  Beside isBeside) {
  constexpr double kReach = 0.10;  // metres from the guess
  constexpr double kDeepest = 0.30;
  constexpr double kHalfPeak = 0.015;
  std::vector<double> places;
  double behind = 0;  // points of a leaf that lies back, as far into the hole
  for (const WallPoint& p : grid.beyond) {
    if (p.inward < -kDeepest || !isBeside(p)) continue;
    if (std::abs(place(p) - guess) < kReach) places.push_back(place(p));
    const double into = -side * (place(p) - guess);
    behind += into > 1.5 * kReach && into < 3.5 * kReach ? 1 : 0;
  }
  std::sort(places.begin(), places.end());
  std::size_t most = 0;
  double peak = guess;
  for (std::size_t first = 0, last = 0; first < places.size(); ++first) {
    while (last < places.size() && places[last] < places[first] + 2 * kHalfPeak) ++last;
    if (last - first <= most) continue;
    most = last - first;
    peak = places[first + (last - first) / 2];
  }
  constexpr double kFewest = 30;
  const double usual = behind * kHalfPeak / kReach;
  if (static_cast<double>(most) < kFewest + 3 * usual) return std::nullopt;
  return peak;
}

/// How many of these points a plain wall would have, where a bin of it has `usual` ones. A frame stands out a
/// little: all of its points lie before the wall's face, of the wall's own only half, the rest being noise
/// behind it.
template <class Bins>
double wallCount(const Bins& bins, double usual) {
  constexpr double kFewToTell = 10;
  constexpr double kCrowded = 1.4;
  double count = 0;
  for (const double bin : bins) count += usual >= kFewToTell && bin > kCrowded * usual ? usual : bin;
  return count;
}

/// Where wall ends along one direction: `place` and `isBeside` of a point, the edge's first guess, and on
/// which side of it (-1 or 1) wall stands.
template <class Along, class Beside>
HolePlace edgePlace(const WallGrid& grid, double guess, double side, Along place, Beside isBeside) {
  constexpr double kFrom = 0.12;  // metres from the guess: surely wall
  constexpr double kTo = 0.30;
  constexpr int kBins = 24;
  double plateau = 0;
  double half = 0;
  std::array<double, kBins> upTo{};  // counts from kFrom on this side to kFrom beyond the guess
  for (const WallPoint& p : grid.wall) {
    // What stands in the hole, reveals and frames, lies behind the wall's face.
    if (p.inward < 0 || !isBeside(p)) continue;
    const double into = side * (place(p) - guess);
    if (into >= kFrom && into < kTo) plateau += 1;
    if (into >= kFrom && into < 0.5 * (kFrom + kTo)) half += 1;
    const auto bin = static_cast<int>(std::floor((into + kFrom) / (2 * kFrom) * kBins));
    if (bin >= 0 && bin < kBins) upTo[static_cast<std::size_t>(bin)] += 1;
  }
  HolePlace found{guess, false};
  if (plateau >= 20 && half > 0.3 * plateau && half < 0.7 * plateau) {
    const double density = plateau / (kTo - kFrom);
    const double into = kFrom - wallCount(upTo, density * 2 * kFrom / kBins) / density;
    if (std::abs(into) < kFrom) found = {guess + side * into, true};
  }
  if (const auto reveal = revealPlace(grid, guess, side, place, isBeside)) return {*reveal, true};
  return found;
}

}  // namespace

HolePlaces placesOf(const WallGrid& grid, const HoleRect& rect) {
  const double left = rect.left * kWallCell;
  const double right = rect.right * kWallCell;
  const double bottom = rect.bottom * kWallCell;
  const double top = rect.top * kWallCell;
  const auto along = [](const WallPoint& p) { return static_cast<double>(p.along); };
  const auto height = [](const WallPoint& p) { return static_cast<double>(p.height); };
  const double inset = std::min(0.15, 0.2 * (top - bottom));
  const auto inRows = [&](const WallPoint& p) { return p.height > bottom + inset && p.height < top - inset; };
  const double margin = 0.2 * (right - left);
  const auto inColumns = [&](const WallPoint& p) {
    return p.along > left + margin && p.along < right - margin;
  };
  return {edgePlace(grid, left, -1, along, inRows), edgePlace(grid, right, 1, along, inRows),
          edgePlace(grid, bottom, -1, height, inColumns), edgePlace(grid, top, 1, height, inColumns)};
}

}  // namespace baywright::detail
