// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <QStringList>
#include <string_view>

namespace baywright {

/// Files that somebody brings from a room, other than jobs and pictures of plans.
enum class SurveyKind { List, Drawing, Scan };

/// What such a name ends in, as "*.dxf", for open dialogs.
QStringList surveyPatterns();
bool hasSurveyName(const QString& path);
/// For a name that hasSurveyName(). Endings that lists and clouds of points share are told by the first rows.
SurveyKind surveyKindOf(const QString& path, std::string_view bytes);

}  // namespace baywright
