/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-write.h"
#include <string.h>

/*
 * Lists of an entry: lines of text, references, times. One that differs by layout is stored once for each of the
 * entry's layouts, one that does not is stored once under the layout ''.
 */
static const char * const every_layout[] = { "", NULL };

static const char * const *
layouts_to_store (const HmSourceEntry *entry, const char *key, const char * const *layouts)
{
  return layouts != NULL && hm_entry_varies_by_layout (entry, key, layouts) ? layouts : every_layout;
}

static const char *
layout_or_null (const char *layout)
{
  return *layout != '\0' ? layout : NULL;
}

static gboolean
write_lines_of_layout (HmWriter *self, HmSourceEntry *entry, const char *key, const char *layout, guint at_least, GError **error)
{
  g_autoptr (GPtrArray) lines = NULL;

  if (!hm_entry_get_lines (entry, key, layout_or_null (layout), at_least, &lines, error))
    return FALSE;
  for (guint i = 0; i < lines->len; i++)
    if (!hm_writer_put (self, error, "INSERT INTO line (entry, layout, role, position, text) VALUES (?1, ?2, ?3, ?4, ?5)",
                        "ittit", entry->row, layout, key, (gint64) i, g_ptr_array_index (lines, i)))
      return FALSE;
  return TRUE;
}

gboolean
hm_writer_lines (HmWriter *self, HmSourceEntry *entry, const char *key, const char * const *layouts, guint at_least, GError **error)
{
  const char * const *stored = layouts_to_store (entry, key, layouts);

  for (guint i = 0; stored[i] != NULL; i++)
    if (!write_lines_of_layout (self, entry, key, stored[i], at_least, error))
      return FALSE;
  return TRUE;
}

gboolean
hm_writer_minutes (HmWriter *self, HmSourceEntry *entry, const char *key, const char * const *layouts, GError **error)
{
  const char * const *stored = layouts_to_store (entry, key, layouts);

  for (guint i = 0; stored[i] != NULL; i++)
    {
      double minutes = 0;
      if (!hm_entry_get_minutes (entry, key, layout_or_null (stored[i]), &minutes, error)
          || !hm_writer_put (self, error, "INSERT INTO time_needed (entry, layout, role, minutes) VALUES (?1, ?2, ?3, ?4)",
                             "ittd", entry->row, stored[i], key, minutes))
        return FALSE;
    }
  return TRUE;
}

HmSourceEntry *
hm_writer_resolve (HmWriter *self, const HmSourceEntry *entry, const char *key, const char *kind, const char *scope,
                   const char *id, GError **error)
{
  HmSourceEntry *target = hm_source_find (self->source, kind, scope, id);

  if (target == NULL && *scope == '\0')
    hm_entry_fail_key (entry, key, error, "there is no %s “%s”", kind, id);
  else if (target == NULL)
    hm_entry_fail_key (entry, key, error, "there is no %s “%s” in “%s”", kind, id, scope);
  else
    target->n_uses++;
  return target;
}

static gboolean
write_links_of_layout (HmWriter *self, HmSourceEntry *entry, const char *key, const char *kind, const char *scope,
                       const char *layout, GError **error)
{
  g_auto (GStrv) ids = NULL;

  if (!hm_entry_get_list (entry, key, layout_or_null (layout), &ids, error))
    return FALSE;
  for (guint i = 0; ids[i] != NULL; i++)
    {
      HmSourceEntry *target = hm_writer_resolve (self, entry, key, kind, scope != NULL ? scope : layout, ids[i], error);
      if (target == NULL
          || !hm_writer_put (self, error, "INSERT INTO link (entry, layout, role, position, target) VALUES (?1, ?2, ?3, ?4, ?5)",
                             "ittii", entry->row, layout, key, (gint64) i, target->row))
        return FALSE;
    }
  return TRUE;
}

gboolean
hm_writer_links (HmWriter *self, HmSourceEntry *entry, const char *key, const char *kind, const char *scope,
                 const char * const *layouts, GError **error)
{
  const char * const *stored = scope == NULL ? layouts : layouts_to_store (entry, key, layouts);

  for (guint i = 0; stored[i] != NULL; i++)
    if (!write_links_of_layout (self, entry, key, kind, scope, stored[i], error))
      return FALSE;
  return TRUE;
}

static gboolean
check_layouts_known (const HmSource *source, HmSourceEntry *entry, char **layouts, char **allowed, GError **error)
{
  for (guint i = 0; layouts[i] != NULL; i++)
    if (allowed != NULL && !g_strv_contains ((const char * const *) allowed, layouts[i]))
      return hm_entry_fail_key (entry, "Layouts", error, "the complaint does not cover the layout “%s”", layouts[i]);
    else if (hm_source_find (source, "layout", "", layouts[i]) == NULL)
      return hm_entry_fail_key (entry, "Layouts", error, "there is no layout “%s”", layouts[i]);
  return TRUE;
}

static char **
complaint_layouts (const HmSource *source, const char *complaint, GError **error)
{
  HmSourceEntry *entry = hm_source_find (source, "complaint", "", complaint);
  g_auto (GStrv) layouts = NULL;

  if (!hm_entry_get_list (entry, "Layouts", NULL, &layouts, error)
      || !check_layouts_known (source, entry, layouts, NULL, error))
    return NULL;
  if (layouts[0] == NULL)
    return hm_entry_fail (entry, error, "Layouts is missing"), NULL;
  return g_steal_pointer (&layouts);
}

char **
hm_writer_layouts (HmWriter *self, const char *complaint, GError **error)
{
  return complaint_layouts (self->source, complaint, error);
}

char **
hm_compile_check_layouts (HmSource *source, HmSourceEntry *check, GError **error)
{
  g_auto (GStrv) all = complaint_layouts (source, check->scope, error);
  g_auto (GStrv) own = NULL;

  if (all == NULL || !hm_entry_get_list (check, "Layouts", NULL, &own, error)
      || !check_layouts_known (source, check, own, all, error))
    return NULL;
  return own[0] != NULL ? g_steal_pointer (&own) : g_steal_pointer (&all);
}

double
hm_writer_rate (const HmWriter *self, const char *complaint, const char *cause, const char *layout)
{
  g_autofree char *key = g_strjoin ("/", complaint, cause, layout, NULL);
  const double *rate = g_hash_table_lookup (self->rates, key);

  return rate != NULL ? *rate : 0;
}
