// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "clearance/aim_words.h"
#include "clearance/checks.h"
#include "clearance/lens_sigma.h"
#include "clearance/quantities.h"
#include "optics/aim.h"
#include "optics/keystone.h"
#include "optics/pixel_size.h"
#include "units/angle_text.h"
#include "units/length_text.h"
#include "units/number_text.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

/// One limit that a projector in its place has to keep.
struct Aspect {
  std::string_view name;
  MarginUnit unit;
  double (*margin)(const MountMargins&);
  std::string_view source;
};

constexpr std::string_view kMaker = "range as the projector's maker states it";
constexpr std::string_view kAgreed = "as agreed in the job's requirements";

const std::array kAspects = {
    Aspect{"coverage", MarginUnit::Share, [](const MountMargins& m) { return m.coverage; }, kAgreed},
    Aspect{"spill", MarginUnit::Share, [](const MountMargins& m) { return m.spill; }, kAgreed},
    Aspect{"zoom", MarginUnit::Ratio, [](const MountMargins& m) { return std::min(m.zoomWide, m.zoomLong); },
           kMaker},
    Aspect{"focus", MarginUnit::Length,
           [](const MountMargins& m) { return std::min(m.focusNear, m.focusFar); }, kMaker},
    Aspect{"shift", MarginUnit::Share, [](const MountMargins& m) { return std::min(m.shiftUp, m.shiftSide); },
           kMaker},
    Aspect{"keystone", MarginUnit::Angle, [](const MountMargins& m) { return m.keystone; }, kMaker},
};

/// Of somebody at the strike point: a man of mean stature, standing (ANSUR II 2012).
constexpr double kEyeHeight = 1.642;

AimNeeds needsOf(const CheckInput& input) {
  return {input.job.requirements.coverage, input.job.requirements.spill};
}

std::string sentenceOf(const CheckInput& input, const Picture& picture, std::string_view aspect) {
  const UnitSystem& units = input.job.units;
  const Projector& projector = input.option.kit.projector;
  const ProjectorMount& mount = input.option.placement.projector;
  const auto share = [&](double value) { return formatQuantity(value, QuantityKind::Ratio, units); };
  const auto number = [&](double value) { return formatNumber(value, 2, units); };
  if (aspect == "coverage") {
    return "The picture fills " + share(picture.coverage) + " of the screen; " +
           share(input.job.requirements.coverage) + " are wanted.";
  }
  if (aspect == "spill") {
    return share(picture.spill) + " of the picture miss the screen; " + share(input.job.requirements.spill) +
           " are allowed, and " + share(picture.aspectLoss) + " for the shapes that differ.";
  }
  if (aspect == "zoom") {
    return "The zoom is set to a throw ratio of " + number(mount.throwRatio) + "; the lens does " +
           number(projector.throwMin) + " to " + number(projector.throwMax) + ".";
  }
  if (aspect == "focus") {
    return "The picture is thrown " + formatLength(picture.throwDistance, units) +
           "; the lens focuses from " + formatLength(projector.distanceMin, units) + " to " +
           formatLength(projector.distanceMax, units) + ".";
  }
  if (aspect == "shift") {
    return "The lens is shifted by " + share(mount.shiftUp) + " up and " + share(mount.shiftSide) +
           " sideways; it can do " + share(projector.shiftUpMax) + " and " + share(projector.shiftSideMax) +
           ".";
  }
  return "The projector looks " +
         formatAngle(std::max(std::abs(picture.keystoneAcross), std::abs(picture.keystoneUp)), units) +
         " askew at the screen; it can correct " + formatAngle(projector.keystoneMax, units) + ".";
}

/// What would do from where it hangs; else from where it would do, at that height.
std::string placeText(const CheckInput& input, const PictureZone& zone) {
  const Kit& kit = input.option.kit;
  const auto aim = aimAt(kit.screen, kit.projector, input.option.placement.projector, needsOf(input));
  if (aim && aim->works)
    return " From where it hangs it does with " + aimWords(aim->mount, input.job.units) + ".";
  if (!zone.mountingZone) return {};
  const UnitSystem& units = input.job.units;
  if (zone.mountingZone->farthest <= 0) {
    return " At this height it does from nowhere on the bay's middle line: hang it higher or lower, or "
           "choose another projector.";
  }
  return " At this height it does from " + formatLength(zone.mountingZone->nearest, units) + " to " +
         formatLength(zone.mountingZone->farthest, units) +
         " from the screen on the bay's middle line, aimed at the screen's middle.";
}

/// Without the path that a dialog needs to find the field.
std::string whatAndNext(const Problem& problem) {
  return problem.next.empty() ? problem.what : problem.what + " " + problem.next;
}

Finding blank(const CheckInput& input, std::string_view aspect) {
  Finding finding;
  finding.check = "picture_fill";
  finding.key = "picture_fill/" + std::string(aspect);
  finding.subjects = {input.option.kit.projector.id, input.option.kit.screen.id};
  finding.subject = "Picture";
  return finding;
}

void addAspects(CheckResult& result, const CheckInput& input, const PictureZone& zone) {
  const Picture& picture = zone.picture;
  const Projector& projector = input.option.kit.projector;
  const ProjectorMount& mount = input.option.placement.projector;
  const MountMargins margins = mountMargins(picture, projector, mount, needsOf(input));
  const BayPose& bay = input.option.placement.bay;
  for (const Aspect& aspect : kAspects) {
    Finding finding = blank(input, aspect.name);
    const double sigma = sigmaFromLens(input.option, [&](const Picture& moved) {
      return aspect.margin(mountMargins(moved, projector, mount, needsOf(input)));
    });
    const double margin = aspect.margin(margins);
    finding.margin =
        Uncertain{std::abs(margin) < kAimTolerance ? 0 : margin, sigma < kAimTolerance ? 0 : sigma};
    finding.verdict = verdictOf(*finding.margin);
    finding.unit = aspect.unit;
    finding.points = std::pair(worldFromBay(bay, mount.lens),
                               worldFromBay(bay, bayFromScreen(picture.face, picture.face.middle())));
    finding.sentence = sentenceOf(input, picture, aspect.name);
    if (finding.verdict != Verdict::Clear) finding.sentence += placeText(input, zone);
    finding.source = aspect.source;
    result.findings.push_back(std::move(finding));
  }
}

/// Whether moving corners electronically can put the picture on the whole of its target.
void addCorners(CheckResult& result, const CheckInput& input, const PictureZone& zone) {
  if (zone.corners.reachable) return;
  Finding finding = blank(input, "corners");
  finding.margin = Uncertain{-zone.corners.overshoot / input.option.kit.projector.panelWidth, 0};
  finding.verdict = Verdict::Blocked;
  finding.unit = MarginUnit::Share;
  finding.sentence = "A corner of the screen lies " +
                     formatNumber(zone.corners.overshoot, 0, input.job.units) +
                     " pixels outside the picture: moving corners cannot reach it." + placeText(input, zone);
  finding.source = "pinhole geometry";
  result.findings.push_back(std::move(finding));
}

void addFigures(CheckResult& result, const CheckInput& input, const PictureZone& zone) {
  const Picture& p = zone.picture;
  const auto add = [&](std::string_view name, double value, const char* unit) {
    result.figures.push_back({figureName({"picture", name}), value, unit});
  };
  add("throw_distance", p.throwDistance, "m");
  add("throw_ratio", input.option.placement.projector.throwRatio, "1");
  add("width", p.width, "m");
  add("height", p.height, "m");
  add("coverage", p.coverage, "1");
  add("spill", p.spill, "1");
  add("aspect_loss", p.aspectLoss, "1");
  add("keystone_across", p.keystoneAcross, "rad");
  add("keystone_up", p.keystoneUp, "rad");
  add("edge_ratio_across", p.edgeRatioAcross, "1");
  add("edge_ratio_up", p.edgeRatioUp, "1");
  add("area", p.area, "m2");
  const auto fitted = largestInside(p.face, p.lens.panel.x() / p.lens.panel.y());
  const Vec2 size = fitted[1] - fitted[3];
  const Vec2 bars = 0.5 * (p.face.size - size);
  add("letterbox.width", size.x(), "m");
  add("letterbox.height", size.y(), "m");
  add("letterbox.bar_beside", bars.x(), "m");
  add("letterbox.bar_above", bars.y(), "m");
  add("pixel_loss", zone.corners.pixelLoss, "1");
  add("light_loss", zone.corners.lightLoss, "1");
  constexpr std::array<std::string_view, 4> kCorners = {"top_left", "top_right", "bottom_right",
                                                        "bottom_left"};
  for (std::size_t i = 0; i < 4; ++i) {
    result.figures.push_back(
        {figureName({"picture.corner", kCorners[i], "x"}), zone.corners.moves[i].x(), "px"});
    result.figures.push_back(
        {figureName({"picture.corner", kCorners[i], "y"}), zone.corners.moves[i].y(), "px"});
    result.figures.push_back(
        {figureName({"picture.on_screen", kCorners[i], "s"}), p.cornersOnScreen[i].x(), "m"});
    result.figures.push_back(
        {figureName({"picture.on_screen", kCorners[i], "t"}), p.cornersOnScreen[i].y(), "m"});
  }
  if (p.litOnPanel.empty()) return;
  const PixelSize pixel = pixelSize(p, p.litOnPanel);
  add("pixel_smallest", pixel.smallest, "m");
  add("pixel_largest", pixel.largest, "m");
  const Placement& placement = input.option.placement;
  const Vec3 eye = placement.strikePoint(Hand::Right) + Vec3(0, 0, kEyeHeight);
  const Acuity acuity = acuityAt(p.face, pixel, eye);
  add("pixel_angle", acuity.pixelAngle, "rad");
  add("pixels_blend_from", acuity.finestDistance, "m");
}

}  // namespace

CheckResult checkPictureFill(const CheckInput& input) {
  CheckResult result;
  if (input.picture.problem) {
    Finding finding = blank(input, "none");
    finding.verdict = Verdict::Blocked;
    finding.sentence = whatAndNext(*input.picture.problem);
    finding.source = "pinhole geometry";
    result.findings.push_back(std::move(finding));
  }
  if (!input.picture.zone) return result;
  addAspects(result, input, *input.picture.zone);
  addCorners(result, input, *input.picture.zone);
  addFigures(result, input, *input.picture.zone);
  return result;
}

}  // namespace baywright
