// SPDX-License-Identifier: Apache-2.0
#include "drawing/screen_light.h"

#include <algorithm>

#include "clearance/assess.h"
#include "drawing/views.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

Linework screenOf(double yaw, LengthUnit unit = LengthUnit::Metres) {
  const Job job = roomyHall()
                      .withProjector(0.5, {-1.8, 0, 1.2})
                      .inUnits(unit)
                      .with([&](Job& j) {
                        j.options[0].kit.projector.offset = 0;
                        j.options[0].placement.projector.yaw = yaw;
                      })
                      .job();
  return viewLinework(ViewKind::ScreenFace, job, assess(job), {});
}

long tints(const Linework& drawn) {
  return std::count_if(drawn.paths.begin(), drawn.paths.end(), [](const Path& path) {
    return path.layer == Layer::Beam && path.fill == Fill::Soft && !path.stroked;
  });
}
long texts(const Linework& drawn, const std::string& words) {
  return std::count_if(drawn.texts.begin(), drawn.texts.end(),
                       [&](const Text& text) { return text.text.find(words) != std::string::npos; });
}

TEST(ScreenLight, AnEvenPictureIsOneTintAndSaysSo) {
  const Linework drawn = screenOf(0);
  EXPECT_EQ(tints(drawn), 2);  // on the screen and in the legend
  EXPECT_EQ(texts(drawn, ", even"), 1);
}

// Bands lie in each other, so the brightest is as many tints deep as there are bands, in the legend too.
TEST(ScreenLight, ASkewedPictureIsBandsWithALegend) {
  for (const LengthUnit unit : {LengthUnit::Metres, LengthUnit::FeetInches}) {
    const Linework drawn = screenOf(0.35, unit);
    const long bands = texts(drawn, "from ");
    EXPECT_GE(bands, 3);
    EXPECT_EQ(tints(drawn), bands + bands * (bands + 1) / 2);
    EXPECT_EQ(texts(drawn, "the least"), 1);
    EXPECT_EQ(texts(drawn, unit == LengthUnit::Metres ? "cd/m2" : "fL"), bands);
  }
}

}  // namespace
}  // namespace baywright
