// SPDX-License-Identifier: Apache-2.0
#include "exchange/survey_kind.h"

#include <algorithm>
#include <string>

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

std::vector<std::string_view> surveySuffixes() {
  std::vector<std::string_view> suffixes{"dxf", "tsv"};
  suffixes.insert(suffixes.end(), std::begin(kScanSuffixes), std::end(kScanSuffixes));
  return suffixes;
}

bool hasSurveySuffix(std::string_view fileName) {
  const auto suffixes = surveySuffixes();
  return std::ranges::find(suffixes, suffixOf(fileName)) != suffixes.end();
}

SurveyKind surveyKindOf(std::string_view fileName, std::string_view bytes) {
  const std::string suffix = suffixOf(fileName);
  if (suffix == "dxf") return SurveyKind::Drawing;
  if (suffix == "tsv") return SurveyKind::List;
  const bool isText = suffix == "csv" || suffix == "txt";
  if (isText && looksLikeMeasuringList(bytes)) return SurveyKind::List;
  if (suffix == "csv" && !beginsWithPoints(bytes)) return SurveyKind::List;
  return SurveyKind::Scan;
}

}  // namespace baywright
