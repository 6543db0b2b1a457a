// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "drawing/scale.h"
#include "drawing/text_box.h"
#include "drawn_job.h"
#include "support/linework_text.h"

namespace baywright {
namespace {

using namespace baywright::testing;

Result<std::vector<SheetPage>> planSheet(const Job& job, const SheetRequest& request = {}) {
  return makeSheet("plan", job, handMadeAssessment(job), request);
}

bool has(const SheetPage& page, std::string_view wanted) {
  const auto holds = [&](const auto& mark) { return mark.text.find(wanted) != std::string::npos; };
  return std::any_of(page.marks.texts.begin(), page.marks.texts.end(), holds) ||
         std::any_of(page.marks.dimensions.begin(), page.marks.dimensions.end(), holds);
}

bool anyHas(const std::vector<SheetPage>& pages, std::string_view wanted) {
  return std::any_of(pages.begin(), pages.end(), [&](const SheetPage& page) { return has(page, wanted); });
}

TEST(Sheets, HaveNamesOfTheirOwn) {
  std::set<std::string_view> names;
  for (const SheetKind& kind : sheetKinds()) {
    names.insert(kind.name);
    EXPECT_FALSE(kind.title.empty());
    EXPECT_NE(kind.make, nullptr);
  }
  EXPECT_EQ(names.size(), sheetKinds().size());
  EXPECT_TRUE(names.contains("plan"));
}

TEST(Sheets, RefuseANameThatIsNotInTheTable) {
  const auto pages = makeSheet("plane", smallGarage(), handMadeAssessment(smallGarage()), {});
  ASSERT_FALSE(pages);
  EXPECT_NE(pages.error().sentence().find("plane"), std::string::npos);
  EXPECT_NE(pages.error().next.find("plan"), std::string::npos);
}

TEST(PlanSheet, IsTrueToScale) {
  const Job job = smallGarage();
  for (const double denominator : {50.0, 100.0, 48.0, 75.0}) {
    SheetRequest request;
    request.scale = denominator;
    const auto pages = planSheet(job, request);
    ASSERT_TRUE(pages) << pages.error().sentence();
    EXPECT_EQ(pages->front().scaleDenominator, denominator);
    int walls = 0;
    for (const DimensionMark& mark : pages->front().marks.dimensions) {
      if (mark.text == "A  6.000 m") {
        ++walls;
        EXPECT_NEAR((mark.to - mark.from).norm(), 6000 / denominator, 1e-9);
      }
    }
    EXPECT_EQ(walls, 1);
  }
}

TEST(PlanSheet, DrawsAWallOfOneMetreTwentyMillimetresLongAtOneToFifty) {
  Job job = garage(4, 3).withGolfer(1.8).withClub().withPassage("A", 1.0, 2.0).bayAt(3.5, 1.5, 0).job();
  SheetRequest request;
  request.scale = 50;
  const auto pages = planSheet(job, request);
  ASSERT_TRUE(pages);
  // Wall A is cut by a passage from 1 to 3 m: its faces are one metre long on either side.
  int faces = 0;
  for (const Path& path : pages->front().marks.paths) {
    if (path.id != job.room.walls.front().id) continue;
    for (const auto& edge : path.rings)
      faces += edge.size() == 2 && std::abs((edge[1] - edge[0]).norm() - 20.0) < 1e-9;
  }
  EXPECT_EQ(faces, 2);
}

TEST(PlanSheet, TakesTheLargestScaleThatFits) {
  const Job job = smallGarage();
  const auto pages = planSheet(job);
  ASSERT_TRUE(pages);
  const double chosen = pages->front().scaleDenominator;
  const auto ladder = scaleLadder(ScaleFamily::Metric);
  const auto place = std::find(ladder.begin(), ladder.end(), chosen);
  ASSERT_NE(place, ladder.end());
  ASSERT_NE(place, ladder.begin());
  SheetRequest larger;
  larger.scale = *(place - 1);
  EXPECT_FALSE(planSheet(job, larger));
  EXPECT_TRUE(has(pages->front(), scaleText(chosen)));
}

TEST(PlanSheet, TakesAnArchitecturalScaleForAJobInFeet) {
  const auto pages = planSheet(slopedWorkshop());
  ASSERT_TRUE(pages);
  const auto ladder = scaleLadder(ScaleFamily::Architectural);
  EXPECT_NE(std::find(ladder.begin(), ladder.end(), pages->front().scaleDenominator), ladder.end());
  EXPECT_TRUE(has(pages->front(), "″ = 1′-0″"));
}

TEST(PlanSheet, ThatDoesNotFitSaysWhatWould) {
  SheetRequest request;
  request.paper = PaperSize::A4;
  request.scale = 20;
  const auto pages = planSheet(smallGarage(), request);
  ASSERT_FALSE(pages);
  EXPECT_NE(pages.error().what.find("1:20"), std::string::npos);
  EXPECT_NE(pages.error().what.find("A4"), std::string::npos);
  // It keeps its word: the paper it names holds the plan, and so does the scale.
  const std::string& next = pages.error().next;
  const auto paper = std::find_if(paperStyles().begin(), paperStyles().end(), [&](const PaperStyle& style) {
    return next.find(std::string(style.name) + " paper") != std::string::npos;
  });
  ASSERT_NE(paper, paperStyles().end()) << next;
  request.paper = paper->size;
  EXPECT_TRUE(planSheet(smallGarage(), request));
  const std::size_t ratio = next.find("1:");
  ASSERT_NE(ratio, std::string::npos) << next;
  request.paper = PaperSize::A4;
  request.scale = parseScale(next.substr(ratio, next.size() - ratio - 1)).value();
  EXPECT_TRUE(planSheet(smallGarage(), request));
}

TEST(PlanSheet, RefusesScalesThatAreNone) {
  for (const double scale : {0.0, -50.0, 1e9, std::nan("")}) {
    SheetRequest request;
    request.scale = scale;
    EXPECT_FALSE(planSheet(smallGarage(), request)) << scale;
  }
}

TEST(PlanSheet, OfARoomWithoutWallsIsRefused) {
  const auto pages = planSheet(newJob());
  ASSERT_FALSE(pages);
  EXPECT_NE(pages.error().what.find("no walls"), std::string::npos);
}

TEST(PlanSheet, KeepsEveryMarkInsideTheBorder) {
  for (const Job& job : {smallGarage(), slopedWorkshop()}) {
    for (const PaperSize paper : {PaperSize::A4, PaperSize::A3, PaperSize::A1, PaperSize::AnsiA,
                                  PaperSize::AnsiB, PaperSize::ArchB}) {
      for (const Orientation orientation : {Orientation::Portrait, Orientation::Landscape}) {
        SheetRequest request;
        request.paper = paper;
        request.orientation = orientation;
        const auto pages = planSheet(job, request);
        ASSERT_TRUE(pages) << pages.error().sentence();
        const PageBox frame = frameBox(paper, orientation);
        for (const SheetPage& page : *pages) {
          EXPECT_EQ(Vec2(page.widthMm, page.heightMm), pageBox(paper, orientation).sizes());
          const auto ink = inkExtent(page.marks, 1);
          ASSERT_TRUE(ink);
          EXPECT_GE((ink->min() - frame.min()).minCoeff(), -1e-6) << styleOf(paper).name << " " << page.title;
          EXPECT_GE((frame.max() - ink->max()).minCoeff(), -1e-6) << styleOf(paper).name << " " << page.title;
        }
      }
    }
  }
}

TEST(PlanSheet, CarriesAllThatACustomerSigns) {
  for (const PaperSize paper : {PaperSize::A4, PaperSize::A3, PaperSize::AnsiA}) {
    const Job job = smallGarage();
    SheetRequest request;
    request.paper = paper;
    const auto pages = planSheet(job, request);
    ASSERT_TRUE(pages);
    for (const char* wanted :
         {"Plan", "Looking down-range", "From the side", "Sign-off", "Customer, signature", "Findings",
          "Cautions", "not a guarantee", "Legend", "Legal owner", "100 mm", "A  6.000 m", "SCALE 1:"}) {
      EXPECT_TRUE(anyHas(*pages, wanted)) << wanted << " on " << styleOf(paper).name;
    }
    for (const Finding& finding : handMadeAssessment(job).findings) {
      EXPECT_TRUE(anyHas(*pages, finding.sentence.substr(0, 12))) << finding.sentence;
    }
  }
}

TEST(PlanSheet, NumbersItsPages) {
  SheetRequest request;
  request.paper = PaperSize::A4;
  const auto pages = planSheet(smallGarage(), request);
  ASSERT_TRUE(pages);
  ASSERT_GT(pages->size(), 1u);
  for (std::size_t i = 0; i < pages->size(); ++i) {
    EXPECT_TRUE(has((*pages)[i], std::to_string(i + 1) + " of " + std::to_string(pages->size())));
  }
}

TEST(PlanSheet, GoesOnWithFindingsOnASecondPage) {
  const Job job = smallGarage();
  Assessment assessment = handMadeAssessment(job);
  while (assessment.findings.size() < 120) assessment.findings.push_back(assessment.findings.back());
  const auto pages = makeSheet("plan", job, assessment, {});
  ASSERT_TRUE(pages);
  ASSERT_GE(pages->size(), 2u);
  EXPECT_TRUE(anyHas(*pages, "Findings, worst first, continued"));
  std::ptrdiff_t symbols = 0;
  for (const SheetPage& page : *pages) {
    symbols += std::count_if(page.marks.symbols.begin(), page.marks.symbols.end(),
                             [](const Symbol& symbol) { return symbol.layer == Layer::Labels; });
  }
  EXPECT_EQ(symbols, 120);
}

TEST(PlanSheet, LaysScansUnderThePlanToScale) {
  Job job = smallGarage();
  PlanScan scan;
  scan.id = job.takeId();
  scan.scaled = true;
  scan.opacity = 0.4;
  // 100 pixels a metre, y down, the upper left corner at the world's (0, 4).
  scan.worldFromPixel << 0.01, 0, 0, 0, -0.01, 4, 0, 0, 1;
  job.planScans = {scan, scan, scan};
  job.planScans[1].visible = false;
  job.planScans[2].scaled = false;
  SheetRequest request;
  request.scale = 50;
  const auto pages = planSheet(job, request);
  ASSERT_TRUE(pages);
  ASSERT_EQ(pages->front().underlays.size(), 1u);
  const PlacedImage& image = pages->front().underlays.front();
  EXPECT_EQ(image.scan, scan.id);
  EXPECT_EQ(image.opacity, 0.4);
  const auto onPage = [&](double x, double y) {
    return (image.pageMmFromPixel * Vec3(x, y, 1)).hnormalized().eval();
  };
  EXPECT_NEAR((onPage(100, 0) - onPage(0, 0)).x(), 20, 1e-9);
  // Wall A starts at the world's origin, pixel (0, 400).
  for (const DimensionMark& mark : pages->front().marks.dimensions) {
    if (mark.text == "A  6.000 m") {
      EXPECT_TRUE(mark.to.isApprox(onPage(0, 400), 1e-9));
    }
  }
  EXPECT_TRUE(frameBox(PaperSize::A3, Orientation::Landscape).contains(image.clip));
}

TEST(PlanSheet, IsTheSameForTheSameJob) {
  const auto once = planSheet(slopedWorkshop());
  const auto again = planSheet(slopedWorkshop());
  ASSERT_TRUE(once && again);
  ASSERT_EQ(once->size(), again->size());
  for (std::size_t i = 0; i < once->size(); ++i) {
    EXPECT_EQ(LineworkText::of((*once)[i].marks), LineworkText::of((*again)[i].marks));
  }
}

}  // namespace
}  // namespace baywright
