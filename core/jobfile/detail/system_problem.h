// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <string>
#include <system_error>

#include "base/problem.h"

namespace baywright::detail {

/// "The file could not be written: No space left on device.", with the file as the place.
inline tl::unexpected<Problem> systemProblem(const std::string& what, const std::filesystem::path& file,
                                             int reason) {
  return fail(what + ": " + std::generic_category().message(reason) + ".", file.string());
}

}  // namespace baywright::detail
