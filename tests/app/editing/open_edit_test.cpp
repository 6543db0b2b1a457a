// SPDX-License-Identifier: Apache-2.0
#include "editing/open_edit.h"

#include <gtest/gtest.h>

#include "editing/document.h"
#include "job/edit.h"
#include "support/job_builder.h"

namespace baywright {
using testing::garage;

namespace {

class OpenEditOfABay : public ::testing::Test {
 protected:
  void SetUp() override { document.startWith(garage(6.0, 5.0).bayAt(3.0, 4.0, 1.5707963).job()); }

  Document document;
};

TEST_F(OpenEditOfABay, BecomesOneStepHoweverManyPreviews) {
  const Job before = document.job();
  {
    OpenEdit edit(document, "Move the bay");
    for (int i = 1; i <= 10; ++i) EXPECT_FALSE(edit.preview(moveBay(edit.original(), Vec2(0.05 * i, 0))));
    edit.commit();
  }
  EXPECT_EQ(document.undoStack().count(), 1);
  EXPECT_EQ(document.job(), moveBay(before, Vec2(0.05 * 10, 0)).value());
  document.undoStack().undo();
  EXPECT_EQ(document.job(), before);
}

TEST_F(OpenEditOfABay, RollsBackWithoutCommit) {
  const Job before = document.job();
  {
    OpenEdit edit(document, "Move the bay");
    edit.preview(moveBay(edit.original(), Vec2(1, 0)));
    EXPECT_NE(document.job(), before);
  }
  EXPECT_EQ(document.job(), before);
  EXPECT_EQ(document.undoStack().count(), 0);
}

TEST_F(OpenEditOfABay, KeepsTheLastGoodPreviewWhenOneIsRefused) {
  OpenEdit edit(document, "Move the bay");
  edit.preview(moveBay(edit.original(), Vec2(0.2, 0)));
  const Job good = document.job();
  EXPECT_TRUE(edit.preview(fail("No.")).has_value());
  EXPECT_EQ(document.job(), good);
}

TEST_F(OpenEditOfABay, LeavesNoStepWhenItEndsWhereItBegan) {
  OpenEdit edit(document, "Move the bay");
  edit.preview(moveBay(edit.original(), Vec2(0.2, 0)));
  edit.preview(edit.original());
  edit.commit();
  EXPECT_EQ(document.undoStack().count(), 0);
}

}  // namespace
}  // namespace baywright
