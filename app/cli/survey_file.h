// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "base/problem.h"
#include "survey/recognised_room.h"
#include "units/unit_system.h"

namespace baywright {

/// A file that somebody brought from a room, and what was said beside it.
struct SurveyFile {
  std::filesystem::path path;
  std::string unit;  ///< as typed after --unit; empty: not said
  std::string up;    ///< as typed after --up; empty: not said
};

struct SurveyRead {
  std::string_view kind;  ///< "measuring list", "drawing", "scan": stable names
  RecognisedRoom recognised;
  UnitSystem units;  ///< for the job to show lengths in
};

/// What a file shows; its kind as exchange/survey_kind.h tells it. Refused: an ending of no such kind, a file
/// that cannot be read, and whatever its reader refuses.
Result<SurveyRead> readSurveyFile(const SurveyFile& file);

}  // namespace baywright
