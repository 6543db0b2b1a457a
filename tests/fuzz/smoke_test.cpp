// SPDX-License-Identifier: Apache-2.0
// Runs a fuzzer's function without a fuzzer, so that any compiler and every run of the tests does.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace baywright {
namespace {

void feed(const std::string& bytes) {
  LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

std::vector<std::string> corpus() {
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(BAYWRIGHT_CORPUS))
    paths.push_back(entry.path());
  std::sort(paths.begin(), paths.end());
  std::vector<std::string> files;
  for (const auto& path : paths) {
    std::ifstream in(path, std::ios::binary);
    files.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
  }
  return files;
}

// One change of the kinds that files suffer: a bit turned, a byte set, bytes lost, bytes doubled, a piece of
// another file put in. Uses the engine's bits directly: distributions differ between libraries.
void damage(std::string& bytes, const std::string& other, std::mt19937& random) {
  if (bytes.empty()) return;
  const std::size_t at = random() % bytes.size();
  const std::size_t length = std::min<std::size_t>(1 + random() % 64, bytes.size() - at);
  switch (random() % 5) {
    case 0:
      bytes[at] = static_cast<char>(bytes[at] ^ (1 << random() % 8));
      break;
    case 1:
      bytes[at] = static_cast<char>(random() % 256);
      break;
    case 2:
      bytes.erase(at, length);
      break;
    case 3:
      bytes.insert(at, bytes.substr(at, length));
      break;
    default:
      bytes.insert(at, other.substr(random() % other.size(), length));
      break;
  }
}

TEST(Smoke, TakesTheCorpusAsItIs) {
  const auto files = corpus();
  ASSERT_FALSE(files.empty());
  for (const std::string& file : files) feed(file);
}

TEST(Smoke, TakesFilesCutShort) {
  constexpr std::size_t kCuts = 200;
  for (const std::string& file : corpus())
    for (std::size_t i = 0; i < kCuts; ++i) feed(file.substr(0, file.size() * i / kCuts));
}

TEST(Smoke, TakesDamagedFiles) {
  constexpr int kMutations = BAYWRIGHT_MUTATIONS;
  const auto files = corpus();
  std::mt19937 random(20250719);
  for (int i = 0; i < kMutations; ++i) {
    std::string bytes = files[random() % files.size()];
    const auto changes = 1 + random() % 8;
    for (std::uint32_t n = 0; n < changes; ++n) damage(bytes, files[random() % files.size()], random);
    feed(bytes);
  }
}

}  // namespace
}  // namespace baywright
