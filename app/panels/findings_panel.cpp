// SPDX-License-Identifier: Apache-2.0
#include "panels/findings_panel.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <QtConcurrentRun>

#include "painting/theme.h"
#include "panels/finding_delegate.h"

namespace baywright {
namespace {

constexpr std::array kOrder = {Verdict::Blocked, Verdict::Tight, Verdict::Unknown, Verdict::Clear};

}  // namespace

FindingsPanel::FindingsPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(document),
      list_(new QListView),
      advice_(new QLabel),
      show_(new QPushButton(tr("&Show"))),
      help_(new QPushButton(tr("&What would help"))) {
  list_->setModel(&model_);
  list_->setItemDelegate(new FindingDelegate(list_));
  list_->setMouseTracking(true);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setResizeMode(QListView::Adjust);
  list_->setFrameShape(QFrame::NoFrame);
  list_->setAccessibleName(tr("Findings, worst first"));
  list_->setObjectName(QStringLiteral("findings"));
  list_->viewport()->installEventFilter(this);
  show_->setObjectName(QStringLiteral("showFinding"));
  help_->setObjectName(QStringLiteral("whatHelps"));
  advice_->setWordWrap(true);

  auto* bar = new QHBoxLayout;
  bar->setContentsMargins(6, 2, 6, 2);
  bar->addWidget(new QLabel(tr("Findings")));
  for (const Verdict verdict : kOrder) {
    auto* button = new QToolButton;
    button->setCheckable(true);
    button->setChecked(true);
    button->setAutoRaise(true);
    button->setAccessibleName(tr("List what is %1").arg(verdictWord(verdict)));
    connect(button, &QToolButton::toggled, this,
            [this, verdict](bool shown) { model_.setShown(verdict, shown); });
    filters_[static_cast<std::size_t>(verdict)] = button;
    bar->addWidget(button);
  }
  bar->addWidget(advice_, 1);
  bar->addWidget(show_);
  bar->addWidget(help_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addLayout(bar);
  column->addWidget(list_, 1);

  connect(list_, &QListView::entered, this, &FindingsPanel::showFinding);
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& index) {
            showFinding(index);
            refresh();
          });
  connect(list_, &QListView::doubleClicked, show_, &QPushButton::click);
  connect(list_, &QListView::activated, show_, &QPushButton::click);
  connect(show_, &QPushButton::clicked, this,
          [this] { Q_EMIT document_.selection().zoomToFindingRequested(currentKey()); });
  connect(help_, &QPushButton::clicked, this, &FindingsPanel::askWhatHelps);
  connect(&search_, &QFutureWatcher<Changes>::finished, this, &FindingsPanel::offer);
  connect(&document_, &Document::assessed, this, &FindingsPanel::refresh);
  connect(&document_, &Document::jobChanged, this, &FindingsPanel::stopSearch);
  refresh();
}

FindingsPanel::~FindingsPanel() {
  stopSearch();
  search_.waitForFinished();
}

QString FindingsPanel::currentKey() const {
  return list_->currentIndex().data(FindingsModel::KeyRole).toString();
}

bool FindingsPanel::eventFilter(QObject* watched, QEvent* event) {
  // The pointer went elsewhere: the finding that was chosen is shown again.
  if (event->type() == QEvent::Leave) document_.selection().showFinding(currentKey());
  return QWidget::eventFilter(watched, event);
}

void FindingsPanel::showFinding(const QModelIndex& index) {
  document_.selection().showFinding(index.data(FindingsModel::KeyRole).toString());
}

void FindingsPanel::refresh() {
  for (const Verdict verdict : kOrder) {
    filters_[static_cast<std::size_t>(verdict)]->setText(tr("%1 %2 %3")
                                                             .arg(verdictSymbol(verdict))
                                                             .arg(document_.assessment().count(verdict))
                                                             .arg(verdictWord(verdict)));
  }
  const Finding* finding = model_.finding(list_->currentIndex());
  show_->setEnabled(finding && finding->points);
  const bool wantsHelp =
      finding && (finding->verdict == Verdict::Blocked || finding->verdict == Verdict::Tight);
  help_->setEnabled(wantsHelp && !search_.isRunning());
  if (document_.assessment().findings.empty()) {
    advice_->setText(tr("Nothing to check yet: a room, a golfer and the kit make findings, worst first."));
  } else if (!search_.isRunning()) {
    advice_->clear();
  }
}

void FindingsPanel::stopSearch() {
  if (stop_) *stop_ = true;
}

void FindingsPanel::askWhatHelps() {
  const QString key = currentKey();
  if (key.isEmpty() || search_.isRunning()) return;
  stop_ = std::make_shared<std::atomic<bool>>(false);
  searched_ = document_.job();
  advice_->setText(tr("Looking for the smallest change that clears this…"));
  help_->setEnabled(false);
  search_.setFuture(QtConcurrent::run([job = searched_, key = key.toStdString(), stop = stop_] {
    Progress progress;
    progress.cancelled = [stop] { return stop->load(); };
    return smallestChanges(job, key, progress);
  }));
}

void FindingsPanel::offer() {
  help_->setEnabled(true);
  advice_->clear();
  if (*stop_ || !(document_.job() == searched_)) return;
  const Changes changes = search_.result();
  if (!changes) {
    advice_->setText(QString::fromStdString(changes.error().sentence()));
    return;
  }
  if (changes->empty()) {
    advice_->setText(tr("No single small change clears this. Try another frame, club or place for the bay."));
    return;
  }
  QMenu menu;
  for (const Change& change : *changes) {
    const QString sentence = QString::fromStdString(change.sentence);
    menu.addAction(sentence, this, [this, job = change.job, sentence] { document_.change(sentence, job); });
  }
  menu.exec(help_->mapToGlobal(QPoint(0, -menu.sizeHint().height())));
}

}  // namespace baywright
