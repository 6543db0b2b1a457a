// SPDX-License-Identifier: Apache-2.0
#include "window/help_window.h"

#include <QDir>
#include <QHBoxLayout>
#include <QListWidget>
#include <QTextBrowser>

#include "window/resources.h"

namespace baywright {

HelpWindow::HelpWindow(QWidget* parent) : QDialog(parent) {
  setWindowTitle(tr("Help"));
  resize(900, 620);
  auto* pages = new QListWidget;
  auto* text = new QTextBrowser;
  text->setOpenLinks(false);
  for (const QString& name :
       QDir(QStringLiteral(":/help")).entryList({QStringLiteral("*.md")}, QDir::Files, QDir::Name)) {
    const QString page = QString::fromUtf8(resourceBytes(QStringLiteral("help/") + name));
    // The page's first line is its heading.
    QString title = page.section(QLatin1Char('\n'), 0, 0);
    title.remove(QLatin1Char('#'));
    auto* item = new QListWidgetItem(title.trimmed(), pages);
    item->setData(Qt::UserRole, page);
  }
  auto* row = new QHBoxLayout(this);
  pages->setMinimumWidth(pages->sizeHintForColumn(0) + 2 * pages->frameWidth() + 8);
  row->addWidget(pages);
  row->addWidget(text, 1);
  connect(pages, &QListWidget::currentItemChanged, text, [text](QListWidgetItem* item) {
    if (item) text->setMarkdown(item->data(Qt::UserRole).toString());
  });
  pages->setCurrentRow(0);
}

}  // namespace baywright
