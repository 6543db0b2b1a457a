// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheet_flow.h"

#include "drawing/sheet_blocks.h"

namespace baywright::detail {
namespace {

class Writer {
 public:
  Writer(const std::vector<FlowBox>& boxes,
         const std::function<std::vector<PageBox>(std::size_t)>& boxesOfPage)
      : boxes_(boxes), boxesOfPage_(boxesOfPage) {
    if (boxes_.empty()) addPage(0);
    enter(0);
  }

  bool fits(double height) const { return top_ - height >= boxes_[at_].box.min().y(); }
  bool atTop() const { return top_ == boxes_[at_].box.max().y(); }

  void nextBox() {
    if (at_ + 1 == boxes_.size()) addPage(boxes_.back().page + 1);
    enter(at_ + 1);
  }

  double width() const { return boxes_[at_].box.sizes().x(); }

  void put(const Block& block) {
    const FlowBox& box = boxes_[at_];
    pages_.resize(std::max(pages_.size(), box.page + 1));
    pages_[box.page].append(placed(block.marks, {1, {box.box.min().x(), top_}}));
    top_ -= block.heightMm;
  }

  PageMarks pages() && { return std::move(pages_); }

 private:
  void addPage(std::size_t page) {
    for (const PageBox& box : boxesOfPage_(page)) boxes_.push_back({page, box});
  }
  void enter(std::size_t box) {
    at_ = box;
    top_ = boxes_[box].box.max().y();
  }

  std::vector<FlowBox> boxes_;
  const std::function<std::vector<PageBox>(std::size_t)>& boxesOfPage_;
  std::size_t at_ = 0;
  double top_ = 0;
  PageMarks pages_;
};

// The block's height and that of all it must not be parted from.
double heightTogether(const std::vector<Block>& blocks, std::size_t first) {
  double height = blocks[first].heightMm;
  for (std::size_t i = first; blocks[i].keepWithNext && i + 1 < blocks.size(); ++i)
    height += blocks[i + 1].heightMm;
  return height;
}

}  // namespace

PageMarks flow(const std::vector<Block>& blocks, const std::vector<FlowBox>& boxes,
               const std::function<std::vector<PageBox>(std::size_t page)>& boxesOfPage) {
  Writer writer(boxes, boxesOfPage);
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    if (!writer.fits(heightTogether(blocks, i)) && !writer.atTop()) {
      writer.nextBox();
      const bool goesOn = i > 0 && !blocks[i].section.empty() && blocks[i].section == blocks[i - 1].section;
      if (goesOn) writer.put(headingBlock(blocks[i].section + ", continued", writer.width()));
    }
    writer.put(blocks[i]);
  }
  return std::move(writer).pages();
}

}  // namespace baywright::detail
