// SPDX-License-Identifier: Apache-2.0
#pragma once

class QLabel;

namespace baywright {

struct Problem;

/// A line of a dialog that stays away until something is wrong.
QLabel* problemLabel();
void tellProblem(QLabel& label, const Problem& problem);

}  // namespace baywright
