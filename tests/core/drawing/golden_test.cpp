// SPDX-License-Identifier: Apache-2.0
#include "support/golden.h"

#include <gtest/gtest.h>

#include "drawing/sheets.h"
#include "drawing/views.h"
#include "drawn_job.h"
#include "support/linework_text.h"

namespace baywright {
namespace {

using namespace baywright::testing;

// The views and the sheet of two small jobs as text. Assessments are made by hand, so that these files change
// only when drawing changes.
void compare(const std::string& name, const Job& job) {
  const Assessment assessment = handMadeAssessment(job);
  ViewOptions options;
  const auto view = [&](const DrawnView& drawn) {
    return LineworkText::of(viewLinework(drawn, job, assessment, options));
  };
  expectGolden("linework/" + name + "_plan.txt", view(ViewKind::Plan));
  expectGolden("linework/" + name + "_down_range.txt", view(ViewKind::DownRange));
  expectGolden("linework/" + name + "_side.txt", view(ViewKind::Side));
  expectGolden("linework/" + name + "_screen.txt", view(ViewKind::ScreenFace));
  std::string walls;
  for (const Wall& wall : job.room.walls)
    walls += "=== " + wall.name + "\n" + view({ViewKind::Wall, wall.id});
  expectGolden("linework/" + name + "_walls.txt", walls);
  const auto pages = makeSheet("plan", job, assessment, {});
  ASSERT_TRUE(pages) << pages.error().sentence();
  std::string sheet;
  for (const SheetPage& page : *pages) sheet += "=== " + page.title + "\n" + LineworkText::of(page.marks);
  expectGolden("linework/" + name + "_sheet.txt", sheet);
}

TEST(Golden, SmallGarageIsDrawnAsBefore) {
  compare("small_garage", smallGarage());
}
TEST(Golden, SlopedWorkshopIsDrawnAsBefore) {
  compare("sloped_workshop", slopedWorkshop());
}

}  // namespace
}  // namespace baywright
