// SPDX-License-Identifier: Apache-2.0
#include "survey/blunder_test.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <limits>
#include <span>

#include "units/angle_text.h"
#include "units/length_text.h"

namespace baywright {
namespace {

/// 95 % point of the chi-square distribution of one degree: explanations whose sums of squares differ by less
/// are as good as each other.
constexpr double kAsGood = 3.84;
/// A room whose corners are off by less, in kSquareSigmas, is square; one is squarer than another when it is
/// by this factor.
constexpr double kSquare = 1.5;
constexpr double kSquarerBy = 2;
/// Noncentrality at which a two-sided test at 0.1 % finds an error with a chance of 80 %.
constexpr double kDelta0 = 4.13;

bool isAngle(const AdjustedReading& reading) {
  return reading.kind == ObservationKind::Angle;
}

std::string valueText(double value, bool angle, const UnitSystem& units) {
  return angle ? formatAngle(value, units) : formatLength(value, units);
}

std::string uncertainText(const Uncertain& value, bool angle, const UnitSystem& units) {
  if (!angle) return formatUncertain(value, units);
  return formatAngle(value.value, units) + " ± " + formatAngle(value.halfWidth95(), units);
}

SurveyNetwork without(const SurveyNetwork& network, Id reading) {
  SurveyNetwork rest = network;
  std::erase_if(rest.observations, [&](const Observation& o) { return o.reading == reading; });
  return rest;
}

/// The reading as the adjusted corners give it, with the uncertainty that follows from theirs.
Uncertain predicted(const Observation& observation, const SurveyAdjustment& adjustment) {
  const Ring corners = adjustment.ring();
  const Observation sensed = settled({observation}, corners).front();
  const Eigen::RowVectorXd row = derivative(sensed, corners);
  const double variance = row * adjustment.covariance * row.transpose();
  return {std::abs(observed(sensed, corners)), std::sqrt(std::max(variance, 0.0))};
}

const Observation* observationOf(const SurveyNetwork& network, Id reading) {
  const auto found = std::find_if(network.observations.begin(), network.observations.end(),
                                  [&](const Observation& o) { return o.reading == reading; });
  return found == network.observations.end() ? nullptr : &*found;
}

/// All that explains the largest misfit, likeliest first; empty when nothing stands out.
std::vector<AdjustedReading> explanations(const SurveyAdjustment& adjustment) {
  std::vector<AdjustedReading> all = adjustment.readings;
  all.insert(all.end(), adjustment.assumed.begin(), adjustment.assumed.end());
  std::stable_sort(all.begin(), all.end(), [](const AdjustedReading& a, const AdjustedReading& b) {
    return std::abs(a.standardised) > std::abs(b.standardised);
  });
  const double most = all.empty() ? 0 : std::abs(all.front().standardised);
  std::erase_if(all, [&](const AdjustedReading& reading) {
    const double w = std::abs(reading.standardised);
    return w < kCriticalW || most * most - w * w > kAsGood;
  });
  return all;
}

/// A suspect, and how far from square the corners are without it, in kSquareSigmas (root mean square).
struct Weighed {
  SuspectReading suspect;
  double skew = std::numeric_limits<double>::infinity();
};

double skewOf(const SurveyAdjustment& adjustment) {
  const Ring ring = adjustment.ring();
  const std::size_t count = ring.size();
  double sum = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const Vec2 before = ring[i] - ring[(i + count - 1) % count];
    const Vec2 after = ring[(i + 1) % count] - ring[i];
    const double off = std::remainder(std::atan2(cross(before, after), before.dot(after)), kPi / 4);
    sum += std::pow(off / kSquareSigma, 2) / static_cast<double>(count);
  }
  return std::sqrt(sum);
}

Weighed weighed(const AdjustedReading& reading, const SurveyNetwork& network, const Ring& corners) {
  Weighed result;
  SuspectReading made{reading.reading,        reading.what,          isAngle(reading),
                      std::abs(reading.read), {reading.adjusted, 0}, 0,
                      reading.standardised};
  if (const Observation* observation = observationOf(network, reading.reading)) {
    if (const auto rest = adjust(without(network, reading.reading), corners)) {
      made.probable = predicted(*observation, *rest);
      result.skew = skewOf(*rest);
    }
  } else {
    // Nothing was read there: where the residual stands without the assumption's own share.
    made.probable.value = reading.read + reading.residual / reading.redundancy;
    made.probable.sigma =
        reading.sigma * std::sqrt(std::max(1 - reading.redundancy, 0.0) / reading.redundancy);
  }
  made.error = made.read - made.probable.value;
  result.suspect = made;
  return result;
}

/// The suspects, and whether the first is the only one without which the room is square.
Suspicion suspicionOf(std::vector<Weighed> all) {
  Suspicion made;
  const auto best = std::min_element(all.begin(), all.end(),
                                     [](const Weighed& a, const Weighed& b) { return a.skew < b.skew; });
  const auto isSquare = [](const Weighed& w) { return w.skew < kSquare; };
  made.isSettledBySquareness =
      all.size() > 1 && isSquare(*best) && std::none_of(all.begin(), all.end(), [&](const Weighed& other) {
        return &other != &*best && other.skew < kSquarerBy * std::max(best->skew, kSquare);
      });
  if (made.isSettledBySquareness) std::rotate(all.begin(), best, best + 1);
  for (Weighed& w : all) made.suspects.push_back(std::move(w.suspect));
  return made;
}

std::string oneText(const SuspectReading& suspect, const UnitSystem& units) {
  const std::string is = uncertainText(suspect.probable, suspect.isAngle, units);
  if (!suspect.reading) return "the " + suspect.what + " may not be what was assumed but " + is;
  return suspect.what + " was read as " + valueText(suspect.read, suspect.isAngle, units) +
         " and is probably " + is;
}

std::string tooMuch(const SuspectReading& suspect) {
  if (suspect.isAngle) return suspect.error > 0 ? "too wide" : "too narrow";
  return suspect.error > 0 ? "too long" : "too short";
}

std::string capitalised(std::string text) {
  text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
  return text;
}

/// "Diagonal A-C was read as 7.511 m and is probably 7.212 m ± 0.006 m (too long by 0.299 m)".
std::string blameText(const SuspectReading& suspect, const UnitSystem& units) {
  return capitalised(oneText(suspect, units)) + " (" + tooMuch(suspect) + " by " +
         valueText(std::abs(suspect.error), suspect.isAngle, units) + ")";
}

std::string listed(std::span<const SuspectReading> suspects) {
  std::string names;
  for (std::size_t i = 0; i < suspects.size(); ++i)
    names += (i == 0 ? "" : i + 1 == suspects.size() ? " or " : ", ") + suspects[i].what;
  return names;
}

std::string sentenceOf(const Suspicion& suspicion, bool isAssumedSquare, const UnitSystem& units) {
  const std::span<const SuspectReading> suspects = suspicion.suspects;
  if (suspects.size() == 1) return blameText(suspects.front(), units) + ". Read it again.";
  if (suspicion.isSettledBySquareness)
    return blameText(suspects.front(), units) +
           " if the corners are square; but the readings cannot tell it from " + listed(suspects.subspan(1)) +
           ". Read them again.";
  std::string text = "The readings do not fit together, and cannot tell which of them is wrong: ";
  for (std::size_t i = 0; i < suspects.size(); ++i)
    text += (i == 0 ? "" : i + 1 == suspects.size() ? "; or " : "; ") + oneText(suspects[i], units);
  if (isAssumedSquare) text += "; or the room is not square";
  return text + ". Read them again, or one diagonal more.";
}

}  // namespace

double smallestDetectable(const AdjustedReading& reading) {
  if (!(reading.redundancy > 0)) return std::numeric_limits<double>::infinity();
  return kDelta0 * reading.sigma / std::sqrt(reading.redundancy);
}

BlunderTest testForBlunders(const SurveyNetwork& network, const SurveyAdjustment& adjustment,
                            const UnitSystem& units) {
  BlunderTest test;
  test.tail = adjustment.tail;
  SurveyNetwork rest = network;
  SurveyAdjustment now = adjustment;
  for (int round = 0; round < kMostBlunders; ++round) {
    const std::vector<AdjustedReading> found = explanations(now);
    if (found.empty()) break;
    std::vector<Weighed> suspects;
    for (const AdjustedReading& reading : found) suspects.push_back(weighed(reading, rest, now.ring()));
    Suspicion suspicion = suspicionOf(std::move(suspects));
    suspicion.sentence = sentenceOf(suspicion, !now.assumed.empty(), units);
    test.suspicions.push_back(suspicion);
    const Id worst = suspicion.suspects.front().reading;
    if (!worst) break;
    rest = without(rest, worst);
    const auto next = adjust(rest, now.ring());
    if (!next) break;
    now = *next;
  }
  for (const Suspicion& suspicion : test.suspicions) test.sentences.push_back(suspicion.sentence);
  const bool globalFails = test.tail < kGlobalLevel;
  test.agree = test.suspicions.empty() && !globalFails;
  if (globalFails && test.suspicions.empty())
    test.sentences.push_back(
        "The readings agree less well than their instruments promise, though none of them stands out.");
  return test;
}

}  // namespace baywright
