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
  job.activeOption = option.id;
  job.options.push_back(option);
  return job;
}

Job starterJob() {
  Job job = newJob();
  Kit& kit = job.option().kit;
  kit.screen.width = 3.0;
  kit.screen.height = 1.875;
  kit.screen.bottom = 0.2;
  kit.projector.panelHeight = 1200;
  kit.projector.throwMin = 0.75;
  kit.projector.throwMax = 0.95;
  kit.projector.offset = 0.65;
  ProjectorMount& mount = job.option().placement.projector;
  mount.throwRatio = 0.8;
  mount.lens = Vec3(-2.45, 0, 2.38);
  return job;
}

}  // namespace baywright
