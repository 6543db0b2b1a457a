// SPDX-License-Identifier: Apache-2.0
// What assess() promises of any room, with rooms and changes made up by rapidcheck. RC_PARAMS in
// CMakeLists.txt holds the seed.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <set>

#include "clearance/assess.h"
#include "fit/smallest_change.h"
#include "moved_job.h"
#include "random_job.h"

namespace baywright {
namespace {

using namespace testing;

constexpr double kSame = 1e-6;
/// Ways are measured among points of outlines (free_ways.h).
constexpr double kSameWay = 2e-3;

double drawn(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 100001) / 100000.0;
}
Job drawnJob() {
  return randomJob(static_cast<unsigned>(*rc::gen::inRange(1000, 1000000)));
}

/// Checks a property and prints what rapidcheck found against it.
#define HOLDS(name, ...) EXPECT_TRUE(rc::check(name, __VA_ARGS__))

std::string otherHand(std::string name) {
  for (const auto& [from, to] : {std::pair(".right.", ".left."), std::pair(".left.", ".right.")}) {
    if (const auto at = name.find(from); at != std::string::npos)
      return name.replace(at, std::string(from).size(), to);
  }
  return name;
}
/// Figures that have a sign or a side of their own on the panel.
bool hasSide(const std::string& name) {
  return name.starts_with("picture.corner") || name.starts_with("picture.keystone_across") ||
         name.starts_with("picture.nine_points");
}
bool isWay(const std::string& name) {
  return name.starts_with("way.");
}

/// The same figures, at most under the other hand's name.
void expectSameFigures(const Assessment& before, const Assessment& after, bool mirrored) {
  RC_ASSERT(before.quantities.size() == after.quantities.size());
  for (const Quantity& figure : before.quantities) {
    if (mirrored && hasSide(figure.name)) continue;
    const std::string name =
        mirrored && figure.name.starts_with("ball.") ? otherHand(figure.name) : figure.name;
    const auto same = std::find_if(after.quantities.begin(), after.quantities.end(),
                                   [&](const Quantity& other) { return other.name == name; });
    RC_ASSERT(same != after.quantities.end());
    RC_LOG() << name << ": " << figure.value << ", " << same->value << "\n";
    const double allowed = isWay(name) ? kSameWay : kSame * std::max(1.0, std::abs(figure.value));
    RC_ASSERT(std::abs(figure.value - same->value) <= allowed);
  }
}

TEST(Assess, ChangesNothingWhenEverythingIsTurnedAndShifted) {
  HOLDS("turned and shifted", [] {
    const Job job = drawnJob();
    const Move move{drawn(-10, 10), {drawn(-50, 50), drawn(-50, 50)}};
    expectSameFigures(assess(job), assess(movedJob(job, move)), false);
  });
}

TEST(Assess, SwapsHandsInAMirror) {
  HOLDS("mirrored", [] {
    const Job job = drawnJob();
    expectSameFigures(assess(job), assess(mirroredJob(job)), true);
  });
}

TEST(Assess, DoesNotKnowInWhichUnitsItIsRead) {
  HOLDS("units", [] {
    Job job = drawnJob();
    const Assessment before = assess(job);
    job.units.length = *rc::gen::element(LengthUnit::Metres, LengthUnit::Millimetres, LengthUnit::FeetInches);
    const Assessment after = assess(job);
    RC_ASSERT(before.findings.size() == after.findings.size());
    for (std::size_t i = 0; i < before.findings.size(); ++i) {
      RC_ASSERT(before.findings[i].key == after.findings[i].key);
      RC_ASSERT(before.findings[i].margin == after.findings[i].margin);
      RC_ASSERT(before.findings[i].verdict == after.findings[i].verdict);
    }
  });
}

double figureOf(const Job& job, const std::string& end) {
  const std::string prefix = "swing." + std::to_string(job.golfers[0].id.value) + "." +
                             std::to_string(job.golfers[0].clubs[0].id.value);
  for (const Quantity& figure : assess(job).quantities) {
    if (figure.name == prefix + end) return figure.value;
  }
  ADD_FAILURE() << end;
  return 0;
}

/// A hall under one level ceiling with nothing in it.
Job bareHall(double stature, double club) {
  return garage(12, 10)
      .withCeiling(4)
      .withGolfer(stature)
      .withClub(club)
      .bayAt(10, 5, 0)
      .withoutProjector()
      .withoutMonitor()
      .uncheckedJob();
}

TEST(Assess, LeavesNoMoreRoomToATallerGolferOrALongerClub) {
  HOLDS("monotone", [] {
    const double stature = drawn(1.45, 2.05);
    const double club = drawn(0.85, 1.20);
    const Job small = bareHall(stature, club);
    const Job tall = bareHall(stature + drawn(0.005, 0.05), club);
    const Job longer = bareHall(stature, club + drawn(0.005, 0.02));
    for (const std::string end : {".ceiling.margin", ".wall.margin"}) {
      RC_ASSERT(figureOf(tall, end) <= figureOf(small, end) + 1e-9);
      RC_ASSERT(figureOf(longer, end) <= figureOf(small, end) + 1e-9);
    }
    for (const std::string end : {".highest", ".behind", ".toward_target", ".away", ".bound.highest"}) {
      RC_ASSERT(figureOf(tall, end) >= figureOf(small, end) - 1e-9);
      RC_ASSERT(figureOf(longer, end) >= figureOf(small, end) - 1e-9);
    }
  });
}

TEST(Assess, LeavesLessWhereTheCeilingComesDown) {
  HOLDS("lower ceiling", [] {
    Job job = drawnJob();
    const double before = figureOf(job, ".ceiling.margin");
    const double by = drawn(0.01, 0.5);
    for (CeilingPart& part : job.room.ceiling) part.height.value -= by;
    const double after = figureOf(job, ".ceiling.margin");
    RC_ASSERT(after < before + 1e-9);
    RC_ASSERT(after > before - by - 1e-9);
  });
}

std::set<std::string> blockedIn(const Assessment& assessment) {
  std::set<std::string> keys;
  for (const Finding& finding : assessment.findings) {
    if (finding.verdict == Verdict::Blocked) keys.insert(finding.key);
  }
  return keys;
}

TEST(WhatWouldHelp, ClearsTheFindingAndBlocksNothingElse) {
  int offered = 0;
  HOLDS("changes", [&] {
    const Job job = drawnJob();
    const Assessment before = assess(job);
    const std::set<std::string> blocked = blockedIn(before);
    for (const Finding& finding : before.findings) {
      const bool needsHelp = finding.verdict == Verdict::Blocked || finding.verdict == Verdict::Tight;
      if (!needsHelp || *rc::gen::inRange(0, 60) > 0) continue;
      const auto changes = smallestChanges(job, finding.key, {});
      RC_ASSERT(changes.has_value());
      for (const Change& change : *changes) {
        ++offered;
        RC_LOG() << change.sentence << "\n";
        const Assessment after = assess(change.job);
        const Finding* now = after.find(finding.key);
        const bool clear = !now || now->verdict == Verdict::Clear;  // RC_ASSERT's || looks at both sides
        RC_ASSERT(clear);
        const std::set<std::string> still = blockedIn(after);
        RC_ASSERT(std::includes(blocked.begin(), blocked.end(), still.begin(), still.end()));
        RC_ASSERT(validate(change.job).size() <= validate(job).size());
      }
    }
  });
  EXPECT_GT(offered, 20);
}

}  // namespace
}  // namespace baywright
