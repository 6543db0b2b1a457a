// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

/// A job file is a zip archive:
///   mimetype              first, stored: kJobMimeType, so that a file manager can tell
///   job.json              deflated: jobToJson
///   scans/ID-NAME         stored: the original file of a scan, as it was brought
///   originals/ID-NAME     stored: a drawing or measuring list that the room came from, as it was brought
///   scans/ID.mesh         stored: triangles of a 3D scan, ready to use (mesh_bytes.h)
///   scans/ID.points       stored: points of a 3D scan, likewise
/// Other members are passed over and not written again. The same job gives the same bytes.
inline constexpr std::string_view kJobMimeType = "application/vnd.baywright.job+zip";
inline constexpr std::string_view kJobSuffix = ".bayjob";

/// What a file may ask of the machine that opens it.
struct ArchiveLimits {
  std::uint64_t memberBytes = 512ull << 20;
  std::uint64_t totalBytes = 1ull << 30;
  std::uint64_t members = 10000;
  /// Unpacked over packed size, for members of more than 1 MB. Text deflates by 3 to 20; a bomb by 1000.
  double ratio = 200;
};

/// Reads a job. Nothing is ever unpacked to disk, and on failure nothing has changed.
/// Refused with a sentence: no such file, no archive, damaged or cut short, a checksum that does not fit,
/// names that leave the archive or are there twice, encryption, more than the limits allow, another kind of
/// archive, scans that are missing or damaged, and whatever jobFromJson refuses.
Result<Job> loadJob(const std::filesystem::path& file, const ArchiveLimits& limits = {});
Result<Job> jobFromBytes(std::string_view archive, const ArchiveLimits& limits = {});

/// Replaces the file as a whole or not at all (atomic_file.h). A job that loadJob would refuse is not
/// written.
Result<void> saveJob(const Job& job, const std::filesystem::path& file);
Result<std::string> jobToBytes(const Job& job);

}  // namespace baywright
