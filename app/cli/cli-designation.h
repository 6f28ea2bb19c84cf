/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-thread.h"
G_BEGIN_DECLS

/*
 * What programs read a thread's name as: the standard's callout in ASCII, which hm_thread_parse() reads back: "M8x1.25" (ISO 965-1;
 * the pitch always stands), "5/16-18 UNC" (ASME B1.1), "1/8-27 NPT" (ASME B1.20.1); "-LH" behind when left hand. A Unified thread that
 * no series has is its size and pitch alone, "5/16-20".
 */

/** cli_designation_for_row: a thread of a series. (transfer full) */
char *cli_designation_for_row (const HmThreadRow *row);

/** cli_designation_for_thread: @row is its series (nullable). (transfer full) */
char *cli_designation_for_thread (const HmThread *thread, const HmThreadRow *row);

G_END_DECLS
