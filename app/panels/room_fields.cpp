// SPDX-License-Identifier: Apache-2.0
#include <QCoreApplication>

#include "job/edit.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "panels/field_list.h"

namespace baywright {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("RoomFields", text);
}

std::vector<Field> wallFields(Id id) {
  FieldList<Wall> list([id](const Job& job) { return findById(job.room.walls, id); },
                       [](Job job, const Wall& wall) { return setWall(std::move(job), wall); });
  std::vector<Field> fields =
      list.add(
              FieldKind::Words, tr("Name"), [](auto& wall) -> auto& { return wall.name; })
          .add(
              FieldKind::Size, tr("Thickness"), [](auto& wall) -> auto& { return wall.thickness; },
              tr("Only for drawing."))
          .take();
  Field length;
  length.label = tr("Length");
  length.kind = FieldKind::Measured;
  length.hint = tr("The next wall moves along, so that right angles stay.");
  length.read = [id](const Job& job) -> FieldValue {
    const auto line = wallLine(job.room, id);
    return Dimension{line ? line->length : 0, Instrument::Drawing, true};
  };
  length.write = [id](const Job& job, const FieldValue& value) {
    return setWallLength(job, id, std::get<Dimension>(value));
  };
  fields.insert(fields.begin() + 1, std::move(length));
  return fields;
}

std::vector<Field> openingFields(Id id, OpeningKind kind) {
  FieldList<Opening> list(
      [id](const Job& job) { return findById(job.room.openings, id); },
      [](Job job, const Opening& opening) { return setOpening(std::move(job), opening); });
  list.add(
          FieldKind::Words, tr("Name"), [](auto& o) -> auto& { return o.name; })
      .choice(
          tr("Kind"), {tr("Hinged door"), tr("Sectional door"), tr("Window"), tr("Passage")},
          [](auto& o) -> auto& { return o.kind; })
      .add(
          FieldKind::Measured, tr("From the wall's start"), [](auto& o) -> auto& { return o.offset; })
      .add(
          FieldKind::Measured, tr("Width"), [](auto& o) -> auto& { return o.width; })
      .add(
          FieldKind::Measured, tr("Height"), [](auto& o) -> auto& { return o.height; })
      .add(
          FieldKind::Measured, tr("Sill above floor"), [](auto& o) -> auto& { return o.sill; })
      .add(
          FieldKind::Flag, tr("Way out"), [](auto& o) -> auto& { return o.isExit; },
          tr("People count on it to leave; its clear width is checked."));
  if (kind == OpeningKind::HingedDoor) {
    list.group(tr("Leaf"))
        .choice(
            tr("Hinge"), {tr("At the wall's start"), tr("At its end")},
            [](auto& o) -> auto& { return o.hinge; })
        .choice(
            tr("Opens"), {tr("Into the room"), tr("Out of the room")},
            [](auto& o) -> auto& { return o.swing; })
        .add(
            FieldKind::Angle, tr("Must open"), [](auto& o) -> auto& { return o.openAngle; })
        .add(
            FieldKind::Size, tr("Leaf thickness"), [](auto& o) -> auto& { return o.leafThickness; });
  }
  if (kind == OpeningKind::SectionalDoor) {
    list.group(tr("Tracks"))
        .add(
            FieldKind::Length, tr("Head-room of the track"), [](auto& o) -> auto& { return o.trackHeadroom; },
            tr("From the top of the opening to the top of the horizontal track."))
        .add(
            FieldKind::Length, tr("Depth into the room"), [](auto& o) -> auto& { return o.trackDepth; },
            tr("0: as deep as the opening is high, and 0.45 m more."))
        .add(
            FieldKind::Size, tr("Panel thickness"), [](auto& o) -> auto& { return o.panelThickness; })
        .add(
            FieldKind::Flag, tr("May stand open in play"), [](auto& o) -> auto& { return o.staysOpen; });
  }
  return list.take();
}

std::vector<Field> ceilingFields(Id id) {
  return FieldList<CeilingPart>(
             [id](const Job& job) { return findById(job.room.ceiling, id); },
             [](Job job, const CeilingPart& part) { return setCeilingPart(std::move(job), part); })
      .add(
          FieldKind::Words, tr("Name"), [](auto& part) -> auto& { return part.name; })
      .add(
          FieldKind::Measured, tr("Height at the anchor"), [](auto& part) -> auto& { return part.height; })
      .group(tr("Slope"))
      .add(
          FieldKind::Number, tr("Rise a metre to the right"),
          [](auto& part) -> auto& { return part.slope.x(); })
      .add(
          FieldKind::Number, tr("Rise a metre up the plan"),
          [](auto& part) -> auto& { return part.slope.y(); })
      .group(tr("Anchor"))
      .add(
          FieldKind::Length, tr("x"), [](auto& part) -> auto& { return part.anchor.x(); })
      .add(
          FieldKind::Length, tr("y"), [](auto& part) -> auto& { return part.anchor.y(); })
      .take();
}

const QStringList& fixtureKinds() {
  static const QStringList kinds = {tr("Shelving"),     tr("Beam"),        tr("Duct"),   tr("Light"),
                                    tr("Fan"),          tr("Column"),      tr("Opener"), tr("Furniture"),
                                    tr("Power outlet"), tr("Data outlet"), tr("Other")};
  return kinds;
}

const QStringList& instruments() {
  static const QStringList names = {tr("Tape"), tr("Laser"), tr("Drawing"), tr("Scan"), tr("Guess")};
  return names;
}

std::vector<Field> fixtureFields(const Job& job, Id id) {
  FieldList<Fixture> list([id](const Job& j) { return findById(j.room.fixtures, id); },
                          [](Job j, const Fixture& fixture) { return setFixture(std::move(j), fixture); });
  list.add(
          FieldKind::Words, tr("Name"), [](auto& f) -> auto& { return f.name; })
      .choice(
          tr("Kind"), fixtureKinds(), [](auto& f) -> auto& { return f.kind; })
      .add(
          FieldKind::Measured, tr("Underside above floor"), [](auto& f) -> auto& { return f.bottom; })
      .add(
          FieldKind::Measured, tr("Top above floor"), [](auto& f) -> auto& { return f.top; })
      .add(
          FieldKind::Flag, tr("Breakable"), [](auto& f) -> auto& { return f.breakable; },
          tr("A ball must not reach it."))
      .choice(
          tr("Plan measured by"), instruments(), [](auto& f) -> auto& { return f.planInstrument; });
  const Fixture* fixture = findById(job.room.fixtures, id);
  if (fixture && std::holds_alternative<BoxShape>(fixture->shape)) {
    list.group(tr("On the plan"))
        .add(
            FieldKind::Length, tr("x of the middle"),
            [](auto& f) -> auto& { return std::get<BoxShape>(f.shape).centre.x(); })
        .add(
            FieldKind::Length, tr("y of the middle"),
            [](auto& f) -> auto& { return std::get<BoxShape>(f.shape).centre.y(); })
        .add(
            FieldKind::Size, tr("Width"), [](auto& f) -> auto& { return std::get<BoxShape>(f.shape).width; })
        .add(
            FieldKind::Size, tr("Depth"), [](auto& f) -> auto& { return std::get<BoxShape>(f.shape).depth; })
        .add(
            FieldKind::Angle, tr("Turned by"),
            [](auto& f) -> auto& { return std::get<BoxShape>(f.shape).heading; });
  }
  if (fixture && std::holds_alternative<CylinderShape>(fixture->shape)) {
    list.group(tr("On the plan"))
        .add(
            FieldKind::Length, tr("x of the middle"),
            [](auto& f) -> auto& { return std::get<CylinderShape>(f.shape).centre.x(); })
        .add(
            FieldKind::Length, tr("y of the middle"),
            [](auto& f) -> auto& { return std::get<CylinderShape>(f.shape).centre.y(); })
        .add(
            FieldKind::Size, tr("Radius"),
            [](auto& f) -> auto& { return std::get<CylinderShape>(f.shape).radius; });
  }
  return list.take();
}

}  // namespace

std::vector<Field> roomFields(const Job& job, const Thing& thing) {
  switch (thing.kind) {
    case ThingKind::Wall:
      return wallFields(thing.id);
    case ThingKind::Opening:
      return openingFields(thing.id, findById(job.room.openings, thing.id)->kind);
    case ThingKind::CeilingPart:
      return ceilingFields(thing.id);
    default:
      return fixtureFields(job, thing.id);
  }
}

}  // namespace baywright
