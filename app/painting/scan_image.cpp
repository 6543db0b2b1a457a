// SPDX-License-Identifier: Apache-2.0
#include "painting/scan_image.h"

namespace baywright {

QImage scanImage(const ScanPicture& picture, const QColor& colour) {
  if (picture.empty()) return {};
  QList<QRgb> inks;
  for (int ink = 0; ink < 256; ++ink) inks.push_back(qRgba(colour.red(), colour.green(), colour.blue(), ink));
  QImage image(picture.width, picture.height, QImage::Format_Indexed8);
  image.setColorTable(inks);
  for (int row = 0; row < picture.height; ++row) {
    const auto first = picture.ink.begin() + std::ptrdiff_t{row} * picture.width;
    std::copy(first, first + picture.width, image.scanLine(row));
  }
  return image.convertToFormat(QImage::Format_ARGB32_Premultiplied);
}

}  // namespace baywright
