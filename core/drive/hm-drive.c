/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-drive.h"

#include <math.h>
#include <string.h>

#define MAX_SIZE_MM 150.0
#define MAX_HEXALOBULAR 100   /* ISO 10664 ends at T100 */
#define MAX_EXTERNAL 44
#define MAX_CROSS 4           /* ISO 4757: 0 to 4 */

#define ACCEPTED "write hex 1/2 in, hex 10 mm, hex socket 5 mm, T30, E10, square 3/8 in, H2, Z2, slot or hand"

G_DEFINE_QUARK (hm-drive-error-quark, hm_drive_error)

static gboolean
refuse (const char *text, HmDriveError code, const char *reason, GError **error)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);

  g_set_error (error, HM_DRIVE_ERROR, code, "“%s” %s; " ACCEPTED, valid, reason);
  return FALSE;
}

/* A letter and a number: "t30". */
static gboolean
scan_numbered (const char *text, HmDrive *out, int *limit)
{
  static const struct { char letter; HmDriveKind kind; int limit; } letters[] = {
    { 't', HM_DRIVE_HEXALOBULAR, MAX_HEXALOBULAR },
    { 'e', HM_DRIVE_HEXALOBULAR_EXTERNAL, MAX_EXTERNAL },
    { 'h', HM_DRIVE_CROSS_H, MAX_CROSS },
    { 'z', HM_DRIVE_CROSS_Z, MAX_CROSS },
  };
  guint64 number;

  for (gsize i = 0; i < G_N_ELEMENTS (letters); i++)
    if (text[0] == letters[i].letter && g_ascii_isdigit (text[1])
        && g_ascii_string_to_unsigned (text + 1, 10, 0, G_MAXINT, &number, NULL))
      {
        out->kind = letters[i].kind;
        out->number = (int) number;
        *limit = letters[i].limit;
        return TRUE;
      }
  return FALSE;
}

/* "hex 1/2 in": the words before the size; the longest first. Gives the size's text, or NULL. */
static const char *
scan_sized (const char *text, HmDriveKind *kind)
{
  static const struct { const char *words; HmDriveKind kind; } drives[] = {
    { "hex socket ", HM_DRIVE_HEX_SOCKET },
    { "hex key ", HM_DRIVE_HEX_SOCKET },
    { "hex ", HM_DRIVE_HEX },
    { "square ", HM_DRIVE_SQUARE },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (drives); i++)
    if (g_str_has_prefix (text, drives[i].words))
      {
        *kind = drives[i].kind;
        return text + strlen (drives[i].words);
      }
  return NULL;
}

static gboolean
read_size (const char *text, const char *size, HmDrive *out, GError **error)
{
  HmQuantity quantity;
  g_autoptr (GError) reason = NULL;

  if (!hm_quantity_parse (size, HM_QUANTITY_LENGTH, HM_UNIT_NONE, &quantity, &reason))
    return refuse (text, HM_DRIVE_ERROR_SYNTAX, "has no size that can be read", error);
  if (quantity.value <= 0.0 || quantity.value > MAX_SIZE_MM)
    return refuse (text, HM_DRIVE_ERROR_UNKNOWN, "is no size of a tool", error);
  out->size.mm = quantity.value;
  out->inch = quantity.unit == HM_UNIT_INCH;
  return TRUE;
}

static gboolean
read_drive (const char *text, const char *folded, HmDrive *out, GError **error)
{
  const char *size = scan_sized (folded, &out->kind);
  int limit = 0;

  if (size != NULL)
    return read_size (text, size, out, error);
  if (strcmp (folded, "slot") == 0 || strcmp (folded, "hand") == 0)
    {
      out->kind = folded[0] == 's' ? HM_DRIVE_SLOT : HM_DRIVE_HAND;
      return TRUE;
    }
  if (!scan_numbered (folded, out, &limit))
    return refuse (text, HM_DRIVE_ERROR_SYNTAX, "is not a drive", error);
  if (out->number > limit || (limit > MAX_CROSS && out->number == 0))
    return refuse (text, HM_DRIVE_ERROR_UNKNOWN, "is a number that is not made", error);
  return TRUE;
}

gboolean
hm_drive_parse (const char *text, HmDrive *out, GError **error)
{
  HmDrive parsed = { 0 };
  g_autofree char *folded = NULL;

  g_return_val_if_fail (text != NULL && out != NULL, FALSE);
  if (!g_utf8_validate (text, -1, NULL))
    return refuse (text, HM_DRIVE_ERROR_SYNTAX, "is not readable text (UTF-8)", error);
  folded = g_utf8_strdown (text, -1);
  g_strstrip (folded);
  if (!read_drive (text, folded, &parsed, error))
    return FALSE;
  *out = parsed;
  return TRUE;
}

char *
hm_drive_format_size (const HmDrive *self, const HmFormat *format)
{
  HmUnit unit;
  double mm;
  int decimals = -1;

  g_return_val_if_fail (self != NULL && format != NULL, NULL);
  unit = self->inch ? HM_UNIT_INCH : HM_UNIT_MM;
  mm = self->size.mm;
  if (!self->inch)
    decimals = fabs (mm - round (mm)) < 1e-6 ? 0 : fabs (mm * 10.0 - round (mm * 10.0)) < 1e-6 ? 1 : 2;
  return hm_quantity_format (hm_quantity (HM_QUANTITY_LENGTH, mm, HM_UNIT_MM), unit, decimals, format);
}

char *
hm_drive_format (const HmDrive *self, const HmFormat *format)
{
  g_autofree char *size = NULL;

  g_return_val_if_fail (self != NULL && format != NULL, NULL);
  size = hm_drive_format_size (self, format);
  switch (self->kind)
    {
    case HM_DRIVE_HEX:
      return g_strdup_printf ("%s hex", size);
    case HM_DRIVE_HEX_SOCKET:
      return g_strdup_printf ("%s hex key", size);
    case HM_DRIVE_SQUARE:
      return g_strdup_printf ("%s square", size);
    case HM_DRIVE_HEXALOBULAR:
      return g_strdup_printf ("T%d", self->number);
    case HM_DRIVE_HEXALOBULAR_EXTERNAL:
      return g_strdup_printf ("E%d", self->number);
    case HM_DRIVE_CROSS_H:
      return g_strdup_printf ("H%d cross recess", self->number);
    case HM_DRIVE_CROSS_Z:
      return g_strdup_printf ("Z%d cross recess", self->number);
    case HM_DRIVE_SLOT:
      return g_strdup ("slot");
    case HM_DRIVE_HAND:
      return g_strdup ("hand");
    default:
      g_return_val_if_reached (NULL);
    }
}

char *
hm_drive_tool (const HmDrive *self, const HmFormat *format)
{
  g_autofree char *size = NULL;

  g_return_val_if_fail (self != NULL && format != NULL, NULL);
  size = hm_drive_format_size (self, format);
  switch (self->kind)
    {
    case HM_DRIVE_HEX:
      return g_strdup_printf ("%s socket", size);
    case HM_DRIVE_HEX_SOCKET:
      return g_strdup_printf ("%s hex bit", size);
    case HM_DRIVE_SQUARE:
      return g_strdup_printf ("%s square bit", size);
    case HM_DRIVE_HEXALOBULAR:
      return g_strdup_printf ("T%d bit", self->number);
    case HM_DRIVE_HEXALOBULAR_EXTERNAL:
      return g_strdup_printf ("E%d socket", self->number);
    case HM_DRIVE_CROSS_H:
      return g_strdup_printf ("H%d bit", self->number);
    case HM_DRIVE_CROSS_Z:
      return g_strdup_printf ("Z%d bit", self->number);
    case HM_DRIVE_SLOT:
      return g_strdup ("flat-blade screwdriver");
    case HM_DRIVE_HAND:
      return g_strdup ("no tool");
    default:
      g_return_val_if_reached (NULL);
    }
}

gboolean
hm_drive_equal (const HmDrive *a, const HmDrive *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);
  return a->kind == b->kind && a->number == b->number && a->inch == b->inch && fabs (a->size.mm - b->size.mm) < 1e-4;
}
