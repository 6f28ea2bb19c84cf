/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fastener-places.h"
#include "hm-fit.h"
#include "hm-lookup.h"
#include "hm-near-miss.h"
#include "hm-thread-limits.h"
#include "hmui-answer.h"
G_BEGIN_DECLS

/* From what was asked to the answer in words. Private to this folder. */

/**
 * HmuiAsker: what the answer depends on besides the question; all borrowed.
 * @places: (nullable): the fasteners of the machines that are known
 * @bolt_class, @hole_class: for a thread whose form has them
 */
typedef struct {
  const HmTables *tables;
  const HmFastenerPlaces *places;
  HmFormat format;
  HmHeadCondition condition;
  HmThreadClass bolt_class, hole_class;
} HmuiAsker;

HmuiAnswer *hmui_answer_width  (const HmuiAsker *asker, const HmLookup *question);   /* an outside hexagon */
HmuiAnswer *hmui_answer_key    (const HmuiAsker *asker, const HmDrive *drive);       /* any other drive */
HmuiAnswer *hmui_answer_thread (const HmuiAsker *asker, const HmThread *thread);
HmuiAnswer *hmui_answer_pipe   (const HmuiAsker *asker, const HmThreadRow *row);
HmuiAnswer *hmui_answer_torque (const HmuiAsker *asker, const HmQuantityRange *torque);

/* Parts that several kinds of answer have. */
HmuiTone hmui_tone_of_fit (HmFitVerdict verdict);
void     hmui_answer_add_other_drives (HmuiAnswer *answer, const HmuiAsker *asker, const HmDrive *drive);
void     hmui_answer_add_places       (HmuiAnswer *answer, const HmuiAsker *asker, const HmDrive *drive);
/** hmui_answer_add_misses: near misses; no part when there are none. hmui_answer_add_heads: @rows of HmHexRow; @by_thread: name them by their thread, else by their size. */
void     hmui_answer_add_misses       (HmuiAnswer *answer, const HmuiAsker *asker, const HmThread *thread);
void     hmui_answer_add_heads        (HmuiAnswer *answer, const HmuiAsker *asker, const GPtrArray *rows, gboolean by_thread);

G_END_DECLS
