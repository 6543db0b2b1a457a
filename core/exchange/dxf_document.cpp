// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_document.h"

#include <algorithm>

#include "exchange/dxf_hatch.h"

namespace baywright::detail {

namespace {

constexpr std::size_t kRecordsPerReport = 4096;

/// A POLYLINE whose VERTEX records are still coming.
struct OpenPolyline {
  DxfEntity entity;
  std::vector<DxfVertex> vertices;
  DxfMap axes = DxfMap::Identity();
  bool closed = false;
  bool damaged = false;
  double elevation = 0;
  double width = 0;
  DxfKindCount* count = nullptr;
};

class DocumentReader {
 public:
  DocumentReader(std::string_view bytes, const DxfLimits& limits) : records_(bytes), limits_(limits) {}

  DxfDocument read(const Progress& progress);

 private:
  void take();
  void takeHeader();
  void takeLayer();
  void startBlock();
  void endBlock();
  void takeEntity();
  void takePolyline(DxfKindCount& count, bool paper);
  void finishPolyline();
  void add(DxfEntity entity);
  DxfContents* contents();
  int layerIndex(std::string_view raw);
  void noteDamage();

  DxfRecordReader records_;
  DxfLimits limits_;
  DxfDocument document_;
  DxfRecord record_;
  DxfEncoding encoding_;
  std::string section_;
  std::map<std::string, int> layerIndices_;
  DxfBlock block_;
  bool inBlock_ = false;
  bool ended_ = false;
  std::size_t entities_ = 0;
  std::size_t leftOut_ = 0;

  std::optional<OpenPolyline> polyline_;
};

DxfDocument DocumentReader::read(const Progress& progress) {
  for (std::size_t n = 0; !ended_ && records_.next(record_); ++n) {
    if (n % kRecordsPerReport == 0 && progress.stop()) break;
    take();
  }
  finishPolyline();
  if (inBlock_) endBlock();
  noteDamage();
  return std::move(document_);
}

void DocumentReader::take() {
  const std::string_view kind = record_.kind;
  if (kind != "VERTEX" && kind != "SEQEND") finishPolyline();
  if (kind == "SECTION") {
    section_ = std::string(trimmed(DxfFields(record_).text(2)));
    document_.hasSections = true;
    if (section_ == "HEADER") takeHeader();
  } else if (kind == "ENDSEC") {
    if (inBlock_) endBlock();
    section_.clear();
  } else if (kind == "EOF") {
    ended_ = true;
  } else if (section_ == "TABLES") {
    if (kind == "LAYER") takeLayer();
  } else if (section_ == "BLOCKS" && kind == "BLOCK") {
    startBlock();
  } else if (section_ == "BLOCKS" && kind == "ENDBLK") {
    endBlock();
  } else if (contents()) {
    takeEntity();
  }
}

DxfContents* DocumentReader::contents() {
  if (section_ == "ENTITIES") return &document_.model;
  return section_ == "BLOCKS" && inBlock_ ? &block_.contents : nullptr;
}

// The variables' names have code 9; their values follow.
void DocumentReader::takeHeader() {
  std::string_view variable;
  for (const DxfTag& tag : record_.tags) {
    if (tag.code == 9) {
      variable = trimmed(tag.value);
    } else if (variable == "$ACADVER" && tag.code == 1) {
      document_.version = std::string(trimmed(tag.value).substr(0, 16));
    } else if (variable == "$DWGCODEPAGE" && tag.code == 3) {
      encoding_.codePage = codePageFrom(tag.value);
    } else if (variable == "$INSUNITS" && tag.code == 70) {
      document_.unit = unitFromInsunits(dxfInteger(tag.value).value_or(0));
    } else if (variable == "$MEASUREMENT" && tag.code == 70) {
      if (const auto value = dxfInteger(tag.value)) document_.metric = *value == 1;
    }
  }
}

int DocumentReader::layerIndex(std::string_view raw) {
  const std::string name = decoded(trimmed(raw), encoding_);
  const std::string spelt = name.empty() ? "0" : name;
  const auto [entry, isNew] =
      layerIndices_.try_emplace(lowerName(spelt), static_cast<int>(document_.layers.size()));
  if (isNew) document_.layers.push_back({spelt, false, false});
  return entry->second;
}

void DocumentReader::takeLayer() {
  DxfFields fields(record_);
  if (!fields.has(2)) return;
  DxfLayer& layer = document_.layers[static_cast<std::size_t>(layerIndex(fields.text(2)))];
  layer.off = fields.integer(62, 7) < 0;
  layer.frozen = fields.flag(70, 1);
}

void DocumentReader::startBlock() {
  if (inBlock_) endBlock();
  DxfFields fields(record_);
  block_ = {};
  block_.name = decoded(trimmed(fields.text(2)), encoding_);
  block_.base = fields.point(10);
  block_.external = fields.flag(70, 4);
  inBlock_ = true;
}

void DocumentReader::endBlock() {
  if (inBlock_ && !block_.name.empty())
    document_.blocks.insert_or_assign(lowerName(block_.name), std::move(block_));
  block_ = {};
  inBlock_ = false;
}

void DocumentReader::takeEntity() {
  const std::string_view kind = record_.kind;
  DxfFields fields(record_);
  if (kind == "VERTEX" && polyline_) {
    const bool frame = fields.flag(70, 16);  // of a spline's control frame, which is not drawn
    const Vec3 at{fields.number(10), fields.number(20), polyline_->elevation + fields.number(30)};
    if (!frame) polyline_->vertices.push_back({at, fields.number(42)});
    polyline_->damaged = polyline_->damaged || fields.bad();
    return;
  }
  if (kind == "SEQEND") finishPolyline();
  if (kind == "SEQEND" || kind == "VERTEX") return;

  const bool paper = fields.integer(67) == 1;
  DxfKindCount unnamed;
  DxfKindCount& count = kind == "ATTRIB" ? unnamed : contents()->kinds[std::string(kind)];
  if (paper) ++count.paper;
  if (kind == "POLYLINE") return takePolyline(count, paper);
  if (paper) return;
  if (knownKind(kind).empty()) {
    ++count.notUsed;
    if (kind == kHatchKind)
      if (auto paths = hatchPaths(fields); !paths.empty())
        add({kHatchKind, layerIndex(fields.text(8)), fields.integer(60) == 1, std::move(paths)});
    return;
  }
  std::optional<DxfShape> shape = shapeOf(record_, encoding_);
  if (!shape) {
    ++count.damaged;
    return;
  }
  ++count.read;
  add({knownKind(kind), layerIndex(fields.text(8)),
       fields.integer(60) == 1 || (kind == "ATTRIB" && fields.flag(70, 1)), std::move(*shape)});
}

void DocumentReader::takePolyline(DxfKindCount& count, bool paper) {
  DxfFields fields(record_);
  constexpr int kMeshes = 16 | 64;
  const bool mesh = fields.flag(70, kMeshes);
  if (mesh && !paper) ++count.notUsed;
  polyline_.emplace();
  polyline_->entity = {knownKind("POLYLINE"), layerIndex(fields.text(8)), fields.integer(60) == 1, DxfPath{}};
  polyline_->closed = fields.flag(70, 1);
  const bool inSpace = fields.flag(70, 8);
  if (!inSpace) {
    polyline_->axes = worldFromObject(fields.extrusion());
    polyline_->elevation = fields.number(30);
  }
  polyline_->width = std::max(0.0, fields.number(40));
  polyline_->damaged = fields.bad();
  polyline_->count = mesh || paper ? nullptr : &count;
}

void DocumentReader::finishPolyline() {
  if (!polyline_) return;
  OpenPolyline open = std::move(*polyline_);
  polyline_.reset();
  if (!open.count || !contents()) return;
  std::optional<DxfPath> path = polylinePath(open.vertices, open.closed, open.axes);
  if (!path || open.damaged) {
    ++open.count->damaged;
    return;
  }
  ++open.count->read;
  path->width = open.width;
  open.entity.shape = std::move(*path);
  add(std::move(open.entity));
}

void DocumentReader::add(DxfEntity entity) {
  if (entities_ >= limits_.entities) {
    ++leftOut_;
    return;
  }
  ++entities_;
  contents()->entities.push_back(std::move(entity));
}

void DocumentReader::noteDamage() {
  const DxfTagReader& tags = records_.tags();
  if (tags.linesSkipped() > 0)
    document_.notes.push_back("The file is damaged from line " + std::to_string(tags.firstSkipped()) +
                              " on: " + std::to_string(tags.linesSkipped()) +
                              " lines of it could not be read.");
  if (document_.hasSections && !ended_)
    document_.notes.push_back("The file stops before its end: what came before was read.");
  if (leftOut_ > 0)
    document_.notes.push_back("Only the first " + std::to_string(limits_.entities) + " entities were read, " +
                              std::to_string(leftOut_) + " were left out.");
}

}  // namespace

std::string lowerName(std::string_view name) {
  std::string lower(name);
  for (char& c : lower)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return lower;
}

DxfDocument readDocument(std::string_view bytes, const DxfLimits& limits, const Progress& progress) {
  return DocumentReader(bytes, limits).read(progress);
}

}  // namespace baywright::detail
