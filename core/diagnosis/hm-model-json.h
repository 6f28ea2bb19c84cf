/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-planner.h"
G_BEGIN_DECLS

/*
 * The model as JSON, format "halfmoon-diagnosis/1": complaint, mode, causes[{id, prior, repair_minutes, repair_access[]}],
 * other{prior, minutes}, access[{id, minutes_open, minutes_close, requires[], blocks_verify}], tests[{id, minutes, access[],
 * closed[], tools[], outcomes[], likelihood{cause or "_other": {outcome: p}}, numeric{unit, edges[], ok_side, meter_sd}?}],
 * incidents[{id, adds{cause: g}}], verify_minutes, max_batch.
 */

/**
 * hm_model_new_from_json:
 * @text: UTF-8 JSON: a bare model, or an object with a member `model`
 * Returns: (transfer full): sealed; NULL with %HM_MODEL_ERROR saying which member is wrong and what is accepted
 */
HmModel *hm_model_new_from_json (const char *text, gsize length, GError **error);

/** hm_model_to_json: (transfer full): indented JSON that hm_model_new_from_json() reads back to the same numbers. */
char *hm_model_to_json (const HmModel *self);

/**
 * hm_evidence_list_from_json:
 * @text: an array of events, or an object with a member `evidence`: {incident} | {replaced} | {test, outcome} |
 *   {test, weights{}} | {test, reading} | {test, unsure} | {test, cannot} | {repair[], fixed}
 * Returns: (transfer full) (element-type HmEvidence): NULL with %HM_MODEL_ERROR
 */
GArray *hm_evidence_list_from_json (const HmModel *model, const char *text, gsize length, GError **error);

/**
 * hm_advice_to_json: {"posterior", "action", "expected_minutes", "lower_bound"}. (transfer full)
 * @posterior: (array): n_causes + 1 probabilities
 */
char *hm_advice_to_json (const HmModel *model, const double *posterior, const HmPlan *plan);

G_END_DECLS
