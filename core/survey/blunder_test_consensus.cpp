// SPDX-License-Identifier: Apache-2.0
#include "survey/blunder_test_consensus.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "geometry/polygon_validity.h"
#include "survey/blunder_test.h"
#include "survey/blunder_test_sets.h"
#include "survey/network_start.h"

namespace baywright::detail {
namespace {

/// How far readings may lie from a start and still be believed: rooms are a few degrees out of square.
constexpr double kRoughLength = 0.15;
constexpr double kRoughShare = 0.06;
constexpr double kRoughAngle = 0.15;  // radians
constexpr int kMostRounds = 12;

bool isListed(const std::vector<Id>& list, Id id) {
  return std::find(list.begin(), list.end(), id) != list.end();
}

std::vector<Id> roughlyOff(const SurveyNetwork& network, const Ring& start) {
  std::vector<Id> off;
  for (const Observation& o : settled(network.observations, start)) {
    const double rough =
        o.kind == ObservationKind::Angle ? kRoughAngle : kRoughLength + kRoughShare * std::abs(o.value);
    if (std::abs(misclosure(o, start)) > rough) off.push_back(o.reading);
  }
  return off;
}

/// Readings that were left out and fit now.
std::vector<Id> fitting(const SurveyNetwork& network, const std::vector<Id>& out,
                        const SurveyAdjustment& adjustment) {
  std::vector<Id> fit;
  const Ring ring = adjustment.ring();
  for (const Observation& o : settled(network.observations, ring)) {
    if (!isListed(out, o.reading)) continue;
    const double sigma = std::hypot(o.sigma, predicted(o, adjustment).sigma);
    if (std::abs(misclosure(o, ring)) <= kCriticalW * sigma) fit.push_back(o.reading);
  }
  return fit;
}

/// The reading that stands out most; none where none does.
Id worstOf(const SurveyAdjustment& adjustment) {
  double most = kCriticalW;
  Id worst;
  for (const AdjustedReading& reading : adjustment.readings)
    if (std::abs(reading.standardised) > most) {
      most = std::abs(reading.standardised);
      worst = reading.reading;
    }
  return worst;
}

bool isFloor(const Ring& ring) {
  return signedArea(ring) > 0 && selfCrossings({ring, {}}).empty();
}

bool guessesLengths(const SurveyAdjustment& adjustment) {
  return std::any_of(adjustment.assumed.begin(), adjustment.assumed.end(),
                     [](const AdjustedReading& a) { return a.kind == ObservationKind::Distance; });
}

/// The same floor with its corners counted from another one.
SurveyNetwork countedFrom(const SurveyNetwork& network, int first) {
  SurveyNetwork counted = network;
  std::rotate(counted.corners.begin(), counted.corners.begin() + first, counted.corners.end());
  std::rotate(counted.names.begin(), counted.names.begin() + first, counted.names.end());
  for (Observation& o : counted.observations)
    for (int* corner : {&o.from, &o.to, &o.at}) *corner = (*corner + network.size() - first) % network.size();
  return counted;
}

/// A start takes the first wall at its word, so that there must be others where that one is wrong.
std::vector<Ring> startsFromAnyWall(const SurveyNetwork& network) {
  std::vector<Ring> starts = startingCorners(network);
  const int first = network.size() / 2;
  for (Ring start : startingCorners(countedFrom(network, first))) {
    std::rotate(start.begin(), start.end() - first, start.end());
    starts.push_back(std::move(start));
  }
  return starts;
}

/// The adjustment without some readings, if the others agree on a floor.
std::optional<Consensus> agreed(const SurveyNetwork& network, std::vector<Id> out, const Ring& ring) {
  auto made = adjust(without(network, out), ring);
  if (!made || guessesLengths(*made) || !isFloor(made->ring()) || made->tail <= kContradicted ||
      worstOf(*made))
    return std::nullopt;
  if (out.size() > 1 && made->degreesOfFreedom == 0) return std::nullopt;
  return Consensus{std::move(*made), std::move(out)};
}

/// One start followed until nothing changes.
std::optional<Consensus> from(const SurveyNetwork& network, const Ring& start, std::size_t most) {
  std::vector<Id> out = roughlyOff(network, start);
  Ring ring = start;
  std::vector<Id> returned;  // a reading comes back once, or it would be dropped and fit for ever
  for (int round = 0; round < kMostRounds; ++round) {
    if (out.size() > most + 2) return std::nullopt;
    const auto made = adjust(without(network, out), ring);
    if (!made || guessesLengths(*made) || !isFloor(made->ring())) return std::nullopt;
    ring = made->ring();
    std::vector<Id> back = fitting(network, out, *made);
    std::erase_if(back, [&](Id id) { return isListed(returned, id); });
    const Id worst = worstOf(*made);
    if (!worst && back.empty()) break;
    if (worst) {
      out.push_back(worst);
    } else {
      std::erase_if(out, [&](Id id) { return isListed(back, id); });
      returned.insert(returned.end(), back.begin(), back.end());
    }
  }
  return out.size() <= most ? agreed(network, std::move(out), ring) : std::nullopt;
}

/// Fewer left over, or a fit that is better by more than chance: of two shapes that fit alike the one of the
/// likelier start stays.
bool isBetter(const Consensus& made, const std::optional<Consensus>& best) {
  if (!best || made.out.size() != best->out.size()) return !best || made.out.size() < best->out.size();
  return made.rest.weightedSquares < best->rest.weightedSquares - kAsGood;
}

/// Dropping the worst goes astray where errors hide each other: then all sets of fewer readings are looked
/// at.
std::optional<Consensus> ofFewer(const SurveyNetwork& network, const std::vector<Ring>& rings,
                                 std::size_t fewer) {
  constexpr std::size_t kMostTried = 6, kMostRings = 6;
  for (std::size_t size = 1; size <= fewer; ++size) {
    std::optional<Consensus> best;
    for (const Ring& ring : std::span(rings).first(std::min(rings.size(), kMostRings)))
      for (const auto& set : likeliestSets(network, ring, static_cast<int>(size), kMostTried))
        if (auto made = agreed(network, set, ring); made && isBetter(*made, best)) best = std::move(made);
    if (best) return best;
  }
  return std::nullopt;
}

}  // namespace

std::optional<Consensus> consensusOf(const SurveyNetwork& network, const Ring& near, std::size_t most) {
  std::vector<Ring> starts = startsFromAnyWall(network);
  if (!near.empty()) starts.push_back(near);
  std::optional<Consensus> best;
  for (const Ring& start : starts)
    if (auto made = from(network, start, most); made && isBetter(*made, best)) best = std::move(made);
  if (best && best->out.size() < 2) return best;
  if (best) starts.insert(starts.begin(), best->rest.ring());
  auto fewer = ofFewer(network, starts, best ? best->out.size() - 1 : most);
  return fewer ? std::move(fewer) : std::move(best);
}

SurveyNetwork without(const SurveyNetwork& network, const std::vector<Id>& readings) {
  SurveyNetwork rest = network;
  std::erase_if(rest.observations, [&](const Observation& o) { return isListed(readings, o.reading); });
  return rest;
}

Uncertain predicted(const Observation& observation, const SurveyAdjustment& adjustment) {
  const Ring corners = adjustment.ring();
  const Observation sensed = settled({observation}, corners).front();
  const Eigen::RowVectorXd row = derivative(sensed, corners);
  const double variance = row * adjustment.covariance * row.transpose();
  return {std::abs(observed(sensed, corners)), std::sqrt(std::max(variance, 0.0))};
}

}  // namespace baywright::detail
