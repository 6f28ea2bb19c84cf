/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-tightening.h"

#include <glib/gi18n.h>

static const HmProvenance provenances[HM_TIGHTENING_N_PARTS] = {
  [HM_TIGHTENING_PRELOAD] = { HM_PROVENANCE_COMPUTED,
                              N_("From torque, thread and the spread of friction and wrench: F = T / (K d)") },
  [HM_TIGHTENING_STRESS] = { HM_PROVENANCE_COMPUTED, N_("Von Mises stress from pull and twist, VDI 2230") },
  [HM_TIGHTENING_ENGAGEMENT] = { HM_PROVENANCE_COMPUTED,
                                 N_("Shear of the threads, ASME B1.1, appendix B; shear strengths are common practice") },
  [HM_TIGHTENING_METHODS] = { HM_PROVENANCE_COMPUTED,
                              N_("Nut factor: T = K F d. Long form, with friction in the thread and under the head apart: "
                                 "ISO 16047, VDI 2230. The bearing face of a flange is taken as 1.95 diameters, common "
                                 "practice") },
  [HM_TIGHTENING_PARTS] = { HM_PROVENANCE_COMPUTED, N_("Long form of the torque equation, ISO 16047, VDI 2230") },
  [HM_TIGHTENING_LOOSENING] = { HM_PROVENANCE_COMPUTED,
                                N_("Long form of the torque equation, ISO 16047, with the pitch helping") },
  [HM_TIGHTENING_SETTING] = { HM_PROVENANCE_PUBLISHED,
                              N_("TM 9-254, paragraph 4-1: setting = torque × L / (L + A cos α)") },
  [HM_TIGHTENING_WRENCH] = { HM_PROVENANCE_STANDARD, N_("ISO 6789-1: tested from 20 to 100 % of the highest torque") },
};

HmProvenance
hm_tightening_get_provenance (HmTighteningPart part)
{
  g_return_val_if_fail (part < HM_TIGHTENING_N_PARTS, ((HmProvenance) { HM_PROVENANCE_COMMON_PRACTICE, NULL }));
  return provenances[part];
}
