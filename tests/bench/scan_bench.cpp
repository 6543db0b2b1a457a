// SPDX-License-Identifier: Apache-2.0
// What a scan of so many points or triangles (the argument) costs: reading it, finding the room, keeping it
// in a job, and a step of a drag beside it. The drag must not grow with the scan.
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

enum class Kind { Cloud, Mesh };

/// The same box as a surface of about `count` triangles, its corners rippled alike.
ScanGeometry boxOfTriangles(std::size_t count) {
  ScanGeometry scan;
  const double all = 2 * (kSize.x() * kSize.y() + kSize.y() * kSize.z() + kSize.x() * kSize.z());
  const double edge = std::sqrt(2 * all / static_cast<double>(count));
  for (int axis = 0; axis < 3; ++axis)
    for (const double end : {0.0, 1.0}) {
      const int u = (axis + 1) % 3;
      const int v = (axis + 2) % 3;
      const auto columns = static_cast<std::uint32_t>(std::ceil(kSize[u] / edge));
      const auto rows = static_cast<std::uint32_t>(std::ceil(kSize[v] / edge));
      const auto first = static_cast<std::uint32_t>(scan.points.size());
      for (std::uint32_t i = 0; i <= columns; ++i)
        for (std::uint32_t j = 0; j <= rows; ++j) {
          Vec3 p;
          p[axis] = end * kSize[axis] + 0.005 * std::sin(7.0 * i + 3.0 * j);
          p[u] = kSize[u] * i / columns;
          p[v] = kSize[v] * j / rows;
          scan.points.push_back(p.cast<float>());
          if (i == columns || j == rows) continue;
          const std::uint32_t at = first + i * (rows + 1) + j;
          scan.triangles.push_back({at, at + 1, at + rows + 1});
          scan.triangles.push_back({at + 1, at + rows + 2, at + rows + 1});
        }
    }
  return scan;
}

RoomScan scanOf(std::size_t count, Kind kind) {
  RoomScan scan;
  scan.name = "Scan";
  if (kind == Kind::Cloud) {
    scan.points = std::make_shared<const std::vector<Eigen::Vector3f>>(boxOfPoints(count));
    return scan;
  }
  ScanGeometry box = boxOfTriangles(count);
  scan.mesh = std::make_shared<const TriangleMesh>(
      TriangleMesh::from(std::move(box.points), std::move(box.triangles)).value());
  return scan;
}

Job jobWith(std::size_t count, Kind kind) {
  Job job = garage(kSize.x(), kSize.y())
                .withGolfer(1.88, Hand::Left, "Robin")
                .withClub()
                .bayAt(6.4, 2.7, 0)
                .strikingFrom(3.2, 0.1, -0.1)
                .uncheckedJob();
  job.roomScans.push_back(scanOf(count, kind));
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

void findRoomOfMesh(benchmark::State& state) {
  const ScanGeometry scan = boxOfTriangles(static_cast<std::size_t>(state.range(0)));
  for (auto _ : state) benchmark::DoNotOptimize(recogniseRoom(scan, {}));
}

Job jobToKeep(std::size_t count, Kind kind) {
  Job job = jobWith(count, kind);
  job.roomScans[0].file = std::make_shared<const Blob>(Blob{"scan.ply", plyOf(boxOfPoints(count))});
  return job;
}

template <Kind kind>
void saveJobBytes(benchmark::State& state) {
  const Job job = jobToKeep(static_cast<std::size_t>(state.range(0)), kind);
  for (auto _ : state) benchmark::DoNotOptimize(jobToBytes(job));
}

template <Kind kind>
void openJob(benchmark::State& state) {
  const auto bytes = jobToBytes(jobToKeep(static_cast<std::size_t>(state.range(0)), kind));
  if (!bytes) return state.SkipWithError(bytes.error().sentence().c_str());
  for (auto _ : state) benchmark::DoNotOptimize(jobFromBytes(*bytes));
}

template <Kind kind>
void firstAssessment(benchmark::State& state) {
  const Job job = jobWith(static_cast<std::size_t>(state.range(0)), kind);
  for (auto _ : state) benchmark::DoNotOptimize(assess(job));
}

template <Kind kind>
void dragStep(benchmark::State& state) {
  Job job = jobWith(static_cast<std::size_t>(state.range(0)), kind);
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
BENCHMARK(findRoomOfMesh)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(saveJobBytes<Kind::Cloud>)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(saveJobBytes<Kind::Mesh>)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(openJob<Kind::Cloud>)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(openJob<Kind::Mesh>)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(firstAssessment<Kind::Cloud>)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(firstAssessment<Kind::Mesh>)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(dragStep<Kind::Cloud>)->Arg(10'000)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(dragStep<Kind::Mesh>)->Arg(10'000)->Arg(1'000'000)->Arg(5'000'000)->Unit(benchmark::kMillisecond);
