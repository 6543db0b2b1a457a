// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "survey/measuring_list.h"
#include "survey/recognised_room.h"

namespace baywright {

/// The room that a measuring list describes: corners adjusted (adjustment.h), ceiling planes fitted
/// (ceiling_fit.h), openings in their walls. Corner A is the origin and the wall from A to B runs along x.
///
/// A room's walls run counter-clockwise and are named after the corners where they start. Where the list's
/// letters run clockwise, corners keep their letters, so that the list's wall A, from A to B, is wall B of
/// the room; the notes say so, and readings are named by both ends of their walls.
///
/// A reading that the others contradict, and that alone explains the misfit or is the only one without which
/// the corners are square (blunder_test.h), is set aside: it stays among the measurements with `used` false,
/// and `suspicious` says what it probably should be. Where it is open which one is wrong, all stay. An
/// opening that reaches past its wall or over another one is left out and listed in `skipped`, unless it only
/// needs to slide by kOpeningSlide or less.
///
/// Refused: what networkOf and adjust refuse, walls that cross.
Result<RecognisedRoom> recogniseList(const MeasuringList& list);

/// Offsets are read to a jamb, a lining or its edge: common practice, no source. Metres.
inline constexpr double kOpeningSlide = 0.03;

}  // namespace baywright
