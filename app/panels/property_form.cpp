// SPDX-License-Identifier: Apache-2.0
#include "panels/property_form.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

#include "painting/theme.h"
#include "panels/field_text.h"

namespace baywright {
namespace {

/// How a dimension was found, in the order of the combo box; the last entry is "not measured yet".
QStringList howFound() {
  return {PropertyForm::tr("tape"), PropertyForm::tr("laser"), PropertyForm::tr("drawing"),
          PropertyForm::tr("scan"), PropertyForm::tr("guess"), PropertyForm::tr("not measured")};
}
constexpr int kNotMeasured = 5;

}  // namespace

PropertyForm::PropertyForm(Document& document, Source source, const QString& invitation, QWidget* parent)
    : QScrollArea(parent), document_(document), source_(std::move(source)), invitation_(invitation) {
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  connect(&document_, &Document::jobChanged, this, &PropertyForm::refresh);
  rebuild();
}

void PropertyForm::rebuild() {
  rows_.clear();
  auto* content = new QWidget;
  auto* layout = new QFormLayout(content);
  layout->setRowWrapPolicy(QFormLayout::WrapLongRows);
  layout->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  std::vector<Field> fields = source_(document_);
  if (fields.empty()) {
    auto* invitation = new QLabel(invitation_);
    invitation->setWordWrap(true);
    layout->addRow(invitation);
  }
  rows_.reserve(fields.size());
  for (Field& field : fields) addRow(layout, std::move(field));
  setWidget(content);
  refresh();
}

void PropertyForm::refresh() {
  // Another kind of opening has other fields, and a thing that is gone has none.
  if (source_(document_).size() != rows_.size()) {
    rebuild();
    return;
  }
  const Job& job = document_.job();
  for (Row& row : rows_) {
    row.show(row.field.read(job), job.units);
    row.complaint->hide();
  }
}

void PropertyForm::addRow(QFormLayout* layout, Field field) {
  if (!field.group.isEmpty()) {
    auto* heading = new QLabel(field.group);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    layout->addRow(heading);
  }
  const std::size_t index = rows_.size();
  rows_.push_back({std::move(field), nullptr, new QLabel, {}});
  Row& row = rows_.back();
  switch (row.field.kind) {
    case PropertyKind::Choice:
      makeChoice(index);
      break;
    case PropertyKind::Flag:
      makeFlag(index);
      break;
    case PropertyKind::Measured:
      makeMeasured(index);
      break;
    default:
      makeLine(index);
  }
  row.complaint->setWordWrap(true);
  row.complaint->hide();
  QPalette red = row.complaint->palette();
  red.setColor(QPalette::WindowText, Theme::forPalette(palette()).verdictText(Verdict::Blocked));
  row.complaint->setPalette(red);
  auto* cell = new QWidget;
  auto* column = new QVBoxLayout(cell);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(row.editor);
  column->addWidget(row.complaint);
  auto* label = new QLabel(row.field.label);
  label->setBuddy(row.editor);
  label->setWordWrap(true);
  label->setToolTip(row.field.hint);
  row.editor->setToolTip(row.field.hint);
  row.editor->setAccessibleName(row.field.label);
  layout->addRow(label, cell);
}

void PropertyForm::commit(std::size_t index, const Result<FieldValue>& value) {
  Row& row = rows_[index];
  const Result<Job> edited = value ? row.field.write(document_.job(), *value) : tl::unexpected(value.error());
  if (edited) {
    document_.change(tr("Change %1").arg(row.field.label.toLower()), edited);
    return;
  }
  row.complaint->setText(QString::fromStdString(edited.error().sentence()));
  row.complaint->show();
}

void PropertyForm::makeLine(std::size_t index) {
  auto* line = new QLineEdit;
  Row& row = rows_[index];
  row.editor = line;
  row.show = [line, field = row.field](const FieldValue& value, const UnitSystem& units) {
    if (!line->hasFocus() || !line->isModified()) line->setText(textOf(field, value, units));
  };
  connect(line, &QLineEdit::editingFinished, this, [this, line, index] {
    if (!line->isModified()) return;
    line->setModified(false);
    const Field& field = rows_[index].field;
    commit(index, valueOf(field, line->text(), field.read(document_.job()), document_.job().units));
  });
}

void PropertyForm::makeMeasured(std::size_t index) {
  Row& row = rows_[index];
  auto* pair = new QWidget;
  auto* line = new QLineEdit;
  auto* how = new QComboBox;
  how->addItems(howFound());
  // Long enough for "not measured" only when it is open: the figure beside it matters more.
  how->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  how->setMinimumContentsLength(6);
  how->view()->setMinimumWidth(how->view()->sizeHintForColumn(0) + how->fontMetrics().height());
  line->setMinimumWidth(line->fontMetrics().horizontalAdvance(QStringLiteral("00′ 00 00/00″ ")));
  how->setAccessibleName(tr("%1, how it was found").arg(row.field.label));
  auto* layout = new QHBoxLayout(pair);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(line, 1);
  layout->addWidget(how);
  pair->setFocusProxy(line);
  line->setPlaceholderText(tr("to be measured"));
  line->setAccessibleName(row.field.label);
  row.editor = pair;
  row.show = [line, how, field = row.field](const FieldValue& value, const UnitSystem& units) {
    const Dimension& dimension = std::get<Dimension>(value);
    if (!line->hasFocus() || !line->isModified()) line->setText(textOf(field, value, units));
    how->setCurrentIndex(dimension.known ? static_cast<int>(dimension.how) : kNotMeasured);
  };
  connect(line, &QLineEdit::editingFinished, this, [this, line, index] {
    if (!line->isModified()) return;
    line->setModified(false);
    const Field& field = rows_[index].field;
    commit(index, valueOf(field, line->text(), field.read(document_.job()), document_.job().units));
  });
  connect(how, &QComboBox::activated, this, [this, index](int choice) {
    Dimension dimension = std::get<Dimension>(rows_[index].field.read(document_.job()));
    dimension.known = choice != kNotMeasured;
    if (dimension.known) dimension.how = static_cast<Instrument>(choice);
    commit(index, FieldValue(dimension));
  });
}

void PropertyForm::makeChoice(std::size_t index) {
  auto* box = new QComboBox;
  Row& row = rows_[index];
  box->addItems(row.field.choices);
  row.editor = box;
  row.show = [box](const FieldValue& value, const UnitSystem&) {
    box->setCurrentIndex(std::get<int>(value));
  };
  connect(box, &QComboBox::activated, this, [this, index](int choice) { commit(index, FieldValue(choice)); });
}

void PropertyForm::makeFlag(std::size_t index) {
  auto* box = new QCheckBox;
  Row& row = rows_[index];
  row.editor = box;
  row.show = [box](const FieldValue& value, const UnitSystem&) { box->setChecked(std::get<bool>(value)); };
  connect(box, &QCheckBox::clicked, this,
          [this, index](bool checked) { commit(index, FieldValue(checked)); });
}

}  // namespace baywright
