// SPDX-License-Identifier: Apache-2.0
#include "editing/replace_job.h"

#include "editing/document.h"

namespace baywright {

ReplaceJob::ReplaceJob(Document& document, const QString& text, Job after, int mergeKey)
    : QUndoCommand(text), document_(document), other_(std::move(after)), mergeKey_(mergeKey) {}

bool ReplaceJob::mergeWith(const QUndoCommand*) {
  // The next command has been done already: the document shows its result, and other_ is still the job before
  // the first one.
  setObsolete(other_ == document_.job());
  return true;
}

void ReplaceJob::exchange() {
  document_.exchangeJob(other_);
}

}  // namespace baywright
