// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <string_view>

#include "base/problem.h"
#include "geometry/vec.h"

namespace baywright {

/// Sheets of ISO 216 and ASME Y14.1.
enum class PaperSize {
  A4,
  A3,
  A2,
  A1,
  A0,
  AnsiA,
  AnsiB,
  AnsiC,
  AnsiD,
  AnsiE,
  ArchA,
  ArchB,
  ArchC,
  ArchD,
  ArchE1,
  ArchE
};
enum class Orientation { Portrait, Landscape };
enum class PaperFamily { Iso, Ansi, Arch };

struct PaperStyle {
  PaperSize size;
  PaperFamily family;
  std::string_view name;  ///< "A3", "ANSI B", "ARCH D"
  double shortMm, longMm;
};

/// One row a size, in the order of the enumeration: within a family from small to large.
const std::array<PaperStyle, 16>& paperStyles();
const PaperStyle& styleOf(PaperSize size);

/// "A3", "ansi b", "ANSI-B", "arch E1", "Letter", "Tabloid": case, spaces and hyphens do not matter.
Result<PaperSize> parsePaper(std::string_view text);

/// A box on a page, millimetres from the page's lower left corner.
using PageBox = Eigen::AlignedBox2d;

/// The whole sheet.
PageBox pageBox(PaperSize size, Orientation orientation);

/// Inside the border line: 20 mm on the filing edge, which is the left one, and 10 mm on the others (ISO
/// 5457:1999, values from memory; kept for the ASME sizes too, whose own margins are of the same order).
PageBox frameBox(PaperSize size, Orientation orientation);

}  // namespace baywright
