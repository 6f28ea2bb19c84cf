/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "units-file.h"

#include <ctype.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#define DEEPEST 40

struct _HmtUnitsFile
{
  GHashTable *units;      /* name → definition, both owned */
  GHashTable *prefixes;
  gboolean in_other_system, in_other_place;   /* while reading: inside !var or !locale that does not hold */
};

typedef struct { HmtUnitsFile *file; const char *at; int depth; } Reader;

static gboolean read_product (Reader *reader, HmtUnitValue *out);

/* !var NAME values…, with the defaults UNITS_ENGLISH US and UNITS_SYSTEM default. */
static void
take_directive (HmtUnitsFile *self, const char *line)
{
  g_auto (GStrv) words = g_strsplit_set (line, " \t", -1);
  const char *value = words[0] != NULL && g_strcmp0 (words[1], "UNITS_ENGLISH") == 0 ? "US" : "default";
  gboolean named = words[0] != NULL && g_strv_contains ((const char * const *) words, value);

  if (g_str_has_prefix (line, "!varnot"))
    self->in_other_system = named;
  else if (g_str_has_prefix (line, "!var"))
    self->in_other_system = !named;
  else if (g_str_has_prefix (line, "!endvar"))
    self->in_other_system = FALSE;
  else if (g_str_has_prefix (line, "!locale"))
    self->in_other_place = TRUE;
  else if (g_str_has_prefix (line, "!endlocale"))
    self->in_other_place = FALSE;
}

static void
take_definition (HmtUnitsFile *self, char *line)
{
  char *name = g_strstrip (line), *rest;
  gsize length = strcspn (name, " \t");

  if (name[0] == '!')
    {
      take_directive (self, name);
      return;
    }
  if (name[0] == '\0' || name[length] == '\0' || self->in_other_system || self->in_other_place)
    return;
  name[length] = '\0';
  rest = g_strchug (name + length + 1);
  if (name[length - 1] == '-')
    g_hash_table_insert (self->prefixes, g_strndup (name, length - 1), g_strdup (rest));
  else
    g_hash_table_insert (self->units, g_strndup (name, strcspn (name, "([")), g_strdup (rest));
}

/* Adds a line to what is being read, without its comment. Returns: whether it goes on in the next. */
static gboolean
append_line (GString *logical, const char *line, gsize length)
{
  const char *comment = memchr (line, '#', length);

  g_string_append_len (logical, line, comment != NULL ? comment - line : (gssize) length);
  while (logical->len > 0 && isspace ((unsigned char) logical->str[logical->len - 1]))
    g_string_truncate (logical, logical->len - 1);
  if (logical->len == 0 || logical->str[logical->len - 1] != '\\')
    return FALSE;
  logical->str[logical->len - 1] = ' ';
  return TRUE;
}

HmtUnitsFile *
hmt_units_file_read (const char *path)
{
  HmtUnitsFile *self;
  g_autofree char *text = NULL;
  g_autoptr (GString) logical = g_string_new (NULL);
  gsize size;

  if (!g_file_get_contents (path, &text, &size, NULL))
    return NULL;
  self = g_new0 (HmtUnitsFile, 1);
  self->units = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  self->prefixes = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  for (const char *line = text; line < text + size;)
    {
      const char *end = memchr (line, '\n', text + size - line);

      if (end == NULL)
        end = text + size;
      if (!append_line (logical, line, end - line))
        {
          take_definition (self, logical->str);
          g_string_truncate (logical, 0);
        }
      line = end + 1;
    }
  return self;
}

void
hmt_units_file_free (HmtUnitsFile *self)
{
  g_hash_table_unref (self->units);
  g_hash_table_unref (self->prefixes);
  g_free (self);
}

const char *
hmt_units_file_look_up (HmtUnitsFile *self, const char *name)
{
  return g_hash_table_lookup (self->units, name);
}

static void
multiply (HmtUnitValue *value, const HmtUnitValue *by, int power)
{
  value->factor *= pow (by->factor, power);
  for (guint i = 0; i < G_N_ELEMENTS (value->powers); i++)
    value->powers[i] += by->powers[i] * power;
}

static gboolean
read_definition (HmtUnitsFile *file, const char *definition, int depth, HmtUnitValue *out)
{
  Reader reader = { file, definition, depth + 1 };

  return depth < DEEPEST && read_product (&reader, out) && *reader.at == '\0';
}

static gboolean
read_base (const char *name, HmtUnitValue *out)
{
  static const char * const names[] = { "m", "kg", "s", "A", "K" };

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    if (strcmp (name, names[i]) == 0)
      {
        out->powers[i] = 1;
        return TRUE;
      }
  return FALSE;
}

/* A unit by its whole name, as a plural, or with a prefix. */
static gboolean
read_name (Reader *reader, const char *name, HmtUnitValue *out)
{
  const char *definition = g_hash_table_lookup (reader->file->units, name);
  gsize length = strlen (name);

  *out = (HmtUnitValue) { .factor = 1.0 };
  if (definition != NULL && g_str_has_prefix (definition, "!dimensionless"))
    return TRUE;
  if (definition != NULL && definition[0] == '!')
    return read_base (name, out);
  if (definition != NULL)
    return read_definition (reader->file, definition, reader->depth, out);
  if (length > 1 && name[length - 1] == 's')
    {
      g_autofree char *singular = g_strndup (name, length - 1);

      if (g_hash_table_contains (reader->file->units, singular))
        return read_name (reader, singular, out);
    }
  for (gsize i = length - 1; i > 0; i--)
    {
      g_autofree char *prefix = g_strndup (name, i);
      const char *factor = g_hash_table_lookup (reader->file->prefixes, prefix);
      HmtUnitValue scale;

      if (factor == NULL)
        continue;
      if (g_hash_table_contains (reader->file->prefixes, factor))
        factor = g_hash_table_lookup (reader->file->prefixes, factor);   /* k- is kilo, kilo- is 1e3 */
      if (read_definition (reader->file, factor, reader->depth, &scale) && read_name (reader, name + i, out))
        {
          multiply (out, &scale, 1);
          return TRUE;
        }
    }
  return FALSE;
}

static void
skip_blanks (Reader *reader)
{
  while (isspace ((unsigned char) *reader->at))
    reader->at++;
}

static gboolean
read_number (Reader *reader, HmtUnitValue *out)
{
  char *end;
  double value = g_ascii_strtod (reader->at, &end);

  if (end == reader->at)
    return FALSE;
  if (*end == '|')
    value /= g_ascii_strtod (end + 1, &end);
  reader->at = end;
  *out = (HmtUnitValue) { .factor = value };
  return TRUE;
}

static gboolean
read_atom (Reader *reader, HmtUnitValue *out)
{
  gsize length;
  g_autofree char *name = NULL;

  if (*reader->at == '(')
    {
      reader->at++;
      if (!read_product (reader, out) || *reader->at != ')')
        return FALSE;
      reader->at++;
      return TRUE;
    }
  if (isdigit ((unsigned char) *reader->at) || *reader->at == '.')
    return read_number (reader, out);
  for (length = 0; isalnum ((unsigned char) reader->at[length]) || reader->at[length] == '_'; length++)
    ;
  if (length == 0)
    return FALSE;
  name = g_strndup (reader->at, length);
  reader->at += length;
  return read_name (reader, name, out);
}

/* Products and quotients from left to right; a blank multiplies. */
static gboolean
read_product (Reader *reader, HmtUnitValue *out)
{
  int sign = 1;

  *out = (HmtUnitValue) { .factor = 1.0 };
  for (;;)
    {
      HmtUnitValue atom;
      int power = 1;

      skip_blanks (reader);
      if (*reader->at == '\0' || *reader->at == ')')
        return TRUE;
      if (*reader->at == '/' || *reader->at == '*')
        {
          sign = *reader->at == '/' ? -1 : 1;
          reader->at++;
          skip_blanks (reader);
        }
      if (!read_atom (reader, &atom))
        return FALSE;
      skip_blanks (reader);
      if (*reader->at == '^')
        power = (int) strtol (reader->at + 1, (char **) &reader->at, 10);
      multiply (out, &atom, sign * power);
      sign = 1;
    }
}

gboolean
hmt_units_file_evaluate (HmtUnitsFile *self, const char *expression, HmtUnitValue *out)
{
  return read_definition (self, expression, 0, out);
}
