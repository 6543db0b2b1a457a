// SPDX-License-Identifier: Apache-2.0
#include "window/room_corrections.h"

#include <utility>

#include "survey/take_room.h"

namespace baywright {
namespace {

template <class T, class Keep>
void apply(std::vector<T>& parts, const std::vector<T>& corrected, Keep keep) {
  if (parts.size() != corrected.size()) return;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const T own = std::exchange(parts[i], corrected[i]);
    parts[i].id = own.id;
    keep(parts[i], own);
  }
}

}  // namespace

void RoomCorrections::start(RecognisedRoom proposal) {
  // Only the room is corrected, and nobody asks whether a swing clears the scan.
  proposal.scans.clear();
  proposal.originals.clear();
  proposal.measurements.clear();
  Job empty = newJob();
  empty.units = units_;
  document_.startWith(takeRoom(empty, proposal).value_or(empty));
}

Room RoomCorrections::applied(Room proposal) const {
  const auto nothingElse = [](auto&, const auto&) {};
  apply(proposal.walls, room().walls, nothingElse);
  apply(proposal.ceiling, room().ceiling, nothingElse);
  apply(proposal.fixtures, room().fixtures, nothingElse);
  apply(proposal.openings, room().openings,
        [](Opening& opening, const Opening& own) { opening.wall = own.wall; });
  return proposal;
}

}  // namespace baywright
