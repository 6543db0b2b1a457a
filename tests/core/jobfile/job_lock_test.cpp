// SPDX-License-Identifier: Apache-2.0
#include "jobfile/job_lock.h"

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include "support/temporary_folder.h"

namespace baywright {
namespace {

using testing::TemporaryFolder;

/// A process of this machine that has ended and been waited for.
ProcessIdentity endedProcess() {
  const pid_t child = ::fork();
  if (child == 0) ::_exit(0);
  ::waitpid(child, nullptr, 0);
  ProcessIdentity ended = thisProcess();
  ended.pid = child;
  return ended;
}

TEST(JobLock, TellsTheSecondWhoTheFirstIs) {
  const TemporaryFolder folder;
  const auto first = lockJob(folder / "job");
  ASSERT_TRUE(first) << first.error().sentence();
  const auto second = lockJob(folder / "job");
  ASSERT_FALSE(second);
  EXPECT_NE(second.error().what.find(std::to_string(::getpid())), std::string::npos) << second.error().what;
  EXPECT_EQ(lockHolder(folder / "job"), thisProcess());
}

TEST(JobLock, GoesWithItsObject) {
  const TemporaryFolder folder;
  { const auto lock = lockJob(folder / "job"); }
  EXPECT_EQ(testing::countOfFiles(folder.path()), 0);
  EXPECT_EQ(lockHolder(folder / "job"), std::nullopt);
  EXPECT_TRUE(lockJob(folder / "job"));
}

TEST(JobLock, MovesWithoutLettingGo) {
  const TemporaryFolder folder;
  auto first = lockJob(folder / "job");
  {
    const JobLock moved = std::move(*first);
    EXPECT_TRUE(lockHolder(folder / "job"));
  }
  EXPECT_FALSE(lockHolder(folder / "job"));
}

TEST(JobLock, OfAProcessThatHasEndedIsReplaced) {
  const TemporaryFolder folder;
  const ProcessIdentity ended = endedProcess();
  const auto left = takeOverLock(folder / "job", ended);
  ASSERT_TRUE(left);
  EXPECT_EQ(lockHolder(folder / "job"), std::nullopt);
  const auto lock = lockJob(folder / "job");
  ASSERT_TRUE(lock) << lock.error().sentence();
  EXPECT_EQ(lockHolder(folder / "job"), thisProcess());
}

TEST(JobLock, OfAProcessThatWasKilledIsFreeBeforeItsParentAsksForIt) {
  const pid_t child = ::fork();
  if (child == 0) {
    ::pause();
    ::_exit(0);
  }
  ProcessIdentity killed = thisProcess();
  killed.pid = child;
  EXPECT_FALSE(hasEnded(killed));
  ::kill(child, SIGKILL);
  siginfo_t info{};
  ASSERT_EQ(::waitid(P_PID, static_cast<id_t>(child), &info, WEXITED | WNOWAIT), 0);  // it stays in the list
  EXPECT_TRUE(hasEnded(killed));
  ::waitpid(child, nullptr, 0);
  EXPECT_TRUE(hasEnded(killed));
}

TEST(JobLock, OfAnotherMachineHolds) {
  const TemporaryFolder folder;
  ProcessIdentity other = endedProcess();
  other.host = "another-machine";
  other.user = "Sam";
  const auto theirs = takeOverLock(folder / "job", other);
  const auto ours = lockJob(folder / "job");
  ASSERT_FALSE(ours);
  EXPECT_NE(ours.error().what.find("Sam on another-machine"), std::string::npos);
}

TEST(JobLock, OfThisMachineBeforeItWasStartedAnewIsReplaced) {
  ProcessIdentity before = thisProcess();  // the pid is in use again, by us
  if (before.boot.empty()) GTEST_SKIP() << "this machine does not name its runs";
  before.boot = "another run";
  EXPECT_TRUE(hasEnded(before));
  EXPECT_FALSE(hasEnded(thisProcess()));
}

TEST(JobLock, TakenOverStaysWithWhoTookIt) {
  const TemporaryFolder folder;
  auto first = lockJob(folder / "job");
  ProcessIdentity other = thisProcess();
  other.host = "another-machine";
  const auto second = takeOverLock(folder / "job", other);
  ASSERT_TRUE(second);
  { const JobLock ended = std::move(*first); }
  EXPECT_EQ(lockHolder(folder / "job"), other);
}

TEST(JobLock, ThatCannotBeReadIsReplaced) {
  const TemporaryFolder folder;
  testing::writeContent(folder / ".job.lock", "");
  EXPECT_TRUE(lockJob(folder / "job"));
}

TEST(JobLock, SaysWhyItCannotBePut) {
  const TemporaryFolder folder;
  const auto lock = lockJob(folder / "none/job");
  ASSERT_FALSE(lock);
  EXPECT_NE(lock.error().what.find("cannot be marked as open"), std::string::npos);
}

}  // namespace
}  // namespace baywright
