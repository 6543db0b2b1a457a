// SPDX-License-Identifier: Apache-2.0
#include "survey/blunder_test_sets.h"

#include <Eigen/LU>
#include <Eigen/QR>
#include <algorithm>
#include <optional>

#include "survey/assumptions.h"

namespace baywright::detail {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

/// A set whose errors its own residuals do not show, or only together with others.
constexpr double kHidden = 1e-6;
/// Sets to be compared; each takes about a tenth of a microsecond.
constexpr double kMostSets = 50'000;

Ring alongFirstWall(const Ring& ring) {
  const Vec2 along = (ring[1] - ring[0]).normalized();
  Ring local;
  for (const Vec2& p : ring) local.push_back({along.dot(p - ring[0]), leftOf(along).dot(p - ring[0])});
  return local;
}

/// Residuals and redundancy of the adjustment as it would be if it were linear, in units of sigma.
struct Linear {
  VectorXd residuals;
  MatrixXd redundancy;
};

std::optional<Linear> linearised(const std::vector<Observation>& observations, const Ring& ring) {
  const Index count = static_cast<Index>(observations.size());
  MatrixXd design = SurveyFrame::design(observations, ring);
  VectorXd misclosures(count);
  for (Index i = 0; i < count; ++i) {
    const Observation& o = observations[static_cast<std::size_t>(i)];
    design.row(i) /= o.sigma;
    misclosures(i) = misclosure(o, ring) / o.sigma;
  }
  const Eigen::ColPivHouseholderQR<MatrixXd> qr(design);
  if (qr.rank() < design.cols()) return std::nullopt;
  const MatrixXd basis = MatrixXd(qr.householderQ()).leftCols(design.cols());
  Linear made;
  made.redundancy = MatrixXd::Identity(count, count) - basis * basis.transpose();
  made.residuals = made.redundancy * misclosures;
  return made;
}

double gainOf(const Linear& linear, const std::vector<Index>& set) {
  const Index size = static_cast<Index>(set.size());
  MatrixXd own(size, size);
  VectorXd residuals(size);
  for (Index i = 0; i < size; ++i) {
    residuals(i) = linear.residuals(set[static_cast<std::size_t>(i)]);
    for (Index j = 0; j < size; ++j)
      own(i, j) = linear.redundancy(set[static_cast<std::size_t>(i)], set[static_cast<std::size_t>(j)]);
  }
  if (own.determinant() < kHidden) return 0;
  return residuals.dot(own.partialPivLu().solve(residuals));
}

/// All ascending sets of that many of `count` numbers.
void eachSet(Index count, int size, std::vector<Index>& set, const auto& visit) {
  if (static_cast<int>(set.size()) == size) return visit(set);
  for (Index i = set.empty() ? 0 : set.back() + 1; i < count; ++i) {
    set.push_back(i);
    eachSet(count, size, set, visit);
    set.pop_back();
  }
}

double setsOf(double count, int size) {
  return size == 1 ? count : size == 2 ? count * (count - 1) / 2 : count * (count - 1) * (count - 2) / 6;
}

}  // namespace

std::vector<std::vector<Id>> likeliestSets(const SurveyNetwork& network, const Ring& near, int size,
                                           std::size_t most) {
  const Index count = static_cast<Index>(network.observations.size());
  if (setsOf(static_cast<double>(count), size) > kMostSets) return {};
  const Ring ring = alongFirstWall(near);
  const std::vector<Observation> observations = settled(network.observations, ring);
  const auto linear = linearised(observations, ring);
  if (!linear) return {};
  std::vector<std::pair<double, std::vector<Index>>> best;
  std::vector<Index> set;
  eachSet(count, size, set, [&](const std::vector<Index>& candidate) {
    const double gain = gainOf(*linear, candidate);
    if (best.size() == most && gain <= best.back().first) return;
    const auto place = std::find_if(best.begin(), best.end(), [&](const auto& b) { return b.first < gain; });
    best.insert(place, {gain, candidate});
    if (best.size() > most) best.pop_back();
  });
  std::vector<std::vector<Id>> sets;
  for (const auto& [gain, candidate] : best) {
    sets.emplace_back();
    for (const Index i : candidate) sets.back().push_back(observations[static_cast<std::size_t>(i)].reading);
  }
  return sets;
}

}  // namespace baywright::detail
