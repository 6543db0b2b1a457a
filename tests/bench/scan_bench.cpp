// SPDX-License-Identifier: Apache-2.0
// What a scan of so many points (the argument) costs: reading it, finding the room, keeping it in a job, and
// a step of a drag beside it. The drag must not grow with the scan.
#include <benchmark/benchmark.h>

#include <cmath>
#include <cstring>
#include <memory>

#include "clearance/assess.h"
#include "clearance/assessor.h"
#include "exchange/mesh_read.h"
#include "jobfile/job_archive.h"
#include "support/job_builder.h"
#include "survey/scan_room.h"

namespace {

using namespace baywright;
using namespace baywright::testing;

const Vec3 kSize(7.2, 5.4, 2.8);

/// Points on the faces of a box with a ripple of 5 mm, in an order that runs over it again and again.
std::vector<Eigen::Vector3f> boxOfPoints(std::size_t count) {
  const double pairs[3] = {kSize.y() * kSize.z(), kSize.x() * kSize.z(), kSize.x() * kSize.y()};
  const double all = pairs[0] + pairs[1] + pairs[2];
  std::vector<Eigen::Vector3f> points;
  points.reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    // Two additive recurrences fill a square evenly without a generator's help.
    const double u = std::fmod(0.7548776662466927 * static_cast<double>(i), 1.0);
    const double v = std::fmod(0.5698402909980532 * static_cast<double>(i), 1.0);
    double pick = std::fmod(0.6180339887498949 * static_cast<double>(i), 1.0) * all;
    int axis = 0;
    while (axis < 2 && pick > pairs[axis]) pick -= pairs[axis++];
    Vec3 p;
    p[axis] = (i % 2 ? kSize[axis] : 0) + 0.005 * std::sin(static_cast<double>(i));
    p[(axis + 1) % 3] = u * kSize[(axis + 1) % 3];
    p[(axis + 2) % 3] = v * kSize[(axis + 2) % 3];
    points.push_back(p.cast<float>());
  }
  return points;
}

std::string plyOf(const std::vector<Eigen::Vector3f>& points) {
  std::string bytes = "ply\nformat binary_little_endian 1.0\nelement vertex " +
                      std::to_string(points.size()) +
                      "\nproperty float x\nproperty float y\nproperty float z\nend_header\n";
  bytes.append(reinterpret_cast<const char*>(points.data()), points.size() * sizeof points[0]);
  return bytes;
}

std::string xyzOf(const std::vector<Eigen::Vector3f>& points) {
  std::string text;
  for (const Eigen::Vector3f& p : points)
    text += std::to_string(p.x()) + " " + std::to_string(p.y()) + " " + std::to_string(p.z()) + "\n";
  return text;
}

RoomScan scanOf(std::size_t count) {
  RoomScan scan;
  scan.name = "Scan";
  scan.points = std::make_shared<const std::vector<Eigen::Vector3f>>(boxOfPoints(count));
  return scan;
}

Job jobWith(std::size_t count) {
  Job job = garage(kSize.x(), kSize.y())
                .withGolfer(1.88, Hand::Left, "Robin")
                .withClub()
                .bayAt(6.4, 2.7, 0)
                .strikingFrom(3.2, 0.1, -0.1)
                .uncheckedJob();
  job.roomScans.push_back(scanOf(count));
  job.roomScans.back().id = job.takeId();
  return job;
}

void readPlyScan(benchmark::State& state) {
  const std::string bytes = plyOf(boxOfPoints(static_cast<std::size_t>(state.range(0))));
  for (auto _ : state) benchmark::DoNotOptimize(readScan("scan.ply", bytes, {}, {}));
}

void readXyzScan(benchmark::State& state) {
  const std::string bytes = xyzOf(boxOfPoints(static_cast<std::size_t>(state.range(0))));
  for (auto _ : state) benchmark::DoNotOptimize(readScan("scan.xyz", bytes, {}, {}));
}

void findRoom(benchmark::State& state) {
  ScanGeometry scan;
  scan.points = boxOfPoints(static_cast<std::size_t>(state.range(0)));
  for (auto _ : state) benchmark::DoNotOptimize(recogniseRoom(scan, {}));
}

void openJob(benchmark::State& state) {
  Job job = jobWith(static_cast<std::size_t>(state.range(0)));
  job.roomScans[0].file = std::make_shared<const Blob>(Blob{"scan.ply", plyOf(*job.roomScans[0].points)});
  const auto bytes = jobToBytes(job);
  if (!bytes) return state.SkipWithError(bytes.error().sentence().c_str());
  for (auto _ : state) benchmark::DoNotOptimize(jobFromBytes(*bytes));
}

void firstAssessment(benchmark::State& state) {
  const Job job = jobWith(static_cast<std::size_t>(state.range(0)));
  for (auto _ : state) benchmark::DoNotOptimize(assess(job));
}

void dragStep(benchmark::State& state) {
  Job job = jobWith(static_cast<std::size_t>(state.range(0)));
  Assessor assessor;
  assessor.assess(job);
  double step = 0.002;
  for (auto _ : state) {
    job.option().placement.bay.origin.y() += step;
    if (std::abs(job.option().placement.bay.origin.y() - 2.7) > 0.2) step = -step;
    benchmark::DoNotOptimize(assessor.assess(job));
  }
}

}  // namespace

BENCHMARK(readPlyScan)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(readXyzScan)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(findRoom)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(openJob)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(firstAssessment)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(dragStep)->Arg(10'000)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
