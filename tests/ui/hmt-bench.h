/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmt-visit.h"
#include "hmt-window.h"
G_BEGIN_DECLS

/** hmt_bench_launch: the window under test, with an empty shop of its own. @extra: (nullable): one more "NAME=value" */
HmtWindow *hmt_bench_launch (const char *extra);

/** hmt_bench_choose: complaint and machine; hmt_bench_begin: and "Start". */
void hmt_bench_choose (HmtWindow *window, HmtVisit *visit);
void hmt_bench_begin (HmtWindow *window, HmtVisit *visit);

/** hmt_bench_wait_for_step: until the step's title stands over the page. */
void hmt_bench_wait_for_step (HmtWindow *window, const HmtAnswer *answer);

/** hmt_bench_answer: does what the mechanic does, cautions first, by pressing what is shown. */
void hmt_bench_answer (HmtWindow *window, const HmtAnswer *answer);

/** hmt_bench_acknowledge: presses "I have done this" for every caution that asks for it. Returns: how many did */
guint hmt_bench_acknowledge (HmtWindow *window);

G_END_DECLS
