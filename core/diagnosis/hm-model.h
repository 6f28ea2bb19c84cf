/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
#include <glib-object.h>
G_BEGIN_DECLS

/*
 * The numbers of a complaint, without words: what the belief and the planner compute on. Built from a guide
 * (hm-model-from-guide.h) or read from JSON (hm-model-json.h). Immutable once sealed. Everything is a flat array.
 * Causes are 0 … n_causes − 1; index n_causes is "something not listed".
 */
#define HM_MODEL_MAX_CAUSES   64u
#define HM_MODEL_MAX_CHECKS   96u
#define HM_MODEL_MAX_OUTCOMES 12u
#define HM_MODEL_MAX_ACCESS   60u
#define HM_MODEL_MAX_BATCH    4u

typedef guint64 HmModelSet;    /* bit per access step, or per check */

typedef enum { HM_MODEL_SINGLE_FAULT, HM_MODEL_SEVERAL_FAULTS } HmModelMode;

typedef struct {
  char *id;
  double prior;                  /* weight (single) or probability (several) */
  double repair_minutes;
  HmModelSet need;               /* access steps, requirements included once sealed */
} HmModelCause;

typedef struct {
  char *id;
  double open_minutes, close_minutes;
  HmModelSet requires;           /* all of them, transitively, once sealed */
  HmModelSet dependents;         /* itself and what requires it, once sealed */
  gboolean blocks_verify;
} HmModelAccess;

typedef struct {
  char *id;
  double minutes;
  HmModelSet need;               /* access steps, requirements included once sealed */
  HmModelSet closed;             /* must be shut, dependents included once sealed */
  guint n_outcomes;
  char *outcome_ids[HM_MODEL_MAX_OUTCOMES];
  double *likelihood;            /* [n_outcomes][n_causes + 1], row-major */
  gboolean numeric, normal_above;
  double edges[HM_MODEL_MAX_OUTCOMES];   /* n_outcomes − 1, between outcome k and k + 1 */
  double meter_sd;
  char *unit;                    /* as the file says, or NULL */
  char **tools;                  /* NULL-terminated, or NULL */
} HmModelCheck;

typedef struct { char *id; double *adds; } HmModelIncident;   /* adds: [n_causes + 1] */

typedef struct {
  char *complaint;
  HmModelMode mode;
  guint n_causes, n_access, n_checks, n_incidents;
  HmModelCause    *causes;
  HmModelAccess   *access;
  HmModelCheck    *checks;
  HmModelIncident *incidents;
  double other_prior, other_minutes;     /* other_minutes: also what sending the job out costs */
  double verify_minutes;
  guint max_batch;
  /* derived when sealed */
  HmModelSet blocking;                   /* must be shut to verify, with dependents */
  double *shut_minutes;                  /* [n_causes]: repair and verify each alone, with the machine shut before */
  double *set_minutes;                   /* [8 bytes of a set][256]: open + close of the steps in that byte */
} HmModel;

typedef enum { HM_MODEL_ERROR_SYNTAX, HM_MODEL_ERROR_VALUE, HM_MODEL_ERROR_REFERENCE, HM_MODEL_ERROR_SIZE, HM_MODEL_ERROR_MODE } HmModelError;
#define HM_MODEL_ERROR (hm_model_error_quark ())
GQuark hm_model_error_quark (void);

HmModel *hm_model_new   (guint n_causes, guint n_access, guint n_checks, guint n_incidents);   /* zeroed, to be filled and sealed */
HmModel *hm_model_ref   (HmModel *self);
void     hm_model_unref (HmModel *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmModel, hm_model_unref)

/**
 * hm_model_seal: checks every number and closes the access sets over their requirements.
 * Returns: %FALSE with %HM_MODEL_ERROR naming the entry and what is accepted
 */
gboolean hm_model_seal (HmModel *self, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** P(outcome | cause); @cause may be n_causes ("not listed"). */
static inline double
hm_model_likelihood (const HmModel *self, guint check, guint outcome, guint cause)
{
  return self->checks[check].likelihood[outcome * (self->n_causes + 1) + cause];
}

/** hm_model_set_minutes: opening and closing every step of @set; charged when a step is opened. One look-up a byte. */
static inline double
hm_model_set_minutes (const HmModel *self, HmModelSet set)
{
  double minutes = 0;

  for (const double *byte = self->set_minutes; set != 0; set >>= 8, byte += 256)
    minutes += byte[set & 0xff];
  return minutes;
}

int hm_model_find_cause    (const HmModel *self, const char *id);   /* "_other" gives n_causes; -1: none */
int hm_model_find_check    (const HmModel *self, const char *id);
int hm_model_find_incident (const HmModel *self, const char *id);
int hm_model_find_access   (const HmModel *self, const char *id);
int hm_model_find_outcome  (const HmModel *self, guint check, const char *id);

G_END_DECLS
