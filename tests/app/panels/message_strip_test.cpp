// SPDX-License-Identifier: Apache-2.0
#include "panels/message_strip.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QTest>
#include <QToolButton>
#include <QVBoxLayout>

namespace baywright {
namespace {

TEST(MessageStrip, StandsUntilItIsClosed) {
  QWidget under;
  MessageStrip strip(&under);
  EXPECT_TRUE(strip.text().isEmpty());
  strip.say(QStringLiteral("The wall has no length."));
  EXPECT_EQ(strip.text(), QStringLiteral("The wall has no length."));
  QTest::mouseClick(strip.findChild<QToolButton*>(), Qt::LeftButton);
  EXPECT_TRUE(strip.text().isEmpty());
}

TEST(MessageStrip, MovesNothingThatItLiesOver) {
  QWidget under;
  auto* column = new QVBoxLayout(&under);
  column->setContentsMargins(0, 0, 0, 0);
  auto* drawing = new QWidget;
  column->addWidget(drawing);
  MessageStrip strip(&under);
  under.resize(600, 400);
  under.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&under));
  const QRect before = drawing->geometry();
  QString sentence = QStringLiteral("The wall has no length.");
  for (int i = 0; i < 8; ++i) sentence += QStringLiteral(" Give it at least a millimetre.");
  strip.say(sentence);
  QCoreApplication::processEvents();
  EXPECT_EQ(drawing->geometry(), before);
  ASSERT_TRUE(strip.isVisible());
  EXPECT_TRUE(under.rect().contains(strip.geometry()));
  const auto* label = strip.findChild<QLabel*>();
  EXPECT_GE(label->height(), label->heightForWidth(label->width())) << "all of it can be read";
  under.resize(400, 400);
  EXPECT_TRUE(under.rect().contains(strip.geometry()));
}

}  // namespace
}  // namespace baywright
