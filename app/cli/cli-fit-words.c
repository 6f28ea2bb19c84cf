/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli-fit.h"

#include <glib/gi18n.h>

typedef struct { const char *word, *shown; } Words;

const char *
cli_words_fit_verdict (HmFitVerdict verdict, const char **word)
{
  static const Words words[] = {
    [HM_FIT_FITS] = { "fits", N_("fits") },
    [HM_FIT_USABLE] = { "usable", N_("usable") },
    [HM_FIT_ROUNDS] = { "rounds", N_("rounds the corners") },
    [HM_FIT_WILL_NOT_GO_ON] = { "will-not-go-on", N_("will not go on") },
  };

  *word = words[verdict].word;
  return _(words[verdict].shown);
}

const char *
cli_words_fit_reason (HmFitReason reason, const char **word)
{
  static const Words words[] = {
    [HM_FIT_PROPER] = { "proper", N_("the size that belongs on it") },
    [HM_FIT_AS_SNUG] = { "as-snug", N_("no looser than the proper size") },
    [HM_FIT_LOOSE] = { "loose", N_("looser than the proper size, the corners still hold") },
    [HM_FIT_TOO_LOOSE] = { "too-loose", N_("so loose that the corners give way") },
    [HM_FIT_SPINS] = { "spins", N_("turns round the head") },
    [HM_FIT_MAY_NOT_GO_ON] = { "may-not-go-on", N_("some heads of this size are larger than some of these openings") },
    [HM_FIT_TOO_SMALL] = { "too-small", N_("the opening is smaller than the head") },
  };

  *word = words[reason].word;
  return _(words[reason].shown);
}

const char *
cli_words_head_kind (HmHeadKind kind, const char **word)
{
  static const char * const words[] = {
    [HM_HEAD_HEX_BOLT] = N_("hexagon bolt"),
    [HM_HEAD_HEX_NUT] = N_("hexagon nut"),
    [HM_HEAD_FLANGE_BOLT] = N_("flange bolt"),
    [HM_HEAD_FLANGE_NUT] = N_("flange nut"),
    [HM_HEAD_MACHINE_SCREW] = N_("machine screw"),
    [HM_HEAD_MACHINE_NUT] = N_("machine screw nut"),
    [HM_HEAD_WASHER_SCREW] = N_("washer-head screw"),
    [HM_HEAD_SOCKET_CAP] = N_("socket cap screw"),
    [HM_HEAD_BUTTON] = N_("button-head screw"),
    [HM_HEAD_SET_SCREW] = N_("socket set screw"),
  };

  *word = words[kind];
  return _(words[kind]);
}

const char *
cli_words_head_condition (HmHeadCondition condition, const char **word)
{
  static const Words words[] = {
    [HM_HEAD_CLEAN] = { "clean", N_("clean") },
    [HM_HEAD_WORN] = { "worn", N_("rusted or chewed, up to 2 % below its limit") },
    [HM_HEAD_PAINTED] = { "painted", N_("painted or galvanized, up to 0.2 mm above its limit") },
  };

  *word = words[condition].word;
  return _(words[condition].shown);
}

char *
cli_words_opening (const HmOpeningRow *opening, const HmFormat *format)
{
  const HmDrive drive = { .kind = HM_DRIVE_HEX, .size = opening->nominal, .inch = opening->inch };

  return hm_drive_format_size (&drive, format);
}

char *
cli_words_plain (const char *text)
{
  g_autoptr (GString) plain = g_string_new (text);

  g_string_replace (plain, "\302\240", " ", 0);
  return g_strdup (plain->str);
}
