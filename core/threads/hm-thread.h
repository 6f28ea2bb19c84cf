/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-quantity.h"
#include "hm-tables.h"
G_BEGIN_DECLS

/*
 * Screw threads. What is screwed with what, and which tool turns it, lives next door:
 * drive/ (heads and sockets), fasteners/ (a thread with a class and a drive), torque/.
 */
typedef enum { HM_THREAD_ERROR_SYNTAX, HM_THREAD_ERROR_RANGE, HM_THREAD_ERROR_CLASS } HmThreadError;
#define HM_THREAD_ERROR (hm_thread_error_quark ())
GQuark hm_thread_error_quark (void);

typedef enum { HM_THREAD_ISO_METRIC, HM_THREAD_UNIFIED } HmThreadForm;

/**
 * HmThread: a plain value.
 * @form: which standard's profile and formulas apply
 * @major: basic major diameter
 * @pitch: crest to crest; 25.4 mm / threads per inch for Unified
 */
typedef struct { HmThreadForm form; HmLength major, pitch; gboolean left_hand; } HmThread;

/**
 * hm_thread_parse:
 * @text: UTF-8, never NULL: "M8", "m8 x 1,25", "M14×1.25", "1/4-20", "5/16-18 UNC", "No.10-24", "#10-24", "M8 LH";
 *   bare "M8" is coarse (ISO 261)
 * @tables: (nullable): where the coarse series stands; without it a bare "M8" is refused
 * @out: (out caller-allocates): written on success only
 */
gboolean hm_thread_parse (const char *text, const HmTables *tables, HmThread *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_thread_format: "M8 × 1.25", "1/4-20", "No.10-24", with " LH" behind when left hand. (transfer full) */
char *hm_thread_format (const HmThread *self, const HmFormat *format);

HmLength hm_thread_pitch_diameter (const HmThread *self);        /* d2 = d − 0.649519 P; ISO 68-1, ASME B1.1 */
HmLength hm_thread_minor_diameter (const HmThread *self);        /* internal, D1 = d − 1.082532 P */

/** hm_thread_stress_area_mm2: tensile stress area, ISO 898-1 (metric) or ASME B1.1 (Unified); always > 0. */
double hm_thread_stress_area_mm2 (const HmThread *self);

G_END_DECLS
