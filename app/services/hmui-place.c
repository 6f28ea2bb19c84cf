/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-place.h"

G_DEFINE_INTERFACE (HmuiPlace, hmui_place, GTK_TYPE_WIDGET)

static void
hmui_place_default_init (HmuiPlaceInterface *iface)
{
  g_signal_new ("changed", HMUI_TYPE_PLACE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  g_signal_new ("message", HMUI_TYPE_PLACE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 2,
                G_TYPE_STRING, G_TYPE_BOOLEAN);
}

char *
hmui_place_dup_whereabouts (HmuiPlace *self)
{
  g_return_val_if_fail (HMUI_IS_PLACE (self), NULL);
  return HMUI_PLACE_GET_IFACE (self)->dup_whereabouts (self);
}

gboolean
hmui_place_can_undo (HmuiPlace *self)
{
  g_return_val_if_fail (HMUI_IS_PLACE (self), FALSE);
  return HMUI_PLACE_GET_IFACE (self)->can_undo (self);
}

gboolean
hmui_place_can_redo (HmuiPlace *self)
{
  g_return_val_if_fail (HMUI_IS_PLACE (self), FALSE);
  return HMUI_PLACE_GET_IFACE (self)->can_redo (self);
}

void
hmui_place_undo (HmuiPlace *self)
{
  g_return_if_fail (HMUI_IS_PLACE (self));
  HMUI_PLACE_GET_IFACE (self)->undo (self);
}

void
hmui_place_redo (HmuiPlace *self)
{
  g_return_if_fail (HMUI_IS_PLACE (self));
  HMUI_PLACE_GET_IFACE (self)->redo (self);
}

void
hmui_place_fill (HmuiPlace *self)
{
  g_return_if_fail (HMUI_IS_PLACE (self));
  HMUI_PLACE_GET_IFACE (self)->fill (self);
}

void
hmui_place_go_home (HmuiPlace *self)
{
  g_return_if_fail (HMUI_IS_PLACE (self));
  if (HMUI_PLACE_GET_IFACE (self)->go_home != NULL)
    HMUI_PLACE_GET_IFACE (self)->go_home (self);
}

void
hmui_place_emit_changed (HmuiPlace *self)
{
  g_signal_emit_by_name (self, "changed");
}

void
hmui_place_emit_message (HmuiPlace *self, const char *text, gboolean can_undo)
{
  g_signal_emit_by_name (self, "message", text, can_undo);
}
