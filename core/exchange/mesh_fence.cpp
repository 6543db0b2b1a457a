// SPDX-License-Identifier: Apache-2.0
#include "exchange/mesh_fence.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <fstream>

#include "exchange/mesh_raw.h"

#if defined(__has_feature)
#if __has_feature(address_sanitizer)
#define BAYWRIGHT_ADDRESS_SANITIZER
#endif
#endif
#if defined(__SANITIZE_ADDRESS__)
#define BAYWRIGHT_ADDRESS_SANITIZER
#endif

namespace baywright {
namespace {

constexpr char kDone = 'D';
constexpr char kProblem = 'P';
constexpr int kLookEveryMilliseconds = 50;

class File {
 public:
  explicit File(int number) : number_(number) {}
  File(const File&) = delete;
  File& operator=(const File&) = delete;
  ~File() { close(); }

  int number() const { return number_; }
  void close() {
    if (number_ >= 0) ::close(number_);
    number_ = -1;
  }

 private:
  int number_;
};

std::uint64_t addressSpaceInUse() {
  std::ifstream facts("/proc/self/statm");
  std::uint64_t pages = 0;
  facts >> pages;
  return pages * static_cast<std::uint64_t>(::sysconf(_SC_PAGESIZE));
}

void limit(decltype(RLIMIT_AS) what, std::uint64_t most) {
  const rlimit value{most, most};
  ::setrlimit(what, &value);
}

void writeAll(int file, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t done = ::write(file, bytes.data(), bytes.size());
    if (done < 0 && errno == EINTR) continue;
    if (done <= 0) return;
    bytes.remove_prefix(static_cast<std::size_t>(done));
  }
}

void append(std::string& bytes, const std::string& text) {
  bytes += text;
  bytes += '\0';
}

/// The child's life.
[[noreturn]] void runChild(const std::function<Result<std::string>()>& work, const FenceLimits& limits,
                           std::uint64_t inUse, int out) {
  limit(RLIMIT_CORE, 0);
  limit(RLIMIT_CPU, limits.seconds);
#ifndef BAYWRIGHT_ADDRESS_SANITIZER  // its shadow memory alone takes terabytes of addresses
  limit(RLIMIT_AS, inUse + limits.memoryBytes);
#else
  (void)inUse;
#endif
  try {
    const auto made = work();
    if (made) {
      writeAll(out, std::string_view(&kDone, 1));
      writeAll(out, *made);
    } else {
      std::string text(1, kProblem);
      append(text, made.error().what);
      append(text, made.error().where);
      append(text, made.error().next);
      writeAll(out, text);
    }
  } catch (...) {
    // No answer: the parent says what that means.
  }
  ::_exit(0);
}

Problem problemFrom(std::string_view text) {
  std::array<std::string, 3> parts;
  for (std::string& part : parts) {
    const std::size_t end = std::min(text.find('\0'), text.size());
    part = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return {parts[0], parts[1], parts[2]};
}

/// All that the child writes until it closes its end.
Result<std::string> collect(int in, const FenceLimits& limits, const Progress& progress) {
  std::string bytes;
  std::string block(1 << 18, '\0');
  while (true) {
    if (progress.stop()) return fail(kImportCancelled);
    pollfd waiting{in, POLLIN, 0};
    const int ready = ::poll(&waiting, 1, kLookEveryMilliseconds);
    if (ready < 0 && errno != EINTR) return fail("The file's reader could not be waited for.");
    if (ready <= 0) continue;
    const ssize_t got = ::read(in, block.data(), block.size());
    if (got < 0 && errno == EINTR) continue;
    if (got <= 0) return bytes;
    bytes.append(block, 0, static_cast<std::size_t>(got));
    if (bytes.size() > limits.outputBytes) return fail("The file holds more than can be taken.");
  }
}

void endChild(pid_t child) {
  ::kill(child, SIGKILL);
  while (::waitpid(child, nullptr, 0) < 0 && errno == EINTR) {
  }
}

}  // namespace

Result<std::string> runFenced(const std::function<Result<std::string>()>& work, const FenceLimits& limits,
                              const Progress& progress) {
  std::array<int, 2> ends{};
  if (::pipe2(ends.data(), O_CLOEXEC) != 0) return fail("The file's reader could not be started.");
  const File in(ends[0]);
  File out(ends[1]);
  const std::uint64_t inUse = addressSpaceInUse();
  const pid_t child = ::fork();
  if (child < 0) return fail("The file's reader could not be started.");
  if (child == 0) runChild(work, limits, inUse, out.number());
  out.close();
  auto bytes = collect(in.number(), limits, progress);
  endChild(child);
  if (!bytes) return bytes;
  if (bytes->starts_with(kProblem)) return tl::unexpected(problemFrom(std::string_view(*bytes).substr(1)));
  if (bytes->starts_with(kDone)) return bytes->erase(0, 1);
  return fail("The file made its reader fail, or asked for more memory or time than it may have.", {},
              "It may be damaged: export it again, or as PLY.");
}

}  // namespace baywright
