/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-model.h"
G_BEGIN_DECLS

/** What has been learnt, one event each. */
typedef enum {
  HM_EVIDENCE_INCIDENT,   /* .index */
  HM_EVIDENCE_REPLACED,   /* .index = cause: a part fitted lately lowers that cause to a fifth, never to nothing */
  HM_EVIDENCE_OUTCOME,    /* .index = check, .outcome */
  HM_EVIDENCE_WEIGHTS,    /* .index = check, .weights: soft */
  HM_EVIDENCE_READING,    /* .index = check, .reading in the check's unit */
  HM_EVIDENCE_UNSURE,     /* .index = check: done, learnt nothing */
  HM_EVIDENCE_CANNOT,     /* .index = check: not possible here */
  HM_EVIDENCE_REPAIR      /* .causes, .n_causes, .fixed */
} HmEvidenceKind;

/** HmEvidence: a plain value. */
typedef struct {
  HmEvidenceKind kind;
  guint index;
  guint outcome;
  double reading;
  double weights[HM_MODEL_MAX_OUTCOMES];
  guint causes[HM_MODEL_MAX_BATCH], n_causes;
  gboolean fixed;
} HmEvidence;

/** hm_evidence_weights: the weight of each outcome that @self gives; FALSE when it says nothing about outcomes. */
gboolean hm_evidence_weights (const HmModel *model, const HmEvidence *self, double *weights);

G_END_DECLS
