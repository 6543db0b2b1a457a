// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "drawing/linework.h"
#include "drawing/paper.h"
#include "drawing/views.h"

namespace baywright {

/// What is asked of a sheet. Lengths are written in the job's unit, which also chooses the family of scales.
struct SheetRequest {
  PaperSize paper = PaperSize::A3;
  Orientation orientation = Orientation::Landscape;
  std::optional<double> scale;  ///< denominator; none: the largest of the family that fits
  ViewOptions view;             ///< its metresPerMm follows from the scale and is not read
};

/// A scanned plan that lies under the linework of a page.
struct PlacedImage {
  Id scan;  ///< of Job::planScans
  Mat3 pageMmFromPixel =
      Mat3::Identity();  ///< homography; pixel (0, 0) is the top left corner of the picture
  PageBox clip;          ///< nothing of it shows outside
  double opacity = 1;
};

/// One page, to be printed without fitting it to anything. Marks are millimetres on paper from the lower left
/// corner, y up; underlays lie beneath them.
struct SheetPage {
  std::string title;
  double widthMm = 0;
  double heightMm = 0;
  Linework marks;
  std::vector<PlacedImage> underlays;
  double scaleDenominator = 0;  ///< 0: nothing on this page is to scale
};

}  // namespace baywright
