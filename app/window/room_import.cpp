// SPDX-License-Identifier: Apache-2.0
#include "window/room_import.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <memory>

#include "exchange/dxf_read.h"
#include "exchange/survey_kind.h"
#include "jobfile/atomic_file.h"
#include "survey/recognise_list.h"
#include "window/drawing_dialog.h"
#include "window/review_dialog.h"
#include "window/scan_dialog.h"
#include "window/work_aside.h"

namespace baywright {
namespace {

/// Rooms of one file; nothing where the person gave up.
using Candidates = Result<std::optional<std::vector<RecognisedRoom>>>;
using Bytes = std::shared_ptr<const std::string>;

constexpr std::size_t kMostCandidates = 6;  // as many as a person compares

struct Import {
  Q_DECLARE_TR_FUNCTIONS(Import)
 public:
  QString fileName;
  Bytes bytes;
  QWidget* window = nullptr;
  BlobPtr kept;  // the same bytes, as a job keeps them
  UnitSystem units;
};

Candidates gaveUp() {
  return std::nullopt;
}

Candidates roomsOfList(const Import& file) {
  const auto list = readMeasuringList(*file.bytes);
  if (!list) return tl::unexpected(list.error());
  auto room = recogniseList(*list);
  if (!room) return tl::unexpected(room.error());
  return std::vector{std::move(*room)};
}

/// The rooms of a drawing by size, the largest first.
Result<std::vector<RecognisedRoom>> roomsOfDrawing(const DxfDrawing& drawing, DxfChoices choices,
                                                   const Progress& progress) {
  std::vector<RecognisedRoom> rooms;
  for (choices.room = 0; choices.room < kMostCandidates && !progress.stop(); ++choices.room) {
    auto room = recogniseDrawing(drawing, choices);
    if (!room && rooms.empty()) return tl::unexpected(room.error());
    if (!room) break;
    rooms.push_back(std::move(*room));
    progress.at(static_cast<double>(rooms.size()) / kMostCandidates);
  }
  return rooms;
}

Candidates roomsOfDrawing(const Import& file) {
  const auto drawing = workAside<DxfDrawing>(
      file.window, Import::tr("Reading %1…").arg(file.fileName),
      [bytes = file.bytes](const Progress& progress) { return readDxf(*bytes, {}, progress); });
  if (!drawing) return gaveUp();
  if (!*drawing) return tl::unexpected(drawing->error());
  DrawingDialog dialog(**drawing, file.fileName, file.window);
  while (dialog.exec() == QDialog::Accepted) {
    auto rooms = workAside<std::vector<RecognisedRoom>>(
        file.window, Import::tr("Looking for the room…"),
        [&drawing, choices = dialog.choices()](const Progress& progress) {
          return roomsOfDrawing(**drawing, choices, progress);
        });
    if (rooms && *rooms) return std::move(**rooms);
    if (rooms) dialog.showProblem(rooms->error());
  }
  return gaveUp();
}

struct ReadScan {
  ScanGeometry scan;
  ScanFacts facts;
};

Result<ReadScan> readWithFacts(const Import& file, const Progress& progress) {
  auto scan = readScan(file.fileName.toStdString(), *file.bytes, {}, progress);
  if (!scan) return tl::unexpected(scan.error());
  ScanFacts facts = factsOf(*scan);
  return ReadScan{std::move(*scan), std::move(facts)};
}

Candidates roomsOfScan(const Import& file) {
  const auto read =
      workAside<ReadScan>(file.window, Import::tr("Reading %1…").arg(file.fileName),
                          [&file](const Progress& progress) { return readWithFacts(file, progress); });
  if (!read) return gaveUp();
  if (!*read) return tl::unexpected(read->error());
  ScanDialog dialog((*read)->facts, file.units, file.fileName, file.window);
  while (dialog.exec() == QDialog::Accepted) {
    auto room = workAside<RecognisedRoom>(file.window, Import::tr("Looking for floor, walls and ceiling…"),
                                          [&, choices = dialog.choices()](const Progress& progress) {
                                            return recogniseScan((*read)->scan, file.kept, choices, progress);
                                          });
    if (room && *room) return std::vector{std::move(**room)};
    if (room) dialog.showProblem(room->error());
  }
  return gaveUp();
}

Candidates roomsOf(const Import& file) {
  switch (surveyKindOf(file.fileName.toStdString(), *file.bytes)) {
    case SurveyKind::List:
      return roomsOfList(file);
    case SurveyKind::Drawing:
      return roomsOfDrawing(file);
    case SurveyKind::Scan:
      break;
  }
  return roomsOfScan(file);
}

tl::unexpected<Problem> inFile(Problem problem, const QString& fileName) {
  const std::string name = fileName.toStdString();
  if (problem.where.find(name) == std::string::npos)
    problem.where = problem.where.empty() ? name : name + ", " + problem.where;
  return tl::unexpected(std::move(problem));
}

}  // namespace

Result<std::optional<RecognisedRoom>> importRoom(const QString& path, const UnitSystem& units,
                                                 QWidget* window) {
  const QString fileName = QFileInfo(path).fileName();
  auto bytes = workAside<std::string>(
      window, Import::tr("Reading %1…").arg(fileName),
      [path = path.toStdString()](const Progress&) { return readWholeFile(path, kMostScanBytes); });
  if (!bytes) return std::nullopt;
  if (!*bytes) return tl::unexpected(bytes->error());
  const auto kept = std::make_shared<const Blob>(Blob{fileName.toStdString(), std::move(**bytes)});
  auto candidates = roomsOf({fileName, Bytes(kept, &kept->bytes), window, kept, units});
  // A scan keeps its file itself.
  if (candidates && *candidates && surveyKindOf(fileName.toStdString(), kept->bytes) != SurveyKind::Scan)
    for (RecognisedRoom& room : **candidates) room.originals = {{Id{}, kept->fileName, kept}};
  if (!candidates) return inFile(candidates.error(), fileName);
  if (!*candidates) return std::nullopt;
  ReviewDialog review(std::move(**candidates), units, fileName, window);
  if (review.exec() != QDialog::Accepted) return std::nullopt;
  return review.accepted();
}

}  // namespace baywright
