// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <cstring>
#include <string>
#include <utility>
#include <vector>

/// Small files as people bring them from a room, all invented.
namespace baywright::testing {

inline std::string dxfLine(const std::string& layer, double x1, double y1, double x2, double y2) {
  const auto tag = [](int code, double value) {
    return std::to_string(code) + "\n" + std::to_string(value) + "\n";
  };
  return "0\nLINE\n8\n" + layer + "\n" + tag(10, x1) + tag(20, y1) + tag(11, x2) + tag(21, y2);
}

inline std::string dxfRing(const std::string& layer, double x, double y, double width, double depth) {
  return dxfLine(layer, x, y, x + width, y) + dxfLine(layer, x + width, y, x + width, y + depth) +
         dxfLine(layer, x + width, y + depth, x, y + depth) + dxfLine(layer, x, y + depth, x, y);
}

/// `insunits` as in the published DXF reference: 4 is millimetres, 0 says nothing.
inline std::string dxfDrawing(const std::string& entities, int insunits) {
  return "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n" + std::to_string(insunits) +
         "\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" + entities + "0\nENDSEC\n0\nEOF\n";
}

/// A rectangle of 6.4 by 5 m, in millimetres, and something in it that is no wall.
inline std::string dxfRoom(int insunits) {
  return dxfDrawing(dxfRing("WALLS", 0, 0, 6400, 5000) + dxfLine("FURNITURE", 1000, 1000, 2000, 1500),
                    insunits);
}

inline std::string measuringList() {
  return "kind,from,to,at,x,y,value,height,how,note\n"
         "unit,,,,,,m,,,\n"
         "wall,A,,,,,6.000,,laser,\n"
         "wall,B,,,,,5.000,,laser,\n"
         "wall,C,,,,,6.000,,laser,\n"
         "wall,D,,,,,5.000,,laser,\n"
         "diagonal,A,C,,,,7.810,,laser,\n"
         "ceiling,,,,1.0,1.0,2.9,,laser,\n"
         "door,B,,,0.85,,0.90,2.03,,front door\n"
         "window,C,,,1.10,0.95,1.20,1.10,,\n";
}

/// A binary PLY cloud of a closed room of 6 by 4 by 2.5 m, a point every 5 cm, z up.
inline std::string plyRoom() {
  std::vector<float> xyz;
  const auto add = [&](double x, double y, double z) {
    for (const double value : {x, y, z}) xyz.push_back(static_cast<float>(value));
  };
  for (double s = 0.025; s < 6; s += 0.05) {
    for (double t = 0.025; t < 4; t += 0.05)
      for (const double z : {0.0, 2.5}) add(s, t, z);
    for (double z = 0.025; z < 2.5; z += 0.05)
      for (const double y : {0.0, 4.0}) add(s, y, z);
  }
  for (double t = 0.025; t < 4; t += 0.05)
    for (double z = 0.025; z < 2.5; z += 0.05)
      for (const double x : {0.0, 6.0}) add(x, t, z);
  std::string bytes = "ply\nformat binary_little_endian 1.0\nelement vertex " +
                      std::to_string(xyz.size() / 3) +
                      "\nproperty float x\nproperty float y\nproperty float z\nend_header\n";
  const std::size_t start = bytes.size();
  bytes.resize(start + 4 * xyz.size());
  std::memcpy(bytes.data() + start, xyz.data(), 4 * xyz.size());
  return bytes;
}

}  // namespace baywright::testing
