/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-knowledge-private.h"

/* What there is to choose from: complaints and layouts, all of them. */

static gboolean
read_complaint (HmStore *store, HmArena *arena, HmStmt *stmt, HmComplaint *complaint, GError **error)
{
  gint64 entry = hm_stmt_get_int64 (stmt, 0);

  complaint->id = hm_arena_text (arena, hm_stmt_get_text (stmt, 1));
  complaint->name = hm_arena_text (arena, hm_stmt_get_text (stmt, 2));
  complaint->provenance = hm_read_provenance (arena, hm_stmt_get_text (stmt, 3));
  complaint->owner_words = hm_arena_text (arena, hm_stmt_get_text (stmt, 4));
  complaint->other_share = hm_stmt_get_double (stmt, 5);
  complaint->escalate = hm_arena_text (arena, hm_stmt_get_text (stmt, 6));
  complaint->max_batch = (guint) hm_stmt_get_int64 (stmt, 7);
  return hm_read_lines (store, arena, entry, "Verify", "", &complaint->verify_steps, error)
         && hm_read_minutes (store, entry, "VerifyTime", "", &complaint->verify_time, error)
         && hm_read_minutes (store, entry, "EscalateTime", "", &complaint->escalate_time, error);
}

gboolean
hm_read_complaints (HmStore *store, HmArena *arena, HmComplaint **out, guint *n, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_read_count (store, "SELECT count(*) FROM complaint", NULL, NULL, n, error)
      || !hm_store_prepare (store, "SELECT entry, id, name, provenance, owner_words, other_share, escalate, max_batch"
                            " FROM complaint JOIN entry USING (entry) ORDER BY rank, entry", &stmt, error))
    return FALSE;
  *out = hm_arena_new0 (arena, HmComplaint, *n);
  for (guint i = 0; (step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW; i++)
    if (!read_complaint (store, arena, &stmt, &(*out)[i], error))
      return FALSE;
  return step == HM_STEP_DONE;
}

gboolean
hm_read_layouts (HmStore *store, HmArena *arena, HmLayout **out, guint *n, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_read_count (store, "SELECT count(*) FROM layout", NULL, NULL, n, error)
      || !hm_store_prepare (store, "SELECT id, name, detail FROM layout JOIN entry USING (entry) ORDER BY rank, entry", &stmt, error))
    return FALSE;
  *out = hm_arena_new0 (arena, HmLayout, *n);
  for (guint i = 0; (step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW; i++)
    {
      (*out)[i].id = hm_arena_text (arena, hm_stmt_get_text (&stmt, 0));
      (*out)[i].name = hm_arena_text (arena, hm_stmt_get_text (&stmt, 1));
      (*out)[i].detail = hm_arena_text (arena, hm_stmt_get_text (&stmt, 2));
    }
  return step == HM_STEP_DONE;
}
