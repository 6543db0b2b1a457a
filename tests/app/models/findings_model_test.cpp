// SPDX-License-Identifier: Apache-2.0
#include "models/findings_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

#include "job/edit.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

class Findings : public ::testing::Test {
 protected:
  void SetUp() override {
    document.startWith(
        testing::garage(7.0, 6.0).withCeiling(2.3).withGolfer(1.9, Hand::Right).withClub().job());
  }

  Document document;
};

TEST_F(Findings, ListsThemInTheOrderOfTheAssessment) {
  FindingsModel model(document);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  const auto& findings = document.assessment().findings;
  ASSERT_EQ(model.rowCount(), static_cast<int>(findings.size()));
  ASSERT_GT(findings.size(), 3U);
  for (int row = 0; row < model.rowCount(); ++row) {
    EXPECT_EQ(model.data(model.index(row), Qt::DisplayRole).toString().toStdString(),
              findings[static_cast<std::size_t>(row)].sentence);
  }
}

TEST_F(Findings, FollowsEditsAndUndo) {
  FindingsModel model(document);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  const auto all = [&] {
    QStringList rows;
    for (int row = 0; row < model.rowCount(); ++row) rows << model.index(row).data().toString();
    return rows;
  };
  const QStringList before = all();
  document.change("Raise the ceiling", [&] {
    CeilingPart part = document.job().room.ceiling.front();
    part.height = taped(4.0);
    return setCeilingPart(document.job(), part);
  }());
  document.finishAssessment();
  EXPECT_NE(all(), before);
  document.undoStack().undo();
  document.finishAssessment();
  EXPECT_EQ(all(), before);
}

TEST_F(Findings, HidesAVerdictThatIsNotWanted) {
  FindingsModel model(document);
  model.setShown(Verdict::Clear, false);
  EXPECT_EQ(model.rowCount(), static_cast<int>(document.assessment().findings.size()) -
                                  document.assessment().count(Verdict::Clear));
  for (int row = 0; row < model.rowCount(); ++row)
    EXPECT_NE(model.finding(model.index(row))->verdict, Verdict::Clear);
}

TEST_F(Findings, AreFoundByTheirKey) {
  FindingsModel model(document);
  const QString key = model.index(2).data(FindingsModel::KeyRole).toString();
  EXPECT_EQ(model.indexOf(key).row(), 2);
  EXPECT_FALSE(model.indexOf(QStringLiteral("nothing")).isValid());
}

}  // namespace
}  // namespace baywright
