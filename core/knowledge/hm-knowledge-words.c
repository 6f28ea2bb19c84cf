/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-knowledge-words.h"
#include "hm-fastener.h"
#include "hm-knowledge.h"

const char * const hm_words_friction[] = { "dry", "oiled", "zinc", "thread-locker", "anti-seize", NULL };
const char * const hm_words_material[] = { "steel", "cast-aluminium", "die-cast-aluminium", "plastic", "copper", NULL };
const char * const hm_words_pattern[] = { "none", "cross", "inline", "round", "rectangular", NULL };
const char * const hm_words_symbol[] = { "battery", "switch", "fuse", "relay-coil", "relay-contact", "motor",
                                         "frame-ground", "lamp", "junction", "terminal", NULL };
const char * const hm_words_quantity_kind[] = {
  "number", "length", "torque", "force", "stress", "pressure", "voltage", "current", "resistance", "speed",
  "temperature", "duration", "frequency", "ratio", "area", NULL
};
const char * const hm_words_normal_side[] = { "below", "above", NULL };
const char * const hm_words_yes_no[] = { "no", "yes", NULL };

G_STATIC_ASSERT (G_N_ELEMENTS (hm_words_friction) == HM_FRICTION_N_STATES + 1);
G_STATIC_ASSERT (G_N_ELEMENTS (hm_words_material) == HM_MATERIAL_COPPER + 2);
G_STATIC_ASSERT (G_N_ELEMENTS (hm_words_pattern) == HM_PATTERN_RECTANGULAR + 2);
G_STATIC_ASSERT (G_N_ELEMENTS (hm_words_symbol) == HM_SYMBOL_TERMINAL + 2);
G_STATIC_ASSERT (G_N_ELEMENTS (hm_words_quantity_kind) == HM_QUANTITY_N_KINDS + 1);

int
hm_words_find (const char * const *words, const char *text)
{
  for (int i = 0; words[i] != NULL; i++)
    if (g_strcmp0 (words[i], text) == 0)
      return i;
  return -1;
}

int
hm_words_find_or_fail (const char * const *words, const char *key, const char *text, GError **error)
{
  int found = hm_words_find (words, text);

  if (found < 0)
    {
      g_autofree char *choices = g_strjoinv (", ", (char **) words);
      g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT,
                   "%s “%s” is not one of: %s", key, text != NULL ? text : "", choices);
    }
  return found;
}

gboolean
hm_words_unit (const char *text, HmQuantityKind kind, HmUnit *out, GError **error)
{
  g_autofree char *one = g_strconcat ("1 ", text, NULL);
  HmQuantity parsed;

  if (!hm_quantity_parse (one, kind, HM_UNIT_NONE, &parsed, error))
    return FALSE;
  *out = parsed.unit;
  return TRUE;
}

gboolean
hm_words_refuse (GError **error, const char *format, ...)
{
  va_list arguments;
  g_autofree char *message = NULL;

  va_start (arguments, format);
  message = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_set_error_literal (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, message);
  return FALSE;
}
