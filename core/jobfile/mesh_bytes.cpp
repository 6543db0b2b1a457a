// SPDX-License-Identifier: Apache-2.0
#include "jobfile/mesh_bytes.h"

#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <optional>

namespace baywright {
namespace {

static_assert(std::endian::native == std::endian::little, "The members are copied as they lie in memory.");
static_assert(sizeof(Eigen::Vector3f) == 12 && sizeof(TriangleMesh::Corners) == 12);

constexpr std::string_view kMeshMark = "BWMESH1\n";
constexpr std::string_view kPointsMark = "BWPNTS1\n";
constexpr std::uint64_t kMostElements = 1ull << 32;  // an index has 32 bits

template <class T>
void append(std::string& bytes, const std::vector<T>& elements) {
  bytes.append(reinterpret_cast<const char*>(elements.data()), elements.size() * sizeof(T));
}

void append(std::string& bytes, std::uint64_t count) {
  bytes.append(reinterpret_cast<const char*>(&count), sizeof count);
}

/// Takes pieces off the front; nothing where too little is left.
class Taker {
 public:
  explicit Taker(std::string_view bytes) : bytes_(bytes) {}

  bool mark(std::string_view wanted) {
    if (!bytes_.starts_with(wanted)) return false;
    bytes_.remove_prefix(wanted.size());
    return true;
  }
  std::optional<std::uint64_t> count() {
    std::uint64_t value = 0;
    if (bytes_.size() < sizeof value) return std::nullopt;
    std::memcpy(&value, bytes_.data(), sizeof value);
    bytes_.remove_prefix(sizeof value);
    return value <= kMostElements ? std::optional(value) : std::nullopt;
  }
  template <class T>
  std::optional<std::vector<T>> elements(std::uint64_t count) {
    if (bytes_.size() / sizeof(T) < count) return std::nullopt;
    std::vector<T> taken(count);
    if (count > 0) std::memcpy(static_cast<void*>(taken.data()), bytes_.data(), count * sizeof(T));
    bytes_.remove_prefix(count * sizeof(T));
    return taken;
  }
  bool atEnd() const { return bytes_.empty(); }

 private:
  std::string_view bytes_;
};

tl::unexpected<Problem> damaged() {
  return fail("The scan's geometry is damaged: its length does not fit what it says.", {},
              "Import the scan's original file again.");
}

}  // namespace

std::string meshToBytes(const TriangleMesh& mesh) {
  std::string bytes(kMeshMark);
  append(bytes, mesh.vertexCount());
  append(bytes, mesh.triangleCount());
  append(bytes, mesh.vertices());
  append(bytes, mesh.triangles());
  return bytes;
}

std::string pointsToBytes(const std::vector<Eigen::Vector3f>& points) {
  std::string bytes(kPointsMark);
  append(bytes, points.size());
  append(bytes, points);
  return bytes;
}

Result<std::shared_ptr<const TriangleMesh>> meshFromBytes(std::string_view bytes) {
  Taker taker(bytes);
  if (!taker.mark(kMeshMark)) return fail("The scan's geometry is not of a kind that this version knows.");
  const auto vertexCount = taker.count();
  const auto triangleCount = taker.count();
  if (!vertexCount || !triangleCount) return damaged();
  auto vertices = taker.elements<Eigen::Vector3f>(*vertexCount);
  if (!vertices) return damaged();
  auto triangles = taker.elements<TriangleMesh::Corners>(*triangleCount);
  if (!triangles || !taker.atEnd()) return damaged();
  auto mesh = TriangleMesh::from(std::move(*vertices), std::move(*triangles));
  if (!mesh) return tl::unexpected(mesh.error());
  return std::make_shared<const TriangleMesh>(std::move(*mesh));
}

Result<std::shared_ptr<const std::vector<Eigen::Vector3f>>> pointsFromBytes(std::string_view bytes) {
  Taker taker(bytes);
  if (!taker.mark(kPointsMark)) return fail("The scan's points are not of a kind that this version knows.");
  const auto count = taker.count();
  if (!count) return damaged();
  auto points = taker.elements<Eigen::Vector3f>(*count);
  if (!points || !taker.atEnd()) return damaged();
  for (const Eigen::Vector3f& point : *points)
    if (!point.allFinite()) return fail("The scan has a point that is not finite.");
  return std::make_shared<const std::vector<Eigen::Vector3f>>(std::move(*points));
}

}  // namespace baywright
