// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "editing/document.h"

class QWidget;

namespace baywright {

/// Asks for a folder and writes the files that the job keeps into it, as they came; says where they lie, or
/// why they could not be written.
void saveOriginalsOut(Document& document, QWidget* window);

}  // namespace baywright
