/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-knowledge-private.h"
#include "hm-knowledge-words.h"
#include "hm-limit-text.h"

/* Of a guide: the checks, with their findings, limits and likelihoods. */

static gboolean
read_findings (HmReader *self, gint64 entry, HmCheck *check, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  g_autoptr (GArray) findings = g_array_new (FALSE, FALSE, sizeof (HmFinding));
  HmFinding *copy;
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT id, name, means FROM finding JOIN entry USING (entry)"
                         " WHERE bench_check = ?1 ORDER BY position", &stmt, error))
    return FALSE;
  hm_stmt_bind_int64 (&stmt, 1, entry);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      HmFinding finding = { hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 0)),
                            hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 1)),
                            hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 2)) };
      g_array_append_val (findings, finding);
    }
  copy = hm_arena_new0 (self->arena, HmFinding, findings->len);
  for (guint i = 0; i < findings->len; i++)
    copy[i] = g_array_index (findings, HmFinding, i);
  check->findings = copy;
  check->n_findings = findings->len;
  return step == HM_STEP_DONE;
}

/* Rows of finding, share and cause; no cause stands for something not listed, the last column. */
static gboolean
fill_likelihood (HmReader *self, HmStmt *stmt, const HmCheck *check, double *table, GError **error)
{
  guint n_columns = self->guide->n_causes + 1;
  HmStep step;

  while ((step = hm_stmt_step (stmt, error)) == HM_STEP_ROW)
    {
      gint64 finding = hm_stmt_get_int64 (stmt, 0);
      gboolean is_other = hm_stmt_is_null (stmt, 2);
      guint cause = is_other ? n_columns
                    : GPOINTER_TO_UINT (g_hash_table_lookup (self->causes, HM_ROW_KEY (hm_stmt_get_int64 (stmt, 2))));
      if (finding < 0 || finding >= check->n_findings)
        return hm_read_fail_inconsistent ("findings", error);
      if (cause > 0)     /* else a cause that this layout does not have */
        table[finding * n_columns + cause - 1] = hm_stmt_get_double (stmt, 1);
    }
  return step == HM_STEP_DONE;
}

/* Each column is a distribution, or the file is not what the compiler wrote. */
static gboolean
check_columns (HmReader *self, const HmCheck *check, const double *table, GError **error)
{
  guint n_columns = self->guide->n_causes + 1;

  for (guint i = 0; i < n_columns; i++)
    {
      double sum = 0;
      for (guint k = 0; k < check->n_findings; k++)
        sum += table[k * n_columns + i];
      if (!(sum > 1 - 1e-9 && sum < 1 + 1e-9))
        return hm_read_fail_inconsistent ("likelihoods", error);
    }
  return TRUE;
}

static gboolean
read_likelihood (HmReader *self, gint64 entry, HmCheck *check, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  double *table = hm_arena_new0 (self->arena, double, check->n_findings * (self->guide->n_causes + 1));

  if (!hm_store_prepare (self->store, "SELECT position, share, cause FROM likelihood WHERE bench_check = ?1 UNION ALL"
                         " SELECT position, share, NULL FROM likelihood_other WHERE bench_check = ?1 AND layout = ?2",
                         &stmt, error))
    return FALSE;
  hm_stmt_bind_int64 (&stmt, 1, entry);
  hm_stmt_bind_text (&stmt, 2, self->layout);
  check->likelihood = table;
  return fill_likelihood (self, &stmt, check, table, error) && check_columns (self, check, table, error);
}

static gboolean
read_edges (HmReader *self, gint64 entry, HmCheck *check, GError **error)
{
  double *edges = hm_arena_new0 (self->arena, double, check->n_findings);
  guint n = 0;

  if (!hm_read_pointers (self, entry, "Edges", self->limits, (gconstpointer **) &check->limits, error))
    return FALSE;
  for (; check->limits[n] != NULL && n < check->n_findings; n++)
    if (!hm_limit_edge (check->limits[n], check->kind, check->normal_above, &edges[n], error))
      return FALSE;
  check->edges = edges;
  return n + 1 == check->n_findings || hm_read_fail_inconsistent ("limits", error);
}

/* The columns of a reading start at @first: reading, unit, normal_side, meter_sd. */
static gboolean
read_reading (HmReader *self, HmStmt *stmt, int first, gint64 entry, HmCheck *check, GError **error)
{
  const char *unit = hm_stmt_get_text (stmt, first + 1);
  int kind;

  check->is_reading = !hm_stmt_is_null (stmt, first);
  if (!check->is_reading)
    return TRUE;
  kind = hm_words_find (hm_words_quantity_kind, hm_stmt_get_text (stmt, first));
  if (kind < 0)
    return hm_read_fail_inconsistent ("readings", error);
  check->kind = (HmQuantityKind) kind;
  check->normal_above = hm_words_find (hm_words_normal_side, hm_stmt_get_text (stmt, first + 2)) == 1;
  check->meter_sd = hm_stmt_get_double (stmt, first + 3);
  if (unit != NULL && !hm_words_unit (unit, check->kind, &check->unit, error))
    return FALSE;
  return read_edges (self, entry, check, error);
}

static gboolean
read_check_lists (HmReader *self, gint64 entry, HmCheck *check, GError **error)
{
  return hm_read_lines (self->store, self->arena, entry, "Do", self->layout, &check->steps, error)
         && hm_read_minutes (self->store, entry, "Time", self->layout, &check->time, error)
         && hm_read_indices (self, entry, "Access", self->access, &check->access, &check->n_access, error)
         && hm_read_indices (self, entry, "Closed", self->access, &check->closed, &check->n_closed, error)
         && hm_read_pointers (self, entry, "Tools", self->tools, (gconstpointer **) &check->tools, error)
         && hm_read_pointers (self, entry, "Cautions", self->cautions, (gconstpointer **) &check->cautions, error)
         && read_findings (self, entry, check, error)
         && read_likelihood (self, entry, check, error);
}

static gboolean
read_check (HmReader *self, HmStmt *stmt, HmCheck *check, GError **error)
{
  gint64 entry = hm_stmt_get_int64 (stmt, 0);

  check->id = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 1));
  check->name = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 2));
  check->provenance = hm_read_provenance (self->arena, hm_stmt_get_text (stmt, 3));
  check->picture = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 4));
  check->red_point = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 5));
  check->black_point = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 6));
  return read_check_lists (self, entry, check, error) && read_reading (self, stmt, 7, entry, check, error);
}

#define ON_LAYOUT "scope = ?1 AND entry.entry IN (SELECT link.entry FROM link JOIN entry AS layout ON layout.entry = target" \
                  " WHERE role = 'Layouts' AND layout.id = ?2)"

gboolean
hm_read_checks (HmReader *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmGuide *guide = self->guide;
  HmStep step;

  if (!hm_read_count (self->store, "SELECT count(*) FROM bench_check JOIN entry USING (entry) WHERE " ON_LAYOUT,
                      self->complaint, self->layout, &guide->n_checks, error)
      || !hm_store_prepare (self->store, "SELECT entry, id, name, provenance, picture, red_point, black_point, reading, unit,"
                            " normal_side, meter_sd FROM bench_check JOIN entry USING (entry) WHERE " ON_LAYOUT " ORDER BY entry",
                            &stmt, error))
    return FALSE;
  guide->checks = hm_arena_new0 (self->arena, HmCheck, guide->n_checks);
  hm_stmt_bind_text (&stmt, 1, self->complaint);
  hm_stmt_bind_text (&stmt, 2, self->layout);
  for (guint i = 0; (step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW; i++)
    if (!read_check (self, &stmt, &guide->checks[i], error))
      return FALSE;
  return step == HM_STEP_DONE;
}
