/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-tightening.h"
#include "hmui-settings.h"
#include "hmui-wrench-drawer.h"
G_BEGIN_DECLS

/*
 * HmuiTorqueModel: what is typed and chosen in the place Torque, and the answer to it in words. No widgets. Works out
 * anew at every change. What is typed from the maker's manual is page state: it lasts until the window closes.
 * Signal "changed" (no arguments): the answer, or what there is to choose, is another than before.
 */
#define HMUI_TYPE_TORQUE_MODEL (hmui_torque_model_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTorqueModel, hmui_torque_model, HMUI, TORQUE_MODEL, GObject)

/** HmuiTorqueInput: what is typed. */
typedef enum { HMUI_TORQUE_INPUT_THREAD, HMUI_TORQUE_INPUT_ENGAGED, HMUI_TORQUE_INPUT_ADAPTER, HMUI_TORQUE_INPUT_LEVER,
               HMUI_TORQUE_INPUT_ANGLE, HMUI_TORQUE_INPUT_MANUAL, HMUI_TORQUE_INPUT_PAGE, HMUI_TORQUE_N_INPUTS } HmuiTorqueInput;

/** HmuiTorqueChoice: what is chosen, by its place in the list. */
typedef enum { HMUI_TORQUE_CHOICE_JOINT, HMUI_TORQUE_CHOICE_SPECIAL, HMUI_TORQUE_CHOICE_STRENGTH, HMUI_TORQUE_CHOICE_FRICTION,
               HMUI_TORQUE_CHOICE_SEAT, HMUI_TORQUE_CHOICE_INTO, HMUI_TORQUE_CHOICE_ADAPTER, HMUI_TORQUE_CHOICE_EXTRA_UNIT,
               HMUI_TORQUE_N_CHOICES } HmuiTorqueChoice;

/** HmuiTorqueAdapter: the list of HMUI_TORQUE_CHOICE_ADAPTER. */
typedef enum { HMUI_TORQUE_ADAPTER_NONE, HMUI_TORQUE_ADAPTER_STRAIGHT, HMUI_TORQUE_ADAPTER_ANGLE } HmuiTorqueAdapter;

/** HmuiTorqueState: what the answer is. */
typedef enum {
  HMUI_TORQUE_NOTHING,   /* something is still to be typed or chosen; the headline says what */
  HMUI_TORQUE_PROBLEM,   /* it cannot be read, or no value follows; the headline says why */
  HMUI_TORQUE_WORDS,     /* snug by hand, or the maker's manual only */
  HMUI_TORQUE_VALUE
} HmuiTorqueState;

/** HmuiTorqueFact: one line of the answer. */
typedef enum { HMUI_TORQUE_FACT_SETTING, HMUI_TORQUE_FACT_WRENCH, HMUI_TORQUE_FACT_COMPUTED, HMUI_TORQUE_FACT_PRELOAD,
               HMUI_TORQUE_FACT_STRESS, HMUI_TORQUE_FACT_NEEDED, HMUI_TORQUE_FACT_WEAKEST, HMUI_TORQUE_FACT_METHODS,
               HMUI_TORQUE_FACT_PARTS, HMUI_TORQUE_FACT_LOOSENING, HMUI_TORQUE_FACT_STRENGTH, HMUI_TORQUE_FACT_FRICTION,
               HMUI_TORQUE_N_FACTS } HmuiTorqueFact;

HmuiTorqueModel *hmui_torque_model_new (HmuiSettings *settings, HmuiWrenchDrawer *drawer);

/** hmui_torque_model_set_tables: (nullable): nothing can be worked out before they are there. @problem: why there are none */
void hmui_torque_model_set_tables (HmuiTorqueModel *self, const HmTables *tables, const char *problem);
const HmTables *hmui_torque_model_get_tables (HmuiTorqueModel *self);   /* borrowed, may be NULL */
HmuiSettings   *hmui_torque_model_get_settings (HmuiTorqueModel *self); /* borrowed */

/* What goes in. */
void        hmui_torque_model_set_text   (HmuiTorqueModel *self, HmuiTorqueInput input, const char *text);
const char *hmui_torque_model_get_text   (HmuiTorqueModel *self, HmuiTorqueInput input);       /* borrowed */
void        hmui_torque_model_set_choice (HmuiTorqueModel *self, HmuiTorqueChoice choice, guint index);
guint       hmui_torque_model_get_choice (HmuiTorqueModel *self, HmuiTorqueChoice choice);
GStrv       hmui_torque_model_dup_choices (HmuiTorqueModel *self, HmuiTorqueChoice choice);   /* what there is to choose */
void        hmui_torque_model_set_share_percent (HmuiTorqueModel *self, double percent);
HmUnit      hmui_torque_model_get_length_unit (HmuiTorqueModel *self);   /* of a bare number */
HmUnit      hmui_torque_model_get_torque_unit (HmuiTorqueModel *self);
GStrv       hmui_torque_model_dup_usual_threads (HmuiTorqueModel *self);

/* What comes out; (transfer full), NULL where there is nothing to say. */
HmuiTorqueState hmui_torque_model_get_state (HmuiTorqueModel *self);
gboolean hmui_torque_model_is_special  (HmuiTorqueModel *self);      /* a joint that theory does not cover */
gboolean hmui_torque_model_get_torque  (HmuiTorqueModel *self, HmTorque *out);
char    *hmui_torque_model_dup_headline (HmuiTorqueModel *self);     /* "18.8 lbf·ft"; or a sentence, see the state */
char    *hmui_torque_model_dup_span     (HmuiTorqueModel *self);     /* "15.0–28.2 lbf·ft" */
char    *hmui_torque_model_dup_others   (HmuiTorqueModel *self);     /* "25.5 N·m · 226 lbf·in" */
char    *hmui_torque_model_dup_limit    (HmuiTorqueModel *self);     /* what limits it */
char    *hmui_torque_model_dup_warning  (HmuiTorqueModel *self);
const char *hmui_torque_model_get_error (HmuiTorqueModel *self, HmuiTorqueInput input);   /* borrowed: what is wrong with it */
char    *hmui_torque_model_dup_summary  (HmuiTorqueModel *self);     /* "M8 × 1.25 · 8.8 · Dry, as found" */
gboolean hmui_torque_model_get_provenance (HmuiTorqueModel *self, HmProvenance *out);   /* source borrowed */

char    *hmui_torque_model_dup_fact_label (HmuiTorqueModel *self, HmuiTorqueFact fact);
char    *hmui_torque_model_dup_fact       (HmuiTorqueModel *self, HmuiTorqueFact fact);
gboolean hmui_torque_model_get_fact_provenance (HmuiTorqueModel *self, HmuiTorqueFact fact, HmProvenance *out);

/** hmui_torque_model_get_tightening: what the drawing shows; NULL where the load is not known. Borrowed until the next change. */
const HmTightening *hmui_torque_model_get_tightening (HmuiTorqueModel *self);

G_END_DECLS
