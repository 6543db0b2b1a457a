// SPDX-License-Identifier: Apache-2.0
#include "drawing/linework.h"

namespace baywright {
namespace {

template <class T>
void appendAll(std::vector<T>& to, const std::vector<T>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

}  // namespace

std::optional<Eigen::AlignedBox2d> Linework::extent() const {
  Eigen::AlignedBox2d box;
  for (const Path& path : paths) {
    for (const auto& ring : path.rings) {
      for (const Vec2& p : ring) box.extend(p);
    }
  }
  for (const DimensionMark& mark : dimensions) {
    const Vec2 aside = mark.offset * leftOf((mark.to - mark.from).stableNormalized());
    for (const Vec2& p : {mark.from, mark.to}) box.extend(p).extend(p + aside);
  }
  if (box.isEmpty()) return std::nullopt;
  return box;
}

void Linework::append(const Linework& other) {
  appendAll(paths, other.paths);
  appendAll(texts, other.texts);
  appendAll(dimensions, other.dimensions);
  appendAll(symbols, other.symbols);
}

Linework placed(const Linework& linework, const Placing& placing) {
  Linework result = linework;
  for (Path& path : result.paths) {
    for (auto& ring : path.rings) {
      for (Vec2& p : ring) p = placing(p);
    }
  }
  for (Text& text : result.texts) text.at = placing(text.at);
  for (DimensionMark& mark : result.dimensions) {
    mark.from = placing(mark.from);
    mark.to = placing(mark.to);
    mark.offset *= placing.scale;
  }
  for (Symbol& symbol : result.symbols) symbol.at = placing(symbol.at);
  return result;
}

}  // namespace baywright
