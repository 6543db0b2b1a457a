// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "base/problem.h"
#include "job/job.h"
#include "jobfile/job_lock.h"

namespace baywright {

/// Where unsaved work is kept: XDG_STATE_HOME/baywright/recovery, or ~/.local/state/baywright/recovery where
/// that is not set to an absolute path (XDG Base Directory Specification). Pass the environment's values,
/// null where unset; empty when neither helps.
std::filesystem::path recoveryFolder(const char* xdgStateHome, const char* home);

/// Unsaved work of one window.
struct Recovery {
  std::string key;                 ///< names it within the folder; newRecoveryKey makes one
  std::filesystem::path original;  ///< the job's own file; empty when it was never saved
  std::string title;               ///< what the window showed
  std::int64_t savedAt = 0;        ///< seconds since 1970, UTC
  ProcessIdentity owner;           ///< who wrote it

  bool operator==(const Recovery&) const = default;
};

/// A key that no other window has: from process, time and a count.
std::string newRecoveryKey(const ProcessIdentity& owner, std::int64_t now, int count);

/// Where the job of a recovery lies; loadJob reads it.
std::filesystem::path recoveryFile(const std::filesystem::path& folder, const std::string& key);

/// Keeps the job under the recovery's key, in place of what was there. Creates the folder, for this user
/// only.
Result<void> writeRecovery(const std::filesystem::path& folder, const Recovery& recovery, const Job& job);

/// Work whose process has ended without removing it, the newest first. Damaged entries are passed over: the
/// job itself may still be there for a person to look at.
std::vector<Recovery> abandonedRecoveries(const std::filesystem::path& folder);

/// After a save, or when the person does not want it. Nothing there is no failure.
Result<void> removeRecovery(const std::filesystem::path& folder, const std::string& key);

}  // namespace baywright
