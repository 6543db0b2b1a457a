// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>

#include "jobfile/job_archive.h"

namespace baywright {
namespace {

TEST(ScanArchive, KeepsAMillionPointsAndTheFileTheyCameFrom) {
  auto points = std::make_shared<std::vector<Eigen::Vector3f>>();
  for (int i = 0; i < 1'000'000; ++i) {
    const float t = static_cast<float>(i);
    points->push_back({std::fmod(0.37f * t, 7.f), std::fmod(0.0113f * t, 5.f), 1e-6f * t});
  }
  const std::string original(14'000'000, '\x5a');
  Job job = newJob();
  RoomScan scan;
  scan.id = job.takeId();
  scan.name = "Hall";
  scan.file = std::make_shared<const Blob>(Blob{"hall.ply", original});
  scan.points = points;
  scan.sigma = 0.012;
  job.roomScans.push_back(scan);

  const auto bytes = jobToBytes(job);
  ASSERT_TRUE(bytes) << bytes.error().sentence();
  const auto read = jobFromBytes(*bytes);
  ASSERT_TRUE(read) << read.error().sentence();
  ASSERT_EQ(read->roomScans.size(), 1u);
  EXPECT_EQ(read->roomScans[0].file->bytes, original);
  EXPECT_EQ(read->roomScans[0].file->fileName, "hall.ply");
  EXPECT_EQ(*read->roomScans[0].points, *points);
  EXPECT_FALSE(read->roomScans[0].mesh);
  EXPECT_EQ(read->roomScans[0].sigma, 0.012);
}

}  // namespace
}  // namespace baywright
