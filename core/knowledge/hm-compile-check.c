/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-rows.h"
#include "hm-compile-write.h"
#include "hm-knowledge-words.h"
#include "hm-limit-text.h"
#include <string.h>

/* Checks and their findings; the likelihoods are in hm-compile-check-rows.c. */

typedef struct { const char *reading, *unit, *normal_side, *picture, *red, *black; double meter_sd; } CheckText;

static gboolean
read_limit (HmSourceEntry *entry, HmLimit *out, GError **error)
{
  const char *low, *high;

  out->id = entry->id;
  return hm_entry_get_text (entry, "Low", FALSE, &low, error) && hm_entry_get_text (entry, "High", FALSE, &high, error)
         && hm_limit_from_text (low, high, out, error);
}

/* The edges must run one way, from the normal end on. */
static gboolean
check_edges (HmWriter *self, HmSourceEntry *check, HmQuantityKind kind, gboolean normal_above, guint n_findings, GError **error)
{
  g_auto (GStrv) ids = NULL;
  double before = 0;

  if (!hm_entry_get_list (check, "Edges", NULL, &ids, error))
    return FALSE;
  if (g_strv_length (ids) != n_findings - 1)
    return hm_entry_fail_key (check, "Edges", error, "there are %u limits, but between %u findings there must be %u",
                              g_strv_length (ids), n_findings, n_findings - 1);
  for (guint i = 0; ids[i] != NULL; i++)
    {
      HmSourceEntry *entry = hm_writer_resolve (self, check, "Edges", "limit", "", ids[i], error);
      HmLimit limit = { NULL };
      double edge = 0;
      if (entry == NULL)
        return FALSE;
      if (!read_limit (entry, &limit, error) || !hm_limit_edge (&limit, kind, normal_above, &edge, error))
        return hm_entry_fail_at (check, "Edges", error);
      if (i > 0 && (normal_above ? edge >= before : edge <= before))
        return hm_entry_fail_key (check, "Edges", error, "the limits must %s from one to the next, and “%s” does not",
                                  normal_above ? "fall" : "rise", ids[i]);
      before = edge;
    }
  return TRUE;
}

static gboolean
read_meter_sd (HmSourceEntry *check, HmQuantityKind kind, double *out, GError **error)
{
  const char *text;
  HmQuantity sd;

  if (!hm_entry_get_text (check, "MeterSd", TRUE, &text, error))
    return FALSE;
  if (!hm_quantity_parse (text, kind, HM_UNIT_NONE, &sd, error))
    return hm_entry_fail_at (check, "MeterSd", error);
  if (sd.value <= 0)
    return hm_entry_fail_key (check, "MeterSd", error, "“%s” is not above zero", text);
  *out = sd.value;
  return TRUE;
}

static gboolean
read_reading (HmWriter *self, HmSourceEntry *check, guint n_findings, CheckText *out, GError **error)
{
  HmQuantityKind kind;
  HmUnit unit;
  int found;

  if (!hm_entry_get_text (check, "Reading", FALSE, &out->reading, error))
    return FALSE;
  if (out->reading == NULL)
    return TRUE;
  found = hm_words_find_or_fail (hm_words_quantity_kind, "Reading", out->reading, error);
  if (found < 0)
    return hm_entry_fail_at (check, NULL, error);
  kind = (HmQuantityKind) found;
  if (!hm_entry_get_text (check, "Unit", kind != HM_QUANTITY_NUMBER, &out->unit, error)
      || !hm_entry_get_text (check, "NormalSide", TRUE, &out->normal_side, error))
    return FALSE;
  if (out->unit != NULL && !hm_words_unit (out->unit, kind, &unit, error))
    return hm_entry_fail_at (check, "Unit", error);
  found = hm_words_find_or_fail (hm_words_normal_side, "NormalSide", out->normal_side, error);
  if (found < 0)
    return hm_entry_fail_at (check, NULL, error);
  return read_meter_sd (check, kind, &out->meter_sd, error)
         && check_edges (self, check, kind, found == 1, n_findings, error)
         && hm_writer_links (self, check, "Edges", "limit", "", NULL, error);
}

static gboolean
read_probe (HmWriter *self, HmSourceEntry *check, const char *key, const char *picture, const char **out, GError **error)
{
  if (!hm_entry_get_text (check, key, FALSE, out, error))
    return FALSE;
  if (*out != NULL && picture == NULL)
    return hm_entry_fail_key (check, key, error, "there is no Picture to find the point “%s” in", *out);
  return *out == NULL || hm_writer_resolve (self, check, key, "point", picture, *out, error) != NULL;
}

static gboolean
read_picture (HmWriter *self, HmSourceEntry *check, CheckText *out, GError **error)
{
  if (!hm_entry_get_text (check, "Picture", FALSE, &out->picture, error))
    return FALSE;
  if (out->picture != NULL && hm_writer_resolve (self, check, "Picture", "picture", "", out->picture, error) == NULL)
    return FALSE;
  return read_probe (self, check, "RedPoint", out->picture, &out->red, error)
         && read_probe (self, check, "BlackPoint", out->picture, &out->black, error);
}

static gboolean
read_findings (HmWriter *self, HmSourceEntry *check, char ***out, GError **error)
{
  g_autofree char *scope = g_strjoin ("/", check->scope, check->id, NULL);
  g_auto (GStrv) ids = NULL;
  guint n;

  if (!hm_entry_get_list (check, "Findings", NULL, &ids, error))
    return FALSE;
  n = g_strv_length (ids);
  if (n < 2 || n > HM_ROWS_MAX_FINDINGS)
    return hm_entry_fail_key (check, "Findings", error, "a check has 2 to %d findings, and this one %u", HM_ROWS_MAX_FINDINGS, n);
  for (guint i = 0; i < n; i++)
    if (hm_source_find (self->source, "finding", scope, ids[i]) == NULL)
      return hm_entry_fail_key (check, "Findings", error, "there is no entry [finding %s %s]", check->id, ids[i]);
  *out = g_steal_pointer (&ids);
  return TRUE;
}

/* The lists, and for which layouts the check is; whether open and shut steps agree is seen by hm-lint.c. */
static gboolean
write_lists (HmWriter *self, HmSourceEntry *check, const char * const *layouts, GError **error)
{
  for (guint i = 0; layouts[i] != NULL; i++)
    {
      HmSourceEntry *layout = hm_source_find (self->source, "layout", "", layouts[i]);
      if (!hm_writer_put (self, error, "INSERT INTO link (entry, layout, role, position, target) VALUES (?1, '', 'Layouts', ?2, ?3)",
                          "iii", check->row, (gint64) i, layout->row))
        return FALSE;
    }
  return hm_writer_lines (self, check, "Do", layouts, 1, error)
         && hm_writer_minutes (self, check, "Time", layouts, error)
         && hm_writer_links (self, check, "Tools", "tool", "", layouts, error)
         && hm_writer_links (self, check, "Access", "access", NULL, layouts, error)
         && hm_writer_links (self, check, "Closed", "access", NULL, layouts, error)
         && hm_writer_links (self, check, "Cautions", "caution", "", layouts, error);
}

gboolean
hm_write_check (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  g_auto (GStrv) layouts = hm_compile_check_layouts (self->source, entry, error);
  g_auto (GStrv) findings = NULL;
  CheckText text = { NULL };

  if (layouts == NULL || !read_findings (self, entry, &findings, error)
      || !read_reading (self, entry, g_strv_length (findings), &text, error)
      || !read_picture (self, entry, &text, error))
    return FALSE;
  return hm_writer_put (self, error, "INSERT INTO bench_check (entry, reading, unit, normal_side, meter_sd, picture, red_point,"
                        " black_point) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)", "itttdttt", entry->row, text.reading,
                        text.unit, text.normal_side, text.meter_sd, text.picture, text.red, text.black)
         && write_lists (self, entry, (const char * const *) layouts, error)
         && hm_write_check_rows (self, entry, (const char * const *) findings, (const char * const *) layouts, error);
}

gboolean
hm_write_finding (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  g_auto (GStrv) scope = g_strsplit (entry->scope, "/", 2);
  HmSourceEntry *check = hm_source_find (self->source, "check", scope[0], scope[1]);
  const char *means;
  g_auto (GStrv) findings = NULL;
  int position;

  if (check == NULL)
    return hm_entry_fail (entry, error, "there is no check “%s” in “%s”", scope[1], scope[0]);
  if (!hm_entry_get_list (check, "Findings", NULL, &findings, error)
      || !hm_entry_get_text (entry, "Means", TRUE, &means, error))
    return FALSE;
  position = hm_words_find ((const char * const *) findings, entry->id);
  if (position < 0)
    return hm_entry_fail (entry, error, "the check “%s” does not list this finding in Findings", scope[1]);
  return hm_writer_put (self, error, "INSERT INTO finding (entry, bench_check, position, means) VALUES (?1, ?2, ?3, ?4)",
                        "iiit", entry->row, check->row, (gint64) position, means);
}
