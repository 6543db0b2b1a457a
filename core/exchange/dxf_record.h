// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "exchange/dxf_tags.h"
#include "geometry/vec.h"

namespace baywright::detail {

/// All that a DXF file says in one go: a "0" tag and what follows up to the next one. Sections, tables,
/// layers, blocks and entities all are records.
struct DxfRecord {
  std::string_view kind;
  std::vector<DxfTag> tags;
  bool damaged = false;  ///< lines of it could not be read
  std::size_t line = 0;
};

class DxfRecordReader {
 public:
  explicit DxfRecordReader(std::string_view bytes) : tags_(bytes), ahead_(tags_.next()) {}

  /// Reads the next record into `record`, whose storage is used again; false at the end of the file.
  bool next(DxfRecord& record);
  const DxfTagReader& tags() const { return tags_; }

 private:
  DxfTagReader tags_;
  std::optional<DxfTag> ahead_;
};

/// Looks values up in a record. Of a code that occurs more than once the first counts. Once a number cannot
/// be read, bad() stays true.
class DxfFields {
 public:
  explicit DxfFields(const DxfRecord& record) : record_(record), bad_(record.damaged) {}

  bool has(int code) const { return find(code) != nullptr; }
  std::string_view text(int code) const;
  double number(int code, double otherwise = 0);
  int integer(int code, int otherwise = 0);
  bool flag(int code, int bit) { return (integer(code) & bit) != 0; }
  /// The point whose x has this code, y ten more and z twenty more; what is missing is zero.
  Vec3 point(int code) { return {number(code), number(code + 10), number(code + 20)}; }
  /// (0, 0, 1) unless the record says otherwise.
  Vec3 extrusion();

  /// A code without which there is no such thing.
  void need(int code) { bad_ = bad_ || !has(code); }
  void refuse() { bad_ = true; }
  bool bad() const { return bad_; }
  const DxfRecord& record() const { return record_; }

  /// A value of a tag taken in order.
  double numberOf(const DxfTag& tag);

 private:
  const DxfTag* find(int code) const;

  const DxfRecord& record_;
  bool bad_ = false;
};

}  // namespace baywright::detail
