// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <thread>

#include "jobfile/job_archive.h"
#include "support/random_jobs.h"
#include "support/temporary_folder.h"

namespace baywright {
namespace {

/// Saves two jobs over each other for ever.
[[noreturn]] void saveWithoutEnd(const Job& a, const Job& b, const std::filesystem::path& file) {
  for (;;) {
    if (!saveJob(a, file) || !saveJob(b, file)) ::_exit(1);
  }
}

// The guarantee of saving, attacked: whenever the process is killed, what lies there is one of the two jobs,
// whole.
TEST(SaveJob, LeavesAWholeJobHoweverItIsKilled) {
  const testing::TemporaryFolder folder;
  const std::filesystem::path file = folder / "job.bayjob";
  const Job a = testing::randomJob(1);
  const Job b = testing::randomJob(2);
  const std::string bytesOfA = *jobToBytes(a);
  const std::string bytesOfB = *jobToBytes(b);
  ASSERT_NE(bytesOfA, bytesOfB);
  ASSERT_TRUE(saveJob(a, file));

  constexpr int kKills = 40;
  for (int kill = 0; kill < kKills; ++kill) {
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) saveWithoutEnd(a, b, file);
    std::this_thread::sleep_for(std::chrono::microseconds(1500 + 373 * kill));
    ASSERT_EQ(::kill(child, SIGKILL), 0);
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status)) << "the child could not save";
    const std::string bytes = testing::contentOf(file);
    ASSERT_TRUE(bytes == bytesOfA || bytes == bytesOfB)
        << "kill " << kill << ": " << bytes.size() << " bytes";
  }
  EXPECT_TRUE(loadJob(file));
}

}  // namespace
}  // namespace baywright
