/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-access.h"
#include "hm-knowledge.h"
#include "hm-planner.h"
#include "hm-translate.h"
G_BEGIN_DECLS

/*
 * One diagnosis under way: what was told, what was found, what to do next and why. Everything shown in the window or the
 * terminal about a diagnosis comes from here. Indices of causes, checks, findings, access steps and incidents are those of
 * the guide. Emits "changed" after every change.
 */
#define HM_TYPE_DIAGNOSIS (hm_diagnosis_get_type ())
G_DECLARE_FINAL_TYPE (HmDiagnosis, hm_diagnosis, HM, DIAGNOSIS, GObject)

/**
 * HmPhase:
 * @HM_PHASE_ASKING: the advice is a check (or a repair not yet begun)
 * @HM_PHASE_REPAIRING: a repair was begun; next comes hm_diagnosis_finish_repair()
 * @HM_PHASE_CLOSED: verified fixed, changed into another complaint, or sent out
 */
typedef enum { HM_PHASE_ASKING, HM_PHASE_REPAIRING, HM_PHASE_CLOSED } HmPhase;

typedef enum {
  HM_REPAIR_PENDING,      /* begun, not verified */
  HM_REPAIR_FIXED, HM_REPAIR_PERSISTS, HM_REPAIR_CHANGED
} HmRepairResult;

typedef enum {
  HM_ENTRY_FINDING,       /* .finding */
  HM_ENTRY_READING,       /* .reading, .finding = the likeliest band */
  HM_ENTRY_UNSURE, HM_ENTRY_CANNOT,
  HM_ENTRY_REPAIR,        /* .causes, .n_causes, .result */
  HM_ENTRY_SENT_OUT
} HmEntryKind;

/**
 * HmEntry: one line of the trail; a plain value.
 * @opened: access steps that this one opened
 * @work, @open, @close: minutes of this step; opening and closing are charged when a step is opened (once per opening)
 */
typedef struct {
  HmEntryKind kind;
  guint check, finding;
  HmQuantity reading;
  guint causes[HM_MODEL_MAX_BATCH], n_causes;
  HmRepairResult result;
  HmAccessSet opened;
  HmDuration work, open, close;
} HmEntry;

/** hm_diagnosis_new: (transfer full), or NULL with @error (%HM_KNOWLEDGE_ERROR) */
HmDiagnosis *hm_diagnosis_new (HmKnowledge *knowledge, const char *complaint, const char *layout, GError **error);

HmGuide *hm_diagnosis_get_guide (HmDiagnosis *self);   /* borrowed */
HmModel *hm_diagnosis_get_model (HmDiagnosis *self);   /* borrowed */

/* What was told before the first check. */
void     hm_diagnosis_set_incident (HmDiagnosis *self, guint incident, gboolean happened);
gboolean hm_diagnosis_get_incident (HmDiagnosis *self, guint incident);
void     hm_diagnosis_set_replaced (HmDiagnosis *self, guint cause, gboolean replaced);
gboolean hm_diagnosis_get_replaced (HmDiagnosis *self, guint cause);

/* The trail. Answering a check that was answered before changes the earlier answer in its place. */
guint          hm_diagnosis_get_n_entries (HmDiagnosis *self);
const HmEntry *hm_diagnosis_get_entry     (HmDiagnosis *self, guint i);    /* borrowed until the next change */
void     hm_diagnosis_answer         (HmDiagnosis *self, guint check, guint finding);
gboolean hm_diagnosis_answer_reading (HmDiagnosis *self, guint check, HmQuantity reading, GError **error) G_GNUC_WARN_UNUSED_RESULT;
void     hm_diagnosis_answer_unsure  (HmDiagnosis *self, guint check);
void     hm_diagnosis_answer_cannot  (HmDiagnosis *self, guint check);
void     hm_diagnosis_begin_repair   (HmDiagnosis *self, const guint *causes, guint n_causes);
void     hm_diagnosis_finish_repair  (HmDiagnosis *self, HmRepairResult result);
void     hm_diagnosis_send_out       (HmDiagnosis *self);
void     hm_diagnosis_remove_entry   (HmDiagnosis *self, guint i);         /* as if never asked; a step of undo */
gboolean hm_diagnosis_can_undo (HmDiagnosis *self);
void     hm_diagnosis_undo     (HmDiagnosis *self);                         /* takes back the last change of any kind */
gboolean hm_diagnosis_can_redo (HmDiagnosis *self);
void     hm_diagnosis_redo     (HmDiagnosis *self);

/* Ticks: cautions acknowledged, put-back lines done. Ids are the caller's ("caution:blade", "put-back:hood"). */
void     hm_diagnosis_set_tick (HmDiagnosis *self, const char *id, gboolean ticked);
gboolean hm_diagnosis_get_tick (HmDiagnosis *self, const char *id);

/* Where it stands. */
HmPhase        hm_diagnosis_get_phase (HmDiagnosis *self);
const HmPlan  *hm_diagnosis_get_advice (HmDiagnosis *self);                 /* borrowed until the next change */
guint          hm_diagnosis_get_ranked (HmDiagnosis *self, const HmPlan **out);   /* all actions, best first; borrowed */
double         hm_diagnosis_get_probability (HmDiagnosis *self, guint cause);     /* index n_causes: not listed */
guint          hm_diagnosis_get_causes_by_probability (HmDiagnosis *self, guint *out);   /* room for n_causes + 1; "not listed" among them */
HmDuration     hm_diagnosis_get_minutes_spent (HmDiagnosis *self);
HmAccessSet    hm_diagnosis_get_open (HmDiagnosis *self);                   /* steps that stand open */
/** What @action would still open; for a repair under way, what it had to open. */
HmAccessSet    hm_diagnosis_get_to_open (HmDiagnosis *self, const HmAction *action);
gboolean       hm_diagnosis_other_is_likely (HmDiagnosis *self);            /* "not listed" above 25 % */

/** How a reading would be judged, before it is given: the likeliest finding and its weight (1: clear, 0.5: on a limit). */
guint          hm_diagnosis_judge_reading (HmDiagnosis *self, guint check, HmQuantity reading, double *weight);

/* Why. */
/** HmBranch: one finding of a check: how likely, and what would come next. */
typedef struct { guint finding; double probability; HmAction next; guint top_cause; double top_probability; } HmBranch;
guint hm_diagnosis_get_branches (HmDiagnosis *self, guint check, HmBranch *out);   /* room for HM_MODEL_MAX_OUTCOMES */

/** HmReason: what one entry, incident or replaced part did to a cause, in decibans (3 doubles the odds, 10 makes them tenfold). */
typedef enum { HM_REASON_INCIDENT, HM_REASON_REPLACED, HM_REASON_ENTRY } HmReasonKind;
typedef struct { HmReasonKind kind; guint index; double decibans; } HmReason;
GArray *hm_diagnosis_get_reasons (HmDiagnosis *self, guint cause);          /* (transfer full) of HmReason, largest effect first */

/** What the advised action costs and saves: the best plan without it. NULL if there is no other action. Borrowed. */
const HmPlan *hm_diagnosis_get_runner_up (HmDiagnosis *self);

/* Keeping it. */
/** hm_diagnosis_to_json: all of it, by ids, so that it can be taken up with another day's knowledge. (transfer full) */
char *hm_diagnosis_to_json (HmDiagnosis *self);
/**
 * hm_diagnosis_new_from_json:
 * @lost: (out) (nullable) (transfer full): ids that the knowledge no longer has, one a line; "" when none
 */
HmDiagnosis *hm_diagnosis_new_from_json (HmKnowledge *knowledge, const char *json, char **lost, GError **error);

/* Texts the person put in place of the generated ones: "complaint", "cause", "correction". NULL takes one back. */
void        hm_diagnosis_set_text (HmDiagnosis *self, const char *id, const char *text);
const char *hm_diagnosis_get_text (HmDiagnosis *self, const char *id);      /* borrowed; NULL when the generated one stands */

/**
 * HmWriteUp: complaint, cause, correction: the trade's order. @look_also: other parts to look at before it goes out;
 * @tell_owner: how it is put to the owner, and how not to repeat it. All in the language of the translator given.
 */
typedef struct { char *complaint, *cause, *correction; GPtrArray *look_also, *tell_owner; } HmWriteUp;

/** hm_diagnosis_write_up: @translate (nullable): NULL keeps English. (transfer full) */
HmWriteUp *hm_diagnosis_write_up (HmDiagnosis *self, const HmFormat *format, HmTranslate translate);
void       hm_write_up_free (HmWriteUp *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmWriteUp, hm_write_up_free)

G_END_DECLS
