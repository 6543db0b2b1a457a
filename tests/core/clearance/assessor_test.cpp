// SPDX-License-Identifier: Apache-2.0
#include "clearance/assessor.h"

#include <fstream>
#include <iterator>
#include <random>

#include "clearance/checks.h"
#include "findings.h"
#include "job/edit.h"
#include "same_assessment.h"

namespace baywright {
namespace {

using namespace testing;

Job start() {
  return garage(8, 6)
      .withSlopedCeiling(2.6, 3.2, 6)
      .withBeam({3, 0}, {3, 6}, 0.2, 2.7, 3.2)
      .withShelf("A", 1, 2, 0.4, 1.9)
      .withDoor("D", 2)
      .withSectionalDoor("C", 1, 2.4, 2.1)
      .withGolfer(1.85, Hand::Right, "Robin")
      .withClub()
      .withGolfer(1.65, Hand::Left, "Kim")
      .withClub(1.1)
      .withBystander({1, 5})
      .bayAt(6.5, 3, 0)
      .job();
}

/// One random edit; the job itself where it is refused.
Job edited(const Job& job, std::mt19937& random) {
  std::uniform_real_distribution<double> u(-1, 1);
  const auto kept = [&](Result<Job> result) { return result ? *result : job; };
  switch (random() % 12) {
    case 0:
      return kept(moveBay(job, {0.4 * u(random), 0.4 * u(random)}));
    case 1:
      return kept(turnBay(job, 0.3 * u(random), job.option().placement.bay.origin));
    case 2:
      return kept(
          moveStrikePoint(job, random() % 2 ? Hand::Left : Hand::Right, {0.2 * u(random), 0.2 * u(random)}));
    case 3:
      return kept(moveProjector(job, {0.3 * u(random), 0.3 * u(random), 0.2 * u(random)}));
    case 4: {
      Golfer golfer = job.golfers[random() % job.golfers.size()];
      golfer.stature = taped(1.7 + 0.2 * u(random));
      return kept(setGolfer(job, golfer));
    }
    case 5: {
      Club club = job.golfers[0].clubs[0];
      club.length = 1.05 + 0.1 * u(random);
      return kept(setClub(job, club));
    }
    case 6: {
      Job next = job;
      next.room.ceiling[0].height = shot(2.7 + 0.3 * u(random));
      return next;
    }
    case 7: {
      Job next = job;
      next.room.fixtures[0].bottom = shot(2.5 + 0.1 * u(random));
      return next;
    }
    case 8: {
      Job next = job;
      next.golfers[1].swings = !next.golfers[1].swings;
      return next;
    }
    case 9: {
      Job next = job;
      next.requirements.ambient = 50 + 40 * u(random);
      next.requirements.reboundSpeed = 3 + u(random);
      return next;
    }
    case 10: {
      Job next = job;
      next.option().kit.hasProjector = !next.option().kit.hasProjector;
      return next;
    }
    default: {
      Job next = job;
      next.option().kit.screen.restitution = 0.1 + 0.05 * u(random);
      next.option().kit.frame.height = 2.5 + 0.1 * u(random);
      return next;
    }
  }
}

TEST(Assessor, NeverGivesAnotherAnswerThanAssess) {
  std::mt19937 random(17);
  Assessor assessor;
  Job job = start();
  std::vector<Job> earlier;
  for (int i = 0; i < 60; ++i) {
    // Now and then an old job comes back, as undo brings it.
    job = !earlier.empty() && random() % 5 == 0 ? earlier[random() % earlier.size()] : edited(job, random);
    earlier.push_back(job);
    if (random() % 3 == 0) assessor.check(job, "picture_fill");
    expectSame(assessor.assess(job), assess(job));
  }
}

TEST(Assessor, ChecksOneAtATimeWithTheSameFindings) {
  const Job job = start();
  const Assessment whole = assess(job);
  std::size_t count = 0;
  Assessor assessor;
  for (const CheckRow& row : checks()) {
    for (const Finding& finding : assessor.check(job, row.name)) {
      const Finding* same = whole.find(finding.key);
      ASSERT_NE(same, nullptr) << finding.key;
      expectSame(*same, finding);
      ++count;
    }
  }
  EXPECT_EQ(count, whole.findings.size());
  EXPECT_TRUE(assessor.check(job, "no_such_check").empty());
}

TEST(Checks, HaveEachAHelpPageOfTheirOwn) {
  for (const CheckRow& row : checks()) {
    EXPECT_EQ(findCheck(row.name), &row);
    const std::string page = std::string(BAYWRIGHT_RESOURCES) + "/help/" + std::string(row.helpPage) + ".md";
    std::ifstream file(page);
    EXPECT_TRUE(file.good()) << page;
    const std::string text((std::istreambuf_iterator<char>(file)), {});
    for (const char* part :
         {"## What it asks", "## What it assumes", "## Where the figures come from", "## Caution"}) {
      EXPECT_TRUE(contains(text, part)) << page << " lacks " << part;
    }
  }
}

}  // namespace
}  // namespace baywright
