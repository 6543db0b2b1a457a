// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_expand.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace baywright::detail {

namespace {

/// Where a block's contents go.
struct Place {
  DxfMap world = DxfMap::Identity();
  int layer = -1;  ///< of the insert: what lies on layer 0 goes there; -1 in the drawing itself
  int insert = -1;
  bool hidden = false;
  int depth = 0;
};

bool isFinite(const std::vector<Vec2>& points) {
  return std::all_of(points.begin(), points.end(), [](const Vec2& p) {
    return std::abs(p.x()) <= kLargestDxfNumber && std::abs(p.y()) <= kLargestDxfNumber;  // false for NaN
  });
}

class Expansion {
 public:
  Expansion(const DxfDocument& document, DxfDrawing& drawing, const DxfLimits& limits,
            const Progress& progress)
      : document_(document), drawing_(drawing), limits_(limits), progress_(progress) {
    const auto zero = std::find_if(document.layers.begin(), document.layers.end(),
                                   [](const DxfLayer& layer) { return layer.name == "0"; });
    if (zero != document.layers.end()) layerZero_ = static_cast<int>(zero - document.layers.begin());
  }

  void run();

 private:
  void draw(const DxfContents& contents, const Place& place);
  void drawPath(const DxfEntity& entity, const DxfPath& path, const Place& place);
  void drawWords(const DxfEntity& entity, const DxfWords& words, const Place& place);
  void drawBlock(const DxfEntity& entity, const DxfPlacing& placing, const Place& place);
  int layerOf(const DxfEntity& entity, const Place& place) const;
  bool hides(int layer, const DxfEntity& entity, const Place& place) const;
  void note(const std::string& sentence);
  void noteBlocks();

  const DxfDocument& document_;
  DxfDrawing& drawing_;
  const DxfLimits& limits_;
  const Progress& progress_;
  int layerZero_ = -1;
  std::vector<const DxfBlock*> open_;  // blocks that are being drawn, outermost first
  std::set<const DxfBlock*> used_;
  std::set<std::string> noted_;
  std::size_t placings_ = 0;
  std::size_t points_ = 0;
  bool full_ = false;
};

void Expansion::run() {
  draw(document_.model, Place{});
  noteBlocks();
}

void Expansion::note(const std::string& sentence) {
  constexpr std::size_t kMostNotes = 50;
  if (noted_.size() < kMostNotes && noted_.insert(sentence).second) drawing_.notes.push_back(sentence);
}

// What blocks that were drawn hold beside lines.
void Expansion::noteBlocks() {
  DxfKindCounts counts;
  for (const auto& [name, block] : document_.blocks) {
    if (!used_.contains(&block)) continue;
    for (const auto& [kind, count] : block.contents.kinds) {
      counts[kind].notUsed += count.notUsed;
      counts[kind].damaged += count.damaged;
    }
  }
  for (const auto& [kind, count] : counts)
    if (count.notUsed + count.damaged > 0)
      note(std::to_string(count.notUsed + count.damaged) + " " + kind + " left out of blocks.");
}

int Expansion::layerOf(const DxfEntity& entity, const Place& place) const {
  return place.layer >= 0 && entity.layer == layerZero_ ? place.layer : entity.layer;
}

bool Expansion::hides(int layer, const DxfEntity& entity, const Place& place) const {
  return place.hidden || entity.invisible || !document_.layers[static_cast<std::size_t>(layer)].shown();
}

void Expansion::draw(const DxfContents& contents, const Place& place) {
  std::size_t n = 0;
  for (const DxfEntity& entity : contents.entities) {
    if (full_) return;
    if (++n % 4096 == 0 && progress_.stop()) full_ = true;
    if (const auto* path = std::get_if<DxfPath>(&entity.shape))
      drawPath(entity, *path, place);
    else if (const auto* paths = std::get_if<DxfPaths>(&entity.shape))
      for (const DxfPath& one : *paths) drawPath(entity, one, place);
    else if (const auto* words = std::get_if<DxfWords>(&entity.shape))
      drawWords(entity, *words, place);
    else
      drawBlock(entity, std::get<DxfPlacing>(entity.shape), place);
  }
}

void Expansion::drawPath(const DxfEntity& entity, const DxfPath& path, const Place& place) {
  const DxfPath there = mapped(path, place.world);
  DxfCurve curve;
  curve.kind = entity.kind;
  curve.layer = layerOf(entity, place);
  curve.insert = place.insert;
  curve.hidden = hides(curve.layer, entity, place);
  curve.closed = there.closed;
  curve.width = there.width;
  curve.points = flattened(there);
  if (curve.points.size() > 2 && curve.points.front() == curve.points.back()) {
    curve.points.pop_back();
    curve.closed = true;
  }
  if (curve.points.size() < 2 || !isFinite(curve.points)) return;
  for (const DxfPiece& piece : there.pieces)
    if (const auto* conic = std::get_if<DxfConic>(&piece); conic && isFlatCircle(*conic)) {
      const FlatArc arc = flatArc(*conic);
      curve.arcs.push_back({arc.centre, arc.radius, arc.start, arc.sweep});
    }
  points_ += curve.points.size();
  if (drawing_.curves.size() + drawing_.fillings.size() >= limits_.curves || points_ > limits_.points) {
    note("The drawing holds more lines than fit: the first " + std::to_string(drawing_.curves.size()) +
         " were taken.");
    full_ = true;
    return;
  }
  (entity.kind == kHatchKind ? drawing_.fillings : drawing_.curves).push_back(std::move(curve));
}

void Expansion::drawWords(const DxfEntity& entity, const DxfWords& words, const Place& place) {
  if (words.words.empty() || drawing_.texts.size() >= limits_.curves) return;
  const Vec2 at = flat(place.world * words.at);
  if (!isFinite({at})) return;
  const double scale = std::sqrt(std::abs(place.world.linear().topLeftCorner<2, 2>().determinant()));
  const int layer = layerOf(entity, place);
  drawing_.texts.push_back({words.words, at, words.height * scale, layer, hides(layer, entity, place)});
}

void Expansion::drawBlock(const DxfEntity& entity, const DxfPlacing& placing, const Place& place) {
  const auto found = document_.blocks.find(lowerName(placing.block));
  if (found == document_.blocks.end()) return note("The block \"" + placing.block + "\" is missing.");
  const DxfBlock& block = found->second;
  if (block.external) note("The block \"" + block.name + "\" lies in another file, which was not read.");
  if (std::find(open_.begin(), open_.end(), &block) != open_.end())
    return note("The block \"" + block.name + "\" contains itself; the inner one was left out.");
  if (place.depth >= limits_.nesting)
    return note("Blocks are nested more than " + std::to_string(limits_.nesting) +
                " deep; the inner ones were left out.");

  used_.insert(&block);
  Place inner;
  inner.layer = layerOf(entity, place);
  inner.depth = place.depth + 1;
  // What a layer that is off hides is its own; one that is frozen hides all that is placed on it.
  inner.hidden =
      place.hidden || entity.invisible || document_.layers[static_cast<std::size_t>(inner.layer)].frozen;
  const DxfMap outer = place.world * placing.objectAxes * Eigen::Translation3d(placing.at) *
                       Eigen::AngleAxisd(placing.rotation, Vec3::UnitZ());
  open_.push_back(&block);
  for (int row = 0; row < placing.rows && !full_; ++row)
    for (int column = 0; column < placing.columns && !full_; ++column) {
      if (++placings_ > limits_.placings || progress_.stop()) {
        note("Blocks are placed more than " + std::to_string(limits_.placings) +
             " times; the rest was left out.");
        full_ = true;
        break;
      }
      inner.world = outer * Eigen::Translation3d(column * placing.columnStep, row * placing.rowStep, 0) *
                    Eigen::Scaling(placing.scale) * Eigen::Translation3d(-block.base);
      inner.insert = place.insert;
      if (place.depth == 0) {
        inner.insert = static_cast<int>(drawing_.inserts.size());
        drawing_.inserts.push_back({block.name, inner.layer, flat(inner.world * block.base)});
      }
      draw(block.contents, inner);
    }
  open_.pop_back();
}

}  // namespace

DxfDrawing expanded(DxfDocument document, const DxfLimits& limits, const Progress& progress) {
  DxfDrawing drawing;
  drawing.notes = std::move(document.notes);
  Expansion(document, drawing, limits, progress).run();
  drawing.version = std::move(document.version);
  drawing.unit = document.unit;
  drawing.metric = document.metric;
  drawing.layers = std::move(document.layers);
  for (auto& [kind, count] : document.model.kinds) {
    count.kind = kind;
    drawing.kinds.push_back(std::move(count));
  }
  return drawing;
}

}  // namespace baywright::detail
