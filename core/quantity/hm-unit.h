/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/**
 * HmQuantityKind: what a typed value measures. The base unit, in which #HmQuantity.value is kept, stands behind each.
 */
typedef enum {
  HM_QUANTITY_NUMBER,        /* bare number */
  HM_QUANTITY_LENGTH,        /* mm */
  HM_QUANTITY_TORQUE,        /* N·m */
  HM_QUANTITY_FORCE,         /* N */
  HM_QUANTITY_STRESS,        /* MPa */
  HM_QUANTITY_PRESSURE,      /* kPa */
  HM_QUANTITY_VOLTAGE,       /* V */
  HM_QUANTITY_CURRENT,       /* A */
  HM_QUANTITY_RESISTANCE,    /* Ω */
  HM_QUANTITY_SPEED,         /* r/min */
  HM_QUANTITY_TEMPERATURE,   /* °C */
  HM_QUANTITY_DURATION,      /* min */
  HM_QUANTITY_FREQUENCY,     /* Hz */
  HM_QUANTITY_RATIO,         /* 1; written in % */
  HM_QUANTITY_AREA,          /* mm² */
  HM_QUANTITY_N_KINDS
} HmQuantityKind;

/**
 * HmUnit: a unit that people type and read. HM_UNIT_NONE means "the kind's base unit".
 */
typedef enum {
  HM_UNIT_NONE,
  HM_UNIT_MM, HM_UNIT_CM, HM_UNIT_M, HM_UNIT_INCH, HM_UNIT_FOOT, HM_UNIT_THOU, HM_UNIT_MICROMETRE,
  HM_UNIT_NEWTON_METRE, HM_UNIT_POUND_FOOT, HM_UNIT_POUND_INCH, HM_UNIT_KILOGRAM_METRE, HM_UNIT_OUNCE_INCH,
  HM_UNIT_NEWTON, HM_UNIT_KILONEWTON, HM_UNIT_POUND_FORCE,
  HM_UNIT_MEGAPASCAL, HM_UNIT_KSI,
  HM_UNIT_KILOPASCAL, HM_UNIT_PSI, HM_UNIT_BAR, HM_UNIT_INCH_WATER, HM_UNIT_INCH_MERCURY,
  HM_UNIT_VOLT, HM_UNIT_MILLIVOLT, HM_UNIT_AMPERE, HM_UNIT_MILLIAMPERE,
  HM_UNIT_OHM, HM_UNIT_MILLIOHM, HM_UNIT_KILOOHM, HM_UNIT_MEGAOHM,
  HM_UNIT_RPM, HM_UNIT_CELSIUS, HM_UNIT_FAHRENHEIT,
  HM_UNIT_SECOND, HM_UNIT_MINUTE, HM_UNIT_HOUR,
  HM_UNIT_HERTZ, HM_UNIT_PERCENT, HM_UNIT_MM2, HM_UNIT_IN2,
  HM_UNIT_N_UNITS
} HmUnit;

const char    *hm_unit_symbol (HmUnit unit);      /* "N·m", "lbf·ft", "in", "V"; "" for none */
HmQuantityKind hm_unit_kind (HmUnit unit);
HmUnit         hm_quantity_kind_base_unit (HmQuantityKind kind);   /* HM_UNIT_NONE for a number and a ratio, kept as 1 */

G_END_DECLS
