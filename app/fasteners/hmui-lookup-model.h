/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-knowledge.h"
#include "hm-fit.h"
#include "hmui-answer.h"
#include "hmui-settings.h"
G_BEGIN_DECLS

/*
 * HmuiLookupModel: what is typed in the search and the answer to it. No widgets.
 *
 * Signal "changed" (no arguments): the answer, or the sentence in its place, is another.
 */
#define HMUI_TYPE_LOOKUP_MODEL (hmui_lookup_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiLookupModel, hmui_lookup_model, HMUI, LOOKUP_MODEL, GObject)

/** hmui_lookup_model_new: @knowledge and @settings are shared. */
HmuiLookupModel *hmui_lookup_model_new (HmKnowledge *knowledge, HmuiSettings *settings);

/** hmui_lookup_model_set_text: bytes as typed, never NULL. */
void             hmui_lookup_model_set_text      (HmuiLookupModel *self, const char *text);
const char      *hmui_lookup_model_get_text      (HmuiLookupModel *self);   /* borrowed */
void             hmui_lookup_model_set_condition (HmuiLookupModel *self, HmHeadCondition condition);
HmHeadCondition  hmui_lookup_model_get_condition (HmuiLookupModel *self);

/* The tolerance classes that a Unified thread may have: "1A and 1B", … */
#define HMUI_LOOKUP_N_CLASSES 3
#define HMUI_LOOKUP_USUAL_CLASS 1
char            *hmui_lookup_model_dup_class     (guint i);                 /* (transfer full) */
void             hmui_lookup_model_set_class     (HmuiLookupModel *self, guint i);
gboolean         hmui_lookup_model_has_classes   (HmuiLookupModel *self);   /* whether the answer has that choice */

HmuiAnswer      *hmui_lookup_model_get_answer    (HmuiLookupModel *self);   /* borrowed; NULL: nothing typed, or a problem */
const char      *hmui_lookup_model_get_problem   (HmuiLookupModel *self);   /* borrowed; NULL: none */
HmFormat         hmui_lookup_model_get_format    (HmuiLookupModel *self);

/** hmui_lookup_model_get_first_link: the first row of the answer that leads to another one; borrowed; NULL: none does. */
const HmuiAnswerText *hmui_lookup_model_get_first_link (HmuiLookupModel *self);

G_END_DECLS
