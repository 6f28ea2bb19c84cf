/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-drive.h"
G_BEGIN_DECLS

/*
 * HmuiDriveView: what the tool takes hold of, seen from above and drawn to scale: hexagons, hexalobular and hex
 * recesses, squares, slots, cross recesses, and combination heads (a hexagon with a recess inside). From 120 px it
 * also carries the dimension across flats. Cross recesses and slots have no size in #HmDrive and are drawn as symbols.
 */
#define HMUI_TYPE_DRIVE_VIEW (hmui_drive_view_get_type ())
G_DECLARE_FINAL_TYPE (HmuiDriveView, hmui_drive_view, HMUI, DRIVE_VIEW, GtkWidget)

#define HMUI_DRIVE_VIEW_SMALL 48    /* pixel size beside a line of text */
#define HMUI_DRIVE_VIEW_LARGE 240   /* pixel size with dimension */

GtkWidget *hmui_drive_view_new (void);

/**
 * hmui_drive_view_set_drives:
 * @drives: (array length=n) (nullable): every drive of one head, the usual one first; copied
 * @n: 0 to empty the view; no more than four are shown
 * @format: (nullable): how the person reads numbers; NULL for hm_format_default
 */
void hmui_drive_view_set_drives (HmuiDriveView *self, const HmDrive *drives, guint n, const HmFormat *format);

/**
 * hmui_drive_view_set_hexalobular: the size of the hexalobular drive among the drives (ISO 10664 A and B).
 * @point_to_point: A, over two opposite lobes; 0 for unknown: then it is drawn as a symbol
 * @across_lobes: B, between two opposite hollows
 */
void hmui_drive_view_set_hexalobular (HmuiDriveView *self, HmLength point_to_point, HmLength across_lobes);

/**
 * hmui_drive_view_set_pixel_size: width and height of the view; 48 px until set.
 */
void hmui_drive_view_set_pixel_size (HmuiDriveView *self, int pixels);

/**
 * hmui_drive_view_set_scale:
 * @pixels_per_mm: 0 to fill the view (the default); else a fixed scale, so that several views compare by eye.
 *   A drive too large for the view at that scale is shrunk to fit.
 */
void hmui_drive_view_set_scale (HmuiDriveView *self, double pixels_per_mm);

G_END_DECLS
