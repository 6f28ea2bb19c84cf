/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/*
 * HmuiWhyModel: what it may be, why this step, what each answer leads to, the trail. A snapshot: call
 * hmui_why_model_refresh() after the bench's "changed". No widgets.
 */
#define HMUI_TYPE_WHY_MODEL (hmui_why_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiWhyModel, hmui_why_model, HMUI, WHY_MODEL, GObject)

HmuiWhyModel *hmui_why_model_new (HmuiDiagnoseModel *bench);
void          hmui_why_model_refresh (HmuiWhyModel *self);

/** Causes, most likely first. @n: how many. Borrowed until the next refresh; the number of causes means "not listed". */
const guint  *hmui_why_model_get_causes (HmuiWhyModel *self, guint *n);
const char   *hmui_why_model_get_cause_name (HmuiWhyModel *self, guint cause);
double        hmui_why_model_get_probability (HmuiWhyModel *self, guint cause);

/** hmui_why_model_is_settled: a repair was verified: what it may be is no question any more. */
gboolean      hmui_why_model_is_settled (HmuiWhyModel *self);

/* In words; (transfer full). */
char         *hmui_why_model_dup_rest     (HmuiWhyModel *self, guint from);   /* "12 more, 19 %"; NULL when there are none */
char         *hmui_why_model_dup_expected (HmuiWhyModel *self);               /* NULL once it is closed */
char         *hmui_why_model_dup_not_listed (HmuiWhyModel *self);             /* NULL unless it has become likely */
char         *hmui_why_model_dup_why      (HmuiWhyModel *self);
char         *hmui_why_model_dup_told     (HmuiWhyModel *self);               /* incidents, parts replaced; NULL for none */

/* Lists of HmuiLine. */
GListModel   *hmui_why_model_get_trail (HmuiWhyModel *self);                  /* newest first; index of the entry; borrowed */
/** What each answer leads to; worked out at this call, which may take a tenth of a second. (transfer full) */
GListModel   *hmui_why_model_make_branches (HmuiWhyModel *self);
/** Why @cause stands where it stands. (transfer full) */
GListModel   *hmui_why_model_make_reasons (HmuiWhyModel *self, guint cause);
/** Other checks and repairs, best first; index into hm_diagnosis_get_ranked(). (transfer full) */
GListModel   *hmui_why_model_make_others (HmuiWhyModel *self);

G_END_DECLS
