/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-line.h"
#include "hmui-prepare-model.h"
G_BEGIN_DECLS

/*
 * HmuiRepairModel: one repair as the page shows it: what to do, its fasteners, the put-back list, the question after it.
 * A snapshot: call hmui_repair_model_refresh() after the bench's "changed", while the bench's view is a repair.
 */
#define HMUI_TYPE_REPAIR_MODEL (hmui_repair_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiRepairModel, hmui_repair_model, HMUI, REPAIR_MODEL, GObject)

HmuiRepairModel  *hmui_repair_model_new (HmuiDiagnoseModel *bench);

/** hmui_repair_model_refresh: Returns: whether this is another page than before (another repair, or its question) */
gboolean          hmui_repair_model_refresh (HmuiRepairModel *self);

HmuiPrepareModel *hmui_repair_model_get_prepare (HmuiRepairModel *self);     /* borrowed */
gboolean          hmui_repair_model_is_question (HmuiRepairModel *self);     /* done; now: is it fixed? */
char             *hmui_repair_model_dup_title   (HmuiRepairModel *self);     /* (transfer full) */
char             *hmui_repair_model_dup_because (HmuiRepairModel *self);     /* the causes, with their chances; (transfer full) */

/* Borrowed until the next refresh. */
GPtrArray        *hmui_repair_model_get_remedies  (HmuiRepairModel *self);   /* of HmRemedy, each once */
GPtrArray        *hmui_repair_model_get_fasteners (HmuiRepairModel *self);   /* of HmFastener, in the order of putting back */
GListModel       *hmui_repair_model_get_put_back  (HmuiRepairModel *self);   /* of HmuiLine; key: the tick's id */
const char * const *hmui_repair_model_get_verify_steps (HmuiRepairModel *self);

gboolean          hmui_repair_model_get_ticked (HmuiRepairModel *self, HmuiLine *line);
void              hmui_repair_model_set_ticked (HmuiRepairModel *self, HmuiLine *line, gboolean ticked);
char             *hmui_repair_model_dup_progress (HmuiRepairModel *self);    /* "2 of 5 done"; (transfer full) */

G_END_DECLS
