/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-table-schema.h"

#include "hm-tables.h"

#include <math.h>
#include <string.h>

#define MM_PER_INCH 25.4
#define MPA_PER_KSI 6.894757293168361   /* 1000 lbf/in²; 1 lbf = 4.4482216152605 N */

static const char * const series_words[] = { "metric coarse", "metric fine", "UNC", "UNF", "UNEF", "NPT", NULL };
static const char * const use_words[] = { "usual", "occasional", "rare", NULL };
static const char * const head_words[] = { "hex bolt", "hex nut", "flange bolt", "flange nut", "machine screw",
                                           "machine nut", "washer screw", "socket cap", "button", "set screw", NULL };
static const char * const special_words[] = { "spark plug", "gasket joint", "plastic", "taper fit", NULL };
static const char * const side_words[] = { "internal", "external", NULL };

#define COLUMN(row, field, name, kind) { name, HM_COLUMN_##kind, G_STRUCT_OFFSET (row, field), FALSE, NULL }
#define OPTIONAL(row, field, name, kind) { name, HM_COLUMN_##kind, G_STRUCT_OFFSET (row, field), TRUE, NULL }
#define WORD(row, field, name, words) { name, HM_COLUMN_WORD, G_STRUCT_OFFSET (row, field), FALSE, words }
#define END { NULL, 0, 0, FALSE, NULL }

static const HmColumn thread_columns[] = {
  COLUMN (HmThreadRow, name, "thread", TEXT),
  WORD (HmThreadRow, series, "series", series_words),
  COLUMN (HmThreadRow, major, "major", LENGTH),
  COLUMN (HmThreadRow, pitch, "pitch", PITCH),
  COLUMN (HmThreadRow, inch, "unit", INCH),
  WORD (HmThreadRow, use, "use", use_words),
  COLUMN (HmThreadRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn hex_columns[] = {
  COLUMN (HmHexRow, standard, "standard", TEXT),
  WORD (HmHexRow, kind, "head", head_words),
  COLUMN (HmHexRow, thread, "thread", TEXT),
  COLUMN (HmHexRow, nominal, "nominal", LENGTH),
  OPTIONAL (HmHexRow, min, "min", LENGTH),
  OPTIONAL (HmHexRow, max, "max", LENGTH),
  COLUMN (HmHexRow, inch, "unit", INCH),
  COLUMN (HmHexRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn opening_columns[] = {
  COLUMN (HmOpeningRow, name, "nominal", TEXT),
  COLUMN (HmOpeningRow, nominal, "nominal", LENGTH),
  COLUMN (HmOpeningRow, min, "min", LENGTH),
  COLUMN (HmOpeningRow, max, "max", LENGTH),
  COLUMN (HmOpeningRow, inch, "unit", INCH),
  COLUMN (HmOpeningRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn hexalobular_columns[] = {
  WORD (HmHexalobularRow, external, "side", side_words),
  COLUMN (HmHexalobularRow, number, "number", INTEGER),
  COLUMN (HmHexalobularRow, a, "a", LENGTH),
  OPTIONAL (HmHexalobularRow, b, "b", LENGTH),
  OPTIONAL (HmHexalobularRow, gauge_a_max, "gauge_a_max", LENGTH),
  OPTIONAL (HmHexalobularRow, gauge_a_min, "gauge_a_min", LENGTH),
  OPTIONAL (HmHexalobularRow, gauge_b_max, "gauge_b_max", LENGTH),
  OPTIONAL (HmHexalobularRow, gauge_b_min, "gauge_b_min", LENGTH),
  COLUMN (HmHexalobularRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn strength_columns[] = {
  COLUMN (HmStrengthRow, standard, "standard", TEXT),
  COLUMN (HmStrengthRow, name, "class", TEXT),
  COLUMN (HmStrengthRow, from, "from", LENGTH),
  COLUMN (HmStrengthRow, to, "to", LENGTH),
  COLUMN (HmStrengthRow, proof, "proof", STRESS),
  OPTIONAL (HmStrengthRow, yield, "yield", STRESS),
  OPTIONAL (HmStrengthRow, tensile, "tensile", STRESS),
  COLUMN (HmStrengthRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn friction_columns[] = {
  COLUMN (HmFrictionRow, state, "state", TEXT),
  COLUMN (HmFrictionRow, nut_factor_low, "nut_factor_low", NUMBER),
  COLUMN (HmFrictionRow, nut_factor, "nut_factor", NUMBER),
  COLUMN (HmFrictionRow, nut_factor_high, "nut_factor_high", NUMBER),
  COLUMN (HmFrictionRow, mu_low, "mu_low", NUMBER),
  COLUMN (HmFrictionRow, mu, "mu", NUMBER),
  COLUMN (HmFrictionRow, mu_high, "mu_high", NUMBER),
  COLUMN (HmFrictionRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn hole_columns[] = {
  COLUMN (HmHoleRow, thread, "thread", TEXT),
  OPTIONAL (HmHoleRow, tap_drill, "tap_drill", LENGTH),
  OPTIONAL (HmHoleRow, tap_drill_name, "tap_drill_name", TEXT),
  OPTIONAL (HmHoleRow, close, "close", LENGTH),
  OPTIONAL (HmHoleRow, normal, "normal", LENGTH),
  OPTIONAL (HmHoleRow, loose, "loose", LENGTH),
  COLUMN (HmHoleRow, tap_provenance, "tap_provenance", PROVENANCE),
  COLUMN (HmHoleRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn shear_columns[] = {
  COLUMN (HmShearRow, material, "material", TEXT),
  OPTIONAL (HmShearRow, low, "low", STRESS),
  OPTIONAL (HmShearRow, typical, "typical", STRESS),
  OPTIONAL (HmShearRow, min_engagement_diameters, "min_engagement_diameters", NUMBER),
  COLUMN (HmShearRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn pass_columns[] = {
  COLUMN (HmPassRow, scheme, "scheme", TEXT),
  COLUMN (HmPassRow, pass, "pass", INTEGER),
  COLUMN (HmPassRow, share, "share", NUMBER),
  COLUMN (HmPassRow, round, "round", FLAG),
  COLUMN (HmPassRow, provenance, "provenance", PROVENANCE),
  END
};

static const HmColumn special_columns[] = {
  WORD (HmSpecialRow, joint, "joint", special_words),
  COLUMN (HmSpecialRow, name, "name", TEXT),
  COLUMN (HmSpecialRow, torque, "torque", TEXT),
  COLUMN (HmSpecialRow, provenance, "provenance", PROVENANCE),
  END
};

const HmTableSchema hm_table_schemas[] = {
  { "threads", sizeof (HmThreadRow), thread_columns },
  { "hex-heads", sizeof (HmHexRow), hex_columns },
  { "openings", sizeof (HmOpeningRow), opening_columns },
  { "hexalobular", sizeof (HmHexalobularRow), hexalobular_columns },
  { "strength", sizeof (HmStrengthRow), strength_columns },
  { "friction", sizeof (HmFrictionRow), friction_columns },
  { "holes", sizeof (HmHoleRow), hole_columns },
  { "shear", sizeof (HmShearRow), shear_columns },
  { "passes", sizeof (HmPassRow), pass_columns },
  { "special-joints", sizeof (HmSpecialRow), special_columns },
  { NULL, 0, NULL }
};

/* "0.428", "7/16", "1 1/8"; never negative: no figure of these tables is. */
static gboolean
scan_number (const char *text, double *out)
{
  char *end;
  double whole = g_ascii_strtod (text, &end), top, bottom;

  if (end == text || !isfinite (whole) || whole < 0.0)
    return FALSE;
  *out = whole;
  if (*end == '\0')
    return TRUE;
  if (*end == '/')
    {
      top = whole;
      whole = 0.0;
    }
  else
    top = g_ascii_strtod (end, &end);
  if (*end != '/')
    return FALSE;
  bottom = g_ascii_strtod (end + 1, &end);
  *out = whole + top / bottom;
  return *end == '\0' && bottom > 0.0 && top >= 0.0 && isfinite (*out);
}

static gboolean
scan_unit (const char *cell, const char *base, const char *other, gboolean *is_other)
{
  *is_other = g_strcmp0 (cell, other) == 0;
  return *is_other || g_strcmp0 (cell, base) == 0;
}

/* A length, a pitch, a stress or a bare number, in base units. */
static gboolean
scan_measure (HmColumnKind kind, const char *cell, const HmCsv *csv, guint index, double *out)
{
  gboolean other;
  double value;

  if (!scan_number (cell, &value))
    return FALSE;
  if (kind == HM_COLUMN_STRESS)
    {
      if (!scan_unit (hm_csv_get (csv, index, "stress_unit"), "MPa", "ksi", &other))
        return FALSE;
      *out = other ? value * MPA_PER_KSI : value;
      return TRUE;
    }
  if (kind == HM_COLUMN_NUMBER)
    {
      *out = value;
      return TRUE;
    }
  if (!scan_unit (hm_csv_get (csv, index, "unit"), "mm", "inch", &other))
    return FALSE;
  if (kind == HM_COLUMN_PITCH && value <= 0.0)
    return FALSE;
  if (kind == HM_COLUMN_PITCH)
    *out = other ? MM_PER_INCH / value : value;
  else
    *out = other ? value * MM_PER_INCH : value;
  return TRUE;
}

static gboolean
scan_word (const char *cell, const char * const *words, guint *out)
{
  for (guint i = 0; words[i] != NULL; i++)
    if (strcmp (cell, words[i]) == 0)
      {
        *out = i;
        return TRUE;
      }
  return FALSE;
}

static gboolean
scan_provenance (const char *cell, GStringChunk *strings, HmProvenance *out)
{
  return hm_provenance_parse (g_string_chunk_insert_const (strings, cell), out);
}

static gboolean
scan_cell (const HmColumn *column, const char *cell, const HmCsv *csv, guint index, gpointer field, GStringChunk *strings)
{
  static const char * const flag_words[] = { "no", "yes", NULL };
  guint64 number;

  switch (column->kind)
    {
    case HM_COLUMN_TEXT:
      *(const char **) field = g_string_chunk_insert_const (strings, cell);
      return TRUE;
    case HM_COLUMN_WORD:
      return scan_word (cell, column->words, field);
    case HM_COLUMN_FLAG:
      return scan_word (cell, flag_words, field);
    case HM_COLUMN_INCH:
      return scan_unit (cell, "mm", "inch", field);
    case HM_COLUMN_INTEGER:
      if (!g_ascii_string_to_unsigned (cell, 10, 0, G_MAXINT, &number, NULL))
        return FALSE;
      *(int *) field = (int) number;
      return TRUE;
    case HM_COLUMN_PROVENANCE:
      return scan_provenance (cell, strings, field);
    case HM_COLUMN_NUMBER:
    case HM_COLUMN_LENGTH:
    case HM_COLUMN_PITCH:
    case HM_COLUMN_STRESS:
      return scan_measure (column->kind, cell, csv, index, field);
    default:
      g_assert_not_reached ();
    }
}

static char *
describe_accepted (const HmColumn *column)
{
  g_autofree char *list = NULL;

  switch (column->kind)
    {
    case HM_COLUMN_WORD:
      list = g_strjoinv (", ", (char **) column->words);
      return g_strdup_printf ("one of: %s", list);
    case HM_COLUMN_FLAG:
      return g_strdup ("yes or no");
    case HM_COLUMN_INCH:
      return g_strdup ("mm or inch");
    case HM_COLUMN_INTEGER:
      return g_strdup ("a whole number");
    case HM_COLUMN_PROVENANCE:
      return g_strdup ("a kind of provenance with its source");
    case HM_COLUMN_LENGTH:
    case HM_COLUMN_PITCH:
      return g_strdup ("a number or fraction, with “mm” or “inch” in the column unit");
    case HM_COLUMN_STRESS:
      return g_strdup ("a number, with “MPa” or “ksi” in the column stress_unit");
    default:
      return g_strdup ("a number");
    }
}

gboolean
hm_table_schema_read_row (const HmTableSchema *self, const HmCsv *csv, guint index, gpointer row,
                          GStringChunk *strings, GError **error)
{
  for (const HmColumn *column = self->columns; column->name != NULL; column++)
    {
      const char *cell = hm_csv_get (csv, index, column->name);
      gpointer field = (char *) row + column->offset;
      g_autofree char *accepted = NULL;

      if (cell == NULL)
        {
          g_set_error (error, HM_TABLES_ERROR, HM_TABLES_ERROR_ROW, "table %s: the header lacks the column %s",
                       self->name, column->name);
          return FALSE;
        }
      if (cell[0] == '\0' && column->optional && column->kind != HM_COLUMN_TEXT)
        continue;
      if ((cell[0] != '\0' || column->optional) && scan_cell (column, cell, csv, index, field, strings))
        continue;
      accepted = describe_accepted (column);
      g_set_error (error, HM_TABLES_ERROR, HM_TABLES_ERROR_ROW,
                   "table %s, line %u: “%s” in the column %s is not %s",
                   self->name, hm_csv_get_line (csv, index), cell, column->name, accepted);
      return FALSE;
    }
  return TRUE;
}
