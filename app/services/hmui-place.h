/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiPlace: what the window needs from a place (Diagnose …): where you are in words, and undo. The window knows no more.
 *
 * Signal "changed" (no arguments): the words or what can be undone are other than before.
 * Signal "message" (const char *text, gboolean can_undo): a short sentence for the strip at the bottom; NULL takes
 *   the last one away.
 */
#define HMUI_TYPE_PLACE (hmui_place_get_type ())
G_DECLARE_INTERFACE (HmuiPlace, hmui_place, HMUI, PLACE, GtkWidget)

struct _HmuiPlaceInterface
{
  GTypeInterface parent_iface;

  char    *(*dup_whereabouts) (HmuiPlace *self);
  gboolean (*can_undo) (HmuiPlace *self);
  gboolean (*can_redo) (HmuiPlace *self);
  void     (*undo)     (HmuiPlace *self);
  void     (*redo)     (HmuiPlace *self);
  void     (*fill)     (HmuiPlace *self);
  void     (*go_home)  (HmuiPlace *self);   /* may be NULL: the place has just one page */
};

/** hmui_place_dup_whereabouts: "Will not crank · Riding mower · 14 min spent"; (transfer full), never NULL. */
char    *hmui_place_dup_whereabouts (HmuiPlace *self);
gboolean hmui_place_can_undo (HmuiPlace *self);
gboolean hmui_place_can_redo (HmuiPlace *self);
void     hmui_place_undo     (HmuiPlace *self);
void     hmui_place_redo     (HmuiPlace *self);

/** hmui_place_fill: what may wait until the window's first frame is on the screen. */
void     hmui_place_fill     (HmuiPlace *self);

/** hmui_place_go_home: back to the place's first page; what was under way is kept and can be taken up again. */
void     hmui_place_go_home  (HmuiPlace *self);

/* For those who implement it. */
void     hmui_place_emit_changed (HmuiPlace *self);
void     hmui_place_emit_message (HmuiPlace *self, const char *text, gboolean can_undo);

G_END_DECLS
