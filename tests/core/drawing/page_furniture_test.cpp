// SPDX-License-Identifier: Apache-2.0
#include "drawing/page_furniture.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "drawing/text_box.h"
#include "drawn_job.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

const PageBox kFrame = frameBox(PaperSize::A3, Orientation::Landscape);

bool has(const Linework& marks, std::string_view wanted) {
  return std::any_of(marks.texts.begin(), marks.texts.end(),
                     [&](const Text& text) { return text.text == wanted; });
}

// Fields that ISO 7200:2004 requires, and what stands in them.
TEST(TitleBlock, HoldsTheFieldsOfTheStandard) {
  TitleBlock fields;
  fields.owner = "Fitting Works";
  fields.number = "BW-0042";
  fields.date = "2026-03-14";
  fields.sheet = "1 of 3";
  fields.title = "Garage bay";
  fields.approver = "D. Approver";
  fields.creator = "C. Creator";
  fields.documentType = "Bay plan";
  fields.revision = "B";
  fields.scale = "SCALE 1:50";
  const Linework marks = titleBlockMarks(fields, kFrame);
  for (const char* name : {"Legal owner", "Number", "Date of issue", "Sheet", "Title", "Approved by",
                           "Created by", "Document type", "Revision", "Scale"}) {
    EXPECT_TRUE(has(marks, name)) << name;
  }
  for (const std::string& value :
       {fields.owner, fields.number, fields.date, fields.sheet, fields.title, fields.approver, fields.creator,
        fields.documentType, fields.revision, fields.scale}) {
    EXPECT_TRUE(has(marks, value)) << value;
  }
}

TEST(TitleBlock, IsAHundredAndEightyMillimetresWideInTheLowerRightCorner) {
  const auto ink = inkExtent(titleBlockMarks({}, kFrame), 1);
  ASSERT_TRUE(ink);
  EXPECT_NEAR(ink->sizes().x(), 180, 1e-9);
  EXPECT_NEAR(ink->max().x(), kFrame.max().x(), 1e-9);
  EXPECT_NEAR(ink->min().y(), kFrame.min().y(), 1e-9);
}

TEST(TitleBlock, KeepsLongValuesInTheirFields) {
  TitleBlock fields;
  fields.owner = fields.customer = fields.site = fields.title = fields.supplement = fields.creator =
      fields.approver = fields.documentType = fields.number = fields.revision = fields.date = fields.sheet =
          "A name that is far longer than any field of a title block could ever hold, however small it is "
          "set, and on";
  const Linework marks = titleBlockMarks(fields, kFrame);
  std::vector<PageBox> cells;
  for (const Path& path : marks.paths) {
    if (!path.weight) cells.push_back(*Linework{{path}, {}, {}, {}}.extent());
  }
  for (const Text& text : marks.texts) {
    const auto box = boxOf(text, 1);
    EXPECT_TRUE(std::any_of(cells.begin(), cells.end(), [&](const PageBox& cell) {
      return cell.contains(box);
    })) << text.text;
  }
}

TEST(TitleBlock, TakesItsFieldsFromTheJob) {
  Job job = smallGarage();
  job.info.title = "Garage bay";
  job.info.number = "7";
  const TitleBlock fields = titleBlockOf(job, "Bay plan");
  EXPECT_EQ(fields.title, "Garage bay");
  EXPECT_EQ(fields.number, "7");
  EXPECT_EQ(fields.supplement, job.option().name);
  job.info.title.clear();
  EXPECT_EQ(titleBlockOf(job, "").title, job.room.name);
}

// The rulers' ends, whose distance a reader measures.
TEST(Rulers, MeasureAHundredMillimetresAndFourInchesBothWays) {
  const Linework marks = rulerMarks(kFrame);
  ASSERT_EQ(marks.paths.size(), 2u);
  const auto longest = [](const Path& path) {
    std::vector<double> lengths;
    for (const auto& piece : path.rings) lengths.push_back((piece.back() - piece.front()).norm());
    std::sort(lengths.rbegin(), lengths.rend());
    return lengths;
  };
  for (const Path& ruler : marks.paths) {
    EXPECT_NEAR(longest(ruler)[0], 101.6, 1e-9);
    EXPECT_NEAR(longest(ruler)[1], 100.0, 1e-9);
  }
  const auto across = Linework{{marks.paths[0]}, {}, {}, {}}.extent();
  const auto down = Linework{{marks.paths[1]}, {}, {}, {}}.extent();
  EXPECT_NEAR(across->sizes().x(), 101.6, 1e-9);
  EXPECT_NEAR(down->sizes().y(), 101.6, 1e-9);
  EXPECT_NEAR(across->max().y(), kFrame.max().y(), 1e-9);
  EXPECT_NEAR(down->min().x(), kFrame.min().x(), 1e-9);
}

TEST(Rulers, SayWhatToDoWhenThePrinterShrank) {
  std::string all;
  for (const Text& text : rulerMarks(kFrame).texts) all += text.text + " ";
  EXPECT_NE(all.find("Must measure 100 mm"), std::string::npos);
  EXPECT_NE(all.find("actual size"), std::string::npos);
}

TEST(SignOff, SaysWhatIsAgreedToByWhom) {
  const Job job = smallGarage();
  const PageBox box(Vec2(0, 0), Vec2(180, kSignOffHeight));
  const Linework marks = signOffMarks(job, handMadeAssessment(job), box);
  std::string all;
  for (const Text& text : marks.texts) {
    all += text.text + " ";
    EXPECT_TRUE(box.contains(boxOf(text, 1))) << text.text;
  }
  EXPECT_NE(all.find("1 blocked, 3 tight, 1 unknown, 1 clear"), std::string::npos) << all;
  EXPECT_NE(all.find(job.option().name), std::string::npos);
  for (const char* field : {"Customer, name", "Customer, signature", "Customer, date", "Fitter, signature"})
    EXPECT_TRUE(has(marks, field));
}

TEST(SignOff, FitsBesideTheTitleBlockOfASmallPage) {
  const Job job = smallGarage();
  const PageBox box(Vec2(0, 0), Vec2(87, 36));
  for (const Text& text : signOffMarks(job, handMadeAssessment(job), box).texts) {
    EXPECT_TRUE(box.contains(boxOf(text, 1))) << text.text;
  }
}

TEST(Border, IsThick) {
  const Linework marks = borderMarks(kFrame);
  EXPECT_EQ(marks.paths.front().weight, LineWeight::Thick);
  EXPECT_TRUE(marks.extent()->isApprox(kFrame));
}

}  // namespace
}  // namespace baywright::detail
