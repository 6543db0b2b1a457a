// SPDX-License-Identifier: Apache-2.0
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

#include "jobfile/atomic_file.h"
#include "jobfile/detail/system_problem.h"

namespace baywright {
namespace {

/// Closes what it holds.
struct OpenFile {
  int number = -1;
  explicit OpenFile(int n) : number(n) {}
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;
  ~OpenFile() {
    if (number >= 0) ::close(number);
  }
};

std::string megabytes(std::uint64_t bytes) {
  return std::to_string((bytes + 500000) / 1000000) + " MB";
}

}  // namespace

Result<std::string> readWholeFile(const std::filesystem::path& file, std::uint64_t most) {
  // Without O_NONBLOCK a pipe that nobody writes to would hold us for ever.
  const OpenFile open(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
  if (open.number < 0) return detail::systemProblem("The file cannot be opened", file, errno);
  struct stat status {};
  if (::fstat(open.number, &status) != 0)
    return detail::systemProblem("The file cannot be read", file, errno);
  if (!S_ISREG(status.st_mode)) return fail("This is no file.", file.string());
  const auto size = static_cast<std::uint64_t>(status.st_size);
  if (size > most)
    return fail("The file has " + megabytes(size) + ", but at most " + megabytes(most) + " are read.",
                file.string());

  std::string bytes(size, '\0');
  std::size_t done = 0;
  while (done < bytes.size()) {
    const ssize_t got = ::read(open.number, bytes.data() + done, bytes.size() - done);
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return detail::systemProblem("The file cannot be read", file, errno);
    if (got == 0) return fail("The file became shorter while it was read.", file.string(), "Try again.");
    done += static_cast<std::size_t>(got);
  }
  return bytes;
}

}  // namespace baywright
