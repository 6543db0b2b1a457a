// SPDX-License-Identifier: Apache-2.0
// Problems of geometry, from a job's text to its figures: points and planes, circles and boxes.
#include <algorithm>
#include <cmath>

#include "textbook.h"

namespace baywright::reference {
namespace {

using namespace testing;

JobBuilder emptyHall() {
  JobBuilder builder = garage(12, 9);
  builder.withCeiling(5).bayAt(10, 4.5, 0).withoutProjector().withoutMonitor();
  return builder;
}

// Point to plane: a roof z = 2.6 + 0.3 y over a frame with its upper corner at y = 2.9: (2.6 + 0.3 y - z)
// cos(slope).
TEST(GeometryProblem, FrameUnderASlope) {
  const Textbook answer(emptyHall().withSlopedCeiling(2.6, 2.6 + 0.3 * 9, 9).withFrame(3.2, 2.5));
  const double above = answer.job.requirements.frameAbove;
  const double lowCorner = 4.5 - 1.6;
  EXPECT_NEAR(answer["frame.above.margin"], (2.6 + 0.3 * lowCorner - 2.5 - above) / std::hypot(1, 0.3), 1e-9);
}

// Capsule to plane: the least of both ends' distances, less the radius; over every capsule of the swing.
TEST(GeometryProblem, SwingUnderASlope) {
  const Textbook answer(emptyHall().withSlopedCeiling(2.3, 2.3 + 0.25 * 9, 9).withGolfer(1.8).withClub());
  const SwingZone& zone = answer.assessment.swings[0];
  double least = 1e9;
  for (const SwingCapsule& part : zone.swing->expected.capsules) {
    for (const Vec3& end : {part.capsule.a, part.capsule.b}) {
      const Vec3 p = worldFromSwing(zone, end);
      least = std::min(least, (2.3 + 0.25 * p.y() - p.z()) / std::hypot(1, 0.25) - part.capsule.radius);
    }
  }
  EXPECT_NEAR(answer.swing("ceiling.margin"), least - zone.clearance, 1e-9);
}

// Level ceiling: its height less the highest point, less the clearance; the mat lifts the golfer.
TEST(GeometryProblem, SwingUnderALevelCeiling) {
  const Textbook answer(emptyHall().withCeiling(2.9).withGolfer(1.8).withClub());
  const double mat = answer.job.option().kit.mat.thickness;
  EXPECT_NEAR(answer.swing("ceiling.margin"), 2.9 - mat - answer.swing("highest") - 0.15, 1e-9);
}

// A right-hander who shoots along +x stands to the left of the ball; the wall behind lies at y = 9.
TEST(GeometryProblem, SwingBesideAWall) {
  const Textbook answer(emptyHall().bayAt(10, 9 - 2.6, 0).withGolfer(1.8).withClub());
  EXPECT_NEAR(answer.swing("wall.margin"), 2.6 - answer.swing("behind") - 0.15, 1e-9);
}

// What a fitter taped beats the model, with the tape's and the golfer's own accuracy; the rest follows: a
// club as long again by 50 mm reaches higher, by less than twice that.
TEST(GeometryProblem, TapedSwing) {
  JobBuilder builder = emptyHall().withGolfer(1.8).withClub(1.10);
  const Textbook modelled(builder);
  const double highest = modelled.swing("highest") + 0.07;
  const double behind = modelled.swing("behind") - 0.05;
  builder.withMeasuredReach(highest, behind);
  const Textbook taped(builder);
  EXPECT_NEAR(taped.swing("highest"), highest, 0.001);
  EXPECT_NEAR(taped.swing("behind"), behind, 0.001);
  EXPECT_LT(taped.swing("sigma_up"), 0.025);
  EXPECT_GT(modelled.swing("sigma_up"), 0.049);
  builder.withClub(1.15, 1.012, "Longer");
  const Textbook longer(builder);
  const std::string name = "swing." + std::to_string(longer.job.golfers[0].id.value) + "." +
                           std::to_string(longer.job.golfers[0].clubs[1].id.value) + ".highest";
  EXPECT_GT(longer[name], highest);
  EXPECT_LT(longer[name], highest + 0.10);
}

// A leaf of 0.9 m about a hinge at (0, 3), opening toward a box whose nearest corner is at 0.6 along and 0.8
// across: 3-4-5, so 0.1 m stay free.
TEST(GeometryProblem, LeafAndBox) {
  const Textbook answer(emptyHall()
                            .withDoor("D", 9 - 3 - 0.9, 0.9, HingeSide::End)
                            .withBox("Box", {0.6 + 0.25, 3 + 0.8 + 0.25}, 0.5, 0.5, 0, 1));
  const auto place = answer["door." + answer.opening(0) + ".opens.margin"];
  EXPECT_NEAR(place, 0.1, 0.9 * 6e-4);
}

// An open sectional door hangs under its tracks: top of the opening plus headroom, less the depth of the
// track.
TEST(GeometryProblem, SectionalDoorUnderTheCeiling) {
  const Textbook answer(emptyHall().withSectionalDoor("C", 4, 2.4, 2.1).with([](Job& j) {
    j.room.openings[0].trackHeadroom = 0.35;
    j.room.openings[0].panelThickness = 0.10;
  }));
  EXPECT_NEAR(answer["door." + answer.opening(0) + ".open_underside"], 2.1 + 0.35 - 0.10, 1e-9);
}

// Its path: a beam 0.5 m below where the open door hangs stays clear of it by that, a beam that crosses it is
// hit.
TEST(GeometryProblem, SectionalDoorAndABeam) {
  const auto margin = [](double top) {
    const Textbook answer(
        emptyHall().withSectionalDoor("C", 4, 2.4, 2.1).withBeam({4, 7.5}, {9, 7.5}, 0.2, top - 0.2, top));
    return answer["door." + answer.opening(0) + ".opens.margin"];
  };
  const double underside = 2.1 + 0.30 - 0.08;
  EXPECT_NEAR(margin(underside - 0.5), 0.5, 1e-9);
  EXPECT_LT(margin(underside + 0.1), -0.05);
}

// Clear width between two round columns, between two boxes face to face, and from corner to corner (3-4-5).
TEST(GeometryProblem, WayBetweenThings) {
  const auto width = [](const JobBuilder& builder) {
    const Textbook answer(builder);
    return answer["way." + answer.opening(0) + ".clear_width"];
  };
  const JobBuilder door = emptyHall().withDoor("D", 4);
  EXPECT_NEAR(width(JobBuilder(door)
                        .withBox("South", {3, 1.6}, 0.4, 3.2, 0, 2)
                        .withBox("North", {3, 6.5}, 0.4, 5.0, 0, 2)),
              4.0 - 3.2, 1e-6);
  EXPECT_NEAR(width(JobBuilder(door)
                        .withBox("South", {3, 1.75}, 0.4, 3.5, 0, 2)
                        .withBox("North", {4, 6.65}, 0.4, 4.7, 0, 2)),
              std::hypot(0.6, 0.8), 1e-6);
  EXPECT_NEAR(width(JobBuilder(door)
                        .withBox("South", {3, 1.5}, 0.1, 3.0, 0, 2)
                        .withBox("North", {3, 7.0}, 0.1, 4.0, 0, 2)
                        .withColumn({3, 3.5}, 0.30, 2)
                        .withColumn({3, 4.9}, 0.25, 2)),
              1.4 - 0.55, 0.004);  // columns are circumscribed: half a per cent of the radius
}

// A hinged leaf at a right angle takes its thickness off the opening.
TEST(GeometryProblem, ClearWidthOfADoor) {
  const Textbook answer(emptyHall().withDoor("D", 4, 0.885));
  EXPECT_NEAR(answer["way." + answer.opening(0) + ".opening_width"], 0.885 - 0.04, 1e-9);
}

// The shoelace formula.
TEST(GeometryProblem, FloorOfAnL) {
  const Textbook answer(lShapedRoom(7, 5, 2, 1.5));
  EXPECT_NEAR(answer["room.floor_area"], 35 - 3, 1e-9);
}

// The lowest level ceiling that keeps the clearance: at it the margin is nothing.
TEST(GeometryProblem, LowestCeilingForASwing) {
  for (const double stature : {1.2, 1.5, 1.76, 2.0, 2.2}) {
    const JobBuilder high = emptyHall().withGolfer(stature).withClub();
    const double needed = Textbook(high).swing("ceiling_needed");
    EXPECT_NEAR(Textbook(JobBuilder(high).withCeiling(needed)).swing("ceiling.margin"), 0, 1e-9) << stature;
  }
}

// A column beside a frame that is turned: from its middle to the rectangle, less its radius.
TEST(GeometryProblem, ColumnBesideATurnedFrame) {
  const double heading = 0.5;
  const Vec2 column(6 + 2.2 * std::sin(heading) + 0.3, 4.5 - 2.2 * std::cos(heading));
  const Textbook answer(
      emptyHall().bayAt(6, 4.5, heading).withFrame(3.2, 2.5, 1.5).withColumn(column, 0.2, 5));
  const Vec2 off = column - Vec2(6, 4.5);
  const double d = off.x() * std::cos(heading) + off.y() * std::sin(heading);
  const double r = off.x() * std::sin(heading) - off.y() * std::cos(heading);
  const double gap = std::hypot(std::max({-1.4 - d, 0.0, d - 0.1}), std::max(std::abs(r) - 1.65, 0.0));
  EXPECT_NEAR(answer["frame.beside.margin"], gap - 0.2, 1e-9);
}

// A leaf of 0.8 m that opens to 120 degrees, past a box: from the nearest corner of the box to the leaf's
// last place.
TEST(GeometryProblem, LeafThatOpensFarther) {
  const JobBuilder room = emptyHall()
                              .withDoor("A", 3.0, 0.8, HingeSide::End)
                              .with([](Job& j) { j.room.openings[0].openAngle = 120_deg; })
                              .withBox("Cabinet", {4.6, 0.6}, 0.2, 0.2, 0, 1);
  const Textbook answer(room);
  // The hinge is at (3.8, 0), the leaf's last place at 60 degrees; the box's near side is x = 4.5.
  const auto toLeaf = [](const Vec2& p) {
    const Vec2 along(std::cos(60_deg), std::sin(60_deg));
    const Vec2 from = p - Vec2(3.8, 0);
    return (from - std::clamp(from.dot(along), 0.0, 0.8) * along).norm();
  };
  const double gap = std::min({toLeaf({4.5, 0.5}), toLeaf({4.5, 0.7}), toLeaf({4.5, 0.6})});
  EXPECT_NEAR(answer["door." + answer.opening(0) + ".opens.margin"], gap, 0.001);
}

// A file may say nothing of the ceiling: then it was not measured.
TEST(GeometryProblem, RoomOfUnknownHeight) {
  const Textbook answer(emptyHall().withGolfer(1.8).withClub().with([](Job& j) { j.room.ceiling.clear(); }));
  const Id ceiling = answer.job.room.ceiling.at(0).id;
  const Finding asked = answer.finding("frame_fit/above/missing/" + std::to_string(ceiling.value));
  EXPECT_EQ(asked.verdict, Verdict::Unknown);
  EXPECT_NE(asked.sentence.find("Measure the height of the ceiling"), std::string::npos) << asked.sentence;
}

}  // namespace
}  // namespace baywright::reference
