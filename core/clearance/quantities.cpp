// SPDX-License-Identifier: Apache-2.0
#include "clearance/quantities.h"

namespace baywright {

std::string figureName(std::initializer_list<std::string_view> parts) {
  std::string name;
  for (const std::string_view part : parts) {
    if (!name.empty()) name += '.';
    name += part;
  }
  return name;
}

std::string idText(Id id) {
  return std::to_string(id.value);
}

}  // namespace baywright
