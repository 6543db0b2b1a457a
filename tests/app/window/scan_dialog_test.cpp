// SPDX-License-Identifier: Apache-2.0
#include "window/scan_dialog.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>

#include "window/scan_preview.h"

namespace baywright {
namespace {

UnitSuggestion metres(bool isPlausible) {
  return {1, "metres", 2.9, isPlausible, "In metres."};
}
UnitSuggestion feet(bool isPlausible) {
  return {0.3048, "feet", 2.4, isPlausible, "In feet."};
}

QComboBox& combo(ScanDialog& dialog, const char* name) {
  return *dialog.findChild<QComboBox*>(QString::fromLatin1(name));
}
bool mayGoOn(const ScanDialog& dialog) {
  return dialog.findChild<QPushButton*>(QStringLiteral("next"))->isEnabled();
}

TEST(ScanDialog, SuggestsTheFirstAxisAlongWhichARoomCouldBeAsHigh) {
  ScanFacts facts;
  facts.ups = {{UpAxis::PlusX, true, "A shelf."}, {UpAxis::PlusZ, true, "Floor and ceiling."}};
  facts.units = {{UpAxis::PlusX, {metres(false)}}, {UpAxis::PlusZ, {feet(true), metres(false)}}};
  ScanDialog dialog(facts, UnitSystem{}, QStringLiteral("hall.ply"));
  EXPECT_EQ(dialog.choices().up, UpAxis::PlusZ);
  EXPECT_EQ(dialog.choices().unit, DrawingUnit::Feet);
  EXPECT_EQ(dialog.findChild<QLabel*>(QStringLiteral("whyUp"))->text(), QStringLiteral("Floor and ceiling."));
  EXPECT_EQ(dialog.findChild<QLabel*>(QStringLiteral("whyUnit"))->text(), QStringLiteral("In feet."));
  EXPECT_TRUE(mayGoOn(dialog));
}

TEST(ScanDialog, GuessesNothingWhereNothingIsLikely) {
  ScanFacts facts;
  facts.ups = {{UpAxis::PlusX, false, "No."}, {UpAxis::PlusZ, false, "No."}};
  facts.units = {{UpAxis::PlusX, {metres(true)}}, {UpAxis::PlusZ, {metres(false)}}};
  ScanDialog dialog(facts, UnitSystem{}, QStringLiteral("hall.ply"));
  EXPECT_EQ(combo(dialog, "up").currentIndex(), -1);
  EXPECT_EQ(combo(dialog, "unit").currentIndex(), -1);
  EXPECT_FALSE(mayGoOn(dialog));
  combo(dialog, "up").setCurrentIndex(1);
  EXPECT_FALSE(mayGoOn(dialog));
  combo(dialog, "unit").setCurrentIndex(0);
  EXPECT_TRUE(mayGoOn(dialog));
}

TEST(ScanDialog, ShowsTheScanAsItWouldStandBesideAPerson) {
  ScanFacts facts;
  facts.ups = {{UpAxis::PlusX, false, "No."}, {UpAxis::PlusZ, false, "No."}};
  facts.units = {{UpAxis::PlusX, {metres(false)}}, {UpAxis::PlusZ, {metres(false)}}};
  for (int i = 0; i < 30; ++i)
    facts.glance.emplace_back(0.1F * static_cast<float>(i), 0.0F, 0.03F * static_cast<float>(i));
  ScanDialog dialog(facts, UnitSystem{}, QStringLiteral("hall.ply"));
  const auto* preview = dialog.findChild<ScanPreview*>();
  ASSERT_NE(preview, nullptr);
  EXPECT_TRUE(preview->shown().dots.empty());
  combo(dialog, "up").setCurrentIndex(1);
  EXPECT_FALSE(preview->shown().dots.empty());
  EXPECT_FALSE(preview->shown().person);
  combo(dialog, "unit")
      .setCurrentIndex(combo(dialog, "unit").findData(static_cast<int>(DrawingUnit::Metres)));
  ASSERT_TRUE(preview->shown().person);
  const Segment2 inMetres = *preview->shown().person;
  combo(dialog, "unit")
      .setCurrentIndex(combo(dialog, "unit").findData(static_cast<int>(DrawingUnit::Millimetres)));
  const Segment2 inMillimetres = *preview->shown().person;
  EXPECT_NEAR((inMillimetres.b - inMillimetres.a).norm(), 1000 * (inMetres.b - inMetres.a).norm(), 1e-6);
}

TEST(ScanDialog, TakesWhatTheFileStates) {
  ScanFacts facts;
  facts.statedUp = UpAxis::PlusY;
  facts.statedMetresPerUnit = 1;
  facts.ups = {{UpAxis::PlusY, true, "Stated."}, {UpAxis::PlusZ, true, "Flat."}};
  facts.units = {{UpAxis::PlusY, {metres(true)}}, {UpAxis::PlusZ, {metres(true)}}};
  ScanDialog dialog(facts, UnitSystem{}, QStringLiteral("hall.glb"));
  EXPECT_EQ(dialog.choices().up, UpAxis::PlusY);
  EXPECT_EQ(dialog.choices().unit, DrawingUnit::Metres);
}

}  // namespace
}  // namespace baywright
