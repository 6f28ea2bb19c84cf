/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-message-strip.h"
#include "hmui-place.h"
#include "hmui-window.h"
G_BEGIN_DECLS

/* Between hmui-window.c (the frame) and hmui-window-actions.c (what the window can do). */
struct _HmuiWindow
{
  GtkApplicationWindow parent_instance;
  HmuiSettings *settings;         /* owned */
  HmuiShop *shop;                 /* owned */
  gboolean narrow;                /* the rail shows icons alone */
  guint narrow_idle;              /* source id; 0: none */
  gboolean has_frame;             /* the first frame was painted: a new place may be filled at once */
  /* template children */
  GtkStack *places;
  GtkListBox *rail;
  GtkLabel *where;
  GtkMenuButton *menu;
  HmuiMessageStrip *strip;
};

void       hmui_window_install_actions (GtkWidgetClass *widget_class);
void       hmui_window_update_actions  (HmuiWindow *self);
HmuiPlace *hmui_window_get_place       (HmuiWindow *self);   /* in sight; borrowed */
GtkWidget *hmui_window_visit           (HmuiWindow *self, const char *name);   /* a place, with the keyboard focus in it; borrowed */

G_END_DECLS
