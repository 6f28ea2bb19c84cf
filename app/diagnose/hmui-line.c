/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-line.h"

struct _HmuiLine
{
  GObject parent_instance;
  guint index;
  char *key, *title, *detail, *value;   /* owned */
};

G_DEFINE_FINAL_TYPE (HmuiLine, hmui_line, G_TYPE_OBJECT)

static void
hmui_line_finalize (GObject *object)
{
  HmuiLine *self = HMUI_LINE (object);

  g_free (self->key);
  g_free (self->title);
  g_free (self->detail);
  g_free (self->value);
  G_OBJECT_CLASS (hmui_line_parent_class)->finalize (object);
}

static void
hmui_line_class_init (HmuiLineClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_line_finalize;
}

static void
hmui_line_init (HmuiLine *self)
{
}

HmuiLine *
hmui_line_new (guint index, const char *key, const char *title, const char *detail, const char *value)
{
  HmuiLine *self = g_object_new (HMUI_TYPE_LINE, NULL);

  self->index = index;
  self->key = g_strdup (key);
  self->title = g_strdup (title);
  self->detail = g_strdup (detail);
  self->value = g_strdup (value);
  return self;
}

void
hmui_line_append (GListStore *list, guint index, const char *key, const char *title, const char *detail, const char *value)
{
  g_autoptr(HmuiLine) line = hmui_line_new (index, key, title, detail, value);

  g_list_store_append (list, line);
}

guint
hmui_line_get_index (HmuiLine *self)
{
  return self->index;
}

const char *
hmui_line_get_key (HmuiLine *self)
{
  return self->key;
}

const char *
hmui_line_get_title (HmuiLine *self)
{
  return self->title;
}

const char *
hmui_line_get_detail (HmuiLine *self)
{
  return self->detail;
}

const char *
hmui_line_get_value (HmuiLine *self)
{
  return self->value;
}
