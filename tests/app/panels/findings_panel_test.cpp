// SPDX-License-Identifier: Apache-2.0
#include "panels/findings_panel.h"

#include <gtest/gtest.h>

#include <QListView>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "support/job_builder.h"

namespace baywright {
namespace {

TEST(FindingsPanel, ShowsTheChosenFindingInEveryView) {
  Document document;
  document.startWith(
      testing::garage(7.0, 6.0).withCeiling(2.3).withGolfer(1.9, Hand::Right).withClub().job());
  FindingsPanel panel(document);
  panel.resize(900, 300);
  panel.show();
  const auto& findings = document.assessment().findings;
  const auto placed =
      std::find_if(findings.begin(), findings.end(), [](const Finding& f) { return f.points.has_value(); });
  ASSERT_NE(placed, findings.end());
  panel.list()->setCurrentIndex(panel.list()->model()->index(static_cast<int>(placed - findings.begin()), 0));
  EXPECT_EQ(document.selection().findingKey().toStdString(), placed->key);
  QSignalSpy zooms(&document.selection(), &Selection::zoomToFindingRequested);
  auto* show = panel.findChild<QPushButton*>(QStringLiteral("showFinding"));
  ASSERT_TRUE(show->isEnabled());
  QTest::mouseClick(show, Qt::LeftButton);
  ASSERT_EQ(zooms.count(), 1);
}

TEST(FindingsPanel, OffersHelpOnlyWhereHelpIsNeeded) {
  Document document;
  document.startWith(
      testing::garage(7.0, 6.0).withCeiling(2.3).withGolfer(1.9, Hand::Right).withClub().job());
  FindingsPanel panel(document);
  panel.show();
  auto* help = panel.findChild<QPushButton*>(QStringLiteral("whatHelps"));
  const auto& findings = document.assessment().findings;
  for (std::size_t row = 0; row < findings.size(); ++row) {
    panel.list()->setCurrentIndex(panel.list()->model()->index(static_cast<int>(row), 0));
    const bool needed = findings[row].verdict == Verdict::Blocked || findings[row].verdict == Verdict::Tight;
    EXPECT_EQ(help->isEnabled(), needed) << findings[row].sentence;
  }
}

}  // namespace
}  // namespace baywright
