// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_unit.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

// Numbers of $INSUNITS: published DXF reference, HEADER section.
TEST(DxfUnit, ReadsTheHeadersNumbers) {
  EXPECT_EQ(unitFromInsunits(0), DrawingUnit::NotStated);
  EXPECT_EQ(unitFromInsunits(1), DrawingUnit::Inches);
  EXPECT_EQ(unitFromInsunits(2), DrawingUnit::Feet);
  EXPECT_EQ(unitFromInsunits(4), DrawingUnit::Millimetres);
  EXPECT_EQ(unitFromInsunits(5), DrawingUnit::Centimetres);
  EXPECT_EQ(unitFromInsunits(6), DrawingUnit::Metres);
  EXPECT_EQ(unitFromInsunits(14), DrawingUnit::Decimetres);
  EXPECT_EQ(unitFromInsunits(19), DrawingUnit::NotStated);  // light years
  EXPECT_EQ(unitFromInsunits(-7), DrawingUnit::NotStated);
}

TEST(DxfUnit, WritesTheNumberItReads) {
  for (DrawingUnit unit : kUsualDrawingUnits) EXPECT_EQ(unitFromInsunits(insunitsOf(unit)), unit);
}

TEST(DxfUnit, KnowsTheInchExactly) {
  EXPECT_EQ(metresPer(DrawingUnit::Inches), 0.0254);
  EXPECT_EQ(metresPer(DrawingUnit::Feet), 0.3048);
  EXPECT_EQ(metresPer(DrawingUnit::NotStated), 0);
}

TEST(DxfUnit, ReadsWhatPeopleType) {
  EXPECT_EQ(drawingUnitFrom("mm"), DrawingUnit::Millimetres);
  EXPECT_EQ(drawingUnitFrom("MM"), DrawingUnit::Millimetres);
  EXPECT_EQ(drawingUnitFrom("inch"), DrawingUnit::Inches);
  EXPECT_EQ(drawingUnitFrom("feet"), DrawingUnit::Feet);
  EXPECT_EQ(drawingUnitFrom("'"), DrawingUnit::Feet);
  EXPECT_EQ(drawingUnitFrom("millimeters"), DrawingUnit::Millimetres);
  EXPECT_FALSE(drawingUnitFrom("not stated"));
  EXPECT_FALSE(drawingUnitFrom(""));
  EXPECT_FALSE(drawingUnitFrom("smoots"));
}

}  // namespace
}  // namespace baywright
