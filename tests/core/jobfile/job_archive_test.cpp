// SPDX-License-Identifier: Apache-2.0
#include "jobfile/job_archive.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"
#include "support/random_jobs.h"
#include "support/temporary_folder.h"

namespace baywright {
namespace {

using testing::TemporaryFolder;

TEST(JobArchive, ReadsBackToTheSameBytes) {
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    const auto bytes = jobToBytes(testing::randomJob(seed));
    ASSERT_TRUE(bytes) << bytes.error().sentence();
    const auto job = jobFromBytes(*bytes);
    ASSERT_TRUE(job) << seed << ": " << job.error().sentence();
    ASSERT_EQ(*jobToBytes(*job), *bytes) << seed;
  }
}

TEST(JobArchive, KeepsScansAsTheyCame) {
  Job job = newJob();
  PlanScan plan;
  plan.id = job.takeId();
  const std::string bytes = "\x89PNG\r\n\x1a\n" + std::string("\0\1\2", 3) + std::string(100000, 'p');
  plan.file = std::make_shared<const Blob>(Blob{"Grundriß EG 1.png", bytes});
  job.planScans.push_back(plan);
  RoomScan scan;
  scan.id = job.takeId();
  scan.mesh = std::make_shared<const TriangleMesh>(
      *TriangleMesh::from({{0, 0, 0}, {1, 0, 0}, {0, 1, 2}}, {{0, 1, 2}}));
  job.roomScans.push_back(scan);
  job.originals.push_back(
      {job.takeId(), "Plan", std::make_shared<const Blob>(Blob{"Grundriß EG 1.png", "0\nSECTION\n"})});

  const auto read = jobFromBytes(*jobToBytes(job));
  ASSERT_TRUE(read) << read.error().sentence();
  EXPECT_EQ(read->planScans[0].file->bytes, bytes);
  EXPECT_EQ(read->planScans[0].file->fileName, "Grundriß EG 1.png");
  EXPECT_FALSE(read->roomScans[0].file);
  EXPECT_EQ(read->roomScans[0].mesh->vertices(), scan.mesh->vertices());
  EXPECT_FALSE(read->roomScans[0].points);
  ASSERT_EQ(read->originals.size(), 1u);
  EXPECT_EQ(read->originals[0].file->bytes, "0\nSECTION\n");
  EXPECT_EQ(read->originals[0].file->fileName, "Grundriß EG 1.png");
  job.originals[0].file = nullptr;
  EXPECT_FALSE(jobToBytes(job));
}

// A file manager tells the kind of a file by its first bytes: the first member is stored under this name.
TEST(JobArchive, BeginsWithItsKind) {
  const std::string bytes = *jobToBytes(newJob());
  EXPECT_EQ(bytes.substr(30, 8), "mimetype");
  EXPECT_EQ(bytes.substr(38, kJobMimeType.size()), kJobMimeType);
}

TEST(JobArchive, IsTheSameWheneverItIsSaved) {
  const Job job = testing::randomJob(3);
  EXPECT_EQ(*jobToBytes(job), *jobToBytes(job));
  EXPECT_EQ(jobToBytes(job)->substr(10, 4), std::string("\0\0\x21\0", 4)) << "midnight, 1 January 1980";
}

TEST(SaveJob, WritesAFileThatLoadJobReads) {
  const TemporaryFolder folder;
  const Job job = testing::randomJob(5);
  ASSERT_TRUE(saveJob(job, folder / "job.bayjob"));
  const auto read = loadJob(folder / "job.bayjob");
  ASSERT_TRUE(read) << read.error().sentence();
  EXPECT_EQ(*jobToBytes(*read), *jobToBytes(job));
}

TEST(SaveJob, RefusesAJobThatCouldNotBeOpenedAgain) {
  const TemporaryFolder folder;
  testing::writeContent(folder / "job.bayjob", "the old one");
  const Job job = testing::garage(6, 4).withGolfer(5).uncheckedJob();
  const auto saved = saveJob(job, folder / "job.bayjob");
  ASSERT_FALSE(saved);
  EXPECT_NE(saved.error().sentence().find("stature"), std::string::npos);
  EXPECT_EQ(testing::contentOf(folder / "job.bayjob"), "the old one");
}

TEST(LoadJob, NamesTheFileThatItCannotRead) {
  const TemporaryFolder folder;
  testing::writeContent(folder / "note.bayjob", "Dear customer");
  const auto job = loadJob(folder / "note.bayjob");
  ASSERT_FALSE(job);
  EXPECT_EQ(job.error().where, "note.bayjob");
  EXPECT_FALSE(loadJob(folder / "none.bayjob"));
  EXPECT_FALSE(loadJob(folder.path()));
}

TEST(LoadJob, ReadsAScanOfAMillionTriangles) {
  constexpr std::uint32_t kSide = 708;  // squares of two triangles
  std::vector<Eigen::Vector3f> vertices;
  std::vector<TriangleMesh::Corners> triangles;
  for (std::uint32_t y = 0; y <= kSide; ++y)
    for (std::uint32_t x = 0; x <= kSide; ++x)
      vertices.emplace_back(0.01f * static_cast<float>(x), 0.01f * static_cast<float>(y), 0.f);
  for (std::uint32_t y = 0; y < kSide; ++y)
    for (std::uint32_t x = 0; x < kSide; ++x) {
      const std::uint32_t corner = y * (kSide + 1) + x;
      triangles.push_back({corner, corner + 1, corner + kSide + 1});
      triangles.push_back({corner + 1, corner + kSide + 2, corner + kSide + 1});
    }
  Job job = newJob();
  RoomScan scan;
  scan.id = job.takeId();
  scan.mesh = std::make_shared<const TriangleMesh>(*TriangleMesh::from(vertices, triangles));
  job.roomScans.push_back(scan);
  const auto read = jobFromBytes(*jobToBytes(job));
  ASSERT_TRUE(read) << read.error().sentence();
  EXPECT_EQ(read->roomScans[0].mesh->triangleCount(), 2u * kSide * kSide);
}

}  // namespace
}  // namespace baywright
