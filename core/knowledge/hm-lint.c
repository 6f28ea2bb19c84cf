/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-lint.h"
#include "hm-compile-write.h"
#include <string.h>

typedef enum { NOT_SEEN, ON_THE_WAY, DONE } Visit;

typedef struct { HmSource *source; GHashTable *visits; GPtrArray *way; } CycleSearch;

static gboolean
fail_cycle (CycleSearch *search, HmSourceEntry *entry, GError **error)
{
  g_autoptr (GString) text = g_string_new (entry->id);
  guint first = 0;

  while (g_ptr_array_index (search->way, first) != entry)
    first++;
  for (guint i = first + 1; i < search->way->len; i++)
    g_string_append_printf (text, " → %s", ((HmSourceEntry *) g_ptr_array_index (search->way, i))->id);
  g_string_append_printf (text, " → %s", entry->id);
  return hm_entry_fail_key (entry, "Requires", error, "access steps require each other in a circle: %s", text->str);
}

static gboolean
visit_access (CycleSearch *search, HmSourceEntry *entry, GError **error)
{
  Visit visit = (Visit) GPOINTER_TO_INT (g_hash_table_lookup (search->visits, entry));
  g_auto (GStrv) ids = NULL;

  if (visit == DONE)
    return TRUE;
  if (visit == ON_THE_WAY)
    return fail_cycle (search, entry, error);
  g_hash_table_insert (search->visits, entry, GINT_TO_POINTER (ON_THE_WAY));
  g_ptr_array_add (search->way, entry);
  if (!hm_entry_get_list (entry, "Requires", NULL, &ids, error))
    return FALSE;
  for (guint i = 0; ids[i] != NULL; i++)
    if (!visit_access (search, hm_source_find (search->source, "access", entry->scope, ids[i]), error))
      return FALSE;
  g_ptr_array_set_size (search->way, (gint) search->way->len - 1);
  g_hash_table_insert (search->visits, entry, GINT_TO_POINTER (DONE));
  return TRUE;
}

static gboolean
check_cycles (HmSource *source, GError **error)
{
  g_autoptr (GHashTable) visits = g_hash_table_new (NULL, NULL);
  g_autoptr (GPtrArray) way = g_ptr_array_new ();
  g_autoptr (GPtrArray) steps = hm_source_list (source, "access", NULL);
  CycleSearch search = { source, visits, way };

  for (guint i = 0; i < steps->len; i++)
    if (!visit_access (&search, g_ptr_array_index (steps, i), error))
      return FALSE;
  return TRUE;
}

static gboolean
check_number_of_steps (HmSource *source, GError **error)
{
  g_autoptr (GPtrArray) layouts = hm_source_list (source, "layout", NULL);

  for (guint i = 0; i < layouts->len; i++)
    {
      const HmSourceEntry *layout = g_ptr_array_index (layouts, i);
      g_autoptr (GPtrArray) steps = hm_source_list (source, "access", layout->id);
      if (steps->len > HM_GUIDE_MAX_ACCESS)
        return hm_entry_fail (layout, error, "it has %u access steps, and there may be %u at most", steps->len, HM_GUIDE_MAX_ACCESS);
    }
  return TRUE;
}

static gboolean
add_with_requirements (HmSource *source, const char *layout, const char *id, GHashTable *open, GError **error)
{
  HmSourceEntry *step = hm_source_find (source, "access", layout, id);
  g_auto (GStrv) ids = NULL;

  if (!g_hash_table_add (open, step))
    return TRUE;
  if (!hm_entry_get_list (step, "Requires", NULL, &ids, error))
    return FALSE;
  for (guint i = 0; ids[i] != NULL; i++)
    if (!add_with_requirements (source, layout, ids[i], open, error))
      return FALSE;
  return TRUE;
}

/* A step cannot be open and shut at once; what an open step requires is open too. */
static gboolean
check_open_and_shut (HmSource *source, HmSourceEntry *check, const char *layout, GError **error)
{
  g_autoptr (GHashTable) open = g_hash_table_new (NULL, NULL);
  g_auto (GStrv) needed = NULL;
  g_auto (GStrv) shut = NULL;

  if (!hm_entry_get_list (check, "Access", layout, &needed, error)
      || !hm_entry_get_list (check, "Closed", layout, &shut, error))
    return FALSE;
  for (guint i = 0; needed[i] != NULL; i++)
    if (!add_with_requirements (source, layout, needed[i], open, error))
      return FALSE;
  for (guint i = 0; shut[i] != NULL; i++)
    if (g_hash_table_contains (open, hm_source_find (source, "access", layout, shut[i])))
      return hm_entry_fail_key (check, "Closed", error, "on “%s” the step “%s” has to be open and shut at once", layout, shut[i]);
  return TRUE;
}

static gboolean
check_checks (HmSource *source, GError **error)
{
  g_autoptr (GPtrArray) checks = hm_source_list (source, "check", NULL);

  for (guint i = 0; i < checks->len; i++)
    {
      HmSourceEntry *check = g_ptr_array_index (checks, i);
      g_auto (GStrv) layouts = hm_compile_check_layouts (source, check, error);
      if (layouts == NULL)
        return FALSE;
      for (guint j = 0; layouts[j] != NULL; j++)
        if (!check_open_and_shut (source, check, layouts[j], error))
          return FALSE;
    }
  return TRUE;
}

static gboolean
check_keys (HmSource *source, GError **error)
{
  for (guint i = 0; i < source->entries->len; i++)
    if (!hm_entry_check_all_read (g_ptr_array_index (source->entries, i), error))
      return FALSE;
  return TRUE;
}

gboolean
hm_lint_source (HmSource *source, GError **error)
{
  return check_keys (source, error) && check_cycles (source, error)
         && check_number_of_steps (source, error) && check_checks (source, error);
}
