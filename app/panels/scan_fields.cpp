// SPDX-License-Identifier: Apache-2.0
#include <QCoreApplication>

#include "job/edit.h"
#include "job/find.h"
#include "panels/field_list.h"

namespace baywright {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("ScanFields", text);
}

}  // namespace

std::vector<Field> scanFields(const Job&, const Thing& thing) {
  const Id id = thing.id;
  if (thing.kind == ThingKind::PlanScan) {
    return FieldList<PlanScan>(
               [id](const Job& job) { return findById(job.planScans, id); },
               [](Job job, const PlanScan& scan) { return setPlanScan(std::move(job), scan); })
        .add(
            PropertyKind::Words, tr("Name"), [](PlanScan & s) -> auto& { return s.name; })
        .add(
            PropertyKind::Flag, tr("Visible"), [](PlanScan & s) -> auto& { return s.visible; })
        .add(
            PropertyKind::Flag, tr("Locked"), [](PlanScan & s) -> auto& { return s.locked; },
            tr("Cannot be moved or turned."))
        .amount(
            QuantityKind::Ratio, tr("Opacity"), [](PlanScan & s) -> auto& { return s.opacity; })
        .take();
  }
  if (thing.kind == ThingKind::Original) {
    return FieldList<Original>(
               [id](const Job& job) { return findById(job.originals, id); },
               [](Job job, const Original& original) { return setOriginal(std::move(job), original); })
        .add(
            PropertyKind::Words, tr("Name"), [](Original & o) -> auto& { return o.name; },
            tr("The file that the room came from. File, Save originals… writes it out again."))
        .take();
  }
  return FieldList<RoomScan>([id](const Job& job) { return findById(job.roomScans, id); },
                             [](Job job, const RoomScan& scan) { return setRoomScan(std::move(job), scan); })
      .add(
          PropertyKind::Words, tr("Name"), [](RoomScan & s) -> auto& { return s.name; })
      .add(
          PropertyKind::Flag, tr("Visible"), [](RoomScan & s) -> auto& { return s.visible; })
      .add(
          PropertyKind::Flag, tr("Swings must clear it"), [](RoomScan & s) -> auto& { return s.isObstacle; })
      .add(
          PropertyKind::Size, tr("Accuracy of a point"), [](RoomScan & s) -> auto& { return s.sigma; })
      .take();
}

}  // namespace baywright
