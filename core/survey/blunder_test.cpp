// SPDX-License-Identifier: Apache-2.0
#include "survey/blunder_test.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <limits>
#include <span>
#include <utility>

#include "survey/blunder_test_consensus.h"
#include "units/angle_text.h"
#include "units/length_text.h"

namespace baywright {
namespace {

using detail::Consensus;
using detail::predicted;
using detail::without;

/// A room whose corners are off by less, in kSquareSigmas, is square; one is squarer than another when it is
/// by this factor.
constexpr double kSquare = 1.5;
constexpr double kSquarerBy = 2;
/// More suspects are only counted in a sentence.
constexpr std::size_t kMostNamed = 8;
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

/// What the adjustment of all others makes of a reading.
Weighed weighedRead(const Observation& reading, double standardised, const SurveyAdjustment& others) {
  Weighed made;
  made.suspect = {reading.reading,
                  reading.what,
                  reading.kind == ObservationKind::Angle,
                  std::abs(reading.value),
                  predicted(reading, others),
                  0,
                  standardised};
  made.suspect.error = made.suspect.read - made.suspect.probable.value;
  made.skew = skewOf(others);
  return made;
}

/// Nothing was read there: where the residual stands without the assumption's own share.
Weighed weighedAssumed(const AdjustedReading& assumed) {
  Weighed made;
  made.suspect = {{}, assumed.what,        isAngle(assumed), std::abs(assumed.read), {assumed.adjusted, 0},
                  0,  assumed.standardised};
  made.suspect.probable.value = assumed.read + assumed.residual / assumed.redundancy;
  made.suspect.probable.sigma =
      assumed.sigma * std::sqrt(std::max(1 - assumed.redundancy, 0.0) / assumed.redundancy);
  made.suspect.error = made.suspect.read - made.suspect.probable.value;
  return made;
}

Weighed weighed(const AdjustedReading& reading, const SurveyNetwork& network, const Ring& corners) {
  const Observation* observation = observationOf(network, reading.reading);
  if (!observation) return weighedAssumed(reading);
  if (const auto others = adjust(without(network, {reading.reading}), corners))
    return weighedRead(*observation, reading.standardised, *others);
  Weighed made;
  made.suspect = {reading.reading,       reading.what,      isAngle(reading),    std::abs(reading.read),
                  {reading.adjusted, 0}, -reading.residual, reading.standardised};
  return made;
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
  const std::span<const SuspectReading> named = suspects.first(std::min(suspects.size(), kMostNamed));
  const bool areAll = named.size() == suspects.size();
  for (std::size_t i = 0; i < named.size(); ++i)
    text += (i == 0 ? "" : areAll && i + 1 == named.size() ? "; or " : "; ") + oneText(named[i], units);
  if (!areAll) text += "; or one of " + std::to_string(suspects.size() - named.size()) + " others";
  if (isAssumedSquare) text += "; or the room is not square";
  return text + ". Read them again, or one diagonal more.";
}

/// The readings of a network that are worth trying in place of one that was left over: all of a few; of many
/// those that stand out most of the adjustment with it.
std::vector<Id> insteadOf(Id left, const SurveyNetwork& base, const SurveyAdjustment* with) {
  constexpr std::size_t kFew = 40, kMostTried = 12;
  std::vector<Id> tried;
  if (base.observations.size() <= kFew || !with) {
    for (const Observation& o : base.observations) tried.push_back(o.reading);
  } else {
    std::vector<AdjustedReading> all = with->readings;
    std::stable_sort(all.begin(), all.end(), [](const AdjustedReading& a, const AdjustedReading& b) {
      return std::abs(a.standardised) > std::abs(b.standardised);
    });
    for (const AdjustedReading& reading : std::span(all).first(kMostTried)) tried.push_back(reading.reading);
  }
  std::erase(tried, left);
  return tried;
}

/// The reading that was left over, and what would explain the misfit as well: readings without which, but
/// with that one, the others agree as much, and corners that may not be square.
std::vector<Weighed> explaining(Id left, const SurveyNetwork& network, const Consensus& consensus) {
  std::vector<Id> otherLeft = consensus.out;
  std::erase(otherLeft, left);
  const SurveyNetwork base = without(network, otherLeft);
  const Ring ring = consensus.rest.ring();
  const Observation& observation = *observationOf(network, left);
  Weighed first = weighedRead(observation, 0, consensus.rest);
  first.suspect.standardised =
      -first.suspect.error / std::hypot(observation.sigma, first.suspect.probable.sigma);
  const double squares = std::pow(first.suspect.standardised, 2);
  std::vector<std::pair<double, Weighed>> instead;  // by how well the others agree without it
  const auto with = adjust(base, ring);
  for (const Id id : insteadOf(left, base, with ? &*with : nullptr)) {
    const auto others = adjust(without(base, {id}), ring);
    if (!others || others->weightedSquares - consensus.rest.weightedSquares > kAsGood) continue;
    instead.push_back({others->weightedSquares,
                       weighedRead(*observationOf(base, id), first.suspect.standardised, *others)});
  }
  std::stable_sort(instead.begin(), instead.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<Weighed> found{std::move(first)};
  for (auto& [agreement, reading] : instead) found.push_back(std::move(reading));
  if (with)
    for (const AdjustedReading& assumed : with->assumed)
      if (std::abs(assumed.standardised) >= kCriticalW &&
          squares - std::pow(assumed.standardised, 2) <= kAsGood)
        found.push_back(weighedAssumed(assumed));
  return found;
}

/// One suspicion for each reading that was left over, the grossest first.
std::vector<Suspicion> suspicionsOf(const SurveyNetwork& network, const Consensus& consensus,
                                    const UnitSystem& units) {
  std::vector<Suspicion> made;
  for (const Id left : consensus.out) {
    made.push_back(suspicionOf(explaining(left, network, consensus)));
    made.back().sentence = sentenceOf(made.back(), !consensus.rest.assumed.empty(), units);
  }
  std::stable_sort(made.begin(), made.end(), [](const Suspicion& a, const Suspicion& b) {
    return std::abs(a.suspects.front().standardised) > std::abs(b.suspects.front().standardised);
  });
  return made;
}

/// The same by taking out the reading that stands out most, again and again.
std::vector<Suspicion> suspicionsOneByOne(const SurveyNetwork& network, const SurveyAdjustment& adjustment,
                                          const UnitSystem& units) {
  std::vector<Suspicion> made;
  SurveyNetwork rest = network;
  SurveyAdjustment now = adjustment;
  for (int round = 0; round < kMostBlunders; ++round) {
    const std::vector<AdjustedReading> found = explanations(now);
    if (found.empty()) break;
    std::vector<Weighed> suspects;
    for (const AdjustedReading& reading : found) suspects.push_back(weighed(reading, rest, now.ring()));
    made.push_back(suspicionOf(std::move(suspects)));
    made.back().sentence = sentenceOf(made.back(), !now.assumed.empty(), units);
    const Id worst = made.back().suspects.front().reading;
    if (!worst) break;
    rest = without(rest, {worst});
    const auto next = adjust(rest, now.ring());
    if (!next) break;
    now = *next;
  }
  return made;
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
  if (!explanations(adjustment).empty()) {
    const auto consensus = detail::consensusOf(network, adjustment.ring(), kMostBlunders);
    test.suspicions = consensus && !consensus->out.empty() ? suspicionsOf(network, *consensus, units)
                                                           : suspicionsOneByOne(network, adjustment, units);
  }
  for (const Suspicion& suspicion : test.suspicions) test.sentences.push_back(suspicion.sentence);
  const bool globalFails = test.tail < kGlobalLevel;
  test.agree = test.suspicions.empty() && !globalFails;
  if (globalFails && test.suspicions.empty())
    test.sentences.push_back(
        "The readings agree less well than their instruments promise, though none of them stands out.");
  return test;
}

std::optional<BlunderTest> testWhereNothingFits(const SurveyNetwork& network, const UnitSystem& units) {
  const auto consensus = detail::consensusOf(network, {}, kMostBlunders);
  if (!consensus || consensus->out.empty()) return std::nullopt;
  BlunderTest test;
  test.tail = 0;
  test.agree = false;
  test.suspicions = suspicionsOf(network, *consensus, units);
  for (const Suspicion& suspicion : test.suspicions) test.sentences.push_back(suspicion.sentence);
  return test;
}

}  // namespace baywright
