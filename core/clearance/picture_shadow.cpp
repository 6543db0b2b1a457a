// SPDX-License-Identifier: Apache-2.0
#include <cmath>

#include "clearance/checks.h"
#include "clearance/lens_sigma.h"
#include "clearance/picture_zone.h"
#include "clearance/quantities.h"
#include "job/find.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

std::string shareText(const CheckInput& input, double share) {
  return formatQuantity(share, QuantityKind::Ratio, input.job.units);
}

Finding blank(const CheckInput& input, const std::string& aspect, const std::string& subject) {
  Finding finding;
  finding.check = "picture_shadow";
  finding.key = "picture_shadow/" + aspect;
  finding.subjects = {input.option.kit.projector.id};
  finding.subject = subject;
  finding.unit = MarginUnit::Share;
  finding.source = "straight rays from the lens; share as agreed in the job's requirements";
  return finding;
}

const Obstruction* largestOf(const Obstructions& all) {
  const Obstruction* largest = nullptr;
  for (const Obstruction& part : all.parts) {
    if (!largest || part.share > largest->share) largest = &part;
  }
  return largest;
}

void addFixed(CheckResult& result, const CheckInput& input, const PictureZone& zone) {
  Finding finding = blank(input, "fixed", "Picture");
  const std::vector<LightBlocker> blockers = lightBlockers(input.obstacles, input.option.placement.bay);
  std::vector<Solid> solids;
  for (const LightBlocker& blocker : blockers) solids.push_back(blocker.inBay);
  const double sigma = sigmaFromLens(input.option, [&](const Picture& moved) {
    return obstructionBy(moved, std::span<const Solid>(solids)).share;
  });
  finding.margin = Uncertain{input.job.requirements.obstruction - zone.obstructions.share, sigma};
  finding.verdict = verdictOf(*finding.margin);
  if (const Obstruction* largest = largestOf(zone.obstructions)) {
    const RoomObstacle& what = input.obstacles[blockers[largest->obstacle].index];
    finding.subjects.push_back(what.id);
    finding.points =
        std::pair(worldFromBay(input.option.placement.bay, input.option.placement.projector.lens),
                  what.bounds.centre());
    finding.sentence = "Picture: " + shareText(input, zone.obstructions.share) +
                       " are in the shadow of what is fixed, most by " + what.name + "; " +
                       shareText(input, input.job.requirements.obstruction) + " are allowed.";
    if (finding.verdict != Verdict::Clear)
      finding.sentence += " Move that, or hang the projector out of its way.";
  } else {
    finding.sentence = "Picture: nothing fixed stands in the light.";
  }
  result.findings.push_back(std::move(finding));
  result.figures.push_back({"picture.obstruction", zone.obstructions.share, "1"});
}

void addGolfer(CheckResult& result, const CheckInput& input, const PictureZone::GolferShadow& shade) {
  const Golfer* golfer = findById(input.job.golfers, shade.golfer);
  if (!golfer) return;
  Finding finding = blank(input, idText(shade.golfer), golfer->name);
  finding.subjects = {shade.golfer, input.option.kit.projector.id};
  finding.margin = Uncertain{input.job.requirements.shadow - shade.shadow.atAddress, shade.addressSigma};
  finding.verdict = verdictOf(*finding.margin);
  finding.moment = 0;
  finding.sentence = golfer->name + " at address shades " + shareText(input, shade.shadow.atAddress) +
                     " of the picture; " + shareText(input, input.job.requirements.shadow) +
                     " are allowed. In the swing it is " + shareText(input, shade.shadow.worst) + " at most.";
  if (finding.verdict != Verdict::Clear)
    finding.sentence += " Hang the projector nearer to the screen or higher, with the widest zoom.";
  result.findings.push_back(std::move(finding));
  const std::string name = figureName({"picture", "shadow", idText(shade.golfer)});
  result.figures.push_back({name + ".at_address", shade.shadow.atAddress, "1"});
  result.figures.push_back({name + ".worst", shade.shadow.worst, "1"});
  result.figures.push_back({name + ".mean", shade.shadow.mean, "1"});
}

}  // namespace

CheckResult checkPictureShadow(const CheckInput& input) {
  CheckResult result;
  if (!input.picture.zone) return result;
  addFixed(result, input, *input.picture.zone);
  for (const PictureZone::GolferShadow& shade : input.picture.zone->shadows) addGolfer(result, input, shade);
  return result;
}

}  // namespace baywright
