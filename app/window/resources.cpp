// SPDX-License-Identifier: Apache-2.0
#include "window/resources.h"

#include <QDir>
#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QSvgRenderer>

#include "jobfile/catalogue_json.h"

namespace baywright {
namespace {

class OutlineIcon : public QIconEngine {
 public:
  OutlineIcon(QByteArray svg, QColor normal, QColor disabled)
      : svg_(std::move(svg)), normal_(std::move(normal)), disabled_(std::move(disabled)) {}

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    QByteArray tinted = svg_;
    tinted.replace("#000", (mode == QIcon::Disabled ? disabled_ : normal_).name().toLatin1());
    QSvgRenderer(tinted).render(painter, rect);
  }
  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap result(size);
    result.fill(Qt::transparent);
    QPainter painter(&result);
    paint(&painter, QRect(QPoint(0, 0), size), mode, state);
    return result;
  }
  QIconEngine* clone() const override { return new OutlineIcon(*this); }

 private:
  QByteArray svg_;
  QColor normal_;
  QColor disabled_;
};

template <class T>
void append(std::vector<T>& to, const std::vector<T>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

}  // namespace

QByteArray resourceBytes(const QString& path) {
  QFile file(QStringLiteral(":/") + path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QIcon icon(const QString& name, const QPalette& palette) {
  return QIcon(new OutlineIcon(resourceBytes(QStringLiteral("icons/%1.svg").arg(name)),
                               palette.color(QPalette::WindowText),
                               palette.color(QPalette::Disabled, QPalette::WindowText)));
}

Catalogue builtInCatalogue() {
  Catalogue all;
  for (const QString& name :
       QDir(QStringLiteral(":/catalogue")).entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
    const Result<Catalogue> list =
        catalogueFromJson(resourceBytes(QStringLiteral("catalogue/") + name).toStdString());
    if (!list) continue;  // a test reads every list; a damaged one must not keep the program from starting
    append(all.frames, list->frames);
    append(all.screens, list->screens);
    append(all.mats, list->mats);
    append(all.monitors, list->monitors);
    append(all.projectors, list->projectors);
    append(all.clubs, list->clubs);
    append(all.fixtures, list->fixtures);
    append(all.openings, list->openings);
  }
  return all;
}

}  // namespace baywright
