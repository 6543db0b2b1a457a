// SPDX-License-Identifier: Apache-2.0
#include "drawing/cautions.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "drawn_job.h"

namespace baywright {
namespace {

using namespace baywright::testing;

bool warnsOf(const Job& job, const std::string& subject) {
  const auto cautions = cautionsFor(job);
  return std::any_of(cautions.begin(), cautions.end(),
                     [&](const Caution& caution) { return caution.subject == subject; });
}

TEST(Cautions, SpeakOfWhatIsThere) {
  const Job job = slopedWorkshop();
  for (const char* subject : {"Swinging", "Frame", "Overhead mounting", "Bright lens", "Ladders",
                              "Electricity", "Overhead door", "Exits"}) {
    EXPECT_TRUE(warnsOf(job, subject)) << subject;
  }
}

TEST(Cautions, KeepSilentOnWhatIsNot) {
  Job job = slopedWorkshop();
  job.room.openings.clear();
  EXPECT_FALSE(warnsOf(job, "Overhead door"));
  job.option().placement.projector.kind = MountKind::Floor;
  EXPECT_FALSE(warnsOf(job, "Overhead mounting"));
  EXPECT_TRUE(warnsOf(job, "Bright lens"));
  job.option().kit.hasProjector = false;
  EXPECT_FALSE(warnsOf(job, "Bright lens"));
  EXPECT_TRUE(warnsOf(job, "Electricity"));
  job.option().kit.hasMonitor = false;
  EXPECT_FALSE(warnsOf(job, "Electricity"));
  job.golfers.clear();
  EXPECT_FALSE(warnsOf(job, "Swinging"));
}

TEST(Cautions, AlwaysSayWhatClearMeansAndWhoDecides) {
  const auto cautions = cautionsFor(newJob());
  ASSERT_GE(cautions.size(), 2u);
  EXPECT_NE(cautions.back().sentence.find("not a guarantee"), std::string::npos);
  EXPECT_NE(cautions[cautions.size() - 2].sentence.find("building code"), std::string::npos);
}

TEST(Cautions, AreOneSentenceEach) {
  for (const Caution& caution : cautionsFor(slopedWorkshop())) {
    EXPECT_TRUE(caution.sentence.ends_with(".")) << caution.sentence;
    EXPECT_EQ(caution.sentence.find(". "), std::string::npos) << caution.sentence;
  }
}

}  // namespace
}  // namespace baywright
