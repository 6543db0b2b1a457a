// SPDX-License-Identifier: Apache-2.0
#include "job/edit_kit.h"

#include <algorithm>

#include "job/detail/editing.h"

namespace baywright {
namespace {

template <class Part>
void replacePart(Part& old, Part part) {
  part.id = old.id;
  if (part.name.empty()) part.name = old.name;
  old = std::move(part);
}

}  // namespace

Result<Job> setFrame(Job job, const Frame& frame) {
  return detail::withActiveOption(std::move(job),
                                  [&](Option& option) { replacePart(option.kit.frame, frame); });
}

Result<Job> setScreen(Job job, const Screen& screen) {
  return detail::withActiveOption(std::move(job),
                                  [&](Option& option) { replacePart(option.kit.screen, screen); });
}

Result<Job> setMat(Job job, const Mat& mat) {
  return detail::withActiveOption(std::move(job), [&](Option& option) { replacePart(option.kit.mat, mat); });
}

Result<Job> setMonitor(Job job, const LaunchMonitor& monitor) {
  return detail::withActiveOption(std::move(job), [&](Option& option) {
    replacePart(option.kit.monitor, monitor);
    option.kit.hasMonitor = true;
  });
}

Result<Job> setProjector(Job job, const Projector& projector) {
  return detail::withActiveOption(std::move(job), [&](Option& option) {
    replacePart(option.kit.projector, projector);
    option.kit.hasProjector = true;
    double& zoom = option.placement.projector.throwRatio;
    if (projector.throwMin <= projector.throwMax)
      zoom = std::clamp(zoom, projector.throwMin, projector.throwMax);
  });
}

Result<Job> setKit(Job job, const Kit& kit) {
  return detail::withActiveOption(std::move(job), [&](Option& option) {
    replacePart(option.kit.frame, kit.frame);
    replacePart(option.kit.screen, kit.screen);
    replacePart(option.kit.mat, kit.mat);
    replacePart(option.kit.monitor, kit.monitor);
    replacePart(option.kit.projector, kit.projector);
    option.kit.hasMonitor = kit.hasMonitor;
    option.kit.hasProjector = kit.hasProjector;
  });
}

}  // namespace baywright
