// SPDX-License-Identifier: Apache-2.0
#include "editing/replace_job.h"

#include <gtest/gtest.h>

#include <random>

#include "editing/document.h"
#include "job/edit.h"
#include "support/job_builder.h"

namespace baywright {
using testing::garage;

namespace {

TEST(ReplaceJob, AnyRunOfEditsIsUndoneToTheFirstJob) {
  Document document;
  document.startWith(garage(7.0, 6.0).withGolfer(1.80, Hand::Right).bayAt(3.5, 5.0, 1.5707963).job());
  const Job first = document.job();
  std::mt19937 random(20260);
  std::uniform_real_distribution<double> step(-0.3, 0.3);
  for (int i = 0; i < 60; ++i) {
    if (i % 3 == 0) document.change("Move", moveBay(document.job(), Vec2(step(random), step(random))));
    if (i % 3 == 1) document.change("Turn", rotate(document.job(), document.job().option().kit.frame.id, step(random)));
    if (i % 3 == 2) document.change("Nudge", moveBay(document.job(), Vec2(step(random), 0)), 3);
  }
  const Job last = document.job();
  while (document.undoStack().canUndo()) document.undoStack().undo();
  EXPECT_EQ(document.job(), first);
  while (document.undoStack().canRedo()) document.undoStack().redo();
  EXPECT_EQ(document.job(), last);
}

}  // namespace
}  // namespace baywright
