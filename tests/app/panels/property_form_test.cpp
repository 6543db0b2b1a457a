// SPDX-License-Identifier: Apache-2.0
#include "panels/property_form.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include "support/job_builder.h"

namespace baywright {
namespace {

class Form : public ::testing::Test {
 protected:
  void SetUp() override {
    document.startWith(testing::garage(7.0, 6.0).withGolfer(1.80, Hand::Right, "Robin").withClub().job());
    document.selection().select(document.job().golfers.front().id);
    form.rebuild();
    form.show();
  }
  QLineEdit* line(const char* name) {
    for (QLineEdit* edit : form.findChildren<QLineEdit*>()) {
      if (edit->accessibleName() == QLatin1String(name)) return edit;
    }
    return nullptr;
  }
  void type(QLineEdit* edit, const char* text) {
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, QString::fromLatin1(text));
    QTest::keyClick(edit, Qt::Key_Return);
  }

  Document document;
  PropertyForm form{document, [](const Document& d) { return fieldsOf(d.job(), d.selection().selected()); },
                    QStringLiteral("nothing selected")};
};

TEST_F(Form, TypingAStatureChangesTheJobInOneStep) {
  const Job before = document.job();
  ASSERT_TRUE(line("Stature"));
  type(line("Stature"), "1.93");
  EXPECT_NEAR(document.job().golfers.front().stature.value, 1.93, 1e-12);
  EXPECT_EQ(document.undoStack().count(), 1);
  document.undoStack().undo();
  EXPECT_EQ(document.job(), before);
  EXPECT_EQ(line("Stature")->text(), QStringLiteral("1.800 m"));
}

TEST_F(Form, ComplainsUnderTheFieldAndLeavesTheJob) {
  const Job before = document.job();
  type(line("Stature"), "0.2 m");
  EXPECT_EQ(document.job(), before);
  bool told = false;
  for (const QLabel* label : form.findChildren<QLabel*>())
    told = told || (label->isVisible() && label->text().contains(QLatin1String("0.200 m")));
  EXPECT_TRUE(told);
}

TEST_F(Form, FollowsEditsMadeElsewhere) {
  type(line("Name"), "Sam");
  EXPECT_EQ(document.job().golfers.front().name, "Sam");
  document.undoStack().undo();
  EXPECT_EQ(line("Name")->text(), QStringLiteral("Robin"));
}

TEST_F(Form, SaysThatSomethingIsNotMeasured) {
  for (QComboBox* how : form.findChildren<QComboBox*>()) {
    if (!how->accessibleName().startsWith(QLatin1String("Stature"))) continue;
    how->setCurrentIndex(how->count() - 1);
    Q_EMIT how->activated(how->currentIndex());
    EXPECT_FALSE(document.job().golfers.front().stature.known);
    return;
  }
  FAIL() << "There is no choice of how the stature was found.";
}

TEST_F(Form, InvitesWhenNothingIsSelected) {
  document.selection().select({});
  form.rebuild();
  ASSERT_EQ(form.findChildren<QLineEdit*>().size(), 0);
  EXPECT_EQ(form.findChild<QLabel*>()->text(), QStringLiteral("nothing selected"));
}

}  // namespace
}  // namespace baywright
