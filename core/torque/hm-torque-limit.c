/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-torque-limit.h"

/* Judgements, common practice, no source: where the engaged length is not known, one and a half diameters is taken; the
 * hole has to hold more than the bolt pulls, in plastic twice as much because it creeps. */
#define ENGAGED_DIAMETERS 1.5
#define METAL_RESERVE 1.25
#define PLASTIC_RESERVE 2.0

/* TM 9-6115-604-34 (US Army): capscrews into aluminium, 30 percent or more below the torque for steel. */
#define ALUMINIUM_SHARE 0.7

static gboolean
is_aluminium (HmMaterial material)
{
  return material == HM_MATERIAL_ALUMINIUM_CAST || material == HM_MATERIAL_ALUMINIUM_DIE_CAST;
}

static HmTorqueLimit
limit_of (HmMaterial material, gboolean engaged_is_known, gboolean stripping_governs)
{
  const char *source = "from thread, strength class and friction";
  HmTorqueGoverns governs = HM_GOVERNS_PROOF;

  if (stripping_governs)
    {
      governs = HM_GOVERNS_STRIPPING;
      source = engaged_is_known ? "from what the thread in the hole holds over the engaged length, and friction"
                                : "from what the thread in the hole holds over one and a half diameters, and friction";
    }
  else if (is_aluminium (material))
    {
      governs = HM_GOVERNS_ALUMINIUM;
      source = "from thread, strength class and friction, less 30 % into aluminium (TM 9-6115-604-34)";
    }
  return (HmTorqueLimit) { governs, { HM_PROVENANCE_COMPUTED, source } };
}

HmLength
hm_torque_limit_engaged (const HmThread *thread, HmLength engaged)
{
  return engaged.mm > 0.0 ? engaged : (HmLength) { ENGAGED_DIAMETERS * thread->major.mm };
}

/* What the thread in the hole may be pulled with. */
static double
held_newtons (const HmTables *tables, const HmThread *thread, HmMaterial into, HmLength engaged, HmStress shear)
{
  double reserve = into == HM_MATERIAL_PLASTIC ? PLASTIC_RESERVE : METAL_RESERVE;
  HmStripAreas areas = hm_strip_areas (thread, hm_thread_usual_class (thread->form, FALSE),
                                       hm_thread_usual_class (thread->form, TRUE),
                                       hm_torque_limit_engaged (thread, engaged), tables);

  return shear.megapascals / reserve * areas.hole_mm2;
}

gboolean
hm_torque_limit_preload (const HmTables *tables, const HmThread *thread, HmMaterial into, HmLength engaged,
                         HmForce *preload, HmTorqueLimit *out, GError **error)
{
  const HmShearRow *shear = hm_strip_find_shear (tables, into);
  gboolean outlasts = into == HM_MATERIAL_STEEL && engaged.mm <= 0.0;   /* a steel nut or hole of the bolt's class */
  double holds;

  if (shear == NULL || shear->low.megapascals <= 0.0)
    {
      g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                   "the table of shear strengths has no row for “%s”", hm_material_name (into));
      return FALSE;
    }
  holds = held_newtons (tables, thread, into, engaged, shear->low);
  if (is_aluminium (into))
    preload->newtons *= ALUMINIUM_SHARE;
  *out = limit_of (into, engaged.mm > 0.0, !outlasts && holds < preload->newtons);
  if (!outlasts)
    preload->newtons = MIN (preload->newtons, holds);
  return TRUE;
}
