// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_suggest.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "survey/scan_cube_map.h"
#include "survey/scan_planes.h"
#include "units/unit_constants.h"

namespace baywright {
namespace {

constexpr std::size_t kMostLookedAt = 200'000;
constexpr double kOutside = 0.003;     ///< share of points that may lie beyond a room's ends
constexpr double kUpsideDown = 0.085;  ///< likewise, for the end at which few scans have it to be the floor
constexpr double kCubesAcross = 120;
constexpr std::size_t kBins = 100;    ///< between the ends
constexpr double kPeak = 0.25;        ///< of the fullest bin: floor and ceiling are that full
constexpr double kLeastPeak = 0.08;   ///< likewise, where they stand out of the others
constexpr double kUneven = 0.05;      ///< difference of what stands near the two ends, of all that does
constexpr double kStandsOut = 3;      ///< times the usual bin
constexpr double kMuchSmaller = 0.3;  ///< of the other end: a ceiling that slopes or was hardly seen
constexpr double kUsualHeight = 2.6;  ///< metres; common practice, no source
constexpr double kLowestRoom = 1.9;
constexpr double kHighestRoom = 7;

/// How points are spread along one axis.
struct Profile {
  double low = 0;  ///< the lowest and the highest place that many points share
  double high = 0;
  double ends = 0;    ///< share of points at those two
  double lowEnd = 0;  ///< points at each
  double highEnd = 0;
  double lowerThird = 0;
  double upperThird = 0;
  bool standsOut = false;
  bool isAlone = false;  ///< one surface stands out, at one end only

  double size() const { return high - low; }
};

/// Surfaces count, not points: those of a laser scanner crowd round where it stood.
std::vector<Eigen::Vector3f> onePerCube(const std::vector<Eigen::Vector3f>& samples) {
  double squares = 0;
  for (int axis = 0; axis < 3; ++axis) {
    std::vector<float> places;
    for (const Eigen::Vector3f& p : samples) places.push_back(p[axis]);
    const auto at = [&](double share) {
      const auto place =
          places.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(places.size() - 1));
      std::nth_element(places.begin(), place, places.end());
      return static_cast<double>(*place);
    };
    const double span = at(1 - kOutside) - at(kOutside);
    squares += span * span;
  }
  const double size = std::max(std::sqrt(squares) / kCubesAcross, 1e-9);
  CubeMap cubes;
  std::vector<Eigen::Vector3f> kept;
  for (const Eigen::Vector3f& p : samples)
    if (cubes.indexOf(cubeAt(p, size)) == kept.size()) kept.push_back(p);
  return kept;
}

std::vector<Eigen::Vector3f> someSamples(const ScanGeometry& scan) {
  Eigen::Vector3f low = scan.points.front();
  Eigen::Vector3f high = low;
  for (const Eigen::Vector3f& p : scan.points) {
    low = low.cwiseMin(p);
    high = high.cwiseMax(p);
  }
  const double spacing = std::max(1e-9, static_cast<double>((high - low).norm()) / 300);
  const auto all = surfaceSamples(scan, spacing);
  const std::size_t stride = all.size() / kMostLookedAt + 1;
  std::vector<Eigen::Vector3f> some;
  for (std::size_t i = 0; i < all.size(); i += stride) some.push_back(all[i]);
  return onePerCube(some);
}

Profile profileOf(std::vector<double> places) {
  std::sort(places.begin(), places.end());
  const auto at = [&](double share) {
    return places[static_cast<std::size_t>(share * static_cast<double>(places.size() - 1))];
  };
  const double start = at(kOutside);
  const double bin = std::max(1e-12, (at(1 - kOutside) - start) / static_cast<double>(kBins));
  std::array<double, kBins> counts{};
  for (const double place : places) {
    const double index = std::floor((place - start) / bin);
    if (index >= -1 && index <= static_cast<double>(kBins))
      counts[static_cast<std::size_t>(std::clamp(index, 0.0, static_cast<double>(kBins - 1)))] += 1;
  }
  const double fullest = *std::max_element(counts.begin(), counts.end());
  std::size_t first = 0;
  std::size_t last = kBins - 1;
  auto sorted = counts;
  std::nth_element(sorted.begin(), sorted.begin() + kBins / 2, sorted.end());
  const double usual = sorted[kBins / 2];
  // A yard seen through the door may be larger than floor and ceiling.
  double peak = std::max(kLeastPeak * fullest, kStandsOut * usual);
  if (std::count_if(counts.begin(), counts.end(), [&](double count) { return count >= peak; }) < 2)
    peak = kPeak * fullest;
  while (counts[first] < peak) ++first;
  while (counts[last] < peak) --last;
  // A surface may share two bins.
  if (first + 1 < kBins && counts[first + 1] > counts[first]) ++first;
  if (last > 0 && counts[last - 1] > counts[last]) --last;
  Profile profile;
  profile.low = start + (static_cast<double>(first) + 0.5) * bin;
  profile.high = start + (static_cast<double>(last) + 0.5) * bin;
  profile.standsOut = first < last && std::min(counts[first], counts[last]) > kStandsOut * usual;
  profile.lowEnd = counts[first];
  profile.highEnd = counts[last];
  if (first == last) {
    // One surface alone: a floor under slopes, or under a ceiling that was not scanned.
    profile.isAlone = counts[first] > kStandsOut * usual;
    const bool isLow = first < kBins / 2;
    (isLow ? profile.high : profile.low) = isLow ? at(1 - kOutside) : start;
    (isLow ? profile.highEnd : profile.lowEnd) = 0;
  }
  profile.ends = (profile.lowEnd + profile.highEnd) / static_cast<double>(places.size());
  // What stands in the room, not level surfaces: a lower part of the ceiling is no furniture.
  for (const double place : places) {
    const double index = std::clamp(std::floor((place - start) / bin), 0.0, static_cast<double>(kBins - 1));
    if (counts[static_cast<std::size_t>(index)] > kStandsOut * usual) continue;
    const double share = (place - profile.low) / std::max(profile.size(), 1e-12);
    if (share > 0.05 && share < 0.35) profile.lowerThird += 1;
    if (share > 0.65 && share < 0.95) profile.upperThird += 1;
  }
  return profile;
}

std::array<Profile, 3> profilesOf(const ScanGeometry& scan) {
  const auto samples = someSamples(scan);
  std::array<Profile, 3> profiles;
  for (int axis = 0; axis < 3; ++axis) {
    std::vector<double> places;
    for (const Eigen::Vector3f& p : samples) places.push_back(static_cast<double>(p[axis]));
    profiles[static_cast<std::size_t>(axis)] = profileOf(std::move(places));
  }
  return profiles;
}

std::string threeFigures(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.3g", value);
  return text;
}

/// To the tenth where that says something: the profile's bins allow no more.
std::string heightText(double metres) {
  char text[32];
  std::snprintf(text, sizeof text, metres >= 1 ? "%.1f" : "%.2g", metres);
  return text;
}

}  // namespace

std::vector<UpSuggestion> suggestUp(const ScanGeometry& scan) {
  if (scan.points.empty()) return {};
  const auto profiles = profilesOf(scan);
  double widest = 0;
  for (const Profile& profile : profiles) widest = std::max(widest, profile.size());
  std::vector<std::pair<double, UpSuggestion>> ranked;
  for (int axis = 0; axis < 3; ++axis) {
    const Profile& profile = profiles[static_cast<std::size_t>(axis)];
    const double score = profile.ends * (profile.standsOut || profile.isAlone ? 2 : 1) * widest /
                         std::max(profile.size(), 0.01 * widest);
    for (const bool isPlus : {true, false}) {
      const double thirds = profile.lowerThird + profile.upperThird;
      const double below = (profile.lowerThird - profile.upperThird) / std::max(thirds, 1.0);
      // Where only one end is a level surface it is the floor; slopes count as things near the top.
      const bool isLopsided =
          !profile.standsOut && std::min(profile.lowEnd, profile.highEnd) <
                                    kMuchSmaller * std::max(profile.lowEnd, profile.highEnd);
      const bool isEven = !isLopsided && below < kUneven && below > -kUpsideDown;
      const bool isLow =
          isLopsided ? profile.lowEnd > profile.highEnd : profile.lowerThird > profile.upperThird;
      // In an empty room only custom tells up from down.
      const bool standsBelow = isEven ? isPlus : isLow == isPlus;
      UpSuggestion suggestion;
      suggestion.up = static_cast<UpAxis>(2 * axis + (isPlus ? 0 : 1));
      suggestion.isPlausible = (profile.standsOut || profile.isAlone) && standsBelow;
      const std::string name(nameOf(suggestion.up));
      const std::string end = standsBelow ? "lower" : "upper";
      if (profile.standsOut)
        suggestion.reason =
            "Along " + name + " the scan ends in two flat surfaces " + threeFigures(profile.size()) +
            " units apart, " +
            (isEven ? "and nothing tells which is the floor." : "and more stands near the " + end + " one.");
      else if (profile.isAlone)
        suggestion.reason = "Along " + name + " one flat surface stands out, at the " + end + " end.";
      else
        suggestion.reason = "Along " + name + " no two flat surfaces stand out.";
      const bool isStated = scan.statedUp == suggestion.up;
      if (isStated) suggestion.reason = "The file's format says that " + name + " is up.";
      suggestion.isPlausible |= isStated;
      ranked.emplace_back(isStated ? 1e9 : score * (standsBelow ? 1.5 : 1), std::move(suggestion));
    }
  }
  std::stable_sort(ranked.begin(), ranked.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<UpSuggestion> suggestions;
  for (auto& [score, suggestion] : ranked) suggestions.push_back(std::move(suggestion));
  return suggestions;
}

std::vector<UnitSuggestion> suggestUnits(const ScanGeometry& scan, UpAxis up) {
  if (scan.points.empty()) return {};
  const auto axis = static_cast<std::size_t>(up) / 2;
  const double height = profilesOf(scan)[axis].size();
  constexpr std::array kUnits = {std::pair{1.0, "metres"}, std::pair{0.01, "centimetres"},
                                 std::pair{0.001, "millimetres"}, std::pair{kMetresPerFoot, "feet"},
                                 std::pair{kMetresPerInch, "inches"}};
  std::vector<UnitSuggestion> suggestions;
  for (const auto& [metres, name] : kUnits) {
    UnitSuggestion suggestion{metres, name, metres * height, false, {}};
    suggestion.isPlausible =
        suggestion.floorToCeiling > kLowestRoom && suggestion.floorToCeiling < kHighestRoom;
    suggestion.reason = "Floor to ceiling would be " + heightText(suggestion.floorToCeiling) +
                        " m if the unit is " + suggestion.name + ".";
    if (scan.statedMetresPerUnit == metres)
      suggestion.reason = "The file's format says " + suggestion.name + ".";
    suggestions.push_back(std::move(suggestion));
  }
  const auto strangeness = [&](const UnitSuggestion& s) {
    if (scan.statedMetresPerUnit == s.metresPerUnit) return -1.0;
    return std::abs(std::log(std::max(s.floorToCeiling, 1e-12) / kUsualHeight));
  };
  std::stable_sort(
      suggestions.begin(), suggestions.end(),
      [&](const UnitSuggestion& a, const UnitSuggestion& b) { return strangeness(a) < strangeness(b); });
  return suggestions;
}

}  // namespace baywright
