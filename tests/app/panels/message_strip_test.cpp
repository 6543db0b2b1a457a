// SPDX-License-Identifier: Apache-2.0
#include "panels/message_strip.h"

#include <gtest/gtest.h>

#include <QTest>
#include <QToolButton>

namespace baywright {
namespace {

TEST(MessageStrip, StandsUntilItIsClosed) {
  MessageStrip strip;
  EXPECT_TRUE(strip.text().isEmpty());
  strip.say(QStringLiteral("The wall has no length."));
  EXPECT_EQ(strip.text(), QStringLiteral("The wall has no length."));
  QTest::mouseClick(strip.findChild<QToolButton*>(), Qt::LeftButton);
  EXPECT_TRUE(strip.text().isEmpty());
}

}  // namespace
}  // namespace baywright
