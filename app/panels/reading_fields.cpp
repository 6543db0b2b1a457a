// SPDX-License-Identifier: Apache-2.0
#include <QCoreApplication>

#include "job/edit.h"
#include "job/find.h"
#include "job/measurement_place.h"
#include "panels/field_list.h"

namespace baywright {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("ReadingFields", text);
}

PropertyKind kindOf(const Measurement& reading) {
  switch (reading.kind) {
    case MeasurementKind::Angle:
      return PropertyKind::Angle;
    case MeasurementKind::Offset:
      return PropertyKind::Length;
    default:
      return PropertyKind::Size;
  }
}

}  // namespace

std::vector<Field> readingFields(const Job& job, const Thing& thing) {
  const Id id = thing.id;
  FieldList<Measurement> list(
      [id](const Job& j) { return findById(j.measurements, id); },
      [](Job j, const Measurement& reading) { return setMeasurement(std::move(j), reading); });
  const Measurement* reading = findById(job.measurements, id);
  if (!reading) return {};
  const bool isHeight = reading->kind == MeasurementKind::CeilingHeight;
  list.add(
          kindOf(*reading), isHeight ? tr("Floor to ceiling") : tr("Read"),
          [](Measurement & m) -> auto& { return m.value; })
      .choice(
          tr("Read by"), {tr("Tape"), tr("Laser"), tr("Drawing"), tr("Scan"), tr("Guess")},
          [](Measurement & m) -> auto& { return m.how; })
      .add(
          PropertyKind::Flag, tr("Used"), [](Measurement & m) -> auto& { return m.used; },
          tr("Not ticked: set aside."))
      .add(
          PropertyKind::Words, tr("Remark"), [](Measurement & m) -> auto& { return m.note; });
  if (isFreeHeight(job.room, *reading)) {
    list.group(tr("On the plan"))
        .add(
            PropertyKind::Length, tr("x"), [](Measurement & m) -> auto& { return m.position.x(); })
        .add(
            PropertyKind::Length, tr("y"), [](Measurement & m) -> auto& { return m.position.y(); });
  }
  return list.take();
}

}  // namespace baywright
