/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fastener.h"

#include <string.h>

static const char * const friction_names[] = { "dry", "oiled", "zinc", "thread-locker", "anti-seize", NULL };
static const char * const material_names[] = { "steel", "cast-aluminium", "die-cast-aluminium", "plastic", "copper", NULL };
static const char * const pattern_names[] = { "none", "cross", "inline", "round", "rectangular", NULL };

G_STATIC_ASSERT (G_N_ELEMENTS (friction_names) == HM_FRICTION_N_STATES + 1);
G_STATIC_ASSERT (G_N_ELEMENTS (material_names) == HM_MATERIAL_N_MATERIALS + 1);
G_STATIC_ASSERT (G_N_ELEMENTS (pattern_names) == HM_PATTERN_N_PATTERNS + 1);

G_DEFINE_QUARK (hm-fastener-error-quark, hm_fastener_error)

static gboolean
find_word (const char *text, const char *what, const char * const *words, guint *out, GError **error)
{
  g_autofree char *accepted = NULL;
  g_autofree char *valid = NULL;

  for (guint i = 0; words[i] != NULL; i++)
    if (strcmp (text, words[i]) == 0)
      {
        *out = i;
        return TRUE;
      }
  accepted = g_strjoinv (", ", (char **) words);
  valid = g_utf8_make_valid (text, -1);
  g_set_error (error, HM_FASTENER_ERROR, HM_FASTENER_ERROR_WORD, "“%s” is not %s; there are: %s", valid, what, accepted);
  return FALSE;
}

gboolean
hm_friction_parse (const char *text, HmFriction *out, GError **error)
{
  guint found;

  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  if (!find_word (text, "a surface state", friction_names, &found, error))
    return FALSE;
  *out = (HmFriction) found;
  return TRUE;
}

gboolean
hm_material_parse (const char *text, HmMaterial *out, GError **error)
{
  guint found;

  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  if (!find_word (text, "a material to screw into", material_names, &found, error))
    return FALSE;
  *out = (HmMaterial) found;
  return TRUE;
}

gboolean
hm_pattern_parse (const char *text, HmPattern *out, GError **error)
{
  guint found;

  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  if (!find_word (text, "a tightening pattern", pattern_names, &found, error))
    return FALSE;
  *out = (HmPattern) found;
  return TRUE;
}

const char *
hm_friction_name (HmFriction self)
{
  g_return_val_if_fail (self < HM_FRICTION_N_STATES, NULL);
  return friction_names[self];
}

const char *
hm_material_name (HmMaterial self)
{
  g_return_val_if_fail (self < HM_MATERIAL_N_MATERIALS, NULL);
  return material_names[self];
}

const char *
hm_pattern_name (HmPattern self)
{
  g_return_val_if_fail (self < HM_PATTERN_N_PATTERNS, NULL);
  return pattern_names[self];
}

static gboolean
refuse_torque (const char *text, const char *reason, GError **error)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);

  g_set_error (error, HM_FASTENER_ERROR, HM_FASTENER_ERROR_TORQUE,
               "“%s” %s; write a range with its unit (5-7 N·m), computed, hand or manual", valid, reason);
  return FALSE;
}

gboolean
hm_torque_basis_parse (const char *text, HmTorqueBasis *basis, HmQuantityRange *range, GError **error)
{
  static const struct { const char *word; HmTorqueBasis basis; } words[] = {
    { "computed", HM_TORQUE_COMPUTED }, { "hand", HM_TORQUE_BY_HAND }, { "manual", HM_TORQUE_MANUAL_ONLY },
  };
  HmQuantityRange parsed;

  g_return_val_if_fail (text != NULL && basis != NULL && range != NULL, FALSE);
  for (gsize i = 0; i < G_N_ELEMENTS (words); i++)
    if (strcmp (text, words[i].word) == 0)
      {
        *basis = words[i].basis;
        return TRUE;
      }
  if (!hm_quantity_parse_range (text, HM_QUANTITY_TORQUE, HM_UNIT_NONE, &parsed, NULL))
    return refuse_torque (text, "is not a torque", error);
  if (parsed.low.value <= 0.0)
    return refuse_torque (text, "is not a torque above zero", error);
  *basis = HM_TORQUE_RANGE;
  *range = parsed;
  return TRUE;
}
