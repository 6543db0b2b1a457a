// SPDX-License-Identifier: Apache-2.0
#include "exchange/scan_import.h"

#include <memory>
#include <new>

#include "survey/scan_room.h"
#include "survey/scan_suggest.h"

namespace baywright {
namespace {

constexpr double kReadingShare = 0.5;  ///< of the time that the whole takes

Progress partOf(const Progress& whole, double from, double to) {
  Progress part;
  part.cancelled = whole.cancelled;
  part.report = [&whole, from, to](double fraction) { whole.at(from + fraction * (to - from)); };
  return part;
}

std::string baseName(const std::string& fileName) {
  const std::size_t slash = fileName.find_last_of("/\\");
  return slash == std::string::npos ? fileName : fileName.substr(slash + 1);
}

Result<UpAxis> upOf(const ScanGeometry& scan, const ScanChoices& choices, const std::string& fileName) {
  if (choices.up) return *choices.up;
  if (scan.statedUp) return *scan.statedUp;
  std::string next = "Choose the axis that points up.";
  if (const auto suggestions = suggestUp(scan); !suggestions.empty() && suggestions[0].isPlausible)
    next = "Choose it; " + std::string(nameOf(suggestions[0].up)) + " seems likely: " + suggestions[0].reason;
  return fail("The file does not say which axis points up.", fileName, next);
}

Result<double> metresOf(const ScanGeometry& scan, UpAxis up, const ScanChoices& choices,
                        const std::string& fileName) {
  if (choices.unit != DrawingUnit::NotStated) return metresPer(choices.unit);
  if (scan.statedMetresPerUnit) return *scan.statedMetresPerUnit;
  std::string next = "Choose it.";
  for (const UnitSuggestion& suggestion : suggestUnits(scan, up))
    if (suggestion.isPlausible) next += " " + suggestion.reason;
  return fail("The file does not say its unit.", fileName, next);
}

std::string points(std::size_t count) {
  return count == 1 ? "1 point was" : std::to_string(count) + " points were";
}

void sayWhatWasLeftOut(const ScanGeometry& scan, RecognisedRoom& room) {
  if (scan.notFinite > 0)
    room.skipped.push_back(points(scan.notFinite) + " left out: coordinates that are no numbers.");
  if (scan.farOff > 0) room.skipped.push_back(points(scan.farOff) + " left out: far away from all others.");
  if (scan.thinnedOut > 0)
    room.skipped.push_back(points(scan.thinnedOut) +
                           " left out: there are more than can be used, so the scan was " +
                           "thinned evenly.");
}

Result<RecognisedRoom> recognise(ScanGeometry scan, const BlobPtr& file, const ScanChoices& choices,
                                 const Progress& progress) {
  const auto up = upOf(scan, choices, file->fileName);
  if (!up) return tl::unexpected(up.error());
  const auto metres = metresOf(scan, *up, choices, file->fileName);
  if (!metres) return tl::unexpected(metres.error());
  const bool differs = (scan.statedUp && *scan.statedUp != *up) ||
                       (scan.statedMetresPerUnit && *scan.statedMetresPerUnit != *metres);
  const ScanGeometry level = upright(std::move(scan), *metres, *up);
  auto room = recogniseRoom(level, progress);
  if (!room) {
    if (room.error().where.empty()) room.error().where = file->fileName;
    return room;
  }
  for (RoomScan& made : room->scans) {
    made.file = file;
    made.name = file->fileName;
  }
  sayWhatWasLeftOut(level, *room);
  room->notes.insert(room->notes.begin(), level.notes.begin(), level.notes.end());
  if (differs)
    room->notes.push_back("The unit or the up axis was chosen otherwise than the file's format states.");
  return room;
}

tl::unexpected<Problem> outOfMemory(const std::string& fileName) {
  return fail("There is not enough memory for this scan.", fileName, "Export it with fewer points.");
}

}  // namespace

Result<RecognisedRoom> recogniseScan(const std::string& fileName, std::string bytes,
                                     const ScanChoices& choices, const Progress& progress) {
  try {
    auto scan = readScan(fileName, bytes, {}, partOf(progress, 0, kReadingShare));
    if (!scan) return tl::unexpected(scan.error());
    const auto file = std::make_shared<const Blob>(Blob{baseName(fileName), std::move(bytes)});
    return recognise(std::move(*scan), file, choices, partOf(progress, kReadingShare, 1));
  } catch (const std::bad_alloc&) {
    return outOfMemory(fileName);
  }
}

Result<RecognisedRoom> recogniseScan(const ScanGeometry& scan, const BlobPtr& file,
                                     const ScanChoices& choices, const Progress& progress) {
  try {
    return recognise(scan, file, choices, progress);
  } catch (const std::bad_alloc&) {
    return outOfMemory(file->fileName);
  }
}

}  // namespace baywright
