// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_layers.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "exchange/dxf_names.h"

namespace baywright {

namespace {

using detail::NameHint;

double lengthOf(const DxfCurve& curve) {
  double length = 0;
  for (std::size_t i = 1; i < curve.points.size(); ++i)
    length += (curve.points[i] - curve.points[i - 1]).norm();
  return curve.closed ? length + (curve.points.front() - curve.points.back()).norm() : length;
}

std::vector<LayerView> countedLayers(const DxfDrawing& drawing) {
  std::vector<LayerView> views(drawing.layers.size());
  for (std::size_t i = 0; i < views.size(); ++i) {
    views[i].layer = static_cast<int>(i);
    views[i].name = drawing.layers[i].name;
  }
  for (const DxfCurve& curve : drawing.curves) {
    LayerView& view = views[static_cast<std::size_t>(curve.layer)];
    ++view.curves;
    view.length += lengthOf(curve);
    if (curve.closed) view.closedArea = std::max(view.closedArea, std::abs(signedArea(curve.points)));
  }
  std::erase_if(views, [](const LayerView& view) { return view.curves == 0; });
  return views;
}

std::string_view kindOf(NameHint hint) {
  switch (hint) {
    case NameHint::Wall:
      return "walls";
    case NameHint::Door:
      return "doors";
    case NameHint::Window:
      return "windows";
    case NameHint::NotBuilt:
      break;
  }
  return "something else than walls";
}

void judge(LayerView& view, const DxfLayer& layer, bool anyWallName) {
  const auto hinted = detail::hintOf(view.name);
  if (!layer.shown()) {
    view.reason = layer.frozen ? "It is frozen in the drawing." : "It is switched off in the drawing.";
  } else if (hinted) {
    view.suggested = hinted->hint == NameHint::Wall;
    view.reason = "Its name holds \"" + std::string(hinted->word) + "\", which speaks of " +
                  std::string(kindOf(hinted->hint)) + ".";
  } else {
    view.suggested = !anyWallName;
    view.reason = anyWallName ? "Its name says nothing, and other layers are named after walls."
                              : "Its name says nothing, and no layer is named after walls.";
  }
}

}  // namespace

std::vector<LayerView> viewLayers(const DxfDrawing& drawing) {
  std::vector<LayerView> views = countedLayers(drawing);
  const bool anyWallName = std::any_of(views.begin(), views.end(), [&](const LayerView& view) {
    const auto hinted = detail::hintOf(view.name);
    return hinted && hinted->hint == NameHint::Wall &&
           drawing.layers[static_cast<std::size_t>(view.layer)].shown();
  });
  for (LayerView& view : views)
    judge(view, drawing.layers[static_cast<std::size_t>(view.layer)], anyWallName);
  std::stable_sort(views.begin(), views.end(), [](const LayerView& a, const LayerView& b) {
    return a.suggested != b.suggested ? a.suggested : a.length > b.length;
  });
  return views;
}

}  // namespace baywright
