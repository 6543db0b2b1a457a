// SPDX-License-Identifier: Apache-2.0
#include "jobfile/catalogue_json.h"

#include <algorithm>
#include <vector>

#include "job/fields.h"
#include "job/validate.h"
#include "jobfile/atomic_file.h"
#include "jobfile/detail/json_parse.h"
#include "jobfile/detail/json_read.h"
#include "jobfile/job_json.h"

namespace baywright {

template <class Visit>
void visitFields(Visit&& visit, ConstOrNot<Catalogue> auto& catalogue) {
  visit("frames", catalogue.frames);
  visit("screens", catalogue.screens);
  visit("mats", catalogue.mats);
  visit("monitors", catalogue.monitors);
  visit("projectors", catalogue.projectors);
  visit("clubs", catalogue.clubs);
  visit("fixtures", catalogue.fixtures);
  visit("openings", catalogue.openings);
}

namespace {

template <class T>
void append(std::vector<T>& list, const std::vector<T>& more) {
  list.insert(list.end(), more.begin(), more.end());
}

/// Puts an entry where it belongs in a job that is valid without it, and asks what validate() says.
Result<void> checked(Job job) {
  const std::vector<Problem> problems = validate(job);
  if (!problems.empty()) return tl::unexpected(problems.front());
  return {};
}

Result<void> checkKit(const Catalogue& catalogue) {
  const auto with = [](auto Kit::*part, auto entry) {
    Job job = newJob();
    entry.id = (job.option().kit.*part).id;
    job.option().kit.*part = entry;
    return checked(std::move(job));
  };
  Result<void> result;
  const auto all = [&](const auto& list, auto Kit::*part) {
    for (const auto& entry : list)
      if (result) result = with(part, entry);
  };
  all(catalogue.frames, &Kit::frame);
  all(catalogue.screens, &Kit::screen);
  all(catalogue.mats, &Kit::mat);
  all(catalogue.monitors, &Kit::monitor);
  all(catalogue.projectors, &Kit::projector);
  return result;
}

/// A floor of 20 m x 20 m that holds whatever a room may have.
Job emptyHall() {
  Job job = newJob();
  const std::vector<Vec2> corners = {{0, 0}, {20, 0}, {20, 20}, {0, 20}};
  for (const Vec2& corner : corners) {
    Wall wall;
    wall.id = job.takeId();
    wall.start = corner;
    job.room.walls.push_back(wall);
  }
  CeilingPart ceiling;
  ceiling.id = job.takeId();
  job.room.ceiling.push_back(ceiling);
  return job;
}

Result<void> checkRoomParts(const Catalogue& catalogue) {
  Job job = emptyHall();
  for (Fixture fixture : catalogue.fixtures) {
    fixture.id = job.takeId();
    job.room.fixtures.push_back(fixture);
  }
  Golfer golfer;
  golfer.id = job.takeId();
  for (Club club : catalogue.clubs) {
    club.id = job.takeId();
    golfer.clubs.push_back(club);
  }
  job.golfers.push_back(golfer);
  Result<void> result = checked(job);
  for (Opening opening : catalogue.openings) {
    if (!result) break;
    opening.id = job.takeId();
    opening.wall = job.room.walls.front().id;
    job.room.openings = {opening};
    result = checked(job);
  }
  return result;
}

}  // namespace

Result<Catalogue> catalogueFromJson(std::string_view text) {
  auto root = detail::parseJson(text);
  if (!root) return tl::unexpected(root.error());
  Catalogue catalogue;
  detail::JsonReader reader;
  reader.read(*root, catalogue);
  if (reader.problem()) return tl::unexpected(*reader.problem());
  for (const std::string& name : reader.unknown())
    if (name != "note" && name != "made_up") return fail("There is no list called \"" + name + "\".");
  return checkKit(catalogue).and_then([&] { return checkRoomParts(catalogue); }).map([&] {
    return catalogue;
  });
}

Result<Catalogue> loadCatalogue(const std::filesystem::path& folder) {
  std::error_code error;
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder, error))
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  if (error) return fail("The catalogue cannot be read: " + error.message() + ".", folder.string());
  std::sort(files.begin(), files.end());

  Catalogue all;
  for (const std::filesystem::path& file : files) {
    const auto part = readWholeFile(file, kMostJsonBytes).and_then(catalogueFromJson);
    if (!part) {
      Problem problem = part.error();
      problem.where = file.filename().string() + (problem.where.empty() ? "" : " / " + problem.where);
      return tl::unexpected(std::move(problem));
    }
    append(all.frames, part->frames);
    append(all.screens, part->screens);
    append(all.mats, part->mats);
    append(all.monitors, part->monitors);
    append(all.projectors, part->projectors);
    append(all.clubs, part->clubs);
    append(all.fixtures, part->fixtures);
    append(all.openings, part->openings);
  }
  return all;
}

}  // namespace baywright
