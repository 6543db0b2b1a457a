// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "base/problem.h"
#include "base/progress.h"
#include "exchange/dxf_unit.h"
#include "exchange/mesh_read.h"
#include "survey/recognised_room.h"

namespace baywright {

/// What a person says of a scan that its file may not.
struct ScanChoices {
  DrawingUnit unit = DrawingUnit::NotStated;  ///< NotStated: as the format states
  std::optional<UpAxis> up;                   ///< nothing: as the format states
};

/// Reads a 3D scan (mesh_read.h) and makes a room of it (survey/scan_room.h). The scan in the result keeps
/// the original file, so that a job does. A choice goes before what the format states, and is noted where
/// they differ.
///
/// Refused with a sentence: a unit or an up axis that is neither chosen nor stated (the sentence says what
/// each unit would mean; survey/scan_suggest.h), and whatever reading and recognising refuse.
Result<RecognisedRoom> recogniseScan(const std::string& fileName, std::string bytes,
                                     const ScanChoices& choices, const Progress& progress);

/// The same for a scan that was read from `file` before, so that a person may try other choices.
Result<RecognisedRoom> recogniseScan(const ScanGeometry& scan, const BlobPtr& file,
                                     const ScanChoices& choices, const Progress& progress);

}  // namespace baywright
