// SPDX-License-Identifier: Apache-2.0
#include "window/settings.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Settings, RemembersTheNewestTenFilesOnce) {
  Settings settings;
  for (int i = 0; i < 14; ++i) settings.remember(QStringLiteral("/jobs/%1.bayjob").arg(i));
  settings.remember(QStringLiteral("/jobs/9.bayjob"));
  EXPECT_EQ(settings.recentFiles.size(), 10);
  EXPECT_EQ(settings.recentFiles.front(), QStringLiteral("/jobs/9.bayjob"));
  EXPECT_EQ(settings.recentFiles.count(QStringLiteral("/jobs/9.bayjob")), 1);
  EXPECT_EQ(settings.lastFolder, QStringLiteral("/jobs"));
}

}  // namespace
}  // namespace baywright
