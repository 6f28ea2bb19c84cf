/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/*
 * HmuiPrepareModel: what has to be minded, laid out and opened before a check or a repair. A snapshot for one action.
 */
#define HMUI_TYPE_PREPARE_MODEL (hmui_prepare_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiPrepareModel, hmui_prepare_model, HMUI, PREPARE_MODEL, GObject)

HmuiPrepareModel *hmui_prepare_model_new (HmuiDiagnoseModel *bench);
void              hmui_prepare_model_set_action (HmuiPrepareModel *self, const HmAction *action);

/** Cautions of the action and of what it opens, each once, the serious ones first. Borrowed. (element-type HmCaution) */
GPtrArray        *hmui_prepare_model_get_cautions (HmuiPrepareModel *self);
gboolean          hmui_prepare_model_get_acknowledged (HmuiPrepareModel *self, const HmCaution *caution);
void              hmui_prepare_model_set_acknowledged (HmuiPrepareModel *self, const HmCaution *caution, gboolean done);
/** hmui_prepare_model_is_released: every serious caution is acknowledged: the instructions may show. */
gboolean          hmui_prepare_model_is_released (HmuiPrepareModel *self);

/** The access steps still to open, what is required first. Borrowed. (element-type HmAccessStep) */
GPtrArray        *hmui_prepare_model_get_opening (HmuiPrepareModel *self);
char             *hmui_prepare_model_dup_tools (HmuiPrepareModel *self);   /* NULL for none */
char             *hmui_prepare_model_dup_open  (HmuiPrepareModel *self);   /* "battery cover, 1 min (paid once)"; NULL for nothing */
char             *hmui_prepare_model_dup_shut  (HmuiPrepareModel *self);   /* what must be shut first; NULL for nothing */

/** The torque of @fastener. Returns: FALSE when no value can be had; the maker's manual then governs */
gboolean          hmui_prepare_model_get_torque (HmuiPrepareModel *self, const HmFastener *fastener, HmTorqueAnswer *out);
HmuiDiagnoseModel *hmui_prepare_model_get_bench (HmuiPrepareModel *self);   /* borrowed */

G_END_DECLS
