// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_drawing.h"

#include <algorithm>
#include <cmath>

namespace baywright {

namespace {

void include(std::optional<PlanBox>& box, const DxfCurve& curve) {
  for (const Vec2& point : curve.points) {
    if (!box) box = PlanBox{point, point};
    box->low = box->low.cwiseMin(point);
    box->high = box->high.cwiseMax(point);
  }
}

bool sameName(std::string_view a, std::string_view b) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [&](char x, char y) { return lower(x) == lower(y); });
}

std::string counted(std::size_t count, const std::string& kind) {
  return std::to_string(count) + " " + kind + (count == 1 ? " entity" : " entities");
}

}  // namespace

Vec2 DxfArc::at(double angle) const {
  return centre + radius * Vec2(std::cos(angle), std::sin(angle));
}

std::optional<PlanBox> extentOf(const DxfDrawing& drawing) {
  std::optional<PlanBox> box;
  for (const DxfCurve& curve : drawing.curves)
    if (!curve.hidden) include(box, curve);
  return box;
}

std::optional<PlanBox> drawnExtent(const DxfDrawing& drawing) {
  if (const auto box = extentOf(drawing)) return box;
  std::optional<PlanBox> box;
  for (const DxfCurve& outline : drawing.fillings)
    if (!outline.hidden) include(box, outline);
  return box;
}

std::optional<PlanBox> extentOf(const DxfDrawing& drawing, std::span<const int> layers) {
  std::optional<PlanBox> box;
  for (const DxfCurve& curve : drawing.curves)
    if (std::find(layers.begin(), layers.end(), curve.layer) != layers.end()) include(box, curve);
  return box;
}

std::optional<int> layerNamed(const DxfDrawing& drawing, std::string_view name) {
  for (std::size_t i = 0; i < drawing.layers.size(); ++i)
    if (sameName(drawing.layers[i].name, name)) return static_cast<int>(i);
  return std::nullopt;
}

std::vector<std::string> skippedSentences(const DxfDrawing& drawing) {
  std::vector<std::string> sentences;
  for (const DxfKindCount& count : drawing.kinds) {
    if (count.notUsed > 0)
      sentences.push_back(counted(count.notUsed, count.kind) + " left out: it is not read as walls.");
    if (count.paper > 0)
      sentences.push_back(counted(count.paper, count.kind) +
                          " left out: on the printed sheet, not in the plan.");
    if (count.damaged > 0)
      sentences.push_back(counted(count.damaged, count.kind) + " left out: damaged, or without size.");
  }
  return sentences;
}

}  // namespace baywright
