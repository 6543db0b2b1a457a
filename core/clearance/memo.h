// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <utility>

namespace baywright {

/// The last answer of a pure function, for as long as its inputs stay equal.
template <class Inputs, class Answer>
class Memo {
 public:
  /// `make()` must depend on `inputs` alone.
  template <class Make>
  const Answer& get(const Inputs& inputs, const Make& make) {
    if (!kept_ || !(kept_->first == inputs)) kept_.emplace(inputs, make());
    return kept_->second;
  }

 private:
  std::optional<std::pair<Inputs, Answer>> kept_;
};

}  // namespace baywright
