// SPDX-License-Identifier: Apache-2.0
#include "models/job_tree_model.h"

#include <QFont>

#include "job/edit.h"

namespace baywright {
namespace {

enum GroupRow { kRoom, kPeople, kKit, kOptions, kScans, kGroupCount };

/// Measurements have a table of their own; kit is that of the active option.
int groupOf(const Thing& thing, const Job& job) {
  switch (thing.kind) {
    case ThingKind::Wall:
    case ThingKind::Opening:
    case ThingKind::CeilingPart:
    case ThingKind::Fixture:
      return kRoom;
    case ThingKind::Golfer:
    case ThingKind::Club:
    case ThingKind::Bystander:
      return kPeople;
    case ThingKind::Frame:
    case ThingKind::Screen:
    case ThingKind::Mat:
    case ThingKind::Monitor:
    case ThingKind::Projector:
      return thing.owner == job.option().id ? kKit : -1;
    case ThingKind::Option:
      return kOptions;
    case ThingKind::PlanScan:
    case ThingKind::RoomScan:
    case ThingKind::Original:
      return kScans;
    case ThingKind::Measurement:
      break;
  }
  return -1;
}

bool isOwned(const Thing& thing) {
  return thing.kind == ThingKind::Club || thing.kind == ThingKind::Opening;
}

}  // namespace

JobTreeModel::JobTreeModel(Document& document, QObject* parent)
    : QAbstractItemModel(parent), document_(document), groups_(groupsOf(document.job())) {
  connect(&document_, &Document::jobChanged, this, &JobTreeModel::refresh);
}

std::vector<JobTreeModel::Group> JobTreeModel::groupsOf(const Job& job) const {
  std::vector<Group> groups(kGroupCount);
  groups[kRoom] = {tr("Room"), tr("Trace or type a room, or open a scan."), {}};
  groups[kPeople] = {tr("People"), tr("Add who will swing here."), {}};
  groups[kKit] = {tr("Kit"), {}, {}};
  groups[kOptions] = {tr("Options"), {}, {}};
  groups[kScans] = {tr("Scans and originals"), tr("Open a plan or a 3D scan to work over."), {}};
  // What belongs to a thing stands right after it: clubs after their golfer, doors after their wall.
  const std::vector<Thing> things = allThings(job);
  const auto put = [&](const Thing& thing) {
    if (const int group = groupOf(thing, job); group >= 0) {
      groups[static_cast<std::size_t>(group)].things.push_back(thing);
    }
  };
  for (const Thing& thing : things) {
    if (isOwned(thing)) continue;
    put(thing);
    for (const Thing& other : things) {
      if (isOwned(other) && other.owner == thing.id) put(other);
    }
  }
  return groups;
}

void JobTreeModel::refresh() {
  std::vector<Group> next = groupsOf(document_.job());
  const auto sameShape = [](const Group& a, const Group& b) {
    return std::equal(a.things.begin(), a.things.end(), b.things.begin(), b.things.end(),
                      [](const Thing& x, const Thing& y) { return x.id == y.id; });
  };
  // A drag changes no row: the tree keeps its selection and scroll.
  if (std::equal(groups_.begin(), groups_.end(), next.begin(), next.end(), sameShape)) {
    groups_ = std::move(next);
    for (int group = 0; group < kGroupCount; ++group) {
      const QModelIndex top = index(group, 0);
      if (const int rows = rowCount(top); rows > 0)
        Q_EMIT dataChanged(index(0, 0, top), index(rows - 1, 0, top));
    }
    return;
  }
  beginResetModel();
  groups_ = std::move(next);
  endResetModel();
}

QModelIndex JobTreeModel::index(int row, int column, const QModelIndex& parent) const {
  if (!hasIndex(row, column, parent)) return {};
  // Internal id: 0 for a group, group number + 1 for its things.
  return createIndex(row, column, parent.isValid() ? static_cast<quintptr>(parent.row() + 1) : 0);
}

QModelIndex JobTreeModel::parent(const QModelIndex& child) const {
  if (!child.isValid() || child.internalId() == 0) return {};
  return createIndex(static_cast<int>(child.internalId()) - 1, 0, quintptr{0});
}

int JobTreeModel::rowCount(const QModelIndex& parent) const {
  if (!parent.isValid()) return static_cast<int>(groups_.size());
  if (parent.internalId() != 0) return 0;
  return static_cast<int>(groups_[static_cast<std::size_t>(parent.row())].things.size());
}

int JobTreeModel::columnCount(const QModelIndex&) const {
  return 1;
}

const Thing* JobTreeModel::thingAt(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == 0) return nullptr;
  const std::vector<Thing>& things = groups_[index.internalId() - 1].things;
  return index.row() < static_cast<int>(things.size()) ? &things[static_cast<std::size_t>(index.row())]
                                                       : nullptr;
}

Id JobTreeModel::idOf(const QModelIndex& index) const {
  const Thing* thing = thingAt(index);
  return thing ? thing->id : Id{};
}

QModelIndex JobTreeModel::indexOf(Id id) const {
  for (std::size_t group = 0; group < groups_.size(); ++group) {
    const std::vector<Thing>& things = groups_[group].things;
    for (std::size_t row = 0; row < things.size(); ++row) {
      if (things[row].id == id)
        return createIndex(static_cast<int>(row), 0, static_cast<quintptr>(group + 1));
    }
  }
  return {};
}

QVariant JobTreeModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Thing* thing = thingAt(index);
  if (!thing) {
    const Group& group = groups_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) return group.title;
    if (role == Qt::ToolTipRole && group.things.empty()) return group.whenEmpty;
    if (role == Qt::FontRole) {
      QFont font;
      font.setBold(true);
      return font;
    }
    return {};
  }
  switch (role) {
    case Qt::DisplayRole: {
      const QString name = QString::fromStdString(thing->name);
      const bool isActive = thing->kind == ThingKind::Option && thing->id == document_.job().option().id;
      return (isOwned(*thing) ? QStringLiteral("    ") : QString()) + name +
             (isActive ? tr("  (shown)") : QString());
    }
    case Qt::EditRole:
      return QString::fromStdString(thing->name);
    case Qt::ToolTipRole: {
      const std::string_view kind = kindName(thing->kind);
      return QString::fromUtf8(kind.data(), static_cast<qsizetype>(kind.size()));
    }
    case IdRole:
      return thing->id.value;
    case KindRole:
      return static_cast<int>(thing->kind);
    default:
      return {};
  }
}

bool JobTreeModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  const Thing* thing = thingAt(index);
  if (!thing || role != Qt::EditRole) return false;
  return document_.change(tr("Rename"),
                          renameThing(document_.job(), thing->id, value.toString().toStdString()));
}

Qt::ItemFlags JobTreeModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  if (!thingAt(index)) return Qt::ItemIsEnabled;
  return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable | Qt::ItemNeverHasChildren;
}

}  // namespace baywright
