// SPDX-License-Identifier: Apache-2.0
#include "clearance/freeing_move.h"

#include "findings.h"
#include "job/edit.h"

namespace baywright {
namespace {

using namespace testing;

const UnitSystem kMetres{LengthUnit::Metres, 16, '.'};
const UnitSystem kInches{LengthUnit::Inches, 16, '.'};
const BayPose kBay{{0, 0}, 0};  // d along x, r along -y

/// A wall at `distance` below y = 0: what is moved keeps 0.1 m from it, known to 0.02 m.
TightPlace aboveAWall(double distance) {
  TightPlace place;
  place.closest.escape = Vec3::UnitY();
  place.margin = {distance - 0.1, 0.02};
  return place;
}

TEST(FreeingMove, IsWhatIsMissingAndItsDoubt) {
  const PlaceAfter after = [](const Vec3& shift) { return aboveAWall(0.05 + shift.y()); };
  const auto move = freeingMove(aboveAWall(0.05), after, kBay, kMetres);
  ASSERT_TRUE(move);
  EXPECT_EQ(move->way, BayWay::Left);
  EXPECT_NEAR(move->distance, 0.09, 1e-12);  // 0.05 + 1.96 * 0.02 = 0.0892, to the next centimetre
  EXPECT_NEAR(freeingMove(aboveAWall(0.05), after, kBay, kInches)->distance, 4.0 * 0.0254, 1e-12);
}

TEST(FreeingMove, GoesOnWhereTheNextThingIsMet) {
  const PlaceAfter after = [](const Vec3& shift) {
    TightPlace place = aboveAWall(0.05 + shift.y());
    if (shift.y() < 0.3) place.margin.value = std::min(place.margin.value, shift.y() - 0.3);
    return place;
  };
  EXPECT_NEAR(freeingMove(aboveAWall(0.05), after, kBay, kMetres)->distance, 0.35, 0.051);
}

TEST(FreeingMove, IsNoneWhereNothingHelps) {
  const PlaceAfter between = [](const Vec3& shift) {
    TightPlace place = aboveAWall(0.05 - std::abs(shift.y()));
    if (shift.y() > 0) place.closest.escape = -Vec3::UnitY();
    return place;
  };
  EXPECT_FALSE(freeingMove(aboveAWall(0.05), between, kBay, kMetres));
  EXPECT_FALSE(freeingMove(aboveAWall(5), between, kBay, kMetres)) << "clear already";
  TightPlace unknown = aboveAWall(0.05);
  unknown.margin.value = std::nan("");
  EXPECT_FALSE(freeingMove(unknown, between, kBay, kMetres));
}

TEST(FreeingMove, IsADropUnderWhatHangs) {
  TightPlace under = aboveAWall(0.02);
  under.closest.escape = -Vec3::UnitZ();
  const PlaceAfter after = [&](const Vec3& shift) {
    TightPlace place = under;
    place.margin.value -= shift.z();
    return place;
  };
  EXPECT_FALSE(freeingMove(under, after, kBay, kMetres));
  EXPECT_NEAR(freeingDrop(under, after, kMetres).value(), 0.12, 1e-12);  // 0.08 + 0.0392
}

// The move that a sentence names, carried out: the finding is clear, and a step less is not enough.
TEST(FreeingMove, OfASwingClearsTheFinding) {
  const Job job = roomyHall().bayAt(10, 8.1, 0.3).job();
  const std::string key = "swing_room/<driver>/wall";
  const Finding blocked = findingOf(job, key);
  ASSERT_EQ(blocked.verdict, Verdict::Blocked);
  const std::string words = "Moving the bay ";
  const auto at = blocked.sentence.find(words);
  ASSERT_NE(at, std::string::npos) << blocked.sentence;
  const double distance = std::stod(blocked.sentence.substr(at + words.size()));
  ASSERT_TRUE(contains(blocked.sentence, "to the right, facing the screen")) << blocked.sentence;
  const Vec2 right = job.option().placement.bay.right();
  EXPECT_EQ(findingOf(*moveBay(job, distance * right), key).verdict, Verdict::Clear);
  EXPECT_NE(findingOf(*moveBay(job, (distance - 0.03) * right), key).verdict, Verdict::Clear);
}

TEST(FreeingMove, SaysWhatElseIsInTheWay) {
  JobBuilder builder = garage(4.6, 3.6);
  builder.withCeiling(4).withGolfer(1.88).withClub().bayAt(4.1, 1.8, 0).strikingFrom(2.6);
  const Finding finding = findingOf(builder.withoutProjector().job(), "swing_room/<driver>/wall");
  EXPECT_TRUE(contains(finding.sentence, "is not clear either.")) << finding.sentence;
  EXPECT_FALSE(contains(finding.sentence, "Moving")) << finding.sentence;
}

}  // namespace
}  // namespace baywright
