/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-wrench-drawer.h"

struct _HmuiWrenchDrawer
{
  GObject parent_instance;
  HmuiSettings *settings;         /* owned */
  GArray *wrenches;               /* owned, of HmShopWrench */
  GPtrArray *before, *after;      /* owned, of owned GStrv: what undo and redo go to, the next one last */
};

G_DEFINE_FINAL_TYPE (HmuiWrenchDrawer, hmui_wrench_drawer, G_TYPE_OBJECT)

static void
read_settings (HmuiWrenchDrawer *self)
{
  g_auto(GStrv) lines = NULL;

  g_object_get (self->settings, "torque-wrenches", &lines, NULL);
  g_array_set_size (self->wrenches, 0);
  for (guint i = 0; lines != NULL && lines[i] != NULL; i++)
    {
      HmShopWrench wrench;

      if (hm_shop_wrench_parse (lines[i], &wrench, NULL))   /* a line that somebody else broke is no wrench */
        g_array_append_val (self->wrenches, wrench);
    }
  g_signal_emit_by_name (self, "changed");
}

static GStrv
write_lines (GArray *wrenches)
{
  GPtrArray *lines = g_ptr_array_new ();

  for (guint i = 0; i < wrenches->len; i++)
    g_ptr_array_add (lines, hm_shop_wrench_format (&g_array_index (wrenches, HmShopWrench, i), &hm_format_default));
  g_ptr_array_add (lines, NULL);
  return (GStrv) g_ptr_array_free (lines, FALSE);
}

/* Puts the drawer's content away for undo, and forgets what could be redone. */
static void
remember (HmuiWrenchDrawer *self)
{
  g_ptr_array_add (self->before, write_lines (self->wrenches));
  g_ptr_array_set_size (self->after, 0);
}

static void
keep (HmuiWrenchDrawer *self)
{
  g_auto(GStrv) lines = write_lines (self->wrenches);

  g_object_set (self->settings, "torque-wrenches", lines, NULL);
}

static void
go (HmuiWrenchDrawer *self, GPtrArray *from, GPtrArray *to)
{
  g_auto(GStrv) lines = NULL;

  if (from->len == 0)
    return;
  g_ptr_array_add (to, write_lines (self->wrenches));
  lines = g_ptr_array_steal_index (from, from->len - 1);
  g_object_set (self->settings, "torque-wrenches", lines, NULL);
}

static void
hmui_wrench_drawer_finalize (GObject *object)
{
  HmuiWrenchDrawer *self = HMUI_WRENCH_DRAWER (object);

  g_clear_object (&self->settings);
  g_array_unref (self->wrenches);
  g_ptr_array_unref (self->before);
  g_ptr_array_unref (self->after);
  G_OBJECT_CLASS (hmui_wrench_drawer_parent_class)->finalize (object);
}

static void
hmui_wrench_drawer_class_init (HmuiWrenchDrawerClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_wrench_drawer_finalize;
  g_signal_new ("changed", HMUI_TYPE_WRENCH_DRAWER, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hmui_wrench_drawer_init (HmuiWrenchDrawer *self)
{
  self->wrenches = g_array_new (FALSE, FALSE, sizeof (HmShopWrench));
  self->before = g_ptr_array_new_with_free_func ((GDestroyNotify) g_strfreev);
  self->after = g_ptr_array_new_with_free_func ((GDestroyNotify) g_strfreev);
}

HmuiWrenchDrawer *
hmui_wrench_drawer_new (HmuiSettings *settings)
{
  HmuiWrenchDrawer *self = g_object_new (HMUI_TYPE_WRENCH_DRAWER, NULL);

  self->settings = g_object_ref (settings);
  g_signal_connect_object (settings, "notify::torque-wrenches", G_CALLBACK (read_settings), self, G_CONNECT_SWAPPED);
  read_settings (self);
  return self;
}

const HmShopWrench *
hmui_wrench_drawer_get_wrenches (HmuiWrenchDrawer *self, guint *n)
{
  *n = self->wrenches->len;
  return (const HmShopWrench *) (gpointer) self->wrenches->data;
}

char *
hmui_wrench_drawer_dup_line (HmuiWrenchDrawer *self, guint index)
{
  HmFormat format = hmui_settings_get_format (self->settings);

  g_return_val_if_fail (index < self->wrenches->len, NULL);
  return hm_shop_wrench_format (&g_array_index (self->wrenches, HmShopWrench, index), &format);
}

gboolean
hmui_wrench_drawer_add (HmuiWrenchDrawer *self, const char *text, GError **error)
{
  HmShopWrench wrench;

  if (!hm_shop_wrench_parse (text, &wrench, error))
    return FALSE;
  remember (self);
  g_array_append_val (self->wrenches, wrench);
  keep (self);
  return TRUE;
}

void
hmui_wrench_drawer_remove (HmuiWrenchDrawer *self, guint index)
{
  g_return_if_fail (index < self->wrenches->len);
  remember (self);
  g_array_remove_index (self->wrenches, index);
  keep (self);
}

gboolean
hmui_wrench_drawer_can_undo (HmuiWrenchDrawer *self)
{
  return self->before->len > 0;
}

gboolean
hmui_wrench_drawer_can_redo (HmuiWrenchDrawer *self)
{
  return self->after->len > 0;
}

void
hmui_wrench_drawer_undo (HmuiWrenchDrawer *self)
{
  go (self, self->before, self->after);
}

void
hmui_wrench_drawer_redo (HmuiWrenchDrawer *self)
{
  go (self, self->after, self->before);
}
