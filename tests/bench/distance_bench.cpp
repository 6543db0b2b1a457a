// SPDX-License-Identifier: Apache-2.0
// Signed distance of capsules and boxes against FCL's, pair by pair in one run. `times` is how much longer
// FCL takes for the same pairs; `worst_mm` the largest difference of two gaps, which is FCL's (see
// tests/crosscheck).
#include <benchmark/benchmark.h>
#include <fcl/fcl.h>

#include <chrono>
#include <vector>

#include "geometry/closest.h"
#include "random_shapes.h"

namespace {

using namespace baywright;
using Clock = std::chrono::steady_clock;

struct Pair {
  Capsule capsule;
  ConvexPolyhedron ours;
  fcl::CollisionObjectd theirCapsule;
  fcl::CollisionObjectd theirBox;
};

fcl::Transform3d placed(const Mat3& axes, const Vec3& at) {
  fcl::Transform3d map = fcl::Transform3d::Identity();
  map.linear() = axes;
  map.translation() = at;
  return map;
}

Pair drawnPair(test::RandomShapes& random) {
  const Capsule capsule = random.capsule(1.2);
  const Vec3 run = capsule.b - capsule.a;
  const Mat3 upright = Eigen::Quaterniond::FromTwoVectors(Vec3::UnitZ(), run.normalized()).toRotationMatrix();
  const Vec3 half(random.between(0.05, 0.6), random.between(0.05, 0.6), random.between(0.05, 0.6));
  const Mat3 axes =
      Eigen::Quaterniond(Eigen::AngleAxisd(random.between(0, 6.28), random.point(1).normalized()))
          .toRotationMatrix();
  const Vec3 at = random.point(1.2);
  return {capsule, *boxFrom(TiltedBox{at, Mat3(axes * half.asDiagonal())}),
          fcl::CollisionObjectd(std::make_shared<fcl::Capsuled>(capsule.radius, run.norm()),
                                placed(upright, 0.5 * (capsule.a + capsule.b))),
          fcl::CollisionObjectd(std::make_shared<fcl::Boxd>(2 * half), placed(axes, at))};
}

double theirDistance(const Pair& pair) {
  fcl::DistanceRequestd request(true, true);
  fcl::DistanceResultd result;
  return fcl::distance(&pair.theirCapsule, &pair.theirBox, request, result);
}

void capsuleToBox(benchmark::State& state) {
  test::RandomShapes random(77);
  std::vector<Pair> pairs;
  while (pairs.size() < 2000) {
    Pair pair = drawnPair(random);
    if (closest(pair.capsule, pair.ours).distance > 0.001) pairs.push_back(std::move(pair));
  }
  double ours = 0;
  double theirs = 0;
  double worst = 0;
  for (auto _ : state) {
    const auto start = Clock::now();
    for (const Pair& pair : pairs) benchmark::DoNotOptimize(closest(pair.capsule, pair.ours).distance);
    const auto middle = Clock::now();
    for (const Pair& pair : pairs) benchmark::DoNotOptimize(theirDistance(pair));
    const auto end = Clock::now();
    ours += std::chrono::duration<double>(middle - start).count();
    theirs += std::chrono::duration<double>(end - middle).count();
    state.SetIterationTime(std::chrono::duration<double>(middle - start).count());
  }
  for (const Pair& pair : pairs) {
    worst = std::max(worst, std::abs(theirDistance(pair) - closest(pair.capsule, pair.ours).distance));
  }
  state.counters["times"] = theirs / ours;
  state.counters["worst_mm"] = 1000 * worst;
  state.counters["pairs"] = static_cast<double>(pairs.size());
}
BENCHMARK(capsuleToBox)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(20);

}  // namespace
