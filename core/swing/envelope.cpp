// SPDX-License-Identifier: Apache-2.0
#include "swing/envelope.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "job/limits.h"
#include "swing/cover.h"
#include "swing/measured_reach.h"
#include "swing/refusals.h"
#include "swing/two_link.h"

namespace baywright {
namespace {

// Between golfers of one size with one club: slope of the plane (3 degrees, 0.04 m at the club head), how
// late the wrists set (3 degrees of the arms, 0.03 m) and how much they rise (0.02 m), together.
constexpr double kModelSigma = 0.05;
// The same golfer twice (common practice, no source).
constexpr double kRepeatSigma = 0.02;
// A club that differs this much in length from the taped one is as uncertain as if nothing had been taped.
constexpr double kTapeCarries = 0.25;

struct Sigmas {
  double up;
  double level;
};

/// About where the club's head is highest: the arms a little past level, the club up the plane.
Vec3 nearlyHighest(double stature, const Club& club) {
  const AddressPosture posture = postureOf(bodyOf(stature), club);
  return posture.hub + (0.35 * posture.arm() + posture.club) * linkDirection(kPi, posture.planeSlope);
}

/// The model's own, joined by what the stature's uncertainty does to height and reach (by derivative).
Sigmas modelSigmas(const Golfer& golfer, const Club& club) {
  constexpr double kStep = 0.01;
  const Vec3 change =
      nearlyHighest(golfer.stature.value + kStep, club) - nearlyHighest(golfer.stature.value - kStep, club);
  const double share = golfer.stature.uncertain().sigma / (2 * kStep);
  return {std::hypot(kModelSigma, share * change.z()), std::hypot(kModelSigma, share * change.y())};
}

double tapedSigma(const Dimension& taped, double modelSigma, double lengthApart) {
  const double carried = modelSigma * std::min(1.0, lengthApart / kTapeCarries);
  return std::min(modelSigma, std::hypot(std::hypot(taped.uncertain().sigma, kRepeatSigma), carried));
}

SwingEnvelope envelopeOf(const SwingPath& path, const Sigmas& sigmas) {
  SwingEnvelope envelope;
  envelope.capsules = coverOf(path);
  envelope.figures = figuresOf(envelope.capsules, path.hand);
  envelope.sigma = std::max(sigmas.up, sigmas.level);
  envelope.sigmaUp = sigmas.up;
  envelope.sigmaLevel = sigmas.level;
  return envelope;
}

SwingPathInput modelled(const Golfer& golfer, const Club& club) {
  const BodyLengths body = bodyOf(golfer.stature.value);
  return {.hand = golfer.hand, .body = body, .posture = postureOf(body, club)};
}

/// Arms at full extension outreach the expected swing, but with a club far too long for its golfer the end of
/// the grip may not: then the stretches of the expected swing that do reach farther are part of the bound.
void includeWhatReachesFarther(const SwingEnvelope& expected, Hand hand, SwingEnvelope& bound) {
  for (const SwingCapsule& each : expected.capsules) {
    const EnvelopeFigures own = figuresOf(std::span(&each, 1), hand);
    const EnvelopeFigures& all = bound.figures;
    if (own.highest.value > all.highest.value || own.behindGolfer.value > all.behindGolfer.value ||
        own.towardTarget.value > all.towardTarget.value ||
        own.awayFromTarget.value > all.awayFromTarget.value || own.beyondBall.value > all.beyondBall.value)
      bound.capsules.push_back(each);
  }
  bound.figures = figuresOf(bound.capsules, hand);
}

bool isTaped(const std::optional<Dimension>& dimension) {
  return dimension && dimension->known;
}

struct Taped {
  ReachFit fit;
  Sigmas sigmas;
};

Result<Taped> fitTaped(const Golfer& golfer, const Club& club, const Sigmas& model) {
  const auto with = std::ranges::find(golfer.clubs, golfer.reach->club, &Club::id);
  if (with == golfer.clubs.end()) return tl::unexpected(tapedWithUnknownClub(golfer));
  if (auto problem = refusedClub(golfer, *with)) return tl::unexpected(*problem);
  ReachGoal goal;
  Sigmas sigmas = model;
  const double lengthApart = std::abs(club.length - with->length);
  if (isTaped(golfer.reach->highest)) {
    goal.highest = golfer.reach->highest->value;
    if (!limits::kReach.contains(*goal.highest)) return tl::unexpected(tapedOutOfReach(golfer, *with));
    sigmas.up = tapedSigma(*golfer.reach->highest, model.up, lengthApart);
  }
  if (isTaped(golfer.reach->behind)) {
    goal.behind = golfer.reach->behind->value;
    if (!limits::kReach.contains(*goal.behind)) return tl::unexpected(tapedOutOfReach(golfer, *with));
    sigmas.level = tapedSigma(*golfer.reach->behind, model.level, lengthApart);
  }
  const auto fit = fitReach(modelled(golfer, *with), goal);
  if (!fit) return tl::unexpected(tapedOutOfReach(golfer, *with));
  return Taped{*fit, sigmas};
}

}  // namespace

double SwingEnvelope::sigmaAlong(const Vec3& direction) const {
  const double up = direction.z() * direction.z();
  return std::sqrt(up * sigmaUp * sigmaUp + std::max(0.0, 1 - up) * sigmaLevel * sigmaLevel);
}

Result<Swing> swingOf(const Golfer& golfer, const Club& club) {
  if (auto problem = refusedStature(golfer)) return tl::unexpected(*problem);
  if (auto problem = refusedClub(golfer, club)) return tl::unexpected(*problem);

  Sigmas sigmas = modelSigmas(golfer, club);
  SwingPathInput input = modelled(golfer, club);
  const bool measured = golfer.reach && (isTaped(golfer.reach->highest) || isTaped(golfer.reach->behind));
  if (measured) {
    const Result<Taped> taped = fitTaped(golfer, club, sigmas);
    if (!taped) return tl::unexpected(taped.error());
    sigmas = taped->sigmas;
    input.cock = taped->fit.cock;
    input.arcShift = taped->fit.shiftFor(input.posture.arm() + input.posture.club);
  }

  Swing swing;
  swing.measured = measured;
  swing.path = swingPathOf(input);
  input.style = SwingStyle::FullExtension;
  swing.fullPath = swingPathOf(input);
  swing.expected = envelopeOf(swing.path, sigmas);
  swing.fullExtension = envelopeOf(swing.fullPath, sigmas);
  includeWhatReachesFarther(swing.expected, golfer.hand, swing.fullExtension);
  return swing;
}

std::vector<SwingCapsule> poseAt(const Swing& swing, double moment) {
  return poseAt(swing.path, moment);
}

}  // namespace baywright
