// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "survey/adjustment.h"

namespace baywright::detail {

/// The most readings that agree with each other, and those that are then left over.
struct Consensus {
  SurveyAdjustment rest;  ///< of all readings but those
  std::vector<Id> out;    ///< in the order of the network
};

/// Searches for it from each start of network_start.h, as a gross error would draw an adjustment with it: the
/// readings that roughly fit the start are adjusted, the worst that stands out of them is dropped, what fits
/// after all is taken back, until nothing changes. Fewest left over wins, then the best fit. Where two or
/// more are, all smaller sets are compared (blunder_test_sets.h). Nothing where no floor comes of it that the
/// readings agree on, where more than `most` are left over, or where several are and nothing checks the
/// others.
std::optional<Consensus> consensusOf(const SurveyNetwork& network, const Ring& near, std::size_t most);

/// The network without some readings.
SurveyNetwork without(const SurveyNetwork& network, const std::vector<Id>& readings);

/// What the observation should read by adjusted corners, with the uncertainty that follows from theirs.
Uncertain predicted(const Observation& observation, const SurveyAdjustment& adjustment);

}  // namespace baywright::detail
