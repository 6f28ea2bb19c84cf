/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-shop-store.h"

#include <errno.h>
#include <glib/gstdio.h>

#include "hm-store.h"

#define APPLICATION_ID 0x486d5368u      /* "HmSh" */
#define FILE_NAME "shop.db"

struct _HmShopStore { HmStore *store; };

/* A shipped migration is never edited; the next change is a new line. */
static const char * const migrations[] = {
  /* 1 */
  "CREATE TABLE diagnosis ("
  "  id INTEGER PRIMARY KEY,"
  "  complaint TEXT NOT NULL,"
  "  layout TEXT NOT NULL,"
  "  created_at INTEGER NOT NULL,"      /* unix seconds */
  "  changed_at INTEGER NOT NULL,"
  "  closed INTEGER NOT NULL CHECK (closed IN (0, 1)),"
  "  n_entries INTEGER NOT NULL,"
  "  minutes_spent REAL NOT NULL,"
  "  record TEXT NOT NULL"              /* halfmoon-trail/1 */
  ") STRICT;"
  "CREATE INDEX diagnosis_by_change ON diagnosis (changed_at DESC);",
  NULL
};

HmShopStore *
hm_shop_store_open (const char *folder, GError **error)
{
  g_autofree char *path = NULL;
  HmStore *store;
  HmShopStore *self;

  g_return_val_if_fail (folder != NULL, NULL);

  if (g_mkdir_with_parents (folder, 0700) != 0)
    {
      g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_DENIED, "The folder %s cannot be made: %s. Nothing can be kept until it can.",
                   folder, g_strerror (errno));
      return NULL;
    }
  path = g_build_filename (folder, FILE_NAME, NULL);
  store = hm_store_open (path, APPLICATION_ID, migrations, error);
  if (store == NULL)
    return NULL;
  self = g_new0 (HmShopStore, 1);
  self->store = store;
  return self;
}

void
hm_shop_store_close (HmShopStore *self)
{
  if (self == NULL)
    return;
  hm_store_close (self->store);
  g_free (self);
}

void
hm_diagnosis_row_free (HmDiagnosisRow *self)
{
  g_free (self->complaint);
  g_free (self->layout);
  g_free (self);
}

static gboolean
run (HmStmt *stmt, GError **error)
{
  return hm_stmt_step (stmt, error) == HM_STEP_DONE;
}

/* Binds what both saving statements share: parameters 1 to 6. */
static void
bind_diagnosis (HmStmt *stmt, HmDiagnosis *diagnosis, const char *record, gint64 now)
{
  hm_stmt_bind_int64 (stmt, 1, now);
  hm_stmt_bind_int64 (stmt, 2, hm_diagnosis_get_phase (diagnosis) == HM_PHASE_CLOSED);
  hm_stmt_bind_int64 (stmt, 3, hm_diagnosis_get_n_entries (diagnosis));
  hm_stmt_bind_double (stmt, 4, hm_diagnosis_get_minutes_spent (diagnosis).minutes);
  hm_stmt_bind_text (stmt, 5, record);
}

static gboolean
insert_diagnosis (HmShopStore *self, HmDiagnosis *diagnosis, const char *record, gint64 now, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmGuide *guide = hm_diagnosis_get_guide (diagnosis);

  if (!hm_store_prepare (self->store,
                         "INSERT INTO diagnosis (created_at, changed_at, closed, n_entries, minutes_spent, record, complaint, layout)"
                         " VALUES (?1, ?1, ?2, ?3, ?4, ?5, ?6, ?7)", &stmt, error))
    return FALSE;
  bind_diagnosis (&stmt, diagnosis, record, now);
  hm_stmt_bind_text (&stmt, 6, hm_guide_get_complaint (guide)->id);
  hm_stmt_bind_text (&stmt, 7, hm_guide_get_layout (guide)->id);
  return run (&stmt, error);
}

static gboolean
update_diagnosis (HmShopStore *self, gint64 id, HmDiagnosis *diagnosis, const char *record, gint64 now, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };

  if (!hm_store_prepare (self->store,
                         "UPDATE diagnosis SET changed_at = ?1, closed = ?2, n_entries = ?3, minutes_spent = ?4, record = ?5"
                         " WHERE id = ?6", &stmt, error))
    return FALSE;
  bind_diagnosis (&stmt, diagnosis, record, now);
  hm_stmt_bind_int64 (&stmt, 6, id);
  return run (&stmt, error);
}

gboolean
hm_shop_store_save_diagnosis (HmShopStore *self, gint64 *id, HmDiagnosis *diagnosis, gint64 now, GError **error)
{
  g_autofree char *record = NULL;

  g_return_val_if_fail (self != NULL && id != NULL && diagnosis != NULL, FALSE);

  record = hm_diagnosis_to_json (diagnosis);
  if (*id != 0)
    return update_diagnosis (self, *id, diagnosis, record, now, error);
  if (!insert_diagnosis (self, diagnosis, record, now, error))
    return FALSE;
  *id = hm_store_last_insert_id (self->store);
  return TRUE;
}

GPtrArray *
hm_shop_store_list_diagnoses (HmShopStore *self, gboolean open_only, GError **error)
{
  g_autoptr (GPtrArray) rows = g_ptr_array_new_with_free_func ((GDestroyNotify) hm_diagnosis_row_free);
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  g_return_val_if_fail (self != NULL, NULL);

  if (!hm_store_prepare (self->store,
                         "SELECT id, complaint, layout, changed_at, closed, n_entries, minutes_spent FROM diagnosis"
                         " WHERE closed = 0 OR ?1 = 0 ORDER BY changed_at DESC, id DESC", &stmt, error))
    return NULL;
  hm_stmt_bind_int64 (&stmt, 1, open_only);
  while ((step = hm_stmt_step (&stmt, error)) == HM_STEP_ROW)
    {
      HmDiagnosisRow *row = g_new0 (HmDiagnosisRow, 1);
      row->id = hm_stmt_get_int64 (&stmt, 0);
      row->complaint = hm_stmt_dup_text (&stmt, 1);
      row->layout = hm_stmt_dup_text (&stmt, 2);
      row->changed_at = hm_stmt_get_int64 (&stmt, 3);
      row->closed = hm_stmt_get_int64 (&stmt, 4) != 0;
      row->n_entries = (guint) hm_stmt_get_int64 (&stmt, 5);
      row->minutes_spent = hm_stmt_get_double (&stmt, 6);
      g_ptr_array_add (rows, row);
    }
  return step == HM_STEP_DONE ? g_steal_pointer (&rows) : NULL;
}

char *
hm_shop_store_load_diagnosis (HmShopStore *self, gint64 id, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };
  HmStep step;

  g_return_val_if_fail (self != NULL, NULL);

  if (!hm_store_prepare (self->store, "SELECT record FROM diagnosis WHERE id = ?1", &stmt, error))
    return NULL;
  hm_stmt_bind_int64 (&stmt, 1, id);
  step = hm_stmt_step (&stmt, error);
  if (step == HM_STEP_ROW)
    return hm_stmt_dup_text (&stmt, 0);
  if (step == HM_STEP_DONE)
    g_set_error (error, HM_STORE_ERROR, HM_STORE_ERROR_MISSING, "There is no diagnosis number %" G_GINT64_FORMAT " in the shop's store.", id);
  return NULL;
}

gboolean
hm_shop_store_delete_diagnosis (HmShopStore *self, gint64 id, GError **error)
{
  g_auto (HmStmt) stmt = { NULL };

  g_return_val_if_fail (self != NULL, FALSE);

  if (!hm_store_prepare (self->store, "DELETE FROM diagnosis WHERE id = ?1", &stmt, error))
    return FALSE;
  hm_stmt_bind_int64 (&stmt, 1, id);
  return run (&stmt, error);
}
