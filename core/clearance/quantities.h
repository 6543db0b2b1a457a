// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

#include "base/id.h"

namespace baywright {

/// Names of the figures in Assessment::quantities. They are promises: files and scripts read them. Ids are
/// those of the job, as plain numbers; what is in <> stands for one. Metres, square metres, radians, m/s,
/// joules, lux, cd/m2; shares are 0 to 1. A figure that has no value (no projector, no way to an exit) is
/// left out.
///
///   swing.<golfer>.<club>.highest | behind | toward_target | away | beyond_ball
///                                 expected envelope: height above what the golfer stands on; reach from the
///                                 ball to the golfer's side, toward the target, away from it, to the far
///                                 side       m
///   swing.<golfer>.<club>.bound.highest | ...  the same of the full-extension bound m
///   swing.<golfer>.<club>.<category>.margin    tightest expected margin against one category: wall, window,
///                                 ceiling, beam, duct, light, fan, column, opener, shelving, furniture,
///                                 outlet, other, open_door, door_track, projector, mount, monitor, frame,
///                                 bystander, scan m
///   swing.<golfer>.<club>.<category>.bound_margin   the same of the full-extension bound m
///   frame.above.margin | frame.beside.margin | frame.behind.margin | frame.inside.margin m
///   ball.<hand>.share.screen | surround | side_fabric | roof_fabric | frame_tube | floor | obstacle |
///   nothing
///                                 where the stated shots end; <hand> is right or left 1
///   ball.<hand>.height_at_screen  of the mean shot's centre m ball.<hand>.rebound.speed | reach | energy |
///   smallest_distance          of the worst shot   m/s, m, J, m bystander.<bystander>.margin  from the place
///   where nobody may be                                        m picture.throw_distance | width | height m
///   picture.throw_ratio 1 picture.coverage | spill | aspect_loss | pixel_loss | light_loss 1
///   picture.keystone_across | keystone_up rad picture.corner.<top_left | top_right | bottom_right |
///   bottom_left>.x | y    moves typed into it         px picture.pixel_largest | pixel_smallest m
///   picture.mean_illuminance      lx;  picture.mean_luminance  cd/m2;  picture.uniformity | contrast 1
///   picture.obstruction           share of the picture that fixed things take 1
///   picture.shadow.<golfer>.at_address | worst | mean 1 mount.nearest | farthest      distances from lens to
///   screen that would work at the lens's height        m mount.drop                    from the ceiling to
///   the lens                                              m way.<exit>.clear_width | opening_width m
///   room.floor_area               m2
std::string figureName(std::initializer_list<std::string_view> parts);

/// "12" for an id inside a name.
std::string idText(Id id);

}  // namespace baywright
