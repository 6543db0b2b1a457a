// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "job/job.h"

namespace baywright {

/// A value of an enumeration and the word for it in files.
template <class E>
struct EnumName {
  E value;
  std::string_view name;
};

// One overload for each enumeration that a job stores. The argument only picks the overload.

constexpr auto enumNames(LengthUnit) {
  return std::to_array<EnumName<LengthUnit>>({{LengthUnit::FeetInches, "feetInches"},
                                              {LengthUnit::DecimalFeet, "decimalFeet"},
                                              {LengthUnit::Inches, "inches"},
                                              {LengthUnit::Metres, "metres"},
                                              {LengthUnit::Centimetres, "centimetres"},
                                              {LengthUnit::Millimetres, "millimetres"}});
}
constexpr auto enumNames(Instrument) {
  return std::to_array<EnumName<Instrument>>({{Instrument::Tape, "tape"},
                                              {Instrument::Laser, "laser"},
                                              {Instrument::Drawing, "drawing"},
                                              {Instrument::Scan, "scan"},
                                              {Instrument::Guess, "guess"}});
}
constexpr auto enumNames(OpeningKind) {
  return std::to_array<EnumName<OpeningKind>>({{OpeningKind::HingedDoor, "hingedDoor"},
                                               {OpeningKind::SectionalDoor, "sectionalDoor"},
                                               {OpeningKind::Window, "window"},
                                               {OpeningKind::Passage, "passage"}});
}
constexpr auto enumNames(HingeSide) {
  return std::to_array<EnumName<HingeSide>>({{HingeSide::Start, "start"}, {HingeSide::End, "end"}});
}
constexpr auto enumNames(LeafSwing) {
  return std::to_array<EnumName<LeafSwing>>(
      {{LeafSwing::IntoRoom, "intoRoom"}, {LeafSwing::OutOfRoom, "outOfRoom"}});
}
constexpr auto enumNames(FixtureKind) {
  return std::to_array<EnumName<FixtureKind>>({{FixtureKind::Shelving, "shelving"},
                                               {FixtureKind::Beam, "beam"},
                                               {FixtureKind::Duct, "duct"},
                                               {FixtureKind::Light, "light"},
                                               {FixtureKind::Fan, "fan"},
                                               {FixtureKind::Column, "column"},
                                               {FixtureKind::Opener, "opener"},
                                               {FixtureKind::Furniture, "furniture"},
                                               {FixtureKind::PowerOutlet, "powerOutlet"},
                                               {FixtureKind::DataOutlet, "dataOutlet"},
                                               {FixtureKind::Other, "other"}});
}
constexpr auto enumNames(Hand) {
  return std::to_array<EnumName<Hand>>({{Hand::Right, "right"}, {Hand::Left, "left"}});
}
constexpr auto enumNames(MountKind) {
  return std::to_array<EnumName<MountKind>>(
      {{MountKind::Ceiling, "ceiling"}, {MountKind::Floor, "floor"}, {MountKind::Wall, "wall"}});
}
constexpr auto enumNames(MeasurementKind) {
  return std::to_array<EnumName<MeasurementKind>>({{MeasurementKind::WallLength, "wallLength"},
                                                   {MeasurementKind::Diagonal, "diagonal"},
                                                   {MeasurementKind::Angle, "angle"},
                                                   {MeasurementKind::Offset, "offset"},
                                                   {MeasurementKind::CeilingHeight, "ceilingHeight"}});
}

/// The word for the value; empty for a number that is none of the enumeration's values.
template <class E>
constexpr std::string_view enumName(E value) {
  for (const EnumName<E>& entry : enumNames(E{}))
    if (entry.value == value) return entry.name;
  return {};
}

template <class E>
constexpr std::optional<E> enumFromName(std::string_view name) {
  for (const EnumName<E>& entry : enumNames(E{}))
    if (entry.name == name) return entry.value;
  return std::nullopt;
}

}  // namespace baywright
