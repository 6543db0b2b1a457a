// SPDX-License-Identifier: Apache-2.0
#include "panels/thing_menu.h"

#include <gtest/gtest.h>

#include <QMenu>
#include <numbers>

#include "job/thing_lookup.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::idNamed;

class ThingMenu : public ::testing::Test {
 protected:
  void SetUp() override {
    document.startWith(
        garage(8, 6).withShelf("D", 1, 2, 0.4, 1.8).withGolfer(1.9, Hand::Left, "Robin").withClub().job());
  }

  QAction* entry(const char* thing, const char* name) {
    menu.clear();
    fillThingMenu(menu, document, idNamed(document.job(), thing));
    return menu.findChild<QAction*>(QString::fromLatin1(name));
  }

  Document document;
  QMenu menu;
};

TEST_F(ThingMenu, CopiesTurnsAndRemoves) {
  const Job before = document.job();
  entry("Shelf", "copy")->trigger();
  ASSERT_EQ(document.job().room.fixtures.size(), 2U);
  EXPECT_EQ(document.selection().selected(), document.job().room.fixtures.back().id);
  document.undoStack().undo();
  EXPECT_EQ(document.job(), before);

  const double heading = document.job().option().placement.bay.heading;
  entry("Frame", "turn")->trigger();
  EXPECT_NEAR(document.job().option().placement.bay.heading, heading + std::numbers::pi / 2, 1e-12);
  document.undoStack().undo();

  entry("Shelf", "remove")->trigger();
  EXPECT_TRUE(document.job().room.fixtures.empty());
}

TEST_F(ThingMenu, LeavesOutWhatAThingDoesNotAllow) {
  EXPECT_FALSE(entry("Frame", "remove"));
  EXPECT_FALSE(entry("Frame", "copy"));
  EXPECT_TRUE(entry("Robin", "remove"));
  EXPECT_FALSE(entry("Robin", "turn"));
}

TEST_F(ThingMenu, OfNothingIsEmpty) {
  fillThingMenu(menu, document, {});
  EXPECT_TRUE(menu.isEmpty());
}

}  // namespace
}  // namespace baywright
