// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <string>

#include "survey/csv_rows.h"

namespace baywright::detail {

/// A row of a measuring list whose fields are asked for by column; it must not outlive what it is made of.
class ListRow {
 public:
  ListRow(const CsvRow& row, const std::map<std::string, std::size_t>& columns)
      : row_(row), columns_(columns) {}

  /// Empty where the list has no such column or the row ends before it.
  std::string field(const std::string& column) const {
    const auto found = columns_.find(column);
    if (found == columns_.end() || found->second >= row_.fields.size()) return {};
    return row_.fields[found->second];
  }
  std::string where(const std::string& column) const {
    return "line " + std::to_string(row_.line) + ", column " + column;
  }
  std::string where() const { return "line " + std::to_string(row_.line); }

 private:
  const CsvRow& row_;
  const std::map<std::string, std::size_t>& columns_;
};

}  // namespace baywright::detail
