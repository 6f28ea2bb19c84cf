/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-unit.h"
G_BEGIN_DECLS

/*
 * One-field structs, so that the compiler refuses a torque as a length. The field name is the unit:
 * everything inside the core is SI (millimetres and minutes where the trade thinks in them).
 */
typedef struct { double mm; } HmLength;
typedef struct { double newton_metres; } HmTorque;
typedef struct { double newtons; } HmForce;
typedef struct { double megapascals; } HmStress;
typedef struct { double minutes; } HmDuration;

/**
 * HmQuantity: a number that knows what it measures. A plain value: copy with `=`.
 * @value: in the base unit of @kind
 * @unit: the unit it was typed in (for showing it back as the person wrote it)
 */
typedef struct { HmQuantityKind kind; double value; HmUnit unit; } HmQuantity;

/** HmQuantityRange: @low <= @high, both of one kind; a single value has @low equal to @high. */
typedef struct { HmQuantity low, high; } HmQuantityRange;

/**
 * HmQuantityError:
 * @HM_QUANTITY_ERROR_EMPTY: nothing was typed
 * @HM_QUANTITY_ERROR_SYNTAX: it does not read as a number with a unit
 * @HM_QUANTITY_ERROR_UNIT: a unit that is unknown, or of another kind than the field wants
 * @HM_QUANTITY_ERROR_RANGE: a number no instrument shows (not finite, or beyond what the kind can be)
 * @HM_QUANTITY_ERROR_ENCODING: not UTF-8
 * Every message says what was read and what is accepted.
 */
typedef enum {
  HM_QUANTITY_ERROR_EMPTY, HM_QUANTITY_ERROR_SYNTAX, HM_QUANTITY_ERROR_UNIT,
  HM_QUANTITY_ERROR_RANGE, HM_QUANTITY_ERROR_ENCODING
} HmQuantityError;
#define HM_QUANTITY_ERROR (hm_quantity_error_quark ())
GQuark hm_quantity_error_quark (void);

/**
 * hm_quantity_parse:
 * @text: bytes as typed, never NULL; need not be valid UTF-8
 * @kind: what the field measures
 * @default_unit: the unit of a bare number, or HM_UNIT_NONE if the field wants the unit to be typed
 *   (HM_QUANTITY_NUMBER takes no unit)
 * @out: (out caller-allocates): written on success only
 * Accepts comma or point, `11/32`, `1 1/8"`, `1-1/8 in`, `¼`, `8mm`, `45 ft-lb`, `61 N·m`, `-5 C`, `68 °F`; at most 128 bytes.
 * What could be read two ways:
 * - `1,200` and `1.200` are 1.2: comma and point are both the decimal sign, never a thousands sign. Two signs in one number
 *   (`1,200.5`) are refused.
 * - `1-1/8` is one and an eighth, `4-6` a range: a hyphen makes a mixed number only right between a whole number, not 0, and
 *   a fraction below 1. `1 - 1/8` and `1–1/8` are ranges (and refused: the higher end comes first).
 * - A fraction without a unit is refused where @default_unit is a metric length: nobody writes millimetres so.
 * - Upper and lower case are the same, but for m and M: mV, mA, mΩ and m (metre) want the small letter, MΩ the capital.
 * - `lb` alone is a force. Psi reads as a stress where @kind is one, MPa as a pressure. Pressure is gauge pressure.
 * Refused as out of range: a length, torque, force, stress, resistance, speed, time, frequency, area below 0, a temperature below
 * −273.15 °C, a vacuum below −110 kPa, and anything far beyond a bench (see hm-quantity-kind.c).
 * Returns: %TRUE if @out was written
 */
gboolean hm_quantity_parse (const char *text, HmQuantityKind kind, HmUnit default_unit,
                            HmQuantity *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hm_quantity_parse_range: as hm_quantity_parse(), and also `4-6 lbf·ft`, `12.4–12.6 V`, `0.3 to 0.5 V`;
 * a single value gives a range of that value. The lower end may leave out its unit, the upper end only if both do.
 * Each end keeps the unit it was typed in. Range signs are hyphen, dash, `..`, `~`, `to`. The lower end has to come first.
 */
gboolean hm_quantity_parse_range (const char *text, HmQuantityKind kind, HmUnit default_unit,
                                  HmQuantityRange *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/**
 * hm_quantity_parse_any: a value whose unit says what it measures ("12.4 V", "5-7 N·m").
 * A bare number is HM_QUANTITY_NUMBER.
 */
gboolean hm_quantity_parse_any (const char *text, HmQuantityRange *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

HmQuantity hm_quantity (HmQuantityKind kind, double value, HmUnit unit);   /* @value in @unit, which fits @kind; unchecked */
double hm_quantity_in (HmQuantity self, HmUnit unit);                      /* HM_UNIT_NONE: base unit */

typedef enum { HM_UNIT_SYSTEM_INCH_FIRST, HM_UNIT_SYSTEM_METRIC_FIRST } HmUnitSystem;

/**
 * HmFormat: how the person reads numbers. The caller passes it in: core asks no locale.
 * @decimal_point: "." or ",", borrowed, never NULL
 */
typedef struct { const char *decimal_point; HmUnitSystem system; } HmFormat;
extern const HmFormat hm_format_default;   /* point, inch first */

/** For @decimals: no more digits than the value has (a limit as it was written down: "12.4 V", "150 A"). */
#define HM_DECIMALS_SHORTEST (-2)

/**
 * hm_quantity_format:
 * @unit: the unit to write it in; HM_UNIT_NONE for the one it was typed in
 * @decimals: digits after the point; -1 for as many as the unit is read to at a bench (0 for lbf·in and rpm,
 *   1 for N·m, 2 for V ...), trailing zeros kept; a small value gets one or two more rather than lose some of its worth
 *   (4.4 lbf·ft, 0.45 N·m, 0.45 MPa, 2.5 s). A bare number shows six digits at most, without trailing zeros. @decimals is 15 at most.
 * Number and unit are joined by a no-break space, minus is U+2212. HM_UNIT_INCH with @decimals -1 writes a
 * fraction where the value is one of 64ths ("11/32 in", "1 1/8 in"), else three decimals.
 * @self has to be finite.
 * Returns: (transfer full)
 */
char *hm_quantity_format (HmQuantity self, HmUnit unit, int decimals, const HmFormat *format);

/** hm_quantity_range_format: "4–6 lbf·ft" with an en dash, one unit, HM_UNIT_NONE that of @low; a single value, or ends
 * that are written alike, as hm_quantity_format(). */
char *hm_quantity_range_format (HmQuantityRange self, HmUnit unit, int decimals, const HmFormat *format);

/** hm_quantity_range_format_both: both systems side by side, the person's own first: "4–6 lbf·ft (5.4–8.1 N·m)".
 * Kinds with one unit in both systems (V, A, Ω) come once. Below 10 N·m the inch side of a metric torque is in lbf·in. */
char *hm_quantity_range_format_both (HmQuantityRange self, const HmFormat *format);

G_END_DECLS
