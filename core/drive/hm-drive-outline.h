/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-drive.h"
G_BEGIN_DECLS

/** HmOutlinePoint: a point of an outline seen from above; origin in the middle of the drive, x right, y down. */
typedef struct { double x_mm, y_mm; } HmOutlinePoint;

/**
 * hm_drive_outline: the outline that the tool takes hold of, as a closed polygon. A hexagon has flats left and right
 * and corners above and below, a square has its flats level and upright, a hexalobular drive has a lobe to the right.
 * @point_to_point: ISO 10664 A, over two opposite lobes; only for the hexalobular kinds
 * @across_lobes: ISO 10664 B, between two opposite hollows; below A
 * Lobes and hollows are circular arcs that touch. The standard's own radii are not needed for it: a lobe's radius is
 * taken as A / 12, and that of the hollow follows from touching.
 * Returns: (transfer full) (element-type HmOutlinePoint): empty when the kind has no outline of a known size (cross
 *   recesses, slots, drives without a tool, sizes that are missing)
 */
GArray *hm_drive_outline (const HmDrive *self, HmLength point_to_point, HmLength across_lobes);

/**
 * hm_head_outline: a real head seen from above: a hexagon with its corners cut square to where they measure @across_corners,
 * lying as in hm_drive_outline(); 12 points. (transfer full) (element-type HmOutlinePoint)
 */
GArray *hm_head_outline (HmLength across_flats, HmLength across_corners);

/** hm_drive_outline_radius_mm: of the smallest circle around the middle that holds @outline; 0 when it is empty. */
double hm_drive_outline_radius_mm (const GArray *outline);

G_END_DECLS
