/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-knowledge-private.h"

gboolean
hm_read_fail_inconsistent (const char *what, GError **error)
{
  g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_DAMAGED, "the %s in it do not fit together", what);
  return FALSE;
}

gboolean
hm_read_lines (HmStore *store, HmArena *arena, gint64 entry, const char *role, const char *layout,
               const char * const **out, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  g_autoptr (GPtrArray) lines = g_ptr_array_new ();
  HmStep step;

  if (!hm_store_prepare (store, "SELECT text FROM line WHERE entry = ?1 AND role = ?2 AND layout IN ('', ?3) ORDER BY position",
                         &stmt, error))
    return FALSE;
  hm_stmt_bind_int64 (&stmt, 1, entry);
  hm_stmt_bind_text (&stmt, 2, role);
  hm_stmt_bind_text (&stmt, 3, layout);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    g_ptr_array_add (lines, (gpointer) hm_arena_text (arena, hm_stmt_get_text (&stmt, 0)));
  if (step == HM_STEP_ERROR)
    return FALSE;
  *out = (const char * const *) hm_arena_pointers (arena, lines);
  return TRUE;
}

gboolean
hm_read_minutes (HmStore *store, gint64 entry, const char *role, const char *layout, HmDuration *out, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };

  if (!hm_store_prepare (store, "SELECT minutes FROM time_needed WHERE entry = ?1 AND role = ?2 AND layout IN ('', ?3)", &stmt, error))
    return FALSE;
  hm_stmt_bind_int64 (&stmt, 1, entry);
  hm_stmt_bind_text (&stmt, 2, role);
  hm_stmt_bind_text (&stmt, 3, layout);
  switch (hm_stmt_step (&stmt, error))
    {
    case HM_STEP_ROW:
      out->minutes = hm_stmt_get_double (&stmt, 0);
      return TRUE;
    case HM_STEP_DONE:
      return hm_read_fail_inconsistent ("times", error);
    default:
      return FALSE;
    }
}

/* What the links of @role lead to, as @targets has it. */
static GPtrArray *
read_targets (HmReader *self, gint64 entry, const char *role, GHashTable *targets, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  g_autoptr (GPtrArray) found = g_ptr_array_new ();
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT target FROM link WHERE entry = ?1 AND role = ?2 AND layout IN ('', ?3) ORDER BY position",
                         &stmt, error))
    return NULL;
  hm_stmt_bind_int64 (&stmt, 1, entry);
  hm_stmt_bind_text (&stmt, 2, role);
  hm_stmt_bind_text (&stmt, 3, self->layout);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      gpointer target = g_hash_table_lookup (targets, HM_ROW_KEY (hm_stmt_get_int64 (&stmt, 0)));
      if (target == NULL)
        return hm_read_fail_inconsistent ("references", error), NULL;
      g_ptr_array_add (found, target);
    }
  return step == HM_STEP_DONE ? g_steal_pointer (&found) : NULL;
}

gboolean
hm_read_pointers (HmReader *self, gint64 entry, const char *role, GHashTable *targets, gconstpointer **out, GError **error)
{
  g_autoptr (GPtrArray) found = read_targets (self, entry, role, targets, error);

  if (found == NULL)
    return FALSE;
  *out = hm_arena_pointers (self->arena, found);
  return TRUE;
}

gboolean
hm_read_indices (HmReader *self, gint64 entry, const char *role, GHashTable *targets, const guint **out, guint *n, GError **error)
{
  g_autoptr (GPtrArray) found = read_targets (self, entry, role, targets, error);
  guint *indices;

  if (found == NULL)
    return FALSE;
  indices = hm_arena_new0 (self->arena, guint, found->len);
  for (guint i = 0; i < found->len; i++)
    indices[i] = GPOINTER_TO_UINT (g_ptr_array_index (found, i)) - 1;
  *out = indices;
  *n = found->len;
  return TRUE;
}

gboolean
hm_read_count (HmStore *store, const char *sql, const char *complaint, const char *layout, guint *out, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };

  if (!hm_store_prepare (store, sql, &stmt, error))
    return FALSE;
  if (complaint != NULL)
    hm_stmt_bind_text (&stmt, 1, complaint);
  if (layout != NULL)
    hm_stmt_bind_text (&stmt, 2, layout);
  if (hm_stmt_step (&stmt, error) != HM_STEP_ROW)
    return FALSE;
  *out = (guint) hm_stmt_get_int64 (&stmt, 0);
  return TRUE;
}

HmProvenance
hm_read_provenance (HmArena *arena, const char *text)
{
  HmProvenance provenance = { HM_PROVENANCE_COMMON_PRACTICE, NULL };

  if (text == NULL || !hm_provenance_parse (hm_arena_text (arena, text), &provenance))
    return (HmProvenance) { HM_PROVENANCE_COMMON_PRACTICE, NULL };
  return provenance;
}
