// SPDX-License-Identifier: Apache-2.0
#include "editing/standing_zone.h"

#include <algorithm>

namespace baywright {
namespace {

constexpr double kCell = 0.1;  // metres: the contour lies well within a foot's width

}  // namespace

StandingZone::StandingZone(Document& document, QObject* parent)
    : QObject(parent),
      document_(document),
      worker_(
          this,
          [](const std::optional<Question>& asked, const Progress& progress) -> std::optional<StandingMark> {
            if (!asked) return StandingMark{};
            const auto field = headroomField(asked->job, asked->of, progress);
            if (!field) return StandingMark{};
            if (!*field) return std::nullopt;  // a newer question waits
            StandingMark mark = asked->mark;
            mark.zone = (*field)->zone;
            return mark;
          },
          [this](std::optional<StandingMark> mark) {
            if (mark) show(std::move(*mark));
          }) {
  connect(&document_, &Document::jobChanged, this, &StandingZone::ask);
  connect(&document_.selection(), &Selection::selectedChanged, this, &StandingZone::ask);
}

std::optional<StandingZone::Question> StandingZone::question() const {
  const Job& job = document_.job();
  const Id selected = document_.selection().selected();
  for (const Golfer& golfer : job.golfers) {
    if (!golfer.swings || golfer.clubs.empty()) continue;
    auto club = std::find_if(golfer.clubs.begin(), golfer.clubs.end(),
                             [&](const Club& each) { return each.id == selected; });
    if (club == golfer.clubs.end() && golfer.id == selected) club = golfer.clubs.begin();
    if (club == golfer.clubs.end()) continue;
    return Question{job,
                    {golfer.id, club->id, job.option().placement.bay.heading, kCell},
                    {golfer.id, club->name + ", " + golfer.name, {}}};
  }
  return std::nullopt;
}

void StandingZone::ask() {
  worker_.ask(question());
}

void StandingZone::show(StandingMark mark) {
  if (mark.zone.empty() && mark_.zone.empty()) return;
  mark_ = std::move(mark);
  Q_EMIT changed();
}

}  // namespace baywright
