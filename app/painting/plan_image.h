// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QSize>
#include <map>
#include <memory>
#include <utility>

#include "base/problem.h"
#include "job/scan.h"

namespace baywright {

/// What is known of a plan's file before any of it is decoded.
struct PlanFileInfo {
  QSize pixels;             ///< of a picture, upright, as decoded; of a PDF's first page at kPdfDotsPerMetre
  int shrunkBy = 1;         ///< pixels of the file along each side that become one: 2 where it is very large
  bool isCutShort = false;  ///< a JPEG without its end: the lower part is missing
  int pages = 1;
  bool isPdf = false;
};

/// Resolution at which a PDF page becomes pixels, 200 dots an inch; large pages get less (see decodePlan).
inline constexpr double kPdfDotsPerMetre = 200 / 0.0254;

/// The largest picture that is decoded, and the longest side of a PDF page in pixels. Beyond it memory runs
/// out on the laptops this is made for: four bytes a pixel, twice. A JPEG, as phones take them, may be as
/// large as kLargestShrunkPixels: it is decoded at half its size, without ever being whole in memory.
inline constexpr double kLargestPlanPixels = 150e6;
inline constexpr double kLargestShrunkPixels = 4 * kLargestPlanPixels;
inline constexpr int kLongestPdfSide = 6000;

/// PNG, JPEG, TIFF (and what else Qt reads) or PDF. Told with a sentence: not a picture, too many pixels
/// (asked before decoding), a PDF that is broken or wants a password.
Result<PlanFileInfo> inspectPlan(const Blob& file);

/// The resolution to keep in PlanScan::pdfDotsPerMetre for a page; 0 for pictures.
Result<double> planResolution(const Blob& file, int page);

/// The pixels that PlanScan::worldFromPixel speaks of.
Result<QImage> decodePlan(const PlanScan& scan);

/// Decoded plans, kept while their files live. A file that cannot be decoded gives a null image.
class PlanImages {
 public:
  const QImage& full(const PlanScan& scan);

 private:
  struct Entry {
    std::weak_ptr<const Blob> file;
    QImage full;
  };
  Entry& entry(const PlanScan& scan);

  std::map<std::pair<const Blob*, int>, Entry> entries_;
};

}  // namespace baywright
