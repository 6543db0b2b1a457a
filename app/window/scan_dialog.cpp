// SPDX-License-Identifier: Apache-2.0
#include "window/scan_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

#include "drawing/scan_glance.h"
#include "units/length_text.h"
#include "window/problem_label.h"
#include "window/scan_preview.h"

namespace baywright {
namespace {

QString fromView(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QLabel* reasonLabel(const char* name) {
  auto* label = new QLabel;
  label->setObjectName(QString::fromLatin1(name));
  label->setWordWrap(true);
  return label;
}

QString sizeText(const ScanFacts& facts) {
  const QLocale locale;
  return facts.triangles > 0 ? ScanDialog::tr("A surface of %1 triangles.")
                                   .arg(locale.toString(static_cast<qulonglong>(facts.triangles)))
                             : ScanDialog::tr("A cloud of %1 points.")
                                   .arg(locale.toString(static_cast<qulonglong>(facts.points)));
}

}  // namespace

ScanFacts factsOf(const ScanGeometry& scan) {
  ScanFacts facts{scan.points.size(),
                  scan.triangles.size(),
                  scan.statedUp,
                  scan.statedMetresPerUnit,
                  suggestUp(scan),
                  {},
                  {}};
  for (const UpSuggestion& suggestion : facts.ups)
    facts.units[suggestion.up] = suggestUnits(scan, suggestion.up);
  facts.glance = glanceSamples(scan);
  return facts;
}

ScanDialog::ScanDialog(ScanFacts facts, const UnitSystem& units, const QString& fileName, QWidget* parent)
    : QDialog(parent),
      facts_(std::move(facts)),
      preview_(new ScanPreview),
      up_(new QComboBox),
      unit_(new QComboBox),
      whyUp_(reasonLabel("whyUp")),
      whyUnit_(reasonLabel("whyUnit")),
      problem_(problemLabel()) {
  setObjectName(QStringLiteral("scanDialog"));
  setWindowTitle(tr("A room from %1").arg(fileName));
  auto* column = new QVBoxLayout(this);
  column->addWidget(new QLabel(sizeText(facts_)));
  column->addWidget(preview_, 1);
  auto* caption =
      new QLabel(tr("The scan as it would stand, seen from above without its ceiling, beside a person of %1.")
                     .arg(QString::fromStdString(formatLength(kGlancePerson, units))));
  caption->setWordWrap(true);
  column->addWidget(caption);
  auto* form = new QFormLayout;
  form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  form->addRow(tr("The &axis that points up is"), up_);
  form->addRow(QString(), whyUp_);
  form->addRow(tr("One &unit of the scan is"), unit_);
  form->addRow(QString(), whyUnit_);
  column->addLayout(form);
  column->addWidget(problem_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  next_ = buttons->addButton(tr("Look for the &room"), QDialogButtonBox::AcceptRole);
  next_->setObjectName(QStringLiteral("next"));
  column->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  unit_->setObjectName(QStringLiteral("unit"));
  unit_->setPlaceholderText(tr("Choose the unit"));
  for (const DrawingUnit unit : kUsualDrawingUnits)
    unit_->addItem(fromView(nameOf(unit)), static_cast<int>(unit));
  fillUps();
  suggestUnit();
  connect(up_, &QComboBox::currentIndexChanged, this, &ScanDialog::suggestUnit);
  connect(unit_, &QComboBox::activated, this, [this] { unitChosen_ = true; });
  connect(unit_, &QComboBox::currentIndexChanged, this, &ScanDialog::explain);
  setMinimumWidth(560);
}

void ScanDialog::fillUps() {
  up_->setObjectName(QStringLiteral("up"));
  up_->setPlaceholderText(tr("Choose the axis"));
  for (const UpSuggestion& suggestion : facts_.ups)
    up_->addItem(fromView(nameOf(suggestion.up)), static_cast<int>(suggestion.up));
  up_->setCurrentIndex(likeliestUp());
}

int ScanDialog::likeliestUp() const {
  if (facts_.statedUp) return up_->findData(static_cast<int>(*facts_.statedUp));
  for (const UpSuggestion& suggestion : facts_.ups) {
    const auto units = facts_.units.find(suggestion.up);
    const bool couldBeARoom =
        facts_.statedMetresPerUnit ||
        (units != facts_.units.end() && !units->second.empty() && units->second.front().isPlausible);
    if (suggestion.isPlausible && couldBeARoom) return up_->findData(static_cast<int>(suggestion.up));
  }
  return -1;
}

void ScanDialog::suggestUnit() {
  if (!unitChosen_ && up_->currentIndex() >= 0) {
    const std::vector<UnitSuggestion>& likely = facts_.units[static_cast<UpAxis>(up_->currentData().toInt())];
    const bool isLikely = !likely.empty() && (facts_.statedMetresPerUnit || likely.front().isPlausible);
    const auto unit = isLikely ? drawingUnitFrom(likely.front().name) : std::nullopt;
    unit_->setCurrentIndex(unit ? unit_->findData(static_cast<int>(*unit)) : -1);
  }
  explain();
}

const UnitSuggestion* ScanDialog::suggestionFor(DrawingUnit unit) const {
  const auto found = facts_.units.find(static_cast<UpAxis>(up_->currentData().toInt()));
  if (up_->currentIndex() < 0 || found == facts_.units.end()) return nullptr;
  for (const UnitSuggestion& suggestion : found->second)
    if (drawingUnitFrom(suggestion.name) == unit) return &suggestion;
  return nullptr;
}

void ScanDialog::explain() {
  const int up = up_->currentIndex();
  whyUp_->setText(up < 0 ? tr("The file does not say it, and no axis stands out.")
                         : QString::fromStdString(facts_.ups[static_cast<std::size_t>(up)].reason));
  const UnitSuggestion* suggestion =
      unit_->currentIndex() < 0 ? nullptr
                                : suggestionFor(static_cast<DrawingUnit>(unit_->currentData().toInt()));
  whyUnit_->setText(suggestion ? QString::fromStdString(suggestion->reason)
                               : tr("The file does not say it."));
  next_->setEnabled(up >= 0 && unit_->currentIndex() >= 0);
  preview();
}

void ScanDialog::preview() {
  if (up_->currentIndex() < 0) return preview_->showGlance({});
  std::optional<double> metresPerUnit;
  if (unit_->currentIndex() >= 0)
    metresPerUnit = metresPer(static_cast<DrawingUnit>(unit_->currentData().toInt()));
  preview_->showGlance(
      glanceAt(facts_.glance, static_cast<UpAxis>(up_->currentData().toInt()), metresPerUnit));
}

ScanChoices ScanDialog::choices() const {
  return {static_cast<DrawingUnit>(unit_->currentData().toInt()),
          static_cast<UpAxis>(up_->currentData().toInt())};
}

void ScanDialog::showProblem(const Problem& problem) {
  tellProblem(*problem_, problem);
}

}  // namespace baywright
