// SPDX-License-Identifier: Apache-2.0
#include "canvas/ceiling_tool.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

void type(FakeToolHost& host, Tool& tool, double height) {
  EXPECT_FALSE(tool.take(host, 0, height));
  tool.accept(host);
}

TEST(CeilingTool, TakesAHeightWhereThePlanIsClicked) {
  FakeToolHost host(garage(8, 6).job());
  CeilingTool tool;
  host.click(tool, {3.2, 2.1}, Qt::ControlModifier);
  ASSERT_EQ(host.entries, std::vector<std::size_t>{0});
  EXPECT_TRUE(std::isnan(tool.fields(host)[0].value)) << "nobody has read it yet";
  EXPECT_TRUE(host.job().measurements.empty());
  type(host, tool, 2.412);
  ASSERT_EQ(host.job().measurements.size(), 1u);
  const Measurement& reading = host.job().measurements[0];
  EXPECT_EQ(reading.kind, MeasurementKind::CeilingHeight);
  EXPECT_EQ(reading.position, Vec2(3.2, 2.1));
  EXPECT_FALSE(reading.at);
  EXPECT_DOUBLE_EQ(reading.value, 2.412);
  EXPECT_EQ(host.document().undoStack().count(), 1);
  EXPECT_FALSE(tool.isBusy());
  EXPECT_EQ(host.doneCount, 0) << "it stays in hand for the next height";
}

TEST(CeilingTool, NamesTheCornerThatItIsPutOn) {
  FakeToolHost host(garage(8, 6).job());
  CeilingTool tool;
  host.click(tool, {7.96, 0.03});
  EXPECT_EQ(tool.fields(host).size(), 1u) << "a corner needs no distances";
  type(host, tool, 2.4);
  ASSERT_EQ(host.job().measurements.size(), 1u);
  EXPECT_EQ(host.job().measurements[0].at, idNamed(host.job(), "Wall B"));
}

TEST(CeilingTool, PutsAHeightWhereItsDistancesFromWallsSay) {
  FakeToolHost host(garage(8, 6).job());
  CeilingTool tool;
  host.click(tool, {3.2, 2.1}, Qt::ControlModifier);
  for (const auto& [wall, distance] : {std::pair{"to wall A", 1.25}, std::pair{"to wall D", 3.5}}) {
    const auto fields = tool.fields(host);
    const auto field =
        std::find_if(fields.begin(), fields.end(),
                     [name = QString::fromLatin1(wall)](const TypedField& f) { return f.what == name; });
    ASSERT_NE(field, fields.end()) << wall;
    EXPECT_FALSE(tool.take(host, static_cast<std::size_t>(field - fields.begin()), distance));
  }
  tool.accept(host);
  EXPECT_TRUE(host.job().measurements.empty()) << "a place is no height";
  EXPECT_EQ(host.entries.back(), 0u);
  type(host, tool, 2.3);
  ASSERT_EQ(host.job().measurements.size(), 1u);
  EXPECT_TRUE(host.job().measurements[0].position.isApprox(Vec2(3.5, 1.25), 1e-12));
}

TEST(CeilingTool, RefusesWhatLiesOutsideTheRoom) {
  FakeToolHost host(garage(8, 6).job());
  CeilingTool tool;
  host.click(tool, {9, 2}, Qt::ControlModifier);
  EXPECT_FALSE(tool.isBusy());
  ASSERT_FALSE(host.said.empty());
  host.click(tool, {3.2, 2.1}, Qt::ControlModifier);
  const auto problem = tool.take(host, 1, 50);
  ASSERT_TRUE(problem);
  EXPECT_FALSE(problem->next.empty());
  tool.cancel(host);
  EXPECT_TRUE(host.job().measurements.empty());
}

TEST(CeilingTool, CorrectsAndRemovesTheHeightUnderThePointer) {
  FakeToolHost host(garage(8, 6).job());
  CeilingTool tool;
  host.click(tool, {3, 2}, Qt::ControlModifier);
  type(host, tool, 2.4);
  host.click(tool, {3.02, 2.02}, Qt::ControlModifier);
  EXPECT_DOUBLE_EQ(tool.fields(host)[0].value, 2.4);
  type(host, tool, 2.45);
  ASSERT_EQ(host.job().measurements.size(), 1u);
  EXPECT_DOUBLE_EQ(host.job().measurements[0].value, 2.45);
  EXPECT_EQ(host.job().measurements[0].position, Vec2(3, 2));
  host.move(tool, {3.01, 2.01}, Qt::ControlModifier);
  EXPECT_TRUE(host.key(tool, Qt::Key_Delete));
  EXPECT_TRUE(host.job().measurements.empty());
  host.document().undoStack().undo();
  EXPECT_EQ(host.job().measurements.size(), 1u);
}

TEST(CeilingTool, TakesTheNextHeightWithTheSameInstrument) {
  Job job = garage(8, 6).job();
  Measurement first;
  first.id = job.takeId();
  first.kind = MeasurementKind::CeilingHeight;
  first.position = {1, 1};
  first.value = 2.4;
  first.how = Instrument::Laser;
  job.measurements.push_back(first);
  FakeToolHost host(job);
  CeilingTool tool;
  host.click(tool, {3, 2}, Qt::ControlModifier);
  EXPECT_TRUE(tool.fields(host)[0].what.contains(QStringLiteral("laser")));
  type(host, tool, 2.5);
  EXPECT_EQ(host.job().measurements.back().how, Instrument::Laser);
}

}  // namespace
}  // namespace baywright
