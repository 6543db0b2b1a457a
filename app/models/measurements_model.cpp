// SPDX-License-Identifier: Apache-2.0
#include "models/measurements_model.h"

#include <QFont>
#include <algorithm>

#include "job/edit.h"
#include "job/find.h"
#include "survey/ceiling_fit_job.h"
#include "survey/network.h"
#include "units/angle_text.h"
#include "units/length_text.h"

namespace baywright {
namespace {

bool readsTheSame(const Measurement& a, const Measurement& b) {
  return a.kind == b.kind && a.from == b.from && a.to == b.to && a.at == b.at && a.position == b.position;
}

std::size_t timesRead(const Job& job, const Measurement& reading) {
  return static_cast<std::size_t>(std::ranges::count_if(
      job.measurements, [&](const Measurement& other) { return readsTheSame(other, reading); }));
}

bool isOfTheFloor(const Measurement& reading) {
  return reading.used && reading.kind != MeasurementKind::CeilingHeight;
}

}  // namespace

QStringList instrumentWords() {
  return {MeasurementsModel::tr("tape"), MeasurementsModel::tr("laser"), MeasurementsModel::tr("drawing"),
          MeasurementsModel::tr("scan"), MeasurementsModel::tr("guess")};
}

MeasurementsModel::MeasurementsModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document) {
  connect(&document_, &Document::jobChanged, this, &MeasurementsModel::jobChanged);
  jobChanged();
}

void MeasurementsModel::jobChanged() {
  const Job& job = document_.job();
  if (job.measurements != adjustedReadings_ || job.room.walls != adjustedWalls_ ||
      job.units != adjustedUnits_)
    fitAgain();
  std::erase_if(asked_, [&](const Asked& asked) {
    const auto isGone = [&](Id corner) { return corner && !findById(job.room.walls, corner); };
    const Measurement& m = asked.reading;
    return isGone(m.from) || isGone(m.to) || isGone(m.at);
  });
  refreshRows();
}

void MeasurementsModel::fitAgain() {
  const Job& job = document_.job();
  adjustedReadings_ = job.measurements;
  adjustedWalls_ = job.room.walls;
  adjustedUnits_ = job.units;
  adjustment_.reset();
  suspicions_.reset();
  ceiling_.reset();
  if (std::ranges::any_of(job.measurements, isOfTheFloor)) adjustment_ = adjust(job.room, job.measurements);
  const Room room = adjustment_ && *adjustment_ ? adjustedRoom(job.room, **adjustment_) : job.room;
  heights_ = ceilingReadings(room, job.measurements);
  if (!heights_.empty()) ceiling_ = fitCeiling(room, job.measurements, job.units);
}

std::vector<Measurement> MeasurementsModel::rowsNow() const {
  std::vector<Measurement> rows = document_.job().measurements;
  // What has been read meanwhile is no longer asked for; undoing the reading asks again.
  for (const Asked& asked : asked_) {
    if (timesRead(document_.job(), asked.reading) <= asked.readBefore) rows.push_back(asked.reading);
  }
  return rows;
}

void MeasurementsModel::refreshRows() {
  std::vector<Measurement> next = rowsNow();
  const int before = static_cast<int>(rows_.size());
  const int after = static_cast<int>(next.size());
  // Rows stay and are told to redraw, so that the cursor stays in its row while figures are typed.
  if (after < before) {
    beginRemoveRows({}, after, before - 1);
    rows_.resize(next.size());
    endRemoveRows();
  } else if (after > before) {
    beginInsertRows({}, before, after - 1);
    rows_ = std::move(next);
    endInsertRows();
  }
  if (after <= before) rows_ = std::move(next);
  if (after > 0) Q_EMIT dataChanged(index(0, 0), index(after - 1, kColumns - 1));
  Q_EMIT refreshed();
}

QModelIndex MeasurementsModel::ask(const std::vector<Measurement>& readings) {
  const int first = rowCount();
  for (const Measurement& reading : readings) {
    asked_.push_back({reading, timesRead(document_.job(), reading)});
    asked_.back().reading.id = {};
  }
  refreshRows();
  return readings.empty() ? QModelIndex() : index(first, Read);
}

QModelIndex MeasurementsModel::askForWalls(Instrument how) {
  const std::vector<Wall>& walls = document_.job().room.walls;
  std::vector<Measurement> wanted;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    Measurement reading;
    reading.from = walls[i].id;
    reading.how = how;
    const bool isListed = std::ranges::any_of(
        rows_, [&](const Measurement& row) { return row.used && readsTheSame(row, reading); });
    if (!isListed && !isWallRead(walls, i, document_.job().measurements)) wanted.push_back(reading);
  }
  return ask(wanted);
}

void MeasurementsModel::remove(const QModelIndex& index) {
  if (!index.isValid()) return;
  const Measurement reading = row(index);
  if (reading.id) {
    // Without this, what was asked for and read would be asked for again.
    std::erase_if(asked_, [&](const Asked& asked) { return readsTheSame(asked.reading, reading); });
    document_.change(tr("Remove %1").arg(nameOf(reading)), removeThing(document_.job(), reading.id));
    return;
  }
  const auto found =
      std::ranges::find_if(asked_, [&](const Asked& asked) { return readsTheSame(asked.reading, reading); });
  if (found != asked_.end()) asked_.erase(found);
  refreshRows();
}

bool MeasurementsModel::setAside(Id reading, bool isSetAside) {
  const Measurement* found = findById(document_.job().measurements, reading);
  if (!found) return false;
  Measurement changed = *found;
  changed.used = !isSetAside;
  const QString text = isSetAside ? tr("Set aside %1") : tr("Use %1 again");
  return document_.change(text.arg(nameOf(changed)), setMeasurement(document_.job(), changed));
}

const Measurement& MeasurementsModel::row(const QModelIndex& index) const {
  return rows_[static_cast<std::size_t>(index.row())];
}

Id MeasurementsModel::idOf(const QModelIndex& index) const {
  return index.isValid() ? row(index).id : Id{};
}

QModelIndex MeasurementsModel::indexOf(Id reading) const {
  for (std::size_t i = 0; reading && i < rows_.size(); ++i) {
    if (rows_[i].id == reading) return index(static_cast<int>(i), Read);
  }
  return {};
}

const AdjustedReading* MeasurementsModel::adjusted(Id reading) const {
  if (!reading || !adjustment_ || !*adjustment_) return nullptr;
  for (const AdjustedReading& one : (*adjustment_)->readings) {
    if (one.reading == reading) return &one;
  }
  return nullptr;
}

const std::vector<Suspicion>& MeasurementsModel::suspicions() const {
  if (suspicions_) return *suspicions_;
  suspicions_.emplace();
  const Job& job = document_.job();
  if (!adjustment_ || !*adjustment_) return *suspicions_;
  if (const Result<SurveyNetwork> network = networkOf(job.room.walls, job.measurements))
    suspicions_ = testForBlunders(*network, **adjustment_, job.units).suspicions;
  return *suspicions_;
}

const SuspectReading* MeasurementsModel::suspect(Id reading) const {
  if (!reading) return nullptr;
  for (const Suspicion& suspicion : suspicions()) {
    const SuspectReading* culprit = suspicion.culprit();
    for (const SuspectReading& one : suspicion.suspects)
      if (one.reading == reading && (!culprit || culprit == &one)) return &one;
  }
  return nullptr;
}

const FigureResidual* MeasurementsModel::ceilingResidual(Id reading) const {
  if (!reading || !ceiling_) return nullptr;
  for (std::size_t i = 0; i < heights_.size(); ++i) {
    if (heights_[i].reading == reading) return &ceiling_->residuals[i];
  }
  return nullptr;
}

int MeasurementsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int MeasurementsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumns;
}

QVariant MeasurementsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
  const QStringList words = {tr("What"), tr("Read"), tr("By"), tr("Off by"), tr("Remark")};
  return words.value(section);
}

Qt::ItemFlags MeasurementsModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  Qt::ItemFlags flags = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
  const bool isRead = static_cast<bool>(row(index).id);
  if (index.column() == What && isRead) flags |= Qt::ItemIsUserCheckable;
  if (index.column() == Read || index.column() == By) flags |= Qt::ItemIsEditable;
  if (index.column() == Remark && isRead) flags |= Qt::ItemIsEditable;
  return flags;
}

QString MeasurementsModel::letterOf(Id corner) const {
  const Wall* wall = findById(document_.job().room.walls, corner);
  return wall ? QString::fromStdString(wall->name) : tr("?");
}

QString MeasurementsModel::nameOf(const Measurement& m) const {
  switch (m.kind) {
    case MeasurementKind::WallLength:
      return tr("wall %1").arg(letterOf(m.from));
    case MeasurementKind::Diagonal:
      return tr("diagonal %1-%2").arg(letterOf(m.from), letterOf(m.to));
    case MeasurementKind::Angle:
      return tr("angle at %1").arg(letterOf(m.at));
    case MeasurementKind::Offset:
      return tr("corner %1 from wall %2").arg(letterOf(m.to), letterOf(m.from));
    case MeasurementKind::CeilingHeight:
      break;
  }
  if (m.at) return tr("ceiling at corner %1").arg(letterOf(m.at));
  const UnitSystem& units = document_.job().units;
  return tr("ceiling at %1, %2")
      .arg(QString::fromStdString(formatLength(m.position.x(), units)),
           QString::fromStdString(formatLength(m.position.y(), units)));
}

QString MeasurementsModel::valueText(const Measurement& m) const {
  const UnitSystem& units = document_.job().units;
  return QString::fromStdString(m.kind == MeasurementKind::Angle ? formatAngle(m.value, units)
                                                                 : formatLength(m.value, units));
}

QVariant MeasurementsModel::text(const Measurement& m, int column) const {
  const UnitSystem& units = document_.job().units;
  const AdjustedReading* fit = adjusted(m.id);
  switch (column) {
    case What:
      return nameOf(m);
    case Read:
      return m.id ? valueText(m) : QString();
    case By:
      return instrumentWords().value(static_cast<int>(m.how));
    case OffBy:
      if (const FigureResidual* off = ceilingResidual(m.id))
        return QString::fromStdString(formatLengthSigned(off->residual, units));
      if (!fit) return {};
      return QString::fromStdString(fit->kind == ObservationKind::Angle
                                        ? formatAngle(fit->residual, units)
                                        : formatLengthSigned(fit->residual, units));
    case Remark:
      return QString::fromStdString(m.note);
    default:
      return {};
  }
}

QVariant MeasurementsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const Measurement& m = row(index);
  const int column = index.column();
  if (role == Qt::CheckStateRole && column == What && m.id) return m.used ? Qt::Checked : Qt::Unchecked;
  if (role == Qt::EditRole && column == By) return static_cast<int>(m.how);
  if (role == Qt::EditRole) return text(m, column);
  if (role == Qt::TextAlignmentRole && (column == Read || column == OffBy))
    return QVariant(Qt::AlignRight | Qt::AlignVCenter);
  if (role == Qt::FontRole && column != What &&
      (suspect(m.id) || (ceiling_ && m.id && m.id == ceiling_->suspect))) {
    QFont bold;
    bold.setBold(true);
    return bold;
  }
  if (role == Qt::ToolTipRole && column == What && m.id) return tr("Ticked: used. Not ticked: set aside.");
  if (role != Qt::DisplayRole) return {};
  return column == Remark && m.note.empty() ? remarkOn(m) : text(m, column);
}

QString MeasurementsModel::remarkOn(const Measurement& m) const {
  if (!m.id) return tr("not read yet");
  if (!m.used) return tr("set aside");
  if (const SuspectReading* wrong = suspect(m.id)) {
    const UnitSystem& units = document_.job().units;
    const std::string probable = wrong->isAngle ? formatAngle(wrong->probable.value, units)
                                                : formatLength(wrong->probable.value, units);
    return tr("does not fit: probably %1").arg(QString::fromStdString(probable));
  }
  if (ceiling_ && m.id == ceiling_->suspect) return tr("does not fit");
  const AdjustedReading* fit = adjusted(m.id);
  return fit && !isChecked(*fit) ? tr("nothing checks it") : QString();
}

bool MeasurementsModel::setValue(Measurement m, const QString& typed) {
  if (typed.trimmed().isEmpty()) return false;
  if (m.id && typed == valueText(m)) return false;  // kept as read, not as rounded for the screen
  const UnitSystem& units = document_.job().units;
  const std::string utf8 = typed.toStdString();
  const Result<double> value = m.kind == MeasurementKind::Angle    ? parseAngle(utf8, units)
                               : m.kind == MeasurementKind::Offset ? parseLength(utf8, units)
                                                                   : parseSize(utf8, units);
  if (!value) return document_.change({}, tl::make_unexpected(value.error()));
  m.value = *value;
  const QString name = nameOf(m);
  return m.id ? document_.change(tr("Correct %1").arg(name), setMeasurement(document_.job(), m))
              : document_.change(tr("Read %1").arg(name), addMeasurement(document_.job(), m));
}

bool MeasurementsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid()) return false;
  Measurement m = row(index);
  if (role == Qt::CheckStateRole && index.column() == What)
    return setAside(m.id, value.toInt() == Qt::Unchecked);
  if (role != Qt::EditRole) return false;
  if (index.column() == Read) return setValue(std::move(m), value.toString());
  if (index.column() == By) {
    const int how = value.toInt();
    if (how < 0 || how >= instrumentWords().size() || how == static_cast<int>(m.how)) return false;
    m.how = static_cast<Instrument>(how);
    if (m.id) return document_.change(tr("Change the instrument"), setMeasurement(document_.job(), m));
    for (Asked& asked : asked_) {
      if (readsTheSame(asked.reading, m)) asked.reading.how = m.how;
    }
    refreshRows();
    return true;
  }
  if (index.column() != Remark || !m.id || value.toString().toStdString() == m.note) return false;
  m.note = value.toString().toStdString();
  return document_.change(tr("Remark on %1").arg(nameOf(m)), setMeasurement(document_.job(), m));
}

}  // namespace baywright
