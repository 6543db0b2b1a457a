// SPDX-License-Identifier: Apache-2.0
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "exchange/dxf_read.h"
#include "exchange/dxf_room.h"
#include "job/room_geometry.h"

namespace {

void require(bool condition) {
  if (!condition) std::abort();
}

}  // namespace

// Whatever the bytes: no crash, limits held, and what comes out is what the header promises.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace baywright;
  const DxfLimits limits{1u << 20, 5000, 2000, 5000, 200'000, 16};
  const auto drawing = readDxf({reinterpret_cast<const char*>(data), size}, limits);
  if (!drawing) {
    require(!drawing.error().what.empty());
    return 0;
  }
  require(drawing->curves.size() <= limits.curves);
  const auto isLayer = [&](int layer) {
    return layer >= 0 && static_cast<std::size_t>(layer) < drawing->layers.size();
  };
  for (const DxfCurve& curve : drawing->curves) {
    require(isLayer(curve.layer) && curve.points.size() >= 2 && !curve.kind.empty());
    require(curve.insert < static_cast<int>(drawing->inserts.size()));
    for (const Vec2& point : curve.points) require(point.allFinite());
    for (const DxfArc& arc : curve.arcs) require(arc.centre.allFinite() && arc.radius > 0);
  }
  for (const DxfText& text : drawing->texts) require(isLayer(text.layer) && text.at.allFinite());

  DxfChoices choices;
  choices.unit = DrawingUnit::Millimetres;
  const auto room = recogniseDrawing(*drawing, choices);
  require(room ? floorArea(room->room) > 0 : !room.error().what.empty());
  return 0;
}
