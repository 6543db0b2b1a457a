// SPDX-License-Identifier: Apache-2.0
#include "job/thing_lookup.h"

#include <gtest/gtest.h>

#include <set>

#include "job/fields.h"
#include "support/job_builder.h"
#include "support/random_jobs.h"

namespace baywright {
namespace {

using testing::garage;
using testing::idNamed;

Job furnished() {
  return garage(6, 4)
      .withDoor("A", 1)
      .withShelf("D", 1, 2, 0.4, 1.8)
      .withGolfer(1.9, Hand::Left, "Robin")
      .withClub()
      .withBystander({1, 1})
      .bayAt(5, 2, 0)
      .strikingFrom(3, 0.2, -0.2)
      .job();
}

TEST(FindThing, SaysKindNameOwnerAndPlace) {
  const Job job = furnished();
  const auto club = findThing(job, idNamed(job, "Driver"));
  ASSERT_TRUE(club);
  EXPECT_EQ(club->kind, ThingKind::Club);
  EXPECT_EQ(club->owner, idNamed(job, "Robin"));
  ASSERT_TRUE(club->position);
  EXPECT_NEAR((*club->position - Vec2(2, 2.2)).norm(), 0, 1e-12) << "the left-hander's strike point";

  const auto door = findThing(job, idNamed(job, "Door"));
  EXPECT_EQ(door->owner, idNamed(job, "Wall A"));
  EXPECT_NEAR((*door->position - Vec2(1.45, 0)).norm(), 0, 1e-12);
}

TEST(FindThing, FindsNothingForOtherIds) {
  const Job job = furnished();
  EXPECT_FALSE(findThing(job, Id{}));
  EXPECT_FALSE(findThing(job, Id{job.lastId + 1}));
  EXPECT_EQ(nameOf(job, Id{}), "Nothing");
}

TEST(AllThings, HasEveryIdOnce) {
  for (std::uint64_t seed = 0; seed < 30; ++seed) {
    Job job = testing::randomJob(seed);
    for (Option& option : job.options) option.kit.hasMonitor = option.kit.hasProjector = true;
    std::set<Id> seen;
    for (const Thing& thing : allThings(job)) {
      EXPECT_TRUE(seen.insert(thing.id).second) << thing.name;
      EXPECT_FALSE(thing.name.empty());
    }
    EXPECT_EQ(seen.size(), job.lastId) << "a random job gives no id away";
  }
}

TEST(AllThings, ListsKindsInOrder) {
  const std::vector<Thing> things = allThings(furnished());
  EXPECT_TRUE(std::is_sorted(things.begin(), things.end(),
                             [](const Thing& a, const Thing& b) { return a.kind < b.kind; }));
}

TEST(AllThings, LeavesOutWhatAnOptionDoesWithout) {
  Job job = furnished();
  const Id projector = job.option().kit.projector.id;
  EXPECT_TRUE(findThing(job, projector));
  job.option().kit.hasProjector = false;
  EXPECT_FALSE(findThing(job, projector));
}

TEST(AllThings, NumbersWhatHasNoName) {
  const Job job = garage(6, 4).withBystander({1, 1}, "").withBystander({2, 1}, "").job();
  EXPECT_EQ(nameOf(job, job.bystanders[1].id), "Bystander 2");
}

TEST(OptionOf, FindsTheOwnerOfAKitPart) {
  const Job job = furnished();
  EXPECT_EQ(optionOf(job, job.option().kit.mat.id), &job.options.front());
  EXPECT_EQ(optionOf(job, job.activeOption), &job.options.front());
  EXPECT_EQ(optionOf(job, idNamed(job, "Robin")), nullptr);
  EXPECT_EQ(optionOf(job, Id{}), nullptr);
}

}  // namespace
}  // namespace baywright
