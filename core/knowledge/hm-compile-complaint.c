/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-write.h"
#include <string.h>

/* Complaints, their causes and remedies. */

static const HmShareWord rate_words[] = { { "high", 6 }, { "medium", 2 }, { "low", 0.7 } };

gboolean
hm_write_complaint (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *owner, *escalate;
  double other_share = 0;
  guint max_batch = 0, rank = 0;
  g_auto (GStrv) layouts = hm_writer_layouts (self, entry->id, error);

  return layouts != NULL && hm_entry_get_text (entry, "Owner", TRUE, &owner, error)
         && hm_entry_get_text (entry, "Escalate", TRUE, &escalate, error)
         && hm_entry_get_share (entry, "OtherShare", &other_share, error)
         && hm_entry_get_whole (entry, "MaxBatch", 1, 4, &max_batch, error)
         && hm_entry_get_whole (entry, "Order", 1, 99, &rank, error)
         && hm_writer_put (self, error, "INSERT INTO complaint (entry, owner_words, other_share, escalate, max_batch, rank)"
                           " VALUES (?1, ?2, ?3, ?4, ?5, ?6)", "itdtii", entry->row, owner, other_share, escalate,
                           (gint64) max_batch, (gint64) rank)
         && hm_writer_links (self, entry, "Layouts", "layout", "", NULL, error)
         && hm_writer_lines (self, entry, "Verify", NULL, 1, error)
         && hm_writer_minutes (self, entry, "VerifyTime", NULL, error)
         && hm_writer_minutes (self, entry, "EscalateTime", NULL, error);
}

/* "rider high" into the table of rates. */
static gboolean
read_rate (HmWriter *self, HmSourceEntry *cause, const char *member, char **layouts, GError **error)
{
  g_auto (GStrv) words = g_strsplit (member, " ", 2);

  if (words[0] == NULL || words[1] == NULL)
    return hm_entry_fail_key (cause, "Rate", error, "“%s” is not a layout with high, medium or low", member);
  if (!g_strv_contains ((const char * const *) layouts, words[0]))
    return hm_entry_fail_key (cause, "Rate", error, "the complaint does not cover the layout “%s”", words[0]);
  if (hm_writer_rate (self, cause->scope, cause->id, words[0]) > 0)
    return hm_entry_fail_key (cause, "Rate", error, "the layout “%s” is there twice", words[0]);
  for (gsize i = 0; i < G_N_ELEMENTS (rate_words); i++)
    if (strcmp (g_strstrip (words[1]), rate_words[i].word) == 0)
      {
        double *rate = g_new (double, 1);
        *rate = rate_words[i].share;
        g_hash_table_insert (self->rates, g_strjoin ("/", cause->scope, cause->id, words[0], NULL), rate);
        return TRUE;
      }
  return hm_entry_fail_key (cause, "Rate", error, "“%s” is not one of: high, medium, low", words[1]);
}

static gboolean
read_rates_of_cause (HmWriter *self, HmSourceEntry *cause, GError **error)
{
  g_auto (GStrv) layouts = hm_writer_layouts (self, cause->scope, error);
  g_auto (GStrv) members = NULL;

  if (layouts == NULL || !hm_entry_get_list (cause, "Rate", NULL, &members, error))
    return FALSE;
  if (strcmp (cause->id, "other") == 0)
    return hm_entry_fail (cause, error, "“other” is taken: it stands for something not listed");
  if (members[0] == NULL)
    return hm_entry_fail (cause, error, "Rate is missing: a cause that no layout has is of no use");
  for (guint i = 0; members[i] != NULL; i++)
    if (!read_rate (self, cause, members[i], layouts, error))
      return FALSE;
  return TRUE;
}

/* A complaint that covers a layout needs a cause there. */
static gboolean
check_covered (HmWriter *self, HmSourceEntry *complaint, GError **error)
{
  g_auto (GStrv) layouts = hm_writer_layouts (self, complaint->id, error);
  g_autoptr (GPtrArray) causes = hm_source_list (self->source, "cause", complaint->id);

  for (guint i = 0; layouts != NULL && layouts[i] != NULL; i++)
    {
      gboolean covered = FALSE;
      for (guint j = 0; j < causes->len && !covered; j++)
        {
          const HmSourceEntry *cause = g_ptr_array_index (causes, j);
          covered = hm_writer_rate (self, complaint->id, cause->id, layouts[i]) > 0;
        }
      if (!covered)
        return hm_entry_fail_key (complaint, "Layouts", error, "no cause has a Rate for the layout “%s”", layouts[i]);
    }
  return layouts != NULL;
}

gboolean
hm_compile_read_rates (HmWriter *self, GError **error)
{
  g_autoptr (GPtrArray) causes = hm_source_list (self->source, "cause", NULL);
  g_autoptr (GPtrArray) complaints = hm_source_list (self->source, "complaint", NULL);

  for (guint i = 0; i < causes->len; i++)
    if (!read_rates_of_cause (self, g_ptr_array_index (causes, i), error))
      return FALSE;
  for (guint i = 0; i < complaints->len; i++)
    if (!check_covered (self, g_ptr_array_index (complaints, i), error))
      return FALSE;
  return TRUE;
}

static gboolean
uses_remedy (const HmWriter *self, HmSourceEntry *cause, const char *remedy, const char *layout)
{
  return g_strcmp0 (hm_entry_get (cause, "Remedy", NULL), remedy) == 0
         && hm_writer_rate (self, cause->scope, cause->id, layout) > 0;
}

/* The layouts on which a remedy is used: those of its causes. */
static char **
layouts_of_remedy (HmWriter *self, const HmSourceEntry *remedy, GError **error)
{
  g_auto (GStrv) all = hm_writer_layouts (self, remedy->scope, error);
  g_autoptr (GPtrArray) causes = hm_source_list (self->source, "cause", remedy->scope);
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();

  for (guint i = 0; all != NULL && all[i] != NULL; i++)
    {
      gboolean used = FALSE;
      for (guint j = 0; j < causes->len && !used; j++)
        used = uses_remedy (self, g_ptr_array_index (causes, j), remedy->id, all[i]);
      if (used)
        g_strv_builder_add (builder, all[i]);
    }
  return all != NULL ? g_strv_builder_end (builder) : NULL;
}

gboolean
hm_write_remedy (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  g_auto (GStrv) used_on = layouts_of_remedy (self, entry, error);
  const char * const *layouts = (const char * const *) used_on;

  if (used_on == NULL)
    return FALSE;
  if (used_on[0] == NULL)
    return hm_entry_fail (entry, error, "no cause names this remedy");
  return hm_writer_put (self, error, "INSERT INTO remedy (entry) VALUES (?1)", "i", entry->row)
         && hm_writer_lines (self, entry, "Do", layouts, 1, error)
         && hm_writer_lines (self, entry, "Part", layouts, 0, error)
         && hm_writer_lines (self, entry, "After", layouts, 0, error)
         && hm_writer_minutes (self, entry, "Time", layouts, error)
         && hm_writer_links (self, entry, "Access", "access", NULL, layouts, error)
         && hm_writer_links (self, entry, "Fasteners", "fastener", NULL, layouts, error)
         && hm_writer_links (self, entry, "Tools", "tool", "", layouts, error)
         && hm_writer_links (self, entry, "Cautions", "caution", "", layouts, error);
}

gboolean
hm_write_cause (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *detail, *remedy_id, *tell_owner;
  HmSourceEntry *remedy;
  g_auto (GStrv) layouts = hm_writer_layouts (self, entry->scope, error);

  if (layouts == NULL || !hm_entry_get_text (entry, "Detail", TRUE, &detail, error)
      || !hm_entry_get_text (entry, "Remedy", TRUE, &remedy_id, error)
      || !hm_entry_get_text (entry, "TellOwner", FALSE, &tell_owner, error))
    return FALSE;
  remedy = hm_writer_resolve (self, entry, "Remedy", "remedy", entry->scope, remedy_id, error);
  if (remedy == NULL
      || !hm_writer_put (self, error, "INSERT INTO cause (entry, detail, remedy, tell_owner) VALUES (?1, ?2, ?3, ?4)",
                         "itit", entry->row, detail, remedy->row, tell_owner))
    return FALSE;
  for (guint i = 0; layouts[i] != NULL; i++)
    {
      double rate = hm_writer_rate (self, entry->scope, entry->id, layouts[i]);
      if (rate > 0 && !hm_writer_put (self, error, "INSERT INTO cause_rate (cause, layout, rate) VALUES (?1, ?2, ?3)",
                                      "itd", entry->row, layouts[i], rate))
        return FALSE;
    }
  return hm_writer_lines (self, entry, "LookAlso", (const char * const *) layouts, 0, error);
}
