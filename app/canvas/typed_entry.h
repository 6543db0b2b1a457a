// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFrame>
#include <QLabel>
#include <QLineEdit>

#include "base/problem.h"
#include "canvas/tool.h"
#include "units/unit_system.h"

namespace baywright {

/// The small field that floats over a view while a figure is typed. It says below what it understood, in the
/// job's unit, and what is wrong with the text when it is taken. Enter takes, Tab takes and goes on, Esc and
/// losing the focus give up.
class TypedEntry : public QFrame {
  Q_OBJECT

 public:
  enum class Then { Done, Next, Previous };

  explicit TypedEntry(QWidget* parent);

  /// Shows the field with its middle at `middle` of the parent, as far as that has room. `typed` empty: the
  /// present figure stands there, selected, to be typed over.
  void ask(const TypedField& field, const UnitSystem& units, QPointF middle, const QString& typed);
  void complain(const Problem& problem);
  /// Hides without a word to anybody.
  void dismiss();

 Q_SIGNALS:
  void taken(double value, baywright::TypedEntry::Then then);
  void givenUp();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  Result<double> parsed() const;
  void take(Then then);
  void echo();
  void place();

  FieldKind kind_ = FieldKind::Size;
  UnitSystem units_;
  QPointF middle_;
  QLabel* name_;
  QLineEdit* edit_;
  QLabel* below_;
};

}  // namespace baywright
