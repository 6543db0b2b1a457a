// SPDX-License-Identifier: Apache-2.0
#include "drawing/screen_light.h"

#include <array>
#include <cmath>

#include "drawing/marks.h"
#include "optics/light_bands.h"
#include "optics/photometry.h"
#include "units/number_text.h"
#include "units/quantity_text.h"

namespace baywright::detail {
namespace {

LightBands bandsOf(const ViewInput& input) {
  const PictureLight light =
      lightOf(input.kit().projector, input.kit().screen, input.job.requirements.ambient);
  const double unit = isImperial(input.job.units.length) ? kLuxPerFootCandle : 1;
  return lightBands(input.assessment.picture->picture, light, unit);
}

std::string luxText(double lux, const UnitSystem& units) {
  return formatQuantity(lux, QuantityKind::Illuminance, units);
}

// Tints add up: a band is painted over all those that it lies in.
Path tint(std::vector<Vec2> ring, Id id) {
  Path area = areaOf(Layer::Beam, {std::move(ring)}, Fill::Soft, id);
  area.stroked = false;
  return area;
}

void addContour(Board& board, const ViewInput& input, const LightBand& band) {
  const Segment2& line = *band.contour;
  Path path = polyline(Layer::Beam, {line.a, line.b}, input.kit().projector.id);
  path.dash = LineDash::Continuous;
  board.add(std::move(path));
  std::vector<Text> candidates;
  for (const double share : {0.17, 0.83, 0.33, 0.67}) {
    Text text = textAt(Layer::Labels, line.a + share * (line.b - line.a), luxText(band.lux, input.job.units),
                       TextAnchor::Centre);
    text.heightMm = kSmallText;
    text.onGround = true;
    candidates.push_back(std::move(text));
  }
  board.addWhereFree(candidates);
}

}  // namespace

void drawLightTints(Board& board, const ViewInput& input) {
  for (const LightBand& band : bandsOf(input).bands) board.add(tint(band.region, input.kit().projector.id));
}

void drawLightContours(Board& board, const ViewInput& input) {
  for (const LightBand& band : bandsOf(input).bands) {
    if (band.contour) addContour(board, input, band);
  }
}

void drawNinePoints(Board& board, const ViewInput& input) {
  const PictureZone& zone = *input.assessment.picture;
  const auto& target = zone.corners.target;
  const auto at = [&](double across, double down) {
    const Vec2 top = target[0] + across * (target[1] - target[0]);
    const Vec2 bottom = target[3] + across * (target[2] - target[3]);
    return Vec2(top + down * (bottom - top));
  };
  std::vector<std::vector<Vec2>> lines;
  for (const double third : {1.0 / 3, 2.0 / 3}) {
    lines.push_back({at(third, 0), at(third, 1)});
    lines.push_back({at(0, third), at(1, third)});
  }
  Path grid = strokes(Layer::Beam, std::move(lines), input.kit().projector.id);
  grid.dash = LineDash::Dotted;
  board.add(std::move(grid));
  for (std::size_t i = 0; i < zone.brightness.ninePoints.size(); ++i) {
    const Vec2 middle = at((static_cast<double>(i % 3) + 0.5) / 3, (static_cast<double>(i / 3) + 0.5) / 3);
    Text value = textAt(Layer::Labels, middle - Vec2(0, board.mm(kSmallText / 2)),
                        luxText(zone.brightness.ninePoints[i], input.job.units), TextAnchor::Centre);
    value.heightMm = kSmallText;
    value.onGround = true;
    board.add(std::move(value));
  }
}

void drawLightLegend(Board& board, const ViewInput& input) {
  const PictureZone& zone = *input.assessment.picture;
  const UnitSystem& units = input.job.units;
  const auto share = [&](double value) { return formatQuantity(value, QuantityKind::Ratio, units); };
  const std::array lines = {
      "Light: mean " + luxText(zone.brightness.meanIlluminance, units) +
          " where the picture falls, uniformity of the nine points " + share(zone.brightness.uniformity) +
          ", contrast in this room " + formatNumber(zone.brightness.contrast, 0, units) + ":1",
      "The picture covers " + share(zone.picture.coverage) + " of the screen; " + share(zone.picture.spill) +
          " of it misses the screen; corners cost " + share(zone.corners.pixelLoss) + " of the pixels",
  };
  const double left = (input.kit().screen.width - input.kit().frame.width) / 2;
  double y = -input.kit().screen.bottom - board.mm(18);
  const auto addText = [&](double x, const std::string& words) {
    Text text = textAt(Layer::Labels, {x, y}, words);
    text.heightMm = kSmallText;
    board.add(std::move(text));
  };
  for (const std::string& line : lines) {
    addText(left, line);
    y -= board.mm(3.2);
  }

  constexpr double kPatch = 8;    // mm wide
  constexpr double kColumn = 58;  // mm from patch to patch
  constexpr std::size_t kColumns = 2;
  const double gain = input.kit().screen.gain;
  const LightBands light = bandsOf(input);
  for (std::size_t i = 0; i < light.bands.size(); ++i) {
    const double x = left + board.mm(kColumn * static_cast<double>(i % kColumns));
    const Vec2 low(x, y - board.mm(0.4));
    const Vec2 high = low + Vec2(board.mm(kPatch), board.mm(2.6));
    for (std::size_t layer = 0; layer <= i; ++layer)
      board.add(tint({low, {high.x(), low.y()}, high, {low.x(), high.y()}}, {}));
    const double lux = light.bands[i].lux;
    addText(high.x() + board.mm(1.5),
            (light.bands.size() == 1 ? "" : "from ") + luxText(lux, units) + ", " +
                formatQuantity(luminance(lux, gain), QuantityKind::Luminance, units) +
                (light.bands.size() == 1 ? ", even"
                 : i == 0                ? ", the least"
                                         : ""));
    if (i % kColumns + 1 == kColumns || i + 1 == light.bands.size()) y -= board.mm(3.6);
  }
}

}  // namespace baywright::detail
