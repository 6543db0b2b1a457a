// SPDX-License-Identifier: Apache-2.0
#include "window/part_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "geometry/mesh.h"
#include "job/ceiling_regions.h"
#include "units/length_text.h"

namespace baywright {
namespace {

struct PartWords {
  Q_DECLARE_TR_FUNCTIONS(PartWords)
};

QString lengthText(double metres, const UnitSystem& units) {
  return QString::fromStdString(formatLength(metres, units));
}

QString lengthText(const Dimension& dimension, const UnitSystem& units) {
  return dimension.known ? lengthText(dimension.value, units) : PartWords::tr("not measured");
}

}  // namespace

QString wallName(const WallLine& line) {
  return PartWords::tr("Wall %1").arg(QString::fromStdString(line.name));
}

QString wallWords(const WallLine& line, const UnitSystem& units) {
  return lengthText(line.length, units);
}

QString ceilingWords(const CeilingPart& part, const Room& room, const UnitSystem& units) {
  if (!part.height.known) return PartWords::tr("height not measured");
  const CeilingSpan span = seenSpan(room, part);
  const QString low = lengthText(span.low, units), high = lengthText(span.high, units);
  return low == high ? PartWords::tr("flat, %1 high").arg(low)
                     : PartWords::tr("sloped, %1 to %2 high").arg(low, high);
}

QString openingWords(const Opening& opening, const std::vector<WallLine>& walls, const UnitSystem& units) {
  QString wall;
  for (const WallLine& line : walls)
    if (line.wall == opening.wall) wall = wallName(line);
  const QString width = lengthText(opening.width, units);
  if (!opening.height.known) return PartWords::tr("%1: %2 wide, height not measured").arg(wall, width);
  QString words = PartWords::tr("%1: %2 wide, %3 high").arg(wall, width, lengthText(opening.height, units));
  if (opening.sill.known && opening.sill.value > 0)
    words += PartWords::tr(", sill %1").arg(lengthText(opening.sill, units));
  if (opening.width.how == Instrument::Scan || opening.width.how == Instrument::Guess)
    words += PartWords::tr(", ± %1").arg(lengthText(2 * opening.width.uncertain().sigma, units));
  return words;
}

QString fixtureWords(const Fixture& fixture, const UnitSystem& units) {
  return PartWords::tr("from %1 to %2 above the floor")
      .arg(lengthText(fixture.bottom, units), lengthText(fixture.top, units));
}

QString scanWords(const RoomScan& scan) {
  const QLocale locale;
  if (scan.mesh)
    return PartWords::tr("%1 triangles, as an obstacle")
        .arg(locale.toString(static_cast<qulonglong>(scan.mesh->triangleCount())));
  const qulonglong points = scan.points ? scan.points->size() : 0;
  return PartWords::tr("%1 points, as an obstacle").arg(locale.toString(points));
}

}  // namespace baywright
