// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheets.h"

#include "program.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::textOf;

class SheetsCommand : public testing::ProgramTest {
 protected:
  void SetUp() override {
    ProgramTest::SetUp();
    save(garage(7.0, 6.0).withGolfer(1.80, Hand::Right, "Robin").withClub().bayAt(6.4, 3.0, 0).job(),
         "my garage.bayjob");
  }
};

TEST_F(SheetsCommand, WritesAPdfForEveryKindOfSheet) {
  const auto ran = run("sheets 'my garage.bayjob' --out 'the sheets'");
  ASSERT_EQ(ran.code, 0) << ran.err;
  for (const SheetKind& kind : sheetKinds()) {
    const std::string name = "the sheets/my garage-" + std::string(kind.name) + ".pdf";
    EXPECT_TRUE(textOf(folder / name).starts_with("%PDF")) << name;
    EXPECT_NE(ran.out.find(name), std::string::npos);
  }
}

TEST_F(SheetsCommand, UsesThePaperThatIsAskedFor) {
  ASSERT_EQ(run("sheets 'my garage.bayjob' --out s --paper A2 --scale 1:50").code, 0);
  const std::string info =
      "pdfinfo '" + (folder / "s/my garage-plan.pdf").string() + "' >'" + (folder / "info").string() + "'";
  ASSERT_EQ(std::system(info.c_str()), 0);
  // 594 x 420 mm in whole points of 1/72 inch.
  EXPECT_NE(textOf(folder / "info").find("1684 x 1191 pts"), std::string::npos) << textOf(folder / "info");
}

TEST_F(SheetsCommand, RefusesPaperAndScaleThatDoNotExistOrDoNotFit) {
  EXPECT_EQ(run("sheets 'my garage.bayjob' --out s --paper A9").code, 2);
  EXPECT_EQ(run("sheets 'my garage.bayjob' --out s --scale big").code, 2);
  const auto tooLarge = run("sheets 'my garage.bayjob' --out s --paper A4 --scale 1:10");
  EXPECT_EQ(tooLarge.code, 2);
  EXPECT_TRUE(tooLarge.err.starts_with("baywright: ")) << tooLarge.err;
  EXPECT_FALSE(std::filesystem::exists(folder / "s/my garage-plan.pdf"));
}

TEST_F(SheetsCommand, RefusesAFolderThatCannotBeMade) {
  std::ofstream(folder / "taken") << "a file";
  EXPECT_EQ(run("sheets 'my garage.bayjob' --out taken/inside").code, 2);
}

}  // namespace
}  // namespace baywright
