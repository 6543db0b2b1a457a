// SPDX-License-Identifier: Apache-2.0
#include "jobfile/atomic_file.h"

#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <optional>
#include <system_error>

#include "jobfile/detail/system_problem.h"

namespace baywright {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kTemporarySuffix = ".saving";
constexpr auto kAbandonedAfter = std::chrono::hours(24);
constexpr mode_t kNewFileMode = 0666;  // less what the umask takes away

/// Where the bytes go in the end: the target of a link, also of one that points to nothing yet.
Result<fs::path> targetOf(const fs::path& file) {
  std::error_code error;
  fs::path target = fs::absolute(file, error);
  constexpr int kLongestChain = 40;  // as the kernel's
  for (int links = 0; !error && fs::is_symlink(fs::symlink_status(target, error)); ++links) {
    if (links == kLongestChain) return fail("The link leads round in a circle.", file.string());
    const fs::path next = fs::read_symlink(target, error);
    target = (target.parent_path() / next).lexically_normal();
  }
  if (error && error != std::errc::no_such_file_or_directory)
    return fail("The file's place cannot be read: " + error.message() + ".", file.string());
  return target;
}

std::string temporaryStem(const fs::path& target) {
  return "." + target.filename().string() + ".";
}

bool isTemporaryOf(const fs::path& target, const std::string& name) {
  const std::string stem = temporaryStem(target);
  return name.size() > stem.size() + kTemporarySuffix.size() && name.starts_with(stem) &&
         name.ends_with(kTemporarySuffix) &&
         name.find_first_not_of("0123456789-", stem.size()) == name.size() - kTemporarySuffix.size();
}

void removeAbandoned(const fs::path& target) {
  std::error_code ignored;  // they only take room: another save will try again
  const auto old = fs::file_time_type::clock::now() - kAbandonedAfter;
  for (const auto& entry : fs::directory_iterator(target.parent_path(), ignored)) {
    if (!isTemporaryOf(target, entry.path().filename().string())) continue;
    std::error_code unreadable;
    if (entry.last_write_time(unreadable) < old && !unreadable) fs::remove(entry.path(), ignored);
  }
}

/// One save in progress. Unless it succeeds, nothing of it stays.
class Saving {
 public:
  Saving(fs::path target, FileCalls& calls) : target_(std::move(target)), calls_(calls) {}
  Saving(const Saving&) = delete;
  Saving& operator=(const Saving&) = delete;
  ~Saving() {
    if (file_ >= 0) calls_.close(file_);
    if (!temporary_.empty()) calls_.remove(temporary_.c_str());
  }

  Result<void> run(std::string_view bytes) {
    return open().and_then([&] { return keepMode(); }).and_then([&] { return write(bytes); }).and_then([&] {
      return finish();
    });
  }

 private:
  Result<void> problem(const std::string& step) const {
    return detail::systemProblem("The file could not be " + step, target_, errno);
  }

  Result<void> open() {
    const std::string stem = temporaryStem(target_) + std::to_string(::getpid());
    constexpr int kTries = 100;
    for (int count = 0; count < kTries; ++count) {
      const fs::path path =
          target_.parent_path() / (stem + "-" + std::to_string(count) + std::string(kTemporarySuffix));
      file_ = calls_.create(path.c_str(), kNewFileMode);
      if (file_ >= 0) {
        temporary_ = path.string();
        return {};
      }
      if (errno != EEXIST) break;
    }
    return problem("created beside the old one");
  }

  Result<void> keepMode() {
    struct stat old {};
    if (::stat(target_.c_str(), &old) != 0) return {};  // a new file
    if (!S_ISREG(old.st_mode)) return fail("There is something else than a file.", target_.string());
    if (calls_.setMode(file_, old.st_mode & 07777) != 0) return problem("given the old one's permissions");
    return {};
  }

  Result<void> write(std::string_view bytes) {
    while (!bytes.empty()) {
      const ssize_t written = calls_.write(file_, bytes.data(), bytes.size());
      if (written < 0 && errno == EINTR) continue;
      if (written == 0) errno = ENOSPC;
      if (written <= 0) return problem("written");
      bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return {};
  }

  Result<void> finish() {
    if (calls_.sync(file_) != 0) return problem("brought to the disk");
    const int file = std::exchange(file_, -1);
    if (calls_.close(file) != 0) return problem("closed");
    if (calls_.rename(temporary_.c_str(), target_.c_str()) != 0) return problem("put in the old one's place");
    temporary_.clear();
    return syncFolder();
  }

  /// The new file is there already. Only whether it would outlive a power failure is in doubt; file systems
  /// that cannot sync a folder say so by EINVAL.
  Result<void> syncFolder() {
    const int folder = calls_.openDirectory(target_.parent_path().c_str());
    if (folder < 0) return problem("confirmed in its folder");
    const bool synced = calls_.sync(folder) == 0 || errno == EINVAL;
    const int reason = errno;
    calls_.close(folder);
    errno = reason;
    return synced ? Result<void>() : problem("confirmed in its folder");
  }

  fs::path target_;
  FileCalls& calls_;
  std::string temporary_;
  int file_ = -1;
};

}  // namespace

Result<void> writeFileAtomically(const fs::path& file, std::string_view bytes) {
  FileCalls calls;
  return writeFileAtomically(file, bytes, calls);
}

Result<void> writeFileAtomically(const fs::path& file, std::string_view bytes, FileCalls& calls) {
  const auto target = targetOf(file);
  if (!target) return tl::unexpected(target.error());
  removeAbandoned(*target);
  return Saving(*target, calls).run(bytes);
}

}  // namespace baywright
