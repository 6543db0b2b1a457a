// SPDX-License-Identifier: Apache-2.0
#include "swing/refusals.h"

#include "job/limits.h"
#include "units/angle_text.h"
#include "units/length_text.h"

namespace baywright {
namespace {

constexpr UnitSystem kMetres{.length = LengthUnit::Metres};

std::string placeOf(const Golfer& golfer) {
  return golfer.name.empty() ? "people" : "people / " + golfer.name;
}
std::string placeOf(const Golfer& golfer, const Club& club) {
  return placeOf(golfer) + " / " + (club.name.empty() ? "club" : club.name);
}

std::string lengthOutside(const std::string& what, double value, Range range) {
  return what + " of " + formatLength(value, kMetres) + " is outside " + formatLength(range.low, kMetres) +
         " to " + formatLength(range.high, kMetres) + ", for which swings are known.";
}

}  // namespace

std::optional<Problem> refusedStature(const Golfer& golfer) {
  if (!golfer.stature.known)
    return Problem{"The stature was not measured yet.", placeOf(golfer) + " / stature",
                   "Measure it in shoes, or enter an estimate."};
  if (!limits::kStature.contains(golfer.stature.value))
    return Problem{lengthOutside("A stature", golfer.stature.value, limits::kStature),
                   placeOf(golfer) + " / stature", "Correct it."};
  return std::nullopt;
}

std::optional<Problem> refusedClub(const Golfer& golfer, const Club& club) {
  if (!limits::kClubLength.contains(club.length))
    return Problem{lengthOutside("A club length", club.length, limits::kClubLength),
                   placeOf(golfer, club) + " / length", "Correct it."};
  if (!limits::kClubLie.contains(club.lie))
    return Problem{"A lie of " + formatAngle(club.lie, kMetres) + " is outside " +
                       formatAngle(limits::kClubLie.low, kMetres) + " to " +
                       formatAngle(limits::kClubLie.high, kMetres) + ", for which swings are known.",
                   placeOf(golfer, club) + " / lie",
                   "Correct it; a driver has about 58°, a wedge about 64°."};
  return std::nullopt;
}

Problem tapedWithUnknownClub(const Golfer& golfer) {
  return {"The reach was taped with a club that is not in the bag.", placeOf(golfer) + " / reach",
          "Say which club it was, or clear the taped reach."};
}

Problem tapedOutOfReach(const Golfer& golfer, const Club& club) {
  std::string taped;
  const auto& reach = *golfer.reach;
  if (reach.highest && reach.highest->known) taped = formatLength(reach.highest->value, kMetres) + " high";
  if (reach.behind && reach.behind->known)
    taped += (taped.empty() ? "" : " and ") + formatLength(reach.behind->value, kMetres) + " behind";
  return {"No swing of a golfer of " + formatLength(golfer.stature.value, kMetres) + " with a club of " +
              formatLength(club.length, kMetres) + " reaches " + taped + ".",
          placeOf(golfer) + " / reach", "Tape it again: height from the floor, reach level from the ball."};
}

}  // namespace baywright
