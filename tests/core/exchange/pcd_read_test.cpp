// SPDX-License-Identifier: Apache-2.0
#include "exchange/pcd_read.h"

#include <gtest/gtest.h>
#include <liblzf/lzf.h>

#include "exchange/pcd_lzf.h"
#include "scan_files.h"

namespace baywright {
namespace {

using namespace testing;

Result<RawScan> read(const std::string& bytes) {
  return readPcd(bytes, {}, {});
}

/// Packed by the library that the format comes from (LibLZF 3.6, M. Lehmann).
std::string packed(const std::string& plain) {
  std::string block(2 * plain.size() + 64, '\0');
  block.resize(lzf_compress(plain.data(), static_cast<unsigned>(plain.size()), block.data(),
                            static_cast<unsigned>(block.size())));
  return block;
}

std::string pcdCompressed(const std::vector<Vec3>& points) {
  const std::string plain = pcdFieldByField(points);
  const std::string block = packed(plain);
  return pcdHead("binary_compressed", points.size()) + bytesOf(static_cast<std::uint32_t>(block.size())) +
         bytesOf(static_cast<std::uint32_t>(plain.size())) + block;
}

TEST(PcdLzf, UnpacksWhatTheOriginalLibraryPacked) {
  std::string plain;
  for (int i = 0; i < 20000; ++i) plain += static_cast<char>((i * i / 97) % 251 < 200 ? i % 13 : i * 31);
  plain += std::string(5000, 'a');
  const std::string block = packed(plain);
  ASSERT_LT(block.size(), plain.size());
  EXPECT_EQ(unpackLzf(block, plain.size()), plain);
  EXPECT_FALSE(unpackLzf(block, plain.size() - 1));
  EXPECT_FALSE(unpackLzf(block, plain.size() + 1));
}

TEST(PcdLzf, RefusesBlocksThatPointBeforeTheirStart) {
  EXPECT_EQ(unpackLzf(std::string("\x00z\x20\x00", 4), 4), "zzzz");
  EXPECT_FALSE(unpackLzf(std::string("\x00z\x20\x01", 4), 4));
  EXPECT_FALSE(unpackLzf(std::string("\x05z", 2), 6));
  EXPECT_FALSE(unpackLzf(std::string("\x00z\xe0", 3), 12));
}

TEST(PcdRead, TakesText) {
  const auto scan = read(pcdHead("ascii", 2) + "7 1.5 -2 3\n8 nan 5.25 6\n");
  ASSERT_TRUE(scan) << scan.error().sentence();
  ASSERT_EQ(scan->points.size(), 2u);
  EXPECT_EQ(scan->points[0], Vec3(1.5, -2, 3));
  EXPECT_FALSE(scan->points[1].allFinite());
}

TEST(PcdRead, TakesBinaryAndCompressedAlike) {
  const auto points = sheet(40);
  const auto binary = read(pcdBinary(points));
  const auto compressed = read(pcdCompressed(points));
  ASSERT_TRUE(binary) << binary.error().sentence();
  ASSERT_TRUE(compressed) << compressed.error().sentence();
  ASSERT_EQ(binary->points.size(), points.size());
  EXPECT_EQ(binary->points, compressed->points);
  for (std::size_t i = 0; i < points.size(); ++i) EXPECT_LT((binary->points[i] - points[i]).norm(), 1e-6);
}

TEST(PcdRead, PassesOverFieldsOfManyNumbers) {
  const std::string head =
      "VERSION .7\nFIELDS histogram x y z\nSIZE 4 8 8 8\nTYPE F F F F\nCOUNT 3 1 1 1\nWIDTH 1\nHEIGHT 1\n"
      "POINTS 1\nDATA ";
  const auto text = read(head + "ascii\n9 9 9 1 2 3\n");
  ASSERT_TRUE(text) << text.error().sentence();
  EXPECT_EQ(text->points[0], Vec3(1, 2, 3));
  const auto binary =
      read(head + "binary\n" + std::string(12, '\0') + bytesOf(1.0) + bytesOf(2.0) + bytesOf(3.0));
  ASSERT_TRUE(binary);
  EXPECT_EQ(binary->points[0], Vec3(1, 2, 3));
}

TEST(PcdRead, EveryCutShortFileIsASentence) {
  for (const std::string& whole :
       {pcdBinary(sheet(4)), pcdCompressed(sheet(4)), pcdHead("ascii", 1) + "7 1 2 3"})
    for (std::size_t length = 0; length < whole.size(); ++length) {
      const auto scan = read(whole.substr(0, length));
      ASSERT_FALSE(scan) << length;
      EXPECT_TRUE(scan.error().what.ends_with(".")) << scan.error().what;
    }
}

TEST(PcdRead, RefusesSizesThatCannotBe) {
  std::string bytes = pcdHead("binary", 1);
  const auto with = [&](const std::string& from, const std::string& to) {
    std::string changed = bytes;
    for (std::size_t at = 0; (at = changed.find(from, at)) != std::string::npos; at += to.size())
      changed.replace(at, from.size(), to);
    return read(changed + std::string(14, '\0'));
  };
  EXPECT_TRUE(with("WIDTH 1", "WIDTH 1"));
  EXPECT_FALSE(with("POINTS 1", "POINTS 2"));
  EXPECT_FALSE(with("SIZE 2 4", "SIZE 3 4"));
  EXPECT_FALSE(with("TYPE U F", "TYPE Q F"));
  EXPECT_FALSE(with("COUNT 1 1", "COUNT 99999999999 1"));
  EXPECT_FALSE(with("FIELDS label x", "FIELDS label w"));
  bytes = pcdHead("binary_compressed", 1u << 31) + bytesOf(std::uint32_t{4});
  EXPECT_FALSE(read(bytes + bytesOf(std::uint32_t{14u << 30}) + "abcd"));
  // A header that promises what a block of its size cannot hold.
  bytes =
      pcdHead("binary_compressed", 1000000) + bytesOf(std::uint32_t{4}) + bytesOf(std::uint32_t{14000000});
  const auto bomb = read(bytes + "abcd");
  ASSERT_FALSE(bomb);
  EXPECT_NE(bomb.error().what.find("cannot unpack to what they say"), std::string::npos);
}

}  // namespace
}  // namespace baywright
