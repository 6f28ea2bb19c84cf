/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-diagnosis.h"
G_BEGIN_DECLS

/** HmTrail: what the person told and found: all that undo has to bring back. */
typedef struct {
  guint64 incidents;         /* bit set by index */
  guint64 replaced;          /* bit set by index */
  GArray *entries;           /* HmEntry, owned */
} HmTrail;

struct _HmDiagnosis
{
  GObject parent_instance;
  HmKnowledge *knowledge;    /* owned */
  HmGuide *guide;            /* owned */
  HmModel *model;            /* owned */
  HmPlanner *planner;        /* owned */
  HmTrail trail;
  GPtrArray *undo, *redo;    /* HmTrail*, owned */
  GHashTable *ticks;         /* set of char*, owned */
  GHashTable *texts;         /* char* → char*, owned */
  /* derived, by recompute */
  GArray *events;            /* HmEvidence, one for each told fact and entry that says something */
  GArray *event_sources;     /* HmReason without decibans: where each event comes from */
  GArray *steps;             /* HmBeliefStep beside each event */
  HmBelief belief;
  GArray *ranked;            /* HmPlan, best first; empty until somebody asks */
  HmAccessSet open;
  HmDuration spent;
};

/** Works out everything derived from the trail. Does not emit. */
void hm_diagnosis_recompute (HmDiagnosis *self);
/** The events the trail amounts to, into self->events and self->event_sources. */
void hm_diagnosis_list_events (HmDiagnosis *self);
/** Minutes of every entry, and what stands open after them. */
void hm_diagnosis_charge (HmDiagnosis *self);

G_END_DECLS
