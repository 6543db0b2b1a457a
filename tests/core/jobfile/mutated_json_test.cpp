// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "job/validate.h"
#include "jobfile/job_json.h"
#include "support/random_jobs.h"

namespace baywright {
namespace {

using nlohmann::json;
using testing::Dice;

const json kStrangers[] = {nullptr,
                           true,
                           -1,
                           0,
                           4294967296,
                           1e308,
                           -1e308,
                           1e-320,
                           "",
                           "x",
                           json::array(),
                           json::object(),
                           json::array({1, 2, 3})};

/// A random value somewhere below `place`, replaced, removed or doubled.
void mutate(json& place, Dice& dice) {
  if (place.is_structured() && !place.empty() && dice.count(0, 9) > 0) {
    auto child = place.begin();
    std::advance(child, dice.count(0, static_cast<int>(place.size()) - 1));
    if (dice.count(0, 19) > 0) return mutate(*child, dice);
    if (place.is_array() && dice.coin())
      place.push_back(json(*child));
    else
      place.erase(child);
    return;
  }
  place = kStrangers[dice.count(0, static_cast<int>(std::size(kStrangers)) - 1)];
}

/// Whatever comes in, what comes out is a sentence or a job that may be assessed and saved again.
void expectSentenceOrValidJob(const std::string& text) {
  const auto job = jobFromJson(text);
  if (!job) {
    EXPECT_FALSE(job.error().what.empty());
    return;
  }
  EXPECT_TRUE(validate(*job).empty());
  const std::string saved = jobToJson(*job);
  const auto again = jobFromJson(saved);
  ASSERT_TRUE(again) << again.error().sentence();
  EXPECT_EQ(jobToJson(*again), saved);
}

TEST(MutatedJson, OfValuesIsRefusedOrValid) {
  int refused = 0;
  constexpr int kMutants = 600;
  for (std::uint64_t seed = 0; seed < kMutants; ++seed) {
    Dice dice(seed);
    json job = json::parse(jobToJson(testing::randomJob(seed % 20)));
    for (int i = dice.count(1, 3); i > 0; --i) mutate(job, dice);
    const std::string text = job.dump();
    expectSentenceOrValidJob(text);
    refused += !jobFromJson(text);
  }
  // The mutants do reach what is checked: neither all nor none of them get by.
  EXPECT_GT(refused, kMutants / 4);
  EXPECT_LT(refused, kMutants);
}

TEST(MutatedJson, OfBytesIsRefusedOrValid) {
  for (std::uint64_t seed = 0; seed < 500; ++seed) {
    Dice dice(seed);
    std::string text = jobToJson(testing::randomJob(seed % 20));
    for (int i = dice.count(1, 4); i > 0; --i)
      text[static_cast<std::size_t>(dice.count(0, static_cast<int>(text.size()) - 1))] =
          static_cast<char>(dice.count(0, 255));
    if (dice.count(0, 4) == 0)
      text.resize(static_cast<std::size_t>(dice.count(0, static_cast<int>(text.size()))));
    expectSentenceOrValidJob(text);
  }
}

}  // namespace
}  // namespace baywright
