/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-diagnosis.h"
G_BEGIN_DECLS

/*
 * A whole visit of one machine, played out against the program. The knowledge says what a mechanic would find on a machine
 * with one certain fault, and a second diagnosis beside the program says what it must suggest next: so the tests
 * hold whatever the knowledge comes to say.
 */
typedef struct {
  HmKnowledge *knowledge;   /* owned */
  HmDiagnosis *mirror;      /* owned */
  guint cause;              /* the fault the machine has */
} HmtVisit;

typedef enum { HMT_ANSWER_FINDING, HMT_ANSWER_READING, HMT_ANSWER_REPAIR } HmtAnswerKind;

/** HmtAnswer: what the mechanic does now; strings are the guide's. */
typedef struct {
  HmtAnswerKind kind;
  guint check_index, finding_index;
  const HmCheck *check;             /* a finding or a reading */
  char reading[48];                 /* as it is typed */
  const char *title;                /* what the step is called: the check's name, or the first remedy's */
  gboolean fixes;                   /* a repair: it is the right one */
} HmtAnswer;

/**
 * hmt_visit_new: picks a fault of the complaint "no-crank" on a riding mower whose way to the end has a finding, a reading,
 * a serious caution and a repair. Fails the test when the knowledge has no such fault or cannot be read.
 */
HmtVisit *hmt_visit_new (void);
void hmt_visit_free (HmtVisit *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmtVisit, hmt_visit_free)

const char *hmt_visit_complaint (HmtVisit *self);   /* the complaint's name; borrowed */
const char *hmt_visit_layout (HmtVisit *self);      /* the machine's; borrowed */

gboolean hmt_visit_is_closed (HmtVisit *self);

/** hmt_visit_next: what the mechanic does now. FALSE when the advice is to send the machine out. */
gboolean hmt_visit_next (HmtVisit *self, HmtAnswer *out);

/** hmt_visit_take: the same answer for the mirror. */
void hmt_visit_take (HmtVisit *self, const HmtAnswer *answer);

/** hmt_visit_undo: takes the last answer back in the mirror. */
void hmt_visit_undo (HmtVisit *self);

G_END_DECLS
