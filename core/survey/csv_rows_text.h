// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

namespace baywright::detail {

/// A table's bytes as UTF-8 with lines that end in LF. UTF-16 is known by its byte order mark; what is not
/// UTF-8 is taken as Windows-1252, in which spreadsheets save CSV where nobody asks for more. Never fails:
/// pairs that are no character become U+FFFD.
std::string tableText(std::string_view bytes);

}  // namespace baywright::detail
