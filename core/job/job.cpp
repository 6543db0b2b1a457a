// SPDX-License-Identifier: Apache-2.0
#include "job/job.h"

#include <algorithm>

namespace baywright {

const Option& Job::option() const {
  const auto found =
      std::find_if(options.begin(), options.end(), [&](const Option& o) { return o.id == activeOption; });
  return found == options.end() ? options.front() : *found;
}

Option& Job::option() {
  return const_cast<Option&>(static_cast<const Job&>(*this).option());
}

Job newJob() {
  Job job;
  Option option;
  option.id = job.takeId();
  option.name = "Option 1";
  option.kit.frame.id = job.takeId();
  option.kit.frame.name = "Frame";
  option.kit.screen.id = job.takeId();
  option.kit.screen.name = "Screen";
  option.kit.mat.id = job.takeId();
  option.kit.mat.name = "Mat";
  option.kit.monitor.id = job.takeId();
  option.kit.monitor.name = "Launch monitor";
  option.kit.projector.id = job.takeId();
  option.kit.projector.name = "Projector";
  // A picture that fits the screen: 16:9, thrown from 3.6 m, hung so that its middle is the screen's.
  option.kit.screen.width = 3.0;
  option.kit.screen.height = 1.68;
  option.kit.screen.bottom = 0.55;
  option.placement.projector.throwRatio = 1.18;
  option.placement.projector.lens = Vec3(-3.6, 0, 2.25);
  job.activeOption = option.id;
  job.options.push_back(option);
  return job;
}

}  // namespace baywright
