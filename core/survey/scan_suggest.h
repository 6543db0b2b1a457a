// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "survey/scan_geometry.h"

namespace baywright {

/// A guess for a person to accept or not; nothing takes it by itself.
struct UpSuggestion {
  UpAxis up = UpAxis::PlusZ;
  bool isPlausible = false;  ///< two level surfaces stand out at its ends
  std::string reason;        ///< a sentence
};

/// All six axes, the likeliest first: rooms end in two flat surfaces, are lower than wide, and things stand
/// on the floor rather than hang from the ceiling. What the format states comes first of all.
std::vector<UpSuggestion> suggestUp(const ScanGeometry& scan);

struct UnitSuggestion {
  double metresPerUnit = 1;
  std::string name;           ///< "metres"
  double floorToCeiling = 0;  ///< metres, if this is the unit
  bool isPlausible = false;   ///< a room in which a person swings could be so high
  std::string reason;         ///< "Floor to ceiling would be 2.9 m if the unit is metres."
};

/// Metres, centimetres, millimetres, feet, inches: the one whose room is nearest to usual height first.
std::vector<UnitSuggestion> suggestUnits(const ScanGeometry& scan, UpAxis up);

}  // namespace baywright
