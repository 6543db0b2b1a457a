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
              PropertyKind::Words, tr("Name"), [](Wall & wall) -> auto& { return wall.name; })
          .add(
              PropertyKind::Size, tr("Thickness"), [](Wall & wall) -> auto& { return wall.thickness; },
              tr("Only for drawing."))
          .take();
  Field length;
  length.label = tr("Length");
  length.kind = PropertyKind::Measured;
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
          PropertyKind::Words, tr("Name"), [](Opening & o) -> auto& { return o.name; })
      .choice(
          tr("Kind"), {tr("Hinged door"), tr("Sectional door"), tr("Window"), tr("Passage")},
          [](Opening & o) -> auto& { return o.kind; })
      .add(
          PropertyKind::Measured, tr("From the wall's start"), [](Opening & o) -> auto& { return o.offset; })
      .add(
          PropertyKind::Measured, tr("Width"), [](Opening & o) -> auto& { return o.width; })
      .add(
          PropertyKind::Measured, tr("Height"), [](Opening & o) -> auto& { return o.height; })
      .add(
          PropertyKind::Measured, tr("Sill above floor"), [](Opening & o) -> auto& { return o.sill; })
      .add(
          PropertyKind::Flag, tr("Way out"), [](Opening & o) -> auto& { return o.isExit; },
          tr("People count on it to leave; its clear width is checked."));
  if (kind == OpeningKind::HingedDoor) {
    list.group(tr("Leaf"))
        .choice(
            tr("Hinge"), {tr("At the wall's start"), tr("At its end")},
            [](Opening & o) -> auto& { return o.hinge; })
        .choice(
            tr("Opens"), {tr("Into the room"), tr("Out of the room")},
            [](Opening & o) -> auto& { return o.swing; })
        .add(
            PropertyKind::Angle, tr("Must open"), [](Opening & o) -> auto& { return o.openAngle; })
        .add(
            PropertyKind::Size, tr("Leaf thickness"), [](Opening & o) -> auto& { return o.leafThickness; });
  }
  if (kind == OpeningKind::SectionalDoor) {
    list.group(tr("Tracks"))
        .add(
            PropertyKind::Length, tr("Head-room of the track"),
            [](Opening & o) -> auto& { return o.trackHeadroom; },
            tr("From the top of the opening to the top of the horizontal track."))
        .add(
            PropertyKind::Length, tr("Depth into the room"),
            [](Opening & o) -> auto& { return o.trackDepth; },
            tr("0: as deep as the opening is high, and 0.45 m more."))
        .add(
            PropertyKind::Size, tr("Panel thickness"), [](Opening & o) -> auto& { return o.panelThickness; })
        .add(
            PropertyKind::Flag, tr("May stand open in play"),
            [](Opening & o) -> auto& { return o.staysOpen; });
  }
  return list.take();
}

std::vector<Field> ceilingFields(Id id) {
  return FieldList<CeilingPart>(
             [id](const Job& job) { return findById(job.room.ceiling, id); },
             [](Job job, const CeilingPart& part) { return setCeilingPart(std::move(job), part); })
      .add(
          PropertyKind::Words, tr("Name"), [](CeilingPart & part) -> auto& { return part.name; })
      .add(
          PropertyKind::Measured, tr("Height at the anchor"),
          [](CeilingPart & part) -> auto& { return part.height; })
      .group(tr("Slope"))
      .add(
          PropertyKind::Number, tr("Rise a metre to the right"),
          [](CeilingPart & part) -> auto& { return part.slope.x(); })
      .add(
          PropertyKind::Number, tr("Rise a metre up the plan"),
          [](CeilingPart & part) -> auto& { return part.slope.y(); })
      .group(tr("Anchor"))
      .add(
          PropertyKind::Length, tr("x"), [](CeilingPart & part) -> auto& { return part.anchor.x(); })
      .add(
          PropertyKind::Length, tr("y"), [](CeilingPart & part) -> auto& { return part.anchor.y(); })
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
          PropertyKind::Words, tr("Name"), [](Fixture & f) -> auto& { return f.name; })
      .choice(
          tr("Kind"), fixtureKinds(), [](Fixture & f) -> auto& { return f.kind; })
      .add(
          PropertyKind::Measured, tr("Underside above floor"), [](Fixture & f) -> auto& { return f.bottom; })
      .add(
          PropertyKind::Measured, tr("Top above floor"), [](Fixture & f) -> auto& { return f.top; })
      .add(
          PropertyKind::Flag, tr("Breakable"), [](Fixture & f) -> auto& { return f.breakable; },
          tr("A ball must not reach it."))
      .choice(
          tr("Plan measured by"), instruments(), [](Fixture & f) -> auto& { return f.planInstrument; });
  const Fixture* fixture = findById(job.room.fixtures, id);
  if (fixture && std::holds_alternative<BoxShape>(fixture->shape)) {
    list.group(tr("On the plan"))
        .add(
            PropertyKind::Length, tr("x of the middle"),
            [](Fixture & f) -> auto& { return std::get<BoxShape>(f.shape).centre.x(); })
        .add(
            PropertyKind::Length, tr("y of the middle"),
            [](Fixture & f) -> auto& { return std::get<BoxShape>(f.shape).centre.y(); })
        .add(
            PropertyKind::Size, tr("Width"),
            [](Fixture & f) -> auto& { return std::get<BoxShape>(f.shape).width; })
        .add(
            PropertyKind::Size, tr("Depth"),
            [](Fixture & f) -> auto& { return std::get<BoxShape>(f.shape).depth; })
        .add(
            PropertyKind::Angle, tr("Turned by"),
            [](Fixture & f) -> auto& { return std::get<BoxShape>(f.shape).heading; });
  }
  if (fixture && std::holds_alternative<CylinderShape>(fixture->shape)) {
    list.group(tr("On the plan"))
        .add(
            PropertyKind::Length, tr("x of the middle"),
            [](Fixture & f) -> auto& { return std::get<CylinderShape>(f.shape).centre.x(); })
        .add(
            PropertyKind::Length, tr("y of the middle"),
            [](Fixture & f) -> auto& { return std::get<CylinderShape>(f.shape).centre.y(); })
        .add(
            PropertyKind::Size, tr("Radius"),
            [](Fixture & f) -> auto& { return std::get<CylinderShape>(f.shape).radius; });
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
