// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "geometry/vec.h"

namespace baywright::detail {

/// Writes pairs of group code and value, and numbers things as it goes.
class DxfTagWriter {
 public:
  void tag(int code, std::string_view value);
  void tag(int code, const char* value) { tag(code, std::string_view(value)); }
  void tag(int code, int value);
  void tag(int code, double value);
  /// Codes of x, and of y ten above.
  void point(int code, const Vec2& point);
  /// UTF-8 as ASCII with \U+XXXX; line breaks become spaces.
  void text(int code, std::string_view utf8);
  void section(std::string_view name);
  void endSection() { tag(0, "ENDSEC"); }

  /// A fresh handle, in the hexadecimal digits that files use.
  std::string handle();

  std::string take() && { return std::move(out_); }

 private:
  std::string out_;
  unsigned last_ = 0x0F;
};

}  // namespace baywright::detail
