// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <sys/types.h>

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "base/problem.h"

namespace baywright {

/// What writing a file asks of the system, so that a test can let any step fail. The functions are the POSIX
/// ones of the same name: -1 and errno on failure.
class FileCalls {
 public:
  virtual ~FileCalls() = default;

  /// A new file for writing; fails where there is one already.
  virtual int create(const char* path, mode_t mode);
  virtual int openDirectory(const char* path);
  virtual ssize_t write(int file, const char* bytes, std::size_t count);
  virtual int setMode(int file, mode_t mode);
  virtual int sync(int file);
  virtual int close(int file);
  virtual int rename(const char* from, const char* to);
  virtual int remove(const char* path);
};

/// Gives the file these bytes: afterwards there is the old file or the new one, whole, also when the process
/// is killed or the power fails in between. The bytes go to a temporary file in the same folder (hidden,
/// suffix
/// ".saving"), which is synced, renamed over the old one, and the folder synced.
///
/// A symbolic link is followed: its target is replaced. Permissions of the old file are kept; a new one gets
/// what the umask allows. The owner may change where another user's file is replaced. Temporary files of this
/// file that a killed save left behind are removed when they are older than a day.
///
/// On failure the temporary file is gone and the sentence says at which step and why.
Result<void> writeFileAtomically(const std::filesystem::path& file, std::string_view bytes);
Result<void> writeFileAtomically(const std::filesystem::path& file, std::string_view bytes, FileCalls& calls);

/// The whole of a regular file, or a sentence: not there, no file, not readable, more than `most` bytes.
Result<std::string> readWholeFile(const std::filesystem::path& file, std::uint64_t most);

}  // namespace baywright
