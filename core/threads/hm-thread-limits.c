/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-thread-limits.h"

#include <math.h>

#define MM_PER_INCH 25.4
#define MM_PER_MICROMETRE 0.001

/* Roots of bolts, in pitches below the major diameter. ISO 68-1: rounded with H/6, and flat at the basic minor diameter.
 * ASME B1.1: UNR root, d − 1.190785 P at most. */
#define METRIC_ROUNDED_ROOT 1.226869
#define FLAT_ROOT 1.082532
#define UNIFIED_ROUNDED_ROOT 1.190785

gboolean
hm_thread_class_is_internal (HmThreadClass self)
{
  return self == HM_THREAD_CLASS_6H || self >= HM_THREAD_CLASS_1B;
}

HmThreadClass
hm_thread_usual_class (HmThreadForm form, gboolean internal)
{
  if (form == HM_THREAD_ISO_METRIC)
    return internal ? HM_THREAD_CLASS_6H : HM_THREAD_CLASS_6G;
  return internal ? HM_THREAD_CLASS_2B : HM_THREAD_CLASS_2A;
}

const char *
hm_thread_class_name (HmThreadClass self)
{
  static const char * const names[] = { "6g", "6H", "1A", "2A", "3A", "1B", "2B", "3B" };

  g_return_val_if_fail ((gsize) self < G_N_ELEMENTS (names), NULL);
  return names[self];
}

/* The nearest, by ratio, of the R40 preferred numbers (ISO 3), 40 to a decade. */
static double
round_to_r40 (double value)
{
  static const double r40[] = {
    1.00, 1.06, 1.12, 1.18, 1.25, 1.32, 1.40, 1.50, 1.60, 1.70, 1.80, 1.90, 2.00, 2.12, 2.24, 2.36, 2.50, 2.65, 2.80, 3.00,
    3.15, 3.35, 3.55, 3.75, 4.00, 4.25, 4.50, 4.75, 5.00, 5.30, 5.60, 6.00, 6.30, 6.70, 7.10, 7.50, 8.00, 8.50, 9.00, 9.50,
    10.0
  };
  double decade = pow (10.0, floor (log10 (value)));
  gsize above = 1;

  while (above < G_N_ELEMENTS (r40) - 1 && r40[above] * decade < value)
    above++;
  /* the middle by ratio is the geometric mean */
  return (value / decade * (value / decade) > r40[above - 1] * r40[above] ? r40[above] : r40[above - 1]) * decade;
}

/* ISO 965-1 takes the geometric mean of the span of diameters that the thread falls in. */
static double
mean_of_span_mm (double major_mm)
{
  static const double edges[] = { 0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45.0, 90.0, 180.0, 355.0 };

  for (gsize i = 1; i < G_N_ELEMENTS (edges); i++)
    if (major_mm <= edges[i])
      return sqrt (edges[i - 1] * edges[i]);
  return major_mm;
}

/* ISO 965-1, grade 6; lengths in mm, result in mm. */
static double
metric_pitch_tolerance (double pitch, double major)
{
  return 90.0 * pow (pitch, 0.4) * pow (mean_of_span_mm (major), 0.1) * MM_PER_MICROMETRE;
}

static void
metric_external (const HmThread *self, HmThreadLimits *out)
{
  double p = self->pitch.mm, d = self->major.mm;
  /* fundamental deviation g, to the nearest R40 number and then to whole micrometres, half to even as ISO 965-1 tables it */
  double deviation = rint (round_to_r40 (15.0 + 11.0 * p)) * MM_PER_MICROMETRE;
  double major_tolerance = round_to_r40 (180.0 * pow (p, 2.0 / 3.0) - 3.15 / sqrt (p)) * MM_PER_MICROMETRE;
  double pitch_tolerance = round_to_r40 (metric_pitch_tolerance (p, d) * 1000.0) * MM_PER_MICROMETRE;

  out->major_max.mm = d - deviation;
  out->major_min.mm = out->major_max.mm - major_tolerance;
  out->pitch_max.mm = hm_thread_pitch_diameter (self).mm - deviation;
  out->pitch_min.mm = out->pitch_max.mm - pitch_tolerance;
  out->minor_max.mm = d - FLAT_ROOT * p - deviation;
  out->minor_min.mm = d - METRIC_ROUNDED_ROOT * p - deviation - pitch_tolerance;
}

static void
metric_internal (const HmThread *self, HmThreadLimits *out)
{
  double p = self->pitch.mm, d = self->major.mm;
  double minor = p >= 1.0 ? 230.0 * pow (p, 0.7) : 433.0 * p - 190.0 * pow (p, 1.22);

  out->major_max.mm = 0.0;
  out->major_min.mm = d;
  out->pitch_min.mm = hm_thread_pitch_diameter (self).mm;
  out->pitch_max.mm = out->pitch_min.mm
                      + round_to_r40 (1.32 * metric_pitch_tolerance (p, d) * 1000.0) * MM_PER_MICROMETRE;
  out->minor_min.mm = hm_thread_minor_diameter (self).mm;
  out->minor_max.mm = out->minor_min.mm + round_to_r40 (minor) * MM_PER_MICROMETRE;
}

static gboolean
is_extra_fine (const HmThread *self, const HmTables *tables)
{
  gsize n = 0;
  const HmThreadRow *rows = tables != NULL ? hm_tables_get_threads (tables, &n) : NULL;

  for (gsize i = 0; i < n; i++)
    if (rows[i].series == HM_SERIES_UNEF && fabs (rows[i].major.mm - self->major.mm) < 1e-4
        && fabs (rows[i].pitch.mm - self->pitch.mm) < 1e-4)
      return TRUE;
  return FALSE;
}

static double
round_to_tenth_thou (double inches)
{
  return round (inches * 10000.0) / 10000.0;
}

/* ASME B1.1, class 2A: inches. */
static double
unified_pitch_tolerance (double pitch, double major, double engagement)
{
  return 0.0015 * cbrt (major) + 0.0015 * sqrt (engagement) + 0.015 * pow (pitch, 2.0 / 3.0);
}

/* How each class scales the 2A tolerance of the pitch diameter. */
static double
unified_factor (HmThreadClass tolerance_class)
{
  switch (tolerance_class)
    {
    case HM_THREAD_CLASS_1A:
      return 1.5;
    case HM_THREAD_CLASS_3A:
      return 0.75;
    case HM_THREAD_CLASS_1B:
      return 1.95;
    case HM_THREAD_CLASS_2B:
      return 1.3;
    case HM_THREAD_CLASS_3B:
      return 0.975;
    default:
      return 1.0;
    }
}

/* ASME B1.1: tolerance of the minor diameter of holes, inches. */
static double
unified_minor_tolerance (double p, double d, HmThreadClass tolerance_class)
{
  double by_size = 0.05 * pow (p, 2.0 / 3.0) + 0.03 * p / d - 0.002, least;

  if (tolerance_class == HM_THREAD_CLASS_3B)
    {
      least = p < 1.0 / 12.5 ? 0.23 * p - 1.5 * p * p : 0.12 * p;
      return CLAMP (by_size, least, 0.394 * p);
    }
  least = p <= 0.25 ? 0.25 * p - 0.4 * p * p : 0.15 * p;
  return d < 0.25 ? CLAMP (by_size, least, 0.394 * p) : least;
}

static void
unified_external (const HmThread *self, HmThreadClass tolerance_class, double base, HmThreadLimits *out)
{
  double p = self->pitch.mm / MM_PER_INCH, d = self->major.mm / MM_PER_INCH;
  double allowance = tolerance_class == HM_THREAD_CLASS_3A ? 0.0 : round_to_tenth_thou (0.3 * base);
  double major = round_to_tenth_thou ((tolerance_class == HM_THREAD_CLASS_1A ? 0.09 : 0.06) * pow (p, 2.0 / 3.0));
  double pitch = round_to_tenth_thou (base * unified_factor (tolerance_class));
  double pitch_max = round_to_tenth_thou (hm_thread_pitch_diameter (self).mm / MM_PER_INCH) - allowance;

  out->major_max.mm = (d - allowance) * MM_PER_INCH;
  out->major_min.mm = (d - allowance - major) * MM_PER_INCH;
  out->pitch_max.mm = pitch_max * MM_PER_INCH;
  out->pitch_min.mm = (pitch_max - pitch) * MM_PER_INCH;
  out->minor_max.mm = (d - FLAT_ROOT * p - allowance) * MM_PER_INCH;
  out->minor_min.mm = (d - UNIFIED_ROUNDED_ROOT * p - allowance - pitch) * MM_PER_INCH;
}

static void
unified_internal (const HmThread *self, HmThreadClass tolerance_class, double base, HmThreadLimits *out)
{
  double p = self->pitch.mm / MM_PER_INCH, d = self->major.mm / MM_PER_INCH;
  double pitch_min = round_to_tenth_thou (hm_thread_pitch_diameter (self).mm / MM_PER_INCH);

  out->major_max.mm = 0.0;
  out->major_min.mm = self->major.mm;
  out->pitch_min.mm = pitch_min * MM_PER_INCH;
  out->pitch_max.mm = (pitch_min + round_to_tenth_thou (base * unified_factor (tolerance_class))) * MM_PER_INCH;
  out->minor_min.mm = hm_thread_minor_diameter (self).mm;
  out->minor_max.mm = out->minor_min.mm
                      + round_to_tenth_thou (unified_minor_tolerance (p, d, tolerance_class)) * MM_PER_INCH;
}

static void
unified (const HmThread *self, HmThreadClass tolerance_class, const HmTables *tables, HmThreadLimits *out)
{
  double p = self->pitch.mm / MM_PER_INCH, d = self->major.mm / MM_PER_INCH;
  double base = unified_pitch_tolerance (p, d, is_extra_fine (self, tables) ? 9.0 * p : d);

  if (hm_thread_class_is_internal (tolerance_class))
    unified_internal (self, tolerance_class, base, out);
  else
    unified_external (self, tolerance_class, base, out);
}

gboolean
hm_thread_get_limits (const HmThread *self, HmThreadClass tolerance_class, const HmTables *tables,
                      HmThreadLimits *out, GError **error)
{
  gboolean metric_class = tolerance_class == HM_THREAD_CLASS_6G || tolerance_class == HM_THREAD_CLASS_6H;

  g_return_val_if_fail (self != NULL && out != NULL, FALSE);
  if (metric_class != (self->form == HM_THREAD_ISO_METRIC))
    {
      g_set_error (error, HM_THREAD_ERROR, HM_THREAD_ERROR_CLASS,
                   "class %s is not one of this thread; metric threads take 6g and 6H, Unified ones 1A to 3B",
                   hm_thread_class_name (tolerance_class));
      return FALSE;
    }
  if (tolerance_class == HM_THREAD_CLASS_6G)
    metric_external (self, out);
  else if (tolerance_class == HM_THREAD_CLASS_6H)
    metric_internal (self, out);
  else
    unified (self, tolerance_class, tables, out);
  return TRUE;
}

HmThreadLimits
hm_thread_usual_limits (const HmThread *self, gboolean internal, const HmTables *tables)
{
  HmThreadLimits limits = { 0 };

  g_return_val_if_fail (self != NULL, limits);
  if (!hm_thread_get_limits (self, hm_thread_usual_class (self->form, internal), tables, &limits, NULL))
    g_assert_not_reached ();
  return limits;
}
