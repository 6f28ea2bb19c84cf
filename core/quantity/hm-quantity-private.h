/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-quantity.h"
G_BEGIN_DECLS

/* Shared by the files of this folder only; nothing outside may include it. */

/** HmUnitSide: in which of the two systems a unit is at home. */
typedef enum { HM_UNIT_SIDE_BOTH, HM_UNIT_SIDE_INCH, HM_UNIT_SIDE_METRIC } HmUnitSide;

/**
 * HmUnitInfo: one row of the unit table. A value @v in the unit is (@v - @zero) × @times / @over in the kind's base unit.
 * @other: the unit that the other system writes, HM_UNIT_NONE where both write this one
 * @decimals: digits after the point that the unit is read to at a bench
 * @fine_below: under this absolute value one digit more is written, unless it would be 0; under a tenth of it, two (0: never)
 */
typedef struct {
  const char *symbol;
  HmQuantityKind kind;
  double zero, times, over;
  HmUnitSide side;
  HmUnit other;
  int decimals;
  double fine_below;
} HmUnitInfo;

/**
 * HmKindInfo: one row of the table of kinds; HM_QUANTITY_N_KINDS stands for "any kind".
 * @name: with its article, for a sentence
 * @low, @high: what a person may type, in the base unit
 * @examples: what the sentence of a refusal proposes
 */
typedef struct {
  const char *name;
  HmUnit base;
  double low, high;
  const char *examples;
} HmKindInfo;

const HmUnitInfo *hm_unit_info (HmUnit unit);
const HmKindInfo *hm_quantity_kind_info (HmQuantityKind kind);
gboolean hm_unit_fits_kind (HmUnit unit, HmQuantityKind kind);   /* a stress may come in psi, a pressure in MPa */

/** HmFault: why typed text is refused. One sentence each, see hm_quantity_set_fault(). */
typedef enum {
  HM_FAULT_NONE,
  HM_FAULT_EMPTY, HM_FAULT_TOO_LONG, HM_FAULT_ENCODING,
  HM_FAULT_NOT_A_NUMBER, HM_FAULT_TWO_DECIMAL_SIGNS, HM_FAULT_ZERO_DENOMINATOR, HM_FAULT_MIXED_NUMBER, HM_FAULT_IS_RANGE,
  HM_FAULT_UNIT_UNKNOWN, HM_FAULT_UNIT_OTHER_KIND, HM_FAULT_UNIT_MISSING, HM_FAULT_UNIT_MISSING_ABOVE,
  HM_FAULT_UNIT_OF_FRACTION,
  HM_FAULT_REVERSED, HM_FAULT_LIMITS
} HmFault;

/** Sets the #HM_QUANTITY_ERROR for @fault. @text is what was typed, any bytes; @found the kind of the unit that was typed. */
void hm_quantity_set_fault (GError **error, HmFault fault, const char *text, HmQuantityKind kind, HmQuantityKind found);

/** HM_QUANTITY_MAX_BYTES: longer text than this is refused unread. */
#define HM_QUANTITY_MAX_BYTES 128

/** Valid UTF-8 with one spelling for each sign: see hm-quantity-fold.c. Returns: (transfer full) */
char *hm_quantity_fold (const char *text);

/* The scanners move @at past what they read, and leave it alone if they read nothing. All work on folded text. */
void     hm_scan_spaces (const char **at);
gboolean hm_scan_range_sign (const char **at);
gboolean hm_scan_unit (const char **at, HmUnit *unit);
/** @is_fraction: whether it was written with a fraction (as inches are). Returns: HM_FAULT_NONE if @value was written */
HmFault  hm_scan_number (const char **at, double *value, gboolean *is_fraction);

G_END_DECLS
