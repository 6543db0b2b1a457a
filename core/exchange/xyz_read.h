// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

#include "base/problem.h"
#include "base/progress.h"
#include "exchange/mesh_raw.h"

namespace baywright {

/// Reads points written as text, one a line: three numbers first, whatever follows (colour, intensity,
/// normals) is passed over. Between them stand spaces, tabs, commas or semicolons, which the first line with
/// numbers settles; with semicolons or spaces the decimals may follow a comma. Lines before the first numbers
/// are headings: where one names columns x, y and z, those are taken. A line with one number, a count, may
/// come before the points; empty lines and lines that begin with # or // may stand anywhere.
///
/// A last line that is cut short is left out with a note. Refused with a sentence that names the line: text
/// among the points that is no point; a file without points.
Result<RawScan> readXyz(std::string_view bytes, const ScanReadOptions& options, const Progress& progress);

}  // namespace baywright
