// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "clearance/assessment.h"
#include "drawing/linework.h"
#include "drawing/paper.h"
#include "job/job.h"

namespace baywright::detail {

/// Fields of ISO 7200:2004; empty ones stay blank.
struct TitleBlock {
  std::string owner, customer, site;
  std::string title, supplement;
  std::string creator, approver;
  std::string documentType, number, revision, date;
  std::string scale;  ///< "SCALE 1:50"; empty: "none"
  std::string sheet;  ///< "1 of 2"
};
TitleBlock titleBlockOf(const Job& job, const std::string& documentType);

/// ISO 7200 clause 6 (value from memory).
inline constexpr double kTitleBlockWidth = 180;
inline constexpr double kTitleBlockHeight = 36;

Linework borderMarks(const PageBox& frame);
/// Its lower right corner is that of the frame.
Linework titleBlockMarks(const TitleBlock& fields, const PageBox& frame);

/// Rulers of 100 mm and of 4 in along the top and the left side of the box from its upper left corner, by
/// which a reader finds out whether a printer has shrunk the page in either direction; what to do then stands
/// beside them.
Linework rulerMarks(const PageBox& box);
inline constexpr double kRulerWidth = 11;  ///< how far they reach into the box

/// Who agrees to what: name, signature and date of customer and fitter. Fills the box.
Linework signOffMarks(const Job& job, const Assessment& assessment, const PageBox& box);
inline constexpr double kSignOffHeight = 34;

}  // namespace baywright::detail
