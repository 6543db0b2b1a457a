// SPDX-License-Identifier: Apache-2.0
#include "panels/readings_worth.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "painting/theme.h"
#include "survey/advice.h"
#include "survey/survey_check.h"
#include "units/angle_text.h"
#include "units/length_text.h"

namespace baywright {
namespace {

QLabel* wrapped() {
  auto* label = new QLabel;
  label->setWordWrap(true);
  return label;
}

QString symbolOf(SurveyRemarkKind kind) {
  if (kind == SurveyRemarkKind::Wrong) return verdictSymbol(Verdict::Blocked);
  if (kind == SurveyRemarkKind::Doubtful) return verdictSymbol(Verdict::Tight);
  return verdictSymbol(Verdict::Unknown);
}

}  // namespace

ReadingsWorth::ReadingsWorth(const Document& document, MeasurementsModel& model, QWidget* parent)
    : QWidget(parent), document_(document), model_(model) {
  summary_ = wrapped();
  summary_->setObjectName(QStringLiteral("summary"));
  suspicion_ = wrapped();
  suspicion_->setObjectName(QStringLiteral("suspicion"));
  QPalette loud = suspicion_->palette();
  loud.setColor(QPalette::WindowText, Theme::forPalette(palette()).verdictText(Verdict::Blocked));
  suspicion_->setPalette(loud);
  setAside_ = new QPushButton(tr("Set it &aside"));
  setAside_->setObjectName(QStringLiteral("setAside"));
  advice_ = wrapped();
  advice_->setObjectName(QStringLiteral("advice"));
  remarks_ = new QListWidget;
  remarks_->setObjectName(QStringLiteral("remarks"));
  remarks_->setAccessibleName(tr("What to look at before the room is trusted"));
  remarks_->setWordWrap(true);
  remarks_->setFrameShape(QFrame::NoFrame);
  remarks_->setMinimumHeight(fontMetrics().lineSpacing() + 8);  // it scrolls: the sentences above come first
  remarks_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  remarks_->setSelectionMode(QAbstractItemView::NoSelection);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 2, 6, 2);
  column->setSpacing(4);
  auto* list = new QPushButton(tr("&Measuring list…"));
  list->setObjectName(QStringLiteral("measuringList"));
  list->setToolTip(tr("What is still to be measured, with the room's sketch, for print."));
  auto* top = new QHBoxLayout;
  top->addWidget(summary_, 1);
  top->addWidget(list, 0, Qt::AlignTop);
  column->addLayout(top);
  connect(list, &QPushButton::clicked, this, &ReadingsWorth::measuringListAsked);
  auto* suspect = new QHBoxLayout;
  suspect->addWidget(suspicion_, 1);
  suspect->addWidget(setAside_, 0, Qt::AlignTop);
  column->addLayout(suspect);
  column->addWidget(advice_);
  column->addWidget(remarks_, 1);
  connect(setAside_, &QPushButton::clicked, this, [this] { model_.setAside(suspect_, true); });
}

void ReadingsWorth::refresh(Instrument next) {
  suspect_ = {};
  suspicion_->clear();
  advice_->clear();
  const auto& fit = model_.adjustment();
  if (document_.job().room.walls.empty()) {
    summary_->setText(tr("Draw the room's outline first, as a sketch: what is read here puts it right."));
  } else if (!fit) {
    summary_->setText(
        tr("Nothing read yet. Add the wall lengths, type each and press Enter; then a diagonal."));
  } else if (!*fit) {
    summary_->setText(QString::fromStdString(fit->error().sentence()));
  } else {
    showFit(**fit, next);
  }
  if (model_.ceiling() && !document_.job().room.walls.empty()) showCeiling(*model_.ceiling());
  suspicion_->setVisible(!suspicion_->text().isEmpty());
  setAside_->setVisible(static_cast<bool>(suspect_));
  advice_->setVisible(!advice_->text().isEmpty());
  remarks_->clear();
  if (document_.job().room.walls.empty()) return;
  for (const SurveyRemark& remark : checkSurvey(document_.job())) {
    const QString sentence = QString::fromStdString(remark.sentence);
    const bool isAbove = sentence == suspicion_->text() || advice_->text().contains(sentence);
    if (isAbove) continue;
    remarks_->addItem(symbolOf(remark.kind) + QStringLiteral("  ") + sentence);
  }
}

void ReadingsWorth::showFit(const SurveyAdjustment& fit, Instrument next) {
  const Job& job = document_.job();
  summary_->setText(summaryOf(fit));
  const Result<SurveyNetwork> network = networkOf(job.room.walls, job.measurements);
  if (!network) return;
  if (!model_.suspicions().empty()) {
    const Suspicion& first = model_.suspicions().front();  // the others may vanish with it
    suspicion_->setText(QString::fromStdString(first.sentence));
    const SuspectReading* culprit = first.culprit();
    suspect_ = culprit ? culprit->reading : Id{};
  }
  QStringList lines;
  for (const std::string& note : fit.notes) lines << QString::fromStdString(note);
  if (const auto advice = adviseReading(*network, fit, next, job.units))
    lines.prepend(QString::fromStdString(advice->sentence));
  advice_->setText(lines.join(QLatin1Char(' ')));
}

void ReadingsWorth::showCeiling(const CeilingFit& fit) {
  summary_->setText(summary_->text() + QLatin1Char('\n') + summaryOf(fit));
  QStringList notes{advice_->text()};
  for (const std::string& note : fit.notes) notes << QString::fromStdString(note);
  advice_->setText(notes.join(QLatin1Char(' ')).trimmed());
  if (fit.suspicious.empty() || !suspicion_->text().isEmpty()) return;
  suspicion_->setText(QString::fromStdString(fit.suspicious.back()));
  suspect_ = fit.suspect;
}

QString ReadingsWorth::summaryOf(const SurveyAdjustment& fit) const {
  const AdjustedReading* worst = nullptr;
  for (const AdjustedReading& one : fit.readings) {
    if (!worst || std::abs(one.standardised) > std::abs(worst->standardised)) worst = &one;
  }
  QString text = tr("Readings of the floor: %1").arg(fit.readings.size());
  // What is assumed is no reading: it must not make the rest look checked.
  text += fit.assumed.empty()
              ? tr(", %1 more than needed.").arg(fit.degreesOfFreedom)
              : tr("; right angles or lengths taken for granted: %1.").arg(fit.assumed.size());
  if (!worst || std::ranges::none_of(fit.readings, isChecked)) return text + tr(" Nothing checks them yet.");
  const UnitSystem& units = document_.job().units;
  const std::string off = worst->kind == ObservationKind::Angle
                              ? formatAngle(std::abs(worst->residual), units)
                              : formatLength(std::abs(worst->residual), units);
  return text + tr(" Fits worst: %1, off by %2.")
                    .arg(QString::fromStdString(worst->what), QString::fromStdString(off));
}

QString ReadingsWorth::summaryOf(const CeilingFit& fit) const {
  const QString shape = fit.shape == CeilingShape::Sloped    ? tr("sloped")
                        : fit.shape == CeilingShape::Stepped ? tr("two levels with a step")
                        : fit.shape == CeilingShape::Creased ? tr("two planes that meet")
                                                             : tr("level");
  return tr("Heights of the ceiling: %1, off by %2 on the whole. It is taken as %3.")
      .arg(fit.residuals.size())
      .arg(QString::fromStdString(formatLength(fit.rms, document_.job().units)), shape);
}

}  // namespace baywright
