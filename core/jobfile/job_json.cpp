// SPDX-License-Identifier: Apache-2.0
#include "jobfile/job_json.h"

#include <algorithm>
#include <limits>

#include "job/validate.h"
#include "jobfile/detail/json_parse.h"
#include "jobfile/detail/json_read.h"
#include "jobfile/detail/json_write.h"
#include "jobfile/migrations.h"

namespace baywright {
namespace {

using detail::JsonReader;
using detail::OrderedJson;
using nlohmann::json;

constexpr const char* kFormatName = "bayjob";

/// Walks all ids of things, not those that only refer to one.
template <class Visit>
void visitIds(Visit& visit, Id& id, std::string_view name) {
  if (name == "id") visit(id);
}
template <class Visit, class T>
void visitIds(Visit& visit, std::vector<T>& list, std::string_view) {
  if constexpr (HasFields<T>)
    for (T& thing : list) visitIds(visit, thing, {});
}
template <class Visit, HasFields T>
void visitIds(Visit& visit, T& thing, std::string_view) {
  visitFields(
      [&](std::string_view name, auto& field) {
        if constexpr (requires { visitIds(visit, field, name); }) visitIds(visit, field, name);
      },
      thing);
}

/// Things without an id get the next free ones, in the order of the document. Where the text contradicts
/// itself about ids, or they run out, it is left to validate() to say so.
void giveIds(Job& job) {
  std::uint32_t largest = 0;
  const auto look = [&](Id& id) { largest = std::max(largest, id.value); };
  visitIds(look, job, {});
  if (job.lastId == 0) job.lastId = largest;
  if (job.lastId < largest) return;
  const auto give = [&](Id& id) {
    if (!id && job.lastId < std::numeric_limits<std::uint32_t>::max()) id = job.takeId();
  };
  visitIds(give, job, {});
}

/// A room whose text says nothing of a ceiling has one that nobody measured yet.
void giveCeiling(Room& room) {
  if (room.walls.empty() || !room.ceiling.empty()) return;
  CeilingPart part;
  part.name = "Ceiling";
  part.height = notMeasured(part.height.value);
  room.ceiling.push_back(part);
}

/// The version that the text says it has, if it is a job at all.
Result<int> versionOf(const json& root) {
  if (!root.is_object()) return fail("The description is no job: it must be an object.");
  const auto format = root.find("format");
  if (format == root.end() || !format->is_object() || format->value("name", json()) != kFormatName)
    return fail(std::string("The description is no job: its format's name must be \"") + kFormatName + "\".",
                "format / name");
  const auto version = format->find("version");
  if (version == format->end() || !version->is_number_unsigned() || *version == 0)
    return fail("The version must be a whole number from 1.", "format / version");
  if (version->get<std::uint64_t>() > std::uint64_t{kFormatVersion})
    return fail("The job was written by a later version of Baywright: its format is version " +
                    version->dump() + ", this one knows up to " + std::to_string(kFormatVersion) + ".",
                {}, "Open it with that version.");
  return version->get<int>();
}

}  // namespace

std::string jobToJson(const Job& job) {
  OrderedJson root;
  root["format"] = {{"name", kFormatName}, {"version", kFormatVersion}};
  root.update(detail::toJson(job));
  for (const UnknownField& field : job.unknownFields)
    root[field.name] = OrderedJson::parse(field.json, nullptr, false);
  return root.dump(2, ' ', false, OrderedJson::error_handler_t::replace) + "\n";
}

Result<Job> jobFromJson(std::string_view text) {
  auto root = detail::parseJson(text);
  if (!root) return tl::unexpected(root.error());
  const auto version = versionOf(*root);
  if (!version) return tl::unexpected(version.error());
  for (const Migration& step : migrations())
    if (step.fromVersion >= *version) step.apply(*root);
  root->erase("format");

  Job job;
  JsonReader reader;
  reader.read(*root, job);
  if (reader.problem()) return tl::unexpected(*reader.problem());
  for (const std::string& name : reader.unknown()) job.unknownFields.push_back({name, (*root)[name].dump()});
  giveCeiling(job.room);
  giveIds(job);
  if (!job.activeOption && !job.options.empty()) job.activeOption = job.options.front().id;
  return validated(std::move(job));
}

}  // namespace baywright
