// SPDX-License-Identifier: Apache-2.0
#include "exchange/mesh_scene.h"

#include <assimp/MemoryIOWrapper.h>
#include <assimp/importerdesc.h>
#include <assimp/postprocess.h>
#include <assimp/scene.h>

#include <assimp/Importer.hpp>
#include <cstring>
#include <memory>
#include <type_traits>
#include <utility>

#include "exchange/mesh_fence.h"
#include "exchange/mesh_weld.h"

namespace baywright {
namespace {

const char* nameFor(SceneFormat format) {
  switch (format) {
    case SceneFormat::Obj:
      return "scan.obj";
    case SceneFormat::GltfText:
      return "scan.gltf";
    case SceneFormat::GltfBinary:
      break;
  }
  return "scan.glb";
}

const char* loaderFor(SceneFormat format) {
  return format == SceneFormat::Obj ? "Wavefront Object Importer" : "glTF2 Importer";
}

/// A file system of one file.
class OnlyTheseBytes : public Assimp::IOSystem {
 public:
  OnlyTheseBytes(std::string_view bytes, std::string name) : bytes_(bytes), name_(std::move(name)) {}

  bool Exists(const char* file) const override { return name_ == file; }
  char getOsSeparator() const override { return '/'; }
  Assimp::IOStream* Open(const char* file, const char*) override {
    if (name_ != file) return nullptr;
    return new Assimp::MemoryIOStream(reinterpret_cast<const std::uint8_t*>(bytes_.data()), bytes_.size(),
                                      false);
  }
  void Close(Assimp::IOStream* stream) override { delete stream; }

 private:
  std::string_view bytes_;
  std::string name_;
};

/// False when the wanted loader is not there.
bool keepOnly(Assimp::Importer& importer, const std::string& loader) {
  for (std::size_t i = importer.GetImporterCount(); i-- > 0;)
    if (importer.GetImporterInfo(i)->mName != loader) importer.UnregisterLoader(importer.GetImporter(i));
  return importer.GetImporterCount() == 1;
}

struct PlacedNode {
  const aiNode* node = nullptr;
  aiMatrix4x4 sceneFromNode;
};

/// The scene's parts in one mesh, as far as the limits go.
class Flattener {
 public:
  explicit Flattener(const ScanReadOptions& options) : options_(options) {}

  Result<void> add(const aiScene& scene) {
    std::vector<PlacedNode> open{{scene.mRootNode, aiMatrix4x4()}};
    while (!open.empty()) {
      const PlacedNode placed = open.back();
      open.pop_back();
      if (!placed.node) continue;
      const aiMatrix4x4 map = placed.sceneFromNode * placed.node->mTransformation;
      for (unsigned i = 0; i < placed.node->mNumMeshes; ++i) {
        const unsigned index = placed.node->mMeshes[i];
        if (index >= scene.mNumMeshes) continue;
        const auto done = add(*scene.mMeshes[index], map);
        if (!done) return done;
      }
      for (unsigned i = placed.node->mNumChildren; i-- > 0;) open.push_back({placed.node->mChildren[i], map});
    }
    return {};
  }

  std::vector<Vec3> points;
  std::vector<TriangleMesh::Corners> triangles;

 private:
  Result<void> add(const aiMesh& mesh, const aiMatrix4x4& map) {
    // Three corners a triangle is what a loader makes at most; more points are no mesh but a waste.
    const std::size_t mostCorners = 3 * std::max(options_.mostTriangles, options_.mostPoints);
    if (triangles.size() + mesh.mNumFaces > options_.mostTriangles ||
        points.size() + mesh.mNumVertices > mostCorners)
      return fail("The mesh has more than " + std::to_string(options_.mostTriangles) + " triangles.", {},
                  "Export it with fewer, or as a point cloud.");
    const auto first = static_cast<std::uint32_t>(points.size());
    for (unsigned i = 0; i < mesh.mNumVertices; ++i) {
      const aiVector3D p = map * mesh.mVertices[i];
      points.emplace_back(p.x, p.y, p.z);
    }
    for (unsigned i = 0; i < mesh.mNumFaces; ++i) {
      const aiFace& face = mesh.mFaces[i];
      if (face.mNumIndices != 3) continue;
      const unsigned* corner = face.mIndices;
      if (corner[0] >= mesh.mNumVertices || corner[1] >= mesh.mNumVertices || corner[2] >= mesh.mNumVertices)
        return fail("A face names a vertex that does not exist.");
      triangles.push_back({first + corner[0], first + corner[1], first + corner[2]});
    }
    return {};
  }

  const ScanReadOptions& options_;
};

template <class T>
void append(std::string& bytes, const std::vector<T>& values) {
  const std::uint64_t count = values.size();
  bytes.append(reinterpret_cast<const char*>(&count), sizeof count);
  bytes.append(reinterpret_cast<const char*>(values.data()), values.size() * sizeof(T));
}

/// The child's answer is taken apart with care: a loader gone wrong could have written anything.
template <class T>
bool take(std::string_view& bytes, std::vector<T>& values) {
  std::uint64_t count = 0;
  if (bytes.size() < sizeof count) return false;
  std::memcpy(&count, bytes.data(), sizeof count);
  bytes.remove_prefix(sizeof count);
  if (count > bytes.size() / sizeof(T)) return false;
  values.resize(count);
  if (count > 0) std::memcpy(static_cast<void*>(values.data()), bytes.data(), count * sizeof(T));
  bytes.remove_prefix(count * sizeof(T));
  return true;
}

Problem unreadable(std::string_view bytes, SceneFormat format) {
  Problem problem{
      "The file could not be read as " + std::string(format == SceneFormat::Obj ? "OBJ" : "glTF 2") + ".",
      {},
      "It may be damaged: export it again, or as PLY."};
  if (format == SceneFormat::GltfText && bytes.find("\"uri\"") != std::string_view::npos)
    problem.next = "Other files are not looked into: export the scan as one .glb file.";
  return problem;
}

Result<std::string> flattened(std::string_view bytes, SceneFormat format, const ScanReadOptions& options) {
  Assimp::Importer importer;
  if (!keepOnly(importer, loaderFor(format))) return fail("This build has no reader for such files.");
  importer.SetIOHandler(new OnlyTheseBytes(bytes, nameFor(format)));  // the importer deletes it
  const aiScene* scene = importer.ReadFile(nameFor(format), aiProcess_Triangulate);
  if (!scene) return tl::unexpected(unreadable(bytes, format));
  Flattener flat(options);
  const auto done = flat.add(*scene);
  if (!done) return tl::unexpected(done.error());
  importer.FreeScene();
  weld(flat.points, flat.triangles);
  std::string answer;
  answer.reserve(16 + flat.points.size() * sizeof(Vec3) +
                 flat.triangles.size() * sizeof(TriangleMesh::Corners));
  append(answer, flat.points);
  append(answer, flat.triangles);
  return answer;
}

}  // namespace

Result<RawScan> readScene(std::string_view bytes, SceneFormat format, const ScanReadOptions& options,
                          const Progress& progress) {
  static_assert(sizeof(Vec3) == 24 && std::is_trivially_destructible_v<Vec3>);
  // An OBJ took 8 times its size at worst when it was tried with 5 million triangles.
  FenceLimits limits;
  limits.memoryBytes = (512ull << 20) + 24 * static_cast<std::uint64_t>(bytes.size());
  progress.at(0);
  const auto answer = runFenced([&] { return flattened(bytes, format, options); }, limits, progress);
  if (!answer) return tl::unexpected(answer.error());
  RawScan scan;
  std::string_view rest = *answer;
  if (!take(rest, scan.points) || !take(rest, scan.triangles))
    return tl::unexpected(unreadable(bytes, format));
  for (const auto& corners : scan.triangles)
    for (const std::uint32_t corner : corners)
      if (corner >= scan.points.size()) return tl::unexpected(unreadable(bytes, format));
  if (scan.points.empty()) return fail("The file holds neither triangles nor points.");
  if (format != SceneFormat::Obj) {
    scan.metresPerUnit = 1;
    scan.up = UpAxis::PlusY;
  }
  return scan;
}

}  // namespace baywright
