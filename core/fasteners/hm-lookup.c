/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-lookup.h"

#include "hm-hexalobular.h"
#include "hm-tap.h"

#include <math.h>
#include <string.h>

#define LONGEST_BYTES 128
#define INCHES_BELOW_MM 3.0      /* no wrench is under 3 mm, and few are over 3 in */
#define SAME_SIZE_MM 0.015       /* half the last digit of a caliper that reads 0.001 in or 0.02 mm */
#define SMALLEST_MM 0.7          /* judgements: the smallest hexagon key, and more than any wrench of this trade */
#define LARGEST_MM 150.0

#define ACCEPTED "write a size such as 11/32, 9 mm, 1/2 in socket, T40, M8 x 1.25, 5/16-18 or 1/8 NPT, or a torque such as 23 N·m"

G_DEFINE_QUARK (hm-lookup-error-quark, hm_lookup_error)

static gboolean
refuse (const char *text, HmLookupError code, const char *reason, GError **error)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);

  g_set_error (error, HM_LOOKUP_ERROR, code, "“%s” %s; " ACCEPTED, valid, reason);
  return FALSE;
}

static gboolean
is_noise (const char *word)
{
  static const char * const words[] = { "", "a", "the", "socket", "sockets", "wrench", "spanner", "nut", "driver", "head",
                                        "bolt", "screw", "hex", "hexagon", "size", "bit", "tool", "is", "what", "thread", "cross", "recess", "torque", NULL };

  return g_strv_contains (words, word);
}

/* What is left without the words that only name the thing. @is_key, @is_square: a word said so. */
static char *
strip_words (const char *folded, gboolean *is_key, gboolean *is_square)
{
  g_auto (GStrv) words = g_strsplit (folded, " ", -1);
  g_autoptr (GString) rest = g_string_new (NULL);

  for (guint i = 0; words[i] != NULL; i++)
    {
      gboolean key = g_str_equal (words[i], "key"), square = g_str_equal (words[i], "square");

      *is_key |= key;
      *is_square |= square;
      if (!key && !square && !is_noise (words[i]))
        g_string_append_printf (rest, "%s%s", rest->len > 0 ? " " : "", words[i]);
    }
  return g_string_free (g_steal_pointer (&rest), FALSE);
}

static gboolean
is_bare_number (const char *text)
{
  return text[0] != '\0' && strspn (text, "0123456789., ") == strlen (text);
}

gboolean
hm_lookup_parse_length (const char *text, double inches_below_mm, HmQuantity *out, GError **error)
{
  HmQuantity bare;
  gboolean inch;

  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  inch = !is_bare_number (text)
         || (hm_quantity_parse (text, HM_QUANTITY_LENGTH, HM_UNIT_MM, &bare, NULL) && bare.value < inches_below_mm);
  return hm_quantity_parse (text, HM_QUANTITY_LENGTH, inch ? HM_UNIT_INCH : HM_UNIT_MM, out, error);
}

typedef struct { HmLength size; gboolean inch; double off_mm; } NamedSize;

/* A size of the system that was typed wins over one of the other that is as near. */
static void
take_name (NamedSize *best, const HmDrive *drive, HmLength nominal, gboolean inch)
{
  double off_mm = fabs (nominal.mm - drive->size.mm) + (inch != drive->inch ? 1e-6 : 0.0);

  if (off_mm < best->off_mm)
    *best = (NamedSize) { nominal, inch, off_mm };
}

/* A decimal that is a size with a name gets that name. */
static void
name_size (HmDrive *drive, const HmTables *tables)
{
  NamedSize best = { drive->size, drive->inch, SAME_SIZE_MM };
  gsize n;
  const HmOpeningRow *openings = hm_tables_get_openings (tables, &n);
  const HmHexRow *heads;

  for (gsize i = 0; i < n; i++)
    take_name (&best, drive, openings[i].nominal, openings[i].inch);
  heads = hm_tables_get_hex (tables, &n);
  for (gsize i = 0; i < n; i++)
    take_name (&best, drive, heads[i].nominal, heads[i].inch);
  drive->size = best.size;
  drive->inch = best.inch;
}

static gboolean
read_width (const char *text, const char *rest, HmDriveKind kind, const HmTables *tables, HmLookup *out, GError **error)
{
  HmQuantity size;
  g_autoptr (GError) reason = NULL;

  if (!hm_lookup_parse_length (rest, INCHES_BELOW_MM, &size, &reason))
    {
      if (reason->code == HM_QUANTITY_ERROR_RANGE || strpbrk (rest, "0123456789") == NULL)
        return refuse (text, reason->code == HM_QUANTITY_ERROR_RANGE ? HM_LOOKUP_ERROR_SIZE : HM_LOOKUP_ERROR_SYNTAX,
                       "is no size of a tool or a thread", error);
      return refuse (text, HM_LOOKUP_ERROR_SYNTAX, "cannot be read as a size", error);
    }
  if (size.value < SMALLEST_MM || size.value > LARGEST_MM)
    return refuse (text, HM_LOOKUP_ERROR_SIZE, "is no size of a tool: they run from 0.7 mm to 150 mm", error);
  out->kind = HM_LOOKUP_DRIVE;
  out->drive = (HmDrive) { kind, { size.value }, 0, size.unit == HM_UNIT_INCH || size.unit == HM_UNIT_THOU };
  if (kind != HM_DRIVE_SQUARE)
    name_size (&out->drive, tables);
  return TRUE;
}

/* The T and E sizes that stand next to one that is not made. */
static gboolean
refuse_number (const char *text, const HmDrive *drive, const HmTables *tables, GError **error)
{
  gboolean external = drive->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL;
  char letter = external ? 'E' : 'T';
  gsize n;
  const HmHexalobularRow *rows = hm_tables_get_hexalobular (tables, &n), *below = NULL, *above = NULL;
  g_autofree char *reason = NULL;

  for (gsize i = 0; i < n; i++)
    if (rows[i].external == external && rows[i].number < drive->number && (below == NULL || rows[i].number > below->number))
      below = &rows[i];
    else if (rows[i].external == external && rows[i].number > drive->number && (above == NULL || rows[i].number < above->number))
      above = &rows[i];
  if (below == NULL || above == NULL)
    return refuse (text, HM_LOOKUP_ERROR_SIZE, "is not a size that is made", error);
  reason = g_strdup_printf ("is not a size that is made: there are %c%d and %c%d", letter, below->number, letter, above->number);
  return refuse (text, HM_LOOKUP_ERROR_SIZE, reason, error);
}

static gboolean
take_drive (const char *text, const HmDrive *drive, const HmTables *tables, HmLookup *out, GError **error)
{
  gboolean lobes = drive->kind == HM_DRIVE_HEXALOBULAR || drive->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL;

  if (lobes && hm_hexalobular_find (drive->number, drive->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL, tables) == NULL)
    return refuse_number (text, drive, tables, error);
  out->kind = HM_LOOKUP_DRIVE;
  out->drive = *drive;
  return TRUE;
}

/* FALSE, no @error: it is no torque. The unit has to be typed, so that a size never reads as one. */
static gboolean
read_torque (const char *text, const char *rest, HmLookup *out, GError **error)
{
  HmQuantityRange torque;
  g_autoptr (GError) reason = NULL;
  gboolean read = hm_quantity_parse_range (rest, HM_QUANTITY_TORQUE, HM_UNIT_NONE, &torque, &reason);

  if (read && torque.low.value > 0.0)
    {
      out->kind = HM_LOOKUP_TORQUE;
      out->torque = torque;
      return TRUE;
    }
  if (read || reason->code == HM_QUANTITY_ERROR_RANGE)
    return refuse (text, HM_LOOKUP_ERROR_SIZE, "is no torque of a fastener", error);
  return FALSE;
}

/* "m9 x", "5/16-" and the like: meant as a thread, so the thread's own words say what is wrong. */
static gboolean
looks_like_thread (const char *rest)
{
  const char *dash = strrchr (rest, '-');

  if (rest[0] == 'm' && (g_ascii_isdigit (rest[1]) || (rest[1] == ' ' && g_ascii_isdigit (rest[2]))))
    return TRUE;
  return rest[0] == '#' || g_str_has_prefix (rest, "no.") || g_str_has_prefix (rest, "no ")
         || (dash != NULL && dash != rest && g_ascii_isdigit (dash[1]) && strchr (dash, '/') == NULL);
}

static gboolean
read_one (const char *text, const char *folded, const HmTables *tables, HmLookup *out, GError **error)
{
  gboolean is_key = FALSE, is_square = FALSE;
  g_autofree char *rest = strip_words (folded, &is_key, &is_square);
  HmDrive drive;
  g_autoptr (GError) no_torque = NULL;

  if (rest[0] == '\0')
    return refuse (text, HM_LOOKUP_ERROR_SYNTAX, "names no size", error);
  if (read_torque (text, rest, out, &no_torque))
    return TRUE;
  if (no_torque != NULL)
    {
      g_propagate_error (error, g_steal_pointer (&no_torque));
      return FALSE;
    }
  out->pipe = hm_pipe_thread_find (rest, tables);
  if (out->pipe != NULL)
    {
      out->kind = HM_LOOKUP_PIPE;
      return TRUE;
    }
  if (hm_thread_parse (rest, tables, &out->thread, NULL))
    {
      out->kind = HM_LOOKUP_THREAD;
      return TRUE;
    }
  if (looks_like_thread (rest))
    {
      out->kind = HM_LOOKUP_THREAD;
      return hm_thread_parse (text, tables, &out->thread, error);
    }
  if (hm_drive_parse (rest, &drive, NULL) || hm_drive_parse (folded, &drive, NULL))
    return take_drive (text, &drive, tables, out, error);
  return read_width (text, rest, is_key ? HM_DRIVE_HEX_SOCKET : is_square ? HM_DRIVE_SQUARE : HM_DRIVE_HEX, tables, out, error);
}

/* Lower case, single blanks, no question mark. */
static char *
fold (const char *text)
{
  g_autofree char *lower = g_utf8_strdown (text, -1);
  g_autoptr (GString) folded = g_string_new (lower);

  g_string_replace (folded, "\302\240", " ", 0);
  g_string_replace (folded, "\t", " ", 0);
  g_string_replace (folded, "\n", " ", 0);
  g_string_replace (folded, "?", " ", 0);
  while (g_string_replace (folded, "  ", " ", 0) > 0)
    ;
  g_strstrip (folded->str);
  return g_string_free (g_steal_pointer (&folded), FALSE);
}

/* "9 mm on 11/32". */
static gboolean
read_pair (const char *text, const char *folded, const char *on, const HmTables *tables, HmLookup *out, GError **error)
{
  g_autofree char *tool = g_strndup (folded, on - folded);
  HmLookup head = { 0 };

  if (!read_one (tool, tool, tables, out, error) || !read_one (on + 4, on + 4, tables, &head, error))
    return FALSE;
  if (out->kind != HM_LOOKUP_DRIVE || head.kind != HM_LOOKUP_DRIVE || out->drive.kind != HM_DRIVE_HEX || head.drive.kind != HM_DRIVE_HEX)
    return refuse (text, HM_LOOKUP_ERROR_SYNTAX, "asks how one fits on the other, which is known of sockets on hexagons only", error);
  out->has_head = TRUE;
  out->head = head.drive;
  return TRUE;
}

gboolean
hm_lookup_parse (const char *text, const HmTables *tables, HmLookup *out, GError **error)
{
  HmLookup parsed = { 0 };
  g_autofree char *folded = NULL;
  const char *on;

  g_return_val_if_fail (text != NULL && tables != NULL && out != NULL, FALSE);
  if (strlen (text) > LONGEST_BYTES)
    {
      g_set_error (error, HM_LOOKUP_ERROR, HM_LOOKUP_ERROR_SYNTAX, "That is too long for a size; " ACCEPTED);
      return FALSE;
    }
  if (!g_utf8_validate (text, -1, NULL))
    return refuse (text, HM_LOOKUP_ERROR_ENCODING, "is not readable text (UTF-8)", error);
  folded = fold (text);
  if (folded[0] == '\0')
    {
      g_set_error (error, HM_LOOKUP_ERROR, HM_LOOKUP_ERROR_EMPTY, "Nothing is typed; " ACCEPTED);
      return FALSE;
    }
  on = strstr (folded, " on ");
  if (on != NULL ? !read_pair (text, folded, on, tables, &parsed, error) : !read_one (text, folded, tables, &parsed, error))
    return FALSE;
  *out = parsed;
  return TRUE;
}
