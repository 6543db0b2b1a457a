// SPDX-License-Identifier: Apache-2.0
// What a step of a drag costs, and how much the searches save over looking at everything. The counter `times`
// is the ratio of the two, measured turn and turn about in the same run.
#include <benchmark/benchmark.h>

#include <chrono>
#include <numeric>

#include "clearance/assess.h"
#include "clearance/assessor.h"
#include "clearance/headroom_field.h"
#include "clearance/obstacles.h"
#include "clearance/swing_margin.h"
#include "fit/smallest_change.h"
#include "support/job_builder.h"

namespace {

using namespace baywright;
using namespace baywright::testing;
using Clock = std::chrono::steady_clock;

Job busyGarage() {
  return garage(7.2, 5.4)
      .withSlopedCeiling(2.6, 3.1, 5.4)
      .withBeam({3, 0}, {3, 5.4}, 0.2, 2.6, 3.0)
      .withShelf("A", 1, 1.8, 0.4, 1.9)
      .withShelf("C", 4.5, 1.8, 0.4, 1.9, "Shelf 2")
      .withColumn({1.2, 4.4}, 0.1, 3)
      .withLight({2.5, 2.5}, 0.3, 2.5, 2.6)
      .withDoor("D", 1)
      .withSectionalDoor("C", 1, 2.4, 2.1)
      .withWindow("A", 3.5, 1, 1, 1)
      .withGolfer(1.88, Hand::Left, "Robin")
      .withClub()
      .withGolfer(1.65, Hand::Right, "Kim")
      .withClub()
      .withBystander({0.8, 0.8})
      .bayAt(6.4, 2.7, 0)
      .strikingFrom(3.2, 0.1, -0.1)
      .uncheckedJob();
}

void dragStep(benchmark::State& state) {
  Job job = busyGarage();
  Assessor assessor;
  double step = 0.002;
  for (auto _ : state) {
    job.option().placement.bay.origin.y() += step;
    if (std::abs(job.option().placement.bay.origin.y() - 2.7) > 0.2) step = -step;
    benchmark::DoNotOptimize(assessor.assess(job));
  }
}
BENCHMARK(dragStep)->Unit(benchmark::kMillisecond);

void fromScratch(benchmark::State& state) {
  const Job job = busyGarage();
  for (auto _ : state) benchmark::DoNotOptimize(assess(job));
}
BENCHMARK(fromScratch)->Unit(benchmark::kMillisecond);

void tightestPlace(benchmark::State& state) {
  const Job job = busyGarage();
  const Swing swing = *swingOf(job.golfers[0], job.golfers[0].clubs[0]);
  RigidMap map = worldFromBay(job.option().placement.bay);
  map.offset = worldFromBay(job.option().placement.bay, job.option().placement.strikePoint(Hand::Left));
  const PlacedSwing at = placed(swing.expected, map);
  const Obstacles obstacles = obstaclesOf(job);
  std::vector<std::size_t> all(obstacles.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  const SwingNeeds needs{0.15, 0.005, 3.2};
  double slow = 0;
  double fast = 0;
  for (auto _ : state) {
    const auto start = Clock::now();
    benchmark::DoNotOptimize(tightest(swing.expected, at, obstacles, all, needs, Search::Everything));
    const auto middle = Clock::now();
    benchmark::DoNotOptimize(tightest(swing.expected, at, obstacles, all, needs, Search::Tree));
    const auto end = Clock::now();
    slow += std::chrono::duration<double>(middle - start).count();
    fast += std::chrono::duration<double>(end - middle).count();
    state.SetIterationTime(std::chrono::duration<double>(end - middle).count());
  }
  state.counters["times"] = slow / fast;
}
BENCHMARK(tightestPlace)->UseManualTime()->Unit(benchmark::kMicrosecond);

void standingZone(benchmark::State& state) {
  const Job job = busyGarage();
  const HeadroomQuestion question{job.golfers[0].id, job.golfers[0].clubs[0].id, 0, 0.10};
  double slow = 0;
  double fast = 0;
  for (auto _ : state) {
    const auto start = Clock::now();
    benchmark::DoNotOptimize(headroomField(job, question, {}, Search::Everything));
    const auto middle = Clock::now();
    benchmark::DoNotOptimize(headroomField(job, question, {}, Search::Tree));
    const auto end = Clock::now();
    slow += std::chrono::duration<double>(middle - start).count();
    fast += std::chrono::duration<double>(end - middle).count();
    state.SetIterationTime(std::chrono::duration<double>(end - middle).count());
  }
  state.counters["times"] = slow / fast;
}
BENCHMARK(standingZone)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(3);

void whatWouldHelp(benchmark::State& state) {
  Job job = busyGarage();
  const Assessment assessment = assess(job);
  std::string key;
  for (const Finding& finding : assessment.findings) {
    if (finding.check == "swing_headroom" && finding.verdict >= Verdict::Tight) key = finding.key;
  }
  for (auto _ : state) benchmark::DoNotOptimize(smallestChanges(job, key, {}));
}
BENCHMARK(whatWouldHelp)->Unit(benchmark::kMillisecond);

}  // namespace
