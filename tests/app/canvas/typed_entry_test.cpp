// SPDX-License-Identifier: Apache-2.0
#include "canvas/typed_entry.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

struct Entry {
  Entry() {
    window.resize(400, 300);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }
  void ask(FieldKind kind, const QString& typed = {}, LengthUnit unit = LengthUnit::Metres) {
    entry.ask({QStringLiteral("to wall A"), kind, 1.5, {}, {}}, {unit, 16, '.'}, {200, 150}, typed);
  }
  QLineEdit& edit() { return *window.findChild<QLineEdit*>(); }
  bool shows(const QString& text) {
    for (const QLabel* label : window.findChildren<QLabel*>())
      if (label->isVisible() && label->text().contains(text)) return true;
    return false;
  }

  QWidget window;
  TypedEntry entry{&window};
};

TEST(TypedEntry, TakesALengthInTheJobsUnit) {
  Entry bench;
  QSignalSpy taken(&bench.entry, &TypedEntry::taken);
  bench.ask(FieldKind::Length, QStringLiteral("7"), LengthUnit::FeetInches);
  QTest::keyClicks(&bench.edit(), QStringLiteral("' 6 1/2"));
  EXPECT_TRUE(bench.shows(QStringLiteral("7′ 6 1/2″")));
  QTest::keyClick(&bench.edit(), Qt::Key_Return);
  ASSERT_EQ(taken.count(), 1);
  EXPECT_NEAR(taken[0][0].toDouble(), 90.5 * 0.0254, 1e-12);
}

TEST(TypedEntry, TakesAngles) {
  Entry bench;
  QSignalSpy taken(&bench.entry, &TypedEntry::taken);
  bench.ask(FieldKind::Angle, QStringLiteral("12.5"));
  QTest::keyClick(&bench.edit(), Qt::Key_Return);
  ASSERT_EQ(taken.count(), 1);
  EXPECT_NEAR(taken[0][0].toDouble(), 12.5_deg, 1e-12);
}

TEST(TypedEntry, OffersThePresentFigureToBeTypedOver) {
  Entry bench;
  bench.ask(FieldKind::Size);
  EXPECT_EQ(bench.edit().selectedText(), QStringLiteral("1.500 m"));
}

TEST(TypedEntry, StaysWithASentenceWhereTheTextIsWrong) {
  Entry bench;
  QSignalSpy taken(&bench.entry, &TypedEntry::taken);
  bench.ask(FieldKind::Size, QStringLiteral("-2"));
  QTest::keyClick(&bench.edit(), Qt::Key_Return);
  EXPECT_EQ(taken.count(), 0);
  EXPECT_TRUE(bench.entry.isVisible());
  bool told = false;
  for (const QLabel* label : bench.window.findChildren<QLabel*>())
    told = told || (label->isVisible() && label->text().size() > 20);
  EXPECT_TRUE(told);
  // The sentence stays within the field, and the field within the view.
  EXPECT_TRUE(bench.window.rect().contains(bench.entry.geometry()));
}

TEST(TypedEntry, SaysWhetherToGoOn) {
  Entry bench;
  QSignalSpy taken(&bench.entry, &TypedEntry::taken);
  bench.ask(FieldKind::Size, QStringLiteral("2"));
  QTest::keyClick(&bench.edit(), Qt::Key_Tab);
  QTest::keyClick(&bench.edit(), Qt::Key_Backtab);
  ASSERT_EQ(taken.count(), 2);
  EXPECT_EQ(taken[0][1].value<TypedEntry::Then>(), TypedEntry::Then::Next);
  EXPECT_EQ(taken[1][1].value<TypedEntry::Then>(), TypedEntry::Then::Previous);
}

TEST(TypedEntry, GivesUpOnEscapeAndWhenTheFocusGoes) {
  Entry bench;
  QSignalSpy givenUp(&bench.entry, &TypedEntry::givenUp);
  bench.ask(FieldKind::Size);
  QTest::keyClick(&bench.edit(), Qt::Key_Escape);
  EXPECT_EQ(givenUp.count(), 1);
  bench.ask(FieldKind::Size);
  bench.window.setFocusPolicy(Qt::StrongFocus);
  bench.window.setFocus();
  EXPECT_EQ(givenUp.count(), 2);
  bench.ask(FieldKind::Size);
  bench.entry.dismiss();
  EXPECT_EQ(givenUp.count(), 2);
}

}  // namespace
}  // namespace baywright
