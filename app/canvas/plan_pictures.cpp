// SPDX-License-Identifier: Apache-2.0
#include "canvas/plan_pictures.h"

#include <QFutureWatcher>
#include <QtConcurrentRun>
#include <algorithm>

#include "painting/plan_image.h"

namespace baywright {
namespace {

constexpr int kSmallestCopy = 512;  // pixels of the longer side: smaller ones are not worth it

}  // namespace

struct PlanPictures::Entry {
  std::weak_ptr<const Blob> file;
  QFutureWatcher<Decoded> watcher;
};

PlanPictures::PlanPictures(QObject* parent) : QObject(parent) {}

PlanPictures::~PlanPictures() = default;

PlanPictures::Decoded PlanPictures::decode(const PlanScan& scan) {
  Decoded decoded;
  Result<QImage> whole = decodePlan(scan);
  if (!whole) {
    decoded.problem = whole.error();
    return decoded;
  }
  decoded.copies.push_back(std::move(*whole));
  while (std::max(decoded.copies.back().width(), decoded.copies.back().height()) >= 2 * kSmallestCopy) {
    const QImage& last = decoded.copies.back();
    decoded.copies.push_back(last.scaled((last.width() + 1) / 2, (last.height() + 1) / 2,
                                         Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
  }
  return decoded;
}

const PlanPictures::Decoded* PlanPictures::decodedOf(const PlanScan& scan) const {
  if (!scan.file) return nullptr;
  // An address may be used again by another file once the first one is gone.
  std::erase_if(entries_, [](const auto& item) { return item.second->file.expired(); });
  const auto [found, isNew] = entries_.try_emplace(Key{scan.file.get(), scan.page});
  if (isNew) {
    found->second = std::make_unique<Entry>();
    found->second->file = scan.file;
    connect(&found->second->watcher, &QFutureWatcher<Decoded>::finished, this, &PlanPictures::ready);
    found->second->watcher.setFuture(QtConcurrent::run(&PlanPictures::decode, scan));
  }
  const auto& watcher = found->second->watcher;
  if (!watcher.isFinished() || watcher.future().resultCount() == 0) return nullptr;
  return &*watcher.future().constBegin();
}

QSize PlanPictures::sizeOf(const PlanScan& scan) const {
  const Decoded* decoded = decodedOf(scan);
  return decoded && !decoded->copies.empty() ? decoded->copies.front().size() : QSize();
}

std::optional<Problem> PlanPictures::problemOf(const PlanScan& scan) const {
  const Decoded* decoded = decodedOf(scan);
  return decoded ? decoded->problem : std::nullopt;
}

const QImage* PlanPictures::copyFor(const PlanScan& scan, double longerSide) const {
  const Decoded* decoded = decodedOf(scan);
  if (!decoded || decoded->copies.empty()) return nullptr;
  const QImage* best = &decoded->copies.front();
  for (const QImage& copy : decoded->copies) {
    if (std::max(copy.width(), copy.height()) >= longerSide) best = &copy;
  }
  return best;
}

void PlanPictures::finish() {
  for (const auto& [key, entry] : entries_) entry->watcher.waitForFinished();
}

}  // namespace baywright
