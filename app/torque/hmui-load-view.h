/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-tightening.h"
G_BEGIN_DECLS

/*
 * HmuiLoadView: the pull that a torque gives, as a band along a line, against what the bolt and the thread it is in can
 * take. The accessible label tells the same in words.
 */
#define HMUI_TYPE_LOAD_VIEW (hmui_load_view_get_type ())
G_DECLARE_FINAL_TYPE (HmuiLoadView, hmui_load_view, HMUI, LOAD_VIEW, GtkWidget)

/** hmui_load_view_set: (nullable): NULL empties and hides the view. */
void hmui_load_view_set (HmuiLoadView *self, const HmTightening *tightening, const HmFormat *format);

G_END_DECLS
