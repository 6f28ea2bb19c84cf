/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-thread-limits.h"
#include "hm-torque.h"
G_BEGIN_DECLS

/*
 * Stripping: shear of the threads over the engaged length. Areas by ASME B1.1, appendix B, and FED-STD-H28/2, appendix B:
 *   hole:  AS = π n LE ds_min [1 / 2n + tan 30° (ds_min − En_max)]
 *   bolt:  AS = π n LE Kn_max [1 / 2n + tan 30° (Es_min − Kn_max)]
 * with the limits of size of the class: ds_min major and Es_min pitch diameter of the bolt, En_max pitch and Kn_max minor
 * diameter of the hole; n = 1 / P.
 */

/** HmStripAreas: mm². */
typedef struct { double hole_mm2, bolt_mm2; } HmStripAreas;

/**
 * hm_strip_areas:
 * @bolt_class, @hole_class: of the thread's own form (a class of the other form is a programming error)
 * @engaged: length of full threads that meet, above 0
 */
HmStripAreas hm_strip_areas (const HmThread *thread, HmThreadClass bolt_class, HmThreadClass hole_class, HmLength engaged,
                             const HmTables *tables);

/** hm_strip_find_shear: shear strengths of a material; borrowed, NULL if the table lacks it. */
const HmShearRow *hm_strip_find_shear (const HmTables *tables, HmMaterial material);

/** HmStripWeakest: what gives first when the bolt is overtightened. */
typedef enum { HM_STRIP_BOLT_BREAKS, HM_STRIP_HOLE_STRIPS, HM_STRIP_BOLT_STRIPS } HmStripWeakest;

/**
 * HmStripCheck: loads at which each gives way. A plain value.
 * @bolt_breaks: tensile strength on the stress area
 * @bolt_strips: shear strength of the bolt taken as 0.6 of tensile (common practice, no source)
 */
typedef struct { HmForce bolt_breaks, hole_strips, bolt_strips; HmStripWeakest weakest; } HmStripCheck;

/** hm_strip_check: usual classes of thread. @strength gives the tensile strength, @shear that of the hole's material. */
HmStripCheck hm_strip_check (const HmThread *thread, HmLength engaged, const HmStrengthRow *strength, HmStress shear,
                             const HmTables *tables);

/**
 * hm_strip_engagement: the engaged length at which the hole just holds @load.
 * @shear: ultimate shear strength of the hole's material, above 0
 */
HmLength hm_strip_engagement (const HmThread *thread, HmForce load, HmStress shear, const HmTables *tables);

/** hm_strip_engagement_from_limits: the same from measured or published limits instead of those of the usual class. */
HmLength hm_strip_engagement_from_limits (HmLength pitch, HmLength bolt_major_min, HmLength hole_pitch_max, HmForce load,
                                          HmStress shear);

G_END_DECLS
