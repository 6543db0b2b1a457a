// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/id.h"
#include "job/golfer.h"
#include "job/measurement.h"
#include "job/placement.h"
#include "job/requirements.h"
#include "job/room.h"
#include "job/scan.h"
#include "units/unit_system.h"

namespace baywright {

/// What stands in the title block (fields of ISO 7200).
struct ProjectInfo {
  std::string title;
  std::string customer;
  std::string site;
  std::string owner;  ///< legal owner of the drawing: the fitting firm
  std::string number;
  std::string revision;
  std::string date;  ///< ISO 8601
  std::string creator;
  std::string approver;

  bool operator==(const ProjectInfo&) const = default;
};

/// A member of a job file that this version does not know: kept and written again, never read.
struct UnknownField {
  std::string name;
  std::string json;

  bool operator==(const UnknownField&) const = default;
};

/// The document: one room, its people, the kit and where it goes. A plain value: every edit makes a new one,
/// comparing two tells whether anything differs. What it must satisfy is checked by validate(); a Job that
/// passed may be given to assess().
struct Job {
  std::uint32_t lastId = 0;
  ProjectInfo info;
  UnitSystem units;
  Room room;
  std::vector<Golfer> golfers;
  std::vector<Bystander> bystanders;
  std::vector<Option> options;  ///< never empty in a valid job
  Id activeOption;
  Requirements requirements;
  std::vector<Measurement> measurements;
  std::vector<PlanScan> planScans;
  std::vector<RoomScan> roomScans;
  std::vector<Original> originals;
  std::vector<UnknownField> unknownFields;

  bool operator==(const Job&) const = default;

  Id takeId() { return Id{++lastId}; }
  /// The option that is assessed and drawn; the first one when `activeOption` names none. The job must have
  /// one.
  const Option& option() const;
  Option& option();
};

/// A job with no room, no people, and one option with a middling set of kit: all of it the
/// defaults of its structs.
Job newJob();

/// The same with kit that goes together, where every new document starts: a 16:10 screen and a short-throw projector
/// that hangs before the golfer and fills it. Made-up sizes, for the fitter to replace.
Job starterJob();

}  // namespace baywright
