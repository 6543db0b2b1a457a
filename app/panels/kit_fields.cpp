// SPDX-License-Identifier: Apache-2.0
#include <QCoreApplication>

#include "job/edit.h"
#include "panels/field_list.h"

namespace baywright {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("KitFields", text);
}

using Fields = std::vector<Field>;

void append(Fields& to, Fields from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

/// The placement of the active option; kit parts that can be selected are its parts.
FieldList<Placement> placementList() {
  return {[](const Job& job) { return &job.option().placement; },
          [](Job job, const Placement& placement) { return setPlacement(std::move(job), placement); }};
}

Fields bayPlace() {
  return placementList()
      .group(tr("Where the screen stands"))
      .add(
          FieldKind::Length, tr("x of its middle"), [](auto& p) -> auto& { return p.bay.origin.x(); })
      .add(
          FieldKind::Length, tr("y of its middle"), [](auto& p) -> auto& { return p.bay.origin.y(); })
      .add(
          FieldKind::Angle, tr("Down-range heading"), [](auto& p) -> auto& { return p.bay.heading; },
          tr("0 to the right on the plan, 90 up."))
      .take();
}

Fields frameFields() {
  Fields fields =
      FieldList<Frame>([](const Job& job) { return &job.option().kit.frame; },
                       [](Job job, const Frame& frame) { return setFrame(std::move(job), frame); })
          .add(
              FieldKind::Words, tr("Name"), [](auto& f) -> auto& { return f.name; })
          .add(
              FieldKind::Size, tr("Width"), [](auto& f) -> auto& { return f.width; })
          .add(
              FieldKind::Size, tr("Height"), [](auto& f) -> auto& { return f.height; })
          .add(
              FieldKind::Size, tr("Depth"), [](auto& f) -> auto& { return f.depth; })
          .add(
              FieldKind::Length, tr("Behind the screen"), [](auto& f) -> auto& { return f.behindScreen; })
          .add(
              FieldKind::Size, tr("Tube"), [](auto& f) -> auto& { return f.tube; })
          .take();
  append(fields, bayPlace());
  return fields;
}

Fields screenFields() {
  Fields fields =
      FieldList<Screen>([](const Job& job) { return &job.option().kit.screen; },
                        [](Job job, const Screen& screen) { return setScreen(std::move(job), screen); })
          .add(
              FieldKind::Words, tr("Name"), [](auto& s) -> auto& { return s.name; })
          .add(
              FieldKind::Size, tr("Width"), [](auto& s) -> auto& { return s.width; })
          .add(
              FieldKind::Size, tr("Height"), [](auto& s) -> auto& { return s.height; })
          .add(
              FieldKind::Length, tr("Lower edge"), [](auto& s) -> auto& { return s.bottom; })
          .add(
              FieldKind::Length, tr("Travel when hit"), [](auto& s) -> auto& { return s.travel; })
          .add(
              FieldKind::Number, tr("Gain"), [](auto& s) -> auto& { return s.gain; })
          .add(
              FieldKind::Number, tr("Restitution"), [](auto& s) -> auto& { return s.restitution; },
              tr("Ball speed after over before. No published figure: measure it."))
          .take();
  append(fields, bayPlace());
  return fields;
}

Fields matFields() {
  Fields fields = FieldList<Mat>([](const Job& job) { return &job.option().kit.mat; },
                                 [](Job job, const Mat& mat) { return setMat(std::move(job), mat); })
                      .add(
                          FieldKind::Words, tr("Name"), [](auto& m) -> auto& { return m.name; })
                      .add(
                          FieldKind::Size, tr("Width"), [](auto& m) -> auto& { return m.width; })
                      .add(
                          FieldKind::Size, tr("Length"), [](auto& m) -> auto& { return m.length; })
                      .add(
                          FieldKind::Size, tr("Thickness"), [](auto& m) -> auto& { return m.thickness; })
                      .take();
  append(fields, placementList()
                     .group(tr("Strike points"))
                     .add(
                         FieldKind::Size, tr("Distance to the screen"),
                         [](auto& p) -> auto& { return p.strikeDistance; })
                     .add(
                         FieldKind::Length, tr("Right-hander, to the right"),
                         [](auto& p) -> auto& { return p.strikeRightHanded; })
                     .add(
                         FieldKind::Length, tr("Left-hander, to the right"),
                         [](auto& p) -> auto& { return p.strikeLeftHanded; })
                     .take());
  return fields;
}

Fields monitorFields() {
  Fields fields =
      FieldList<LaunchMonitor>([](const Job& job) { return &job.option().kit.monitor; },
                               [](Job job, const LaunchMonitor& m) { return setMonitor(std::move(job), m); })
          .add(
              FieldKind::Words, tr("Name"), [](auto& m) -> auto& { return m.name; })
          .add(
              FieldKind::Size, tr("Along"), [](auto& m) -> auto& { return m.size.x(); })
          .add(
              FieldKind::Size, tr("Across"), [](auto& m) -> auto& { return m.size.y(); })
          .add(
              FieldKind::Size, tr("Up"), [](auto& m) -> auto& { return m.size.z(); })
          .take();
  append(
      fields,
      placementList()
          .group(tr("Place, from the screen's foot"))
          .add(
              FieldKind::Length, tr("Down-range"), [](auto& p) -> auto& { return p.monitor.x(); })
          .add(
              FieldKind::Length, tr("To the right"), [](auto& p) -> auto& { return p.monitor.y(); })
          .add(
              FieldKind::Length, tr("Underside above floor"), [](auto& p) -> auto& { return p.monitor.z(); })
          .take());
  return fields;
}

Fields projectorFields() {
  Fields fields =
      placementList()
          .group(tr("Mount"))
          .choice(
              tr("Mounted on"), {tr("Ceiling"), tr("Floor"), tr("Wall")},
              [](auto& p) -> auto& { return p.projector.kind; })
          .add(
              FieldKind::Length, tr("Lens, down-range"),
              [](auto& p) -> auto& { return p.projector.lens.x(); },
              tr("From the screen's face; negative toward the golfer."))
          .add(
              FieldKind::Length, tr("Lens, to the right"),
              [](auto& p) -> auto& { return p.projector.lens.y(); })
          .add(
              FieldKind::Length, tr("Lens above floor"),
              [](auto& p) -> auto& { return p.projector.lens.z(); })
          .add(
              FieldKind::Number, tr("Zoom, as throw ratio"),
              [](auto& p) -> auto& { return p.projector.throwRatio; })
          .add(
              FieldKind::Angle, tr("Turned right"), [](auto& p) -> auto& { return p.projector.yaw; })
          .add(
              FieldKind::Angle, tr("Tilted up"), [](auto& p) -> auto& { return p.projector.pitch; })
          .add(
              FieldKind::Angle, tr("Rolled clockwise"), [](auto& p) -> auto& { return p.projector.roll; })
          .amount(
              QuantityKind::Ratio, tr("Lens shift up"), [](auto& p) -> auto& { return p.projector.shiftUp; })
          .amount(
              QuantityKind::Ratio, tr("Lens shift right"),
              [](auto& p) -> auto& { return p.projector.shiftSide; })
          .take();
  append(
      fields,
      FieldList<Projector>([](const Job& job) { return &job.option().kit.projector; },
                           [](Job job, const Projector& p) { return setProjector(std::move(job), p); })
          .group(tr("As its maker states it"))
          .add(
              FieldKind::Words, tr("Name"), [](auto& p) -> auto& { return p.name; })
          .add(
              FieldKind::Number, tr("Throw ratio, least"), [](auto& p) -> auto& { return p.throwMin; })
          .add(
              FieldKind::Number, tr("Throw ratio, most"), [](auto& p) -> auto& { return p.throwMax; })
          .add(
              FieldKind::Count, tr("Pixels across"), [](auto& p) -> auto& { return p.panelWidth; })
          .add(
              FieldKind::Count, tr("Pixels up"), [](auto& p) -> auto& { return p.panelHeight; })
          .amount(
              QuantityKind::LuminousFlux, tr("Light"), [](auto& p) -> auto& { return p.lumens; })
          .add(
              FieldKind::Number, tr("Native contrast"), [](auto& p) -> auto& { return p.contrast; })
          .amount(
              QuantityKind::Ratio, tr("Offset"), [](auto& p) -> auto& { return p.offset; },
              tr("Height of the picture's middle above the lens axis, as a share of its height."))
          .amount(
              QuantityKind::Ratio, tr("Lens shift up, most"), [](auto& p) -> auto& { return p.shiftUpMax; })
          .amount(
              QuantityKind::Ratio, tr("Lens shift aside, most"),
              [](auto& p) -> auto& { return p.shiftSideMax; })
          .add(
              FieldKind::Size, tr("Focus, nearest"), [](auto& p) -> auto& { return p.distanceMin; })
          .add(
              FieldKind::Size, tr("Focus, farthest"), [](auto& p) -> auto& { return p.distanceMax; })
          .add(
              FieldKind::Angle, tr("Keystone range"), [](auto& p) -> auto& { return p.keystoneMax; })
          .add(
              FieldKind::Size, tr("Body, along"), [](auto& p) -> auto& { return p.body.x(); })
          .add(
              FieldKind::Size, tr("Body, across"), [](auto& p) -> auto& { return p.body.y(); })
          .add(
              FieldKind::Size, tr("Body, up"), [](auto& p) -> auto& { return p.body.z(); })
          .amount(
              QuantityKind::Mass, tr("Mass"), [](auto& p) -> auto& { return p.mass; })
          .take());
  return fields;
}

Fields optionFields(Id id) {
  Field name;
  name.label = tr("Name");
  name.kind = FieldKind::Words;
  name.read = [id](const Job& job) -> FieldValue { return nameOf(job, id); };
  name.write = [id](const Job& job, const FieldValue& value) {
    return renameOption(job, id, std::get<std::string>(value));
  };
  Fields fields;
  fields.push_back(std::move(name));
  return fields;
}

}  // namespace

Fields kitFields(const Job& job, const Thing& thing) {
  if (thing.kind == ThingKind::Option) return optionFields(thing.id);
  if (thing.owner != job.option().id) return {};
  switch (thing.kind) {
    case ThingKind::Frame:
      return frameFields();
    case ThingKind::Screen:
      return screenFields();
    case ThingKind::Mat:
      return matFields();
    case ThingKind::Monitor:
      return monitorFields();
    default:
      return projectorFields();
  }
}

}  // namespace baywright
