// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <functional>
#include <string>

#include "base/problem.h"
#include "base/progress.h"

namespace baywright {

/// What a fenced piece of work may take beyond what this process has already.
struct FenceLimits {
  std::uint64_t memoryBytes = 1ull << 30;
  std::uint64_t outputBytes = 1ull << 30;
  unsigned seconds = 120;  ///< of the processor
};

/// Runs `work` in a child process and hands back its bytes or its problem: for readers of others that may
/// crash, run wild or ask for all memory on files that somebody made to harm. Whatever happens to the child,
/// this process goes on; the failure is a sentence. A cancel kills the child. Nothing that `work` changes in
/// memory is seen here. `work` must not depend on other threads.
Result<std::string> runFenced(const std::function<Result<std::string>()>& work, const FenceLimits& limits,
                              const Progress& progress);

}  // namespace baywright
