// SPDX-License-Identifier: Apache-2.0
#include "clearance/snapshot.h"

#include <algorithm>
#include <tuple>

#include "clearance/ball_zone.h"
#include "clearance/memo.h"
#include "clearance/picture_zone.h"
#include "clearance/ways.h"
#include "geometry/rigid_map.h"

namespace baywright {
namespace {

using SwingAnswer = Result<std::shared_ptr<const Swing>>;

SwingAnswer sharedSwing(const Golfer& golfer, const Club& club) {
  auto swing = swingOf(golfer, club);
  if (!swing) return tl::unexpected(swing.error());
  return std::make_shared<const Swing>(std::move(*swing));
}

/// The swing frame stands on the mat under the ball, along the bay's axes.
SwingSetting settingOf(const Job& job, const Golfer& golfer, const Club& club, const SwingAnswer& swing) {
  const Option& option = job.option();
  SwingSetting setting;
  setting.golfer = &golfer;
  setting.club = &club;
  SwingZone& zone = setting.zone;
  zone.golfer = golfer.id;
  zone.club = club.id;
  zone.hand = golfer.hand;
  zone.bay = option.placement.bay;
  zone.strikePointInBay = option.placement.strikePoint(golfer.hand) + Vec3(0, 0, option.kit.mat.thickness);
  zone.strikePoint = worldFromBay(zone.bay, zone.strikePointInBay);
  zone.clearance = job.requirements.swingClearance;
  if (!swing) {
    setting.problem = swing.error();
    return setting;
  }
  zone.swing = *swing;
  RigidMap map = worldFromBay(zone.bay);
  map.offset = zone.strikePoint;
  setting.expected = placed(zone.swing->expected, map);
  setting.bound = placed(zone.swing->fullExtension, map);
  return setting;
}

}  // namespace

struct SnapshotMaker::Kept {
  using RoomInputs = std::tuple<Room, std::vector<Bystander>>;
  using SwingInputs = std::tuple<Golfer, Club>;
  using PictureInputs = std::tuple<Kit, ProjectorMount, double, double, double>;
  using ShadowInputs = std::tuple<PictureInputs, std::vector<Golfer>, Vec3, Vec3, double>;

  Memo<RoomInputs, std::shared_ptr<const Obstacles>> room;
  Memo<std::vector<RoomScan>, std::shared_ptr<const std::vector<ScanObstacle>>> scans;
  std::vector<std::pair<SwingInputs, SwingAnswer>> swings;
  Memo<PictureInputs, Result<PictureZone>> picture;
  Memo<ShadowInputs, std::vector<PictureZone::GolferShadow>> shadows;
  BallZoneMaker balls;

  /// As Memo::get, for all swings of one job; those that the next job does not ask for are dropped.
  std::vector<SwingSetting> swingsOf(const Job& job) {
    std::vector<std::pair<SwingInputs, SwingAnswer>> used;
    std::vector<SwingSetting> settings;
    for (const Golfer& golfer : job.golfers) {
      if (!golfer.swings) continue;
      for (const Club& club : golfer.clubs) {
        SwingInputs inputs{golfer, club};
        const auto found = std::find_if(swings.begin(), swings.end(),
                                        [&](const auto& kept) { return kept.first == inputs; });
        SwingAnswer answer = found != swings.end() ? found->second : sharedSwing(golfer, club);
        settings.push_back(settingOf(job, golfer, club, answer));
        used.emplace_back(std::move(inputs), std::move(answer));
      }
    }
    swings = std::move(used);
    return settings;
  }

  PictureSetting pictureOf(const Job& job, const Obstacles& obstacles,
                           const std::vector<SwingSetting>& settings) {
    const Option& option = job.option();
    PictureSetting setting;
    if (!option.kit.hasProjector) return setting;
    const Requirements& r = job.requirements;
    const PictureInputs inputs{option.kit, option.placement.projector, r.coverage, r.spill, r.ambient};
    const auto& alone = picture.get(inputs, [&] { return pictureAlone(option, r); });
    if (!alone) {
      setting.problem = alone.error();
      return setting;
    }
    setting.zone = *alone;
    const Placement& placement = option.placement;
    if (!settings.empty()) {
      const ShadowInputs shadowInputs{inputs, job.golfers, placement.strikePoint(Hand::Right),
                                      placement.strikePoint(Hand::Left), placement.sigma};
      setting.zone->shadows =
          shadows.get(shadowInputs, [&] { return golferShadows(alone->picture, settings, placement.sigma); });
    }
    std::vector<Solid> solids;
    for (LightBlocker& blocker : lightBlockers(obstacles, placement.bay)) {
      setting.zone->obstructedBy.push_back(obstacles[blocker.index].id);
      solids.push_back(std::move(blocker.inBay));
    }
    setting.zone->obstructions = obstructionBy(alone->picture, std::span<const Solid>(solids));
    return setting;
  }
};

SnapshotMaker::SnapshotMaker() : kept_(std::make_unique<Kept>()) {}
SnapshotMaker::~SnapshotMaker() = default;

Snapshot SnapshotMaker::make(const Job& job, const CheckNeeds& needs) {
  Snapshot snapshot;
  const auto room = kept_->room.get({job.room, job.bystanders},
                                    [&] { return std::make_shared<const Obstacles>(roomObstacles(job)); });
  auto obstacles = std::make_shared<Obstacles>(*room);
  Obstacles kit = kitObstacles(job);
  std::move(kit.begin(), kit.end(), std::back_inserter(*obstacles));
  snapshot.scans = kept_->scans.get(job.roomScans, [&] {
    auto scans = std::make_shared<std::vector<ScanObstacle>>();
    for (const RoomScan& scan : job.roomScans) {
      if (auto obstacle = scanObstacle(scan)) scans->push_back(std::move(*obstacle));
    }
    return std::shared_ptr<const std::vector<ScanObstacle>>(std::move(scans));
  });
  if (needs.swings) snapshot.swings = kept_->swingsOf(job);
  if (needs.balls) snapshot.balls = kept_->balls.make(job, *obstacles);
  if (needs.picture) snapshot.picture = kept_->pictureOf(job, *obstacles, snapshot.swings);
  if (needs.ways) {
    snapshot.doors = doorSweeps(job);
    snapshot.ways = waysOf(job, *obstacles);
  }
  snapshot.obstacles = std::move(obstacles);
  return snapshot;
}

CheckInput inputOf(const Job& job, const Snapshot& snapshot) {
  return {job,
          job.option(),
          *snapshot.obstacles,
          *snapshot.scans,
          snapshot.swings,
          snapshot.balls,
          snapshot.picture,
          snapshot.doors,
          snapshot.ways};
}

}  // namespace baywright
