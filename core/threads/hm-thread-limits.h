/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-thread.h"
G_BEGIN_DECLS

/*
 * Limits of size: what a gauged thread measures. Worked out from the standards' formulas, not tabled.
 */

/** HmThreadClass: tolerance class; lower-case g and A are bolts, H and B are holes. */
typedef enum {
  HM_THREAD_CLASS_6G, HM_THREAD_CLASS_6H,
  HM_THREAD_CLASS_1A, HM_THREAD_CLASS_2A, HM_THREAD_CLASS_3A,
  HM_THREAD_CLASS_1B, HM_THREAD_CLASS_2B, HM_THREAD_CLASS_3B
} HmThreadClass;

/**
 * HmThreadLimits: a plain value. The major diameter of a hole has no upper limit (its root may be as deep as the tap
 * makes it): @major_max is then 0. The minor diameter of a bolt runs from the deepest to the flattest root allowed.
 */
typedef struct {
  HmLength major_max, major_min;
  HmLength pitch_max, pitch_min;
  HmLength minor_max, minor_min;
} HmThreadLimits;

/** hm_thread_class_is_internal: whether the class is one of holes. */
gboolean hm_thread_class_is_internal (HmThreadClass self);

/** hm_thread_usual_class: what is made when nothing is said: 6g and 6H (ISO 965-1), 2A and 2B (ASME B1.1). */
HmThreadClass hm_thread_usual_class (HmThreadForm form, gboolean internal);

/** hm_thread_class_name: "6g", "2B"; static. */
const char *hm_thread_class_name (HmThreadClass self);

/**
 * hm_thread_get_limits:
 * @tables: (nullable): tells an extra-fine thread, whose tolerance ASME B1.1 takes at an engagement of nine pitches
 *   instead of one diameter; without it every Unified thread counts as UNC or UNF
 * @out: (out caller-allocates): written on success only
 * ISO 965-1, grade 6, normal engagement: tolerances by formula, rounded to the R40 series. The standard's own tables
 * leave the formulas by up to one step of that series (6 %) here and there, for a smooth run. ASME B1.1, section 5:
 * tolerances and allowance by formula, rounded to 0.0001 in as the standard does.
 * Returns: %FALSE with %HM_THREAD_ERROR_CLASS when the class belongs to the other thread form
 */
gboolean hm_thread_get_limits (const HmThread *self, HmThreadClass tolerance_class, const HmTables *tables,
                               HmThreadLimits *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_thread_usual_limits: limits of the usual class of the thread's own form; cannot fail. */
HmThreadLimits hm_thread_usual_limits (const HmThread *self, gboolean internal, const HmTables *tables);

G_END_DECLS
