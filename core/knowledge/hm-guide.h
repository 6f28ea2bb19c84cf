/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fastener.h"
#include "hm-provenance.h"
#include "hm-quantity.h"
G_BEGIN_DECLS

/*
 * A guide is everything the knowledge holds for one complaint on one layout of machine, in memory, immutable.
 * Every string and array in it belongs to the guide and lives as long as it does. Strings are US English, as they
 * stand in data/knowledge/; whoever shows one looks its translation up. NULL-terminated string lists are never NULL.
 */
typedef struct _HmGuide HmGuide;

#define HM_GUIDE_MAX_ACCESS 60u
typedef guint64 HmAccessSet;           /* bit i: access step i of the guide */

/** HmCaution: @serious ones must be acknowledged before the instructions show. */
typedef struct {
  const char *id, *name, *text, *defer;      /* @defer: whose word governs */
  gboolean serious;
  HmProvenance provenance;
} HmCaution;

/** HmLimit: a measurable limit; one end may be missing (see has_*). */
typedef struct {
  const char *id, *name, *applies;
  gboolean has_low, has_high;
  HmQuantity low, high;
  HmProvenance provenance;
} HmLimit;

typedef struct { const char *id, *name; } HmTool;

/** HmAccessStep: opening the machine up one stage. @requires: the steps that must be open before, without their own. */
typedef struct {
  const char *id, *name;
  const char * const *steps;                 /* what to do, numbered lines */
  HmDuration open, close;
  HmAccessSet requires;
  gboolean blocks_verify;                    /* must be shut before the engine can be run */
  const HmFastener * const *fasteners;       /* NULL-terminated */
  const HmCaution * const *cautions;         /* NULL-terminated */
  const char *photo;                         /* what to photograph first, or NULL */
  const char *put_back;                      /* what to mind when closing, or NULL */
  HmProvenance provenance;
} HmAccessStep;

typedef struct {
  const char *id, *name;
  const char * const *steps;
  const char * const *parts;                 /* generic part names */
  const char * const *after;                 /* settings to make afterwards */
  HmDuration time;
  const guint *access;  guint n_access;      /* indices of access steps that must be open (not their requirements) */
  const HmFastener * const *fasteners;       /* undone by the repair itself, NULL-terminated */
  const HmCaution * const *cautions;
  const HmTool * const *tools;
  HmProvenance provenance;
} HmRemedy;

typedef struct {
  const char *id, *name, *detail;
  double rate;                               /* relative frequency on this layout, > 0 */
  const HmRemedy *remedy;                    /* never NULL */
  const char * const *look_also;             /* what the same fault may have harmed */
  const char *tell_owner;                    /* how it is put to the owner, or NULL */
  HmProvenance provenance;
} HmCause;

typedef struct { const char *id, *name, *means; } HmFinding;

/**
 * HmCheck: something to do to learn.
 * @likelihood: n_findings rows of (number of causes + 1) columns, row-major: P(finding | cause); the last column is
 *   "something not listed". Every column sums to 1; no entry is below 0.005.
 * @is_reading: a number is read off an instrument; @limits then holds n_findings − 1 limits, between finding k and
 *   k + 1; @edges the same as numbers in the base unit of @kind.
 * @normal_above: finding 0 is the one with the highest readings (else the lowest)
 */
typedef struct {
  const char *id, *name;
  const char * const *steps;
  HmDuration time;
  const guint *access;  guint n_access;      /* must be open */
  const guint *closed;  guint n_closed;      /* must be shut */
  const HmTool * const *tools;
  const HmCaution * const *cautions;
  const HmFinding *findings;  guint n_findings;   /* normal to worst */
  const double *likelihood;
  gboolean is_reading, normal_above;
  HmQuantityKind kind;
  HmUnit unit;                               /* of a bare number typed, and of showing */
  const HmLimit * const *limits;
  const double *edges;
  double meter_sd;                           /* standard deviation of instrument and repeat, base unit */
  const char *picture, *red_point, *black_point;  /* ids, or NULL */
  HmProvenance provenance;
} HmCheck;

/** HmIncident: what happened to the machine before. @adds: chance that it brought each cause about, by cause index. */
typedef struct {
  const char *id, *name, *detail;
  const double *adds;
  const char * const *inspect;               /* in order of access */
  const char * const *avoid;                 /* how not to repeat it, for the owner */
  const char *proof;                         /* the test that says the parts are good */
  const HmCaution * const *cautions;
  HmProvenance provenance;
} HmIncident;

typedef struct {
  const char *id, *name, *owner_words;       /* "Nothing, a click, or it turns too slowly" */
  const char * const *verify_steps;
  HmDuration verify_time;
  double other_share;                        /* prior of "something not listed", 0–1 */
  HmDuration escalate_time;
  const char *escalate;                      /* what to do when nothing listed is left */
  guint max_batch;
  HmProvenance provenance;
} HmComplaint;

typedef struct { const char *id, *name, *detail; } HmLayout;

HmGuide *hm_guide_ref   (HmGuide *self);
void     hm_guide_unref (HmGuide *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmGuide, hm_guide_unref)

/* Where a count is given back, NULL is accepted for it. */
const HmComplaint  *hm_guide_get_complaint (const HmGuide *self);
const HmLayout     *hm_guide_get_layout    (const HmGuide *self);
const HmCause      *hm_guide_get_causes    (const HmGuide *self, guint *n);
const HmCheck      *hm_guide_get_checks    (const HmGuide *self, guint *n);
const HmAccessStep *hm_guide_get_access    (const HmGuide *self, guint *n);
const HmIncident   *hm_guide_get_incidents (const HmGuide *self, guint *n);

/** Index of an entry by id, or -1. */
int hm_guide_find_cause    (const HmGuide *self, const char *id);
int hm_guide_find_check    (const HmGuide *self, const char *id);
int hm_guide_find_incident (const HmGuide *self, const char *id);
int hm_guide_find_access   (const HmGuide *self, const char *id);
int hm_check_find_finding  (const HmCheck *check, const char *id);

G_END_DECLS
