/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-knowledge-words.h"
#include "hm-knowledge.h"
#include "hm-source-entry.h"
#include <math.h>
#include <string.h>

/* The values of an entry that are more than text: declared in hm-source-entry.h. */

static const char *
get_required (HmSourceEntry *self, const char *key, const char *layout, GError **error)
{
  const char *value = hm_entry_get (self, key, layout);

  if (value != NULL && *value != '\0')
    return value;
  if (layout == NULL)
    hm_entry_fail (self, error, "%s is missing", key);
  else
    hm_entry_fail (self, error, "%s is missing (or %s-%s, for that layout)", key, key, layout);
  return NULL;
}

gboolean
hm_entry_get_minutes (HmSourceEntry *self, const char *key, const char *layout, double *out, GError **error)
{
  const char *value = get_required (self, key, layout, error);
  HmQuantity duration;

  if (value == NULL)
    return FALSE;
  if (!hm_quantity_parse (value, HM_QUANTITY_DURATION, HM_UNIT_NONE, &duration, error))
    return hm_entry_fail_at (self, key, error);
  if (duration.value < 0)
    return hm_entry_fail_key (self, key, error, "“%s” is less than no time", value);
  *out = duration.value;
  return TRUE;
}

gboolean
hm_share_from_text (const char *text, const HmShareWord *words, gsize n_words, double *out, GError **error)
{
  g_autofree char *bare = g_strdup (text);
  gsize length = strlen (g_strstrip (bare));
  char *end = NULL;
  double percent;

  for (gsize i = 0; i < n_words; i++)
    if (strcmp (bare, words[i].word) == 0)
      {
        *out = words[i].share;
        return TRUE;
      }
  if (length > 0 && bare[length - 1] == '%')
    bare[length - 1] = '\0';
  g_strchomp (bare);
  percent = g_ascii_strtod (bare, &end);
  if (end == bare || *end != '\0' || !isfinite (percent))
    {
      g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT,
                   "“%s” is neither a percentage nor one of the words for one", text);
      return FALSE;
    }
  if (percent <= 0 || percent >= 100)
    {
      g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT,
                   "“%s” must lie between 0 and 100 %%: nothing here is certain", text);
      return FALSE;
    }
  *out = percent / 100.0;
  return TRUE;
}

gboolean
hm_entry_get_share (HmSourceEntry *self, const char *key, double *out, GError **error)
{
  const char *value = get_required (self, key, NULL, error);

  if (value == NULL)
    return FALSE;
  if (strchr (value, '%') == NULL)
    return hm_entry_fail_key (self, key, error, "“%s” has no unit; write a percentage such as “5 %%”", value);
  return hm_share_from_text (value, NULL, 0, out, error) || hm_entry_fail_at (self, key, error);
}

gboolean
hm_entry_get_whole (HmSourceEntry *self, const char *key, guint low, guint high, guint *out, GError **error)
{
  const char *value = get_required (self, key, NULL, error);
  guint64 number;

  if (value == NULL)
    return FALSE;
  if (!g_ascii_string_to_unsigned (value, 10, low, high, &number, NULL))
    return hm_entry_fail_key (self, key, error, "“%s” is not a whole number from %u to %u, without unit", value, low, high);
  *out = (guint) number;
  return TRUE;
}

gboolean
hm_entry_get_yes_no (HmSourceEntry *self, const char *key, gboolean required, gboolean *out, GError **error)
{
  const char *value = NULL;
  int found;

  if (!hm_entry_get_text (self, key, required, &value, error))
    return FALSE;
  found = value != NULL ? hm_words_find (hm_words_yes_no, value) : 0;
  if (found < 0)
    return hm_entry_fail_key (self, key, error, "“%s” is neither yes nor no", value);
  *out = found == 1;
  return TRUE;
}

gboolean
hm_entry_get_provenance (HmSourceEntry *self, const char **out, GError **error)
{
  const char *value = get_required (self, "Provenance", NULL, error);
  HmProvenance provenance;

  if (value == NULL)
    return FALSE;
  if (!hm_provenance_parse (value, &provenance) || provenance.kind == HM_PROVENANCE_SPEC_SHEET)
    return hm_entry_fail_key (self, "Provenance", error,
                              "“%s” is not one of: common practice; published: SOURCE; standard: SOURCE; computed: FROM WHAT", value);
  *out = value;
  return TRUE;
}
