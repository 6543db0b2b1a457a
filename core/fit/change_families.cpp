// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "clearance/aim_words.h"
#include "fit/change_family.h"
#include "job/edit.h"
#include "job/find.h"
#include "optics/aim.h"
#include "units/angle_text.h"
#include "units/length_text.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

constexpr double kMostMove = 1.5;  ///< beyond that it is another plan, metres
constexpr double kMoveStep = 0.05;
constexpr double kMostTurn = 0.35;  ///< 20 degrees
constexpr double kTurnStep = kPi / 180;
constexpr double kTurnGrain = kPi / 360;
/// A driver may be cut to this, the length of a long iron (common practice, no source).
constexpr double kShortestClub = 0.95;

/// Product of a direction's two components below which it is an axis: under six degrees.
constexpr double kNearAxis = 0.1;

struct Direction {
  Vec2 inBay;  ///< (d, r), unit
  std::string words;
};

/// From the second of a finding's two points to the first, on the plan.
std::optional<Vec2> wayOfFirst(const Finding& finding) {
  if (!finding.points) return std::nullopt;
  const Vec2 away = flat(finding.points->first - finding.points->second);
  return away.norm() > 1e-6 ? std::optional(away) : std::nullopt;
}

/// Along and across the bay, and the world direction `also` where it lies between these.
std::vector<Direction> directionsFor(const Job& job, const std::optional<Vec2>& also) {
  std::vector<Direction> directions = {{{1, 0}, "forward, toward the screen's side"},
                                       {{-1, 0}, "back, away from the screen's side"},
                                       {{0, 1}, "to the right, facing the screen"},
                                       {{0, -1}, "to the left, facing the screen"}};
  if (!also) return directions;
  const BayPose& bay = job.option().placement.bay;
  const Vec2 inBay = Vec2(also->dot(bay.down()), also->dot(bay.right())).normalized();
  if (std::abs(inBay.x() * inBay.y()) < kNearAxis) return directions;
  const double slant = std::atan2(std::abs(inBay.y()), std::abs(inBay.x()));
  directions.push_back({inBay, std::string("to the ") + (inBay.y() > 0 ? "right" : "left") + " and " +
                                   (inBay.x() > 0 ? "forward" : "back") + ", " +
                                   formatAngle(slant, job.units) + " off the bay's own line"});
  return directions;
}

Vec2 worldFrom(const Direction& way, const BayPose& bay) {
  return way.inBay.x() * bay.down() + way.inBay.y() * bay.right();
}

class Families {
 public:
  Families(const Job& job, const Finding& finding)
      : job_(job), finding_(finding), grain_(grainOf(job.units)) {}

  std::vector<ChangeFamily> all() {
    const std::string& check = finding_.check;
    const bool swing = check.starts_with("swing_");
    const bool picture = check.starts_with("picture_");
    if (!picture && check != "ball_rebound" && check != "swing_equipment") {
      moveBay();
      turnBay();
    }
    if (swing || check == "ball_capture" || check == "ball_rebound" || check == "picture_shadow")
      moveStrikePoint();
    if (check == "frame_fit" || finding_.key.ends_with("/frame")) lowerFrame();
    if (picture || check == "projector_mount" || concernsProjector()) moveProjector();
    if (finding_.key == "picture_brightness/contrast") dimLights();
    if (picture) aimProjector();
    if (finding_.key.ends_with("/monitor")) moveMonitor();
    if (swing) shorterClub();
    if (check == "bystander_safety" || finding_.key.ends_with("/bystander")) moveBystander();
    return std::move(families_);
  }

 private:
  /// What a person can set: 10 mm, or half an inch.
  static double grainOf(const UnitSystem& units) { return isImperial(units.length) ? 0.0127 : 0.010; }

  void add(ChangeKind kind, double most, std::function<Result<Job>(const Job&, double)> apply,
           std::function<std::string(double)> sentence) {
    families_.push_back({kind, most, kMoveStep, grain_, std::move(apply), std::move(sentence)});
  }

  void moveBay() {
    for (const Direction& way : directionsFor(job_, wayOfFirst(finding_))) {
      const Vec2 world = worldFrom(way, job_.option().placement.bay);
      add(
          ChangeKind::MoveBay, kMostMove,
          [world](const Job& job, double by) { return baywright::moveBay(job, by * world); },
          [units = job_.units, way](double by) {
            return "Move the bay " + formatLength(by, units) + " " + way.words + ".";
          });
    }
  }

  void turnBay() {
    const Placement& placement = job_.option().placement;
    const double middle = 0.5 * (placement.strikeRightHanded + placement.strikeLeftHanded);
    const Vec2 pivot = flat(worldFromBay(placement.bay, {-placement.strikeDistance, middle, 0}));
    for (const double sense : {1.0, -1.0}) {
      families_.push_back(
          {ChangeKind::TurnBay, kMostTurn, kTurnStep, kTurnGrain,
           [sense, pivot](const Job& job, double by) { return baywright::turnBay(job, sense * by, pivot); },
           [units = job_.units, sense](double by) {
             return "Turn the bay " + formatAngle(by, units) + " to the " + (sense > 0 ? "left" : "right") +
                    " about the strike point.";
           }});
    }
  }

  void moveStrikePoint() {
    const Golfer* golfer =
        finding_.subjects.empty() ? nullptr : findById(job_.golfers, finding_.subjects.front());
    if (golfer) {
      for (const double sense : {1.0, -1.0}) {
        add(
            ChangeKind::MoveStrikePoint, kMostMove,
            [hand = golfer->hand, sense](const Job& job, double by) {
              return baywright::moveStrikePoint(job, hand, {0, sense * by});
            },
            [units = job_.units, hand = golfer->hand, sense](double by) {
              return std::string("Move the ") + (hand == Hand::Right ? "right" : "left") +
                     "-hander's strike point " + formatLength(by, units) +
                     (sense > 0 ? " to the right." : " to the left.");
            });
      }
    }
    for (const double sense : {1.0, -1.0}) {
      add(
          ChangeKind::MoveStrikePoint, kMostMove,
          [sense](const Job& job, double by) {
            return setStrikeDistance(job, job.option().placement.strikeDistance + sense * by);
          },
          [units = job_.units, sense](double by) {
            return "Strike " + formatLength(by, units) + (sense > 0 ? " farther from" : " nearer to") +
                   " the screen.";
          });
    }
  }

  /// The screen is cut with the frame where it would not fit in it any more.
  void lowerFrame() {
    const double tall = job_.option().kit.frame.height;
    add(
        ChangeKind::LowerFrame, 0.4 * tall,
        [](const Job& job, double by) -> Result<Job> {
          Kit kit = job.option().kit;
          const double above = std::max(0.0, kit.frame.height - kit.screen.bottom - kit.screen.height);
          kit.frame.height -= by;
          kit.screen.height = std::min(
              kit.screen.height, kit.frame.height - kit.screen.bottom - std::min(above, kit.frame.tube));
          return setKit(job, kit);
        },
        [units = job_.units, tall](double by) {
          return "Choose a frame " + formatLength(by, units) + " lower: " + formatLength(tall - by, units) +
                 ".";
        });
  }

  bool concernsProjector() const {
    return std::find(finding_.subjects.begin(), finding_.subjects.end(), job_.option().kit.projector.id) !=
           finding_.subjects.end();
  }

  void moveProjector() {
    struct Way {
      Vec3 by;
      const char* words;
    };
    static const std::array kWays = {Way{{1, 0, 0}, " nearer to the screen."},
                                     Way{{-1, 0, 0}, " farther from the screen."},
                                     Way{{0, 1, 0}, " to the right."},
                                     Way{{0, -1, 0}, " to the left."},
                                     Way{{0, 0, 1}, " higher."},
                                     Way{{0, 0, -1}, " lower."}};
    for (const Way& way : kWays) {
      add(
          ChangeKind::MoveProjector, kMostMove,
          [by = way.by](const Job& job, double amount) { return baywright::moveProjector(job, amount * by); },
          [units = job_.units, words = way.words](double by) {
            return "Move the projector " + formatLength(by, units) + words;
          });
    }
  }

  /// Zoom, lens shift and direction anew from where it hangs, as somebody would by eye.
  void aimProjector() {
    const Kit& kit = job_.option().kit;
    const AimNeeds needs{job_.requirements.coverage, job_.requirements.spill};
    const auto aim = aimAt(kit.screen, kit.projector, job_.option().placement.projector, needs);
    if (!aim || !aim->works || aim->mount == job_.option().placement.projector) return;
    families_.push_back(
        {ChangeKind::AimProjector, 1, 1, 1,
         [mount = aim->mount](const Job& job, double) { return setProjectorMount(job, mount); },
         [words = aimWords(aim->mount, job_.units)](double) {
           return "Set the projector to " + words + ".";
         }});
  }

  /// Less light from lamps and windows on the screen.
  void dimLights() {
    const double ambient = job_.requirements.ambient;
    if (!(ambient > 0)) return;
    constexpr double kGrain = 1;  // lx
    families_.push_back({ChangeKind::DimLights, ambient, std::max(kGrain, ambient / 16), kGrain,
                         [](const Job& job, double by) {
                           Requirements less = job.requirements;
                           less.ambient = std::max(0.0, less.ambient - by);
                           return setRequirements(job, less);
                         },
                         [units = job_.units, ambient](double by) {
                           return "Dim the lights, or screen them off, to " +
                                  formatQuantity(std::max(0.0, ambient - by), QuantityKind::Illuminance,
                                                 units) +
                                  " on the screen.";
                         }});
  }

  void moveMonitor() {
    std::optional<Vec2> away = wayOfFirst(finding_);
    if (away) away = -*away;  // the monitor is what the swing meets
    for (const Direction& way : directionsFor(job_, away)) {
      add(
          ChangeKind::MoveMonitor, kMostMove,
          [by = way.inBay](const Job& job, double amount) {
            return baywright::moveMonitor(job, raised(amount * by, 0));
          },
          [units = job_.units, words = way.words](double by) {
            return "Move the launch monitor " + formatLength(by, units) + " " + words + ".";
          });
    }
  }

  void shorterClub() {
    if (finding_.subjects.size() < 2) return;
    const Golfer* golfer = findById(job_.golfers, finding_.subjects.front());
    const Club* club = golfer ? findById(golfer->clubs, finding_.subjects[1]) : nullptr;
    if (!club || club->length <= kShortestClub) return;
    add(
        ChangeKind::ShorterClub, club->length - kShortestClub,
        [shorter = *club](const Job& job, double by) {
          Club next = shorter;
          next.length -= by;
          return setClub(job, next);
        },
        [units = job_.units, name = golfer->name, shorter = *club](double by) {
          return "Let " + name + " swing a club " + formatLength(by, units) + " shorter than " +
                 shorter.name + ": " + formatLength(shorter.length - by, units) + ".";
        });
  }

  void moveBystander() {
    std::optional<Vec2> away = wayOfFirst(finding_);
    if (away && finding_.check != "bystander_safety") away = -*away;  // the person is what the swing meets
    for (const Bystander& person : job_.bystanders) {
      if (std::find(finding_.subjects.begin(), finding_.subjects.end(), person.id) == finding_.subjects.end())
        continue;
      for (const Direction& way : directionsFor(job_, away)) {
        const Vec2 world = worldFrom(way, job_.option().placement.bay);
        add(
            ChangeKind::MoveBystander, kMostMove,
            [id = person.id, world](const Job& job, double by) {
              return baywright::moveBystander(job, id, by * world);
            },
            [units = job_.units, words = way.words, name = person.name](double by) {
              return "Move " + name + " " + formatLength(by, units) + " " + words + ".";
            });
      }
    }
  }

  const Job& job_;
  const Finding& finding_;
  double grain_;
  std::vector<ChangeFamily> families_;
};

}  // namespace

std::vector<ChangeFamily> changeFamilies(const Job& job, const Finding& finding) {
  return Families(job, finding).all();
}

}  // namespace baywright
