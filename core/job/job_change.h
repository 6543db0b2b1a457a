// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "job/job.h"

namespace baywright {

/// Which parts differ between two jobs. Views ask it what to redraw and do no more.
struct JobChange {
  bool info = false;
  bool units = false;
  bool room = false;       ///< outline, walls, ceiling, openings, fixtures
  bool people = false;     ///< golfers, their clubs, bystanders
  bool kit = false;        ///< kit of the active option
  bool placement = false;  ///< placement of the active option
  bool options = false;    ///< which options there are, their names, which is active, or a part of another
  bool requirements = false;
  bool measurements = false;
  bool scans = false;  ///< plan scans and room scans
  bool originals = false;

  bool operator==(const JobChange&) const = default;

  bool any() const { return *this != JobChange{}; }
  /// What assess() reads has changed.
  bool affectsAssessment() const {
    return room || people || kit || placement || requirements || units || scans;
  }
};

/// Scans are compared by identity of their files and meshes, everything else by value. `kit` and `placement`
/// are set too when another option became active and its kit or placement differs.
JobChange jobChange(const Job& before, const Job& after);

}  // namespace baywright
