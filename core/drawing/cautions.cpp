// SPDX-License-Identifier: Apache-2.0
#include "drawing/cautions.h"

#include <algorithm>

#include "drawing/marks.h"
#include "drawing/sheet_blocks.h"
#include "drawing/text_width.h"

namespace baywright {
namespace {

bool hasSectionalDoor(const Room& room) {
  return std::any_of(room.openings.begin(), room.openings.end(),
                     [](const Opening& opening) { return opening.kind == OpeningKind::SectionalDoor; });
}

}  // namespace

std::vector<Caution> cautionsFor(const Job& job) {
  std::vector<Caution> cautions;
  const auto add = [&](std::string subject, std::string sentence) {
    cautions.push_back({std::move(subject), std::move(sentence)});
  };
  const Option& option = job.option();
  if (!job.golfers.empty()) {
    add("Swinging",
        "Before the first full swing, swing slowly with the longest club at every strike point; "
        "nobody else stands inside the zones drawn here while someone swings.");
  }
  add("Frame", "Two people put the frame up and fix it so that it cannot tip or be pulled over.");
  if (option.kit.hasProjector) {
    if (option.placement.projector.kind != MountKind::Floor) {
      add("Overhead mounting",
          "Fasten the projector to structure that is rated for its weight, with a second holder that "
          "catches it if the mount fails.");
    }
    add("Bright lens", "Do not look into the lens; switch the projector off before working in its beam.");
  }
  const bool ladder = option.kit.frame.height > 2 || option.placement.projector.kind == MountKind::Ceiling;
  if (ladder)
    add("Ladders",
        "Work overhead from a ladder that stands on firm floor, with a second person at its foot.");
  if (option.kit.hasProjector || option.kit.hasMonitor) {
    add("Electricity",
        "Outlets and fixed wiring are work for a licensed electrician; keep cables out of the swing and off "
        "the ways out.");
  }
  if (hasSectionalDoor(job.room)) {
    add("Overhead door",
        "Lock the door drive before working near its tracks; springs are under tension and stay with the "
        "door's maker.");
  }
  add("Exits", "Keep the ways out free and the doors able to open, also while someone plays.");
  add("What decides",
      "The local building code, the makers' instructions and licensed trades come before this plan.");
  add("What clear means",
      "Clear is a planning aid, not a guarantee: it holds for the people, clubs and dimensions "
      "given, and every margin is checked on site.");
  return cautions;
}

namespace detail {

std::vector<Block> cautionBlocks(const Job& job, double widthMm) {
  const std::string section = "Cautions";
  constexpr double kSentenceAt = 34;
  Block heading = headingBlock(section, widthMm);
  heading.section = section;
  std::vector<Block> blocks{std::move(heading)};
  for (const Caution& caution : cautionsFor(job)) {
    Block block = paragraphBlock(caution.sentence, widthMm - kSentenceAt);
    block.section = section;
    for (Text& line : block.marks.texts) line.at.x() += kSentenceAt;
    Text subject = textAt(Layer::Labels, {0, block.marks.texts.front().at.y()}, caution.subject);
    subject.heightMm = kBodyText;
    subject.bold = true;
    block.marks.texts.push_back(std::move(subject));
    blocks.push_back(std::move(block));
  }
  blocks.push_back(spaceBlock(kSectionGap));
  return blocks;
}

}  // namespace detail
}  // namespace baywright
