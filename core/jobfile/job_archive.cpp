// SPDX-License-Identifier: Apache-2.0
#include "jobfile/job_archive.h"

#include <vector>

#include "job/validate.h"
#include "jobfile/atomic_file.h"
#include "jobfile/detail/zip_read.h"
#include "jobfile/detail/zip_write.h"
#include "jobfile/job_json.h"
#include "jobfile/mesh_bytes.h"

namespace baywright {
namespace {

constexpr const char* kMimeMember = "mimetype";
constexpr const char* kJobMember = "job.json";
constexpr const char* kScanFolder = "scans/";
constexpr const char* kOriginalsFolder = "originals/";

/// Letters that every file system and zip tool takes; the true name is in job.json.
std::string plainName(const std::string& name) {
  constexpr std::size_t kLongest = 80;
  constexpr std::string_view kPlain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789._-";
  std::string plain = name.substr(0, kLongest);
  for (char& c : plain)
    if (kPlain.find(c) == std::string_view::npos) c = '_';
  return plain;
}

std::string memberOf(Id thing, const Blob& file) {
  return std::to_string(thing.value) + "-" + plainName(file.fileName);
}
std::string originalMember(Id scan, const Blob& file) {
  return kScanFolder + memberOf(scan, file);
}
std::string meshMember(Id scan) {
  return kScanFolder + std::to_string(scan.value) + ".mesh";
}
std::string pointsMember(Id scan) {
  return kScanFolder + std::to_string(scan.value) + ".points";
}

/// The members that are read from a file: what this version writes.
bool isOurs(const std::string& name) {
  const bool isKept = name.starts_with(kScanFolder) || name.starts_with(kOriginalsFolder);
  return name == kMimeMember || name == kJobMember || (isKept && !name.ends_with('/'));
}

tl::unexpected<Problem> at(Problem problem, const std::string& member) {
  problem.where = member + (problem.where.empty() ? "" : " / " + problem.where);
  return tl::unexpected(std::move(problem));
}

/// Hands out the members that scans and originals name.
class KeptMembers {
 public:
  explicit KeptMembers(detail::Members members) : members_(std::move(members)) {}

  Result<std::string> take(const std::string& name) {
    const auto found = members_.find(name);
    if (found == members_.end())
      return fail("The job names a file that is not in the archive.", name,
                  "Take a copy of the file that is whole.");
    return std::move(found->second);
  }

  Result<void> fill(PlanScan& scan) { return fillFile(originalMember, scan.id, scan.file); }

  Result<void> fill(Original& original) {
    const auto member = [](Id id, const Blob& file) { return kOriginalsFolder + memberOf(id, file); };
    return fillFile(member, original.id, original.file);
  }

  Result<void> fill(RoomScan& scan) {
    auto done = fillFile(originalMember, scan.id, scan.file);
    if (done && scan.mesh) done = fillGeometry(meshMember(scan.id), scan.mesh, meshFromBytes);
    if (done && scan.points) done = fillGeometry(pointsMember(scan.id), scan.points, pointsFromBytes);
    return done;
  }

 private:
  template <class Member>
  Result<void> fillFile(Member member, Id thing, BlobPtr& file) {
    if (!file) return {};
    auto bytes = take(member(thing, *file));
    if (!bytes) return tl::unexpected(bytes.error());
    file = std::make_shared<const Blob>(Blob{file->fileName, std::move(*bytes)});
    return {};
  }

  template <class Geometry, class Read>
  Result<void> fillGeometry(const std::string& member, Geometry& geometry, Read read) {
    auto bytes = take(member);
    if (!bytes) return tl::unexpected(bytes.error());
    auto made = read(*bytes);
    if (!made) return at(made.error(), member);
    geometry = std::move(*made);
    return {};
  }

  detail::Members members_;
};

/// Bytes made for an archive, and the members that point to them and to the job's own.
struct Contents {
  std::vector<std::unique_ptr<std::string>> made;
  std::vector<detail::NewMember> members;

  void add(std::string name, std::string_view bytes, detail::Packing packing) {
    members.push_back({std::move(name), bytes, packing});
  }
  void addMade(std::string name, std::string bytes, detail::Packing packing) {
    made.push_back(std::make_unique<std::string>(std::move(bytes)));
    add(std::move(name), *made.back(), packing);
  }
};

Contents contentsOf(const Job& job) {
  using detail::Packing;
  Contents contents;
  contents.add(kMimeMember, kJobMimeType, Packing::Stored);
  contents.addMade(kJobMember, jobToJson(job), Packing::Deflated);
  for (const PlanScan& scan : job.planScans)
    if (scan.file) contents.add(originalMember(scan.id, *scan.file), scan.file->bytes, Packing::Stored);
  for (const RoomScan& scan : job.roomScans) {
    if (scan.file) contents.add(originalMember(scan.id, *scan.file), scan.file->bytes, Packing::Stored);
    if (scan.mesh) contents.addMade(meshMember(scan.id), meshToBytes(*scan.mesh), Packing::Stored);
    if (scan.points) contents.addMade(pointsMember(scan.id), pointsToBytes(*scan.points), Packing::Stored);
  }
  for (const Original& original : job.originals)
    if (original.file)
      contents.add(kOriginalsFolder + memberOf(original.id, *original.file), original.file->bytes,
                   Packing::Stored);
  return contents;
}

/// Nothing may be saved that could not be opened again.
Result<void> checkSizes(const Contents& contents) {
  const ArchiveLimits limits;
  std::uint64_t total = 0;
  for (const detail::NewMember& member : contents.members) {
    total += member.bytes.size();
    const std::uint64_t most = member.name == kJobMember ? kMostJsonBytes : limits.memberBytes;
    if (member.bytes.size() > most || total > limits.totalBytes)
      return fail("The job is too large to be saved: " + member.name + " has " +
                      std::to_string(member.bytes.size() >> 20) + " MB.",
                  {}, "Remove a scan, or bring a smaller one.");
  }
  return {};
}

}  // namespace

Result<Job> jobFromBytes(std::string_view archive, const ArchiveLimits& limits) {
  auto members = detail::readZip(archive, limits, isOurs);
  if (!members) return tl::unexpected(members.error());
  const auto mime = members->find(kMimeMember);
  if (mime != members->end() && mime->second != kJobMimeType)
    return fail("The file is no job but of another kind: " + mime->second.substr(0, 80) + ".");
  const auto text = members->find(kJobMember);
  if (text == members->end()) return fail("The file is no job: it has no job.json.");
  auto job = jobFromJson(text->second);
  if (!job) return at(job.error(), kJobMember);

  KeptMembers kept(std::move(*members));
  Result<void> filled;
  for (PlanScan& scan : job->planScans)
    if (filled) filled = kept.fill(scan);
  for (RoomScan& scan : job->roomScans)
    if (filled) filled = kept.fill(scan);
  for (Original& original : job->originals)
    if (filled) filled = kept.fill(original);
  if (!filled) return tl::unexpected(filled.error());
  return job;
}

Result<Job> loadJob(const std::filesystem::path& file, const ArchiveLimits& limits) {
  auto job = readWholeFile(file, limits.totalBytes).and_then([&](const std::string& bytes) {
    return jobFromBytes(bytes, limits);
  });
  if (!job && job.error().where != file.string()) return at(job.error(), file.filename().string());
  return job;
}

Result<std::string> jobToBytes(const Job& job) {
  const auto valid = validated(job);
  if (!valid) return tl::unexpected(valid.error());
  const Contents contents = contentsOf(job);
  return checkSizes(contents).and_then([&] { return detail::writeZip(contents.members); });
}

Result<void> saveJob(const Job& job, const std::filesystem::path& file) {
  return jobToBytes(job).and_then([&](const std::string& bytes) { return writeFileAtomically(file, bytes); });
}

}  // namespace baywright
