// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheet_views.h"

#include "drawing/marks.h"
#include "drawing/scale.h"
#include "drawing/sheet_blocks.h"
#include "drawing/text_box.h"
#include "drawing/text_width.h"
#include "job/thing_lookup.h"

namespace baywright::detail {
namespace {

constexpr double kCaptionRoom = kHeadingText + 5;
constexpr double kCaptionBaseline = 1.2;
constexpr double kMillimetres = 1000;

std::string captionOf(const Job& job, const DrawnView& view) {
  switch (view.kind) {
    case ViewKind::Plan:
      return "Plan";
    case ViewKind::DownRange:
      return "Looking down-range";
    case ViewKind::Side:
      return "From the side";
    case ViewKind::ScreenFace:
      return "The screen";
    case ViewKind::Wall:
      return nameOf(job, view.wall) + " from inside";
  }
  return {};
}

}  // namespace

SheetView sheetView(const SheetInput& input, const DrawnView& drawnView, double denominator,
                    ViewDrawer& drawer) {
  ViewOptions options = input.request.view;
  options.metresPerMm = denominator / kMillimetres;
  const Linework drawn = drawer.draw(drawnView, input.job, input.assessment, options);
  const auto ink = inkExtent(drawn, options.metresPerMm).value_or(PageBox(Vec2::Zero()));

  SheetView view;
  view.view = drawnView;
  const double scale = 1 / options.metresPerMm;
  view.boxFromDrawing = {scale, Vec2(0, kCaptionRoom) - scale * ink.min()};
  view.marks = placed(drawn, view.boxFromDrawing);
  view.size = scale * ink.sizes() + Vec2(0, kCaptionRoom);

  Text caption = textAt(Layer::Labels, {0, kCaptionBaseline}, captionOf(input.job, drawnView));
  caption.heightMm = kHeadingText;
  caption.bold = true;
  Text scaleNote =
      textAt(Layer::Labels, {textWidthMm(caption.text, kHeadingText, FontFace::Bold) + 4, kCaptionBaseline},
             scaleText(denominator));
  const double captionWidth =
      scaleNote.at.x() + textWidthMm(scaleNote.text, scaleNote.heightMm, FontFace::Regular);
  view.size.x() = std::max(view.size.x(), captionWidth);
  view.marks.texts.push_back(std::move(caption));
  view.marks.texts.push_back(std::move(scaleNote));
  return view;
}

std::vector<PlacedImage> underlaysOf(const Job& job, const SheetView& view, const Vec2& corner) {
  std::vector<PlacedImage> images;
  if (view.view.kind != ViewKind::Plan) return images;
  const Vec2 offset = view.boxFromDrawing.offset + corner;
  Mat3 pageFromWorld;
  pageFromWorld << view.boxFromDrawing.scale, 0, offset.x(), 0, view.boxFromDrawing.scale, offset.y(), 0, 0,
      1;
  for (const PlanScan& scan : job.planScans) {
    if (!scan.visible || !scan.scaled) continue;
    PlacedImage image;
    image.scan = scan.id;
    image.pageMmFromPixel = pageFromWorld * scan.worldFromPixel;
    image.clip = {corner + Vec2(0, kCaptionRoom), corner + view.size};
    image.opacity = scan.opacity;
    images.push_back(image);
  }
  return images;
}

}  // namespace baywright::detail
