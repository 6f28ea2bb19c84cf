/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fastener-text.h"
#include "hm-knowledge-private.h"
#include "hm-limit-text.h"

/* Of a guide: what all layouts share, and the fasteners and access steps of its own. */

static gboolean
read_cautions (HmReader *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT entry, id, name, provenance, text, defer, serious FROM caution JOIN entry USING (entry)",
                         &stmt, error))
    return FALSE;
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      HmCaution *caution = hm_arena_new0 (self->arena, HmCaution, 1);
      caution->id = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 1));
      caution->name = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 2));
      caution->provenance = hm_read_provenance (self->arena, hm_stmt_get_text (&stmt, 3));
      caution->text = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 4));
      caution->defer = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 5));
      caution->serious = hm_stmt_get_int64 (&stmt, 6) != 0;
      g_hash_table_insert (self->cautions, HM_ROW_KEY (hm_stmt_get_int64 (&stmt, 0)), caution);
    }
  return step == HM_STEP_DONE;
}

static gboolean
read_limits (HmReader *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT entry, id, name, provenance, applies, low, high FROM bench_limit JOIN entry USING (entry)",
                         &stmt, error))
    return FALSE;
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      HmLimit *limit = hm_arena_new0 (self->arena, HmLimit, 1);
      limit->id = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 1));
      limit->name = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 2));
      limit->provenance = hm_read_provenance (self->arena, hm_stmt_get_text (&stmt, 3));
      limit->applies = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 4));
      if (!hm_limit_from_text (hm_stmt_get_text (&stmt, 5), hm_stmt_get_text (&stmt, 6), limit, error))
        return FALSE;
      g_hash_table_insert (self->limits, HM_ROW_KEY (hm_stmt_get_int64 (&stmt, 0)), limit);
    }
  return step == HM_STEP_DONE;
}

static gboolean
read_tools (HmReader *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT entry, id, name FROM entry WHERE kind = 'tool'", &stmt, error))
    return FALSE;
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      HmTool *tool = hm_arena_new0 (self->arena, HmTool, 1);
      tool->id = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 1));
      tool->name = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 2));
      g_hash_table_insert (self->tools, HM_ROW_KEY (hm_stmt_get_int64 (&stmt, 0)), tool);
    }
  return step == HM_STEP_DONE;
}

gboolean
hm_read_shared (HmReader *self, GError **error)
{
  return read_cautions (self, error) && read_limits (self, error) && read_tools (self, error);
}

static const char *
column (HmReader *self, HmStmt *stmt, int index)
{
  return hm_arena_text (self->arena, hm_stmt_get_text (stmt, index));
}

static gboolean
read_fasteners (HmReader *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT entry, id, name, provenance, place, count, thread, strength, drives, torque,"
                         " torque_provenance, state, material, pattern"
                         " FROM fastener JOIN entry USING (entry) WHERE scope = ?1", &stmt, error))
    return FALSE;
  hm_stmt_bind_text (&stmt, 1, self->layout);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      HmFastener *fastener = hm_arena_new0 (self->arena, HmFastener, 1);
      const HmFastenerText text = {
        .id = column (self, &stmt, 1), .name = column (self, &stmt, 2), .provenance = column (self, &stmt, 3),
        .where = column (self, &stmt, 4), .count = (guint) hm_stmt_get_int64 (&stmt, 5), .thread = column (self, &stmt, 6),
        .strength = column (self, &stmt, 7), .drives = column (self, &stmt, 8), .torque = column (self, &stmt, 9),
        .torque_provenance = column (self, &stmt, 10), .state = column (self, &stmt, 11),
        .into = column (self, &stmt, 12), .pattern = column (self, &stmt, 13)
      };
      if (!hm_fastener_from_text (&text, self->tables, fastener, error))
        return FALSE;
      g_hash_table_insert (self->fasteners, HM_ROW_KEY (hm_stmt_get_int64 (&stmt, 0)), fastener);
    }
  return step == HM_STEP_DONE;
}

static gboolean
read_step_lists (HmReader *self, gint64 entry, HmAccessStep *step, GError **error)
{
  return hm_read_lines (self->store, self->arena, entry, "Do", self->layout, &step->steps, error)
         && hm_read_minutes (self->store, entry, "Open", self->layout, &step->open, error)
         && hm_read_minutes (self->store, entry, "Close", self->layout, &step->close, error)
         && hm_read_pointers (self, entry, "Fasteners", self->fasteners, (gconstpointer **) &step->fasteners, error)
         && hm_read_pointers (self, entry, "Cautions", self->cautions, (gconstpointer **) &step->cautions, error);
}

/* The steps without what they require, which may stand further down. @rows: takes each step's row */
static gboolean
read_steps (HmReader *self, gint64 *rows, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep result;

  if (!hm_store_prepare (self->store, "SELECT entry, id, name, provenance, blocks_verify, photo, put_back"
                         " FROM access_step JOIN entry USING (entry) WHERE scope = ?1 ORDER BY entry", &stmt, error))
    return FALSE;
  hm_stmt_bind_text (&stmt, 1, self->layout);
  for (guint i = 0; (result = hm_stmt_step (&stmt, error)) == HM_STEP_ROW; i++)
    {
      HmAccessStep *step = &self->guide->access[i];
      rows[i] = hm_stmt_get_int64 (&stmt, 0);
      step->id = column (self, &stmt, 1);
      step->name = column (self, &stmt, 2);
      step->provenance = hm_read_provenance (self->arena, hm_stmt_get_text (&stmt, 3));
      step->blocks_verify = hm_stmt_get_int64 (&stmt, 4) != 0;
      step->photo = column (self, &stmt, 5);
      step->put_back = column (self, &stmt, 6);
      g_hash_table_insert (self->access, HM_ROW_KEY (rows[i]), GUINT_TO_POINTER (i + 1));
      if (!read_step_lists (self, rows[i], step, error))
        return FALSE;
    }
  return result == HM_STEP_DONE;
}

static gboolean
read_requirements (HmReader *self, const gint64 *rows, GError **error)
{
  for (guint i = 0; i < self->guide->n_access; i++)
    {
      const guint *required = NULL;
      guint n = 0;
      if (!hm_read_indices (self, rows[i], "Requires", self->access, &required, &n, error))
        return FALSE;
      for (guint k = 0; k < n; k++)
        self->guide->access[i].requires |= (HmAccessSet) 1 << required[k];
    }
  return TRUE;
}

gboolean
hm_read_layout (HmReader *self, GError **error)
{
  gint64 rows[HM_GUIDE_MAX_ACCESS];
  guint n = 0;

  if (!hm_read_count (self->store, "SELECT count(*) FROM entry WHERE kind = 'access' AND scope = ?2", NULL, self->layout, &n, error)
      || !read_fasteners (self, error))
    return FALSE;
  if (n > HM_GUIDE_MAX_ACCESS)
    return hm_read_fail_inconsistent ("access steps", error);
  self->guide->access = hm_arena_new0 (self->arena, HmAccessStep, n);
  self->guide->n_access = n;
  return read_steps (self, rows, error) && read_requirements (self, rows, error);
}
