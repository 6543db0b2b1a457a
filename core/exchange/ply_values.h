// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <bit>
#include <cstring>
#include <string_view>

#include "exchange/mesh_numbers.h"
#include "exchange/ply_header.h"

namespace baywright {

/// The numbers of a PLY file's body, one after another. Once there is none left, or text that is no number,
/// `ok` is false and stays so, and every further number is 0.
class PlyValues {
 public:
  PlyValues(std::string_view body, PlyHeader::Encoding encoding)
      : body_(body),
        isText_(encoding == PlyHeader::Encoding::Text),
        isSwapped_((encoding == PlyHeader::Encoding::BigEndian) ==
                   (std::endian::native == std::endian::little)) {}

  bool ok() const { return ok_; }
  std::size_t left() const { return body_.size() - at_; }

  double next(PlyType type) {
    if (isText_) return nextWord();
    switch (type) {
      case PlyType::Int8:
        return taken<std::int8_t>();
      case PlyType::UInt8:
        return taken<std::uint8_t>();
      case PlyType::Int16:
        return taken<std::int16_t>();
      case PlyType::UInt16:
        return taken<std::uint16_t>();
      case PlyType::Int32:
        return taken<std::int32_t>();
      case PlyType::UInt32:
        return taken<std::uint32_t>();
      case PlyType::Float32:
        return static_cast<double>(taken<float>());
      case PlyType::Float64:
        break;
    }
    return taken<double>();
  }

 private:
  template <class T>
  T taken() {
    if (left() < sizeof(T)) {
      ok_ = false;
      at_ = body_.size();
      return T{};
    }
    char raw[sizeof(T)];
    std::memcpy(raw, body_.data() + at_, sizeof(T));
    at_ += sizeof(T);
    if (isSwapped_) std::reverse(raw, raw + sizeof(T));
    T value;
    std::memcpy(&value, raw, sizeof(T));
    return value;
  }

  double nextWord() {
    const auto isGap = [](char c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t'; };
    while (at_ < body_.size() && isGap(body_[at_])) ++at_;
    const auto number = leadingNumber(body_.substr(at_));
    if (!number) {
      ok_ = false;
      return 0;
    }
    at_ += number->length;
    return number->value;
  }

  std::string_view body_;
  std::size_t at_ = 0;
  bool isText_ = false;
  bool isSwapped_ = false;
  bool ok_ = true;
};

}  // namespace baywright
