/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-source-entry.h"
G_BEGIN_DECLS

/*
 * Likelihood rows: how often each finding of a check comes up if one cause is at work. A row is @n shares, one a
 * finding, normal to worst.
 */
#define HM_ROWS_FLOOR 0.005     /* no finding is rarer: one misread gauge must be recoverable */
#define HM_ROWS_MAX_FINDINGS 16

/**
 * hm_rows_parse: "ok rarely; low often; one-click 55".
 * @findings: ids of the check's findings, @n of them, @n at most HM_ROWS_MAX_FINDINGS
 * @fallback: (nullable): the filled row of `Default`, in whose proportion left-out findings share what is left;
 *   NULL (or zeros there): evenly
 * @out: @n shares that sum to 1, before floors
 * Returns: %FALSE when a finding is unknown or named twice, or the shares do not fit into 100 %
 */
gboolean hm_rows_parse (const char *text, const char * const *findings, guint n, const double *fallback,
                        double *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_rows_floor: raises shares below HM_ROWS_FLOOR to it and takes that off the others in proportion; sums to 1 within 1e-12. */
void hm_rows_floor (double *row, guint n);

/** hm_rows_add: total += weight · row. */
void hm_rows_add (double *total, const double *row, double weight, guint n);

/** hm_rows_scale_to_one: divides by the sum, which is above 0. */
void hm_rows_scale_to_one (double *row, guint n);

G_END_DECLS
