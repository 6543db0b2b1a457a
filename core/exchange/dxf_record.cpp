// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_record.h"

namespace baywright::detail {

namespace {

// From here on a record carries a second thing with codes of its own.
constexpr int kEmbeddedObject = 101;
constexpr int kComment = 999;
// Values for other programs; none of them is ours.
constexpr int kFirstExtendedCode = 1000;

}  // namespace

bool DxfRecordReader::next(DxfRecord& record) {
  record.tags.clear();
  record.kind = {};
  record.damaged = false;
  // What stands before the first record, or after damage, belongs to none.
  while (ahead_ && ahead_->code != 0) ahead_ = tags_.next();
  if (!ahead_) return false;
  record.kind = trimmed(ahead_->value);
  record.line = tags_.line();
  bool embedded = false;
  for (ahead_ = tags_.next(); ahead_ && ahead_->code != 0; ahead_ = tags_.next()) {
    if (ahead_->code == kDamageCode) record.damaged = true;
    if (ahead_->code == kEmbeddedObject) embedded = true;
    if (!embedded && ahead_->code >= 0 && ahead_->code < kFirstExtendedCode && ahead_->code != kComment)
      record.tags.push_back(*ahead_);
  }
  return true;
}

const DxfTag* DxfFields::find(int code) const {
  for (const DxfTag& tag : record_.tags)
    if (tag.code == code) return &tag;
  return nullptr;
}

std::string_view DxfFields::text(int code) const {
  const DxfTag* tag = find(code);
  return tag ? tag->value : std::string_view();
}

double DxfFields::numberOf(const DxfTag& tag) {
  const std::optional<double> number = dxfNumber(tag.value);
  if (!number) bad_ = true;
  return number.value_or(0);
}

double DxfFields::number(int code, double otherwise) {
  const DxfTag* tag = find(code);
  return tag ? numberOf(*tag) : otherwise;
}

int DxfFields::integer(int code, int otherwise) {
  const DxfTag* tag = find(code);
  if (!tag) return otherwise;
  const std::optional<int> number = dxfInteger(tag->value);
  if (!number) bad_ = true;
  return number.value_or(otherwise);
}

Vec3 DxfFields::extrusion() {
  if (!has(210) && !has(220) && !has(230)) return Vec3::UnitZ();
  const Vec3 direction = point(210);
  return direction.isZero() ? Vec3::UnitZ() : direction;
}

}  // namespace baywright::detail
