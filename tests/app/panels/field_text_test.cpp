// SPDX-License-Identifier: Apache-2.0
#include "panels/field_text.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

Field field(PropertyKind kind) {
  Field result;
  result.kind = kind;
  return result;
}

const UnitSystem kMetric{LengthUnit::Metres, 16, '.'};

TEST(FieldText, ReadsBackWhatItShows) {
  const struct {
    Field field;
    FieldValue value;
  } cases[] = {{field(PropertyKind::Length), -1.25},
               {field(PropertyKind::Size), 2.5},
               {field(PropertyKind::Number), 1.2},
               {field(PropertyKind::Count), 1920},
               {field(PropertyKind::Words), std::string("Frame 340")},
               {field(PropertyKind::Measured), taped(2.41)}};
  for (const auto& test : cases) {
    const auto read = valueOf(test.field, textOf(test.field, test.value, kMetric), test.value, kMetric);
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(*read, test.value);
  }
}

TEST(FieldText, ShowsNothingForWhatIsNotMeasured) {
  EXPECT_TRUE(textOf(field(PropertyKind::Measured), notMeasured(2.4), kMetric).isEmpty());
}

TEST(FieldText, TakesATypedFigureAsTapedWhenThereWasNone) {
  const auto read = valueOf(field(PropertyKind::Measured), QStringLiteral("2.5"), notMeasured(2.4), kMetric);
  ASSERT_TRUE(read.has_value());
  EXPECT_EQ(std::get<Dimension>(*read), taped(2.5));
}

TEST(FieldText, KeepsHowAFigureWasFound) {
  const auto read = valueOf(field(PropertyKind::Measured), QStringLiteral("2.5"), shot(2.4), kMetric);
  EXPECT_EQ(std::get<Dimension>(*read), shot(2.5));
}

TEST(FieldText, RefusesWithASentence) {
  EXPECT_FALSE(valueOf(field(PropertyKind::Size), QStringLiteral("-2"), 1.0, kMetric).has_value());
  EXPECT_FALSE(valueOf(field(PropertyKind::Count), QStringLiteral("2.5"), 1, kMetric).has_value());
  const auto read = valueOf(field(PropertyKind::Length), QStringLiteral("three"), 1.0, kMetric);
  ASSERT_FALSE(read.has_value());
  EXPECT_FALSE(read.error().sentence().empty());
}

}  // namespace
}  // namespace baywright
