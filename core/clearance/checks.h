// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string_view>

#include "clearance/check.h"

namespace baywright {

/// One check: a function in a file of its own, named as the file. `helpPage` is resources/help/<helpPage>.md.
struct CheckRow {
  std::string_view name;   ///< Finding::check
  std::string_view title;  ///< for headings: "Swing: ceiling and what hangs from it"
  Check run;
  CheckNeeds needs;
  std::string_view helpPage;
  std::string_view assumes;  ///< one sentence: what has to be true for its verdicts to hold
};

/// All checks, in the order in which they run and a sheet lists them.
std::span<const CheckRow> checks();

/// The row of that name, or null.
const CheckRow* findCheck(std::string_view name);

CheckResult checkSwingRoom(const CheckInput& input);
CheckResult checkSwingHeadroom(const CheckInput& input);
CheckResult checkSwingEquipment(const CheckInput& input);
CheckResult checkFrameFit(const CheckInput& input);
CheckResult checkBallCapture(const CheckInput& input);
CheckResult checkBallRebound(const CheckInput& input);
CheckResult checkBystanderSafety(const CheckInput& input);
CheckResult checkPictureFill(const CheckInput& input);
CheckResult checkPictureBrightness(const CheckInput& input);
CheckResult checkPictureShadow(const CheckInput& input);
CheckResult checkProjectorMount(const CheckInput& input);
CheckResult checkDoorsAndExits(const CheckInput& input);

}  // namespace baywright
