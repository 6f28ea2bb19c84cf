/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fastener-text.h"
#include "hm-knowledge-words.h"
#include "hm-knowledge.h"

static gboolean
read_thread (const char *text, const HmTables *tables, HmFastener *out, GError **error)
{
  if (g_strcmp0 (text, "none") == 0)
    return TRUE;
  out->has_thread = TRUE;
  if (hm_thread_parse (text, tables, &out->thread, error))
    return TRUE;
  g_prefix_error (error, "Thread: ");
  return FALSE;
}

static gboolean
read_drives (const char *text, HmFastener *out, GError **error)
{
  g_auto (GStrv) parts = g_strsplit (text, ";", -1);

  for (guint i = 0; parts[i] != NULL; i++)
    {
      if (*g_strstrip (parts[i]) == '\0')
        continue;
      if (out->n_drives == HM_FASTENER_MAX_DRIVES)
        return hm_words_refuse (error, "Drives: a fastener has at most %d", HM_FASTENER_MAX_DRIVES);
      if (!hm_drive_parse (parts[i], &out->drives[out->n_drives], error))
        {
          g_prefix_error (error, "Drives: ");
          return FALSE;
        }
      out->n_drives++;
    }
  return out->n_drives > 0 || hm_words_refuse (error, "Drives: no drive is named (“hand” when no tool turns it)");
}

static gboolean
read_torque_range (const HmFastenerText *text, HmFastener *out, GError **error)
{
  out->torque_basis = HM_TORQUE_RANGE;
  if (!hm_quantity_parse_range (text->torque, HM_QUANTITY_TORQUE, HM_UNIT_NONE, &out->torque, error))
    {
      g_prefix_error (error, "Torque (a range with its unit, “computed”, “hand” or “manual”): ");
      return FALSE;
    }
  if (text->torque_provenance == NULL)
    return hm_words_refuse (error, "a Torque range needs TorqueProvenance");
  return hm_provenance_parse (text->torque_provenance, &out->torque_provenance)
         || hm_words_refuse (error, "TorqueProvenance “%s” is not a provenance", text->torque_provenance);
}

static gboolean
read_torque (const HmFastenerText *text, HmFastener *out, GError **error)
{
  out->torque_provenance = out->provenance;
  if (g_strcmp0 (text->torque, "hand") == 0)
    out->torque_basis = HM_TORQUE_BY_HAND;
  else if (g_strcmp0 (text->torque, "manual") == 0)
    out->torque_basis = HM_TORQUE_MANUAL_ONLY;
  else if (g_strcmp0 (text->torque, "computed") == 0)
    {
      out->torque_basis = HM_TORQUE_COMPUTED;
      out->torque_provenance = (HmProvenance) { HM_PROVENANCE_COMPUTED, "thread, strength class and friction" };
      if (!out->has_thread || text->strength == NULL)
        return hm_words_refuse (error, "Torque=computed needs a Thread and a Strength");
    }
  else
    return read_torque_range (text, out, error);
  return text->torque_provenance == NULL || hm_words_refuse (error, "TorqueProvenance stands without a Torque range");
}

static gboolean
read_words (const HmFastenerText *text, HmFastener *out, GError **error)
{
  int state = hm_words_find_or_fail (hm_words_friction, "State", text->state != NULL ? text->state : "dry", error);
  int into, pattern;

  if (state < 0)
    return FALSE;
  into = hm_words_find_or_fail (hm_words_material, "Into", text->into != NULL ? text->into : "steel", error);
  if (into < 0)
    return FALSE;
  pattern = hm_words_find_or_fail (hm_words_pattern, "Pattern", text->pattern != NULL ? text->pattern : "none", error);
  if (pattern < 0)
    return FALSE;
  out->friction = (HmFriction) state;
  out->into = (HmMaterial) into;
  out->pattern = (HmPattern) pattern;
  return TRUE;
}

gboolean
hm_fastener_from_text (const HmFastenerText *text, const HmTables *tables, HmFastener *out, GError **error)
{
  HmFastener read = { .id = text->id, .name = text->name, .where = text->where, .count = text->count,
                      .strength = text->strength != NULL ? text->strength : "" };

  if (text->provenance == NULL || !hm_provenance_parse (text->provenance, &read.provenance))
    return hm_words_refuse (error, "Provenance “%s” is not a provenance", text->provenance != NULL ? text->provenance : "");
  if (!read_thread (text->thread, tables, &read, error) || !read_drives (text->drives, &read, error)
      || !read_torque (text, &read, error) || !read_words (text, &read, error))
    return FALSE;
  *out = read;
  return TRUE;
}
