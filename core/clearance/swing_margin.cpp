// SPDX-License-Identifier: Apache-2.0
#include "clearance/swing_margin.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <vector>

#include "clearance/worst_margin.h"

namespace baywright {
namespace {

double square(double x) {
  return x * x;
}

double headingSigma(const SwingNeeds& needs) {
  return std::sqrt(2.0) * needs.placementSigma / needs.strikeDistance;
}

/// Never below swingMarginSigma for this obstacle, wherever the witness lies.
double largestSigma(const PlacedSwing& swing, const RoomObstacle& obstacle, const SwingNeeds& needs) {
  const Vec3 arm = (swing.bounds.high - swing.origin())
                       .cwiseAbs()
                       .cwiseMax((swing.bounds.low - swing.origin()).cwiseAbs());
  const double placing = square(needs.placementSigma) * (obstacle.inBay ? 2 : 1);
  const double turning = square(headingSigma(needs)) * flat(arm).squaredNorm();
  return std::sqrt(square(swing.sigmaLargest) + square(largestSigma(obstacle)) + placing + turning);
}

/// Keeps the worst so far.
class Worst {
 public:
  Worst(const SwingEnvelope& envelope, const PlacedSwing& swing, std::span<const RoomObstacle> obstacles,
        const SwingNeeds& needs)
      : envelope_(envelope), swing_(swing), obstacles_(obstacles), needs_(needs) {}

  double reach(double sigma) const {
    return best_ ? searchReach(best_->margin, needs_.clearance, sigma)
                 : std::numeric_limits<double>::infinity();
  }

  void offer(std::size_t obstacle, std::size_t capsule) {
    SwingMargin found;
    found.obstacle = obstacle;
    found.capsule = swing_.capsules[capsule];
    found.closest = closest(found.capsule.capsule, obstacles_[obstacle]);
    found.margin.value = found.closest.distance - needs_.clearance;
    found.margin.sigma = swingMarginSigma(envelope_, swing_, obstacles_[obstacle], found.closest, needs_);
    const bool earlier = std::pair(obstacle, capsule) < std::pair(best_ ? best_->obstacle : 0, bestCapsule_);
    if (!best_ || isWorse(found.margin, best_->margin) ||
        (!isWorse(best_->margin, found.margin) && earlier)) {
      best_ = found;
      bestCapsule_ = capsule;
    }
  }

  const std::optional<SwingMargin>& best() const { return best_; }

 private:
  const SwingEnvelope& envelope_;
  const PlacedSwing& swing_;
  std::span<const RoomObstacle> obstacles_;
  const SwingNeeds& needs_;
  std::optional<SwingMargin> best_;
  std::size_t bestCapsule_ = 0;
};

struct Candidate {
  double gap;  ///< never above the distance of the group's capsules
  std::size_t obstacle;
  std::size_t group;
  double sigma;  ///< never below the uncertainty of their margins
};

bool isNearer(const Candidate& a, const Candidate& b) {
  return std::tie(a.gap, a.obstacle, a.group) < std::tie(b.gap, b.obstacle, b.group);
}

/// Pairs of obstacle and group of capsules.
std::vector<Candidate> candidates(const PlacedSwing& swing, std::span<const RoomObstacle> obstacles,
                                  std::span<const std::size_t> which, const SwingNeeds& needs) {
  std::vector<Candidate> list;
  list.reserve(which.size() * swing.groups.size());
  for (const std::size_t index : which) {
    const double sigma = largestSigma(swing, obstacles[index], needs);
    for (std::size_t group = 0; group < swing.groups.size(); ++group) {
      list.push_back({lowerBound(swing.groups[group], obstacles[index]), index, group, sigma});
    }
  }
  return list;
}

void offerGroup(Worst& worst, const PlacedSwing& swing, const RoomObstacle& obstacle,
                const Candidate& candidate) {
  const std::size_t first = candidate.group * PlacedSwing::kGroup;
  const std::size_t last = std::min(first + PlacedSwing::kGroup, swing.capsules.size());
  for (std::size_t i = first; i < last; ++i) {
    if (lowerBound(swing.capsules[i].capsule, obstacle) > worst.reach(candidate.sigma)) continue;
    worst.offer(candidate.obstacle, i);
  }
}

}  // namespace

double swingMarginSigma(const SwingEnvelope& envelope, const PlacedSwing& swing, const RoomObstacle& obstacle,
                        const Closest& closest, const SwingNeeds& needs) {
  const Vec3& along = closest.escape;
  const double body = envelope.sigmaAlong(swing.worldFromSwing.linear.transpose() * along);
  const double other = sigmaAlong(obstacle, closest.onSecond, along);
  const double placing = square(needs.placementSigma) * flat(along).squaredNorm() +
                         (obstacle.inBay ? square(needs.placementSigma) : 0.0);
  const Vec2 arm = flat(closest.onFirst - swing.origin());
  const double turning = square(headingSigma(needs) * cross(arm, flat(along)));
  return std::sqrt(square(body) + square(other) + placing + turning);
}

std::optional<SwingMargin> tightest(const SwingEnvelope& envelope, const PlacedSwing& swing,
                                    std::span<const RoomObstacle> obstacles,
                                    std::span<const std::size_t> which, const SwingNeeds& needs,
                                    Search search) {
  Worst worst(envelope, swing, obstacles, needs);
  if (search == Search::Everything) {
    for (const std::size_t obstacle : which) {
      for (std::size_t i = 0; i < swing.capsules.size(); ++i) worst.offer(obstacle, i);
    }
    return worst.best();
  }
  std::vector<Candidate> list = candidates(swing, obstacles, which, needs);
  if (list.empty()) return std::nullopt;
  const Candidate nearest = *std::min_element(list.begin(), list.end(), isNearer);
  offerGroup(worst, swing, obstacles[nearest.obstacle], nearest);
  // The nearest group rules out most of the others: only what is left is worth sorting.
  std::erase_if(list, [&](const Candidate& c) { return c.gap > worst.reach(c.sigma); });
  std::sort(list.begin(), list.end(), isNearer);
  for (const Candidate& candidate : list) {
    if (candidate.gap > worst.reach(candidate.sigma)) continue;
    offerGroup(worst, swing, obstacles[candidate.obstacle], candidate);
  }
  return worst.best();
}

}  // namespace baywright
