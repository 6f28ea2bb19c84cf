/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/*
 * HmuiStepModel: one check as the page shows it. A snapshot: call hmui_step_model_refresh() after the bench's "changed",
 * while the bench's view is a step.
 */
#define HMUI_TYPE_STEP_MODEL (hmui_step_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiStepModel, hmui_step_model, HMUI, STEP_MODEL, GObject)

HmuiStepModel *hmui_step_model_new (HmuiDiagnoseModel *bench);

/** hmui_step_model_refresh: Returns: whether this is another step than before */
gboolean       hmui_step_model_refresh (HmuiStepModel *self);

const HmCheck *hmui_step_model_get_check    (HmuiStepModel *self);   /* borrowed from the guide */
GListModel    *hmui_step_model_get_findings (HmuiStepModel *self);   /* of HmuiLine, keys "1" … "9"; borrowed */
const char    *hmui_step_model_get_earlier  (HmuiStepModel *self);   /* the answer given before, in words; NULL for none */

/** The circuit drawing of the check; NULL when it has none (or the knowledge lacks it). Borrowed. */
const HmPicture *hmui_step_model_get_picture (HmuiStepModel *self);

/** "Over 0.3 V: Too much", and where it holds; NULL for a check without a number. (transfer full) */
char          *hmui_step_model_dup_limits (HmuiStepModel *self);

/**
 * hmui_step_model_judge: what a reading means before it is given.
 * @good: (out): whether it is the normal finding
 * Returns: (transfer full): NULL while the answer before is still being kept
 */
char          *hmui_step_model_judge (HmuiStepModel *self, HmQuantity reading, gboolean *good);

G_END_DECLS
