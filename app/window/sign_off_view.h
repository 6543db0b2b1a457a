// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QWidget>
#include <vector>

#include "drawing/sheets.h"
#include "editing/document.h"
#include "painting/plan_image.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace baywright {

class SheetPreview;

/// The stage where paper is made: choice of sheet, paper and scale, the title block's words, a preview, and
/// the way to PDF and printer.
class SignOffView : public QWidget {
  Q_OBJECT

 public:
  SignOffView(Document& document, PlanImages& images, QWidget* parent = nullptr);

  /// A name of sheetKinds().
  void showSheet(std::string_view name);
  /// Asks for a file name and writes the sheet there.
  void exportPdf();
  /// Asks for a printer and prints at true scale.
  void print();
  /// Without asking; for tests and for those who know where.
  Result<void> writePdfTo(const QString& path);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void fillScales();
  SheetRequest request() const;

  Document& document_;
  PlanImages& images_;
  QComboBox* sheet_;
  QComboBox* paper_;
  QComboBox* orientation_;
  QComboBox* scale_;
  QLabel* pageLabel_;
  SheetPreview* preview_;
  QPushButton* pdf_;
  QPushButton* print_;
  std::vector<SheetPage> pages_;
};

}  // namespace baywright
