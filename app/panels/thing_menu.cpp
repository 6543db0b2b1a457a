// SPDX-License-Identifier: Apache-2.0
#include "panels/thing_menu.h"

#include <QInputDialog>
#include <QMenu>
#include <numbers>

#include "job/edit.h"
#include "job/thing_lookup.h"

namespace baywright {
namespace {

void rename(Document& document, Id thing, QWidget* parent) {
  const QString old = QString::fromStdString(nameOf(document.job(), thing));
  bool accepted = false;
  const QString name = QInputDialog::getText(parent, QObject::tr("Rename"), QObject::tr("Name"),
                                             QLineEdit::Normal, old, &accepted)
                           .trimmed();
  if (!accepted || name.isEmpty() || name == old) return;
  document.change(QObject::tr("Rename %1").arg(old), renameThing(document.job(), thing, name.toStdString()));
}

}  // namespace

void fillThingMenu(QMenu& menu, Document& document, Id thing) {
  const Job& job = document.job();
  if (!findThing(job, thing)) return;
  const QString name = QString::fromStdString(nameOf(job, thing));
  const auto add = [&](const char* objectName, const QString& text, auto run) {
    menu.addAction(text, run)->setObjectName(QString::fromLatin1(objectName));
  };
  menu.addSection(name);
  add("rename", QObject::tr("Rename…"),
      [&document, thing, parent = menu.parentWidget()] { rename(document, thing, parent); });
  constexpr double kQuarter = std::numbers::pi / 2;
  if (rotate(job, thing, kQuarter)) {
    add("turn", QObject::tr("Turn by a quarter"), [&document, thing, name] {
      document.change(QObject::tr("Turn %1").arg(name), rotate(document.job(), thing, kQuarter));
    });
  }
  if (copyThing(job, thing)) {
    add("copy", QObject::tr("Another like this"), [&document, thing, name] {
      if (document.change(QObject::tr("Copy %1").arg(name), copyThing(document.job(), thing)))
        document.selection().select(newestId(document.job()));
    });
  }
  if (removeThing(job, thing)) {
    add("remove", QObject::tr("Remove"), [&document, thing, name] {
      document.change(QObject::tr("Remove %1").arg(name), removeThing(document.job(), thing));
    });
  }
}

}  // namespace baywright
