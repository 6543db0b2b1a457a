// SPDX-License-Identifier: Apache-2.0
#include "editing/open_edit.h"

#include "editing/document.h"

namespace baywright {

OpenEdit::OpenEdit(Document& document, QString text)
    : document_(document), text_(std::move(text)), original_(document.job()) {}

OpenEdit::~OpenEdit() {
  if (!committed_) document_.showJob(original_);
}

std::optional<Problem> OpenEdit::preview(Result<Job> edited) {
  if (!edited) return edited.error();
  document_.showJob(std::move(*edited));
  return std::nullopt;
}

void OpenEdit::commit() {
  if (committed_) return;
  committed_ = true;
  Job result = document_.job();
  document_.showJob(original_);
  document_.change(text_, std::move(result));
}

}  // namespace baywright
