// SPDX-License-Identifier: Apache-2.0
#include <cstdio>
#include <filesystem>

#include "jobfile/job_archive.h"
#include "support/random_jobs.h"

/// Writes jobs with some of everything into a folder, for validate_schema.py.
int main(int count, char** arguments) {
  using namespace baywright;
  if (count != 2) return 2;
  const std::filesystem::path folder = arguments[1];
  std::filesystem::create_directories(folder);
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    const auto saved =
        saveJob(testing::randomJob(seed), folder / ("random_" + std::to_string(seed) + ".bayjob"));
    if (!saved) {
      std::fprintf(stderr, "%s\n", saved.error().sentence().c_str());
      return 1;
    }
  }
  const auto saved = saveJob(newJob(), folder / "new.bayjob");
  return saved ? 0 : 1;
}
