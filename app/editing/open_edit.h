// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <optional>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

class Document;

/// A drag or a dialog in progress. Every preview starts from the job as it was when the edit began, is shown
/// and assessed at once, and costs no undo step; commit() makes one step of the last preview. Without it the
/// destructor puts the job back. A document has at most one open edit.
class OpenEdit {
 public:
  OpenEdit(Document& document, QString text);
  ~OpenEdit();
  OpenEdit(const OpenEdit&) = delete;
  OpenEdit& operator=(const OpenEdit&) = delete;

  const Job& original() const { return original_; }
  /// Shows an edited copy of original(). A refused edit leaves the last good preview; its problem is
  /// returned.
  std::optional<Problem> preview(Result<Job> edited);
  void commit();

 private:
  Document& document_;
  QString text_;
  Job original_;
  bool committed_ = false;
};

}  // namespace baywright
