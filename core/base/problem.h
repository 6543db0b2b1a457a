// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace baywright {

/// Something that could not be done, told to the person who asked for it.
/// `what` is a whole sentence that names the thing and the number. `where` is a place in the input ("line 12",
/// "people / Robin / stature", "character 4"), empty when `what` already says it. `next` is a whole sentence
/// that says how to go on, empty when that is obvious.
struct Problem {
  std::string what;
  std::string where;
  std::string next;

  bool operator==(const Problem&) const = default;

  /// One line for a dialog or for stderr.
  std::string sentence() const {
    std::string text = where.empty() ? what : where + ": " + what;
    if (!next.empty()) text += " " + next;
    return text;
  }
};

/// A value, or the reason why there is none. No exception leaves a public function of `core`.
template <class T>
using Result = tl::expected<T, Problem>;

/// `return fail("The wall has no length.", "walls / B", "Give it at least 1 mm.");`
inline tl::unexpected<Problem> fail(std::string what, std::string where = {}, std::string next = {}) {
  return tl::unexpected<Problem>(Problem{std::move(what), std::move(where), std::move(next)});
}

}  // namespace baywright
