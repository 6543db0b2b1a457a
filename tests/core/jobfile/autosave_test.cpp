// SPDX-License-Identifier: Apache-2.0
#include "jobfile/autosave.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "jobfile/job_archive.h"
#include "support/random_jobs.h"
#include "support/temporary_folder.h"

namespace baywright {
namespace {

using testing::TemporaryFolder;

Recovery recoveryOf(const std::string& key, std::int64_t savedAt) {
  ProcessIdentity owner = thisProcess();
  const pid_t child = ::fork();
  if (child == 0) ::_exit(0);
  ::waitpid(child, nullptr, 0);
  owner.pid = child;
  return {key, "/somewhere/Größe \"2\".bayjob", "Größe \"2\"", savedAt, owner};
}

// XDG Base Directory Specification 0.8: XDG_STATE_HOME, by default ~/.local/state; relative paths are
// ignored.
TEST(RecoveryFolder, FollowsTheBaseDirectorySpecification) {
  EXPECT_EQ(recoveryFolder("/state", "/home/robin"), "/state/baywright/recovery");
  EXPECT_EQ(recoveryFolder(nullptr, "/home/robin"), "/home/robin/.local/state/baywright/recovery");
  EXPECT_EQ(recoveryFolder("", "/home/robin"), "/home/robin/.local/state/baywright/recovery");
  EXPECT_EQ(recoveryFolder("state", "/home/robin"), "/home/robin/.local/state/baywright/recovery");
  EXPECT_EQ(recoveryFolder(nullptr, nullptr), "");
}

TEST(Recovery, BringsBackTheJobAndWhatWasSaidOfIt) {
  const TemporaryFolder folder;
  Job job = testing::randomJob(7);
  job.originals.push_back(
      {job.takeId(), "List", std::make_shared<const Blob>(Blob{"list.csv", "kind,value\n"})});
  const Recovery recovery = recoveryOf("a", 1000);
  ASSERT_TRUE(writeRecovery(folder / "new/recovery", recovery, job));
  const auto found = abandonedRecoveries(folder / "new/recovery");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0], recovery);
  const auto loaded = loadJob(recoveryFile(folder / "new/recovery", found[0].key));
  ASSERT_TRUE(loaded) << loaded.error().sentence();
  EXPECT_EQ(*jobToBytes(*loaded), *jobToBytes(job));
}

TEST(Recovery, IsForItsUserOnly) {
  const TemporaryFolder folder;
  ASSERT_TRUE(writeRecovery(folder / "recovery", recoveryOf("a", 1), newJob()));
  struct stat status {};
  ASSERT_EQ(::stat((folder / "recovery").c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 0777, 0700u);
}

TEST(Recovery, ListsTheNewestFirstAndNotThoseAtWork) {
  const TemporaryFolder folder;
  ASSERT_TRUE(writeRecovery(folder.path(), recoveryOf("old", 1000), newJob()));
  ASSERT_TRUE(writeRecovery(folder.path(), recoveryOf("new", 2000), newJob()));
  Recovery ours = recoveryOf("ours", 3000);
  ours.owner = thisProcess();
  ASSERT_TRUE(writeRecovery(folder.path(), ours, newJob()));
  const auto found = abandonedRecoveries(folder.path());
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].key, "new");
  EXPECT_EQ(found[1].key, "old");
}

TEST(Recovery, IsReplacedAndRemoved) {
  const TemporaryFolder folder;
  ASSERT_TRUE(writeRecovery(folder.path(), recoveryOf("a", 1000), newJob()));
  ASSERT_TRUE(writeRecovery(folder.path(), recoveryOf("a", 2000), newJob()));
  ASSERT_EQ(abandonedRecoveries(folder.path()).size(), 1u);
  EXPECT_EQ(abandonedRecoveries(folder.path())[0].savedAt, 2000);
  EXPECT_TRUE(removeRecovery(folder.path(), "a"));
  EXPECT_EQ(testing::countOfFiles(folder.path()), 0);
  EXPECT_TRUE(removeRecovery(folder.path(), "a"));
}

TEST(Recovery, PassesOverDamagedNotes) {
  const TemporaryFolder folder;
  for (const char* note : {"", "[]", "{\"title\": 3}", "\xff\xfe"}) {
    testing::writeContent(folder / "a.json", note);
    EXPECT_TRUE(abandonedRecoveries(folder.path()).empty()) << note;
  }
  EXPECT_TRUE(abandonedRecoveries(folder / "none").empty());
}

TEST(NewRecoveryKey, DiffersByWindowProcessAndTime) {
  ProcessIdentity a = thisProcess();
  ProcessIdentity b = a;
  b.pid += 1;
  EXPECT_NE(newRecoveryKey(a, 1, 1), newRecoveryKey(a, 1, 2));
  EXPECT_NE(newRecoveryKey(a, 1, 1), newRecoveryKey(b, 1, 1));
  EXPECT_NE(newRecoveryKey(a, 1, 1), newRecoveryKey(a, 2, 1));
}

}  // namespace
}  // namespace baywright
