// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>

namespace baywright {

/// Identity of one thing in a job: a wall, a door, a golfer, the frame. It survives edits, undo and saving, and is
/// unique over all kinds of things in the job, so that a selection or a finding can name any of them.
/// Zero names nothing. Ids are handed out by Job::takeId and never used twice in one job.
struct Id {
  std::uint32_t value = 0;

  auto operator<=>(const Id&) const = default;
  explicit operator bool() const { return value != 0; }
};

}  // namespace baywright

template <>
struct std::hash<baywright::Id> {
  std::size_t operator()(baywright::Id id) const noexcept { return std::hash<std::uint32_t>{}(id.value); }
};
