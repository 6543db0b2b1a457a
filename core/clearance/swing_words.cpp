// SPDX-License-Identifier: Apache-2.0
#include "clearance/swing_words.h"

#include <algorithm>

#include "clearance/finding.h"
#include "clearance/wording.h"
#include "swing/moment.h"
#include "units/length_text.h"

namespace baywright {
namespace {

std::string partText(BodyPart part) {
  switch (part) {
    case BodyPart::Head:
      return "the head";
    case BodyPart::Torso:
      return "the body";
    case BodyPart::LeadArm:
    case BodyPart::TrailArm:
      return "an arm";
    case BodyPart::Legs:
      return "a leg";
    case BodyPart::Shaft:
      return "the shaft";
    case BodyPart::ClubHead:
      return "the club head";
  }
  return "the club";
}

std::string momentText(double moment) {
  switch (phaseAt(moment)) {
    case SwingPhase::Address:
      return "at address";
    case SwingPhase::Takeaway:
      return "in the takeaway";
    case SwingPhase::Backswing:
      return "in the backswing";
    case SwingPhase::Top:
      return "at the top of the backswing";
    case SwingPhase::Downswing:
      return "in the downswing";
    case SwingPhase::Impact:
      return "at impact";
    case SwingPhase::FollowThrough:
      return "in the follow-through";
    case SwingPhase::Finish:
      return "at the finish";
  }
  return "in the swing";
}

std::string boundText(const SwingStatement& s, const UnitSystem& units) {
  const Verdict verdict = verdictOf(s.bound.margin);
  if (verdict == Verdict::Clear || verdict <= verdictOf(s.expected.margin)) return {};
  if (s.bound.closest.distance < 0) return " A swing at full extension would hit it.";
  if (verdict == Verdict::Blocked)
    return " At full extension " + missingText(s.bound.margin, units) + " short.";
  return " At full extension it is tight.";
}

}  // namespace

std::string swingSentence(const SwingStatement& s, const UnitSystem& units) {
  const Closest& place = s.expected.closest;
  const Verdict verdict = verdictOf(s.expected.margin);
  std::string where = s.obstacle + " " + momentText(s.expected.capsule.moment);
  if (verdict != Verdict::Clear)
    where += ", " + formatLength(std::max(0.0, place.onFirst.z()), units) + " above the floor";
  std::string text = s.subject + ": ";
  if (verdict != Verdict::Blocked)
    return text + marginText(s.expected.margin, "at " + where, units) + boundText(s, units);
  text += partText(s.expected.capsule.part) +
          (place.distance < 0 ? " hits " : " comes within " + formatLength(place.distance, units) + " of ");
  return text + where + "; with the " + formatLength(s.clearance, units) + " to keep it is " +
         missingText(s.expected.margin, units) + " short." + boundText(s, units);
}

}  // namespace baywright
