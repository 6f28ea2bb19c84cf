/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-compile-read.h"
#include "hm-guide.h"
G_BEGIN_DECLS

/**
 * hm_lint_source: what only shows when entries are seen together, after all have been written: access steps that
 * require each other in a circle or are too many, checks that need a step both open and shut, and keys that nobody
 * asked for. Returns: %FALSE with the first of them
 */
gboolean hm_lint_source (HmSource *source, GError **error) G_GNUC_WARN_UNUSED_RESULT;

#define HM_LINT_DECIBANS 6.0     /* what a check should move a cause by, for and against */

/**
 * hm_lint_report: adds what is allowed but worth knowing of one guide to @report, a line each: causes that no check
 * moves by HM_LINT_DECIBANS for, or against, and causes that no check can tell apart.
 */
void hm_lint_report (const HmGuide *guide, GString *report);

/** hm_lint_best_decibans: 10·log10 of the change of a cause's odds by a finding: the most for it and the most against (negative), over all checks. */
void hm_lint_best_decibans (const HmGuide *guide, guint cause, double *most_for, double *most_against);

G_END_DECLS
