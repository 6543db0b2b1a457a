// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QIcon>
#include <QPalette>
#include <QString>

#include "job/catalogue.h"

namespace baywright {

/// What is compiled into the program: icons, the catalogue, help pages and the example. An empty array when
/// there is no such thing.
QByteArray resourceBytes(const QString& path);

/// An outline icon in the palette's text colour; drawn afresh for every size and pixel ratio.
QIcon icon(const QString& name, const QPalette& palette);

/// All kit lists in one.
Catalogue builtInCatalogue();

}  // namespace baywright
