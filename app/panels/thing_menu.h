// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "editing/document.h"

class QMenu;

namespace baywright {

/// What can be done with one thing wherever it is shown: rename, turn by a quarter, another like it, remove.
/// What its kind does not allow is left out. Each entry is one undo step.
void fillThingMenu(QMenu& menu, Document& document, Id thing);

}  // namespace baywright
