// SPDX-License-Identifier: Apache-2.0
#include "editing/live_assessment.h"

#include <gtest/gtest.h>

#include "clearance/assess.h"
#include "job/edit.h"
#include "support/job_builder.h"

namespace baywright {
using testing::garage;

namespace {

TEST(LiveAssessment, DeliversTheNewestJobLast) {
  LiveAssessment live;
  std::shared_ptr<const Assessment> last;
  QObject::connect(&live, &LiveAssessment::assessed, [&](std::shared_ptr<const Assessment> result) { last = result; });
  Job job = garage(6.0, 5.0).withGolfer(1.80, Hand::Right).bayAt(3.0, 4.0, 1.5707963).job();
  for (int step = 0; step < 20; ++step) {
    job = moveBay(job, Vec2(0.01, 0)).value();
    live.request(job);
  }
  live.finish();
  ASSERT_TRUE(last);
  const Assessment expected = assess(job);
  ASSERT_EQ(last->findings.size(), expected.findings.size());
  for (std::size_t i = 0; i < expected.findings.size(); ++i) {
    EXPECT_EQ(last->findings[i].sentence, expected.findings[i].sentence);
  }
}

TEST(LiveAssessment, EndsWhileWorkIsWaiting) {
  for (int i = 0; i < 20; ++i) {
    LiveAssessment live;
    live.request(garage(6.0, 5.0).withGolfer(1.80, Hand::Right).job());
  }
  SUCCEED();
}

}  // namespace
}  // namespace baywright
