// SPDX-License-Identifier: Apache-2.0
#include "jobfile/job_lock.h"

#include <fcntl.h>
#include <pwd.h>
#include <signal.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <fstream>
#include <sstream>

#include "jobfile/atomic_file.h"
#include "jobfile/detail/system_problem.h"

namespace baywright {
namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t kMostLockBytes = 4096;

fs::path lockFile(const fs::path& job) {
  return job.parent_path() / ("." + job.filename().string() + ".lock");
}

/// Four lines: user, host, boot, pid.
std::string textOf(const ProcessIdentity& holder) {
  return holder.user + "\n" + holder.host + "\n" + holder.boot + "\n" + std::to_string(holder.pid) + "\n";
}

std::optional<ProcessIdentity> identityIn(const fs::path& file) {
  const auto text = readWholeFile(file, kMostLockBytes);
  if (!text) return std::nullopt;
  std::istringstream lines(*text);
  ProcessIdentity found;
  std::string pid;
  if (!std::getline(lines, found.user) || !std::getline(lines, found.host) ||
      !std::getline(lines, found.boot) || !std::getline(lines, pid))
    return std::nullopt;
  const auto [end, error] = std::from_chars(pid.data(), pid.data() + pid.size(), found.pid);
  if (error != std::errc() || end != pid.data() + pid.size() || found.pid <= 0) return std::nullopt;
  return found;
}

tl::unexpected<Problem> heldBy(const ProcessIdentity& holder, const fs::path& job) {
  return fail("The job is open already: " + holder.user + " on " + holder.host + ", process " +
                  std::to_string(holder.pid) + ".",
              job.filename().string(), "Open it without saving, or close it there first.");
}

/// True when the file was not there and is now.
Result<bool> createLock(const fs::path& file, const ProcessIdentity& holder) {
  FileCalls calls;
  const int lock = calls.create(file.c_str(), 0644);
  if (lock < 0 && errno == EEXIST) return false;
  if (lock < 0) return detail::systemProblem("The job cannot be marked as open", file, errno);
  const std::string text = textOf(holder);
  const bool written = calls.write(lock, text.data(), text.size()) == static_cast<ssize_t>(text.size());
  const int reason = errno;
  calls.close(lock);
  if (written) return true;
  calls.remove(file.c_str());
  return detail::systemProblem("The job cannot be marked as open", file, reason);
}

std::string bootName() {
  std::ifstream file("/proc/sys/kernel/random/boot_id");
  std::string name;
  std::getline(file, name);
  return name;
}

/// A process that was killed keeps its pid until its parent asks for it, and some parents never do.
bool isOnlyListed(long pid) {
  std::ifstream file("/proc/" + std::to_string(pid) + "/stat");
  std::string line;
  std::getline(file, line);
  const std::size_t name = line.rfind(')');  // it may hold anything; the state follows it
  return name != std::string::npos && name + 2 < line.size() &&
         (line[name + 2] == 'Z' || line[name + 2] == 'X');
}

}  // namespace

ProcessIdentity thisProcess() {
  ProcessIdentity me;
  me.pid = ::getpid();
  me.boot = bootName();
  std::array<char, 256> host{};
  if (::gethostname(host.data(), host.size() - 1) == 0) me.host = host.data();
  std::array<char, 4096> buffer{};
  passwd entry{};
  passwd* found = nullptr;
  if (::getpwuid_r(::getuid(), &entry, buffer.data(), buffer.size(), &found) == 0 && found)
    me.user = found->pw_name;
  return me;
}

bool hasEnded(const ProcessIdentity& process) {
  const ProcessIdentity me = thisProcess();
  if (process.host != me.host || process.pid <= 0) return false;
  if (!process.boot.empty() && !me.boot.empty() && process.boot != me.boot) return true;
  const bool isFree = ::kill(static_cast<pid_t>(process.pid), 0) != 0 && errno == ESRCH;
  return isFree || isOnlyListed(process.pid);
}

JobLock::JobLock(fs::path file, ProcessIdentity holder)
    : file_(std::move(file)), holder_(std::move(holder)) {}

JobLock::JobLock(JobLock&& other) noexcept
    : file_(std::exchange(other.file_, {})), holder_(std::exchange(other.holder_, {})) {}

JobLock& JobLock::operator=(JobLock&& other) noexcept {
  std::swap(file_, other.file_);
  std::swap(holder_, other.holder_);
  return *this;
}

JobLock::~JobLock() {
  // Whoever took the lock over keeps it.
  if (!file_.empty() && identityIn(file_) == holder_) {
    std::error_code ignored;
    fs::remove(file_, ignored);
  }
}

Result<JobLock> lockJob(const fs::path& job, const ProcessIdentity& holder) {
  const fs::path file = lockFile(job);
  auto created = createLock(file, holder);
  if (created && !*created) {
    const auto other = identityIn(file);
    if (other && !hasEnded(*other)) return heldBy(*other, job);
    return takeOverLock(job, holder);
  }
  if (!created) return tl::unexpected(created.error());
  return JobLock(file, holder);
}

Result<JobLock> takeOverLock(const fs::path& job, const ProcessIdentity& holder) {
  const fs::path file = lockFile(job);
  const auto written = writeFileAtomically(file, textOf(holder));
  if (!written) return tl::unexpected(written.error());
  return JobLock(file, holder);
}

std::optional<ProcessIdentity> lockHolder(const fs::path& job) {
  const auto holder = identityIn(lockFile(job));
  return holder && !hasEnded(*holder) ? holder : std::nullopt;
}

}  // namespace baywright
