/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-write.h"

/* Incidents, and how far each raises the causes. */

static const HmShareWord incident_words[] = { { "strong", 0.37 }, { "clear", 0.16 }, { "mild", 0.05 } };

/* "frame-ground clear" of one Raises key. */
static gboolean
write_raise (HmWriter *self, HmSourceEntry *incident, const char *key, const char *complaint, const char *member,
             GHashTable *seen, GError **error)
{
  g_auto (GStrv) words = g_strsplit (member, " ", 2);
  HmSourceEntry *cause;
  double chance = 0;

  if (words[0] == NULL || words[1] == NULL)
    return hm_entry_fail_key (incident, key, error, "“%s” is not a cause with strong, clear, mild or a percentage", member);
  cause = hm_writer_resolve (self, incident, key, "cause", complaint, words[0], error);
  if (cause == NULL)
    return FALSE;
  if (!g_hash_table_add (seen, cause))
    return hm_entry_fail_key (incident, key, error, "the cause “%s” is there twice", words[0]);
  if (!hm_share_from_text (words[1], incident_words, G_N_ELEMENTS (incident_words), &chance, error))
    return hm_entry_fail_at (incident, key, error);
  return hm_writer_put (self, error, "INSERT INTO incident_raise (incident, cause, chance) VALUES (?1, ?2, ?3)",
                        "iid", incident->row, cause->row, chance);
}

static gboolean
write_raises_of (HmWriter *self, HmSourceEntry *incident, const char *complaint, guint *n_raised, GError **error)
{
  g_autofree char *key = g_strconcat ("Raises-", complaint, NULL);
  g_autoptr (GHashTable) seen = g_hash_table_new (NULL, NULL);
  g_auto (GStrv) members = NULL;

  if (!hm_entry_get_list (incident, key, NULL, &members, error))
    return FALSE;
  for (guint i = 0; members[i] != NULL; i++)
    if (!write_raise (self, incident, key, complaint, members[i], seen, error))
      return FALSE;
  *n_raised += g_hash_table_size (seen);
  return TRUE;
}

static gboolean
write_raises (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  g_autoptr (GPtrArray) complaints = hm_source_list (self->source, "complaint", NULL);
  guint n_raised = 0;

  for (guint i = 0; i < complaints->len; i++)
    {
      const HmSourceEntry *complaint = g_ptr_array_index (complaints, i);
      if (!write_raises_of (self, entry, complaint->id, &n_raised, error))
        return FALSE;
    }
  return n_raised > 0 || hm_entry_fail (entry, error, "it raises no cause of any complaint (Raises-COMPLAINT=cause class; …)");
}

gboolean
hm_write_incident (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *detail, *proof;

  if (!hm_entry_get_text (entry, "Detail", TRUE, &detail, error)
      || !hm_entry_get_text (entry, "Proof", FALSE, &proof, error)
      || !hm_writer_put (self, error, "INSERT INTO incident (entry, detail, proof) VALUES (?1, ?2, ?3)",
                         "itt", entry->row, detail, proof)
      || !write_raises (self, entry, error))
    return FALSE;
  return hm_writer_lines (self, entry, "Inspect", NULL, 0, error)
         && hm_writer_lines (self, entry, "Avoid", NULL, 0, error)
         && hm_writer_links (self, entry, "Cautions", "caution", "", NULL, error);
}
