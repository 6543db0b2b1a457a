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
          PropertyKind::Length, tr("x of its middle"),
          [](Placement & p) -> auto& { return p.bay.origin.x(); })
      .add(
          PropertyKind::Length, tr("y of its middle"),
          [](Placement & p) -> auto& { return p.bay.origin.y(); })
      .add(
          PropertyKind::Angle, tr("Down-range heading"), [](Placement & p) -> auto& { return p.bay.heading; },
          tr("0 to the right on the plan, 90 up."))
      .take();
}

Fields frameFields() {
  Fields fields =
      FieldList<Frame>([](const Job& job) { return &job.option().kit.frame; },
                       [](Job job, const Frame& frame) { return setFrame(std::move(job), frame); })
          .add(
              PropertyKind::Words, tr("Name"), [](Frame & f) -> auto& { return f.name; })
          .add(
              PropertyKind::Size, tr("Width"), [](Frame & f) -> auto& { return f.width; })
          .add(
              PropertyKind::Size, tr("Height"), [](Frame & f) -> auto& { return f.height; })
          .add(
              PropertyKind::Size, tr("Depth"), [](Frame & f) -> auto& { return f.depth; })
          .add(
              PropertyKind::Length, tr("Behind the screen"),
              [](Frame & f) -> auto& { return f.behindScreen; })
          .add(
              PropertyKind::Size, tr("Tube"), [](Frame & f) -> auto& { return f.tube; })
          .take();
  append(fields, bayPlace());
  return fields;
}

Fields screenFields() {
  Fields fields =
      FieldList<Screen>([](const Job& job) { return &job.option().kit.screen; },
                        [](Job job, const Screen& screen) { return setScreen(std::move(job), screen); })
          .add(
              PropertyKind::Words, tr("Name"), [](Screen & s) -> auto& { return s.name; })
          .add(
              PropertyKind::Size, tr("Width"), [](Screen & s) -> auto& { return s.width; })
          .add(
              PropertyKind::Size, tr("Height"), [](Screen & s) -> auto& { return s.height; })
          .add(
              PropertyKind::Length, tr("Lower edge"), [](Screen & s) -> auto& { return s.bottom; })
          .add(
              PropertyKind::Length, tr("Travel when hit"), [](Screen & s) -> auto& { return s.travel; })
          .add(
              PropertyKind::Number, tr("Gain"), [](Screen & s) -> auto& { return s.gain; })
          .add(
              PropertyKind::Number, tr("Restitution"), [](Screen & s) -> auto& { return s.restitution; },
              tr("Ball speed after over before. No published figure: measure it."))
          .take();
  append(fields, bayPlace());
  return fields;
}

Fields matFields() {
  Fields fields = FieldList<Mat>([](const Job& job) { return &job.option().kit.mat; },
                                 [](Job job, const Mat& mat) { return setMat(std::move(job), mat); })
                      .add(
                          PropertyKind::Words, tr("Name"), [](Mat & m) -> auto& { return m.name; })
                      .add(
                          PropertyKind::Size, tr("Width"), [](Mat & m) -> auto& { return m.width; })
                      .add(
                          PropertyKind::Size, tr("Length"), [](Mat & m) -> auto& { return m.length; })
                      .add(
                          PropertyKind::Size, tr("Thickness"), [](Mat & m) -> auto& { return m.thickness; })
                      .take();
  append(fields, placementList()
                     .group(tr("Strike points"))
                     .add(
                         PropertyKind::Size, tr("Distance to the screen"),
                         [](Placement & p) -> auto& { return p.strikeDistance; })
                     .add(
                         PropertyKind::Length, tr("Right-hander, to the right"),
                         [](Placement & p) -> auto& { return p.strikeRightHanded; })
                     .add(
                         PropertyKind::Length, tr("Left-hander, to the right"),
                         [](Placement & p) -> auto& { return p.strikeLeftHanded; })
                     .take());
  return fields;
}

Fields monitorFields() {
  Fields fields =
      FieldList<LaunchMonitor>([](const Job& job) { return &job.option().kit.monitor; },
                               [](Job job, const LaunchMonitor& m) { return setMonitor(std::move(job), m); })
          .add(
              PropertyKind::Words, tr("Name"), [](LaunchMonitor & m) -> auto& { return m.name; })
          .add(
              PropertyKind::Size, tr("Along"), [](LaunchMonitor & m) -> auto& { return m.size.x(); })
          .add(
              PropertyKind::Size, tr("Across"), [](LaunchMonitor & m) -> auto& { return m.size.y(); })
          .add(
              PropertyKind::Size, tr("Up"), [](LaunchMonitor & m) -> auto& { return m.size.z(); })
          .take();
  append(
      fields,
      placementList()
          .group(tr("Place, from the screen's foot"))
          .add(
              PropertyKind::Length, tr("Down-range"), [](Placement & p) -> auto& { return p.monitor.x(); })
          .add(
              PropertyKind::Length, tr("To the right"), [](Placement & p) -> auto& { return p.monitor.y(); })
          .add(
              PropertyKind::Length, tr("Underside above floor"),
              [](Placement & p) -> auto& { return p.monitor.z(); })
          .take());
  return fields;
}

Fields projectorFields() {
  Fields fields =
      placementList()
          .group(tr("Mount"))
          .choice(
              tr("Mounted on"), {tr("Ceiling"), tr("Floor"), tr("Wall")},
              [](Placement & p) -> auto& { return p.projector.kind; })
          .add(
              PropertyKind::Length, tr("Lens, down-range"),
              [](Placement & p) -> auto& { return p.projector.lens.x(); },
              tr("From the screen's face; negative toward the golfer."))
          .add(
              PropertyKind::Length, tr("Lens, to the right"),
              [](Placement & p) -> auto& { return p.projector.lens.y(); })
          .add(
              PropertyKind::Length, tr("Lens above floor"),
              [](Placement & p) -> auto& { return p.projector.lens.z(); })
          .add(
              PropertyKind::Number, tr("Zoom, as throw ratio"),
              [](Placement & p) -> auto& { return p.projector.throwRatio; })
          .add(
              PropertyKind::Angle, tr("Turned right"), [](Placement & p) -> auto& { return p.projector.yaw; })
          .add(
              PropertyKind::Angle, tr("Tilted up"), [](Placement & p) -> auto& { return p.projector.pitch; })
          .add(
              PropertyKind::Angle, tr("Rolled clockwise"),
              [](Placement & p) -> auto& { return p.projector.roll; })
          .amount(
              QuantityKind::Ratio, tr("Lens shift up"),
              [](Placement & p) -> auto& { return p.projector.shiftUp; })
          .amount(
              QuantityKind::Ratio, tr("Lens shift right"),
              [](Placement & p) -> auto& { return p.projector.shiftSide; })
          .take();
  append(
      fields,
      FieldList<Projector>([](const Job& job) { return &job.option().kit.projector; },
                           [](Job job, const Projector& p) { return setProjector(std::move(job), p); })
          .group(tr("As its maker states it"))
          .add(
              PropertyKind::Words, tr("Name"), [](Projector & p) -> auto& { return p.name; })
          .add(
              PropertyKind::Number, tr("Throw ratio, least"),
              [](Projector & p) -> auto& { return p.throwMin; })
          .add(
              PropertyKind::Number, tr("Throw ratio, most"),
              [](Projector & p) -> auto& { return p.throwMax; })
          .add(
              PropertyKind::Count, tr("Pixels across"), [](Projector & p) -> auto& { return p.panelWidth; })
          .add(
              PropertyKind::Count, tr("Pixels up"), [](Projector & p) -> auto& { return p.panelHeight; })
          .amount(
              QuantityKind::LuminousFlux, tr("Light"), [](Projector & p) -> auto& { return p.lumens; })
          .add(
              PropertyKind::Number, tr("Native contrast"), [](Projector & p) -> auto& { return p.contrast; })
          .amount(
              QuantityKind::Ratio, tr("Offset"), [](Projector & p) -> auto& { return p.offset; },
              tr("Height of the picture's middle above the lens axis, as a share of its height."))
          .amount(
              QuantityKind::Ratio, tr("Lens shift up, most"),
              [](Projector & p) -> auto& { return p.shiftUpMax; })
          .amount(
              QuantityKind::Ratio, tr("Lens shift aside, most"),
              [](Projector & p) -> auto& { return p.shiftSideMax; })
          .add(
              PropertyKind::Size, tr("Focus, nearest"), [](Projector & p) -> auto& { return p.distanceMin; })
          .add(
              PropertyKind::Size, tr("Focus, farthest"), [](Projector & p) -> auto& { return p.distanceMax; })
          .add(
              PropertyKind::Angle, tr("Keystone range"), [](Projector & p) -> auto& { return p.keystoneMax; })
          .add(
              PropertyKind::Size, tr("Body, along"), [](Projector & p) -> auto& { return p.body.x(); })
          .add(
              PropertyKind::Size, tr("Body, across"), [](Projector & p) -> auto& { return p.body.y(); })
          .add(
              PropertyKind::Size, tr("Body, up"), [](Projector & p) -> auto& { return p.body.z(); })
          .amount(
              QuantityKind::Mass, tr("Mass"), [](Projector & p) -> auto& { return p.mass; })
          .take());
  return fields;
}

Fields optionFields(Id id) {
  Field name;
  name.label = tr("Name");
  name.kind = PropertyKind::Words;
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
