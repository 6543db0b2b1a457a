// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "base/id.h"
#include "geometry/vec.h"

namespace baywright {

/// Bytes of a file that somebody brought, kept as they came. Shared and never changed, so that copying a job
/// is cheap; two are equal when they are the same object.
struct Blob {
  std::string fileName;  ///< base name only, never a path
  std::string bytes;
};
using BlobPtr = std::shared_ptr<const Blob>;

/// A picture of a plan that lies under the drawing.
struct PlanScan {
  Id id;
  std::string name;
  BlobPtr file;                ///< PNG, JPEG, TIFF or PDF
  int page = 0;                ///< of a PDF
  double pdfDotsPerMetre = 0;  ///< at which a PDF page is turned into pixels; 0 for pictures
  Mat3 worldFromPixel =
      Mat3::Identity();  ///< homography; pixel (0,0) is the top left corner of the top left pixel
  bool scaled = false;   ///< its scale has been set
  double opacity = 0.6;  ///< 0..1
  bool locked = false;
  bool visible = true;

  bool operator==(const PlanScan&) const = default;
};

class TriangleMesh;

/// A 3D scan of the room, in world coordinates once `worldFromScan` is applied at import. Exactly one of mesh
/// and points is set.
struct RoomScan {
  Id id;
  std::string name;
  BlobPtr file;
  std::shared_ptr<const TriangleMesh> mesh;                    ///< see geometry/mesh.h
  std::shared_ptr<const std::vector<Eigen::Vector3f>> points;  ///< a PointCloud of geometry/point_tree.h
  double sigma = 0.010;                                        ///< accuracy of a point, metres
  bool isObstacle = true;                                      ///< clearances run against it
  bool visible = true;

  bool operator==(const RoomScan&) const = default;
};

/// The file that the room came from where that is no scan: a drawing or a measuring list. Nothing is computed from
/// it again; it is kept so that anybody can look up what was read.
struct Original {
  Id id;
  std::string name;
  BlobPtr file;

  bool operator==(const Original&) const = default;
};

}  // namespace baywright
