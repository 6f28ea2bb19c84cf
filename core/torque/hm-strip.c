/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-strip.h"

#include <string.h>

#define TAN_30 0.5773502691896257
#define BOLT_SHEAR_PER_TENSILE 0.6   /* common practice, no source */

/* Shear area a millimetre of engagement: @at is where the threads shear, @reach how far the other thread's pitch line is. */
static double
area_per_mm (double pitch, double at, double reach)
{
  return G_PI / pitch * at * (pitch / 2.0 + TAN_30 * reach);
}

static double
hole_area_per_mm (double pitch, double bolt_major_min, double hole_pitch_max)
{
  return area_per_mm (pitch, bolt_major_min, bolt_major_min - hole_pitch_max);
}

HmStripAreas
hm_strip_areas (const HmThread *thread, HmThreadClass bolt_class, HmThreadClass hole_class, HmLength engaged,
                const HmTables *tables)
{
  HmStripAreas areas = { 0.0, 0.0 };
  HmThreadLimits bolt, hole;
  double p;

  g_return_val_if_fail (thread != NULL && engaged.mm > 0.0, areas);
  if (!hm_thread_get_limits (thread, bolt_class, tables, &bolt, NULL)
      || !hm_thread_get_limits (thread, hole_class, tables, &hole, NULL))
    g_return_val_if_reached (areas);
  p = thread->pitch.mm;
  areas.hole_mm2 = engaged.mm * hole_area_per_mm (p, bolt.major_min.mm, hole.pitch_max.mm);
  areas.bolt_mm2 = engaged.mm * area_per_mm (p, hole.minor_max.mm, bolt.pitch_min.mm - hole.minor_max.mm);
  return areas;
}

const HmShearRow *
hm_strip_find_shear (const HmTables *tables, HmMaterial material)
{
  gsize n;
  const HmShearRow *rows;
  const char *name = hm_material_name (material);

  g_return_val_if_fail (tables != NULL, NULL);
  rows = hm_tables_get_shear (tables, &n);
  for (gsize i = 0; i < n; i++)
    if (g_strcmp0 (rows[i].material, name) == 0)
      return &rows[i];
  return NULL;
}

static HmStripAreas
usual_areas (const HmThread *thread, HmLength engaged, const HmTables *tables)
{
  return hm_strip_areas (thread, hm_thread_usual_class (thread->form, FALSE), hm_thread_usual_class (thread->form, TRUE),
                         engaged, tables);
}

HmStripCheck
hm_strip_check (const HmThread *thread, HmLength engaged, const HmStrengthRow *strength, HmStress shear, const HmTables *tables)
{
  HmStripCheck check = { 0 };
  HmStripAreas areas;

  g_return_val_if_fail (thread != NULL && strength != NULL && engaged.mm > 0.0, check);
  areas = usual_areas (thread, engaged, tables);
  check.bolt_breaks.newtons = strength->tensile.megapascals * hm_thread_stress_area_mm2 (thread);
  check.hole_strips.newtons = shear.megapascals * areas.hole_mm2;
  check.bolt_strips.newtons = BOLT_SHEAR_PER_TENSILE * strength->tensile.megapascals * areas.bolt_mm2;
  if (check.hole_strips.newtons < MIN (check.bolt_breaks.newtons, check.bolt_strips.newtons))
    check.weakest = HM_STRIP_HOLE_STRIPS;
  else if (check.bolt_strips.newtons < check.bolt_breaks.newtons)
    check.weakest = HM_STRIP_BOLT_STRIPS;
  else
    check.weakest = HM_STRIP_BOLT_BREAKS;
  return check;
}

HmLength
hm_strip_engagement (const HmThread *thread, HmForce load, HmStress shear, const HmTables *tables)
{
  HmLength one = { 1.0 };

  g_return_val_if_fail (thread != NULL && shear.megapascals > 0.0, (HmLength) { 0.0 });
  return (HmLength) { load.newtons / (shear.megapascals * usual_areas (thread, one, tables).hole_mm2) };
}

HmLength
hm_strip_engagement_from_limits (HmLength pitch, HmLength bolt_major_min, HmLength hole_pitch_max, HmForce load, HmStress shear)
{
  g_return_val_if_fail (pitch.mm > 0.0 && shear.megapascals > 0.0, (HmLength) { 0.0 });
  return (HmLength) { load.newtons / (shear.megapascals * hole_area_per_mm (pitch.mm, bolt_major_min.mm, hole_pitch_max.mm)) };
}
