// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <vector>

#include "job/room_geometry.h"
#include "job/scan.h"
#include "units/unit_system.h"

namespace baywright {

/// What is worth knowing of a part that was recognised, in a few words beside its name.
QString wallName(const WallLine& line);
QString wallWords(const WallLine& line, const UnitSystem& units);
QString ceilingWords(const CeilingPart& part, const Room& room, const UnitSystem& units);
QString openingWords(const Opening& opening, const std::vector<WallLine>& walls, const UnitSystem& units);
QString fixtureWords(const Fixture& fixture, const UnitSystem& units);
QString scanWords(const RoomScan& scan);

}  // namespace baywright
