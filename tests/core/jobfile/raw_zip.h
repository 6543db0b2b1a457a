// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baywright::testing {

/// A member as a liar would write it. Absent fields tell the truth.
struct RawMember {
  std::string name;
  std::string bytes;  ///< as they lie in the archive
  std::optional<std::uint32_t> crc = {};
  std::optional<std::uint32_t> size = {};  ///< unpacked
  std::uint16_t method = 0;                ///< 0 stored, 8 deflated
  std::uint16_t flags = 0;                 ///< bit 0: encrypted
};

/// CRC-32 of ISO 3309, bit by bit.
inline std::uint32_t crc32(std::string_view bytes) {
  std::uint32_t crc = 0xffffffff;
  for (const char c : bytes) {
    crc ^= static_cast<unsigned char>(c);
    for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ ((crc & 1) ? 0xedb88320u : 0);
  }
  return ~crc;
}

/// Writes a zip archive without any of the checks that a decent library makes.
class RawZip {
 public:
  RawZip& add(const RawMember& member) {
    members_.push_back({member, static_cast<std::uint32_t>(archive_.size())});
    put32(0x04034b50);
    header(member);
    archive_ += member.name + member.bytes;
    return *this;
  }
  RawZip& add(const std::string& name, const std::string& bytes) { return add(RawMember{name, bytes}); }

  std::string archive() {
    const auto start = static_cast<std::uint32_t>(archive_.size());
    for (const Placed& placed : members_) {
      put32(0x02014b50);
      put16(20);  // made by
      header(placed.member);
      for (int i = 0; i < 3; ++i) put16(0);  // comment, disk, internal attributes
      put32(0);
      put32(placed.offset);
      archive_ += placed.member.name;
    }
    const auto size = static_cast<std::uint32_t>(archive_.size()) - start;
    put32(0x06054b50);
    put32(0);
    for (int i = 0; i < 2; ++i) put16(static_cast<std::uint16_t>(members_.size()));
    put32(size);
    put32(start);
    put16(0);
    return archive_;
  }

 private:
  struct Placed {
    RawMember member;
    std::uint32_t offset;
  };

  void put16(std::uint16_t value) {
    for (int byte = 0; byte < 2; ++byte) archive_.push_back(static_cast<char>(value >> (8 * byte)));
  }
  void put32(std::uint32_t value) {
    for (int byte = 0; byte < 4; ++byte) archive_.push_back(static_cast<char>(value >> (8 * byte)));
  }
  void header(const RawMember& member) {
    put16(20);  // version needed
    put16(member.flags);
    put16(member.method);
    put16(0);
    put16(0x21);
    put32(member.crc.value_or(crc32(member.bytes)));
    put32(static_cast<std::uint32_t>(member.bytes.size()));
    put32(member.size.value_or(static_cast<std::uint32_t>(member.bytes.size())));
    put16(static_cast<std::uint16_t>(member.name.size()));
    put16(0);
  }

  std::string archive_;
  std::vector<Placed> members_;
};

}  // namespace baywright::testing
