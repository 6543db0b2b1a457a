// SPDX-License-Identifier: Apache-2.0
#include "survey/advice.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "units/length_text.h"

namespace baywright {
namespace {

/// A redundancy below this leaves an error unseen: the test then finds only errors beyond 13 sigmas.
constexpr double kChecked = 0.1;
/// Less than a tenth is not worth a walk across the room.
constexpr double kWorthwhile = 0.9;

/// Candidates that are adjusted with, after all were ranked by how they update the covariance.
constexpr std::size_t kTriedOut = 8;

struct Candidate {
  Observation observation;
  double worst = 0;   ///< largest ellipse afterwards
  double spread = 0;  ///< root of the sum of all corners' variances afterwards
  int checks = 0;     ///< readings without a check that would get one
};

struct Weakest {
  std::size_t corner = 0;
  double axis = 0;
};

Weakest weakestOf(const Eigen::MatrixXd& covariance) {
  Weakest weakest;
  for (Eigen::Index i = 0; i < covariance.rows(); i += 2) {
    const double axis =
        errorEllipse95({covariance(i, i), covariance(i, i + 1), covariance(i + 1, i + 1)}).major;
    if (axis > weakest.axis) weakest = {static_cast<std::size_t>(i / 2), axis};
  }
  return weakest;
}

bool isRead(const SurveyNetwork& network, int a, int b) {
  return std::any_of(network.observations.begin(), network.observations.end(), [&](const Observation& o) {
    return o.kind == ObservationKind::Distance && ((o.from == a && o.to == b) || (o.from == b && o.to == a));
  });
}

int sideOf(const Vec2& a, const Vec2& b, const Vec2& p) {
  const double side = cross(b - a, p - a);
  return side > 0 ? 1 : side < 0 ? -1 : 0;
}

/// Whether one corner sees another along the floor: inside, and through no wall.
bool sees(const Ring& ring, int a, int b) {
  const int count = static_cast<int>(ring.size());
  for (int i = 0; i < count; ++i) {
    const int j = (i + 1) % count;
    if (i == a || i == b || j == a || j == b) continue;
    if (sideOf(ring[a], ring[b], ring[i]) != sideOf(ring[a], ring[b], ring[j]) &&
        sideOf(ring[i], ring[j], ring[a]) != sideOf(ring[i], ring[j], ring[b]))
      return false;
  }
  return locate(ring, 0.5 * (ring[a] + ring[b])) == Location::Inside;
}

/// Adjusts with the further reading: what was assumed may not be needed then, and fewer readings be
/// unchecked.
void tryOut(Candidate& candidate, const SurveyNetwork& network, const SurveyAdjustment& adjustment) {
  SurveyNetwork more = network;
  more.observations.push_back(candidate.observation);
  const auto then = adjust(more, adjustment.ring());
  if (!then) return;
  candidate.worst = weakestOf(then->covariance).axis;
  candidate.spread = std::sqrt(then->covariance.trace());
  for (std::size_t i = 0; i < adjustment.readings.size(); ++i)
    candidate.checks +=
        adjustment.readings[i].redundancy < kChecked && then->readings[i].redundancy >= kChecked;
}

std::vector<Candidate> candidates(const SurveyNetwork& network, const SurveyAdjustment& adjustment,
                                  Instrument how) {
  const Ring ring = adjustment.ring();
  std::vector<Candidate> all;
  for (int a = 0; a < network.size(); ++a) {
    for (int b = a + 1; b < network.size(); ++b) {
      if (isRead(network, a, b)) continue;
      if (!areNeighbours(network, a, b) && !sees(ring, a, b)) continue;
      Candidate made;
      made.observation.from = a;
      made.observation.to = b;
      made.observation.what = lengthName(network, a, b);
      made.observation.value = (ring[b] - ring[a]).norm();
      made.observation.sigma = instrumentSigma(how, made.observation.value);
      const Eigen::RowVectorXd row = derivative(made.observation, ring);
      const Eigen::VectorXd gain = adjustment.covariance * row.transpose();
      const double variance = row.dot(gain) + std::pow(made.observation.sigma, 2);
      made.worst = weakestOf(adjustment.covariance - gain * gain.transpose() / variance).axis;
      all.push_back(std::move(made));
    }
  }
  return all;
}

/// The candidate to take, and why.
struct Choice {
  const Candidate* best = nullptr;
  enum Reason { WeakCorner, ManyWeakCorners, Check } reason = WeakCorner;
};

Choice chosen(const std::vector<Candidate>& all, const Weakest& now, double spread) {
  const auto least = [&](auto figure) {
    return &*std::min_element(all.begin(), all.end(),
                              [&](const Candidate& a, const Candidate& b) { return figure(a) < figure(b); });
  };
  if (now.axis > kGoodEnough) {
    const Candidate* strongest = least([](const Candidate& c) { return c.worst; });
    if (strongest->worst < kWorthwhile * now.axis) return {strongest, Choice::WeakCorner};
    const Candidate* tightest = least([](const Candidate& c) { return c.spread; });
    if (tightest->spread < kWorthwhile * spread) return {tightest, Choice::ManyWeakCorners};
  }
  const Candidate* check = least([](const Candidate& c) { return -c.checks; });
  return {check->checks > 0 ? check : nullptr, Choice::Check};
}

std::string sentenceOf(const Choice& choice, const ReadingAdvice& advice, const UnitSystem& units) {
  const std::string start = "Measure " + advice.what + ": ";
  if (choice.reason == Choice::Check) return start + "it would check readings that nothing checks yet.";
  const std::string weak =
      start + "corner " + advice.weakCorner + " is weak (± " + formatLength(advice.ellipseNow, units);
  if (choice.reason == Choice::ManyWeakCorners) return weak + "), and takes more than one reading.";
  return weak + " now, ± " + formatLength(advice.ellipseThen, units) + " then).";
}

}  // namespace

std::optional<ReadingAdvice> adviseReading(const SurveyNetwork& network, const SurveyAdjustment& adjustment,
                                           Instrument how, const UnitSystem& units) {
  std::vector<Candidate> all = candidates(network, adjustment, how);
  if (all.empty()) return std::nullopt;
  const Weakest now = weakestOf(adjustment.covariance);
  const auto isBetter = [](const Candidate& a, const Candidate& b) { return a.worst < b.worst; };
  std::stable_sort(all.begin(), all.end(), isBetter);
  if (all.size() > kTriedOut) all.resize(kTriedOut);
  for (Candidate& candidate : all) tryOut(candidate, network, adjustment);
  const Choice choice = chosen(all, now, std::sqrt(adjustment.covariance.trace()));
  if (!choice.best) return std::nullopt;
  const Observation& best = choice.best->observation;
  ReadingAdvice advice;
  advice.from = network.corners[best.from];
  advice.to = network.corners[best.to];
  advice.what = best.what;
  advice.weakCorner = network.names[now.corner];
  advice.ellipseNow = now.axis;
  advice.ellipseThen = choice.best->worst;
  advice.isCheck = choice.reason == Choice::Check;
  advice.sentence = sentenceOf(choice, advice, units);
  return advice;
}

}  // namespace baywright
