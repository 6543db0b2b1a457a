// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "job/job.h"
#include "jobfile/job_archive.h"

namespace baywright::testing {

inline std::string textOf(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

struct Ran {
  int code = -1;
  std::string out;
  std::string err;
};

/// A folder of its own, with spaces in its name, and the real program run in it.
class ProgramTest : public ::testing::Test {
 protected:
  void SetUp() override {
    const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
    folder = std::filesystem::temp_directory_path() /
             ("baywright cli " + std::string(info->test_suite_name()) + " " + info->name());
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
  }
  void TearDown() override { std::filesystem::remove_all(folder); }

  /// `words` as typed into a shell. There is no display, and the locale is the plain one.
  Ran run(const std::string& words,
          const std::string& environment = "env -u DISPLAY -u WAYLAND_DISPLAY LC_ALL=C") {
    const std::string command = "cd '" + folder.string() + "' && " + environment +
                                " '" BAYWRIGHT_PROGRAM "' " + words + " >'.stdout' 2>'.stderr'";
    const int status = std::system(command.c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, textOf(folder / ".stdout"),
            textOf(folder / ".stderr")};
  }

  void save(const Job& job, const std::string& name) {
    const Result<void> saved = saveJob(job, folder / name);
    ASSERT_TRUE(saved.has_value()) << saved.error().sentence();
  }

  std::filesystem::path folder;
};

}  // namespace baywright::testing
