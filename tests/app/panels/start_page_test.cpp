// SPDX-License-Identifier: Apache-2.0
#include "panels/start_page.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace baywright {
namespace {

TEST(StartPage, OffersThreeWaysIn) {
  Document document;
  StartPage page(document);
  page.resize(1000, 700);
  page.show();
  QSignalSpy plans(&page, &StartPage::planAsked);
  QSignalSpy examples(&page, &StartPage::exampleAsked);
  QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("openPlan")), Qt::LeftButton);
  QTest::mouseClick(page.findChild<QPushButton*>(QStringLiteral("openExample")), Qt::LeftButton);
  EXPECT_EQ(plans.count(), 1);
  EXPECT_EQ(examples.count(), 1);
  EXPECT_TRUE(page.findChild<QPushButton*>(QStringLiteral("makeRoom")));
}

}  // namespace
}  // namespace baywright
