/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Quantities and provenance on their way into a report. */
#include "cli-report.h"

#include <glib/gi18n.h>

#include "hmui-tr.h"

HmQuantity
cli_quantity_length (HmLength length)
{
  return hm_quantity (HM_QUANTITY_LENGTH, length.mm, HM_UNIT_MM);
}

HmQuantity
cli_quantity_torque (HmTorque torque)
{
  return hm_quantity (HM_QUANTITY_TORQUE, torque.newton_metres, HM_UNIT_NEWTON_METRE);
}

HmQuantity
cli_quantity_force (HmForce force)
{
  return hm_quantity (HM_QUANTITY_FORCE, force.newtons, HM_UNIT_NEWTON);
}

HmQuantity
cli_quantity_stress (HmStress stress)
{
  return hm_quantity (HM_QUANTITY_STRESS, stress.megapascals, HM_UNIT_MEGAPASCAL);
}

HmQuantity
cli_quantity_ratio (double ratio)
{
  return hm_quantity (HM_QUANTITY_RATIO, ratio, HM_UNIT_NONE);
}

HmQuantity
cli_quantity_number (double number)
{
  return hm_quantity (HM_QUANTITY_NUMBER, number, HM_UNIT_NONE);
}

char *
cli_words_provenance (HmProvenance provenance)
{
  const char *kind = hmui_tr (hm_provenance_kind_name (provenance.kind));

  if (provenance.source == NULL || provenance.source[0] == '\0')
    return g_strdup (kind);
  return g_strdup_printf (_("%s: %s"), kind, hmui_tr (provenance.source));
}
