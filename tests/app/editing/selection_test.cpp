// SPDX-License-Identifier: Apache-2.0
#include "editing/selection.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

namespace baywright {
namespace {

TEST(Selection, TellsEachChangeOnce) {
  Selection selection;
  QSignalSpy changes(&selection, &Selection::selectedChanged);
  selection.select(Id{4});
  selection.select(Id{4});
  EXPECT_EQ(changes.count(), 1);
  EXPECT_EQ(selection.selected(), Id{4});
  selection.select({});
  EXPECT_EQ(changes.count(), 2);
}

}  // namespace
}  // namespace baywright
