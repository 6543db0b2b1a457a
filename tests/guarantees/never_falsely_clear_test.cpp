// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <set>

#include "clearance/assess.h"
#include "job/room_geometry.h"
#include "random_job.h"

namespace baywright {
namespace {

using namespace testing;

constexpr int kMoments = 400;

/// Worst verdict of one golfer and club against everything.
Verdict verdictOf(const Assessment& assessment, const SwingZone& zone) {
  Verdict worst = Verdict::Clear;
  for (const Finding& finding : assessment.findings) {
    const auto has = [&](Id id) {
      return std::find(finding.subjects.begin(), finding.subjects.end(), id) != finding.subjects.end();
    };
    if (finding.check.starts_with("swing_") && has(zone.golfer) && has(zone.club))
      worst = std::max(worst, finding.verdict);
  }
  return worst;
}

/// True where a point cannot be, told from the job alone: not by any of the solids that the checks use.
bool isInsideSomething(const Job& job, const Vec3& p) {
  if (!isInside(job.room, flat(p))) return true;
  const auto ceiling = ceilingHeightAt(job.room, flat(p));
  if (ceiling && p.z() > *ceiling) return true;
  for (const Fixture& fixture : job.room.fixtures) {
    if (p.z() < fixture.bottom.value || p.z() > fixture.top.value) continue;
    if (const auto* box = std::get_if<BoxShape>(&fixture.shape)) {
      const Vec2 offset = flat(p) - box->centre;
      const Vec2 along(std::cos(box->heading), std::sin(box->heading));
      if (std::abs(offset.dot(along)) < box->width / 2 && std::abs(cross(along, offset)) < box->depth / 2)
        return true;
    } else if (const auto* round = std::get_if<CylinderShape>(&fixture.shape)) {
      if ((flat(p) - round->centre).norm() < round->radius) return true;
    }
  }
  return false;
}

/// Points on the skin of a capsule: enough to hit what it hits by more than a centimetre or two.
std::vector<Vec3> skin(const Capsule& capsule) {
  std::vector<Vec3> points;
  const int along = std::max(2, static_cast<int>((capsule.b - capsule.a).norm() / 0.05));
  for (int i = 0; i <= along; ++i) {
    const Vec3 middle = capsule.a + static_cast<double>(i) / along * (capsule.b - capsule.a);
    points.push_back(middle);
    for (int axis = 0; axis < 3; ++axis) {
      points.push_back(middle + capsule.radius * Vec3::Unit(axis));
      points.push_back(middle - capsule.radius * Vec3::Unit(axis));
    }
  }
  return points;
}

bool touchesSomething(const Job& job, const SwingZone& zone) {
  for (int i = 0; i <= kMoments; ++i) {
    for (const SwingCapsule& part : poseAt(*zone.swing, static_cast<double>(i) / kMoments)) {
      for (const Vec3& point : skin(part.capsule)) {
        const Vec3 world = worldFromSwing(zone, point);
        if (world.z() > 0.05 && isInsideSomething(job, world)) return true;
      }
    }
  }
  return false;
}

TEST(NeverFalselyClear, WhereAPoseOfTheSwingIsInsideSomething) {
  int touching = 0;
  int clear = 0;
  for (unsigned seed = 1; seed <= 60; ++seed) {
    const Job job = randomJob(seed);
    const Assessment assessment = assess(job);
    for (const SwingZone& zone : assessment.swings) {
      ASSERT_NE(zone.swing, nullptr);
      const Verdict verdict = verdictOf(assessment, zone);
      if (touchesSomething(job, zone)) {
        ++touching;
        EXPECT_EQ(verdict, Verdict::Blocked) << "seed " << seed;
      }
      clear += verdict == Verdict::Clear;
    }
  }
  EXPECT_GT(touching, 10);  // the jobs must put the checks to the test both ways
  EXPECT_GT(clear, 3);
}

/// All poses against all solids, one by one: what the verdict calls clear keeps the whole clearance.
TEST(NeverFalselyClear, WhereAPoseComesNearerThanTheClearance) {
  for (unsigned seed = 101; seed <= 130; ++seed) {
    const Job job = randomJob(seed);
    const Assessment assessment = assess(job);
    for (const SwingZone& zone : assessment.swings) {
      if (verdictOf(assessment, zone) != Verdict::Clear) continue;
      double nearest = 1e9;
      for (int i = 0; i <= kMoments / 4; ++i) {
        for (const SwingCapsule& part : poseAt(*zone.swing, 4.0 * i / kMoments)) {
          const Capsule& c = part.capsule;
          const Capsule world{worldFromSwing(zone, c.a), worldFromSwing(zone, c.b), c.radius};
          for (const RoomObstacle& obstacle : *assessment.obstacles) {
            nearest = std::min(nearest, closest(world, obstacle.solid).distance);
          }
        }
      }
      EXPECT_GE(nearest, zone.clearance) << "seed " << seed;
    }
  }
}

}  // namespace
}  // namespace baywright
