// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"

namespace baywright {

/// One line of a table as text.
struct CsvRow {
  int line = 0;  ///< in the file, from 1
  std::vector<std::string> fields;
  char separator = ',';  ///< between its fields
};

/// The rows of a small table, header first, without empty lines and without lines that begin with '#'.
///
/// Fields are parted by the comma, semicolon or tab that the first row has. A field that begins with a quote
/// runs to the next single one, "" inside it is a quote (RFC 4180, section 2); a quote elsewhere is itself,
/// so that 7' 6 1/2" needs no care. Blanks round a field that is not quoted are dropped. Rows of nothing but
/// separators are passed over, as is a line sep=; before the header. A line is one row: no field runs over a
/// line's end, which may be LF, CR LF or CR. The text may be UTF-8, UTF-16 with a byte order mark or plainly
/// without one, or else Windows-1252, as spreadsheets save it.
///
/// Refused: more than kLargestTable bytes, more than kMostRows rows, text that holds control characters, a
/// quote that is not closed or is followed by text.
Result<std::vector<CsvRow>> csvRows(std::string_view bytes);

/// The row as one line, quoted where it must be.
std::string csvLine(const std::vector<std::string>& fields);

inline constexpr std::size_t kLargestTable = 1 << 20;
inline constexpr std::size_t kMostRows = 2000;

}  // namespace baywright
