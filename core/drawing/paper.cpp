// SPDX-License-Identifier: Apache-2.0
#include "drawing/paper.h"

#include <cctype>
#include <string>

namespace baywright {
namespace {

constexpr double kFilingEdge_mm = 20;
constexpr double kOtherEdges_mm = 10;

constexpr double inches(double value) {
  return value * 25.4;
}

// Small letters and digits only.
std::string plain(std::string_view text) {
  std::string result;
  for (const char c : text) {
    if (c == ' ' || c == '-' || c == '_') continue;
    result += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  return result;
}

}  // namespace

const std::array<PaperStyle, 16>& paperStyles() {
  using enum PaperSize;
  using enum PaperFamily;
  static constexpr std::array<PaperStyle, 16> styles{{
      {A4, Iso, "A4", 210, 297},
      {A3, Iso, "A3", 297, 420},
      {A2, Iso, "A2", 420, 594},
      {A1, Iso, "A1", 594, 841},
      {A0, Iso, "A0", 841, 1189},
      {AnsiA, Ansi, "ANSI A", inches(8.5), inches(11)},
      {AnsiB, Ansi, "ANSI B", inches(11), inches(17)},
      {AnsiC, Ansi, "ANSI C", inches(17), inches(22)},
      {AnsiD, Ansi, "ANSI D", inches(22), inches(34)},
      {AnsiE, Ansi, "ANSI E", inches(34), inches(44)},
      {ArchA, Arch, "ARCH A", inches(9), inches(12)},
      {ArchB, Arch, "ARCH B", inches(12), inches(18)},
      {ArchC, Arch, "ARCH C", inches(18), inches(24)},
      {ArchD, Arch, "ARCH D", inches(24), inches(36)},
      {ArchE1, Arch, "ARCH E1", inches(30), inches(42)},
      {ArchE, Arch, "ARCH E", inches(36), inches(48)},
  }};
  return styles;
}

const PaperStyle& styleOf(PaperSize size) {
  return paperStyles()[static_cast<std::size_t>(size)];
}

Result<PaperSize> parsePaper(std::string_view text) {
  const std::string wanted = plain(text);
  if (wanted == "letter") return PaperSize::AnsiA;
  if (wanted == "tabloid" || wanted == "ledger") return PaperSize::AnsiB;
  std::string names;
  for (const PaperStyle& style : paperStyles()) {
    if (plain(style.name) == wanted) return style.size;
    names += (names.empty() ? "" : ", ") + std::string(style.name);
  }
  return fail("No paper is called \"" + std::string(text) + "\".", {}, "Choose one of " + names + ".");
}

PageBox pageBox(PaperSize size, Orientation orientation) {
  const PaperStyle& style = styleOf(size);
  if (orientation == Orientation::Portrait) return {Vec2(0, 0), Vec2(style.shortMm, style.longMm)};
  return {Vec2(0, 0), Vec2(style.longMm, style.shortMm)};
}

PageBox frameBox(PaperSize size, Orientation orientation) {
  const PageBox page = pageBox(size, orientation);
  return {page.min() + Vec2(kFilingEdge_mm, kOtherEdges_mm),
          page.max() - Vec2(kOtherEdges_mm, kOtherEdges_mm)};
}

}  // namespace baywright
