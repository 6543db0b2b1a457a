// SPDX-License-Identifier: Apache-2.0
#include "jobfile/migrations.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Migrations, LeadFromEveryVersionToTheLatest) {
  ASSERT_EQ(migrations().size(), static_cast<std::size_t>(kFormatVersion - 1));
  int version = 1;
  for (const Migration& step : migrations()) EXPECT_EQ(step.fromVersion, version++);
}

}  // namespace
}  // namespace baywright
