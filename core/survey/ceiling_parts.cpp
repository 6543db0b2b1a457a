// SPDX-License-Identifier: Apache-2.0
#include "survey/ceiling_parts.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "geometry/polygon_sets.h"

namespace baywright::detail {
namespace {

CeilingPart partOf(const ReadPlane& plane, const std::string& name, Instrument how) {
  CeilingPart part;
  part.name = name;
  part.anchor = plane.anchor;
  part.height = {plane.height, how, true};
  part.slope = plane.slope;
  return part;
}

/// The floor on one side of a line: where sense (across . p - where) >= 0.
std::vector<Ring> sideOf(const Ring& floor, const Vec2& across, double where, double sense) {
  double reach = 1;
  for (const Vec2& corner : floor) reach = std::max(reach, corner.norm());
  reach = 3 * (reach + std::abs(where));
  const Vec2 base = where * across;
  const Vec2 along = reach * leftOf(across);
  const Vec2 far = sense * reach * across;
  const Ring half{base - along, base + along, base + along + far, base - along + far};
  const auto pieces = intersectionOf({{floor, {}}}, {{half, {}}});
  std::vector<Ring> rings;
  if (!pieces) return rings;
  for (const Polygon& piece : *pieces) rings.push_back(piece.outer);
  return rings;
}

void addSide(std::vector<CeilingPart>& parts, CeilingPart part, const std::vector<Ring>& regions) {
  for (std::size_t i = 0; i < regions.size(); ++i) {
    CeilingPart piece = part;
    if (i > 0) piece.name += " " + std::to_string(i + 1);
    piece.region = regions[i];
    parts.push_back(piece);
  }
}

}  // namespace

std::vector<CeilingPart> ceilingPartsOf(const CeilingModel& model, const Ring& floor, Instrument how) {
  if (model.planes.size() == 1)
    return {partOf(model.planes[0], model.shape == CeilingShape::Level ? "Ceiling" : "Sloped ceiling", how)};
  const ReadPlane& a = model.planes[0];
  const ReadPlane& b = model.planes[1];
  std::vector<CeilingPart> parts;
  if (model.shape == CeilingShape::Creased) {
    addSide(parts, partOf(a, "Ceiling", how), sideOf(floor, model.across, model.where, -1));
    addSide(parts, partOf(b, "Ceiling beyond the crease", how), sideOf(floor, model.across, model.where, 1));
    return parts;
  }
  const bool firstIsLow = a.height < b.height;
  parts.push_back(partOf(firstIsLow ? b : a, "Ceiling", how));
  addSide(parts, partOf(firstIsLow ? a : b, "Lower ceiling", how),
          sideOf(floor, model.across, firstIsLow ? model.highEnd : model.lowEnd, firstIsLow ? -1 : 1));
  return parts;
}

}  // namespace baywright::detail
