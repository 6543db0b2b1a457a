// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "base/uncertain.h"

namespace baywright {

/// What a search for the tightest place looks for. A margin that is missing beats every margin that is there,
/// and of those that are missing the largest counts. Of those that are there, any that is less than its own
/// 95 % half-width beats any that is more, and of these the smallest in units of its uncertainty counts,
/// since that decides between `tight` and `clear`; of those that are clear the smallest. A strict weak order.
bool isWorse(Uncertain a, Uncertain b);

/// Margin in units of its uncertainty, for sorting. Without uncertainty: infinite, with the margin's sign.
double margins95(Uncertain margin);

/// While `best` is the worst found so far: the distance beyond which nothing can be worse. `required` is
/// taken off a distance to make a margin, `largestSigma` bounds the uncertainty of the candidates.
double searchReach(Uncertain best, double required, double largestSigma);

}  // namespace baywright
