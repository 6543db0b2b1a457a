// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheets.h"

#include <array>
#include <string>

namespace baywright {
namespace detail {

// measuring_sheet.cpp
Result<std::vector<SheetPage>> makeMeasuringSheet(const SheetInput& input);
// plan_sheet.cpp
Result<std::vector<SheetPage>> makePlanSheet(const SheetInput& input);
// walls_sheet.cpp
Result<std::vector<SheetPage>> makeWallsSheet(const SheetInput& input);

}  // namespace detail

std::span<const SheetKind> sheetKinds() {
  static constexpr std::array kinds = {
      SheetKind{"plan", "Plan for sign-off", detail::makePlanSheet},
      SheetKind{"measuring", "Measuring list for the site", detail::makeMeasuringSheet},
      SheetKind{"walls", "Every wall from inside", detail::makeWallsSheet},
  };
  return kinds;
}

Result<std::vector<SheetPage>> makeSheet(std::string_view name, const Job& job, const Assessment& assessment,
                                         const SheetRequest& request) {
  std::string names;
  for (const SheetKind& kind : sheetKinds()) {
    if (kind.name == name) return kind.make({job, assessment, request});
    names += (names.empty() ? "" : ", ") + std::string(kind.name);
  }
  return fail("There is no sheet called \"" + std::string(name) + "\".", {}, "Choose one of: " + names + ".");
}

}  // namespace baywright
