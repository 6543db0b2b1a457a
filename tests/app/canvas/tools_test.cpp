// SPDX-License-Identifier: Apache-2.0
#include "canvas/tools.h"

#include <gtest/gtest.h>

#include <QKeySequence>
#include <set>

#include "canvas/tool_box.h"
#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(Tools, StandInTheOrderOfTheirKinds) {
  for (const ToolRow& row : tools()) EXPECT_EQ(&toolRow(row.kind), &row);
  EXPECT_EQ(tools().size(), static_cast<std::size_t>(ToolKind::Zoom) + 1);
}

TEST(Tools, HaveNamesHelpAndKeysOfTheirOwn) {
  std::set<std::string> names;
  std::set<QString> keys;
  for (const ToolRow& row : tools()) {
    EXPECT_TRUE(names.insert(row.name).second) << row.name;
    EXPECT_TRUE(keys.insert(QKeySequence(QString::fromLatin1(row.shortcut)).toString()).second) << row.name;
    EXPECT_FALSE(toolText(row.help).isEmpty());
    EXPECT_NE(std::string(row.icon).find("tool-"), std::string::npos);
  }
  // R turns what is selected.
  EXPECT_FALSE(keys.contains(QStringLiteral("R")));
}

TEST(Tools, LeaveNoTraceWhenTheyAreTakenPressedAndGivenUp) {
  for (const ToolRow& row : tools()) {
    for (const ViewKind view :
         {ViewKind::Plan, ViewKind::DownRange, ViewKind::Side, ViewKind::ScreenFace, ViewKind::Wall}) {
      if (!row.worksIn(view)) continue;
      const Job room = garage(8, 6).withBox("Box", {2, 2}, 1, 1, 0, 1).job();
      FakeToolHost host(room, {view, idNamed(room, "Wall A")});
      const Job before = host.job();
      const auto tool = row.make(view);
      EXPECT_FALSE(tool->status(host).isEmpty()) << row.name;
      host.hold(*tool, {3.1, 2.9}, {3.3, 3.1});
      if (host.job() != before) continue;  // tools that place by the press alone
      tool->cancel(host);
      EXPECT_EQ(host.job(), before) << row.name;
      EXPECT_FALSE(tool->isBusy()) << row.name;
    }
  }
}

TEST(ToolBox, TakesTheToolThatSuitsAPrototype) {
  ToolBox box;
  Fixture fixture;
  fixture.name = "Duct";
  fixture.shape = CylinderShape{};
  box.placeFixture(fixture);
  EXPECT_EQ(box.current(), ToolKind::FixtureCylinder);
  EXPECT_EQ(box.settings().fixture.name, "Duct");
  fixture.shape = PrismShape{};
  box.placeFixture(fixture);
  EXPECT_EQ(box.current(), ToolKind::FixturePolygon);
  fixture.shape = BoxShape{};
  box.placeFixture(fixture);
  EXPECT_EQ(box.current(), ToolKind::FixtureBox);
  Opening opening;
  opening.kind = OpeningKind::Passage;
  box.placeOpening(opening);
  EXPECT_EQ(box.current(), ToolKind::Opening);
  EXPECT_EQ(box.settings().opening.kind, OpeningKind::Passage);
}

}  // namespace
}  // namespace baywright
