// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "exchange/dxf_record.h"
#include "exchange/dxf_shapes.h"
#include "exchange/dxf_text.h"

namespace baywright::detail {

struct DxfWords {
  std::string words;
  Vec3 at = Vec3::Zero();
  double height = 0;
};

/// A block placed once, or in rows and columns.
struct DxfPlacing {
  std::string block;
  DxfMap objectAxes = DxfMap::Identity();  ///< world from object coordinates
  Vec3 at = Vec3::Zero();                  ///< object coordinates
  Vec3 scale = Vec3::Ones();
  double rotation = 0;  ///< radians
  int columns = 1;
  int rows = 1;
  double columnStep = 0;
  double rowStep = 0;
};

/// Lines that one entity draws apart from each other.
using DxfPaths = std::vector<DxfPath>;

/// What one entity draws, in the coordinates of the block or drawing that it stands in.
using DxfShape = std::variant<DxfPath, DxfPaths, DxfWords, DxfPlacing>;

struct DxfEntity {
  std::string_view kind;  ///< of kDxfKinds
  int layer = 0;
  bool invisible = false;
  DxfShape shape;
};

/// The kinds that are read; the first of them are single records.
inline constexpr std::string_view kDxfKinds[] = {"LINE",   "LWPOLYLINE", "ARC",    "CIRCLE", "ELLIPSE",
                                                 "SPLINE", "TEXT",       "MTEXT",  "ATTRIB", "SOLID",
                                                 "TRACE",  "3DFACE",     "INSERT", "MLINE",  "POLYLINE"};
/// Its outlines are kept aside: DxfDrawing::fillings.
inline constexpr std::string_view kHatchKind = "HATCH";
/// The same name out of kDxfKinds, so that it outlives the file's bytes; empty for other kinds.
std::string_view knownKind(std::string_view kind);

/// A vertex of a POLYLINE.
struct DxfVertex {
  Vec3 at = Vec3::Zero();
  double bulge = 0;
};

/// The shape of a record of any known kind but POLYLINE; nothing when its numbers are missing, impossible, or
/// make a thing without size.
std::optional<DxfShape> shapeOf(const DxfRecord& record, const DxfEncoding& encoding);

/// Vertices joined, with `elevation` and `axes` of the polyline. Nothing for fewer than two.
std::optional<DxfPath> polylinePath(std::span<const DxfVertex> vertices, bool closed, const DxfMap& axes);

}  // namespace baywright::detail
