// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "drawing/linework.h"
#include "drawing/paper.h"

namespace baywright::detail {

/// A piece of a page that is not broken: a heading, a row of a table, a paragraph. Its marks hang down from
/// (0, 0), its upper left corner, so y is negative. Millimetres.
struct Block {
  Linework marks;
  double heightMm = 0;
  bool keepWithNext = false;
  std::string section;  ///< its heading, repeated where the section goes on in another box
};

/// A box on a page that blocks flow into, from its top down.
struct FlowBox {
  std::size_t page = 0;
  PageBox box;
};

/// What lies on which page.
using PageMarks = std::vector<Linework>;

/// Puts blocks one under the other into `boxes` and, when those are full, into the boxes of further pages,
/// which `boxesOfPage` lays out. A block that is higher than an empty box goes there all the same and
/// overhangs; none is ever lost. The answer has one entry a page, from page 0.
PageMarks flow(const std::vector<Block>& blocks, const std::vector<FlowBox>& boxes,
               const std::function<std::vector<PageBox>(std::size_t page)>& boxesOfPage);

}  // namespace baywright::detail
