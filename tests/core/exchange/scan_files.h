// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <string>
#include <vector>

#include "geometry/mesh.h"
#include "geometry/vec.h"

/// Scan files as text and bytes, made by hand.
namespace baywright::testing {

/// The bytes of a number, the last first where `reversed`.
template <class T>
std::string bytesOf(T value, bool reversed = false) {
  std::string bytes(sizeof value, '\0');
  std::memcpy(bytes.data(), &value, sizeof value);
  if (reversed) std::reverse(bytes.begin(), bytes.end());
  return bytes;
}

/// A bumpy sheet of n by n points, 10 cm apart.
inline std::vector<Vec3> sheet(int n) {
  std::vector<Vec3> points;
  for (int i = 0; i < n; ++i)
    for (int j = 0; j < n; ++j) points.emplace_back(0.1 * i, 0.1 * j, 0.01 * ((7 * i + 3 * j) % 5));
  return points;
}

inline std::vector<TriangleMesh::Corners> sheetTriangles(int n) {
  std::vector<TriangleMesh::Corners> triangles;
  const auto at = [&](int i, int j) { return static_cast<std::uint32_t>(i * n + j); };
  for (int i = 0; i + 1 < n; ++i)
    for (int j = 0; j + 1 < n; ++j) {
      triangles.push_back({at(i, j), at(i + 1, j), at(i, j + 1)});
      triangles.push_back({at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)});
    }
  return triangles;
}

inline std::string plyCloud(const std::vector<Vec3>& points, bool bigEndian = false) {
  std::string bytes = std::string("ply\nformat binary_") + (bigEndian ? "big" : "little") +
                      "_endian 1.0\ncomment made up\nelement vertex " + std::to_string(points.size()) +
                      "\nproperty uchar red\nproperty double x\nproperty double y\nproperty double z\n"
                      "property float confidence\nend_header\n";
  for (const Vec3& p : points) {
    bytes += '\x7f';
    for (const double c : p) bytes += bytesOf(c, bigEndian);
    bytes += bytesOf(0.5f, bigEndian);
  }
  return bytes;
}

inline std::string plyMesh(const std::vector<Vec3>& points,
                           const std::vector<TriangleMesh::Corners>& triangles) {
  std::string bytes =
      "ply\r\nformat binary_little_endian 1.0\r\nelement vertex " + std::to_string(points.size()) +
      "\r\nproperty float x\r\nproperty float y\r\nproperty float z\r\nelement face " +
      std::to_string(triangles.size()) + "\r\nproperty list uchar int vertex_indices\r\nend_header\r\n";
  for (const Vec3& p : points)
    for (const double c : p) bytes += bytesOf(static_cast<float>(c));
  for (const auto& corners : triangles) {
    bytes += '\x03';
    for (const std::uint32_t corner : corners) bytes += bytesOf(corner);
  }
  return bytes;
}

inline std::string pcdHead(const std::string& data, std::size_t points) {
  return "# .PCD v0.7 - Point Cloud Data file format\nVERSION 0.7\nFIELDS label x y z\nSIZE 2 4 4 4\nTYPE U "
         "F F F\n"
         "COUNT 1 1 1 1\nWIDTH " +
         std::to_string(points) + "\nHEIGHT 1\nVIEWPOINT 0 0 0 1 0 0 0\nPOINTS " + std::to_string(points) +
         "\nDATA " + data + "\n";
}

inline std::string pcdBinary(const std::vector<Vec3>& points) {
  std::string bytes = pcdHead("binary", points.size());
  for (const Vec3& p : points) {
    bytes += bytesOf(std::uint16_t{7});
    for (const double c : p) bytes += bytesOf(static_cast<float>(c));
  }
  return bytes;
}

/// The points field after field, as a compressed file holds them before they are packed.
inline std::string pcdFieldByField(const std::vector<Vec3>& points) {
  std::string bytes;
  for (std::size_t i = 0; i < points.size(); ++i) bytes += bytesOf(std::uint16_t{7});
  for (int axis = 0; axis < 3; ++axis)
    for (const Vec3& p : points) bytes += bytesOf(static_cast<float>(p[axis]));
  return bytes;
}

inline std::string xyzText(const std::vector<Vec3>& points) {
  std::string text;
  for (const Vec3& p : points)
    text += std::to_string(p.x()) + " " + std::to_string(p.y()) + " " + std::to_string(p.z()) + "\n";
  return text;
}

inline std::string gltfSquare() {
  // Two triangles of a unit square; its numbers in base64: four corners (x, y, 0), then six 16-bit indices.
  return R"({"asset":{"version":"2.0"},"scene":0,"scenes":[{"nodes":[0]}],
"nodes":[{"mesh":0,"translation":[10,0,0]}],
"meshes":[{"primitives":[{"attributes":{"POSITION":0},"indices":1}]}],
"accessors":[{"bufferView":0,"componentType":5126,"count":4,"type":"VEC3","min":[0,0,0],"max":[1,1,0]},
{"bufferView":1,"componentType":5123,"count":6,"type":"SCALAR"}],
"bufferViews":[{"buffer":0,"byteOffset":0,"byteLength":48},{"buffer":0,"byteOffset":48,"byteLength":12}],
"buffers":[{"byteLength":60,"uri":"data:application/octet-stream;base64,)"
         "AAAAAAAAAAAAAAAAAACAPwAAAAAAAAAAAACAPwAAgD8AAAAAAAAAAAAAgD8AAAAAAAABAAIAAAACAAMA"
         R"("}]})";
}

}  // namespace baywright::testing
