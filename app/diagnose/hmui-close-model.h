/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

typedef enum { HMUI_CLOSE_COMPLAINT, HMUI_CLOSE_CAUSE, HMUI_CLOSE_CORRECTION, HMUI_CLOSE_N_TEXTS } HmuiCloseText;

/*
 * HmuiCloseModel: how it ended: complaint, cause, correction; what else to look at; what to tell the owner; minutes.
 * A snapshot: call hmui_close_model_refresh() after the bench's "changed", while the bench's view is the close.
 */
#define HMUI_TYPE_CLOSE_MODEL (hmui_close_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiCloseModel, hmui_close_model, HMUI, CLOSE_MODEL, GObject)

HmuiCloseModel *hmui_close_model_new (HmuiDiagnoseModel *bench);
/** hmui_close_model_refresh: Returns: whether it is another diagnosis, or ended otherwise, than before */
gboolean        hmui_close_model_refresh (HmuiCloseModel *self);

const char     *hmui_close_model_get_text  (HmuiCloseModel *self, HmuiCloseText which);   /* borrowed until the next refresh */
void            hmui_close_model_set_text  (HmuiCloseModel *self, HmuiCloseText which, const char *text);
char           *hmui_close_model_dup_result  (HmuiCloseModel *self);   /* how it ended, in a sentence; (transfer full) */
char           *hmui_close_model_dup_minutes (HmuiCloseModel *self);   /* spent, split; (transfer full) */
GListModel     *hmui_close_model_get_look_also  (HmuiCloseModel *self);   /* of HmuiLine; borrowed */
GListModel     *hmui_close_model_get_tell_owner (HmuiCloseModel *self);   /* of HmuiLine; borrowed */
/** hmui_close_model_dup_all: the whole write-up as plain text, for the clipboard. (transfer full) */
char           *hmui_close_model_dup_all (HmuiCloseModel *self);

G_END_DECLS
