// SPDX-License-Identifier: Apache-2.0
#include "exchange/survey_kind.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(SurveyKind, IsToldByTheEndingWhateverItsCase) {
  EXPECT_TRUE(hasSurveySuffix("/a/House.DXF"));
  EXPECT_TRUE(hasSurveySuffix("hall.glb"));
  EXPECT_FALSE(hasSurveySuffix("plan.png"));
  EXPECT_FALSE(hasSurveySuffix("dxf"));
  EXPECT_EQ(surveyKindOf("House.DXF", {}), SurveyKind::Drawing);
  EXPECT_EQ(surveyKindOf("hall.ply", {}), SurveyKind::Scan);
}

TEST(SurveyKind, TellsListsFromCloudsByTheirFirstRows) {
  for (const char* name : {"a.csv", "a.txt"}) {
    EXPECT_EQ(surveyKindOf(name, "# remark\nkind,from,value\nwall,A,6\n"), SurveyKind::List);
    EXPECT_EQ(surveyKindOf(name, "1.0,2.0,3.0\n"), SurveyKind::Scan);
    EXPECT_EQ(surveyKindOf(name, "# remark\nx,y,z\n1,2,3\n"), SurveyKind::Scan);
  }
}

}  // namespace
}  // namespace baywright
