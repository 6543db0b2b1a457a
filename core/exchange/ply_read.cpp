// SPDX-License-Identifier: Apache-2.0
#include "exchange/ply_read.h"

#include <array>
#include <limits>
#include <utility>

#include "exchange/ply_header.h"
#include "exchange/ply_values.h"

namespace baywright {
namespace {

constexpr const char* kWholeCopy = "Export the scan again, or take a copy that is whole.";

std::string place(const PlyElement& element, std::uint64_t row) {
  return element.name + " " + std::to_string(row + 1) + " of " + std::to_string(element.count);
}

tl::unexpected<Problem> endsIn(const PlyElement& element, std::uint64_t row) {
  return fail("The PLY file is cut short or damaged: no number could be read here.", place(element, row),
              kWholeCopy);
}

bool isFaceList(const PlyProperty& property) {
  return property.countType && (property.name == "vertex_indices" || property.name == "vertex_index");
}

/// The body's elements in their order.
class BodyReader {
 public:
  BodyReader(std::string_view bytes, const PlyHeader& header, const ScanReadOptions& options,
             const Progress& progress)
      : header_(header),
        values_(bytes.substr(header.bodyStart), header.encoding),
        options_(options),
        progress_(progress) {
    for (const PlyElement& element : header.elements) rows_ += static_cast<double>(element.count);
    for (const PlyElement& element : header.elements)
      if (element.name == "face" && element.count > 0) hasFaces_ = true;
  }

  Result<RawScan> read() {
    for (const PlyElement& element : header_.elements) {
      const bool isText = header_.encoding == PlyHeader::Encoding::Text;
      const std::uint64_t row = element.shortestRow(isText);
      // The last value of a text needs no space after it.
      if (row > 0 && element.count > (values_.left() + (isText ? 1 : 0)) / row)
        return fail("The PLY file promises " + std::to_string(element.count) + " rows of " + element.name +
                        ", more than the rest of the file can hold: it is cut short or damaged.",
                    {}, kWholeCopy);
      const auto done = element.name == "vertex" ? vertices(element)
                        : element.name == "face" ? faces(element)
                                                 : passOver(element);
      if (!done) return tl::unexpected(done.error());
    }
    for (const auto& corners : scan_.triangles)
      for (const std::uint32_t corner : corners)
        if (corner >= scan_.points.size())
          return fail("A face names vertex " + std::to_string(corner) + ", counted from 0, but there are " +
                      std::to_string(scan_.points.size()) + ".");
    return std::move(scan_);
  }

 private:
  Result<void> look() {
    if (++done_ % kRowsBetweenLooks != 0) return {};
    if (progress_.stop()) return fail(kImportCancelled);
    progress_.at(static_cast<double>(done_) / rows_);
    return {};
  }

  Result<void> passList(const PlyProperty& property, const PlyElement& element, std::uint64_t row) {
    const double count = values_.next(*property.countType);
    if (!(count >= 0 && count <= static_cast<double>(values_.left())))
      return fail("The PLY file has a list of impossible length.", place(element, row), kWholeCopy);
    for (std::uint64_t i = 0; i < static_cast<std::uint64_t>(count) && values_.ok(); ++i)
      values_.next(property.type);
    return {};
  }

  Result<void> passOver(const PlyElement& element) {
    if (element.properties.empty()) return {};
    if (element.name == "tristrips" && element.count > 0)
      scan_.notes.push_back("The file's triangle strips were passed over: export it with faces.");
    for (std::uint64_t row = 0; row < element.count; ++row) {
      for (const PlyProperty& property : element.properties) {
        if (!property.countType) values_.next(property.type);
        const auto done = property.countType ? passList(property, element, row) : Result<void>();
        if (!done) return done;
      }
      if (!values_.ok()) return endsIn(element, row);
      if (const auto on = look(); !on) return on;
    }
    return {};
  }

  Result<void> vertices(const PlyElement& element) {
    std::vector<int> axes;
    std::array<bool, 3> found{};
    for (const PlyProperty& property : element.properties) {
      const bool isAxis = !property.countType && property.name.size() == 1 && property.name[0] >= 'x' &&
                          property.name[0] <= 'z';
      axes.push_back(isAxis ? property.name[0] - 'x' : -1);
      if (isAxis) found[static_cast<std::size_t>(axes.back())] = true;
    }
    if (!found[0] || !found[1] || !found[2])
      return fail("The vertices of the PLY file have no coordinates x, y and z.");
    if (hasFaces_ && element.count > std::numeric_limits<std::uint32_t>::max())
      return fail("The mesh has more vertices than can be counted.");
    const std::uint64_t stride = hasFaces_ ? 1 : thinningStride(element.count, options_.mostPoints);
    scan_.points.reserve(element.count / stride + 1);
    for (std::uint64_t row = 0; row < element.count; ++row) {
      Vec3 p = Vec3::Zero();
      for (std::size_t i = 0; i < axes.size(); ++i) {
        const PlyProperty& property = element.properties[i];
        const auto done = property.countType ? passList(property, element, row) : Result<void>();
        if (!done) return done;
        if (property.countType) continue;
        const double value = values_.next(property.type);
        if (axes[i] >= 0) p[axes[i]] = value;
      }
      if (!values_.ok()) return endsIn(element, row);
      if (row % stride == 0) scan_.points.push_back(p);
      if (const auto on = look(); !on) return on;
    }
    scan_.thinnedOut += element.count - scan_.points.size();
    return {};
  }

  Result<void> faces(const PlyElement& element) {
    if (element.count > options_.mostTriangles) return tooMany();
    scan_.triangles.reserve(element.count);
    for (std::uint64_t row = 0; row < element.count; ++row) {
      for (const PlyProperty& property : element.properties) {
        if (!property.countType) {
          values_.next(property.type);
          continue;
        }
        const auto done =
            isFaceList(property) ? face(property, element, row) : passList(property, element, row);
        if (!done) return done;
      }
      if (!values_.ok()) return endsIn(element, row);
      if (const auto on = look(); !on) return on;
    }
    return {};
  }

  Result<void> face(const PlyProperty& property, const PlyElement& element, std::uint64_t row) {
    const double count = values_.next(*property.countType);
    if (!(count >= 0 && count <= static_cast<double>(values_.left())))
      return fail("The PLY file has a face with an impossible number of corners.", place(element, row),
                  kWholeCopy);
    std::uint32_t first = 0;
    std::uint32_t last = 0;
    for (std::uint64_t i = 0; i < static_cast<std::uint64_t>(count); ++i) {
      const double index = values_.next(property.type);
      if (!values_.ok()) return endsIn(element, row);
      if (!(index >= 0 && index <= std::numeric_limits<std::uint32_t>::max()))
        return fail("A face names a vertex that does not exist.", place(element, row), kWholeCopy);
      const auto corner = static_cast<std::uint32_t>(index);
      if (i >= 2) scan_.triangles.push_back({first, last, corner});
      if (i == 0) first = corner;
      last = corner;
      if (scan_.triangles.size() > options_.mostTriangles) return tooMany();
    }
    return {};
  }

  Result<void> tooMany() const {
    return fail("The mesh has more than " + std::to_string(options_.mostTriangles) + " triangles.", {},
                "Export it with fewer, or as a point cloud.");
  }

  const PlyHeader& header_;
  PlyValues values_;
  const ScanReadOptions& options_;
  const Progress& progress_;
  bool hasFaces_ = false;
  double rows_ = 0;
  std::uint64_t done_ = 0;
  RawScan scan_;
};

}  // namespace

Result<RawScan> readPly(std::string_view bytes, const ScanReadOptions& options, const Progress& progress) {
  const auto header = readPlyHeader(bytes);
  if (!header) return tl::unexpected(header.error());
  return BodyReader(bytes, *header, options, progress).read();
}

}  // namespace baywright
