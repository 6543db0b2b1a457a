// SPDX-License-Identifier: Apache-2.0
#include "jobfile/atomic_file.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <cerrno>
#include <chrono>

#include "support/temporary_folder.h"

namespace baywright {
namespace {

namespace fs = std::filesystem;
using testing::contentOf;
using testing::countOfFiles;
using testing::TemporaryFolder;
using testing::writeContent;

mode_t modeOf(const fs::path& file) {
  struct stat status {};
  EXPECT_EQ(::stat(file.c_str(), &status), 0);
  return status.st_mode & 07777;
}

/// Lets the n-th call fail, counted from 1 over all of them, and counts.
class FailAtCall : public FileCalls {
 public:
  explicit FailAtCall(int call, int reason = ENOSPC) : call_(call), reason_(reason) {}
  int calls() const { return count_; }

  int create(const char* path, mode_t mode) override { return fails() ? -1 : FileCalls::create(path, mode); }
  int openDirectory(const char* path) override { return fails() ? -1 : FileCalls::openDirectory(path); }
  ssize_t write(int file, const char* bytes, std::size_t count) override {
    // A disk that is nearly full takes a part first.
    return fails() ? -1 : FileCalls::write(file, bytes, std::min<std::size_t>(count, 5));
  }
  int setMode(int file, mode_t mode) override { return fails() ? -1 : FileCalls::setMode(file, mode); }
  int sync(int file) override { return fails() ? -1 : FileCalls::sync(file); }
  int close(int file) override {
    FileCalls::close(file);
    return fails() ? -1 : 0;
  }
  int rename(const char* from, const char* to) override { return fails() ? -1 : FileCalls::rename(from, to); }

 private:
  bool fails() {
    if (++count_ != call_) return false;
    errno = reason_;
    return true;
  }
  int call_;
  int reason_;
  int count_ = 0;
};

TEST(WriteFileAtomically, MakesANewFileAndReplacesAnOldOne) {
  const TemporaryFolder folder;
  const fs::path file = folder / "job.bayjob";
  ASSERT_TRUE(writeFileAtomically(file, "old"));
  EXPECT_EQ(contentOf(file), "old");
  ASSERT_TRUE(writeFileAtomically(file, std::string("ne\0w", 4)));
  EXPECT_EQ(contentOf(file), std::string("ne\0w", 4));
  EXPECT_EQ(countOfFiles(folder.path()), 1);
}

TEST(WriteFileAtomically, WritesEmptyAndLargeFiles) {
  const TemporaryFolder folder;
  ASSERT_TRUE(writeFileAtomically(folder / "empty", ""));
  EXPECT_EQ(contentOf(folder / "empty"), "");
  const std::string large(5'000'000, 'x');
  ASSERT_TRUE(writeFileAtomically(folder / "large", large));
  EXPECT_EQ(contentOf(folder / "large"), large);
}

TEST(WriteFileAtomically, KeepsPermissions) {
  const TemporaryFolder folder;
  const fs::path file = folder / "job.bayjob";
  writeContent(file, "old");
  ASSERT_EQ(::chmod(file.c_str(), 0640), 0);
  ASSERT_TRUE(writeFileAtomically(file, "new"));
  EXPECT_EQ(modeOf(file), 0640u);
}

TEST(WriteFileAtomically, GivesANewFileWhatTheUmaskAllows) {
  const TemporaryFolder folder;
  const mode_t old = ::umask(027);
  const auto written = writeFileAtomically(folder / "job", "x");
  ::umask(old);
  ASSERT_TRUE(written);
  EXPECT_EQ(modeOf(folder / "job"), 0640u);
}

TEST(WriteFileAtomically, FollowsLinks) {
  const TemporaryFolder folder;
  fs::create_directory(folder / "real");
  writeContent(folder / "real/job", "old");
  fs::create_symlink("real/job", folder / "link");
  fs::create_symlink("link", folder / "link to link");
  ASSERT_TRUE(writeFileAtomically(folder / "link to link", "new"));
  EXPECT_TRUE(fs::is_symlink(folder / "link to link"));
  EXPECT_TRUE(fs::is_symlink(folder / "link"));
  EXPECT_EQ(contentOf(folder / "real/job"), "new");
}

TEST(WriteFileAtomically, MakesWhatALinkPointsTo) {
  const TemporaryFolder folder;
  fs::create_symlink("not yet", folder / "link");
  ASSERT_TRUE(writeFileAtomically(folder / "link", "new"));
  EXPECT_EQ(contentOf(folder / "not yet"), "new");
}

TEST(WriteFileAtomically, RefusesLinksThatLeadRound) {
  const TemporaryFolder folder;
  fs::create_symlink("b", folder / "a");
  fs::create_symlink("a", folder / "b");
  EXPECT_FALSE(writeFileAtomically(folder / "a", "x"));
}

TEST(WriteFileAtomically, RefusesAFolderAndAPlaceThatIsNotThere) {
  const TemporaryFolder folder;
  fs::create_directory(folder / "folder");
  EXPECT_FALSE(writeFileAtomically(folder / "folder", "x"));
  const auto nowhere = writeFileAtomically(folder / "none/job", "x");
  ASSERT_FALSE(nowhere);
  EXPECT_NE(nowhere.error().sentence().find("No such file or directory"), std::string::npos);
  EXPECT_EQ(countOfFiles(folder.path()), 1);
}

// Every step may fail, as on a full disk or a broken one. Until the rename the old file must stay as it was;
// after it the new one is whole. Never a half, and no temporary file left.
TEST(WriteFileAtomically, LeavesOldOrNewWhicheverStepFails) {
  const TemporaryFolder folder;
  const fs::path file = folder / "job";
  const std::string old = "old content";
  const std::string fresh = "the new content";
  int failures = 0;
  int kept = 0;
  for (int call = 1;; ++call) {
    writeContent(file, old);
    FailAtCall calls(call);
    const auto written = writeFileAtomically(file, fresh, calls);
    EXPECT_EQ(countOfFiles(folder.path()), 1) << "call " << call;
    const std::string content = contentOf(file);
    EXPECT_TRUE(content == old || content == fresh) << "call " << call << ": " << content;
    if (calls.calls() < call) {
      EXPECT_TRUE(written);
      EXPECT_EQ(content, fresh);
      break;
    }
    if (written) continue;  // closing the folder: nothing is lost by it
    ++failures;
    kept += content == old;
    EXPECT_NE(written.error().sentence().find("No space left on device"), std::string::npos);
  }
  // create, mode, three writes, sync, close and rename keep the old; opening and syncing the folder come
  // after.
  EXPECT_EQ(kept, 8);
  EXPECT_EQ(failures, 10);
}

TEST(WriteFileAtomically, GoesOnAfterAnInterruption) {
  const TemporaryFolder folder;
  writeContent(folder / "job", "old");
  FailAtCall calls(3, EINTR);  // the first write
  EXPECT_TRUE(writeFileAtomically(folder / "job", "the new content", calls));
  EXPECT_EQ(contentOf(folder / "job"), "the new content");
}

TEST(WriteFileAtomically, SweepsAwayOnlyItsOwnOldLeftovers) {
  const TemporaryFolder folder;
  const auto yesterday = fs::file_time_type::clock::now() - std::chrono::hours(25);
  const fs::path left = folder / ".job.123-0.saving";
  const fs::path recent = folder / ".job.124-0.saving";
  const fs::path other = folder / ".other.123-0.saving";
  const fs::path named = folder / ".job.old.saving";
  for (const fs::path& file : {left, recent, other, named}) writeContent(file, "half");
  for (const fs::path& file : {left, other, named}) fs::last_write_time(file, yesterday);
  ASSERT_TRUE(writeFileAtomically(folder / "job", "x"));
  EXPECT_FALSE(fs::exists(left));
  EXPECT_TRUE(fs::exists(recent));
  EXPECT_TRUE(fs::exists(other));
  EXPECT_TRUE(fs::exists(named));
}

TEST(ReadWholeFile, ReadsWhatWasWritten) {
  const TemporaryFolder folder;
  writeContent(folder / "file", std::string("a\0b", 3));
  EXPECT_EQ(*readWholeFile(folder / "file", 3), std::string("a\0b", 3));
}

TEST(ReadWholeFile, RefusesWhatIsNoFileOrTooLarge) {
  const TemporaryFolder folder;
  writeContent(folder / "file", "abcd");
  EXPECT_FALSE(readWholeFile(folder / "file", 3));
  EXPECT_FALSE(readWholeFile(folder / "none", 3));
  EXPECT_FALSE(readWholeFile(folder.path(), 3));
  ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
  EXPECT_FALSE(readWholeFile(folder / "pipe", 3)) << "and does not wait for a writer";
}

}  // namespace
}  // namespace baywright
