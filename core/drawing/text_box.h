// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "drawing/linework.h"

namespace baywright {

/// Box around a text in drawing units, turned texts included, from a capital's height above the baseline to a
/// third of it below, where the descenders end.
Eigen::AlignedBox2d boxOf(const Text& text, double unitsPerMm);

/// Smallest box around all that a renderer puts down: Linework::extent() knows no texts and symbols, because
/// their size depends on the scale. Nullopt when there is nothing.
std::optional<Eigen::AlignedBox2d> inkExtent(const Linework& linework, double unitsPerMm);

}  // namespace baywright
