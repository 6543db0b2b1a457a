// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "clearance/finding.h"
#include "drawing/layers.h"
#include "geometry/vec.h"

namespace baywright {

/// How the inside of a closed path is filled. Hatches are lines in the drawing itself, never a brush of the
/// painter, so that screen and paper agree.
enum class Fill { None, Soft, Full, Poche };

/// Polygons with holes, or polylines, in drawing coordinates (x right, y up). Metres for views, millimetres
/// of paper for sheets.
struct Path {
  Layer layer = Layer::Fixtures;
  /// Closed: outlines and holes (even-odd). Open: so many polylines, as in a hatch.
  std::vector<std::vector<Vec2>> rings;
  bool closed = false;
  Fill fill = Fill::None;
  bool stroked = true;               ///< false: the area alone; other paths draw its outline
  std::optional<Verdict> verdict;    ///< colours and hatches it as this verdict
  Id id;                             ///< what it belongs to; selects and hovers with it
  std::optional<LineWeight> weight;  ///< overrides the layer's
  std::optional<LineDash> dash;
};

enum class TextAnchor { Left, Centre, Right };

/// One line of text. Its height is millimetres on the paper or of the screen, whatever the drawing's scale.
/// The height is that of a capital letter, the nominal size h of ISO 3098: the font's em is larger by
/// kEmPerCapital (text_width.h).
struct Text {
  Layer layer = Layer::Labels;
  Vec2 at = Vec2::Zero();  ///< on the baseline
  std::string text;        ///< UTF-8
  double heightMm = 2.5;
  double angle = 0;  ///< radians, counter-clockwise
  TextAnchor anchor = TextAnchor::Left;
  bool bold = false;
  bool onGround = false;  ///< stands on a patch of the paper's colour, to be read over hatches and lines
  std::optional<Verdict> verdict;
  Id id;
};

/// A dimension between two points with its line `offset` to the left of from -> to (drawing units), oblique
/// strokes at its ends (ISO 129-1 for construction) or arrowheads when `arrows`. mark_shapes.h gives its
/// lines and text.
struct DimensionMark {
  Layer layer = Layer::Dimensions;
  Vec2 from = Vec2::Zero();
  Vec2 to = Vec2::Zero();
  double offset = 0;
  std::string text;
  bool arrows = false;
  std::optional<Verdict> verdict;
  Id id;
};

/// A symbol of constant size on paper or screen: where a strike point, a verdict or a handle is.
/// mark_shapes.h gives its lines.
enum class SymbolKind { StrikePoint, Lens, Tick, Tilde, Bar, Question, Corner };
struct Symbol {
  Layer layer = Layer::Bay;
  SymbolKind kind = SymbolKind::StrikePoint;
  Vec2 at = Vec2::Zero();
  double angle = 0;
  double sizeMm = 3;
  std::optional<Verdict> verdict;
  Id id;
};

/// What every renderer draws: views on the screen, sheets, exported files.
struct Linework {
  std::vector<Path> paths;
  std::vector<Text> texts;
  std::vector<DimensionMark> dimensions;
  std::vector<Symbol> symbols;

  /// Smallest box around all paths and dimensions; nullopt when there is nothing.
  std::optional<Eigen::AlignedBox2d> extent() const;
  void append(const Linework& other);
};

/// Takes a drawing to its place on a page: to = scale * from + offset. Text heights and symbol sizes stay.
struct Placing {
  double scale = 1;
  Vec2 offset = Vec2::Zero();

  Vec2 operator()(const Vec2& p) const { return scale * p + offset; }
};
Linework placed(const Linework& linework, const Placing& placing);

}  // namespace baywright
