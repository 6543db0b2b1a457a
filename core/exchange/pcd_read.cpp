// SPDX-License-Identifier: Apache-2.0
#include "exchange/pcd_read.h"

#include <bit>
#include <cstring>
#include <optional>

#include "exchange/mesh_numbers.h"
#include "exchange/pcd_header.h"
#include "exchange/pcd_lzf.h"

namespace baywright {
namespace {

static_assert(std::endian::native == std::endian::little, "PCD's numbers are little-endian.");

constexpr const char* kWholeCopy = "Export the scan again, or take a copy that is whole.";

template <class T>
double numberAt(const char* bytes) {
  T value;
  std::memcpy(&value, bytes, sizeof value);
  return static_cast<double>(value);
}

double numberAt(const char* bytes, const PcdField& field) {
  if (field.type == 'F') {
    if (field.size == 8) return numberAt<double>(bytes);
    return field.size == 4 ? numberAt<float>(bytes) : std::numeric_limits<double>::quiet_NaN();
  }
  const bool isSigned = field.type == 'I';
  switch (field.size) {
    case 1:
      return isSigned ? numberAt<std::int8_t>(bytes) : numberAt<std::uint8_t>(bytes);
    case 2:
      return isSigned ? numberAt<std::int16_t>(bytes) : numberAt<std::uint16_t>(bytes);
    case 4:
      return isSigned ? numberAt<std::int32_t>(bytes) : numberAt<std::uint32_t>(bytes);
    default:
      return isSigned ? numberAt<std::int64_t>(bytes) : numberAt<std::uint64_t>(bytes);
  }
}

/// Where the first x, y and z stand in a block of numbers, and how far it is to the next point's.
struct Layout {
  std::array<std::size_t, 3> start{};
  std::array<std::size_t, 3> step{};
};

Layout pointByPoint(const PcdHeader& header) {
  Layout layout;
  for (std::size_t axis = 0; axis < 3; ++axis) {
    for (std::size_t i = 0; i < header.axes[axis]; ++i)
      layout.start[axis] += header.fields[i].size * header.fields[i].count;
    layout.step[axis] = header.pointBytes();
  }
  return layout;
}

Layout fieldByField(const PcdHeader& header) {
  Layout layout = pointByPoint(header);
  for (std::size_t axis = 0; axis < 3; ++axis) {
    layout.start[axis] *= header.points;
    layout.step[axis] = header.fields[header.axes[axis]].size;
  }
  return layout;
}

class BodyReader {
 public:
  BodyReader(const PcdHeader& header, const ScanReadOptions& options, const Progress& progress)
      : header_(header), progress_(progress), stride_(thinningStride(header.points, options.mostPoints)) {}

  Result<RawScan> binary(std::string_view body, const Layout& layout) {
    scan_.points.reserve(header_.points / stride_ + 1);
    for (std::uint64_t i = 0; i < header_.points; ++i) {
      if (const auto on = look(i); !on) return tl::unexpected(on.error());
      if (i % stride_ != 0) continue;
      Vec3 p;
      for (std::size_t axis = 0; axis < 3; ++axis)
        p[static_cast<Eigen::Index>(axis)] = numberAt(
            body.data() + layout.start[axis] + i * layout.step[axis], header_.fields[header_.axes[axis]]);
      scan_.points.push_back(p);
    }
    return finished();
  }

  Result<RawScan> text(std::string_view body) {
    // Two characters a number are the least, but for the last.
    if (header_.points > (body.size() + 1) / (2 * header_.pointNumbers())) return cutShort();
    scan_.points.reserve(header_.points / stride_ + 1);
    std::array<std::size_t, 3> places{};
    for (std::size_t axis = 0; axis < 3; ++axis)
      for (std::size_t i = 0; i < header_.axes[axis]; ++i) places[axis] += header_.fields[i].count;
    for (std::uint64_t i = 0; i < header_.points; ++i) {
      if (const auto on = look(i); !on) return tl::unexpected(on.error());
      Vec3 p = Vec3::Zero();
      for (std::size_t place = 0; place < header_.pointNumbers(); ++place) {
        body.remove_prefix(std::min(body.find_first_not_of(" \t\r\n"), body.size()));
        const auto number = leadingNumber(body);
        if (!number)
          return fail("The PCD file is cut short or damaged: no number could be read here.",
                      "point " + std::to_string(i + 1) + " of " + std::to_string(header_.points), kWholeCopy);
        body.remove_prefix(number->length);
        for (std::size_t axis = 0; axis < 3; ++axis)
          if (places[axis] == place) p[static_cast<Eigen::Index>(axis)] = number->value;
      }
      if (i % stride_ == 0) scan_.points.push_back(p);
    }
    return finished();
  }

  tl::unexpected<Problem> cutShort() const {
    return fail("The PCD file promises " + std::to_string(header_.points) +
                    " points, more than the rest of the file can hold: it is cut short or damaged.",
                {}, kWholeCopy);
  }

 private:
  Result<void> look(std::uint64_t point) const {
    if (point % kRowsBetweenLooks != 0) return {};
    if (progress_.stop()) return fail(kImportCancelled);
    progress_.at(static_cast<double>(point) / static_cast<double>(header_.points));
    return {};
  }

  Result<RawScan> finished() {
    scan_.thinnedOut = header_.points - scan_.points.size();
    return std::move(scan_);
  }

  const PcdHeader& header_;
  const Progress& progress_;
  std::uint64_t stride_;
  RawScan scan_;
};

Result<std::string> unpacked(std::string_view body, const PcdHeader& header) {
  const auto damaged = [](const std::string& how) {
    return fail("The packed points of the PCD file are damaged: " + how + ".", {}, kWholeCopy);
  };
  if (body.size() < 8) return damaged("they are cut short");
  std::uint32_t packed = 0;
  std::uint32_t size = 0;
  std::memcpy(&packed, body.data(), 4);
  std::memcpy(&size, body.data() + 4, 4);
  body.remove_prefix(8);
  if (packed > body.size()) return damaged("they are cut short");
  if (size != header.points * header.pointBytes()) return damaged("their size is not what the header says");
  if (size > kMostLzfGrowth * packed) return damaged("they cannot unpack to what they say");
  auto bytes = unpackLzf(body.substr(0, packed), size);
  if (!bytes) return damaged("they do not unpack");
  return std::move(*bytes);
}

}  // namespace

Result<RawScan> readPcd(std::string_view bytes, const ScanReadOptions& options, const Progress& progress) {
  const auto header = readPcdHeader(bytes);
  if (!header) return tl::unexpected(header.error());
  const std::string_view body = bytes.substr(header->bodyStart);
  BodyReader reader(*header, options, progress);
  if (header->encoding == PcdHeader::Encoding::Text) return reader.text(body);
  // No point may come from nothing, or a header alone could ask for any number of them.
  if (header->points > (1ull << 32)) return reader.cutShort();
  if (header->encoding == PcdHeader::Encoding::Compressed) {
    const auto plain = unpacked(body, *header);
    if (!plain) return tl::unexpected(plain.error());
    return reader.binary(*plain, fieldByField(*header));
  }
  if (header->points > body.size() / header->pointBytes()) return reader.cutShort();
  return reader.binary(body, pointByPoint(*header));
}

}  // namespace baywright
