// SPDX-License-Identifier: Apache-2.0
#include "canvas/scan_underlay.h"

#include "painting/scan_image.h"

namespace baywright {

const std::vector<QImage>& ScanUnderlay::images(const QColor& colour) {
  if (colour != colour_) images_.clear();
  colour_ = colour;
  if (images_.empty()) {
    for (const ScanPicture& picture : pictures_) images_.push_back(scanImage(picture, colour));
  }
  return images_;
}

void ScanUnderlay::follow(const DrawnView& view, const Job& job) {
  if (view.kind != ViewKind::Plan && view.kind != ViewKind::Wall) return;
  Question question;
  question.view = view;
  for (const RoomScan& scan : job.roomScans) {
    if (scan.visible) question.scans.push_back(scan);
  }
  question.room.walls = job.room.walls;
  question.room.ceiling = job.room.ceiling;
  if (question == asked_) return;
  // What another wall showed must not stand here while the new picture is made.
  if (question.view != asked_.view || question.scans.empty()) show({});
  asked_ = question;
  if (question.scans.empty() && !worker_) return;
  if (!worker_)
    worker_.emplace(this, &ScanUnderlay::answer, [this](Answer pictures) {
      if (pictures) show(std::move(*pictures));
    });
  worker_->ask(std::move(question));
}

void ScanUnderlay::show(std::vector<ScanPicture> pictures) {
  if (pictures == pictures_) return;
  pictures_ = std::move(pictures);
  images_.clear();
  Q_EMIT ready();
}

void ScanUnderlay::finish() {
  if (worker_) worker_->finish();
}

ScanUnderlay::Answer ScanUnderlay::answer(const Question& question, const Progress& progress) {
  std::vector<ScanPicture> pictures;
  Job job;
  job.room = question.room;
  for (const RoomScan& scan : question.scans) {
    ScanPicture picture = scanPictureOf(scan, question.view, job, progress);
    if (progress.stop()) return std::nullopt;
    if (!picture.empty()) pictures.push_back(std::move(picture));
  }
  return pictures;
}

}  // namespace baywright
