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
          PropertyKind::Words, tr("Title"), [](ProjectInfo & i) -> auto& { return i.title; })
      .add(
          PropertyKind::Words, tr("Customer"), [](ProjectInfo & i) -> auto& { return i.customer; })
      .add(
          PropertyKind::Words, tr("Site"), [](ProjectInfo & i) -> auto& { return i.site; })
      .add(
          PropertyKind::Words, tr("Owner of the drawing"), [](ProjectInfo & i) -> auto& { return i.owner; })
      .add(
          PropertyKind::Words, tr("Number"), [](ProjectInfo & i) -> auto& { return i.number; })
      .add(
          PropertyKind::Words, tr("Revision"), [](ProjectInfo & i) -> auto& { return i.revision; })
      .add(
          PropertyKind::Words, tr("Date"), [](ProjectInfo & i) -> auto& { return i.date; },
          tr("As 2026-11-25."))
      .add(
          PropertyKind::Words, tr("Drawn by"), [](ProjectInfo & i) -> auto& { return i.creator; })
      .add(
          PropertyKind::Words, tr("Approved by"), [](ProjectInfo & i) -> auto& { return i.approver; })
      .take();
}

std::vector<Field> requirementFields() {
  const QString common = tr("Common practice, no source.");
  return FieldList<Requirements>(
             [](const Job& job) { return &job.requirements; },
             [](Job job, const Requirements& r) { return setRequirements(std::move(job), r); })
      .group(tr("Clearances"))
      .add(
          PropertyKind::Length, tr("Around a swing"),
          [](Requirements & r) -> auto& { return r.swingClearance; }, common)
      .add(
          PropertyKind::Length, tr("Above the frame"), [](Requirements & r) -> auto& { return r.frameAbove; },
          common)
      .add(
          PropertyKind::Length, tr("Beside the frame"),
          [](Requirements & r) -> auto& { return r.frameBeside; }, common)
      .add(
          PropertyKind::Length, tr("Behind the moving screen"),
          [](Requirements & r) -> auto& { return r.frameBehind; }, common)
      .group(tr("Ways out"))
      .add(
          PropertyKind::Size, tr("Width at an exit"), [](Requirements & r) -> auto& { return r.exitWidth; },
          tr("IRC R311.2; the local code decides."))
      .add(
          PropertyKind::Size, tr("Width of the way"), [](Requirements & r) -> auto& { return r.wayWidth; },
          tr("IRC R311.6, ADA 2010 403.5.1; the local code decides."))
      .group(tr("Ball"))
      .amount(
          QuantityKind::Speed, tr("Speed of shots to catch"),
          [](Requirements & r) -> auto& { return r.ballSpeed; })
      .amount(
          QuantityKind::Spin, tr("Their backspin"), [](Requirements & r) -> auto& { return r.ballSpin; })
      .add(
          PropertyKind::Length, tr("Above sea level"), [](Requirements & r) -> auto& { return r.altitude; },
          tr("For the density of the air."))
      .add(
          PropertyKind::Angle, tr("Mean launch"), [](Requirements & r) -> auto& { return r.meanLaunch; })
      .add(
          PropertyKind::Angle, tr("Spread upward"), [](Requirements & r) -> auto& { return r.dispersionUp; },
          tr("One standard deviation."))
      .add(
          PropertyKind::Angle, tr("Spread sideways"),
          [](Requirements & r) -> auto& { return r.dispersionSide; }, tr("One standard deviation."))
      .amount(
          QuantityKind::Ratio, tr("Share to be caught"),
          [](Requirements & r) -> auto& { return r.captureShare; })
      .amount(
          QuantityKind::Speed, tr("Fastest rebound"),
          [](Requirements & r) -> auto& { return r.reboundSpeed; })
      .group(tr("Picture"))
      .amount(
          QuantityKind::Ratio, tr("Screen covered"), [](Requirements & r) -> auto& { return r.coverage; })
      .amount(
          QuantityKind::Ratio, tr("Picture beside the screen"),
          [](Requirements & r) -> auto& { return r.spill; })
      .amount(
          QuantityKind::Ratio, tr("Uniformity"), [](Requirements & r) -> auto& { return r.uniformity; })
      .add(
          PropertyKind::Number, tr("Contrast"), [](Requirements & r) -> auto& { return r.contrast; },
          tr("ANSI/InfoComm 3M-2011."))
      .amount(
          QuantityKind::Illuminance, tr("Room light on the screen"),
          [](Requirements & r) -> auto& { return r.ambient; })
      .amount(
          QuantityKind::Ratio, tr("Golfer's shadow"), [](Requirements & r) -> auto& { return r.shadow; })
      .amount(
          QuantityKind::Ratio, tr("Picture obstructed"),
          [](Requirements & r) -> auto& { return r.obstruction; })
      .take();
}

}  // namespace baywright
