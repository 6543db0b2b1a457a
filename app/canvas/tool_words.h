// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QCoreApplication>
#include <QString>
#include <string>

#include "base/problem.h"
#include "job/thing_lookup.h"

namespace baywright {

/// A text of the tools, translated.
inline QString toolWords(const char* english) {
  return QCoreApplication::translate("Tool", english);
}

/// "Move Shelf": the text of an undo step.
inline QString stepText(const char* english, const Job& job, Id thing) {
  return toolWords(english).arg(QString::fromStdString(nameOf(job, thing)));
}

inline QString sentenceOf(const Problem& problem) {
  return QString::fromStdString(problem.sentence());
}

}  // namespace baywright
