// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_room.h"

#include <algorithm>
#include <cmath>

#include "exchange/dxf_layers.h"
#include "exchange/dxf_names.h"
#include "exchange/dxf_openings.h"
#include "job/edit_openings.h"
#include "job/edit_room.h"
#include "job/job.h"
#include "job/limits.h"
#include "units/number_text.h"

namespace baywright {

namespace {

std::string number(double value, int decimals) {
  return formatNumber(value, decimals, UnitSystem{});
}

std::string sizeText(const Vec2& size) {
  return number(size.x(), 2) + " by " + number(size.y(), 2) + " m";
}

// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i)
    text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
  return text;
}

constexpr std::string_view kSayUnit = "Say which unit it is drawn in: mm, cm, m, in or ft.";

// With what was left out, so that a person knows that the file was not empty.
std::string noLines(const DxfDrawing& drawing) {
  std::string text = "The drawing shows no lines.";
  for (const std::string& sentence : skippedSentences(drawing)) text += " " + sentence;
  return text;
}

Result<DrawingUnit> unitOf(const DxfDrawing& drawing, const DxfChoices& choices) {
  const DrawingUnit unit = choices.unit != DrawingUnit::NotStated ? choices.unit : drawing.unit;
  if (unit == DrawingUnit::NotStated && drawnExtent(drawing))
    return fail("The drawing does not state its unit. " + extentInUnits(drawing), {}, std::string(kSayUnit));
  const auto extent = drawnExtent(drawing);
  if (!extent)
    return fail(noLines(drawing), {}, "Look whether its layers are switched off, or bring one in lines.");
  const Vec2 size = metresPer(unit) * extent->size();
  constexpr double kSmallestDrawing = 1.0;  // metres; nobody swings a club in less
  if (size.maxCoeff() < kSmallestDrawing)
    return fail("In " + std::string(nameOf(unit)) + " all that is drawn measures only " +
                    number(1000 * size.x(), 1) + " by " + number(1000 * size.y(), 1) + " mm. " +
                    extentInUnits(drawing),
                {}, std::string(kSayUnit));
  return unit;
}

std::string unitNote(const DxfDrawing& drawing, DrawingUnit unit) {
  const Vec2 size = metresPer(unit) * drawnExtent(drawing)->size();
  std::string text = "All that is drawn measures " + sizeText(size) + ", in " + std::string(nameOf(unit));
  if (drawing.unit == DrawingUnit::NotStated)
    return text + " as you say; the drawing does not state its unit.";
  if (drawing.unit != unit)
    return text + " as you say, although the drawing states " + std::string(nameOf(drawing.unit)) + ".";
  return text + " as the drawing states. If that is not so, say the unit.";
}

/// Layers to take walls from, and why.
struct WallLayers {
  std::vector<int> layers;
  std::string note;
};

Result<WallLayers> chosenLayers(const DxfDrawing& drawing, const std::vector<std::string>& names) {
  WallLayers walls;
  for (const std::string& name : names) {
    const auto layer = layerNamed(drawing, name);
    if (!layer) {
      std::vector<std::string> known;
      for (const LayerView& view : viewLayers(drawing)) known.push_back("\"" + view.name + "\"");
      return fail("The drawing has no layer \"" + name + "\".", {},
                  "Layers with lines are " + listed(known) + ".");
    }
    walls.layers.push_back(*layer);
  }
  walls.note = "The walls were taken from " + std::string(names.size() == 1 ? "the layer" : "the layers") +
               " that you chose.";
  return walls;
}

// From the narrowest guess to the widest, to be tried in this order.
std::vector<WallLayers> guessedLayers(const DxfDrawing& drawing) {
  WallLayers suggested, shown;
  std::vector<std::string> names;
  std::string reason;
  for (const LayerView& view : viewLayers(drawing)) {
    if (drawing.layers[static_cast<std::size_t>(view.layer)].shown()) shown.layers.push_back(view.layer);
    if (!view.suggested) continue;
    suggested.layers.push_back(view.layer);
    names.push_back("\"" + view.name + "\"");
    reason = view.reason;
  }
  constexpr std::size_t kMostNamed = 8;
  const std::string more =
      names.size() > kMostNamed ? " and " + std::to_string(names.size() - kMostNamed) + " more" : "";
  names.resize(std::min(names.size(), kMostNamed));
  suggested.note = "The walls were taken from " +
                   (names.size() == 1 ? "layer " + names[0] : "layers " + listed(names)) + more + ". " +
                   reason + " Choose other layers if these are not the walls.";
  shown.note =
      "The walls were taken from all layers that are shown, as those named after walls close no room.";
  std::vector<WallLayers> guesses;
  if (!suggested.layers.empty()) guesses.push_back(suggested);
  if (shown.layers.size() != suggested.layers.size()) guesses.push_back(shown);
  return guesses;
}

// Doors, windows, and what is not built at all: title blocks, furniture.
bool isNoWall(const std::string& block) {
  const auto hint = detail::hintOf(block);
  return hint && hint->hint != detail::NameHint::Wall;
}

// Corners nearer to each other than lines are joined would leave holes in a curve.
void addLines(std::vector<Segment2>& lines, const DxfCurve& curve, double scale, double tolerance) {
  Ring points;
  for (const Vec2& point : curve.points)
    if (points.empty() || (scale * point - points.back()).norm() > 2 * tolerance)
      points.push_back(scale * point);
  const Vec2 last = scale * curve.points.back();
  if (points.back() != last) {
    if (points.size() > 1) points.pop_back();
    points.push_back(last);
  }
  for (std::size_t i = 1; i < points.size(); ++i) lines.push_back({points[i - 1], points[i]});
  if (curve.closed) lines.push_back({points.back(), points.front()});
}

// The two sides of a band, mitred at its corners; one closed outline where the band has ends.
std::vector<DxfCurve> sidesOf(const DxfCurve& band) {
  const std::size_t n = band.points.size();
  const auto normal = [&](std::size_t from, std::size_t to) -> Vec2 {
    const Vec2 along = band.points[to] - band.points[from];
    return along.norm() > 0 ? leftOf(along.normalized()) : Vec2(Vec2::Zero());
  };
  std::vector<DxfCurve> sides(2, band);
  for (std::size_t i = 0; i < n; ++i) {
    const bool isFirst = i == 0 && !band.closed, isLast = i + 1 == n && !band.closed;
    const Vec2 before = isFirst ? normal(0, 1) : normal((i + n - 1) % n, i);
    const Vec2 after = isLast ? before : normal(i, (i + 1) % n);
    constexpr double kSharpest = 0.2;  // of the mitre: a corner that turns nearly back would reach far out
    const Vec2 mitre = (before + after) / std::max(kSharpest, 1 + before.dot(after));
    for (const std::size_t side : {0u, 1u})
      sides[side].points[i] = band.points[i] + (side == 0 ? 0.5 : -0.5) * band.width * mitre;
  }
  if (band.closed) return sides;
  sides[0].points.insert(sides[0].points.end(), sides[1].points.rbegin(), sides[1].points.rend());
  sides[0].closed = true;
  sides.pop_back();
  return sides;
}

std::vector<Segment2> wallLinesOf(const DxfDrawing& drawing, const std::vector<int>& layers,
                                  const DxfChoices& choices, double scale, const std::vector<bool>& doors) {
  std::vector<Segment2> lines;
  for (std::size_t c = 0; c < drawing.curves.size(); ++c) {
    const DxfCurve& curve = drawing.curves[c];
    if (std::find(layers.begin(), layers.end(), curve.layer) == layers.end() || doors[c]) continue;
    // A layer that was asked for by name counts even if it is switched off.
    if (curve.hidden && choices.layers.empty()) continue;
    if (curve.insert >= 0 && isNoWall(drawing.inserts[static_cast<std::size_t>(curve.insert)].block))
      continue;
    constexpr Range kWallWidth{0.03, 0.5};  // metres; others are bold lines, or bars of something else
    if (!kWallWidth.contains(scale * curve.width)) {
      addLines(lines, curve, scale, choices.tolerance);
      continue;
    }
    for (const DxfCurve& side : sidesOf(curve)) addLines(lines, side, scale, choices.tolerance);
  }
  return lines;
}

// Lines that were drawn by eye may miss each other by more than usual: where some do, a larger tolerance is
// tried, and the smallest that leaves the fewest misses is taken.
Result<JoinedLines> joinedWalls(const DxfDrawing& drawing, const std::vector<int>& layers,
                                const DxfChoices& choices, double scale, std::string& note) {
  const auto swings = detail::doorSwings(drawing, scale);
  const auto doors = detail::drawnDoors(drawing, swings, scale);
  const std::vector<Segment2> lines = wallLinesOf(drawing, layers, choices, scale, doors);
  const std::vector<Segment2> leaves = detail::shutLeaves(swings, doors);
  auto best = joinLines({lines, choices.tolerance, choices.widestGap, leaves});
  constexpr std::size_t kMostTried = 5'000;  // lines; so many are no sketch
  if (lines.size() > kMostTried) return best;
  double taken = choices.tolerance;
  for (const double tolerance : {0.010, 0.020, 0.040}) {
    if (tolerance <= choices.tolerance || (best && best->nearMisses == 0)) continue;
    auto wider = joinLines({lines, tolerance, choices.widestGap, leaves});
    if (!wider || (best && wider->nearMisses >= best->nearMisses)) continue;
    best = std::move(wider);
    taken = tolerance;
  }
  if (best && taken > choices.tolerance)
    note += " Their ends miss each other; they were joined over gaps of up to " + number(1000 * taken, 0) +
            " mm.";
  return best;
}

/// Rooms, and the note on the layers that they came from.
struct FoundRooms {
  JoinedLines joined;
  std::string note;
  bool areFilled = false;  ///< made of fillings, not of lines
};

Result<FoundRooms> findRooms(const DxfDrawing& drawing, const DxfChoices& choices, double scale) {
  std::vector<WallLayers> tries;
  if (choices.layers.empty()) {
    tries = guessedLayers(drawing);
  } else {
    const auto chosen = chosenLayers(drawing, choices.layers);
    if (!chosen) return tl::unexpected(chosen.error());
    tries = {*chosen};
  }
  Problem first{
      "The drawing has no layer that may hold walls.", {}, "Choose the layers that hold the walls."};
  for (std::size_t i = 0; i < tries.size(); ++i) {
    std::string note = tries[i].note;
    auto joined = joinedWalls(drawing, tries[i].layers, choices, scale, note);
    if (joined) return FoundRooms{std::move(*joined), std::move(note)};
    if (i == 0) first = joined.error();
  }
  return tl::unexpected(first);
}

// Walls that are drawn as nothing but fillings. Of shown layers those named after walls, or else all that are
// named after nothing.
Result<FoundRooms> roomsOfFillings(const DxfDrawing& drawing, const DxfChoices& choices, double scale) {
  const auto nameOfLayer = [&](const DxfCurve& curve) -> const std::string& {
    return drawing.layers[static_cast<std::size_t>(curve.layer)].name;
  };
  const bool anyNamed = std::any_of(
      drawing.fillings.begin(), drawing.fillings.end(),
      [&](const DxfCurve& curve) { return !curve.hidden && detail::namesWalls(nameOfLayer(curve)); });
  std::vector<Segment2> lines;
  for (const DxfCurve& curve : drawing.fillings) {
    const std::string& name = nameOfLayer(curve);
    if (!curve.hidden && (anyNamed ? detail::namesWalls(name) : !detail::hintOf(name)))
      addLines(lines, curve, scale, choices.tolerance);
  }
  auto joined = joinLines({lines, choices.tolerance, choices.widestGap});
  if (!joined) return tl::unexpected(joined.error());
  return FoundRooms{std::move(*joined),
                    "No lines close a room: the walls were taken from the outlines of fillings.", true};
}

Vec2 shiftFor(const Ring& ring) {
  Vec2 low = ring.front(), high = ring.front();
  for (const Vec2& corner : ring) {
    low = low.cwiseMin(corner);
    high = high.cwiseMax(corner);
  }
  const bool far = low.cwiseAbs().maxCoeff() > kFarAway || high.cwiseAbs().maxCoeff() > kFarAway;
  return far ? Vec2(-low) : Vec2::Zero();
}

Vec2 sizeOf(const Ring& ring) {
  Eigen::AlignedBox2d box;
  for (const Vec2& corner : ring) box.extend(corner);
  return box.sizes();
}

bool isWithinReach(const Vec2& corner) {
  return limits::kCoordinate.contains(corner.x()) && limits::kCoordinate.contains(corner.y());
}

void noteSize(const JoinedRoom& room, const DxfDrawing& drawing, std::vector<std::string>& notes) {
  constexpr Range kUsualRoom{4, 2000};  // square metres
  std::string note = "The floor has " + number(room.area, 2) + " square metres and " +
                     std::to_string(room.ring.size()) + " corners.";
  if (!kUsualRoom.contains(room.area))
    note += " No room for golf is like that: the unit may be wrong. " + extentInUnits(drawing);
  notes.push_back(note);
}

void noteOtherRooms(const JoinedLines& joined, std::size_t taken, std::vector<std::string>& notes) {
  constexpr std::size_t kMostNamed = 6;
  std::vector<std::string> others;
  for (std::size_t i = 0; i < joined.rooms.size() && others.size() < kMostNamed; ++i) {
    if (i == taken) continue;
    const Vec2 middle = centroid(Polygon{joined.rooms[i].ring, {}});
    others.push_back("number " + std::to_string(i + 1) + " of " + number(joined.rooms[i].area, 1) +
                     " square metres around " + number(middle.x(), 1) + ", " + number(middle.y(), 1) + " m" +
                     (joined.rooms[i].likeFrame ? " (rather the sheet's frame)" : ""));
  }
  if (!others.empty())
    notes.push_back("Of " + std::to_string(joined.rooms.size()) + " closed rooms number " +
                    std::to_string(taken + 1) + " by size was taken. Others are " + listed(others) + ".");
}

// The largest words within the floor, if they are words and not a dimension.
std::string nameIn(const Ring& floor, const DxfDrawing& drawing, double scale) {
  constexpr std::size_t kLongest = 60;  // bytes; more is a remark
  const DxfText* best = nullptr;
  for (const DxfText& text : drawing.texts) {
    const bool isWord = std::any_of(text.words.begin(), text.words.end(), [](char c) {
      return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
    });
    const bool startsWithFigure =
        !text.words.empty() && text.words.front() >= '0' && text.words.front() <= '9';
    if (text.hidden || !isWord || startsWithFigure || text.words.size() > kLongest) continue;
    if (best && text.height <= best->height) continue;
    if (locate(floor, scale * text.at) == Location::Inside) best = &text;
  }
  if (!best) return {};
  return best->words.substr(0, best->words.find('\n'));
}

// "Door", "Door 2", ...
std::string freeName(const Room& room, OpeningKind kind) {
  const std::string word = kind == OpeningKind::Window    ? "Window"
                           : kind == OpeningKind::Passage ? "Passage"
                                                          : "Door";
  const auto same = std::count_if(room.openings.begin(), room.openings.end(),
                                  [&](const Opening& other) { return other.name.starts_with(word); });
  return same == 0 ? word : word + " " + std::to_string(same + 1);
}

Result<Room> roomWith(const JoinedRoom& floor, double wallThickness, const DxfDrawing& drawing, double scale,
                      const Vec2& shift, std::vector<std::string>& notes) {
  Ring corners = floor.ring;
  for (Vec2& corner : corners) corner += shift;
  if (!std::ranges::all_of(corners, isWithinReach))
    return fail("In this unit the room would measure " + sizeText(sizeOf(corners)) +
                    ", which no room does. " + extentInUnits(drawing),
                {}, std::string(kSayUnit));
  auto job = setRoomOutline(newJob(), corners, Instrument::Drawing);
  if (!job) return tl::unexpected(job.error());
  job->room.name = nameIn(floor.ring, drawing, scale);
  if (wallThickness > 0)
    for (Wall& wall : job->room.walls) wall.thickness = wallThickness;
  for (const auto& [opening, note] :
       detail::openingsOf(job->room, floor, wallThickness, drawing, scale, shift)) {
    if (opening) {
      Opening named = *opening;
      named.name = freeName(job->room, opening->kind);
      auto with = addOpening(*job, named);
      if (!with) continue;
      *job = std::move(*with);
    }
    notes.push_back(note);
  }
  return job->room;
}

}  // namespace

std::string extentInUnits(const DxfDrawing& drawing) {
  const auto extent = drawnExtent(drawing);
  if (!extent) return "It shows no lines.";
  std::vector<std::string> sizes;
  for (const DrawingUnit unit : kUsualDrawingUnits)
    sizes.push_back(sizeText(metresPer(unit) * extent->size()) + " in " + std::string(nameOf(unit)));
  return "It measures " + number(extent->size().x(), 2) + " by " + number(extent->size().y(), 2) +
         " drawing units: " + listed(sizes) + ".";
}

Result<RecognisedRoom> recogniseDrawing(const DxfDrawing& drawing, const DxfChoices& choices) {
  const auto unit = unitOf(drawing, choices);
  if (!unit) return tl::unexpected(unit.error());
  const double scale = metresPer(*unit);
  auto found = findRooms(drawing, choices, scale);
  if (!found)
    if (auto filled = roomsOfFillings(drawing, choices, scale)) found = std::move(filled);
  if (!found) return tl::unexpected(found.error());

  RecognisedRoom result;
  result.notes = {unitNote(drawing, *unit), found->note};
  const auto& rooms = found->joined.rooms;
  if (choices.room >= rooms.size())
    return fail("The drawing has " + std::to_string(rooms.size()) + " closed rooms; there is no number " +
                std::to_string(choices.room + 1) + ".");
  const JoinedRoom& floor = rooms[choices.room];
  noteSize(floor, drawing, result.notes);
  noteOtherRooms(found->joined, choices.room, result.notes);
  const Vec2 shift = shiftFor(floor.ring);
  if (!shift.isZero())
    result.notes.push_back("The room lies far from the drawing's origin and was moved by " +
                           number(shift.x(), 3) + ", " + number(shift.y(), 3) + " m.");
  auto room = roomWith(floor, found->joined.wallThickness, drawing, scale, shift, result.notes);
  if (!room) return tl::unexpected(room.error());
  result.room = std::move(*room);
  if (!floor.inside.empty())
    result.notes.push_back(
        std::to_string(floor.inside.size()) +
        " closed outlines stand free in the room: columns, perhaps. Place them as fixtures.");
  result.notes.push_back("A plan tells no heights: measure the ceiling, sills and openings.");
  result.skipped = skippedSentences(drawing);
  if (found->areFilled)
    std::erase_if(result.skipped,
                  [](const std::string& sentence) { return sentence.find(" HATCH ") != std::string::npos; });
  result.skipped.insert(result.skipped.end(), drawing.notes.begin(), drawing.notes.end());
  return result;
}

}  // namespace baywright
