// SPDX-License-Identifier: Apache-2.0
#include "jobfile/save_originals.h"

#include <string>

#include "jobfile/atomic_file.h"

namespace baywright {
namespace {

std::vector<BlobPtr> originalsOf(const Job& job) {
  std::vector<BlobPtr> files;
  const auto take = [&](const auto& things) {
    for (const auto& thing : things)
      if (thing.file) files.push_back(thing.file);
  };
  take(job.planScans);
  take(job.roomScans);
  take(job.originals);
  return files;
}

std::filesystem::path freePath(const std::filesystem::path& folder, const std::string& name) {
  const std::filesystem::path plain(name);
  std::filesystem::path path = folder / plain;
  std::error_code ignored;
  for (int number = 2; std::filesystem::exists(path, ignored); ++number)
    path =
        folder / (plain.stem().string() + " (" + std::to_string(number) + ")" + plain.extension().string());
  return path;
}

}  // namespace

std::size_t originalCount(const Job& job) {
  return originalsOf(job).size();
}

Result<std::vector<std::filesystem::path>> saveOriginals(const Job& job,
                                                         const std::filesystem::path& folder) {
  std::error_code ignored;
  if (!std::filesystem::is_directory(folder, ignored))
    return fail("There is no such folder.", folder.string(), "Choose one that there is.");
  std::vector<std::filesystem::path> written;
  for (const BlobPtr& file : originalsOf(job)) {
    const std::filesystem::path path = freePath(folder, file->fileName);
    if (const auto done = writeFileAtomically(path, file->bytes); !done) return tl::unexpected(done.error());
    written.push_back(path);
  }
  return written;
}

}  // namespace baywright
