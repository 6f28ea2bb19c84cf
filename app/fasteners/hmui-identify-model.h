/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-identify.h"
#include "hm-knowledge.h"
#include "hmui-answer.h"
#include "hmui-settings.h"
G_BEGIN_DECLS

/** HmuiInstrument: what the diameter was measured with. */
typedef enum { HMUI_INSTRUMENT_CALIPER, HMUI_INSTRUMENT_RULE } HmuiInstrument;

/*
 * HmuiIdentifyModel: "What is this bolt?": a diameter, a pitch, and what comes near. No widgets.
 *
 * Signal "changed" (no arguments): any answer may be another.
 */
#define HMUI_TYPE_IDENTIFY_MODEL (hmui_identify_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiIdentifyModel, hmui_identify_model, HMUI, IDENTIFY_MODEL, GObject)

HmuiIdentifyModel *hmui_identify_model_new (HmKnowledge *knowledge, HmuiSettings *settings);

/* Bytes as typed, never NULL. */
void hmui_identify_model_set_diameter   (HmuiIdentifyModel *self, const char *text);
void hmui_identify_model_set_pitch      (HmuiIdentifyModel *self, const char *text);
void hmui_identify_model_set_feature    (HmuiIdentifyModel *self, HmThreadFeature feature);
void hmui_identify_model_set_instrument (HmuiIdentifyModel *self, HmuiInstrument instrument);
void hmui_identify_model_set_worn       (HmuiIdentifyModel *self, gboolean worn);

/* What each field was read as ("0.312 in (7.92 mm)"), or why it cannot be; NULL while it is empty. Borrowed. */
const char *hmui_identify_model_get_diameter_words (HmuiIdentifyModel *self, gboolean *is_problem);
const char *hmui_identify_model_get_pitch_words    (HmuiIdentifyModel *self, gboolean *is_problem);

guint       hmui_identify_model_get_n           (HmuiIdentifyModel *self);             /* candidates */
const char *hmui_identify_model_get_name        (HmuiIdentifyModel *self, guint i);    /* borrowed */
double      hmui_identify_model_get_probability (HmuiIdentifyModel *self, guint i);
const char *hmui_identify_model_get_lead        (HmuiIdentifyModel *self);             /* the answer in a sentence; borrowed */
const char *hmui_identify_model_get_next        (HmuiIdentifyModel *self);             /* what to measure next; NULL: nothing */

/** hmui_identify_model_get_miss: the commonest near miss of the likeliest; NULL for none. Borrowed. */
HmuiAnswerRow *hmui_identify_model_get_miss     (HmuiIdentifyModel *self);

G_END_DECLS
