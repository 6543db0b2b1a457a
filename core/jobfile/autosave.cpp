// SPDX-License-Identifier: Apache-2.0
#include "jobfile/autosave.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <optional>

#include "jobfile/atomic_file.h"
#include "jobfile/job_archive.h"

namespace baywright {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

constexpr const char* kFolder = "baywright/recovery";
constexpr const char* kNoteSuffix = ".json";
constexpr std::uint64_t kMostNoteBytes = 1 << 20;

fs::path noteFile(const fs::path& folder, const std::string& key) {
  return folder / (key + kNoteSuffix);
}

std::string noteOf(const Recovery& recovery) {
  const json note = {{"original", recovery.original.string()},
                     {"title", recovery.title},
                     {"savedAt", recovery.savedAt},
                     {"user", recovery.owner.user},
                     {"host", recovery.owner.host},
                     {"boot", recovery.owner.boot},
                     {"pid", recovery.owner.pid}};
  return note.dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

template <class T>
std::optional<T> member(const json& note, const char* name) {
  const auto found = note.find(name);
  if (found == note.end()) return std::nullopt;
  if constexpr (std::is_same_v<T, std::string>) {
    if (!found->is_string()) return std::nullopt;
  } else if (!found->is_number_integer()) {
    return std::nullopt;
  }
  return found->get<T>();
}

std::optional<Recovery> recoveryIn(const fs::path& file) {
  const auto text = readWholeFile(file, kMostNoteBytes);
  if (!text) return std::nullopt;
  const json note = json::parse(*text, nullptr, false);
  if (!note.is_object()) return std::nullopt;
  const auto original = member<std::string>(note, "original");
  const auto title = member<std::string>(note, "title");
  const auto savedAt = member<std::int64_t>(note, "savedAt");
  const auto user = member<std::string>(note, "user");
  const auto host = member<std::string>(note, "host");
  const auto boot = member<std::string>(note, "boot");
  const auto pid = member<long>(note, "pid");
  if (!original || !title || !savedAt || !user || !host || !boot || !pid) return std::nullopt;
  return Recovery{file.stem().string(), *original, *title, *savedAt, {*user, *host, *boot, *pid}};
}

Result<void> makeFolder(const fs::path& folder) {
  std::error_code error;
  fs::create_directories(folder, error);
  if (!error) fs::permissions(folder, fs::perms::owner_all, error);
  if (error)
    return fail("The folder for unsaved work cannot be made: " + error.message() + ".", folder.string());
  return {};
}

}  // namespace

fs::path recoveryFolder(const char* xdgStateHome, const char* home) {
  if (xdgStateHome && fs::path(xdgStateHome).is_absolute()) return fs::path(xdgStateHome) / kFolder;
  if (home && fs::path(home).is_absolute()) return fs::path(home) / ".local/state" / kFolder;
  return {};
}

std::string newRecoveryKey(const ProcessIdentity& owner, std::int64_t now, int count) {
  return std::to_string(now) + "-" + std::to_string(owner.pid) + "-" + std::to_string(count);
}

fs::path recoveryFile(const fs::path& folder, const std::string& key) {
  return folder / (key + std::string(kJobSuffix));
}

Result<void> writeRecovery(const fs::path& folder, const Recovery& recovery, const Job& job) {
  // The job first: a note without a job would offer what is not there.
  return makeFolder(folder)
      .and_then([&] { return saveJob(job, recoveryFile(folder, recovery.key)); })
      .and_then([&] { return writeFileAtomically(noteFile(folder, recovery.key), noteOf(recovery)); });
}

std::vector<Recovery> abandonedRecoveries(const fs::path& folder) {
  std::vector<Recovery> found;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(folder, error)) {
    if (entry.path().extension() != kNoteSuffix) continue;
    auto recovery = recoveryIn(entry.path());
    if (recovery && hasEnded(recovery->owner) && fs::exists(recoveryFile(folder, recovery->key), error))
      found.push_back(std::move(*recovery));
  }
  std::sort(found.begin(), found.end(), [](const Recovery& a, const Recovery& b) {
    return a.savedAt != b.savedAt ? a.savedAt > b.savedAt : a.key < b.key;
  });
  return found;
}

Result<void> removeRecovery(const fs::path& folder, const std::string& key) {
  for (const fs::path& file : {noteFile(folder, key), recoveryFile(folder, key)}) {
    std::error_code error;
    fs::remove(file, error);
    if (error) return fail("Unsaved work cannot be removed: " + error.message() + ".", file.string());
  }
  return {};
}

}  // namespace baywright
