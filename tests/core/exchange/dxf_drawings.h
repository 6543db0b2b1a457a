// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <map>
#include <nlohmann/json.hpp>
#include <string>

#include "exchange/dxf_read.h"

// Drawings that tests/data/make_drawings.py wrote when the tests were built, and what ezdxf finds in them.
// BAYWRIGHT_DRAWINGS is empty where ezdxf is not installed.
namespace baywright::test {

inline std::string fileBytes(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

inline bool haveDrawings() {
  return std::string(BAYWRIGHT_DRAWINGS).empty() == false;
}

inline std::string madeDrawing(const std::string& name) {
  return fileBytes(std::string(BAYWRIGHT_DRAWINGS) + "/" + name + ".dxf");
}

inline nlohmann::json expectedDrawings() {
  return nlohmann::json::parse(fileBytes(std::string(BAYWRIGHT_DRAWINGS) + "/expected.json"));
}

inline double lengthOf(const DxfCurve& curve) {
  double length = 0;
  for (std::size_t i = 1; i < curve.points.size(); ++i)
    length += (curve.points[i] - curve.points[i - 1]).norm();
  return curve.closed ? length + (curve.points.back() - curve.points.front()).norm() : length;
}

inline std::map<std::string, double> lengthsByLayer(const DxfDrawing& drawing) {
  std::map<std::string, double> lengths;
  for (const DxfCurve& curve : drawing.curves) {
    std::string layer = drawing.layers[static_cast<std::size_t>(curve.layer)].name;
    for (char& c : layer) c = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    lengths[layer] += lengthOf(curve);
  }
  return lengths;
}

}  // namespace baywright::test
