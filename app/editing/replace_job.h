// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QUndoCommand>

#include "job/job.h"

namespace baywright {

class Document;

/// The one undo command. It holds the job that the document does not show; undo and redo are the same
/// exchange. Commands with the same merge key (not 0) that follow one another become one, as arrow-key nudges
/// do; a command that ends where it began is obsolete.
class ReplaceJob : public QUndoCommand {
 public:
  ReplaceJob(Document& document, const QString& text, Job after, int mergeKey);

  int id() const override { return mergeKey_ == 0 ? -1 : mergeKey_; }
  bool mergeWith(const QUndoCommand* next) override;
  void undo() override { exchange(); }
  void redo() override { exchange(); }

 private:
  void exchange();

  Document& document_;
  Job other_;
  int mergeKey_;
};

}  // namespace baywright
