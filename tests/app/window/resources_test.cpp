// SPDX-License-Identifier: Apache-2.0
#include "window/resources.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QPixmap>

#include "canvas/tools.h"
#include "jobfile/catalogue_json.h"
#include "window/actions.h"

namespace baywright {
namespace {

TEST(Resources, EveryCatalogueListCanBeRead) {
  const QStringList names = QDir(QStringLiteral(":/catalogue")).entryList({QStringLiteral("*.json")});
  ASSERT_GE(names.size(), 5);
  for (const QString& name : names) {
    const auto list = catalogueFromJson(resourceBytes(QStringLiteral("catalogue/") + name).toStdString());
    EXPECT_TRUE(list.has_value()) << name.toStdString() << ": " << list.error().sentence();
  }
  const Catalogue all = builtInCatalogue();
  EXPECT_FALSE(all.frames.empty() || all.screens.empty() || all.projectors.empty() || all.clubs.empty() ||
               all.openings.empty());
}

TEST(Resources, EveryToolAndActionThatNamesAnIconHasOne) {
  const auto expectIcon = [](const char* name) {
    EXPECT_FALSE(resourceBytes(QStringLiteral("icons/%1.svg").arg(QLatin1String(name))).isEmpty()) << name;
  };
  for (const ToolRow& row : tools()) expectIcon(row.icon);
  for (const ActionRow& row : actionRows()) {
    if (*row.icon != '\0') expectIcon(row.icon);
  }
}

TEST(Resources, IconsAreDrawnInTheColourOfTheText) {
  QPalette palette;
  palette.setColor(QPalette::WindowText, Qt::red);
  const QImage image = icon(QStringLiteral("save"), palette).pixmap(32, 32).toImage();
  bool red = false;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x)
      red = red || (image.pixelColor(x, y).alpha() > 200 && image.pixelColor(x, y).red() > 200);
  }
  EXPECT_TRUE(red);
}

TEST(Resources, ThereIsNothingUnderAnUnknownName) {
  EXPECT_TRUE(resourceBytes(QStringLiteral("icons/none.svg")).isEmpty());
}

}  // namespace
}  // namespace baywright
