/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-drive.h"
G_BEGIN_DECLS

/*
 * HmuiDriveFigure: the outlines of one head, ready to draw. Lengths in mm, or in shares of the head where no size is
 * known. Private to this folder.
 */
typedef struct _HmuiDriveFigure HmuiDriveFigure;

/**
 * hmui_drive_figure_new:
 * @drives: (array length=n): copied; @n at least 1
 */
HmuiDriveFigure *hmui_drive_figure_new  (const HmDrive *drives, guint n, HmLength point_to_point, HmLength across_lobes);
void             hmui_drive_figure_free (HmuiDriveFigure *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmuiDriveFigure, hmui_drive_figure_free)

double   hmui_drive_figure_get_radius_mm (const HmuiDriveFigure *self);   /* of the whole head; 1 when nothing has a size */
gboolean hmui_drive_figure_is_to_scale   (const HmuiDriveFigure *self);   /* whether all that has a size is drawn so */

/** hmui_drive_figure_draw: paints it about the origin of @cr, which stays unscaled. */
void hmui_drive_figure_draw (const HmuiDriveFigure *self, GtkWidget *widget, cairo_t *cr, double px_per_mm);

G_END_DECLS
