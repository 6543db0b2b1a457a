// SPDX-License-Identifier: Apache-2.0
#include <QCoreApplication>

#include "job/edit.h"
#include "panels/field_list.h"

namespace baywright {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("JobFields", text);
}

}  // namespace

std::vector<Field> titleFields() {
  return FieldList<ProjectInfo>(
             [](const Job& job) { return &job.info; },
             [](Job job, const ProjectInfo& info) { return setInfo(std::move(job), info); })
      .add(
          FieldKind::Words, tr("Title"), [](auto& i) -> auto& { return i.title; })
      .add(
          FieldKind::Words, tr("Customer"), [](auto& i) -> auto& { return i.customer; })
      .add(
          FieldKind::Words, tr("Site"), [](auto& i) -> auto& { return i.site; })
      .add(
          FieldKind::Words, tr("Owner of the drawing"), [](auto& i) -> auto& { return i.owner; })
      .add(
          FieldKind::Words, tr("Number"), [](auto& i) -> auto& { return i.number; })
      .add(
          FieldKind::Words, tr("Revision"), [](auto& i) -> auto& { return i.revision; })
      .add(
          FieldKind::Words, tr("Date"), [](auto& i) -> auto& { return i.date; }, tr("As 2026-11-25."))
      .add(
          FieldKind::Words, tr("Drawn by"), [](auto& i) -> auto& { return i.creator; })
      .add(
          FieldKind::Words, tr("Approved by"), [](auto& i) -> auto& { return i.approver; })
      .take();
}

std::vector<Field> requirementFields() {
  const QString common = tr("Common practice, no source.");
  return FieldList<Requirements>(
             [](const Job& job) { return &job.requirements; },
             [](Job job, const Requirements& r) { return setRequirements(std::move(job), r); })
      .group(tr("Clearances"))
      .add(
          FieldKind::Length, tr("Around a swing"), [](auto& r) -> auto& { return r.swingClearance; }, common)
      .add(
          FieldKind::Length, tr("Above the frame"), [](auto& r) -> auto& { return r.frameAbove; }, common)
      .add(
          FieldKind::Length, tr("Beside the frame"), [](auto& r) -> auto& { return r.frameBeside; }, common)
      .add(
          FieldKind::Length, tr("Behind the moving screen"), [](auto& r) -> auto& { return r.frameBehind; },
          common)
      .group(tr("Ways out"))
      .add(
          FieldKind::Size, tr("Width at an exit"), [](auto& r) -> auto& { return r.exitWidth; },
          tr("IRC R311.2; the local code decides."))
      .add(
          FieldKind::Size, tr("Width of the way"), [](auto& r) -> auto& { return r.wayWidth; },
          tr("IRC R311.6, ADA 2010 403.5.1; the local code decides."))
      .group(tr("Ball"))
      .amount(
          QuantityKind::Speed, tr("Speed of shots to catch"), [](auto& r) -> auto& { return r.ballSpeed; })
      .add(
          FieldKind::Angle, tr("Mean launch"), [](auto& r) -> auto& { return r.meanLaunch; })
      .add(
          FieldKind::Angle, tr("Spread upward"), [](auto& r) -> auto& { return r.dispersionUp; },
          tr("One standard deviation."))
      .add(
          FieldKind::Angle, tr("Spread sideways"), [](auto& r) -> auto& { return r.dispersionSide; },
          tr("One standard deviation."))
      .amount(
          QuantityKind::Ratio, tr("Share to be caught"), [](auto& r) -> auto& { return r.captureShare; })
      .amount(
          QuantityKind::Speed, tr("Fastest rebound"), [](auto& r) -> auto& { return r.reboundSpeed; })
      .group(tr("Picture"))
      .amount(
          QuantityKind::Ratio, tr("Screen covered"), [](auto& r) -> auto& { return r.coverage; })
      .amount(
          QuantityKind::Ratio, tr("Picture beside the screen"), [](auto& r) -> auto& { return r.spill; })
      .amount(
          QuantityKind::Ratio, tr("Uniformity"), [](auto& r) -> auto& { return r.uniformity; })
      .add(
          FieldKind::Number, tr("Contrast"), [](auto& r) -> auto& { return r.contrast; },
          tr("ANSI/InfoComm 3M-2011."))
      .amount(
          QuantityKind::Illuminance, tr("Room light on the screen"),
          [](auto& r) -> auto& { return r.ambient; })
      .amount(
          QuantityKind::Ratio, tr("Golfer's shadow"), [](auto& r) -> auto& { return r.shadow; })
      .amount(
          QuantityKind::Ratio, tr("Picture obstructed"), [](auto& r) -> auto& { return r.obstruction; })
      .take();
}

}  // namespace baywright
