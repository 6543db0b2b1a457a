// SPDX-License-Identifier: Apache-2.0
#include "editing/document.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>

#include "job/edit.h"
#include "support/job_builder.h"

namespace baywright {
using testing::garage;

namespace {

TEST(Document, StartsWithAJobThatHasNoFileAndNoChange) {
  Document document;
  EXPECT_TRUE(document.path().isEmpty());
  EXPECT_FALSE(document.isModified());
  EXPECT_EQ(document.job(), starterJob());
}

TEST(Document, UndoAndRedoGiveBackTheSameJob) {
  Document document;
  document.startWith(garage(6.0, 5.0).bayAt(3.0, 4.0, 1.5707963).job());
  const Job before = document.job();
  ASSERT_TRUE(document.change("Move the bay", moveBay(before, Vec2(0.25, -0.5))));
  const Job after = document.job();
  EXPECT_NE(after, before);
  document.undoStack().undo();
  EXPECT_EQ(document.job(), before);
  document.undoStack().redo();
  EXPECT_EQ(document.job(), after);
}

TEST(Document, ARefusedEditChangesNothingAndIsTold) {
  Document document;
  const Job before = document.job();
  QSignalSpy problems(&document, &Document::problemRaised);
  EXPECT_FALSE(document.change("Impossible", fail("It cannot be.", "here", "Try another.")));
  EXPECT_EQ(document.job(), before);
  ASSERT_EQ(problems.count(), 1);
  EXPECT_EQ(problems.front().front().toString(), "here: It cannot be. Try another.");
  EXPECT_EQ(document.undoStack().count(), 0);
}

TEST(Document, AnEditThatChangesNothingLeavesNoStep) {
  Document document;
  EXPECT_TRUE(document.change("Nothing", document.job()));
  EXPECT_EQ(document.undoStack().count(), 0);
}

TEST(Document, NudgesWithOneKeyMergeAndCancelOut) {
  Document document;
  document.startWith(garage(6.0, 5.0).bayAt(3.0, 4.0, 1.5707963).job());
  const auto nudge = [&](double dx) { return document.change("Nudge", moveBay(document.job(), Vec2(dx, 0)), 7); };
  nudge(0.5);
  nudge(0.25);
  EXPECT_EQ(document.undoStack().count(), 1);
  nudge(-0.75);
  EXPECT_EQ(document.undoStack().count(), 0);
}

TEST(Document, SavesAndOpensTheSameJob) {
  QTemporaryDir folder;
  const QString path = folder.filePath("a job with spaces.bayjob");
  Document document;
  document.startWith(garage(6.0, 5.0).withGolfer(1.80, Hand::Left).job());
  document.change("Move the bay", moveBay(document.job(), Vec2(0.1, 0.1)));
  EXPECT_TRUE(document.isModified());
  ASSERT_FALSE(document.save(path).has_value());
  EXPECT_FALSE(document.isModified());

  Document other;
  ASSERT_FALSE(other.open(path).has_value());
  EXPECT_EQ(other.job(), document.job());
  EXPECT_EQ(other.displayName(), "a job with spaces");
}

TEST(Document, ABrokenFileLeavesTheOpenJob) {
  QTemporaryDir folder;
  QFile broken(folder.filePath("broken.bayjob"));
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("this is no archive");
  broken.close();
  Document document;
  document.startWith(garage(6.0, 5.0).job());
  const Job before = document.job();
  const auto problem = document.open(broken.fileName());
  ASSERT_TRUE(problem.has_value());
  EXPECT_FALSE(problem->sentence().empty());
  EXPECT_EQ(document.job(), before);
}

TEST(Document, WhatACrashLeftIsModifiedUntilItIsSaved) {
  QTemporaryDir folder;
  Document document;
  document.recover(garage(6.0, 5.0).job(), {});
  EXPECT_TRUE(document.isModified());
  ASSERT_FALSE(document.save(folder.filePath("saved.bayjob")).has_value());
  EXPECT_FALSE(document.isModified());
}

}  // namespace
}  // namespace baywright
