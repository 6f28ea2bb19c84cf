/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-knowledge-private.h"

/* Of a guide: causes, their remedies, and the incidents that raise them. */

static gboolean
read_remedy_lists (HmReader *self, gint64 entry, HmRemedy *remedy, GError **error)
{
  return hm_read_lines (self->store, self->arena, entry, "Do", self->layout, &remedy->steps, error)
         && hm_read_lines (self->store, self->arena, entry, "Part", self->layout, &remedy->parts, error)
         && hm_read_lines (self->store, self->arena, entry, "After", self->layout, &remedy->after, error)
         && hm_read_minutes (self->store, entry, "Time", self->layout, &remedy->time, error)
         && hm_read_indices (self, entry, "Access", self->access, &remedy->access, &remedy->n_access, error)
         && hm_read_pointers (self, entry, "Fasteners", self->fasteners, (gconstpointer **) &remedy->fasteners, error)
         && hm_read_pointers (self, entry, "Cautions", self->cautions, (gconstpointer **) &remedy->cautions, error)
         && hm_read_pointers (self, entry, "Tools", self->tools, (gconstpointer **) &remedy->tools, error);
}

/* Only those that a cause of this layout has: the others may have no times here. */
static gboolean
read_remedies (HmReader *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT entry, id, name, provenance FROM entry WHERE kind = 'remedy' AND entry IN"
                         " (SELECT remedy FROM cause JOIN cause_rate ON cause = cause.entry JOIN entry USING (entry)"
                         "  WHERE scope = ?1 AND layout = ?2)", &stmt, error))
    return FALSE;
  hm_stmt_bind_text (&stmt, 1, self->complaint);
  hm_stmt_bind_text (&stmt, 2, self->layout);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      HmRemedy *remedy = hm_arena_new0 (self->arena, HmRemedy, 1);
      gint64 entry = hm_stmt_get_int64 (&stmt, 0);
      remedy->id = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 1));
      remedy->name = hm_arena_text (self->arena, hm_stmt_get_text (&stmt, 2));
      remedy->provenance = hm_read_provenance (self->arena, hm_stmt_get_text (&stmt, 3));
      if (!read_remedy_lists (self, entry, remedy, error))
        return FALSE;
      g_hash_table_insert (self->remedies, HM_ROW_KEY (entry), remedy);
    }
  return step == HM_STEP_DONE;
}

static gboolean
read_cause (HmReader *self, HmStmt *stmt, HmCause *cause, GError **error)
{
  gint64 entry = hm_stmt_get_int64 (stmt, 0);

  cause->id = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 1));
  cause->name = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 2));
  cause->provenance = hm_read_provenance (self->arena, hm_stmt_get_text (stmt, 3));
  cause->detail = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 4));
  cause->remedy = g_hash_table_lookup (self->remedies, HM_ROW_KEY (hm_stmt_get_int64 (stmt, 5)));
  cause->tell_owner = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 6));
  cause->rate = hm_stmt_get_double (stmt, 7);
  if (cause->remedy == NULL)
    return hm_read_fail_inconsistent ("remedies", error);
  return hm_read_lines (self->store, self->arena, entry, "LookAlso", self->layout, &cause->look_also, error);
}

gboolean
hm_read_causes (HmReader *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmGuide *guide = self->guide;
  HmStep step;

  if (!hm_read_count (self->store, "SELECT count(*) FROM cause_rate JOIN entry ON entry = cause WHERE scope = ?1 AND layout = ?2",
                      self->complaint, self->layout, &guide->n_causes, error)
      || !read_remedies (self, error)
      || !hm_store_prepare (self->store, "SELECT entry, id, name, provenance, detail, remedy, tell_owner, rate"
                            " FROM cause JOIN entry USING (entry) JOIN cause_rate ON cause = entry"
                            " WHERE scope = ?1 AND layout = ?2 ORDER BY entry", &stmt, error))
    return FALSE;
  guide->causes = hm_arena_new0 (self->arena, HmCause, guide->n_causes);
  hm_stmt_bind_text (&stmt, 1, self->complaint);
  hm_stmt_bind_text (&stmt, 2, self->layout);
  for (guint i = 0; (step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW; i++)
    {
      g_hash_table_insert (self->causes, HM_ROW_KEY (hm_stmt_get_int64 (&stmt, 0)), GUINT_TO_POINTER (i + 1));
      if (!read_cause (self, &stmt, &guide->causes[i], error))
        return FALSE;
    }
  return step == HM_STEP_DONE;
}

/* Causes that this layout does not have are passed over. */
static gboolean
read_raises (HmReader *self, gint64 entry, HmIncident *incident, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  double *adds = hm_arena_new0 (self->arena, double, self->guide->n_causes);
  HmStep step;

  if (!hm_store_prepare (self->store, "SELECT cause, chance FROM incident_raise WHERE incident = ?1", &stmt, error))
    return FALSE;
  hm_stmt_bind_int64 (&stmt, 1, entry);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      guint cause = GPOINTER_TO_UINT (g_hash_table_lookup (self->causes, HM_ROW_KEY (hm_stmt_get_int64 (&stmt, 0))));
      if (cause > 0)
        adds[cause - 1] = hm_stmt_get_double (&stmt, 1);
    }
  incident->adds = adds;
  return step == HM_STEP_DONE;
}

static gboolean
read_incident (HmReader *self, HmStmt *stmt, HmIncident *incident, GError **error)
{
  gint64 entry = hm_stmt_get_int64 (stmt, 0);

  incident->id = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 1));
  incident->name = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 2));
  incident->provenance = hm_read_provenance (self->arena, hm_stmt_get_text (stmt, 3));
  incident->detail = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 4));
  incident->proof = hm_arena_text (self->arena, hm_stmt_get_text (stmt, 5));
  return read_raises (self, entry, incident, error)
         && hm_read_lines (self->store, self->arena, entry, "Inspect", self->layout, &incident->inspect, error)
         && hm_read_lines (self->store, self->arena, entry, "Avoid", self->layout, &incident->avoid, error)
         && hm_read_pointers (self, entry, "Cautions", self->cautions, (gconstpointer **) &incident->cautions, error);
}

/* Those that bear on a cause of this complaint on this layout. */
#define BEARING_INCIDENTS "incident.entry IN (SELECT incident FROM incident_raise JOIN cause_rate USING (cause)" \
                          " JOIN entry ON entry.entry = cause WHERE scope = ?1 AND layout = ?2)"

gboolean
hm_read_incidents (HmReader *self, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmGuide *guide = self->guide;
  HmStep step;

  if (!hm_read_count (self->store, "SELECT count(*) FROM incident WHERE " BEARING_INCIDENTS,
                      self->complaint, self->layout, &guide->n_incidents, error)
      || !hm_store_prepare (self->store, "SELECT entry, id, name, provenance, detail, proof FROM incident JOIN entry USING (entry)"
                            " WHERE " BEARING_INCIDENTS " ORDER BY entry", &stmt, error))
    return FALSE;
  guide->incidents = hm_arena_new0 (self->arena, HmIncident, guide->n_incidents);
  hm_stmt_bind_text (&stmt, 1, self->complaint);
  hm_stmt_bind_text (&stmt, 2, self->layout);
  for (guint i = 0; (step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW; i++)
    if (!read_incident (self, &stmt, &guide->incidents[i], error))
      return FALSE;
  return step == HM_STEP_DONE;
}
