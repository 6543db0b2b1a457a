// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheet_views.h"

#include <gtest/gtest.h>

#include "drawing/text_box.h"
#include "drawn_job.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

TEST(SheetView, FillsItsBoxFromCornerToCorner) {
  const Job job = smallGarage();
  const Assessment assessment = handMadeAssessment(job);
  const SheetRequest request;
  ViewDrawer drawer;
  for (const ViewKind kind : {ViewKind::Plan, ViewKind::DownRange, ViewKind::Side}) {
    const SheetView view = sheetView({job, assessment, request}, kind, 50, drawer);
    const auto ink = inkExtent(view.marks, 1);
    ASSERT_TRUE(ink);
    EXPECT_GE(ink->min().minCoeff(), -1e-9);
    EXPECT_LE(ink->max().x(), view.size.x() + 1e-9);
    EXPECT_NEAR(ink->max().y(), view.size.y(), 1e-9);
  }
}

TEST(SheetView, TakesMetresToMillimetresAtItsScale) {
  const Job job = smallGarage();
  const Assessment assessment = handMadeAssessment(job);
  const SheetRequest request;
  ViewDrawer drawer;
  const SheetView view = sheetView({job, assessment, request}, ViewKind::Plan, 50, drawer);
  EXPECT_NEAR((view.boxFromDrawing({1, 0}) - view.boxFromDrawing({0, 0})).x(), 20, 1e-12);
  const auto wall = std::find_if(view.marks.dimensions.begin(), view.marks.dimensions.end(),
                                 [](const DimensionMark& mark) { return mark.text == "A  6.000 m"; });
  ASSERT_NE(wall, view.marks.dimensions.end());
  EXPECT_TRUE(wall->to.isApprox(view.boxFromDrawing({0, 0}), 1e-9));
}

TEST(Underlays, LieUnderThePlanOnly) {
  Job job = smallGarage();
  PlanScan scan;
  scan.id = job.takeId();
  scan.scaled = true;
  job.planScans = {scan};
  SheetView view;
  view.view = ViewKind::Side;
  EXPECT_TRUE(underlaysOf(job, view, {0, 0}).empty());
  view.view = ViewKind::Plan;
  EXPECT_EQ(underlaysOf(job, view, {0, 0}).size(), 1u);
}

}  // namespace
}  // namespace baywright::detail
