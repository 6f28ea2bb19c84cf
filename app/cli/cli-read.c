/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli-read.h"

#include <glib/gi18n.h>
#include <string.h>

gboolean
cli_refuse (const char *option, GError **error)
{
  if (option != NULL)
    g_prefix_error (error, "%s: ", option);
  return FALSE;
}

/* @sentence has one “%s” for what was read. */
static gboolean
refuse_text (const char *option, const char *text, const char *sentence, GError **error)
{
  g_autofree char *valid = g_utf8_make_valid (text, (gssize) MIN (strlen (text), 64));
  g_auto (GStrv) halves = g_strsplit (sentence, "%s", 2);
  g_autofree char *message = g_strjoinv (valid, halves);

  g_set_error_literal (error, HM_QUANTITY_ERROR, HM_QUANTITY_ERROR_RANGE, message);
  return cli_refuse (option, error);
}

gboolean
cli_read_length (const char *option, const char *text, HmQuantity *out, GError **error)
{
  HmUnit unit = strchr (text, '/') != NULL ? HM_UNIT_INCH : HM_UNIT_NONE;
  HmQuantity read;

  if (!hm_quantity_parse (text, HM_QUANTITY_LENGTH, unit, &read, error))
    return cli_refuse (option, error);
  if (read.value <= 0.0)
    return refuse_text (option, text, _("“%s” is no length; a length above zero is accepted, such as 8.5 mm or 11/32 in"), error);
  *out = read;
  return TRUE;
}

gboolean
cli_read_force (const char *option, const char *text, HmForce *out, GError **error)
{
  HmQuantity read;

  if (!hm_quantity_parse (text, HM_QUANTITY_FORCE, HM_UNIT_NONE, &read, error))
    return cli_refuse (option, error);
  if (read.value <= 0.0)
    return refuse_text (option, text, _("“%s” is no force; a force above zero is accepted, such as 15 kN or 3400 lbf"), error);
  out->newtons = hm_quantity_in (read, HM_UNIT_NEWTON);
  return TRUE;
}

gboolean
cli_read_whole (const char *option, const char *text, guint least, guint most, guint *out, GError **error)
{
  guint64 value;
  g_autofree char *sentence = NULL;

  if (g_ascii_string_to_unsigned (text, 10, least, most, &value, NULL))
    {
      *out = (guint) value;
      return TRUE;
    }
  sentence = g_strdup_printf (_("“%%s” is not accepted; a whole number from %u to %u is"), least, most);
  return refuse_text (option, text, sentence, error);
}

gboolean
cli_read_degrees (const char *option, const char *text, double *out, GError **error)
{
  g_autofree char *number = g_strstrip (g_strdup (text));
  HmQuantity read;

  if (g_str_has_suffix (number, "°"))
    number[strlen (number) - strlen ("°")] = '\0';
  else if (g_str_has_suffix (number, "deg"))
    number[strlen (number) - strlen ("deg")] = '\0';
  if (hm_quantity_parse (number, HM_QUANTITY_NUMBER, HM_UNIT_NONE, &read, NULL) && read.value >= 0.0 && read.value <= 180.0)
    {
      *out = read.value;
      return TRUE;
    }
  return refuse_text (option, text,
                      _("“%s” is not accepted; degrees from 0 (straight ahead) over 90 (sideways) to 180 (pointing back) are"),
                      error);
}

gboolean
cli_read_class (const char *option, const char *text, HmThreadClass *out, GError **error)
{
  for (HmThreadClass one = HM_THREAD_CLASS_6G; one <= HM_THREAD_CLASS_3B; one++)
    {
      const char *name = hm_thread_class_name (one);
      gboolean is_metric = one == HM_THREAD_CLASS_6G || one == HM_THREAD_CLASS_6H;

      if (is_metric ? strcmp (text, name) == 0 : g_ascii_strcasecmp (text, name) == 0)
        {
          *out = one;
          return TRUE;
        }
    }
  return refuse_text (option, text,
                      _("“%s” is not a class that is known; there are 6g and 6H (metric), 1A, 2A, 3A, 1B, 2B and 3B (inch)"), error);
}

static gboolean
is_compared (HmDriveKind kind)
{
  return kind == HM_DRIVE_HEX || kind == HM_DRIVE_HEX_SOCKET || kind == HM_DRIVE_HEXALOBULAR
         || kind == HM_DRIVE_HEXALOBULAR_EXTERNAL;
}

gboolean
cli_read_size (const char *option, const char *text, const HmTables *tables, HmLookup *out, GError **error)
{
  HmLookup read;

  if (!hm_lookup_parse (text, tables, &read, error))
    return cli_refuse (option, error);
  if (read.kind == HM_LOOKUP_TORQUE)
    return refuse_text (option, text,
                        _("“%s” is a torque; sizes such as 11/32, 9 mm, T40 or hex socket 5 mm are accepted"), error);
  if (read.kind != HM_LOOKUP_DRIVE)
    return refuse_text (option, text,
                        _("“%s” is a thread, about which “halfmoon-cli thread” tells; sizes such as 11/32, 9 mm, T40 or hex socket 5 mm are accepted"),
                        error);
  if (!is_compared (read.drive.kind))
    return refuse_text (option, text,
                        _("“%s” comes in no sizes that are compared; hexagons (11/32, 9 mm), hexagon keys (hex socket 5 mm) and hexalobular sizes (T40) are accepted"),
                        error);
  *out = read;
  return TRUE;
}
