// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/network.h"

namespace baywright::detail {

/// Sets of `size` readings (1 to 3) without which a network would fit best, best first, at most `most` of
/// them. The adjustment is taken as linear about these corners, so that all sets are compared at once: what a
/// set takes off v^T P v is v_S^T (Q_vv P)_SS^-1 v_S (e.g. Baarda's test for several alternatives at once).
/// Corners should lie within some centimetres of where they are. Empty where the readings do not determine
/// the corners, or where there are too many sets to compare.
std::vector<std::vector<Id>> likeliestSets(const SurveyNetwork& network, const Ring& near, int size,
                                           std::size_t most);

}  // namespace baywright::detail
