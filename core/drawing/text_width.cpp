// SPDX-License-Identifier: Apache-2.0
#include "drawing/text_width.h"

#include <algorithm>
#include <array>
#include <cstdint>

#include "units/utf8.h"

namespace baywright {
namespace {

// Advance widths in thousandths of an em, rounded up, read from the hmtx tables of DejaVu Sans and DejaVu
// Sans Bold 2.37.
using Ascii = std::array<std::uint16_t, 95>;   // U+0020 to U+007E
using Latin1 = std::array<std::uint16_t, 96>;  // U+00A0 to U+00FF

// clang-format off
constexpr Ascii kRegularAscii{
    318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361, 318, 337, 637, 637, 637, 637, 637,
    637, 637, 637, 637, 637, 337, 337, 838, 838, 838, 531, 1000, 685, 687, 699, 771, 632, 576, 775, 752,
    295, 295, 656, 558, 863, 749, 788, 604, 788, 695, 635, 611, 732, 685, 989, 686, 611, 686, 391, 337, 391,
    838, 500, 500, 613, 635, 550, 635, 616, 353, 635, 634, 278, 278, 580, 278, 975, 634, 612, 635, 635, 412,
    521, 393, 634, 592, 818, 592, 592, 525, 637, 337, 637, 838};
constexpr Ascii kBoldAscii{
    349, 457, 521, 838, 696, 1002, 873, 307, 458, 458, 523, 838, 380, 416, 380, 366, 696, 696, 696, 696,
    696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 581, 1000, 774, 763, 734, 831, 684, 684, 821,
    837, 373, 373, 775, 638, 996, 837, 851, 733, 851, 771, 721, 683, 813, 774, 1104, 771, 725, 726, 458,
    366, 458, 838, 500, 500, 675, 716, 593, 716, 679, 436, 716, 712, 343, 343, 666, 343, 1042, 712, 688,
    716, 716, 494, 596, 479, 712, 652, 924, 646, 652, 583, 712, 366, 712, 838};
constexpr Latin1 kRegularLatin{
    318, 401, 637, 637, 637, 637, 337, 500, 500, 1000, 472, 612, 838, 361, 1000, 500, 500, 838, 401, 401,
    500, 637, 637, 318, 500, 401, 472, 612, 970, 970, 970, 531, 685, 685, 685, 685, 685, 685, 975, 699, 632,
    632, 632, 632, 295, 295, 295, 295, 775, 749, 788, 788, 788, 788, 788, 838, 788, 732, 732, 732, 732, 611,
    605, 630, 613, 613, 613, 613, 613, 613, 982, 550, 616, 616, 616, 616, 278, 278, 278, 278, 612, 634, 612,
    612, 612, 612, 612, 838, 612, 634, 634, 634, 634, 592, 635, 592};
constexpr Latin1 kBoldLatin{
    349, 457, 696, 696, 637, 696, 366, 500, 500, 1000, 564, 646, 838, 416, 1000, 500, 500, 838, 438, 438,
    500, 736, 637, 380, 500, 438, 564, 646, 1036, 1036, 1036, 581, 774, 774, 774, 774, 774, 774, 1085, 734,
    684, 684, 684, 684, 373, 373, 373, 373, 838, 837, 851, 851, 851, 851, 851, 838, 851, 813, 813, 813, 813,
    725, 738, 720, 675, 675, 675, 675, 675, 675, 1048, 593, 679, 679, 679, 679, 343, 343, 343, 343, 688,
    712, 688, 688, 688, 688, 688, 838, 688, 712, 712, 712, 712, 652, 716, 652};

struct Other {
  char32_t code;
  int regular, bold;
};
constexpr Other kOthers[] = {
    {0x2013, 500, 500},  // –
    {0x2014, 1000, 1000},  // —
    {0x2018, 318, 380},  // ‘
    {0x2019, 318, 380},  // ’
    {0x201C, 519, 658},  // “
    {0x201D, 519, 658},  // ”
    {0x2022, 590, 640},  // •
    {0x2026, 1000, 1000},  // …
    {0x2032, 228, 264},  // ′
    {0x2033, 374, 447},  // ″
    {0x2044, 167, 167},  // ⁄
    {0x2212, 838, 838},  // −
    {0x2248, 838, 838},  // ≈
    {0x2264, 838, 838},  // ≤
    {0x2265, 838, 838},  // ≥
    {0x2300, 603, 603},  // ⌀
};
// clang-format on

constexpr int kFullEm = 1000;
constexpr std::string_view kEllipsis = "…";

int advanceOf(char32_t code, FontFace face) {
  const bool bold = face == FontFace::Bold;
  if (code >= 0x20 && code < 0x7F) return (bold ? kBoldAscii : kRegularAscii)[code - 0x20];
  if (code >= 0xA0 && code < 0x100) return (bold ? kBoldLatin : kRegularLatin)[code - 0xA0];
  for (const Other& other : kOthers) {
    if (other.code == code) return bold ? other.bold : other.regular;
  }
  return kFullEm;
}

std::size_t bytesOfFirst(std::string_view text) {
  const auto point = detail::firstCodePoint(text);
  return point ? point->bytes : 1;
}

// How many bytes of the text fit into the width; whole code points.
std::size_t bytesThatFit(std::string_view text, double heightMm, double widthMm, FontFace face) {
  std::size_t end = 0;
  while (end < text.size()) {
    const std::size_t next = end + bytesOfFirst(text.substr(end));
    if (textWidthMm(text.substr(0, next), heightMm, face) > widthMm) break;
    end = next;
  }
  return end;
}

// Text without line breaks.
std::vector<std::string> wrapParagraph(std::string_view text, double heightMm, double widthMm,
                                       FontFace face) {
  std::vector<std::string> lines;
  std::string line;
  while (!text.empty()) {
    const std::size_t space = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, space);
    const std::string longer = line.empty() ? std::string(word) : line + " " + std::string(word);
    if (textWidthMm(longer, heightMm, face) <= widthMm) {
      line = longer;
      text.remove_prefix(std::min(space + 1, text.size()));
    } else if (!line.empty()) {
      lines.push_back(std::move(line));
      line.clear();
    } else {
      const std::size_t cut = std::max(bytesThatFit(word, heightMm, widthMm, face), bytesOfFirst(word));
      lines.emplace_back(word.substr(0, cut));
      text.remove_prefix(cut);
    }
  }
  if (!line.empty() || lines.empty()) lines.push_back(std::move(line));
  return lines;
}

}  // namespace

double textWidthMm(std::string_view utf8, double heightMm, FontFace face) {
  int thousandths = 0;
  while (!utf8.empty()) {
    const auto point = detail::firstCodePoint(utf8);
    thousandths += point ? advanceOf(point->code, face) : kFullEm;
    utf8.remove_prefix(point ? point->bytes : 1);
  }
  return thousandths / 1000.0 * heightMm * kEmPerCapital;
}

std::vector<std::string> wrapText(std::string_view utf8, double heightMm, double widthMm, FontFace face) {
  std::vector<std::string> lines;
  while (true) {
    const std::size_t end = utf8.find('\n');
    for (std::string& line : wrapParagraph(utf8.substr(0, end), heightMm, widthMm, face)) {
      lines.push_back(std::move(line));
    }
    if (end == std::string_view::npos) return lines;
    utf8.remove_prefix(end + 1);
  }
}

std::string fitText(std::string_view utf8, double heightMm, double widthMm, FontFace face) {
  if (textWidthMm(utf8, heightMm, face) <= widthMm) return std::string(utf8);
  const double room = widthMm - textWidthMm(kEllipsis, heightMm, face);
  std::string cut(utf8.substr(0, bytesThatFit(utf8, heightMm, room, face)));
  while (!cut.empty() && cut.back() == ' ') cut.pop_back();
  return cut + std::string(kEllipsis);
}

}  // namespace baywright
