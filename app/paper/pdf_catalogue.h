// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>

namespace baywright {

/// Adds the viewer preference /PrintScaling /None to a PDF that QPdfWriter made, as an incremental update
/// (ISO 32000-1, 7.5.6): viewers then print it at its own size by default. Bytes in which no catalogue is
/// found come back unchanged.
QByteArray withoutPrintScaling(const QByteArray& pdf);

}  // namespace baywright
