// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <cstdio>
#include <string>

#include "drawing/linework.h"
#include "drawing/verdict_look.h"

namespace baywright::testing {

/// Linework as text that a person can read and a diff tool compare: a line a mark, layer by layer,
/// coordinates rounded to a thousandth of the drawing's unit. Rings with more than kWholeRing corners, which
/// are curves, are told by their number of corners, box and area.
class LineworkText {
 public:
  static constexpr std::size_t kWholeRing = 12;

  static std::string of(const Linework& linework) {
    LineworkText text;
    for (const LayerStyle& style : layerStyles()) text.addLayer(linework, style);
    return std::move(text.text_);
  }

 private:
  static std::string number(double value) {
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%.3f", std::round(value * 1000) / 1000 + 0.0);
    return buffer;
  }
  static std::string point(const Vec2& p) { return number(p.x()) + "," + number(p.y()); }
  static std::string id(Id id) { return id ? " #" + std::to_string(id.value) : ""; }
  static std::string verdict(const std::optional<Verdict>& verdict) {
    return verdict ? " " + std::string(wordOf(*verdict)) : "";
  }

  static std::string ring(const std::vector<Vec2>& points) {
    if (points.size() > kWholeRing) {
      Eigen::AlignedBox2d box;
      double area = 0;
      for (std::size_t i = 0; i < points.size(); ++i) {
        box.extend(points[i]);
        area += cross(points[i], points[(i + 1) % points.size()]) / 2;
      }
      return " (" + std::to_string(points.size()) + " corners from " + point(box.min()) + " to " +
             point(box.max()) + ", area " + number(area) + ")";
    }
    std::string text;
    for (const Vec2& p : points) text += " " + point(p);
    return text;
  }

  static std::string path(const Path& path) {
    static constexpr const char* kFills[] = {"", " soft", " full", " poche"};
    static constexpr const char* kDashes[] = {" continuous", " dashed", " dash-dot", " dotted"};
    std::string text = path.closed ? "area" : "line";
    text += kFills[static_cast<int>(path.fill)];
    if (!path.stroked) text += " bare";
    if (path.weight) text += *path.weight == LineWeight::Thick ? " thick" : " thin";
    if (path.dash) text += kDashes[static_cast<int>(*path.dash)];
    text += verdict(path.verdict) + id(path.id) + ":";
    // A hatch has very many pieces.
    if (path.rings.size() > 6)
      return text + " " + std::to_string(path.rings.size()) + " pieces, first" + ring(path.rings.front());
    for (std::size_t i = 0; i < path.rings.size(); ++i) text += (i > 0 ? " |" : "") + ring(path.rings[i]);
    return text;
  }

  static std::string text(const Text& text) {
    static constexpr const char* kAnchors[] = {"left", "centre", "right"};
    return "text " + number(text.heightMm) + (text.bold ? " bold" : "") + " " +
           kAnchors[static_cast<int>(text.anchor)] + " at " + point(text.at) +
           (text.angle != 0 ? " turned " + number(text.angle) : "") + verdict(text.verdict) + id(text.id) +
           ": " + text.text;
  }

  static std::string dimension(const DimensionMark& mark) {
    return "dimension " + point(mark.from) + " to " + point(mark.to) + " off " + number(mark.offset) +
           (mark.arrows ? " arrows" : "") + verdict(mark.verdict) + id(mark.id) + ": " + mark.text;
  }

  static std::string symbol(const Symbol& symbol) {
    static constexpr const char* kKinds[] = {"strike-point", "lens",     "tick",  "tilde",
                                             "bar",          "question", "corner"};
    return std::string("symbol ") + kKinds[static_cast<int>(symbol.kind)] + " " + number(symbol.sizeMm) +
           " at " + point(symbol.at) + verdict(symbol.verdict) + id(symbol.id);
  }

  void addLayer(const Linework& linework, const LayerStyle& style) {
    std::string lines;
    const auto addAll = [&](const auto& marks, const auto& tell) {
      for (const auto& mark : marks) {
        if (mark.layer == style.layer) lines += "  " + tell(mark) + "\n";
      }
    };
    addAll(linework.paths, path);
    addAll(linework.symbols, symbol);
    addAll(linework.dimensions, dimension);
    addAll(linework.texts, text);
    if (!lines.empty()) text_ += std::string(style.name) + "\n" + lines;
  }

  std::string text_;
};

}  // namespace baywright::testing
