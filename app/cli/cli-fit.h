/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "cli-report.h"
#include "hm-fit.h"
#include "hm-size.h"
G_BEGIN_DECLS

/**
 * CliFitRequest: what was asked. A plain value.
 * @size: the size, or the tool when @has_on
 * @on: the head or recess it is to go on
 * @opening: of @size, for a hexagon; NULL if none is made
 */
typedef struct
{
  HmDrive size, on;
  gboolean has_on, also, rounded;
  HmHeadCondition condition;
  const HmOpeningRow *opening;
} CliFitRequest;

/* The answers, by kind of drive. Everything that can be refused was refused before. */
void cli_report_hex    (CliReport *report, const CliFitRequest *request, const HmTables *tables);
void cli_report_recess (CliReport *report, const CliFitRequest *request, const HmTables *tables);

/** cli_report_carriers: what has a head, nut or socket of this size. */
void cli_report_carriers (CliReport *report, const HmDrive *size, const HmTables *tables);

/* Words (cli-fit-words.c): the English for programs in @word, the translated text returned; static. */
const char *cli_words_fit_verdict   (HmFitVerdict verdict, const char **word);
const char *cli_words_fit_reason    (HmFitReason reason, const char **word);
const char *cli_words_head_kind     (HmHeadKind kind, const char **word);
const char *cli_words_head_condition (HmHeadCondition condition, const char **word);

/** cli_words_opening: "11/32 in", "9 mm". (transfer full) */
char *cli_words_opening (const HmOpeningRow *opening, const HmFormat *format);

/** cli_words_plain: for programs: @text with plain spaces for no-break ones. (transfer full) */
char *cli_words_plain (const char *text);

G_END_DECLS
