/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "gallery-picture.h"

static const HmPicturePart parts[] = {
  { "battery", "battery 12 V", HM_SYMBOL_BATTERY, { 2, 7 }, 90 },
  { "battery-ground", "engine block", HM_SYMBOL_FRAME_GROUND, { 2, 11 }, 0 },
  { "tap", "", HM_SYMBOL_JUNCTION, { 6, 2 }, 0 },
  { "battery-stud", "", HM_SYMBOL_TERMINAL, { 11, 2 }, 0 },
  { "contact", "solenoid contacts", HM_SYMBOL_RELAY_CONTACT, { 12.5, 2 }, 0 },
  { "starter-stud", "", HM_SYMBOL_TERMINAL, { 14, 2 }, 0 },
  { "motor", "starter motor", HM_SYMBOL_MOTOR, { 21, 6 }, 90 },
  { "motor-ground", "engine block", HM_SYMBOL_FRAME_GROUND, { 21, 11 }, 0 },
  { "fuse", "fuse 20 A", HM_SYMBOL_FUSE, { 6, 4.5 }, 90 },
  { "key", "key switch", HM_SYMBOL_SWITCH, { 8, 9 }, 0 },
  { "brake", "brake switch", HM_SYMBOL_SWITCH, { 11.5, 9 }, 0 },
  { "blades", "blade switch", HM_SYMBOL_SWITCH, { 15, 9 }, 0 },
  { "coil", "solenoid coil", HM_SYMBOL_RELAY_COIL, { 16.5, 6 }, 90 },
  { "coil-ground", "frame", HM_SYMBOL_FRAME_GROUND, { 18.4, 4 }, 270 },
  { "lamp", "charge lamp", HM_SYMBOL_LAMP, { 10, 5.5 }, 90 },
  { "lamp-ground", "frame", HM_SYMBOL_FRAME_GROUND, { 10, 7 }, 0 },
};
static const HmPicturePoint points[] = {
  { "battery-plus", "battery positive post", { 2, 5 } },
  { "battery-minus", "battery negative post", { 2, 9 } },
  { "solenoid-in", "battery-side stud of the solenoid", { 11, 2 } },
  { "solenoid-out", "starter-side stud of the solenoid", { 14, 2 } },
  { "starter-post", "post on the starter", { 21, 4 } },
  { "block", "clean metal of the engine block", { 21, 9 } },
};
static const HmPoint feed[] = { { 2, 6 }, { 2, 2 }, { 11, 2 }, { 11.5, 2 } };
static const HmPoint starter[] = { { 13.5, 2 }, { 14, 2 }, { 21, 2 }, { 21, 5 } };
static const HmPoint minus[] = { { 2, 8 }, { 2, 11 } };
static const HmPoint motor_minus[] = { { 21, 7 }, { 21, 11 } };
static const HmPoint fused[] = { { 6, 2 }, { 6, 3.5 } };
static const HmPoint to_key[] = { { 6, 5.5 }, { 6, 9 }, { 7, 9 } };
static const HmPoint to_brake[] = { { 9, 9 }, { 10.5, 9 } };
static const HmPoint to_blades[] = { { 12.5, 9 }, { 14, 9 } };
static const HmPoint to_coil[] = { { 16, 9 }, { 16.5, 9 }, { 16.5, 7 } };
static const HmPoint from_coil[] = { { 16.5, 5 }, { 16.5, 4 }, { 18.4, 4 } };
static const HmPoint to_lamp[] = { { 10, 2 }, { 10, 4.5 } };
static const HmPoint from_lamp[] = { { 10, 6.5 }, { 10, 7 } };
static const HmPictureWire wires[] = {
  { feed, G_N_ELEMENTS (feed), TRUE },
  { starter, G_N_ELEMENTS (starter), TRUE },
  { minus, G_N_ELEMENTS (minus), TRUE },
  { motor_minus, G_N_ELEMENTS (motor_minus), TRUE },
  { fused, G_N_ELEMENTS (fused), FALSE },
  { to_key, G_N_ELEMENTS (to_key), FALSE },
  { to_brake, G_N_ELEMENTS (to_brake), FALSE },
  { to_blades, G_N_ELEMENTS (to_blades), FALSE },
  { to_coil, G_N_ELEMENTS (to_coil), FALSE },
  { from_coil, G_N_ELEMENTS (from_coil), FALSE },
  { to_lamp, G_N_ELEMENTS (to_lamp), FALSE },
  { from_lamp, G_N_ELEMENTS (from_lamp), FALSE },
};

const HmPicture gallery_picture = {
  .id = "gallery", .name = "Cranking circuit",
  .detail = "The battery feeds the starter through the solenoid; the key and two safety switches feed its coil",
  .width = 23, .height = 13,
  .parts = parts, .n_parts = G_N_ELEMENTS (parts),
  .points = points, .n_points = G_N_ELEMENTS (points),
  .wires = wires, .n_wires = G_N_ELEMENTS (wires),
};
