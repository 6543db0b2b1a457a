// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <optional>

#include "drawing/marks.h"
#include "drawing/page_furniture.h"
#include "drawing/sheet_blocks.h"
#include "drawing/text_width.h"

namespace baywright::detail {
namespace {

constexpr double kRow = kTitleBlockHeight / 4;
constexpr double kPad = 1.0;
constexpr double kUnderName = 1.5;
constexpr double kLineSpacing = 1.6;
constexpr double kDescender = 1.0 / 3;  // as boxOf has it

// Columns: owner | creator, title | number, scale.
constexpr double kLeft = 55;
constexpr double kRight = 135;

// A field of the title block: its name small, its value under it. Box in millimetres from the block's lower
// left corner.
struct Field {
  PageBox box;
  std::string_view name;
  std::string value;
  double valueHeight = kLabelText;
  bool bold = false;
};

PageBox cellBox(double left, double right, double rowFromBottom, double rows) {
  return {Vec2(left, rowFromBottom * kRow), Vec2(right, (rowFromBottom + rows) * kRow)};
}

// Lines of the value at that height, as many as the field holds; nullopt when it needs more.
std::optional<std::vector<std::string>> linesOf(const Field& field, double height, FontFace face) {
  auto lines = wrapText(field.value, height, field.box.sizes().x() - 2 * kPad, face);
  const double room = field.box.sizes().y() - kPad - kBodyText - kUnderName;
  const double needed = height * (1 + static_cast<double>(lines.size() - 1) * kLineSpacing + kDescender);
  if (needed > room) return std::nullopt;
  return lines;
}

Linework fieldMarks(const Field& field) {
  Linework marks;
  marks.paths.push_back(rectangle(Layer::Labels, field.box));
  const double left = field.box.min().x() + kPad;
  double baseline = field.box.max().y() - kPad - kBodyText;
  const auto add = [&](std::string text, double height, FontFace face) {
    Text mark = textAt(Layer::Labels, {left, baseline}, std::move(text));
    mark.heightMm = height;
    mark.bold = face == FontFace::Bold;
    marks.texts.push_back(std::move(mark));
  };
  add(std::string(field.name), kBodyText, FontFace::Regular);
  if (field.value.empty()) return marks;

  // A value that is too long is set smaller before it is cut.
  const FontFace face = field.bold ? FontFace::Bold : FontFace::Regular;
  double height = field.valueHeight;
  auto lines = linesOf(field, height, face);
  if (!lines) {
    height = kBodyText;
    lines = linesOf(field, height, face);
  }
  if (!lines) lines = {fitText(field.value, height, field.box.sizes().x() - 2 * kPad, face)};
  baseline -= kUnderName + height;
  for (std::string& line : *lines) {
    add(std::move(line), height, face);
    baseline -= height * kLineSpacing;
  }
  return marks;
}

}  // namespace

TitleBlock titleBlockOf(const Job& job, const std::string& documentType) {
  const ProjectInfo& info = job.info;
  TitleBlock fields;
  fields.owner = info.owner;
  fields.customer = info.customer;
  fields.site = info.site;
  fields.title = info.title.empty() ? job.room.name : info.title;
  fields.supplement = job.option().name;
  fields.creator = info.creator;
  fields.approver = info.approver;
  fields.documentType = documentType;
  fields.number = info.number;
  fields.revision = info.revision;
  fields.date = info.date;
  return fields;
}

Linework titleBlockMarks(const TitleBlock& fields, const PageBox& frame) {
  const double middle = (kLeft + kRight) / 2;
  const double split = (kRight + kTitleBlockWidth) / 2;
  const std::array cells = {
      Field{cellBox(0, kLeft, 3, 1), "Legal owner", fields.owner},
      Field{cellBox(0, kLeft, 2, 1), "Customer", fields.customer},
      Field{cellBox(0, kLeft, 0, 2), "Site", fields.site},
      Field{cellBox(kLeft, middle, 3, 1), "Created by", fields.creator},
      Field{cellBox(middle, kRight, 3, 1), "Approved by", fields.approver},
      Field{cellBox(kLeft, kRight, 1, 2), "Title", fields.title, kHeadingText, true},
      Field{cellBox(kLeft, kRight, 0, 1), "Option", fields.supplement},
      Field{cellBox(kRight, kTitleBlockWidth, 3, 1), "Document type", fields.documentType},
      Field{cellBox(kRight, kTitleBlockWidth, 2, 1), "Number", fields.number},
      Field{cellBox(kRight, split, 1, 1), "Revision", fields.revision},
      Field{cellBox(split, kTitleBlockWidth, 1, 1), "Date of issue", fields.date},
      Field{cellBox(kRight, split, 0, 1), "Scale", fields.scale.empty() ? "none" : fields.scale},
      Field{cellBox(split, kTitleBlockWidth, 0, 1), "Sheet", fields.sheet},
  };
  Linework marks;
  for (const Field& field : cells) marks.append(fieldMarks(field));
  Path outline = rectangle(Layer::Labels, {Vec2(0, 0), Vec2(kTitleBlockWidth, kTitleBlockHeight)});
  outline.weight = LineWeight::Thick;
  marks.paths.push_back(std::move(outline));
  return placed(marks, {1, {frame.max().x() - kTitleBlockWidth, frame.min().y()}});
}

}  // namespace baywright::detail
