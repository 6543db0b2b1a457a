// SPDX-License-Identifier: Apache-2.0
#include "window/survey_kind.h"

#include <QFileInfo>
#include <algorithm>

#include "exchange/mesh_read.h"
#include "exchange/xyz_lines.h"
#include "survey/measuring_list.h"

namespace baywright {
namespace {

std::string_view withoutRemarks(std::string_view text) {
  while (text.starts_with('#')) text.remove_prefix(std::min(text.find('\n'), text.size() - 1) + 1);
  return text;
}

bool beginsWithPoints(std::string_view bytes) {
  const std::string_view text = withoutRemarks(bytes);
  const std::string_view line = text.substr(0, text.find_first_of("\r\n"));
  return styleOf(line) || namedColumns(line);
}

}  // namespace

QStringList surveyPatterns() {
  QStringList patterns{QStringLiteral("*.dxf"), QStringLiteral("*.tsv")};
  for (const std::string_view suffix : kScanSuffixes)
    patterns << QStringLiteral("*.") +
                    QString::fromLatin1(suffix.data(), static_cast<qsizetype>(suffix.size()));
  return patterns;
}

bool hasSurveyName(const QString& path) {
  return surveyPatterns().contains(QStringLiteral("*.") + QFileInfo(path).suffix().toLower());
}

SurveyKind surveyKindOf(const QString& path, std::string_view bytes) {
  const QString suffix = QFileInfo(path).suffix().toLower();
  if (suffix == QLatin1String("dxf")) return SurveyKind::Drawing;
  if (suffix == QLatin1String("tsv")) return SurveyKind::List;
  const bool isText = suffix == QLatin1String("csv") || suffix == QLatin1String("txt");
  if (isText && looksLikeMeasuringList(bytes)) return SurveyKind::List;
  if (suffix == QLatin1String("csv") && !beginsWithPoints(bytes)) return SurveyKind::List;
  return SurveyKind::Scan;
}

}  // namespace baywright
