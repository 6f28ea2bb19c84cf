/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-torque-limit.h"

#include "hm-strip.h"

/* Judgements, common practice, no source: the engaged length is not known, one and a half diameters is taken; the hole
 * has to hold more than the bolt pulls, in plastic twice as much because it creeps. */
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

static HmProvenance
source_of (HmMaterial material, gboolean stripping_governs)
{
  const char *source = "from thread, strength class and friction";

  if (stripping_governs)
    source = "from what the thread in the hole holds over one and a half diameters, and friction";
  else if (is_aluminium (material))
    source = "from thread, strength class and friction, less 30 % into aluminium (TM 9-6115-604-34)";
  return (HmProvenance) { HM_PROVENANCE_COMPUTED, source };
}

gboolean
hm_torque_limit_preload (const HmTables *tables, const HmFastener *fastener, HmForce *preload,
                         HmProvenance *provenance, GError **error)
{
  const HmThread *thread = &fastener->thread;
  HmLength engaged = { ENGAGED_DIAMETERS * thread->major.mm };
  double reserve = fastener->into == HM_MATERIAL_PLASTIC ? PLASTIC_RESERVE : METAL_RESERVE;
  const HmShearRow *shear = hm_strip_find_shear (tables, fastener->into);
  double holds;

  if (shear == NULL || shear->low.megapascals <= 0.0)
    {
      g_set_error (error, HM_TORQUE_ERROR, HM_TORQUE_ERROR_NOT_COMPUTABLE,
                   "the table of shear strengths has no row for “%s”", hm_material_name (fastener->into));
      return FALSE;
    }
  holds = shear->low.megapascals / reserve
          * hm_strip_areas (thread, hm_thread_usual_class (thread->form, FALSE),
                            hm_thread_usual_class (thread->form, TRUE), engaged, tables).hole_mm2;
  if (is_aluminium (fastener->into))
    preload->newtons *= ALUMINIUM_SHARE;
  *provenance = source_of (fastener->into, fastener->into != HM_MATERIAL_STEEL && holds < preload->newtons);
  if (fastener->into != HM_MATERIAL_STEEL)   /* a steel nut or hole of its class outlasts the bolt */
    preload->newtons = MIN (preload->newtons, holds);
  return TRUE;
}
