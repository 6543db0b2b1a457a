// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>

#include "job/catalogue.h"

class QMenu;

namespace baywright {

/// Adds the catalogue's openings and fixtures to a menu, a menu of its own for each kind that has several;
/// `pick` gets the one that is chosen, `fits` says which are offered.
void addUsualOpenings(QMenu& menu, const Catalogue& catalogue, std::function<void(const Opening&)> pick);
void addUsualFixtures(QMenu& menu, const Catalogue& catalogue, std::function<void(const Fixture&)> pick,
                      const std::function<bool(const Fixture&)>& fits = {});

}  // namespace baywright
