/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-guide.h"
#include "hm-model.h"
G_BEGIN_DECLS

/**
 * hm_model_new_from_guide: the numbers of a guide, in the same order of causes, checks, access steps and incidents.
 * Returns: (transfer full): sealed; NULL with %HM_MODEL_ERROR
 */
HmModel *hm_model_new_from_guide (const HmGuide *guide, GError **error);

G_END_DECLS
