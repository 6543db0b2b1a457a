// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QObject>
#include <map>
#include <memory>
#include <utility>
#include <vector>

#include "base/problem.h"
#include "job/scan.h"
#include "survey/plan_trace_lines.h"

namespace baywright {

/// The pictures of scanned plans for a view: decoded on other threads, kept while their files live, with
/// smaller copies so that a drawing that shows all of a large sheet is quick.
class PlanPictures : public QObject {
  Q_OBJECT

 public:
  explicit PlanPictures(QObject* parent = nullptr);
  ~PlanPictures() override;

  /// Of the whole picture; empty while it is not decoded, or when it cannot be.
  QSize sizeOf(const PlanScan& scan) const;
  /// A sentence where the picture cannot be decoded.
  std::optional<Problem> problemOf(const PlanScan& scan) const;
  /// The smallest copy that is at least `longerSide` pixels wide or high, or the whole picture. Null while it
  /// is not decoded. Scaled up to sizeOf(scan) it is what worldFromPixel speaks of.
  const QImage* copyFor(const PlanScan& scan, double longerSide) const;

  /// Straight lines of the picture, in its pixels. Null while it is not decoded or they are still being
  /// looked for, on another thread; without lines where none can be found.
  const PictureTraces* tracesOf(const PlanScan& scan) const;

  /// Blocks until all that was asked for is decoded and looked through.
  void finish();

 Q_SIGNALS:
  void ready();
  void traced();

 private:
  struct Decoded {
    std::vector<QImage> copies;  ///< the whole one first, each next half as large
    std::optional<Problem> problem;
  };
  struct Entry;
  using Key = std::pair<const Blob*, int>;

  static Decoded decode(const PlanScan& scan);
  static PictureTraces trace(const std::vector<QImage>& copies);
  const Decoded* decodedOf(const PlanScan& scan) const;

  mutable std::map<Key, std::unique_ptr<Entry>> entries_;
};

}  // namespace baywright
