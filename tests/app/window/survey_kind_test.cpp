// SPDX-License-Identifier: Apache-2.0
#include "window/survey_kind.h"

#include <gtest/gtest.h>

#include "survey_files.h"
#include "window/job_files.h"

namespace baywright {
namespace {

TEST(SurveyKind, IsToldByTheEndingWhateverItsCase) {
  EXPECT_TRUE(hasSurveyName(QStringLiteral("/a/House.DXF")));
  EXPECT_TRUE(hasSurveyName(QStringLiteral("hall.glb")));
  EXPECT_FALSE(hasSurveyName(QStringLiteral("plan.png")));
  EXPECT_FALSE(hasSurveyName(QStringLiteral("dxf")));
  EXPECT_EQ(surveyKindOf(QStringLiteral("House.DXF"), {}), SurveyKind::Drawing);
  EXPECT_EQ(surveyKindOf(QStringLiteral("hall.ply"), {}), SurveyKind::Scan);
}

TEST(SurveyKind, TellsListsFromCloudsByTheirFirstRows) {
  for (const char* name : {"a.csv", "a.txt"}) {
    EXPECT_EQ(surveyKindOf(QString::fromLatin1(name), testing::measuringList()), SurveyKind::List);
    EXPECT_EQ(surveyKindOf(QString::fromLatin1(name), "1.0,2.0,3.0\n"), SurveyKind::Scan);
    EXPECT_EQ(surveyKindOf(QString::fromLatin1(name), "# remark\nx,y,z\n1,2,3\n"), SurveyKind::Scan);
  }
}

TEST(SurveyKind, IsOfferedByTheOpenDialog) {
  for (const QString& pattern : surveyPatterns())
    EXPECT_TRUE(JobFiles::openFilter().contains(pattern)) << pattern.toStdString();
}

}  // namespace
}  // namespace baywright
