// SPDX-License-Identifier: Apache-2.0
#include "cli/findings_json.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "clearance/standing_area.h"
#include "fit/smallest_change.h"

namespace baywright {
namespace {

using nlohmann::ordered_json;

constexpr int kVersion = 1;

std::string_view unitName(MarginUnit unit) {
  switch (unit) {
    case MarginUnit::Length:
      return "m";
    case MarginUnit::Share:
      return "share";
    case MarginUnit::Angle:
      return "rad";
    case MarginUnit::Speed:
      return "m/s";
    case MarginUnit::Ratio:
      break;
  }
  return "1";
}

ordered_json pointJson(const Vec3& p) {
  return {p.x(), p.y(), p.z()};
}

ordered_json findingJson(const Finding& finding) {
  ordered_json json;
  json["check"] = finding.check;
  json["key"] = finding.key;
  json["subject"] = finding.subject;
  json["subjects"] = ordered_json::array();
  for (const Id id : finding.subjects) json["subjects"].push_back(id.value);
  json["verdict"] = verdictName(finding.verdict);
  const bool isLength = finding.margin && finding.unit == MarginUnit::Length;
  json["margin_m"] = isLength ? ordered_json(finding.margin->value) : ordered_json(nullptr);
  json["sigma_m"] = isLength ? ordered_json(finding.margin->sigma) : ordered_json(nullptr);
  json["margin"] = finding.margin ? ordered_json(finding.margin->value) : ordered_json(nullptr);
  json["sigma"] = finding.margin ? ordered_json(finding.margin->sigma) : ordered_json(nullptr);
  json["margin_unit"] = unitName(finding.unit);
  json["points"] = ordered_json::array();
  if (finding.points) json["points"] = {pointJson(finding.points->first), pointJson(finding.points->second)};
  json["moment"] = finding.moment ? ordered_json(*finding.moment) : ordered_json(nullptr);
  json["sentence"] = finding.sentence;
  json["source"] = finding.source;
  return json;
}

}  // namespace

std::string_view verdictName(Verdict verdict) {
  switch (verdict) {
    case Verdict::Clear:
      return "clear";
    case Verdict::Tight:
      return "tight";
    case Verdict::Blocked:
      return "blocked";
    case Verdict::Unknown:
      break;
  }
  return "unknown";
}

std::vector<std::string> changeSentences(const Job& job, const Finding& finding) {
  std::vector<std::string> sentences;
  if (const auto changes = smallestChanges(job, finding.key, {}))
    for (const Change& change : *changes) sentences.push_back(change.sentence);
  return sentences;
}

std::string findingsJson(const Job& job, const Assessment& assessment, Changes changes) {
  ordered_json json;
  json["format"] = {{"name", "baywright-findings"}, {"version", kVersion}};
  json["job"] = {{"title", job.info.title}, {"option", job.option().name}};
  json["counts"] = ordered_json::object();
  for (const Verdict verdict : {Verdict::Blocked, Verdict::Tight, Verdict::Unknown, Verdict::Clear}) {
    json["counts"][std::string(verdictName(verdict))] = assessment.count(verdict);
  }
  json["findings"] = ordered_json::array();
  for (const Finding& finding : assessment.findings) {
    json["findings"].push_back(findingJson(finding));
    if (changes == Changes::Smallest) json["findings"].back()["changes"] = changeSentences(job, finding);
  }
  json["quantities"] = ordered_json::array();
  std::vector<Quantity> quantities = assessment.quantities;
  std::ranges::move(standingAreas(job), std::back_inserter(quantities));
  std::ranges::sort(quantities, {}, &Quantity::name);
  for (const Quantity& quantity : quantities) {
    json["quantities"].push_back(
        {{"name", quantity.name}, {"value", quantity.value}, {"unit", quantity.unit}});
  }
  return json.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace baywright
