// SPDX-License-Identifier: Apache-2.0
#include "models/job_tree_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include "job/edit.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

class JobTree : public ::testing::Test {
 protected:
  void SetUp() override {
    document.startWith(testing::garage(7.0, 6.0)
                           .withDoor("A", 1.0)
                           .withGolfer(1.9, Hand::Right, "Robin")
                           .withClub()
                           .withGolfer(1.7, Hand::Left, "Kit")
                           .withClub()
                           .job());
  }

  Document document;
};

TEST_F(JobTree, ShowsEverythingThatCanBeSelected) {
  JobTreeModel model(document);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  for (const Thing& thing : allThings(document.job())) {
    const QModelIndex index = model.indexOf(thing.id);
    ASSERT_TRUE(index.isValid()) << thing.name;
    EXPECT_EQ(model.idOf(index), thing.id);
    EXPECT_TRUE(index.data().toString().contains(QString::fromStdString(thing.name)));
  }
}

TEST_F(JobTree, PutsAClubRightAfterItsGolfer) {
  JobTreeModel model(document);
  for (const Golfer& golfer : document.job().golfers) {
    EXPECT_EQ(model.indexOf(golfer.clubs.front().id).row(), model.indexOf(golfer.id).row() + 1);
  }
}

TEST_F(JobTree, KeepsItsRowsDuringADrag) {
  JobTreeModel model(document);
  QSignalSpy resets(&model, &QAbstractItemModel::modelReset);
  document.change("Move", moveBay(document.job(), Vec2(0.1, 0)));
  EXPECT_EQ(resets.count(), 0);
  document.change("Remove", removeThing(document.job(), document.job().golfers.front().id));
  EXPECT_EQ(resets.count(), 1);
}

TEST_F(JobTree, RenamesWhatIsEdited) {
  JobTreeModel model(document);
  const Id golfer = document.job().golfers.front().id;
  ASSERT_TRUE(model.setData(model.indexOf(golfer), QStringLiteral("Sam"), Qt::EditRole));
  EXPECT_EQ(document.job().golfers.front().name, "Sam");
  document.undoStack().undo();
  EXPECT_EQ(document.job().golfers.front().name, "Robin");
}

}  // namespace
}  // namespace baywright
