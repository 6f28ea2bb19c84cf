/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-limit-text.h"
#include "hm-knowledge-words.h"
#include "hm-knowledge.h"

static gboolean
read_end (const char *text, const char *key, gboolean *has, HmQuantity *out, GError **error)
{
  HmQuantityRange range;

  *has = text != NULL;
  if (text == NULL)
    return TRUE;
  if (!hm_quantity_parse_any (text, &range, error))
    {
      g_prefix_error (error, "%s: ", key);
      return FALSE;
    }
  if (range.low.value < range.high.value)
    {
      g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "%s: “%s” is a range, not one value", key, text);
      return FALSE;
    }
  *out = range.low;
  return TRUE;
}

gboolean
hm_limit_from_text (const char *low, const char *high, HmLimit *out, GError **error)
{
  HmLimit read = *out;

  if (!read_end (low, "Low", &read.has_low, &read.low, error)
      || !read_end (high, "High", &read.has_high, &read.high, error))
    return FALSE;
  if (!read.has_low && !read.has_high)
    {
      g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "there is neither a Low nor a High");
      return FALSE;
    }
  if (read.has_low && read.has_high && (read.low.kind != read.high.kind || read.low.value >= read.high.value))
    {
      g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT,
                   "Low “%s” and High “%s” are not of one kind in rising order", low, high);
      return FALSE;
    }
  *out = read;
  return TRUE;
}

gboolean
hm_limit_edge (const HmLimit *self, HmQuantityKind kind, gboolean normal_above, double *out, GError **error)
{
  const HmQuantity *end = normal_above ? &self->low : &self->high;

  if (!(normal_above ? self->has_low : self->has_high))
    {
      g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "the limit “%s” has no %s, which NormalSide=%s asks for",
                   self->id, normal_above ? "Low" : "High", hm_words_normal_side[normal_above ? 1 : 0]);
      return FALSE;
    }
  if (end->kind != kind)
    {
      g_set_error (error, HM_KNOWLEDGE_ERROR, HM_KNOWLEDGE_ERROR_TEXT, "the limit “%s” is a %s and not a %s",
                   self->id, hm_words_quantity_kind[end->kind], hm_words_quantity_kind[kind]);
      return FALSE;
    }
  *out = end->value;
  return TRUE;
}
