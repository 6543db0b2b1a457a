// SPDX-License-Identifier: Apache-2.0
#include "panels/finding_delegate.h"

#include <QAbstractItemView>
#include <QPainter>

#include "models/findings_model.h"
#include "panels/margin_bar.h"

namespace baywright {
namespace {

/// Columns in units of the font's height.
struct Columns {
  explicit Columns(const QFontMetrics& font)
      : pad(font.height() / 3),
        verdict(font.horizontalAdvance(QStringLiteral("not known")) + 2 * font.height()),
        bar(6 * font.height()) {}
  int pad;
  int verdict;
  int bar;

  QRect sentence(const QRect& row) const { return row.adjusted(verdict + bar + 3 * pad, pad, -pad, -pad); }
};

}  // namespace

void FindingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
  const auto* model = qobject_cast<const FindingsModel*>(index.model());
  const Finding* finding = model ? model->finding(index) : nullptr;
  if (!finding) return;
  const Theme theme = Theme::forPalette(option.palette);
  const Columns columns(option.fontMetrics);
  painter->save();
  if (option.state & QStyle::State_Selected) {
    QColor lit = theme.accent;
    lit.setAlphaF(0.16F);
    painter->fillRect(option.rect, lit);
  } else if (option.state & QStyle::State_MouseOver) {
    QColor lit = theme.accent;
    lit.setAlphaF(0.07F);
    painter->fillRect(option.rect, lit);
  }
  QFont bold = option.font;
  bold.setBold(true);
  painter->setFont(bold);
  painter->setPen(theme.verdictText(finding->verdict));
  const QRect line(option.rect.left() + columns.pad, option.rect.top() + columns.pad, columns.verdict,
                   option.fontMetrics.height());
  painter->drawText(line, Qt::AlignLeft | Qt::AlignVCenter, verdictSymbol(finding->verdict));
  painter->drawText(line.adjusted(option.fontMetrics.height() * 5 / 4, 0, 0, 0),
                    Qt::AlignLeft | Qt::AlignVCenter, verdictWord(finding->verdict));
  const int barHeight = option.fontMetrics.height() / 2;
  paintMarginBar(
      *painter, QRectF(line.right() + columns.pad, line.center().y() - barHeight / 2, columns.bar, barHeight),
      *finding, theme);
  painter->setFont(option.font);
  painter->setPen(option.palette.color(QPalette::Text));
  painter->drawText(columns.sentence(option.rect), Qt::AlignLeft | Qt::TextWordWrap,
                    QString::fromStdString(finding->sentence));
  painter->setPen(QPen(theme.faint, 0.5));
  painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
  painter->restore();
}

QSize FindingDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
  const int width = view ? view->viewport()->width() : 600;
  const Columns columns(option.fontMetrics);
  const QRect sentence = columns.sentence(QRect(0, 0, width, 10000));
  const QRect text = option.fontMetrics.boundingRect(sentence, Qt::AlignLeft | Qt::TextWordWrap,
                                                     index.data(Qt::DisplayRole).toString());
  return {width, std::max(text.height(), option.fontMetrics.height()) + 2 * columns.pad + 1};
}

}  // namespace baywright
