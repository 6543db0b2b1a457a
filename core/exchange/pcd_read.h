// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

#include "base/problem.h"
#include "base/progress.h"
#include "exchange/mesh_raw.h"

namespace baywright {

/// Reads the PCD format of the Point Cloud Library, versions .6 and .7: text, binary, and binary compressed
/// (field after field, packed with LZF). Fields other than x, y and z are passed over, as is the viewpoint.
///
/// Refused with a sentence: a damaged header, numbers that are not all there, a packed block that is damaged
/// or says it would grow more than LZF can (nothing is allocated before that is known).
Result<RawScan> readPcd(std::string_view bytes, const ScanReadOptions& options, const Progress& progress);

}  // namespace baywright
