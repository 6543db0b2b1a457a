// SPDX-License-Identifier: Apache-2.0
#include "drawing/views.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "clearance/assess.h"
#include "drawn_job.h"
#include "support/linework_text.h"
#include "units/length_text.h"

namespace baywright {
namespace {

using namespace baywright::testing;

constexpr ViewKind kViews[] = {ViewKind::Plan, ViewKind::DownRange, ViewKind::Side, ViewKind::ScreenFace};

Linework drawn(ViewKind view, const Job& job, const ViewOptions& options = {}) {
  return viewLinework(view, job, handMadeAssessment(job), options);
}

TEST(ViewFromWorld, FollowsTheFrames) {
  Job job = smallGarage();
  job.option().placement.bay = {{5, 2}, kPi / 2};  // shots fly along +y
  const Vec3 p(5.5, 1.0, 1.2);                     // one metre in front of the screen, half a metre right
  EXPECT_EQ(viewFromWorld(ViewKind::Plan, job, p), Vec2(5.5, 1.0));
  EXPECT_TRUE(viewFromWorld(ViewKind::DownRange, job, p).isApprox(Vec2(0.5, 1.2), 1e-12));
  EXPECT_TRUE(viewFromWorld(ViewKind::Side, job, p).isApprox(Vec2(-1.0, 1.2), 1e-12));
  const Screen& screen = job.option().kit.screen;
  EXPECT_TRUE(viewFromWorld(ViewKind::ScreenFace, job, p)
                  .isApprox(Vec2(0.5 + screen.width / 2, 1.2 - screen.bottom), 1e-12));
}

TEST(Views, OfTheSameJobAreTheSameToTheLastBit) {
  for (const Job& job : {smallGarage(), slopedWorkshop()}) {
    const Assessment assessment = assess(job);
    ViewDrawer drawer;
    for (const ViewKind view : kViews) {
      const Linework once = viewLinework(view, job, assessment, {});
      drawer.draw(view, smallGarage(), handMadeAssessment(smallGarage()), {});
      const Linework kept = drawer.draw(view, job, assessment, {});
      ASSERT_EQ(once.paths.size(), kept.paths.size());
      for (std::size_t i = 0; i < once.paths.size(); ++i) EXPECT_EQ(once.paths[i].rings, kept.paths[i].rings);
      EXPECT_EQ(LineworkText::of(once), LineworkText::of(kept));
    }
  }
}

TEST(Views, BearAnEmptyJob) {
  const Job job = newJob();
  for (const ViewKind view : kViews) EXPECT_TRUE(drawn(view, job).extent());
}

TEST(Views, LeaveAScannedPlanFreeUntilItsRoomIsDrawn) {
  Job job = newJob();
  job.planScans.emplace_back();
  EXPECT_TRUE(drawn(ViewKind::Plan, job).paths.empty());
  EXPECT_FALSE(drawn(ViewKind::Side, job).paths.empty());
}

TEST(Views, ShowCeilingHeightsWhereTheyWereTakenBesideTheCorners) {
  Job job = smallGarage();
  Measurement reading;
  reading.id = job.takeId();
  reading.kind = MeasurementKind::CeilingHeight;
  reading.position = {1.5, 2};
  reading.value = 2.5;
  job.measurements.push_back(reading);
  const auto marks = [&](const Linework& linework) {
    return std::count_if(linework.paths.begin(), linework.paths.end(),
                         [&](const Path& path) { return path.id == reading.id; });
  };
  EXPECT_EQ(marks(drawn(ViewKind::Plan, job)), 0);
  ViewOptions options;
  options.corners = true;
  const Linework plan = drawn(ViewKind::Plan, job, options);
  EXPECT_EQ(marks(plan), 1);
  const auto text = std::find_if(plan.texts.begin(), plan.texts.end(),
                                 [&](const Text& each) { return each.id == reading.id; });
  ASSERT_NE(text, plan.texts.end());
  EXPECT_NE(text->text.find(formatLength(2.5, job.units)), std::string::npos);
}

TEST(Views, HoldOnlyFiniteNumbers) {
  for (const Job& job : {smallGarage(), slopedWorkshop(), newJob()}) {
    for (const ViewKind view : kViews) {
      for (const Path& path : drawn(view, job).paths) {
        EXPECT_FALSE(path.rings.empty()) << styleOf(path.layer).name;
        for (const auto& ring : path.rings) {
          for (const Vec2& p : ring) EXPECT_TRUE(p.allFinite());
        }
      }
    }
  }
}

TEST(Views, ShowZonesOnlyWhenAsked) {
  ViewOptions none;
  none.swing = none.swingBound = none.beam = none.capture = none.rebound = none.ways = none.dimensions =
      none.labels = false;
  for (const ViewKind view : {ViewKind::Plan, ViewKind::Side}) {
    const Linework bare = drawn(view, smallGarage(), none);
    const Linework full = drawn(view, smallGarage());
    for (const Layer layer : {Layer::Swing, Layer::SwingBound, Layer::Beam, Layer::Capture}) {
      EXPECT_EQ(countOn(bare.paths, layer), 0u) << styleOf(layer).name;
      EXPECT_GT(countOn(full.paths, layer), 0u) << styleOf(layer).name;
    }
    EXPECT_EQ(countOn(bare.dimensions, Layer::Dimensions), 0u);
    EXPECT_GT(countOn(full.dimensions, Layer::Dimensions), 0u);
  }
}

std::vector<std::string> dimensionTexts(const Linework& linework) {
  std::vector<std::string> texts;
  for (const DimensionMark& mark : linework.dimensions) {
    if (mark.layer == Layer::Dimensions) texts.push_back(mark.text);
  }
  std::sort(texts.begin(), texts.end());
  return texts;
}

bool has(const std::vector<std::string>& texts, const std::string& text) {
  return std::find(texts.begin(), texts.end(), text) != texts.end();
}

TEST(Plan, GivesTheDimensionsOfRoomAndBay) {
  const auto texts = dimensionTexts(drawn(ViewKind::Plan, smallGarage()));
  for (const char* wall : {"A  6.000 m", "B  4.000 m", "C  6.000 m", "D  4.000 m"})
    EXPECT_TRUE(has(texts, wall)) << wall;
  EXPECT_TRUE(has(texts, "2.600 m"));  // strike point to screen
  EXPECT_TRUE(has(texts, "2.800 m"));  // frame width
  EXPECT_TRUE(has(texts, "1.500 m"));  // frame depth
  EXPECT_TRUE(has(texts, "0.400 m"));  // back of the frame to wall B: 6.0 - 5.5 - 0.1
  EXPECT_EQ(std::count(texts.begin(), texts.end(), "0.600 m"), 2);  // sides of the frame to walls A and C
}

TEST(Plan, DimensionsSpanWhatTheySay) {
  const Linework plan = drawn(ViewKind::Plan, smallGarage());
  for (const DimensionMark& mark : plan.dimensions) {
    if (mark.layer != Layer::Dimensions || mark.id != smallGarage().room.walls.front().id) continue;
    EXPECT_NEAR((mark.to - mark.from).norm(), 6.0, 1e-12);
    EXPECT_LT((mark.from + mark.offset * leftOf((mark.to - mark.from).normalized())).y(),
              -0.1);  // outside the wall
  }
}

TEST(Plan, TextsOfDimensionsDoNotCoverEachOther) {
  const Linework plan = drawn(ViewKind::Plan, smallGarage());
  for (std::size_t i = 0; i < plan.texts.size(); ++i) {
    for (std::size_t k = 0; k < i; ++k) {
      EXPECT_FALSE(plan.texts[i].at == plan.texts[k].at)
          << plan.texts[i].text << " on " << plan.texts[k].text;
    }
  }
}

TEST(Plan, DrawsWhatIsAboveTheCutDashed) {
  const Job job = slopedWorkshop();
  const Id beam = idNamed(job, "Beam");
  const Id column = idNamed(job, "Column");
  int drawnOnes = 0;
  for (const Path& path : drawn(ViewKind::Plan, job).paths) {
    if (path.id != beam && path.id != column) continue;
    ++drawnOnes;
    EXPECT_EQ(path.layer, path.id == beam ? Layer::Overhead : Layer::Fixtures);
  }
  EXPECT_EQ(drawnOnes, 2);
}

// Two dashed lines on top of each other would look like one full line.
TEST(Plan, DrawsTheEdgeBetweenTwoCeilingPartsOnce) {
  const Job job = garage(6, 4)
                      .withCeilingPart({{0, 0}, {2, 0}, {2, 4}, {0, 4}}, 2.3)
                      .withCeilingPart({{2, 0}, {6, 0}, {6, 4}, {2, 4}}, 2.5)
                      .job();
  int edges = 0;
  for (const Path& path : drawn(ViewKind::Plan, job).paths) {
    if (path.layer != Layer::Overhead) continue;
    for (const auto& edge : path.rings) edges += edge[0].x() == 2 && edge[1].x() == 2;
  }
  EXPECT_EQ(edges, 1);
}

TEST(Plan, TurnsWithTheRoom) {
  // The same garage a quarter turn round: the same marks, as many of each and the same texts.
  Job turned = smallGarage();
  for (Wall& wall : turned.room.walls) wall.start = leftOf(wall.start);
  for (Fixture& fixture : turned.room.fixtures) {
    auto& box = std::get<BoxShape>(fixture.shape);
    box.centre = leftOf(box.centre);
    box.heading += kPi / 2;
  }
  turned.option().placement.bay = {leftOf(turned.option().placement.bay.origin), kPi / 2};
  ViewOptions options;
  options.swing = options.capture = options.rebound = options.ways = false;
  options.findingKey = "none";
  const Linework before = drawn(ViewKind::Plan, smallGarage(), options);
  const Linework after = drawn(ViewKind::Plan, turned, options);
  EXPECT_EQ(dimensionTexts(before), dimensionTexts(after));
  EXPECT_EQ(countOn(before.paths, Layer::Walls), countOn(after.paths, Layer::Walls));
  EXPECT_EQ(countOn(before.paths, Layer::Bay), countOn(after.paths, Layer::Bay));
}

TEST(Plan, KeepsDangerInsideTheRoom) {
  for (const Path& path : drawn(ViewKind::Plan, smallGarage()).paths) {
    if (path.layer != Layer::Rebound) continue;
    for (const auto& ring : path.rings) {
      for (const Vec2& p : ring)
        EXPECT_TRUE(p.x() >= -1e-6 && p.x() <= 6 + 1e-6 && p.y() >= -1e-6 && p.y() <= 4 + 1e-6);
    }
  }
}

TEST(Elevations, GiveHeightsAndLengths) {
  const auto side = dimensionTexts(drawn(ViewKind::Side, smallGarage()));
  EXPECT_TRUE(has(side, "6.000 m"));  // room
  EXPECT_TRUE(has(side, "2.600 m"));  // ceiling, and strike point to screen
  EXPECT_TRUE(has(side, "3.200 m"));  // lens to screen
  EXPECT_TRUE(has(side, "2.200 m"));  // height of the lens
  EXPECT_TRUE(has(side, "2.300 m"));  // frame
  EXPECT_TRUE(has(side, "0.300 m"));  // frame to ceiling
  const auto across = dimensionTexts(drawn(ViewKind::DownRange, smallGarage()));
  EXPECT_TRUE(has(across, "4.000 m"));
  EXPECT_TRUE(has(across, "2.800 m"));
}

TEST(Elevations, AgreeWithViewFromWorld) {
  const Job job = smallGarage();
  // The screen's line in the side view.
  const Vec2 top = viewFromWorld(ViewKind::Side, job, worldFromBay(job.option().placement.bay, {0, 0, 2.05}));
  bool found = false;
  for (const Path& path : drawn(ViewKind::Side, job).paths) {
    if (path.id != job.option().kit.screen.id || path.rings.front().size() != 2) continue;
    found = true;
    EXPECT_TRUE(path.rings.front()[1].isApprox(top, 1e-9));
  }
  EXPECT_TRUE(found);
}

TEST(Elevations, LeaveOutWhatStandsOnTheViewersSideUnlessItIsSpokenOf) {
  Job job = garage(6, 4)
                .withGolfer(1.8)
                .withClub()
                .withBox("Cabinet", {5.0, 0.5}, 0.6, 0.4, 0, 1)
                .bayAt(5.5, 2, 0)
                .job();
  const Id cabinet =
      idNamed(job, "Cabinet");  // to the right of the axis: between the viewer and the side cut
  Assessment assessment = handMadeAssessment(job);
  const auto isDrawn = [&] {
    const Linework side = viewLinework(ViewKind::Side, job, assessment, {});
    return std::any_of(side.paths.begin(), side.paths.end(),
                       [&](const Path& path) { return path.id == cabinet; });
  };
  EXPECT_FALSE(isDrawn());
  assessment.findings.front().subjects.push_back(cabinet);
  EXPECT_TRUE(isDrawn());
}

TEST(ScreenFace, ShowsTheLightOnTheNinePoints) {
  const Job job = smallGarage();
  const Linework face = drawn(ViewKind::ScreenFace, job);
  const auto lux = std::count_if(face.texts.begin(), face.texts.end(),
                                 [](const Text& text) { return text.text.ends_with(" lx"); });
  EXPECT_EQ(lux, 9);
  const auto dimensions = dimensionTexts(face);
  EXPECT_TRUE(has(dimensions, "2.600 m"));
  EXPECT_TRUE(has(dimensions, "2.000 m"));
}

TEST(ScreenFace, ShowsShadowsAndWhatShadesAsTheirFindingsSay) {
  const Job job = smallGarage();
  Assessment assessment = handMadeAssessment(job);
  ASSERT_TRUE(assessment.picture);
  PictureZone::GolferShadow shadow;
  shadow.golfer = job.golfers.front().id;
  shadow.shadow.worst = 0.05;
  shadow.shadow.outlinesAtWorst = {{{1, 0}, {1.4, 0}, {1.4, 0.6}, {1, 0.6}},
                                   {{1.1, 0.5}, {1.3, 0.5}, {1.3, 0.9}, {1.1, 0.9}}};
  shadow.shadow.outlinesAtAddress = {{{1, 0}, {1.2, 0}, {1.2, 0.3}, {1, 0.3}}};
  assessment.picture->shadows = {shadow};
  Finding finding;
  finding.check = "picture_shadow";
  finding.subjects = {job.golfers.front().id};
  finding.verdict = Verdict::Blocked;
  assessment.findings.push_back(finding);
  const Linework face = viewLinework(ViewKind::ScreenFace, job, assessment, {});
  EXPECT_EQ(countOn(face.paths, Layer::People), 3u);  // the worst one with its hatch, and at address
  const auto worst = std::find_if(face.paths.begin(), face.paths.end(),
                                  [](const Path& path) { return path.layer == Layer::People; });
  EXPECT_EQ(worst->rings.size(), 1u);  // both limbs as one
  EXPECT_EQ(worst->verdict, Verdict::Blocked);
}

TEST(ScreenFace, WithoutAPictureStillShowsTheScreen) {
  Job job = smallGarage();
  job.option().kit.hasProjector = false;
  Assessment assessment = handMadeAssessment(job);
  assessment.picture.reset();
  const Linework face = viewLinework(ViewKind::ScreenFace, job, assessment, {});
  EXPECT_EQ(countOn(face.paths, Layer::Beam), 0u);
  EXPECT_GT(countOn(face.paths, Layer::Bay), 0u);
}

}  // namespace
}  // namespace baywright
