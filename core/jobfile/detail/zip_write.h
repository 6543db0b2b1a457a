// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"

namespace baywright::detail {

enum class Packing { Stored, Deflated };

/// A member to be written. `bytes` must live until the archive is made.
struct NewMember {
  std::string name;
  std::string_view bytes;
  Packing packing = Packing::Stored;
};

/// A zip archive of the members in this order, dated 1980 so that the same members give the same bytes.
/// Internal to `jobfile`.
Result<std::string> writeZip(const std::vector<NewMember>& members);

}  // namespace baywright::detail
