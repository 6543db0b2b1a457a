// SPDX-License-Identifier: Apache-2.0
#include "jobfile/save_originals.h"

#include <gtest/gtest.h>

#include "jobfile/atomic_file.h"
#include "support/temporary_folder.h"

namespace baywright {
namespace {

BlobPtr blob(const std::string& name, const std::string& bytes) {
  return std::make_shared<const Blob>(Blob{name, bytes});
}

TEST(SaveOriginals, WritesEachFileAsItCameAndOverNothing) {
  const testing::TemporaryFolder folder;
  Job job = newJob();
  job.originals.push_back({job.takeId(), "Garage", blob("garage.dxf", std::string("0\r\nEOF\r\n\0", 9))});
  PlanScan plan;
  plan.id = job.takeId();
  plan.file = blob("garage.dxf", "a picture with a wrong name");
  job.planScans.push_back(plan);
  EXPECT_EQ(originalCount(job), 2u);

  const auto written = saveOriginals(job, folder.path());
  ASSERT_TRUE(written) << written.error().sentence();
  ASSERT_EQ(written->size(), 2u);
  EXPECT_EQ((*written)[0].filename(), "garage.dxf");
  EXPECT_EQ((*written)[1].filename(), "garage (2).dxf");
  EXPECT_EQ(*readWholeFile((*written)[0], 1000), "a picture with a wrong name");
  EXPECT_EQ(*readWholeFile((*written)[1], 1000), job.originals[0].file->bytes);
  const auto again = saveOriginals(job, folder.path());
  ASSERT_TRUE(again);
  EXPECT_EQ((*again)[0].filename(), "garage (3).dxf");
  EXPECT_FALSE(saveOriginals(job, folder.path() / "nowhere"));
}

}  // namespace
}  // namespace baywright
