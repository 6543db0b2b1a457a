// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>

namespace baywright {

/// Passed to whatever may take over 50 ms: it tells how far it is and asks whether to go on.
/// Both functions may be empty and are called from the thread that does the work.
struct Progress {
  std::function<void(double fraction)> report;  ///< fraction in 0..1, never decreasing
  std::function<bool()> cancelled;

  void at(double fraction) const {
    if (report) report(fraction);
  }
  bool stop() const { return cancelled && cancelled(); }
};

}  // namespace baywright
