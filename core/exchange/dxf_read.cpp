// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_read.h"

#include <string>

#include "exchange/dxf_document.h"
#include "exchange/dxf_expand.h"

namespace baywright {

namespace {

constexpr std::string_view kSaveAsAscii =
    "Save it as ASCII DXF in the program that drew it, and bring that file.";

bool startsWith(std::string_view bytes, std::string_view start) {
  return bytes.substr(0, start.size()) == start;
}

// A DWG file starts with the letters AC and its version, and no white space.
bool isDwg(std::string_view bytes) {
  if (bytes.size() < 6 || !startsWith(bytes, "AC")) return false;
  for (const char c : bytes.substr(2, 4))
    if (!((c >= '0' && c <= '9') || c == '.')) return false;
  return true;
}

Result<void> checkForm(std::string_view bytes, const DxfLimits& limits) {
  if (bytes.empty()) return fail("The drawing file is empty.");
  if (bytes.size() > limits.bytes)
    return fail("The drawing file has " + std::to_string(bytes.size() >> 20) + " MB; at most " +
                    std::to_string(limits.bytes >> 20) + " MB are read.",
                {}, "Save only the room and its layers to a file of their own.");
  if (startsWith(bytes, "AutoCAD Binary DXF"))
    return fail("The file is a binary DXF, which is not read.", {}, std::string(kSaveAsAscii));
  if (isDwg(bytes))
    return fail("The file is a DWG drawing, which is not read.", {}, std::string(kSaveAsAscii));
  if (startsWith(bytes, "\xFF\xFE") || startsWith(bytes, "\xFE\xFF"))
    return fail("The file is written in UTF-16, as no DXF is.", {}, std::string(kSaveAsAscii));
  return {};
}

}  // namespace

Result<DxfDrawing> readDxf(std::string_view bytes, const DxfLimits& limits, const Progress& progress) {
  if (const auto form = checkForm(bytes, limits); !form) return tl::unexpected(form.error());
  if (startsWith(bytes, "\xEF\xBB\xBF")) bytes.remove_prefix(3);
  detail::DxfDocument document = detail::readDocument(bytes, limits, progress);
  if (!document.hasSections)
    return fail("The file is no DXF drawing: it has no SECTION.", {}, std::string(kSaveAsAscii));
  progress.at(0.5);
  DxfDrawing drawing = detail::expanded(std::move(document), limits, progress);
  if (progress.stop()) return fail("Reading the drawing was stopped.");
  progress.at(1);
  return drawing;
}

}  // namespace baywright
