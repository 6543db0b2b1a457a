// SPDX-License-Identifier: Apache-2.0
// Signed distance of capsules and boxes against FCL's, pair by pair in one run. `times` is how much longer
// FCL takes for the same pairs; `worst_mm` the largest difference of two gaps, which is FCL's (see
// tests/crosscheck).
#include <benchmark/benchmark.h>

#include <chrono>
#include <vector>

#include "fcl_pairs.h"

namespace {

using namespace baywright;
using Clock = std::chrono::steady_clock;
using Pair = test::FclPair;

void capsuleToBox(benchmark::State& state) {
  test::RandomShapes random(77);
  std::vector<Pair> pairs;
  while (pairs.size() < 2000) {
    Pair pair = test::randomFclPair(random);
    if (closest(pair.capsule, pair.box).distance > 0.001) pairs.push_back(std::move(pair));
  }
  double ours = 0;
  double theirs = 0;
  double worst = 0;
  for (auto _ : state) {
    const auto start = Clock::now();
    for (const Pair& pair : pairs) benchmark::DoNotOptimize(closest(pair.capsule, pair.box).distance);
    const auto middle = Clock::now();
    for (const Pair& pair : pairs) benchmark::DoNotOptimize(test::fclDistance(pair));
    const auto end = Clock::now();
    ours += std::chrono::duration<double>(middle - start).count();
    theirs += std::chrono::duration<double>(end - middle).count();
    state.SetIterationTime(std::chrono::duration<double>(middle - start).count());
  }
  for (const Pair& pair : pairs) {
    worst = std::max(worst, std::abs(test::fclDistance(pair) - closest(pair.capsule, pair.box).distance));
  }
  state.counters["times"] = theirs / ours;
  state.counters["worst_mm"] = 1000 * worst;
  state.counters["pairs"] = static_cast<double>(pairs.size());
}
BENCHMARK(capsuleToBox)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(20);

}  // namespace
