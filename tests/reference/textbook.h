// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "clearance/assess.h"
#include "jobfile/job_json.h"
#include "support/job_builder.h"

namespace baywright::reference {

/// A problem as somebody hands it in: a job's text, read and assessed, answered in figures and findings.
class Textbook {
 public:
  explicit Textbook(const testing::JobBuilder& builder) : Textbook(builder.uncheckedJob()) {}
  explicit Textbook(const Job& made) {
    const auto read = jobFromJson(jobToJson(made));
    if (!read) ADD_FAILURE() << read.error().sentence();
    job = read ? *read : made;
    assessment = assess(job);
  }

  double operator[](const std::string& figure) const {
    for (const Quantity& quantity : assessment.quantities) {
      if (quantity.name == figure) return quantity.value;
    }
    ADD_FAILURE() << "No figure " << figure;
    return 0;
  }
  Finding finding(const std::string& key) const {
    if (const Finding* found = assessment.find(key)) return *found;
    ADD_FAILURE() << "No finding " << key;
    return {};
  }
  /// Of the first golfer with the first club: "ceiling.margin".
  double swing(const std::string& figure) const {
    const Golfer& golfer = job.golfers[0];
    return (*this)["swing." + std::to_string(golfer.id.value) + "." +
                   std::to_string(golfer.clubs[0].id.value) + "." + figure];
  }
  std::string opening(std::size_t index) const { return std::to_string(job.room.openings[index].id.value); }

  Job job;
  Assessment assessment;
};

}  // namespace baywright::reference
