// SPDX-License-Identifier: Apache-2.0
#include "job/edit_openings.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::idNamed;

TEST(AddOpening, GivesItAnId) {
  const Job before = garage(6, 4).job();
  Opening window;
  window.wall = idNamed(before, "Wall C");
  window.offset = taped(2);
  const auto after = addOpening(before, window);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_EQ(after->room.openings.back().id, Id{after->lastId});
}

TEST(AddOpening, RefusesOneThatIsWiderThanItsWall) {
  const Job before = garage(6, 4).job();
  Opening door;
  door.wall = idNamed(before, "Wall B");
  door.width = taped(4.2);
  EXPECT_FALSE(addOpening(before, door));
}

TEST(MoveOpening, StopsAtTheWallsEnds) {
  const Job before = garage(6, 4).withDoor("A", 1, 0.9).job();
  const Id door = idNamed(before, "Door");
  EXPECT_EQ(moveOpening(before, door, -3)->room.openings[0].offset.value, 0);
  EXPECT_NEAR(moveOpening(before, door, 30)->room.openings[0].offset.value, 5.1, 1e-12);
  EXPECT_NEAR(moveOpening(before, door, 0.5)->room.openings[0].offset.value, 1.5, 1e-12);
}

TEST(MoveOpening, RefusesToSlideOverAnother) {
  const Job before = garage(6, 4).withDoor("A", 1, 0.9).withPassage("A", 3, 1).job();
  const auto after = moveOpening(before, idNamed(before, "Door"), 1.5);
  ASSERT_FALSE(after);
  EXPECT_NE(after.error().sentence().find("overlaps"), std::string::npos);
}

TEST(SetOpening, ReplacesTheOneWithItsId) {
  const Job before = garage(6, 4).withDoor("A", 1, 0.9).job();
  Opening door = before.room.openings[0];
  door.kind = OpeningKind::Passage;
  EXPECT_EQ(setOpening(before, door)->room.openings[0].kind, OpeningKind::Passage);
  door.id = Id{9999};
  EXPECT_FALSE(setOpening(before, door));
  EXPECT_FALSE(moveOpening(before, Id{9999}, 1));
}

}  // namespace
}  // namespace baywright
