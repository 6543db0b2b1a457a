// SPDX-License-Identifier: Apache-2.0
#include "canvas/wall_view.h"

#include "job/find.h"
#include "job/thing_lookup.h"

namespace baywright {

WallView::WallView(Document& document, ToolBox& toolBox, QWidget* parent)
    : View(document, toolBox, ViewKind::Wall, parent) {
  connect(&document, &Document::jobChanged, this, &WallView::keepAWall);
  connect(&document.selection(), &Selection::selectedChanged, this, &WallView::followSelection);
  keepAWall();
}

void WallView::showWall(Id wall) {
  if (wall == this->wall()) return;
  lookAt({ViewKind::Wall, wall});
  Q_EMIT wallChanged(wall);
}

void WallView::turn(int walls) {
  const auto& all = document().job().room.walls;
  const int count = static_cast<int>(all.size());
  if (count == 0) return;
  const auto found = std::find_if(all.begin(), all.end(), [&](const Wall& each) { return each.id == wall(); });
  const int now = found == all.end() ? 0 : static_cast<int>(found - all.begin());
  // Walls run counter-clockwise: to the right comes the one before.
  const int next = ((now - walls) % count + count) % count;
  showWall(all[static_cast<std::size_t>(next)].id);
}

void WallView::followSelection() {
  const auto thing = findThing(document().job(), document().selection().selected());
  if (!thing) return;
  if (thing->kind == ThingKind::Wall) showWall(thing->id);
  if (thing->kind == ThingKind::Opening) showWall(thing->owner);
}

void WallView::keepAWall() {
  const auto& walls = document().job().room.walls;
  if (findById(walls, wall())) return;
  showWall(walls.empty() ? Id{} : walls.front().id);
}

}  // namespace baywright
