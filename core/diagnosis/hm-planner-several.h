/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-planner.h"
G_BEGIN_DECLS

/*
 * The next step when more than one thing may be wrong. Works on the likeliest sets of faults (up to three at once, four
 * in small models), with exact weights; a repair fixes the complaint when nothing is left.
 */
#define HM_PLANNER_SEVERAL_MOST_SETS 256u

/**
 * hm_planner_several_best:
 * @out: the best next action; expected minutes under the sets that were kept
 * @kept: (out) (nullable): share of all probability that the sets hold, 0–1
 * Returns: %FALSE with %HM_MODEL_ERROR_VALUE when the evidence rules out everything
 */
gboolean hm_planner_several_best (const HmModel *model, const HmEvidence *events, guint n, HmPlan *out, double *kept, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
