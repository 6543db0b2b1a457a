// SPDX-License-Identifier: Apache-2.0
#include <future>

#include "../core/clearance/same_assessment.h"
#include "clearance/assess.h"
#include "random_job.h"

namespace baywright {
namespace {

using namespace testing;

TEST(SameBits, TwiceInARow) {
  for (unsigned seed = 1; seed <= 10; ++seed) expectSame(assess(randomJob(seed)), assess(randomJob(seed)));
}

TEST(SameBits, InAnyNumberOfThreads) {
  const Job job = randomJob(4);
  const Assessment alone = assess(job);
  for (const int threads : {2, 8}) {
    std::vector<std::future<Assessment>> others;
    for (int i = 0; i < threads; ++i)
      others.push_back(std::async(std::launch::async, [&] { return assess(job); }));
    for (auto& other : others) expectSame(alone, other.get());
  }
}

}  // namespace
}  // namespace baywright
