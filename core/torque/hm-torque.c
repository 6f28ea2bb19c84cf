/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-torque.h"

#include "hm-torque-limit.h"

#include <string.h>

#define SIZE_SLACK_MM 1e-3   /* a fraction of an inch in millimetres is not exact */

G_DEFINE_QUARK (hm-torque-error-quark, hm_torque_error)

/* "SAE Grade 5", "grade 5", "Class 8.8" -> "SAE 5", "8.8". */
static char *
normalize_class (const char *strength)
{
  g_autofree char *upper = g_ascii_strup (strength, -1);
  g_autoptr (GString) folded = g_string_new (g_strstrip (upper));
  gboolean is_sae = g_string_replace (folded, "SAE", "", 1) + g_string_replace (folded, "GRADE", "", 1) > 0;

  g_string_replace (folded, "J429", "", 1);
  g_string_replace (folded, "CLASS", "", 1);
  g_string_replace (folded, ",", ".", 1);
  g_strstrip (folded->str);
  return is_sae ? g_strdup_printf ("SAE %s", folded->str) : g_strdup (folded->str);
}

/* Sets @known when the class is there at another size. */
static const HmStrengthRow *
find_strength (const HmTables *tables, const char *strength, HmLength major, gboolean *known)
{
  gsize n;
  const HmStrengthRow *rows = hm_tables_get_strength (tables, &n);
  g_autofree char *wanted = normalize_class (strength);

  *known = FALSE;
  for (gsize i = 0; i < n; i++)
    if (strcmp (rows[i].name, wanted) == 0)
      {
        *known = TRUE;
        if (major.mm >= rows[i].from.mm - SIZE_SLACK_MM && major.mm <= rows[i].to.mm + SIZE_SLACK_MM)
          return &rows[i];
      }
  return NULL;
}

const HmStrengthRow *
hm_torque_find_strength (const HmTables *tables, const char *strength, const HmThread *thread, GError **error)
{
  gboolean known;
  const HmStrengthRow *row;
  g_autofree char *size = NULL;

  g_return_val_if_fail (tables != NULL && strength != NULL && thread != NULL, NULL);
  row = find_strength (tables, strength, thread->major, &known);
  if (row != NULL)
    return row;
  size = hm_thread_format (thread, &hm_format_default);
  if (strength[0] == '\0')
    g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_CLASS,
                 "the strength class of the %s is not known; read the marks on its head", size);
  else if (known)
    g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_THREAD,
                 "the standard gives no strength of class %s for %s", strength, size);
  else
    g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_CLASS,
                 "“%s” is not a strength class; write a property class (8.8), a grade (SAE 5) or A2-70", strength);
  return NULL;
}

gboolean
hm_torque_proof_stress (const HmTables *tables, const char *strength, const HmThread *thread, HmStress *out, GError **error)
{
  const HmStrengthRow *row = hm_torque_find_strength (tables, strength, thread, error);

  g_return_val_if_fail (out != NULL, FALSE);
  if (row == NULL)
    return FALSE;
  *out = row->proof;
  return TRUE;
}

const HmFrictionRow *
hm_torque_find_friction (const HmTables *tables, HmFriction friction)
{
  gsize n;
  const HmFrictionRow *rows = hm_tables_get_friction (tables, &n);
  const char *name = hm_friction_name (friction);

  for (gsize i = 0; i < n; i++)
    if (g_strcmp0 (rows[i].state, name) == 0)
      return &rows[i];
  return NULL;
}

HmForce
hm_torque_preload (const HmThread *thread, HmStress proof, double share_of_proof)
{
  g_return_val_if_fail (thread != NULL, (HmForce) { 0.0 });
  return (HmForce) { share_of_proof * proof.megapascals * hm_thread_stress_area_mm2 (thread) };
}

HmTorque
hm_torque_from_nut_factor (const HmThread *thread, HmForce preload, double nut_factor)
{
  g_return_val_if_fail (thread != NULL, (HmTorque) { 0.0 });
  return (HmTorque) { nut_factor * preload.newtons * thread->major.mm / 1000.0 };
}

static gboolean
compute (const HmTables *tables, const HmFastener *fastener, HmTorqueAnswer *out, GError **error)
{
  HmStress proof;
  HmForce preload;
  HmTorqueLimit limit;
  const HmThread *thread = &fastener->thread;
  const HmFrictionRow *friction = hm_torque_find_friction (tables, fastener->friction);

  if (!fastener->has_thread)
    {
      g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_THREAD, "%s has no thread to tighten", fastener->name);
      return FALSE;
    }
  if (friction == NULL)
    {
      g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                   "the table of friction has no row for “%s”", hm_friction_name (fastener->friction));
      return FALSE;
    }
  if (!hm_torque_proof_stress (tables, fastener->strength, thread, &proof, error))
    return FALSE;
  preload = hm_torque_preload (thread, proof, hm_tightening_share_usual);
  if (!hm_torque_limit_preload (tables, thread, fastener->into, (HmLength) { 0.0 }, &preload, &limit, error))
    return FALSE;
  out->provenance = limit.provenance;
  out->low = hm_torque_from_nut_factor (thread, preload, friction->nut_factor_low);
  out->target = hm_torque_from_nut_factor (thread, preload, friction->nut_factor);
  out->high = hm_torque_from_nut_factor (thread, preload, friction->nut_factor_high);
  return TRUE;
}

static void
take_range (const HmQuantityRange *range, HmTorqueAnswer *out)
{
  double low = hm_quantity_in (range->low, HM_UNIT_NEWTON_METRE);
  double high = hm_quantity_in (range->high, HM_UNIT_NEWTON_METRE);

  out->low.newton_metres = low;
  out->target.newton_metres = (low + high) / 2.0;
  out->high.newton_metres = high;
}

gboolean
hm_torque_for_fastener (const HmTables *tables, const HmFastener *fastener, HmTorqueAnswer *out, GError **error)
{
  HmTorqueAnswer answer = { 0 };

  g_return_val_if_fail (tables != NULL && fastener != NULL && out != NULL, FALSE);
  answer.basis = fastener->torque_basis;
  answer.provenance = fastener->torque_provenance;
  if (fastener->torque_basis == HM_TORQUE_COMPUTED && !compute (tables, fastener, &answer, error))
    return FALSE;
  if (fastener->torque_basis == HM_TORQUE_RANGE)
    take_range (&fastener->torque, &answer);
  *out = answer;
  return TRUE;
}

gboolean
hm_torque_from_range (const HmQuantityRange *range, HmProvenance provenance, HmTorqueAnswer *out, GError **error)
{
  HmTorqueAnswer answer = { .basis = HM_TORQUE_RANGE, .provenance = provenance };

  g_return_val_if_fail (range != NULL && out != NULL, FALSE);
  take_range (range, &answer);
  if (!(answer.low.newton_metres > 0.0))
    {
      g_set_error_literal (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                           "a torque is above zero; write it with its unit, as in “24 N·m” or “16-20 lbf·ft”");
      return FALSE;
    }
  *out = answer;
  return TRUE;
}

gboolean
hm_torque_for_special (const HmSpecialRow *row, HmTorqueAnswer *out, GError **error)
{
  HmTorqueAnswer answer = { 0 };
  HmQuantityRange range = { 0 };

  g_return_val_if_fail (row != NULL && out != NULL, FALSE);
  if (!hm_torque_basis_parse (row->torque, &answer.basis, &range, error))
    return FALSE;
  if (answer.basis == HM_TORQUE_RANGE)
    take_range (&range, &answer);
  answer.provenance = row->provenance;
  *out = answer;
  return TRUE;
}
