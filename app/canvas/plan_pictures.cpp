// SPDX-License-Identifier: Apache-2.0
#include "canvas/plan_pictures.h"

#include <QFutureWatcher>
#include <QtConcurrentRun>
#include <algorithm>

#include "painting/plan_image.h"

namespace baywright {
namespace {

constexpr qint64 kMostTracedPixels = 12'000'000;  // an A4 sheet at 300 dpi; larger copies take seconds
// Of the longer side, pixels. A copy that is shrunk by more than two loses thin lines in parts.
constexpr int kSmallestCopy = 128;

}  // namespace

struct PlanPictures::Entry {
  std::weak_ptr<const Blob> file;
  QFutureWatcher<Decoded> watcher;
  QFutureWatcher<PictureTraces> tracer;
  bool isTracing = false;
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

PictureTraces PlanPictures::trace(const std::vector<QImage>& copies) {
  const QImage* copy = &copies.front();
  for (const QImage& smaller : copies)
    if (qint64{copy->width()} * copy->height() > kMostTracedPixels) copy = &smaller;
  const QImage gray = copy->convertToFormat(QImage::Format_Grayscale8);
  GrayImage image{gray.width(), gray.height(), {}};
  image.pixels.reserve(static_cast<std::size_t>(gray.width()) * static_cast<std::size_t>(gray.height()));
  for (int y = 0; y < gray.height(); ++y) {
    const uchar* row = gray.constScanLine(y);
    image.pixels.insert(image.pixels.end(), row, row + gray.width());
  }
  const double shrunk = static_cast<double>(copies.front().width()) / gray.width();
  return picturedTraces(image, shrunk).value_or(PictureTraces{});
}

const PictureTraces* PlanPictures::tracesOf(const PlanScan& scan) const {
  const Decoded* decoded = decodedOf(scan);
  if (!decoded || decoded->copies.empty()) return nullptr;
  Entry& entry = *entries_.at(Key{scan.file.get(), scan.page});
  if (!entry.isTracing) {
    entry.isTracing = true;
    connect(&entry.tracer, &QFutureWatcher<PictureTraces>::finished, this, &PlanPictures::traced);
    entry.tracer.setFuture(QtConcurrent::run(&PlanPictures::trace, decoded->copies));
  }
  if (!entry.tracer.isFinished() || entry.tracer.future().resultCount() == 0) return nullptr;
  return &*entry.tracer.future().constBegin();
}

void PlanPictures::finish() {
  for (const auto& [key, entry] : entries_) {
    entry->watcher.waitForFinished();
    if (entry->isTracing) entry->tracer.waitForFinished();
  }
}

}  // namespace baywright
