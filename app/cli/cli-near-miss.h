/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "cli-report.h"
#include "hm-tables.h"
#include "hm-thread.h"
G_BEGIN_DECLS

/** cli_report_near_misses: the threads that start in or on @thread, then jam or strip: a list "near_misses". */
void cli_report_near_misses (CliReport *report, const HmThread *thread, const HmTables *tables);

/** cli_words_use: how often a thread turns up: "usual". Static, translated; @word gets the English. */
const char *cli_words_use (HmUse use, const char **word);

G_END_DECLS
