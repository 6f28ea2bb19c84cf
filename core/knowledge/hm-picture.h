/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/*
 * A schematic as data: symbols on a grid, wires between them, points where a probe can be set. Coordinates are grid
 * units, origin top left; the app decides how large a unit is. Strings and arrays belong to the picture.
 */
typedef enum {
  HM_SYMBOL_BATTERY, HM_SYMBOL_SWITCH, HM_SYMBOL_FUSE, HM_SYMBOL_RELAY_COIL, HM_SYMBOL_RELAY_CONTACT,
  HM_SYMBOL_MOTOR, HM_SYMBOL_FRAME_GROUND, HM_SYMBOL_LAMP, HM_SYMBOL_JUNCTION, HM_SYMBOL_TERMINAL
} HmSymbol;

typedef struct { double x, y; } HmPoint;
typedef struct { const char *id, *name; HmSymbol symbol; HmPoint at; int turn; } HmPicturePart;   /* @turn: degrees clockwise, 0 90 180 270 */
typedef struct { const char *id, *name; HmPoint at; } HmPicturePoint;                            /* where a probe can be set */
typedef struct { const HmPoint *points; guint n_points; gboolean heavy; } HmPictureWire;         /* @heavy: battery cable */

typedef struct {
  const char *id, *name, *detail;            /* @detail: the picture in words */
  double width, height;
  const HmPicturePart  *parts;   guint n_parts;
  const HmPicturePoint *points;  guint n_points;
  const HmPictureWire  *wires;   guint n_wires;
} HmPicture;

/** hm_picture_find_point: NULL when there is no such point. */
const HmPicturePoint *hm_picture_find_point (const HmPicture *self, const char *id);

G_END_DECLS
