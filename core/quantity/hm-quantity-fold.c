/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-quantity-private.h"

/*
 * Keyboards, word processors and documents have many signs for one thing. Folding leaves one for each, so that the scanners
 * know ' ', '-' (hyphen and minus), '–' (dash), '/', '"', '\'', '·', '°', 'µ' and 'Ω' only.
 */
static const struct { gunichar from; const char *to; } signs[] = {
  { 0x00ad, "" }, { 0x200b, "" }, { 0x200e, "" }, { 0x200f, "" }, { 0x2060, "" }, { 0xfeff, "" },    /* no width */
  { 0x2010, "-" }, { 0x2011, "-" }, { 0x2212, "-" }, { 0xfe63, "-" },                                /* hyphens, minus */
  { 0x2012, "–" }, { 0x2014, "–" }, { 0x2015, "–" }, { 0x301c, "~" },                                /* dashes, wave dash */
  { 0x2026, "..." },                                                                                 /* ellipsis */
  { 0x2044, "/" }, { 0x2215, "/" },                                                                  /* fraction, division slash */
  { 0x2033, "\"" }, { 0x201c, "\"" }, { 0x201d, "\"" }, { 0x02ba, "\"" }, { 0x3003, "\"" },          /* double prime, quotes */
  { 0x2032, "'" }, { 0x2018, "'" }, { 0x2019, "'" }, { 0x02b9, "'" },                                /* prime, quotes */
  { 0x22c5, "·" }, { 0x2219, "·" }, { 0x2022, "·" }, { 0x2027, "·" }, { '*', "·" },                  /* middle dots */
  { 0x2126, "Ω" }, { 0x03bc, "µ" },                                                                  /* ohm sign, Greek mu */
  { 0x00ba, "°" }, { 0x02da, "°" }, { 0x2103, "°C" }, { 0x2109, "°F" },                              /* degrees */
};

static const char *
find_sign (gunichar c)
{
  for (gsize i = 0; i < G_N_ELEMENTS (signs); i++)
    if (signs[i].from == c)
      return signs[i].to;
  return NULL;
}

char *
hm_quantity_fold (const char *text)
{
  GString *folded = g_string_sized_new (HM_QUANTITY_MAX_BYTES);
  for (const char *at = text; *at != '\0'; at = g_utf8_next_char (at))
    {
      gunichar c = g_utf8_get_char (at);
      const char *sign;
      if (c >= 0xff01 && c <= 0xff5e)
        c -= 0xff01 - '!';                      /* full-width forms of ASCII */
      sign = find_sign (c);
      if (sign != NULL)
        g_string_append (folded, sign);
      else if (g_unichar_isspace (c))           /* also the no-break and the thin ones */
        g_string_append_c (folded, ' ');
      else
        g_string_append_unichar (folded, c);
    }
  g_strstrip (folded->str);
  return g_string_free (folded, FALSE);
}
