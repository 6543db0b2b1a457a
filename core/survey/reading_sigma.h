// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "job/measurement.h"

namespace baywright {

/// Standard uncertainty of one reading: metres for lengths and heights (instrumentSigma), radians for angles.
///
/// Angles are not in job/dimension.h, as nothing else in a job is measured as one. Taken here, all of it
/// common practice without a source:
///   Tape     0.5 degrees: a sliding bevel, or three taped sides of a small triangle
///   Laser    0.2 degrees: a digital angle finder on uneven plaster
///   Drawing  0.5 degrees, Scan 0.3 degrees, Guess 2 degrees
double readingSigma(const Measurement& reading);

}  // namespace baywright
