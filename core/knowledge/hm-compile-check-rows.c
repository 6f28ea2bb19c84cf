/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-rows.h"
#include "hm-compile-write.h"
#include <string.h>

/* The likelihoods of a check: a row for each cause, and one a layout for "something not listed". */

typedef struct {
  HmSourceEntry *check;
  const char * const *findings;
  guint n;
  double fallback[HM_ROWS_MAX_FINDINGS];     /* the Default row, before floors */
} CheckRows;

/* %FALSE with an error when the key is there and cannot be read; *@found tells whether it is there. */
static gboolean
read_row (CheckRows *rows, const char *key, const double *fallback, gboolean *found, double *out, GError **error)
{
  const char *text = hm_entry_get (rows->check, key, NULL);

  *found = text != NULL;
  if (text == NULL)
    return TRUE;
  return hm_rows_parse (text, rows->findings, rows->n, fallback, out, error)
         || hm_entry_fail_at (rows->check, key, error);
}

static gboolean
read_cause_row (CheckRows *rows, const char *cause, double *out, GError **error)
{
  g_autofree char *key = g_strconcat ("Row-", cause, NULL);
  gboolean found = FALSE;

  if (!read_row (rows, key, rows->fallback, &found, out, error))
    return FALSE;
  if (!found)
    memcpy (out, rows->fallback, sizeof rows->fallback);
  hm_rows_floor (out, rows->n);
  return TRUE;
}

static gboolean
check_rows_have_causes (HmWriter *self, const HmSourceEntry *check, GError **error)
{
  for (guint i = 0; i < check->fields->len; i++)
    {
      const HmSourceField *field = g_ptr_array_index (check->fields, i);
      const char *cause = g_str_has_prefix (field->key, "Row-") ? field->key + strlen ("Row-") : NULL;
      if (cause != NULL && strcmp (cause, "other") != 0
          && hm_source_find (self->source, "cause", check->scope, cause) == NULL)
        return hm_entry_fail_key (check, field->key, error, "there is no cause “%s” in “%s”", cause, check->scope);
    }
  return TRUE;
}

static gboolean
write_cause_rows (HmWriter *self, CheckRows *rows, GPtrArray *causes, GError **error)
{
  for (guint i = 0; i < causes->len; i++)
    {
      const HmSourceEntry *cause = g_ptr_array_index (causes, i);
      double row[HM_ROWS_MAX_FINDINGS];
      if (!read_cause_row (rows, cause->id, row, error))
        return FALSE;
      for (guint k = 0; k < rows->n; k++)
        if (!hm_writer_put (self, error, "INSERT INTO likelihood (bench_check, cause, position, share) VALUES (?1, ?2, ?3, ?4)",
                            "iiid", rows->check->row, cause->row, (gint64) k, row[k]))
          return FALSE;
    }
  return TRUE;
}

/* The mixture of the causes that the layout has, weighted by how frequent they are. */
static gboolean
mix_rows (HmWriter *self, CheckRows *rows, GPtrArray *causes, const char *layout, double *out, GError **error)
{
  memset (out, 0, rows->n * sizeof *out);
  for (guint i = 0; i < causes->len; i++)
    {
      const HmSourceEntry *cause = g_ptr_array_index (causes, i);
      double rate = hm_writer_rate (self, cause->scope, cause->id, layout);
      double row[HM_ROWS_MAX_FINDINGS];
      if (!read_cause_row (rows, cause->id, row, error))
        return FALSE;
      hm_rows_add (out, row, rate, rows->n);
    }
  hm_rows_scale_to_one (out, rows->n);
  hm_rows_floor (out, rows->n);
  return TRUE;
}

static gboolean
write_other_row (HmWriter *self, CheckRows *rows, GPtrArray *causes, const char *layout, GError **error)
{
  double row[HM_ROWS_MAX_FINDINGS];
  gboolean found = FALSE;

  if (!read_row (rows, "Row-other", rows->fallback, &found, row, error))
    return FALSE;
  if (found)
    hm_rows_floor (row, rows->n);
  else if (!mix_rows (self, rows, causes, layout, row, error))
    return FALSE;
  for (guint k = 0; k < rows->n; k++)
    if (!hm_writer_put (self, error, "INSERT INTO likelihood_other (bench_check, layout, position, share) VALUES (?1, ?2, ?3, ?4)",
                        "itid", rows->check->row, layout, (gint64) k, row[k]))
      return FALSE;
  return TRUE;
}

gboolean
hm_write_check_rows (HmWriter *self, HmSourceEntry *check, const char * const *findings, const char * const *layouts, GError **error)
{
  g_autoptr (GPtrArray) causes = hm_source_list (self->source, "cause", check->scope);
  CheckRows rows = { check, findings, g_strv_length ((char **) findings), { 0 } };
  gboolean found = FALSE;

  if (!check_rows_have_causes (self, check, error)
      || !read_row (&rows, "Default", NULL, &found, rows.fallback, error))
    return FALSE;
  if (!found)
    return hm_entry_fail (check, error, "Default is missing: the row of the causes that have none of their own");
  if (!write_cause_rows (self, &rows, causes, error))
    return FALSE;
  for (guint i = 0; layouts[i] != NULL; i++)
    if (!write_other_row (self, &rows, causes, layouts[i], error))
      return FALSE;
  return TRUE;
}
