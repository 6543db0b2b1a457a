// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <span>

namespace baywright {

/// The version that is written. A reader knows it and every earlier one.
inline constexpr int kFormatVersion = 1;

/// Turns the description of a job of one version into that of the next.
struct Migration {
  int fromVersion;
  void (*apply)(nlohmann::json& job);
};

/// All steps, in order, one file each (migrate_1_to_2.cpp). None yet: there has been one version.
std::span<const Migration> migrations();

}  // namespace baywright
