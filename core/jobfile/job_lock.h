// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "base/problem.h"

namespace baywright {

/// A process of somebody on some machine.
struct ProcessIdentity {
  std::string user;
  std::string host;
  std::string boot;  ///< names the machine's run since it was started; empty where that cannot be told
  long pid = 0;

  bool operator==(const ProcessIdentity&) const = default;
};

/// This process, as the system names it; parts that it cannot name are empty.
ProcessIdentity thisProcess();

/// True where it can be told that the process has ended: it ran on this machine, and that was started anew
/// since, or the pid is free, or nothing but a parent that has not asked for it holds the pid.
bool hasEnded(const ProcessIdentity& process);

/// Says that somebody has a job open, by a file ".NAME.lock" beside it. Advisory: it keeps two people from
/// overwriting each other's work, not a program from doing so. The file goes when the lock does.
class JobLock {
 public:
  JobLock(JobLock&& other) noexcept;
  JobLock& operator=(JobLock&& other) noexcept;
  ~JobLock();

 private:
  friend Result<JobLock> lockJob(const std::filesystem::path&, const ProcessIdentity&);
  friend Result<JobLock> takeOverLock(const std::filesystem::path&, const ProcessIdentity&);
  JobLock(std::filesystem::path file, ProcessIdentity holder);

  std::filesystem::path file_;  ///< empty: moved from
  ProcessIdentity holder_;
};

/// Fails with a sentence that names the holder when another process has the job open, or says why no lock can
/// be put there. A lock whose process has ended, or that is not readable, is replaced.
Result<JobLock> lockJob(const std::filesystem::path& job, const ProcessIdentity& holder = thisProcess());

/// The same, whoever holds it: for a person who knows better.
Result<JobLock> takeOverLock(const std::filesystem::path& job, const ProcessIdentity& holder = thisProcess());

/// Who has the job open; nobody when there is no lock or its process has ended.
std::optional<ProcessIdentity> lockHolder(const std::filesystem::path& job);

}  // namespace baywright
