// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <optional>

#include "base/problem.h"
#include "survey/recognised_room.h"
#include "units/unit_system.h"

class QWidget;

namespace baywright {

/// The room in a drawing, a scan or a measuring list, after the person was asked what the file does not say
/// and has looked through what was recognised. Reading runs beside the window, which stays alive. Nothing
/// where the person gave up; refused with a sentence where the file cannot be read. `units` is what lengths
/// are shown in.
Result<std::optional<RecognisedRoom>> importRoom(const QString& path, const UnitSystem& units,
                                                 QWidget* window);

}  // namespace baywright
