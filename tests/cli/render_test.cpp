// SPDX-License-Identifier: Apache-2.0
#include "program.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::textOf;

class RenderCommand : public testing::ProgramTest {
 protected:
  void SetUp() override {
    ProgramTest::SetUp();
    save(garage(7.0, 6.0).withGolfer(1.80, Hand::Right, "Robin").withClub().bayAt(6.4, 3.0, 0).job(),
         "job.bayjob");
  }
};

TEST_F(RenderCommand, WritesFlatViewsAndSaysThat3DIsMissingWithoutADisplay) {
  const auto ran = run("render job.bayjob --out pictures");
  EXPECT_EQ(ran.code, 3) << ran.err;
  EXPECT_NE(ran.err.find("The 3D picture is missing"), std::string::npos) << ran.err;
  for (const char* name : {"plan", "down-range", "side", "screen", "wall-a", "wall-d"}) {
    EXPECT_TRUE(textOf(folder / ("pictures/job-" + std::string(name) + ".png")).starts_with("\x89PNG"))
        << name;
  }
  EXPECT_FALSE(std::filesystem::exists(folder / "pictures/job-3d.png"));
}

TEST_F(RenderCommand, WritesTheRoomIn3DWhereThereIsADisplay) {
  if (std::system("command -v xvfb-run >/dev/null") != 0) GTEST_SKIP() << "xvfb-run is not installed";
  const auto ran =
      run("render job.bayjob --out pictures --width 800", "xvfb-run -a -s '-screen 0 1280x800x24'");
  EXPECT_EQ(ran.code, 0) << ran.err;
  EXPECT_GT(textOf(folder / "pictures/job-3d.png").size(), 20000U);
}

TEST_F(RenderCommand, RefusesAWidthThatIsNone) {
  EXPECT_EQ(run("render job.bayjob --out p --width wide").code, 2);
  EXPECT_EQ(run("render job.bayjob --out p --width 90000").code, 2);
}

}  // namespace
}  // namespace baywright
