// SPDX-License-Identifier: Apache-2.0
// The uncertainty that a finding states against the scatter of its margin when every dimension is drawn anew
// from its own distribution (JCGM 101:2008, propagation of distributions). With 400 draws the scatter is
// known to 4 %; the test allows three times that.
#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <random>

#include "clearance/assess.h"
#include "clearance/assessor.h"
#include "job/edit_placement.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

constexpr int kDraws = 400;
constexpr double kAllowed = 0.12;

class Draw {
 public:
  double operator()(double sigma) { return sigma * normal_(random_); }
  Vec2 plan(double sigma) { return {(*this)(sigma), (*this)(sigma)}; }

 private:
  std::mt19937 random_{2024};
  std::normal_distribution<double> normal_;
};

Finding findingOf(const Job& job, const std::string& key) {
  const std::string check = key.substr(0, key.find('/'));
  for (const Finding& finding : Assessor().check(job, check)) {
    if (finding.key == key) return finding;
  }
  ADD_FAILURE() << "No finding " << key;
  return {};
}

using Change = std::function<void(Job&, Draw&)>;

/// `beside`: what the margin's uncertainty holds that no dimension of the job can be drawn for.
void expectScatter(const Job& job, const std::string& key, const Change& change, double beside = 0) {
  const Finding stated = findingOf(job, key);
  ASSERT_TRUE(stated.margin) << key;
  Draw draw;
  double sum = 0;
  double squares = 0;
  for (int i = 0; i < kDraws; ++i) {
    Job drawn = job;
    change(drawn, draw);
    const double margin = findingOf(drawn, key).margin->value - stated.margin->value;
    sum += margin;
    squares += margin * margin;
  }
  const double variance = (squares - sum * sum / kDraws) / (kDraws - 1);
  const double scatter = std::sqrt(variance + beside * beside);
  EXPECT_GT(scatter, 0) << key;
  EXPECT_NEAR(scatter / stated.margin->sigma, 1, kAllowed) << key << ": stated " << stated.margin->sigma;
}

void drawWalls(Job& job, Draw& draw) {
  for (Wall& wall : job.room.walls) wall.start += draw.plan(std::sqrt(wall.startCovariance.xx));
}
/// The strike point is marked, then the direction to a second mark on the screen's line.
void drawStrike(Job& job, Draw& draw, Hand hand) {
  const Placement before = job.option().placement;
  const Vec2 strike = flat(worldFromBay(before.bay, before.strikePoint(hand)));
  const double turn = draw(std::sqrt(2.0) * before.sigma / before.strikeDistance);
  job = *turnBay(job, turn, strike);
  job = *moveBay(job, draw.plan(before.sigma));
}
void drawFrame(Job& job, Draw& draw) {
  const Placement before = job.option().placement;
  const double turn = draw(std::sqrt(2.0) * before.sigma / job.option().kit.frame.width);
  job = *turnBay(job, turn, before.bay.origin);
  job = *moveBay(job, draw.plan(before.sigma));
}
double perturbed(const Dimension& dimension, Draw& draw) {
  return dimension.value + draw(dimension.uncertain().sigma);
}

std::string swingKey(const Job& job, const std::string& check, const std::string& what) {
  const Golfer& golfer = job.golfers[0];
  return check + "/" + std::to_string(golfer.id.value) + "/" + std::to_string(golfer.clubs[0].id.value) +
         "/" + what;
}
const SwingEnvelope& envelopeOf(const Assessment& assessment) {
  return assessment.swings[0].swing->expected;
}

TEST(MonteCarlo, OfTheSwingBesideAWall) {
  JobBuilder builder =
      garage(12, 6).withCeiling(4.5).withGolfer(1.8).withClub().bayAt(9, 2.9, 8_deg).strikingFrom(3);
  builder.withoutProjector().withoutMonitor();
  const Job job = builder
                      .with([](Job& j) {
                        for (Wall& wall : j.room.walls)
                          wall.startCovariance = PlanCovariance::isotropic(0.02);
                        j.options[0].placement.sigma = 0.02;
                      })
                      .job();
  const Assessment assessment = assess(job);
  const std::string key = swingKey(job, "swing_room", "wall");
  const Finding* finding = assessment.find(key);
  ASSERT_TRUE(finding && finding->points);
  const Vec3 along = (finding->points->first - finding->points->second).normalized();
  const Vec3 inSwing(along.dot(raised(job.option().placement.bay.down(), 0)),
                     along.dot(raised(job.option().placement.bay.right(), 0)), along.z());
  expectScatter(
      job, key,
      [](Job& j, Draw& draw) {
        drawWalls(j, draw);
        drawStrike(j, draw, Hand::Right);
      },
      envelopeOf(assessment).sigmaAlong(inSwing));
}

TEST(MonteCarlo, OfTheSwingUnderASlope) {
  const Job job = garage(9, 6)
                      .withSlopedCeiling(2.5, 3.7, 6)
                      .withGolfer(1.8)
                      .withClub()
                      .bayAt(7, 3, 0)
                      .withoutProjector()
                      .withoutMonitor()
                      .with([](Job& j) {
                        j.room.ceiling[0].height = guessed(2.5);
                        j.options[0].placement.sigma = 0.03;
                      })
                      .job();
  const Assessment assessment = assess(job);
  const std::string key = swingKey(job, "swing_headroom", "ceiling");
  const double slope = 0.2;
  const Vec3 along = Vec3(0, slope, -1).normalized();
  const Vec3 inSwing(along.x(), -along.y(), along.z());  // heading 0: r is -y
  expectScatter(
      job, key,
      [](Job& j, Draw& draw) {
        CeilingPart& part = j.room.ceiling[0];
        const double sigma = part.height.uncertain().sigma;
        part.height.value += draw(sigma);
        part.anchor += draw.plan(sigma);
        drawStrike(j, draw, Hand::Right);
      },
      envelopeOf(assessment).sigmaAlong(inSwing));
}

TEST(MonteCarlo, OfTheStatureInTheEnvelope) {
  // A guessed stature: 50 mm of it; what the model adds for golfers of one size stays beside.
  const auto hall = [](double stature, Instrument how) {
    return garage(9, 8)
        .withGolfer(stature)
        .withClub()
        .with([&](Job& j) { j.golfers[0].stature.how = how; })
        .job();
  };
  const Job job = hall(1.8, Instrument::Guess);
  const Swing stated = *swingOf(job.golfers[0], job.golfers[0].clubs[0]);
  const Job exact = hall(1.8, Instrument::Laser);
  const double model = swingOf(exact.golfers[0], exact.golfers[0].clubs[0])->expected.sigmaUp;
  Draw draw;
  double sum = 0;
  double squares = 0;
  for (int i = 0; i < kDraws; ++i) {
    Golfer golfer = job.golfers[0];
    golfer.stature.value = perturbed(golfer.stature, draw);
    const double highest = swingOf(golfer, golfer.clubs[0])->expected.figures.highest.value -
                           stated.expected.figures.highest.value;
    sum += highest;
    squares += highest * highest;
  }
  const double scatter = std::sqrt((squares - sum * sum / kDraws) / (kDraws - 1));
  EXPECT_NEAR(std::hypot(scatter, model) / stated.expected.sigmaUp, 1, kAllowed) << scatter;
}

TEST(MonteCarlo, OfTheFramesHeight) {
  const Job job = garage(8, 6)
                      .withSlopedCeiling(2.75, 3.35, 6)
                      .bayAt(6.5, 3, 0.3)
                      .with([](Job& j) {
                        j.room.ceiling[0].height = taped(2.75);
                        j.options[0].kit.frame.tolerance = 0.01;
                        j.options[0].placement.sigma = 0.02;
                      })
                      .job();
  expectScatter(job, "frame_fit/above", [](Job& j, Draw& draw) {
    CeilingPart& part = j.room.ceiling[0];
    const double sigma = part.height.uncertain().sigma;
    part.height.value += draw(sigma);
    part.anchor += draw.plan(sigma);
    j.options[0].kit.frame.height += draw(j.options[0].kit.frame.tolerance);
    drawFrame(j, draw);
  });
}

TEST(MonteCarlo, OfTheFrameBesideAWall) {
  const Job job = garage(8, 3.6)
                      .bayAt(6.5, 1.85, 0.02)
                      .with([](Job& j) {
                        for (Wall& wall : j.room.walls)
                          wall.startCovariance = PlanCovariance::isotropic(0.01);
                        j.options[0].kit.frame.tolerance = 0.01;
                        j.options[0].placement.sigma = 0.008;
                      })
                      .job();
  expectScatter(job, "frame_fit/beside", [](Job& j, Draw& draw) {
    drawWalls(j, draw);
    j.options[0].kit.frame.width += 2 * draw(j.options[0].kit.frame.tolerance);  // each side by as much
    drawFrame(j, draw);
  });
}

void drawLens(Job& job, Draw& draw) {
  const double sigma = job.option().placement.sigma;
  job.option().placement.projector.lens += Vec3(draw(sigma), draw(sigma), draw(sigma));
}

TEST(MonteCarlo, OfThePicture) {
  // Larger than the screen on all sides, hung to one side: its spill, throw and keystone follow the lens.
  const Job job = roomyHall()
                      .withProjector(1.0, {-3.6, 0.2, 2.4})
                      .with([](Job& j) {
                        j.options[0].placement.sigma = 0.01;
                        j.options[0].placement.projector.yaw = -0.05;
                        j.options[0].placement.projector.pitch = -0.02;
                      })
                      .job();
  for (const std::string key : {"picture_fill/spill", "picture_fill/focus"})
    expectScatter(job, key, drawLens);
}

TEST(MonteCarlo, OfADoorsClearWidth) {
  const Job job =
      garage(8, 6).withDoor("D", 2).with([](Job& j) { j.room.openings[0].width = guessed(0.9); }).job();
  const std::string key = "doors_and_exits/" + std::to_string(job.room.openings[0].id.value) + "/exit";
  expectScatter(job, key, [](Job& j, Draw& draw) {
    j.room.openings[0].width.value = perturbed(j.room.openings[0].width, draw);
  });
}

TEST(MonteCarlo, OfAWayBetweenAWallAndAShelf) {
  const Job job = garage(8, 6)
                      .withDoor("D", 2.5)
                      .withBox("Boxes", {2, 3.5}, 0.4, 5.0, 0, 1.9)
                      .bayAt(7, 3, 0)
                      .with([](Job& j) {
                        for (Wall& wall : j.room.walls)
                          wall.startCovariance = PlanCovariance::isotropic(0.01);
                        j.room.fixtures[0].planInstrument = Instrument::Drawing;
                      })
                      .job();
  const std::string key = "doors_and_exits/" + std::to_string(job.room.openings[0].id.value) + "/way";
  expectScatter(job, key, [](Job& j, Draw& draw) {
    drawWalls(j, draw);
    auto& box = std::get<BoxShape>(j.room.fixtures[0].shape);
    box.centre += draw.plan(instrumentSigma(j.room.fixtures[0].planInstrument, 3.0));
  });
}

TEST(MonteCarlo, OfThePicturesContrast) {
  const Job job = roomyHall().job();
  const Finding stated = findingOf(job, "picture_brightness/contrast");
  Draw draw;
  double sum = 0;
  double squares = 0;
  for (int i = 0; i < kDraws; ++i) {
    Job drawn = job;
    drawn.option().kit.projector.lumens *= 1 + draw(0.10);  // a tenth of what is stated
    const double margin =
        findingOf(drawn, "picture_brightness/contrast").margin->value - stated.margin->value;
    sum += margin;
    squares += margin * margin;
  }
  const double scatter = std::sqrt((squares - sum * sum / kDraws) / (kDraws - 1));
  EXPECT_NEAR(scatter / stated.margin->sigma, 1, kAllowed);
}

}  // namespace
}  // namespace baywright
