// SPDX-License-Identifier: Apache-2.0
#include "swing/cover.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace baywright {
namespace {

struct Stretch {
  SwingLeg leg;
  double from;
  double to;

  double length() const { return to - from; }
  double at(std::size_t quarter) const { return from + static_cast<double>(quarter) / 4 * (to - from); }
  LegPlace middle() const { return {leg, (from + to) / 2}; }
};

struct LegCuts {
  SwingLeg leg;
  int stretches;
};

/// Where to cut each leg so that the head of a man of middle size's driver travels equally far over each
/// stretch.
std::vector<Stretch> cutByTravel(SwingStyle style, std::initializer_list<LegCuts> legs) {
  constexpr int kSteps = 256;
  const BodyLengths body = bodyOf(1.755);
  const SwingPath path = swingPathOf({.body = body, .posture = postureOf(body, Club{}), .style = style});
  std::vector<Stretch> stretches;
  for (const auto& [leg, count] : legs) {
    std::array<double, kSteps + 1> travel{};
    for (std::size_t i = 0; i < kSteps; ++i) {
      const double share = static_cast<double>(i) / kSteps;
      const Vec3 step = clubAt(path, {leg, share + 1.0 / kSteps}).head - clubAt(path, {leg, share}).head;
      travel[i + 1] = travel[i] + step.norm();
    }
    double from = 0;
    std::size_t i = 0;
    for (int cut = 1; cut < count; ++cut) {
      const double goal = travel[kSteps] * cut / count;
      while (travel[i + 1] < goal) ++i;
      const double to = (static_cast<double>(i) + (goal - travel[i]) / (travel[i + 1] - travel[i])) / kSteps;
      stretches.push_back({leg, from, to});
      from = to;
    }
    stretches.push_back({leg, from, 1});
  }
  return stretches;
}

std::vector<Stretch> cut(std::initializer_list<LegCuts> legs) {
  std::vector<Stretch> stretches;
  for (const auto& [leg, count] : legs) {
    for (int i = 0; i < count; ++i)
      stretches.push_back({leg, static_cast<double>(i) / count, static_cast<double>(i + 1) / count});
  }
  return stretches;
}

/// In the full extension the club comes down as it went up.
const std::vector<Stretch>& shaftStretches(SwingStyle style) {
  using enum SwingLeg;
  static const std::vector<Stretch> expected =
      cutByTravel(SwingStyle::Expected, {{Backswing, 35}, {Downswing, 31}, {FollowThrough, 40}});
  static const std::vector<Stretch> straight =
      cutByTravel(SwingStyle::FullExtension, {{Backswing, 26}, {FollowThrough, 29}});
  return style == SwingStyle::Expected ? expected : straight;
}

const std::vector<Stretch>& headStretches(SwingStyle style) {
  using enum SwingLeg;
  static const std::vector<Stretch> expected =
      cutByTravel(SwingStyle::Expected, {{Backswing, 24}, {Downswing, 23}, {FollowThrough, 28}});
  static const std::vector<Stretch> straight =
      cutByTravel(SwingStyle::FullExtension, {{Backswing, 24}, {FollowThrough, 28}});
  return style == SwingStyle::Expected ? expected : straight;
}

/// The body comes down as it went up, in either style. Hands move far, legs little.
std::vector<Stretch> limbStretches(const Limb& limb) {
  using enum SwingLeg;
  if (limb.to == Joint::Grip) return cut({{Backswing, 7}, {FollowThrough, 8}});
  if (limb.part == BodyPart::LeadArm || limb.part == BodyPart::TrailArm)
    return cut({{Backswing, 4}, {FollowThrough, 5}});
  if (limb.part == BodyPart::Legs) return cut({{Backswing, 1}, {FollowThrough, 2}});
  return cut({{Backswing, 2}, {FollowThrough, 3}});
}

/// A point of the path at five moments of a stretch, evenly spread, and the bounds of its motion in between.
struct Passage {
  std::array<Vec3, 5> at;
  Rates rates;
  double length;

  const Vec3& middle() const { return at[2]; }
  /// Over each quarter the point stays this close to its chord.
  double bow() const { return bowBound(rates, length / 4); }

  double farthestFromMiddle() const {
    double farthest = 0;
    for (const Vec3& point : at) farthest = std::max(farthest, (point - middle()).norm());
    return farthest + bow();
  }
  double farthestFromChord() const {
    double farthest = 0;
    for (std::size_t i = 1; i < 4; ++i)
      farthest = std::max(farthest, (at[i] - (at[0] + static_cast<double>(i) / 4 * (at[4] - at[0]))).norm());
    return farthest + bow();
  }
};

SwingCapsule limbOver(const SwingPath& path, const Limb& limb, const Stretch& stretch) {
  const double from = armAngle(path, {stretch.leg, stretch.from});
  const double to = armAngle(path, {stretch.leg, stretch.to});
  const auto [lo, hi] = std::minmax({from, to});
  const Stretch angles{stretch.leg, lo, hi};
  const auto over = [&](Joint joint) {
    Passage result{{}, jointOver(path.joints, joint, lo, hi), angles.length()};
    for (std::size_t i = 0; i < 5; ++i) result.at[i] = jointAt(path.joints, joint, angles.at(i));
    return result;
  };
  const Passage near = over(limb.from);
  const Passage far = over(limb.to);
  const double allowance = std::max(near.farthestFromMiddle(), far.farthestFromMiddle());
  return {{near.middle(), far.middle(), path.body.*limb.radius + allowance},
          momentOf(stretch.middle()),
          limb.part};
}

struct ClubPassage {
  Passage butt;
  Passage head;
};
ClubPassage clubPassage(const SwingPath& path, const Stretch& stretch) {
  const ClubRates rates = clubOver(path, stretch.leg, stretch.from, stretch.to);
  ClubPassage result{{{}, rates.butt, stretch.length()}, {{}, rates.head, stretch.length()}};
  for (std::size_t i = 0; i < 5; ++i) {
    const ClubPose pose = clubAt(path, {stretch.leg, stretch.at(i)});
    result.butt.at[i] = pose.butt;
    result.head.at[i] = pose.head;
  }
  return result;
}

SwingCapsule shaftOver(const SwingPath& path, const Stretch& stretch) {
  const auto [butt, head] = clubPassage(path, stretch);
  const double allowance = std::max(butt.farthestFromMiddle(), head.farthestFromMiddle());
  const Vec3 along = (head.middle() - butt.middle()).normalized();
  const Vec3 nearHead = head.middle() - (kClubHeadRadius - kShaftRadius) * along;
  return {{butt.middle(), nearHead, kShaftRadius + allowance}, momentOf(stretch.middle()), BodyPart::Shaft};
}

SwingCapsule headOver(const SwingPath& path, const Stretch& stretch) {
  const Passage head = clubPassage(path, stretch).head;
  const double allowance = std::max(kHeadBow, head.farthestFromChord());
  return {{head.at.front(), head.at.back(), kClubHeadRadius + allowance},
          momentOf(stretch.middle()),
          BodyPart::ClubHead};
}

}  // namespace

std::vector<SwingCapsule> coverOfClub(const SwingPath& path) {
  std::vector<SwingCapsule> capsules;
  for (const Stretch& stretch : shaftStretches(path.joints.style))
    capsules.push_back(shaftOver(path, stretch));
  for (const Stretch& stretch : headStretches(path.joints.style)) capsules.push_back(headOver(path, stretch));
  return capsules;
}

std::vector<SwingCapsule> coverOf(const SwingPath& path) {
  std::vector<SwingCapsule> capsules = coverOfClub(path);
  for (const Limb& limb : limbs()) {
    for (const Stretch& stretch : limbStretches(limb)) capsules.push_back(limbOver(path, limb, stretch));
  }
  mirrorFor(path.hand, capsules);
  return capsules;
}

}  // namespace baywright
