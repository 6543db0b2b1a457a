// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>
#include <vector>

namespace baywright {

/// Files that somebody brings from a room, other than jobs and pictures of plans.
enum class SurveyKind { List, Drawing, Scan };

/// What such a name ends in, "dxf" and so on, for open dialogs and messages.
std::vector<std::string_view> surveySuffixes();

/// Upper and lower case are one.
bool hasSurveySuffix(std::string_view fileName);

/// For a name that hasSurveySuffix(). Endings that lists and clouds of points share are told by the first
/// rows.
SurveyKind surveyKindOf(std::string_view fileName, std::string_view bytes);

}  // namespace baywright
