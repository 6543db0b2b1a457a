// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace baywright::testing {

/// Compares a text with the file tests/golden/`path` line by line. Where they differ the test fails, names
/// the first line that does, and what came out stands under the same path in the folder golden_out of the
/// working directory, to be compared with a diff tool. Run the test with BAYWRIGHT_UPDATE_GOLDEN=1 to take
/// what came out as the new truth; then read the difference before you commit it.
inline void expectGolden(const std::string& path, const std::string& text) {
  namespace fs = std::filesystem;
  const auto write = [&](const fs::path& file) {
    fs::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary) << text;
  };
  const fs::path golden = fs::path(BAYWRIGHT_TESTS) / "golden" / path;
  if (std::getenv("BAYWRIGHT_UPDATE_GOLDEN")) {
    write(golden);
    return;
  }
  std::ifstream file(golden, std::ios::binary);
  std::stringstream expected;
  expected << file.rdbuf();
  if (file && expected.str() == text) return;

  write(fs::path("golden_out") / path);
  ASSERT_TRUE(file) << "There is no " << golden << "; run with BAYWRIGHT_UPDATE_GOLDEN=1 to make it.";
  std::istringstream was(expected.str());
  std::istringstream is(text);
  std::string wasLine;
  std::string isLine;
  for (int line = 1;; ++line) {
    const bool more = static_cast<bool>(std::getline(was, wasLine));
    const bool also = static_cast<bool>(std::getline(is, isLine));
    if (more && also && wasLine == isLine) continue;
    ADD_FAILURE() << golden << " differs in line " << line << "\n  was: " << (more ? wasLine : "(end)")
                  << "\n  is:  " << (also ? isLine : "(end)");
    return;
  }
}

}  // namespace baywright::testing
