// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/id.h"
#include "base/uncertain.h"
#include "geometry/vec.h"

namespace baywright {

/// Worse is greater, except that `Unknown` only says that something was not measured.
enum class Verdict { Clear, Unknown, Tight, Blocked };

enum class MarginUnit { Length, Share, Angle, Speed, Ratio };  ///< m, 0..1, rad, m/s, 1

/// One checked statement.
struct Finding {
  std::string check;         ///< stable name of the check, its file's name: "swing_room"
  std::string key;           ///< stable over edits: check, subject ids and aspect, "swing_room/12/14/wall"
  std::vector<Id> subjects;  ///< what it is about, the first one first: golfer, club, wall ...
  std::string subject;       ///< the same for people: "Driver, Robin"
  Verdict verdict = Verdict::Unknown;
  /// What is left after what is required, negative when missing; none when unknown.
  std::optional<Uncertain> margin;
  MarginUnit unit = MarginUnit::Length;
  /// The two tightest points in the world: first on the subject, second on what it meets.
  std::optional<std::pair<Vec3, Vec3>> points;
  std::optional<double> moment;  ///< of a swing at which it is tightest, 0 address to 1 finish
  /// Names the thing, gives the number in the job's unit, says what is wrong or needed.
  std::string sentence;
  std::string source;  ///< where the requirement comes from, or "common practice, no source"
};

/// A micrometre missing is what adding up coordinates leaves: something put against its limit is not past it.
inline constexpr double kRoundOff = 1e-6;

/// Clear when the margin is at least its own 95 % half-width, blocked when it is negative, tight in between:
///   margin < -kRoundOff -> Blocked; margin < halfWidth95 -> Tight; else Clear.
/// A doubtful number (NaN) is Unknown, never Clear.
inline Verdict verdictOf(Uncertain margin) {
  if (!(margin.value == margin.value) || !(margin.sigma == margin.sigma)) return Verdict::Unknown;
  if (margin.value < -kRoundOff) return Verdict::Blocked;
  return margin.value < margin.halfWidth95() ? Verdict::Tight : Verdict::Clear;
}

/// One computed figure under a stable name, such as "swing.12.14.highest" in "m".
struct Quantity {
  std::string name;
  double value = 0;
  std::string unit;  ///< "m", "m2", "rad", "1", "s", "lx", "lm", "cd/m2", "m/s", "J", "kg/m3", "px"
};

}  // namespace baywright
