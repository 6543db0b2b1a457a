// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_write.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "drawing/mark_shapes.h"
#include "exchange/dxf_tag_writer.h"

namespace baywright {

namespace {

using detail::DxfTagWriter;

std::string layerName(Layer layer) {
  std::string name(styleOf(layer).name);
  // The reference forbids these in names.
  for (char& c : name)
    if (std::string_view("<>/\\\":;?*|=,`").find(c) != std::string_view::npos) c = '_';
  return name;
}

std::string_view lineType(LineDash dash) {
  switch (dash) {
    case LineDash::Continuous:
      return "Continuous";
    case LineDash::Dashed:
      return "DASHED";
    case LineDash::DashDot:
      return "DASHDOT";
    case LineDash::Dotted:
      return "DOT";
  }
  return "Continuous";
}

int hundredths(LineWeight weight) {
  return static_cast<int>(100 * lineWidthMm(weight));
}

/// Writes one drawing. Handles that other parts refer to are taken before anything is written.
class DrawingWriter {
 public:
  DrawingWriter(const Linework& linework, const DxfWriteOptions& options)
      : linework_(exploded(linework, options.metresPerMm)), unit_(options.unit) {
    const double metres = metresPer(unit_);
    perMetre_ = metres > 0 ? 1 / metres : 1;
    perMm_ = perMetre_ * options.metresPerMm;
    modelRecord_ = out_.handle();
    paperRecord_ = out_.handle();
  }

  std::string write();

 private:
  void header();
  void tables();
  void startTable(const char* name, int entries);
  std::string startEntry(const char* kind, const char* subclass, std::string_view name, int flags);
  void endTable() { out_.tag(0, "ENDTAB"); }
  void viewports();
  void lineTypes();
  void lineTypeRow(std::string_view name, std::string_view look, std::vector<double> mm);
  void layers();
  void otherTables();
  void blockRecords();
  void blocks();
  void block(std::string_view name, const std::string& record);
  void startEntity(const char* kind, Layer layer);
  void path(const Path& path);
  void text(const Text& text);
  void objects();

  DxfTagWriter out_;
  Linework linework_;
  DrawingUnit unit_;
  double perMetre_ = 1;
  double perMm_ = 1;  // drawing units for a millimetre of paper
  std::string modelRecord_;
  std::string paperRecord_;
  std::string table_;
};

std::string DrawingWriter::write() {
  header();
  out_.section("CLASSES");
  out_.endSection();
  tables();
  blocks();
  out_.section("ENTITIES");
  for (const Path& p : linework_.paths) path(p);
  for (const Text& t : linework_.texts) text(t);
  out_.endSection();
  objects();
  out_.tag(0, "EOF");
  return std::move(out_).take();
}

void DrawingWriter::header() {
  out_.section("HEADER");
  out_.tag(9, "$ACADVER");
  out_.tag(1, "AC1015");
  out_.tag(9, "$DWGCODEPAGE");
  out_.tag(3, "ANSI_1252");
  out_.tag(9, "$INSUNITS");
  out_.tag(70, insunitsOf(unit_));
  out_.tag(9, "$MEASUREMENT");
  out_.tag(70, unit_ == DrawingUnit::Inches || unit_ == DrawingUnit::Feet ? 0 : 1);
  if (const auto extent = linework_.extent()) {
    out_.tag(9, "$EXTMIN");
    out_.point(10, perMetre_ * extent->min());
    out_.tag(30, 0.0);
    out_.tag(9, "$EXTMAX");
    out_.point(10, perMetre_ * extent->max());
    out_.tag(30, 0.0);
  }
  out_.tag(9, "$HANDSEED");
  out_.tag(5, "FFFFFFF");  // the last handle is not known yet; this is beyond it
  out_.endSection();
}

void DrawingWriter::startTable(const char* name, int entries) {
  table_ = out_.handle();
  out_.tag(0, "TABLE");
  out_.tag(2, name);
  out_.tag(5, table_);
  out_.tag(330, "0");
  out_.tag(100, "AcDbSymbolTable");
  out_.tag(70, entries);
}

std::string DrawingWriter::startEntry(const char* kind, const char* subclass, std::string_view name,
                                      int flags) {
  const std::string handle = out_.handle();
  out_.tag(0, kind);
  out_.tag(std::string_view(kind) == "DIMSTYLE" ? 105 : 5, handle);
  out_.tag(330, table_);
  out_.tag(100, "AcDbSymbolTableRecord");
  out_.tag(100, subclass);
  out_.text(2, name);
  out_.tag(70, flags);
  return handle;
}

void DrawingWriter::tables() {
  out_.section("TABLES");
  viewports();
  lineTypes();
  layers();
  otherTables();
  blockRecords();
  out_.endSection();
}

void DrawingWriter::viewports() {
  startTable("VPORT", 1);
  startEntry("VPORT", "AcDbViewportTableRecord", "*Active", 0);
  const auto extent = linework_.extent();
  const Vec2 middle = extent ? Vec2(perMetre_ * extent->center()) : Vec2::Zero();
  const double height = extent ? 1.1 * perMetre_ * std::max(0.1, extent->sizes().maxCoeff()) : 1;
  out_.point(10, {0, 0});
  out_.point(11, {1, 1});
  out_.point(12, middle);
  out_.tag(40, height);
  out_.tag(41, 1.5);
  endTable();
}

void DrawingWriter::lineTypeRow(std::string_view name, std::string_view look, std::vector<double> mm) {
  startEntry("LTYPE", "AcDbLinetypeTableRecord", name, 0);
  double length = 0;
  for (const double part : mm) length += std::abs(part);
  out_.tag(3, look);
  out_.tag(72, 65);
  out_.tag(73, static_cast<int>(mm.size()));
  out_.tag(40, perMm_ * length);
  for (const double part : mm) {
    out_.tag(49, perMm_ * part);
    out_.tag(74, 0);
  }
}

// Dashes and gaps in millimetres of paper, gaps negative.
void DrawingWriter::lineTypes() {
  startTable("LTYPE", 6);
  lineTypeRow("ByBlock", "", {});
  lineTypeRow("ByLayer", "", {});
  lineTypeRow("Continuous", "Solid line", {});
  lineTypeRow("DASHED", "__ __ __", {3, -1.5});
  lineTypeRow("DASHDOT", "__ . __ .", {6, -1.5, 0, -1.5});
  lineTypeRow("DOT", ". . . .", {0, -1});
  endTable();
}

void DrawingWriter::layers() {
  startTable("LAYER", static_cast<int>(layerStyles().size()) + 1);
  startEntry("LAYER", "AcDbLayerTableRecord", "0", 0);
  out_.tag(62, 7);
  out_.tag(6, "Continuous");
  for (const LayerStyle& style : layerStyles()) {
    startEntry("LAYER", "AcDbLayerTableRecord", layerName(style.layer), 0);
    out_.tag(62, 7);
    out_.tag(6, lineType(style.dash));
    out_.tag(370, hundredths(style.weight));
  }
  endTable();
}

void DrawingWriter::otherTables() {
  startTable("STYLE", 1);
  startEntry("STYLE", "AcDbTextStyleTableRecord", "Standard", 0);
  out_.tag(40, 0.0);
  out_.tag(41, 1.0);
  out_.tag(3, "DejaVuSans.ttf");
  out_.tag(4, "");
  endTable();
  startTable("VIEW", 0);
  endTable();
  startTable("UCS", 0);
  endTable();
  startTable("APPID", 1);
  startEntry("APPID", "AcDbRegAppTableRecord", "ACAD", 0);
  endTable();
  startTable("DIMSTYLE", 1);
  out_.tag(100, "AcDbDimStyleTable");
  startEntry("DIMSTYLE", "AcDbDimStyleTableRecord", "Standard", 0);
  endTable();
}

void DrawingWriter::blockRecords() {
  startTable("BLOCK_RECORD", 2);
  for (const auto& [name, handle] :
       {std::pair("*Model_Space", modelRecord_), std::pair("*Paper_Space", paperRecord_)}) {
    out_.tag(0, "BLOCK_RECORD");
    out_.tag(5, handle);
    out_.tag(330, table_);
    out_.tag(100, "AcDbSymbolTableRecord");
    out_.tag(100, "AcDbBlockTableRecord");
    out_.tag(2, name);
  }
  endTable();
}

void DrawingWriter::block(std::string_view name, const std::string& record) {
  out_.tag(0, "BLOCK");
  out_.tag(5, out_.handle());
  out_.tag(330, record);
  out_.tag(100, "AcDbEntity");
  out_.tag(8, "0");
  out_.tag(100, "AcDbBlockBegin");
  out_.tag(2, name);
  out_.tag(70, 0);
  out_.point(10, {0, 0});
  out_.tag(30, 0.0);
  out_.tag(3, name);
  out_.tag(1, "");
  out_.tag(0, "ENDBLK");
  out_.tag(5, out_.handle());
  out_.tag(330, record);
  out_.tag(100, "AcDbEntity");
  out_.tag(8, "0");
  out_.tag(100, "AcDbBlockEnd");
}

void DrawingWriter::blocks() {
  out_.section("BLOCKS");
  block("*Model_Space", modelRecord_);
  block("*Paper_Space", paperRecord_);
  out_.endSection();
}

void DrawingWriter::startEntity(const char* kind, Layer layer) {
  out_.tag(0, kind);
  out_.tag(5, out_.handle());
  out_.tag(330, modelRecord_);
  out_.tag(100, "AcDbEntity");
  out_.text(8, layerName(layer));
}

void DrawingWriter::path(const Path& path) {
  if (!path.stroked && path.fill != Fill::None) return;
  for (const auto& ring : path.rings) {
    if (ring.size() < 2) continue;
    startEntity("LWPOLYLINE", path.layer);
    if (path.dash) out_.tag(6, lineType(*path.dash));
    if (path.weight) out_.tag(370, hundredths(*path.weight));
    out_.tag(100, "AcDbPolyline");
    out_.tag(90, static_cast<int>(ring.size()));
    out_.tag(70, path.closed ? 1 : 0);
    for (const Vec2& point : ring) out_.point(10, perMetre_ * point);
  }
}

void DrawingWriter::text(const Text& text) {
  startEntity("TEXT", text.layer);
  out_.tag(100, "AcDbText");
  const Vec2 at = perMetre_ * text.at;
  out_.point(10, at);
  out_.tag(30, 0.0);
  out_.tag(40, perMm_ * text.heightMm);
  out_.text(1, text.text);
  out_.tag(50, text.angle * 180 / kPi);
  const int across = text.anchor == TextAnchor::Left ? 0 : text.anchor == TextAnchor::Centre ? 1 : 2;
  if (across != 0) {
    out_.tag(72, across);
    out_.point(11, at);
    out_.tag(31, 0.0);
  }
  out_.tag(100, "AcDbText");
}

// A root dictionary with the one entry that programs look for.
void DrawingWriter::objects() {
  const std::string root = out_.handle();
  const std::string groups = out_.handle();
  out_.section("OBJECTS");
  out_.tag(0, "DICTIONARY");
  out_.tag(5, root);
  out_.tag(330, "0");
  out_.tag(100, "AcDbDictionary");
  out_.tag(3, "ACAD_GROUP");
  out_.tag(350, groups);
  out_.tag(0, "DICTIONARY");
  out_.tag(5, groups);
  out_.tag(330, root);
  out_.tag(100, "AcDbDictionary");
  out_.endSection();
}

}  // namespace

std::string dxfOf(const Linework& linework, const DxfWriteOptions& options) {
  return DrawingWriter(linework, options).write();
}

}  // namespace baywright
