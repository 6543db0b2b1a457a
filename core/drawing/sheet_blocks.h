// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "clearance/assessment.h"
#include "drawing/sheet_flow.h"
#include "job/job.h"

namespace baywright::detail {

/// Text on sheets: ISO 3098 heights, millimetres.
inline constexpr double kBodyText = 1.8;
inline constexpr double kLabelText = 2.5;
inline constexpr double kHeadingText = 3.5;
/// From baseline to baseline of body text.
inline constexpr double kLineStep = 3.2;
/// Above and below the text of a row.
inline constexpr double kRowPad = 1.2;
/// Between sections.
inline constexpr double kSectionGap = 5;

Block headingBlock(const std::string& text, double widthMm);
Block paragraphBlock(const std::string& text, double widthMm);
Block spaceBlock(double heightMm);

/// Blocks of a section, its heading first, all `widthMm` wide.
std::vector<Block> findingBlocks(const Job& job, const Assessment& assessment, double widthMm);
std::vector<Block> cautionBlocks(const Job& job, double widthMm);
/// Only what the marks show: their layers, and the hatches of their verdicts.
std::vector<Block> legendBlocks(const Linework& shown, double widthMm);

}  // namespace baywright::detail
