// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

#include "base/id.h"

namespace baywright {

/// Names of the figures in Assessment::quantities. They are promises: files and scripts read them. Ids are
/// those of the job, as plain numbers; what is in <> stands for one. Shares are 0 to 1. A figure that has no
/// value (no projector, no way to an exit) is left out.
///
/// Swing (golfer and club):
/// - swing.<golfer>.<club>.highest, behind, toward_target, away, beyond_ball: m, expected envelope: height
///   above what the golfer stands on; reach from the ball to the golfer's side, toward the target, away
///   from it, to the far side. Each with .moment: of the swing, 0 address to 1 finish
/// - swing.<golfer>.<club>.bound.highest, ...: the same of the full-extension bound
/// - swing.<golfer>.<club>.<category>.margin, bound_margin: m, tightest against one category, of the
///   expected swing and of the bound: wall, window, ceiling, beam, duct, light, fan, column, opener,
///   shelving, furniture, outlet, other, open_door, door_track, projector, mount, monitor, frame,
///   bystander, scan
/// - swing.<golfer>.<club>.posture.hub_height, hub_to_ball, toes_to_ball, arm: m; spine_tilt, shaft_slope,
///   plane_slope: rad, at address
/// - swing.<golfer>.<club>.sigma_up, sigma_level: m, standard uncertainty of the envelope
/// - swing.<golfer>.<club>.ceiling_needed: m above the floor, the lowest level ceiling that keeps the
///   clearance
/// - swing.<golfer>.<club>.standing_area: m2 of floor on which the ball may lie, shooting as the bay looks;
///   from standingAreas(), not assess()
///
/// Frame: frame.above.margin, frame.beside.margin, frame.behind.margin, frame.inside.margin: m;
/// room.floor_area: m2
///
/// Ball (<hand> is right or left):
/// - ball.<hand>.share.screen, surround, side_fabric, roof_fabric, frame_tube, floor, obstacle, nothing: 1,
///   where the stated shots end
/// - ball.<hand>.air_density: kg/m3, at the room's altitude
/// - ball.<hand>.height_at_screen, high_shot_at_screen: m, of the mean shot's centre and of one two
///   standard deviations higher; time_to_screen s, speed_at_screen m/s, energy_at_screen J
/// - ball.<hand>.carry, apex: m, flight_time s, landing_speed m/s, landing_angle rad: of the mean shot
///   outdoors
/// - ball.<hand>.rebound.speed, speed_after_screen: m/s, of the worst shot back at the strike distance and
///   just off the screen; landing, reach, past_strike_point: m, from the screen, from the screen, from the
///   strike point; energy J; smallest_distance m, from ball to screen for the stated speed
/// - ball.<hand>.danger.direct_area, returning_area: m2, where nobody may be
/// - bystander.<bystander>.margin: m, from there
///
/// Picture:
/// - picture.throw_distance, width, height m; area m2; throw_ratio, coverage, spill, aspect_loss,
///   pixel_loss, light_loss 1
/// - picture.letterbox.width, height, bar_beside, bar_above m: the largest picture of the panel's own shape
///   in the middle of the screen, and the dark bar on either side, above and below it
/// - picture.keystone_across, keystone_up rad; edge_ratio_across, edge_ratio_up 1, longer over shorter edge
/// - picture.on_screen.<corner>.s, t m, before corners are moved; <corner> is top_left, top_right,
///   bottom_right or bottom_left; s to the right and t up from the screen's lower left corner
/// - picture.corner.<corner>.x, y px, moves typed into the projector
/// - picture.pixel_largest, pixel_smallest m; pixel_angle rad, of the largest from the strike point;
///   pixels_blend_from m, the distance at which it takes up one minute of arc
/// - picture.mean_illuminance lx, mean_luminance cd/m2, lumens_on_screen lm, uniformity, contrast,
///   contrast_lowest 1; picture.nine_points.<1 to 9> lx, row by row from the top left;
///   picture.ambient_allowed lx of room light for the stated contrast
/// - picture.obstruction 1, share of the picture that fixed things take
/// - picture.shadow.<golfer>.at_address, worst, mean 1
/// - mount.nearest, farthest m, distances from lens to screen that would work at the lens's height;
///   zone_area m2; drop m, from the ceiling to the lens
///
/// Doors: way.<exit>.clear_width, opening_width m; door.<opening>.opens.margin m;
/// door.<opening>.open_underside m, of a sectional door under the ceiling
std::string figureName(std::initializer_list<std::string_view> parts);

/// "12" for an id inside a name.
std::string idText(Id id);

}  // namespace baywright
