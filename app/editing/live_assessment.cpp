// SPDX-License-Identifier: Apache-2.0
#include "editing/live_assessment.h"

namespace baywright {

LiveAssessment::LiveAssessment(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          // A drag must see every job it reaches, or findings would stand still while the pointer moves: an
          // assessment is finished even when a newer job waits.
          [this](const Job& job, const Progress&) {
            return std::make_shared<const Assessment>(assessor_.assess(job));
          },
          [this](std::shared_ptr<const Assessment> result) { Q_EMIT assessed(std::move(result)); }) {}

}  // namespace baywright
