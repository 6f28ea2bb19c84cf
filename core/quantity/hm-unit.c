/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity.h"
#include "hm-quantity-private.h"

/*
 * The units and what they are worth. The factors follow from exact definitions, none is rounded: NIST Special
 * Publication 811, "Guide for the Use of the International System of Units", Appendix B.
 */
#define INCH_MM    25.4                 /* exact since 1959: SP 811 B.6 */
#define POUND_N    4.4482216152605      /* 0.45359237 kg × 9.80665 m/s², exact: SP 811 B.8 and B.9 */
#define GRAVITY    9.80665              /* m/s², standard acceleration of free fall, exact: SP 811 B.8 */
#define MERCURY    13.5951              /* g/cm³, conventional, the basis of inHg in SP 811 B.8; water counts 1 g/cm³ */

#define BOTH   HM_UNIT_SIDE_BOTH
#define INCH   HM_UNIT_SIDE_INCH
#define METRIC HM_UNIT_SIDE_METRIC

static const HmUnitInfo units[HM_UNIT_N_UNITS] = {
  /*                         symbol    kind                     zero  times               over     system  other system's        digits, finer below */
  [HM_UNIT_NONE]           = { "",       HM_QUANTITY_NUMBER,      0, 1,                     1,       BOTH,   HM_UNIT_NONE,          0,  0 },

  [HM_UNIT_MM]             = { "mm",     HM_QUANTITY_LENGTH,      0, 1,                     1,       METRIC, HM_UNIT_INCH,          2,  0 },
  [HM_UNIT_CM]             = { "cm",     HM_QUANTITY_LENGTH,      0, 10,                    1,       METRIC, HM_UNIT_INCH,          1,  0 },
  [HM_UNIT_M]              = { "m",      HM_QUANTITY_LENGTH,      0, 1000,                  1,       METRIC, HM_UNIT_FOOT,          2,  0 },
  [HM_UNIT_INCH]           = { "in",     HM_QUANTITY_LENGTH,      0, INCH_MM,               1,       INCH,   HM_UNIT_MM,            3,  0 },
  [HM_UNIT_FOOT]           = { "ft",     HM_QUANTITY_LENGTH,      0, 12 * INCH_MM,          1,       INCH,   HM_UNIT_M,             2,  0 },
  [HM_UNIT_THOU]           = { "thou",   HM_QUANTITY_LENGTH,      0, INCH_MM,               1000,    INCH,   HM_UNIT_MM,            0,  20 },
  [HM_UNIT_MICROMETRE]     = { "µm",     HM_QUANTITY_LENGTH,      0, 1,                     1000,    METRIC, HM_UNIT_THOU,          0,  20 },

  [HM_UNIT_NEWTON_METRE]   = { "N·m",    HM_QUANTITY_TORQUE,      0, 1,                     1,       METRIC, HM_UNIT_POUND_FOOT,    1,  2 },
  [HM_UNIT_POUND_FOOT]     = { "lbf·ft", HM_QUANTITY_TORQUE,      0, POUND_N * 12 * INCH_MM, 1000,   INCH,   HM_UNIT_NEWTON_METRE,  0,  20 },
  [HM_UNIT_POUND_INCH]     = { "lbf·in", HM_QUANTITY_TORQUE,      0, POUND_N * INCH_MM,     1000,    INCH,   HM_UNIT_NEWTON_METRE,  0,  20 },
  [HM_UNIT_KILOGRAM_METRE] = { "kgf·m",  HM_QUANTITY_TORQUE,      0, GRAVITY,               1,       METRIC, HM_UNIT_POUND_FOOT,    2,  0 },
  [HM_UNIT_OUNCE_INCH]     = { "ozf·in", HM_QUANTITY_TORQUE,      0, POUND_N * INCH_MM,     16000,   INCH,   HM_UNIT_NEWTON_METRE,  0,  20 },

  [HM_UNIT_NEWTON]         = { "N",      HM_QUANTITY_FORCE,       0, 1,                     1,       METRIC, HM_UNIT_POUND_FORCE,   0,  20 },
  [HM_UNIT_KILONEWTON]     = { "kN",     HM_QUANTITY_FORCE,       0, 1000,                  1,       METRIC, HM_UNIT_POUND_FORCE,   1,  2 },
  [HM_UNIT_POUND_FORCE]    = { "lbf",    HM_QUANTITY_FORCE,       0, POUND_N,               1,       INCH,   HM_UNIT_NEWTON,        0,  20 },

  [HM_UNIT_MEGAPASCAL]     = { "MPa",    HM_QUANTITY_STRESS,      0, 1,                     1,       METRIC, HM_UNIT_KSI,           0,  20 },
  [HM_UNIT_KSI]            = { "ksi",    HM_QUANTITY_STRESS,      0, 1000 * POUND_N,        INCH_MM * INCH_MM, INCH, HM_UNIT_MEGAPASCAL, 1, 2 },

  [HM_UNIT_KILOPASCAL]     = { "kPa",    HM_QUANTITY_PRESSURE,    0, 1,                     1,       METRIC, HM_UNIT_PSI,           0,  20 },
  [HM_UNIT_PSI]            = { "psi",    HM_QUANTITY_PRESSURE,    0, 1000 * POUND_N,        INCH_MM * INCH_MM, INCH, HM_UNIT_KILOPASCAL, 0, 20 },
  [HM_UNIT_BAR]            = { "bar",    HM_QUANTITY_PRESSURE,    0, 100,                   1,       METRIC, HM_UNIT_PSI,           2,  0 },
  [HM_UNIT_INCH_WATER]     = { "inH₂O",  HM_QUANTITY_PRESSURE,    0, GRAVITY * INCH_MM,     1000,    INCH,   HM_UNIT_KILOPASCAL,    1,  0 },
  [HM_UNIT_INCH_MERCURY]   = { "inHg",   HM_QUANTITY_PRESSURE,    0, MERCURY * GRAVITY * INCH_MM, 1000, INCH, HM_UNIT_KILOPASCAL,   1,  0 },

  [HM_UNIT_VOLT]           = { "V",      HM_QUANTITY_VOLTAGE,     0, 1,                     1,       BOTH,   HM_UNIT_NONE,          2,  0 },
  [HM_UNIT_MILLIVOLT]      = { "mV",     HM_QUANTITY_VOLTAGE,     0, 1,                     1000,    BOTH,   HM_UNIT_NONE,          0,  20 },
  [HM_UNIT_AMPERE]         = { "A",      HM_QUANTITY_CURRENT,     0, 1,                     1,       BOTH,   HM_UNIT_NONE,          1,  2 },
  [HM_UNIT_MILLIAMPERE]    = { "mA",     HM_QUANTITY_CURRENT,     0, 1,                     1000,    BOTH,   HM_UNIT_NONE,          0,  20 },
  [HM_UNIT_OHM]            = { "Ω",      HM_QUANTITY_RESISTANCE,  0, 1,                     1,       BOTH,   HM_UNIT_NONE,          1,  2 },
  [HM_UNIT_MILLIOHM]       = { "mΩ",     HM_QUANTITY_RESISTANCE,  0, 1,                     1000,    BOTH,   HM_UNIT_NONE,          0,  20 },
  [HM_UNIT_KILOOHM]        = { "kΩ",     HM_QUANTITY_RESISTANCE,  0, 1000,                  1,       BOTH,   HM_UNIT_NONE,          2,  0 },
  [HM_UNIT_MEGAOHM]        = { "MΩ",     HM_QUANTITY_RESISTANCE,  0, 1000000,               1,       BOTH,   HM_UNIT_NONE,          2,  0 },

  [HM_UNIT_RPM]            = { "rpm",    HM_QUANTITY_SPEED,       0, 1,                     1,       BOTH,   HM_UNIT_NONE,          0,  0 },
  [HM_UNIT_CELSIUS]        = { "°C",     HM_QUANTITY_TEMPERATURE, 0, 1,                     1,       METRIC, HM_UNIT_FAHRENHEIT,    0,  0 },
  /* t/°C = (t/°F − 32) / 1.8, exact: SP 811 B.8 and 8.5 */
  [HM_UNIT_FAHRENHEIT]     = { "°F",     HM_QUANTITY_TEMPERATURE, 32, 5,                    9,       INCH,   HM_UNIT_CELSIUS,       0,  0 },

  [HM_UNIT_SECOND]         = { "s",      HM_QUANTITY_DURATION,    0, 1,                     60,      BOTH,   HM_UNIT_NONE,          0,  20 },
  [HM_UNIT_MINUTE]         = { "min",    HM_QUANTITY_DURATION,    0, 1,                     1,       BOTH,   HM_UNIT_NONE,          0,  20 },
  [HM_UNIT_HOUR]           = { "h",      HM_QUANTITY_DURATION,    0, 60,                    1,       BOTH,   HM_UNIT_NONE,          1,  0 },
  [HM_UNIT_HERTZ]          = { "Hz",     HM_QUANTITY_FREQUENCY,   0, 1,                     1,       BOTH,   HM_UNIT_NONE,          1,  0 },
  [HM_UNIT_PERCENT]        = { "%",      HM_QUANTITY_RATIO,       0, 1,                     100,     BOTH,   HM_UNIT_NONE,          0,  20 },
  [HM_UNIT_MM2]            = { "mm²",    HM_QUANTITY_AREA,        0, 1,                     1,       METRIC, HM_UNIT_IN2,           1,  2 },
  [HM_UNIT_IN2]            = { "in²",    HM_QUANTITY_AREA,        0, INCH_MM * INCH_MM,     1,       INCH,   HM_UNIT_MM2,           4,  0 },
};

const HmUnitInfo *
hm_unit_info (HmUnit unit)
{
  g_assert ((guint) unit < HM_UNIT_N_UNITS);
  return &units[unit];
}

static gboolean
is_force_per_area (HmQuantityKind kind)
{
  return kind == HM_QUANTITY_STRESS || kind == HM_QUANTITY_PRESSURE;
}

gboolean
hm_unit_fits_kind (HmUnit unit, HmQuantityKind kind)
{
  HmQuantityKind own = hm_unit_info (unit)->kind;
  return unit == HM_UNIT_NONE || own == kind || (is_force_per_area (own) && is_force_per_area (kind));
}

/* 1 MPa = 1000 kPa: what turns the base unit of the unit's own kind into the one of @kind */
static double
kind_factor (const HmUnitInfo *info, HmQuantityKind kind)
{
  if (info->kind == HM_QUANTITY_STRESS && kind == HM_QUANTITY_PRESSURE)
    return 1000;
  if (info->kind == HM_QUANTITY_PRESSURE && kind == HM_QUANTITY_STRESS)
    return 0.001;
  return 1;
}

const char *
hm_unit_symbol (HmUnit unit)
{
  g_return_val_if_fail ((guint) unit < HM_UNIT_N_UNITS, "");
  return units[unit].symbol;
}

HmQuantityKind
hm_unit_kind (HmUnit unit)
{
  g_return_val_if_fail ((guint) unit < HM_UNIT_N_UNITS, HM_QUANTITY_NUMBER);
  return units[unit].kind;
}

HmQuantity
hm_quantity (HmQuantityKind kind, double value, HmUnit unit)
{
  HmQuantity self = { kind, value, unit };
  g_return_val_if_fail ((guint) kind < HM_QUANTITY_N_KINDS, self);
  g_return_val_if_fail ((guint) unit < HM_UNIT_N_UNITS && hm_unit_fits_kind (unit, kind), self);
  self.value = (value - units[unit].zero) * units[unit].times / units[unit].over * kind_factor (&units[unit], kind);
  return self;
}

double
hm_quantity_in (HmQuantity self, HmUnit unit)
{
  g_return_val_if_fail ((guint) self.kind < HM_QUANTITY_N_KINDS, self.value);
  g_return_val_if_fail ((guint) unit < HM_UNIT_N_UNITS && hm_unit_fits_kind (unit, self.kind), self.value);
  return self.value / kind_factor (&units[unit], self.kind) * units[unit].over / units[unit].times + units[unit].zero;
}
