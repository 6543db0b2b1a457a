// SPDX-License-Identifier: Apache-2.0
#include "clearance/checks.h"

#include <array>

namespace baywright {
namespace {

constexpr std::array kChecks = {
    CheckRow{"swing_room",
             "Swing: walls, furniture, people",
             checkSwingRoom,
             {.swings = true, .balls = true},
             "swing_room",
             "A full swing of the stated golfer on level ground, straight at the screen."},
    CheckRow{"swing_headroom",
             "Swing: ceiling and what hangs from it",
             checkSwingHeadroom,
             {.swings = true},
             "swing_headroom",
             "A full swing of the stated golfer, standing as high as the ball lies."},
    CheckRow{"swing_equipment",
             "Swing: frame, projector, launch monitor",
             checkSwingEquipment,
             {.swings = true},
             "swing_equipment",
             "The kit stands where the option puts it; fabric counts as hard as the tubes."},
    CheckRow{"frame_fit",
             "Frame: room around it",
             checkFrameFit,
             {},
             "frame_fit",
             "The frame is put up on a level floor, square, in its full size."},
    CheckRow{"ball_capture",
             "Ball: what the screen catches",
             checkBallCapture,
             {.balls = true},
             "ball_capture",
             "Shots of the stated speed, scattered about a mean direction as a normal distribution."},
    CheckRow{"ball_rebound",
             "Ball: what comes back",
             checkBallRebound,
             {.balls = true},
             "ball_rebound",
             "The screen gives back the entered share of a ball's speed."},
    CheckRow{"bystander_safety",
             "People: where nobody may be",
             checkBystanderSafety,
             {.balls = true},
             "bystander_safety",
             "People stay where they are drawn."},
    CheckRow{"picture_fill",
             "Picture: filling the screen",
             checkPictureFill,
             {.picture = true},
             "picture_fill",
             "A pinhole lens without distortion, within the ranges that its maker states."},
    CheckRow{"picture_brightness",
             "Picture: light",
             checkPictureBrightness,
             {.picture = true},
             "picture_brightness",
             "An evenly lit panel, a matt screen of the stated gain, room light as stated."},
    CheckRow{"picture_shadow",
             "Picture: shadows",
             checkPictureShadow,
             {.swings = true, .picture = true},
             "picture_shadow",
             "Light runs straight from one point, the lens."},
    CheckRow{"projector_mount",
             "Projector: where it hangs",
             checkProjectorMount,
             {.picture = true},
             "projector_mount",
             "The body is a box; brackets and cables are not in the job."},
    CheckRow{"doors_and_exits",
             "Doors and ways out",
             checkDoorsAndExits,
             {.ways = true},
             "doors_and_exits",
             "Doors open as far as stated; people count as a disc as wide as the way."},
};

}  // namespace

std::span<const CheckRow> checks() {
  return kChecks;
}

const CheckRow* findCheck(std::string_view name) {
  for (const CheckRow& row : kChecks) {
    if (row.name == name) return &row;
  }
  return nullptr;
}

}  // namespace baywright
