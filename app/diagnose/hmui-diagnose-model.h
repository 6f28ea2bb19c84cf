/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-settings.h"
#include "hmui-shop.h"
G_BEGIN_DECLS

/** HmuiDiagnoseView: what the place shows now. */
typedef enum {
  HMUI_DIAGNOSE_CHOOSE, HMUI_DIAGNOSE_STEP, HMUI_DIAGNOSE_REPAIR, HMUI_DIAGNOSE_ESCALATE,
  HMUI_DIAGNOSE_CLOSE, HMUI_DIAGNOSE_BROKEN
} HmuiDiagnoseView;

/*
 * HmuiDiagnoseModel: the diagnosis on the bench and what is done with it. No widgets. Each change is made in memory, then
 * kept by the shop's store; "changed" comes when the store has answered, and until then further changes are refused
 * (ticks wait their turn).
 *
 * Signal "changed" (no arguments): everything may be other than before.
 * Signal "message" (const char *text, gboolean can_undo): a short sentence for the strip at the bottom; NULL takes the
 *   last one away.
 */
#define HMUI_TYPE_DIAGNOSE_MODEL (hmui_diagnose_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiDiagnoseModel, hmui_diagnose_model, HMUI, DIAGNOSE_MODEL, GObject)

HmuiDiagnoseModel *hmui_diagnose_model_new (HmuiSettings *settings, HmuiShop *shop);

/**
 * hmui_diagnose_model_open:
 * @path: the compiled knowledge
 * On failure the view is BROKEN and hmui_diagnose_model_get_problem() says why; it may be tried again.
 */
gboolean     hmui_diagnose_model_open (HmuiDiagnoseModel *self, const char *path);
const char  *hmui_diagnose_model_get_problem   (HmuiDiagnoseModel *self);   /* NULL: none */
HmKnowledge *hmui_diagnose_model_get_knowledge (HmuiDiagnoseModel *self);   /* borrowed; NULL before it is open */
HmuiShop    *hmui_diagnose_model_get_shop      (HmuiDiagnoseModel *self);   /* borrowed */
HmuiSettings *hmui_diagnose_model_get_settings (HmuiDiagnoseModel *self);   /* borrowed */
HmFormat     hmui_diagnose_model_get_format    (HmuiDiagnoseModel *self);

HmuiDiagnoseView hmui_diagnose_model_get_view (HmuiDiagnoseModel *self);
HmDiagnosis *hmui_diagnose_model_get_diagnosis (HmuiDiagnoseModel *self);   /* borrowed; NULL while choosing */
HmGuide     *hmui_diagnose_model_get_guide     (HmuiDiagnoseModel *self);   /* borrowed; NULL while choosing */
HmAction     hmui_diagnose_model_get_action    (HmuiDiagnoseModel *self);   /* what the page is about */
gboolean     hmui_diagnose_model_is_own_choice (HmuiDiagnoseModel *self);   /* the person chose it over the advice */
gboolean     hmui_diagnose_model_is_busy       (HmuiDiagnoseModel *self);   /* the store is still writing */
char        *hmui_diagnose_model_dup_whereabouts (HmuiDiagnoseModel *self);

/** hmui_diagnose_model_start: @fresh is the diagnosis with all that was told; it is taken. */
void hmui_diagnose_model_start  (HmuiDiagnoseModel *self, HmDiagnosis *fresh);
void hmui_diagnose_model_resume (HmuiDiagnoseModel *self, gint64 id);
void hmui_diagnose_model_leave  (HmuiDiagnoseModel *self);                  /* back to choosing; it stays in the store */

void hmui_diagnose_model_answer         (HmuiDiagnoseModel *self, guint finding);
void hmui_diagnose_model_answer_reading (HmuiDiagnoseModel *self, HmQuantity reading);
void hmui_diagnose_model_answer_unsure  (HmuiDiagnoseModel *self);
void hmui_diagnose_model_answer_cannot  (HmuiDiagnoseModel *self);
void hmui_diagnose_model_begin_repair   (HmuiDiagnoseModel *self);
void hmui_diagnose_model_finish_repair  (HmuiDiagnoseModel *self, HmRepairResult result);
void hmui_diagnose_model_send_out       (HmuiDiagnoseModel *self);
void hmui_diagnose_model_set_tick       (HmuiDiagnoseModel *self, const char *id, gboolean ticked);
gboolean hmui_diagnose_model_get_tick   (HmuiDiagnoseModel *self, const char *id);

/** hmui_diagnose_model_set_text: the person's own words for "complaint", "cause", "correction"; NULL takes them back. */
void hmui_diagnose_model_set_text       (HmuiDiagnoseModel *self, const char *id, const char *text);

/** hmui_diagnose_model_choose: do @action though another was advised; nothing is kept until it is answered. */
void hmui_diagnose_model_choose     (HmuiDiagnoseModel *self, const HmAction *action);
/** hmui_diagnose_model_unchoose: back to the advice. Returns: whether there was anything to go back from */
gboolean hmui_diagnose_model_unchoose (HmuiDiagnoseModel *self);
/** hmui_diagnose_model_revisit: change the answer of trail entry @i (a check is shown again; a repair's result is undone). */
void hmui_diagnose_model_revisit    (HmuiDiagnoseModel *self, guint i);

gboolean hmui_diagnose_model_can_undo (HmuiDiagnoseModel *self);
gboolean hmui_diagnose_model_can_redo (HmuiDiagnoseModel *self);
void     hmui_diagnose_model_undo     (HmuiDiagnoseModel *self);
void     hmui_diagnose_model_redo     (HmuiDiagnoseModel *self);

G_END_DECLS
