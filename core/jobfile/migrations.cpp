// SPDX-License-Identifier: Apache-2.0
#include "jobfile/migrations.h"

namespace baywright {

std::span<const Migration> migrations() {
  return {};
}

}  // namespace baywright
