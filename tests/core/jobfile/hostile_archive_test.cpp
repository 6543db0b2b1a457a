// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>
#include <zip.h>

#include <cstring>

#include "jobfile/job_archive.h"
#include "jobfile/job_json.h"
#include "jobfile/mesh_bytes.h"
#include "raw_zip.h"
#include "support/job_builder.h"
#include "support/random_jobs.h"

namespace baywright {
namespace {

using testing::RawMember;
using testing::RawZip;

std::string goodJson() {
  return jobToJson(newJob());
}

/// An archive that is fine so far.
RawZip goodZip() {
  RawZip zip;
  zip.add("mimetype", std::string(kJobMimeType)).add("job.json", goodJson());
  return zip;
}

std::string sentenceFor(const std::string& archive, const ArchiveLimits& limits = {}) {
  const auto job = jobFromBytes(archive, limits);
  return job ? "accepted" : job.error().sentence();
}

void expectRefused(const std::string& archive, const std::string& sentence,
                   const ArchiveLimits& limits = {}) {
  const std::string got = sentenceFor(archive, limits);
  EXPECT_NE(got.find(sentence), std::string::npos) << "wanted: " << sentence << "\n   got: " << got;
}

/// Deflates so many zeros, as a bomb does.
std::string deflatedZeros(std::size_t count) {
  const std::string zeros(count, '\0');
  zip_error_t error;
  zip_error_init(&error);
  zip_source_t* target = zip_source_buffer_create(nullptr, 0, 0, &error);
  zip_source_keep(target);
  zip_t* zip = zip_open_from_source(target, ZIP_CREATE, &error);
  zip_file_add(zip, "x", zip_source_buffer(zip, zeros.data(), zeros.size(), 0), 0);
  zip_close(zip);
  zip_stat_t facts;
  zip_source_stat(target, &facts);
  std::string archive(facts.size, '\0');
  zip_source_open(target);
  zip_source_read(target, archive.data(), archive.size());
  zip_source_close(target);
  zip_source_free(target);
  constexpr std::size_t kHeader = 30 + 1;
  std::uint32_t packed = 0;
  std::memcpy(&packed, archive.data() + 18, sizeof packed);
  return archive.substr(kHeader, packed);
}

TEST(HostileArchive, StartsFromOneThatIsFine) {
  EXPECT_EQ(sentenceFor(goodZip().archive()), "accepted");
  EXPECT_EQ(sentenceFor(goodZip().add("notes/readme.txt", "hello").add("scans/", "").archive()), "accepted")
      << "members of others are passed over";
}

TEST(HostileArchive, ThatIsNoneIsRefused) {
  expectRefused("", "empty");
  expectRefused("Dear customer", "not a zip archive");
  expectRefused("PK", "damaged");
  expectRefused("PK\3\4" + std::string(1000, 'x'), "damaged");
  expectRefused(RawZip().add("mimetype", std::string(kJobMimeType)).archive(), "has no job.json");
  expectRefused(RawZip().add("mimetype", "application/epub+zip").add("job.json", goodJson()).archive(),
                "of another kind: application/epub+zip");
}

TEST(HostileArchive, ThatIsCutShortIsRefused) {
  const std::string whole = *jobToBytes(testing::randomJob(4));
  for (std::size_t size = 0; size < whole.size(); size += 1 + size / 60)
    EXPECT_NE(sentenceFor(whole.substr(0, size)), "accepted") << size;
}

TEST(HostileArchive, WithNamesThatLeadAstrayIsRefused) {
  for (const char* name : {"../evil", "scans/../../evil", "/etc/passwd", "C:/evil", "c:evil", "..\\evil",
                           "scans\\x", "./job.json", "scans//x", "scans/./x", "..", "a\nb", "a\x7f"})
    expectRefused(goodZip().add(name, "x").archive(), "may be meant to do harm");
  expectRefused(goodZip().add("", "x").archive(), "");
  expectRefused(goodZip().add(std::string(600, 'n'), "x").archive(), "too long");
}

TEST(HostileArchive, WithANameTwiceIsRefused) {
  expectRefused(goodZip().add("job.json", goodJson()).archive(), "two members of one name");
  expectRefused(goodZip().add("Job.JSON", goodJson()).archive(), "two members of one name");
}

TEST(HostileArchive, WithAWrongChecksumIsRefused) {
  RawZip zip;
  zip.add(RawMember{.name = "job.json", .bytes = goodJson(), .crc = 12345});
  expectRefused(zip.archive(), "damaged");
}

TEST(HostileArchive, ThatIsEncryptedIsRefused) {
  RawZip zip;
  zip.add(RawMember{.name = "job.json", .bytes = goodJson(), .flags = 1});
  expectRefused(zip.archive(), "encrypted");
}

TEST(HostileArchive, PackedInAnUnusualWayIsRefused) {
  RawZip zip;
  zip.add(RawMember{.name = "job.json", .bytes = goodJson(), .method = 12});
  expectRefused(zip.archive(), "packed in a way that jobs are not");
}

// 64 MB of zeros in 64 kB, announced honestly.
TEST(HostileArchive, ThatWouldGrowTooMuchIsRefused) {
  const std::string bomb = deflatedZeros(64 << 20);
  ASSERT_LT(bomb.size(), 100'000u);
  RawZip zip;
  zip.add(RawMember{.name = "job.json", .bytes = bomb, .size = 64 << 20, .method = 8});
  expectRefused(zip.archive(), "may be meant to do harm");
}

// The same bomb that says it is small: what comes out must keep to what was said.
TEST(HostileArchive, ThatLiesAboutItsSizeIsRefused) {
  const std::string bomb = deflatedZeros(64 << 20);
  for (const std::uint32_t said : {100u, 1u << 19, (64u << 20) - 1}) {
    RawZip zip;
    zip.add(RawMember{.name = "job.json", .bytes = bomb, .size = said, .method = 8});
    EXPECT_NE(sentenceFor(zip.archive()), "accepted");
  }
  RawZip zip;
  zip.add(RawMember{.name = "job.json", .bytes = goodJson(), .size = 5'000'000});
  EXPECT_NE(sentenceFor(zip.archive()), "accepted");
}

TEST(HostileArchive, BeyondTheLimitsIsRefused) {
  const std::string archive = goodZip().add("scans/a", std::string(5000, 'a')).archive();
  expectRefused(archive, "at most", {.memberBytes = 4000});
  expectRefused(archive, "unpack to more", {.totalBytes = 6000});
  expectRefused(archive, "3 members", {.members = 2});
}

TEST(HostileArchive, WithManyMembersIsRefusedSoon) {
  RawZip zip = goodZip();
  for (int i = 0; i < 20000; ++i) zip.add("scans/" + std::to_string(i), "");
  expectRefused(zip.archive(), "members, but at most 10000");
}

TEST(HostileArchive, WithoutAScanThatTheJobNamesIsRefused) {
  Job job = newJob();
  PlanScan plan;
  plan.id = job.takeId();
  plan.file = std::make_shared<const Blob>(Blob{"plan.png", "bytes"});
  job.planScans.push_back(plan);
  RawZip zip;
  zip.add("job.json", jobToJson(job));
  expectRefused(zip.archive(), "-plan.png: The job names a file that is not in the archive.");
}

TEST(HostileArchive, WithDamagedGeometryIsRefused) {
  Job job = newJob();
  RoomScan scan;
  scan.id = job.takeId();
  scan.mesh = std::make_shared<const TriangleMesh>();
  job.roomScans.push_back(scan);
  const std::string member = "scans/" + std::to_string(scan.id.value) + ".mesh";
  RawZip good;
  good.add("job.json", jobToJson(job)).add(member, meshToBytes(TriangleMesh()));
  EXPECT_EQ(sentenceFor(good.archive()), "accepted");
  RawZip bad;
  bad.add("job.json", jobToJson(job)).add(member, "BWMESH1\n");
  expectRefused(bad.archive(), member + ": The scan's geometry is damaged");
}

// Every byte of a small job, changed: a sentence, or the same job where the byte did not matter.
TEST(HostileArchive, WithAByteChangedIsRefusedOrTheSame) {
  const std::string whole = *jobToBytes(newJob());
  const std::string text = goodJson();
  int refused = 0;
  for (std::size_t at = 0; at < whole.size(); ++at) {
    std::string changed = whole;
    changed[at] = static_cast<char>(changed[at] ^ 0x55);
    const auto job = jobFromBytes(changed);
    if (job)
      EXPECT_EQ(jobToJson(*job), text) << at;
    else
      ++refused;
  }
  EXPECT_GT(refused, static_cast<int>(whole.size()) / 2);
}

}  // namespace
}  // namespace baywright
