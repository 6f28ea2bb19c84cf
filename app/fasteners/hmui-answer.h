/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gio/gio.h>
#include "hm-drive.h"
#include "hm-provenance.h"
#include "hm-thread.h"
G_BEGIN_DECLS

/* The answer to one question, in words: what a page shows and a test reads. No widgets. */

/** HmuiTone: of a verdict; each has its own icon. */
typedef enum { HMUI_TONE_NONE, HMUI_TONE_GOOD, HMUI_TONE_CAUTION, HMUI_TONE_BAD } HmuiTone;

/**
 * HmuiAnswerText: what a row is made from; all is copied. Any text may be NULL but @title.
 * @word: the verdict, or the name of the fact
 * @title: what it is about; @detail: the numbers and why
 * @provenance: (nullable)
 * @target: (nullable): what to look up when it is pressed
 * @action: (nullable): a static string: the action that @target goes to instead
 * @head, @opening: widths across flats to be drawn in each other; 0 for no drawing. @degrees: how far the head is turned in it
 * @bolt, @hole: (nullable): two threads to be drawn over each other, the bolt turned in until it jams after @turns; 0 if it does not
 */
typedef struct {
  HmuiTone tone;
  const char *word, *title, *detail;
  const HmProvenance *provenance;
  const char *target, *action;
  HmLength head, opening;
  double degrees;
  const HmThread *bolt, *hole;
  double turns;
} HmuiAnswerText;

#define HMUI_TYPE_ANSWER_ROW (hmui_answer_row_get_type ())
G_DECLARE_FINAL_TYPE (HmuiAnswerRow, hmui_answer_row, HMUI, ANSWER_ROW, GObject)

const HmuiAnswerText *hmui_answer_row_get_text (HmuiAnswerRow *self);   /* borrowed */

/**
 * HmuiPartRole: what a part is about; decides where it stands. %HMUI_PART_FITS depends on the condition of the head,
 * %HMUI_PART_LIMITS on the tolerance class.
 */
typedef enum {
  HMUI_PART_QUESTION, HMUI_PART_FITS, HMUI_PART_TURNS, HMUI_PART_ROUNDED, HMUI_PART_KEYS,
  HMUI_PART_NEIGHBOURS, HMUI_PART_OTHER_DRIVES, HMUI_PART_HEADS, HMUI_PART_PLACES,
  HMUI_PART_TORQUE, HMUI_PART_BASICS, HMUI_PART_LIMITS, HMUI_PART_HOLES, HMUI_PART_MISSES
} HmuiPartRole;

/** HmuiAnswerPart: rows under one heading; a #GListModel of #HmuiAnswerRow. */
#define HMUI_TYPE_ANSWER_PART (hmui_answer_part_get_type ())
G_DECLARE_FINAL_TYPE (HmuiAnswerPart, hmui_answer_part, HMUI, ANSWER_PART, GObject)

HmuiPartRole hmui_answer_part_get_role  (HmuiAnswerPart *self);
const char  *hmui_answer_part_get_title (HmuiAnswerPart *self);        /* borrowed */
const char  *hmui_answer_part_get_note  (HmuiAnswerPart *self);        /* borrowed; NULL for none */
guint        hmui_answer_part_get_n     (HmuiAnswerPart *self);
HmuiAnswerRow *hmui_answer_part_get_row (HmuiAnswerPart *self, guint i);   /* borrowed */

/** hmui_answer_part_add: one more row. */
void         hmui_answer_part_add       (HmuiAnswerPart *self, const HmuiAnswerText *text);

/**
 * HmuiAnswer:
 * Its drawing is of drives (a head), or there is none.
 */
#define HMUI_TYPE_ANSWER (hmui_answer_get_type ())
G_DECLARE_FINAL_TYPE (HmuiAnswer, hmui_answer, HMUI, ANSWER, GObject)

/** hmui_answer_new: @title, @sizes (both systems) and @lead (the answer in a sentence) are copied. */
HmuiAnswer *hmui_answer_new (const char *title, const char *sizes, const char *lead);

const char *hmui_answer_get_title (HmuiAnswer *self);
const char *hmui_answer_get_sizes (HmuiAnswer *self);                  /* NULL for none */
const char *hmui_answer_get_lead  (HmuiAnswer *self);                  /* NULL for none */

void           hmui_answer_set_drives (HmuiAnswer *self, const HmDrive *drives, guint n);
void           hmui_answer_set_lobes  (HmuiAnswer *self, HmLength point_to_point, HmLength across_lobes);
const HmDrive *hmui_answer_get_drives (HmuiAnswer *self, guint *n);    /* borrowed */
void           hmui_answer_get_lobes  (HmuiAnswer *self, HmLength *point_to_point, HmLength *across_lobes);

/** hmui_answer_add_part: borrowed back, to be filled; @note may be NULL. */
HmuiAnswerPart *hmui_answer_add_part  (HmuiAnswer *self, HmuiPartRole role, const char *title, const char *note);
guint           hmui_answer_get_n_parts (HmuiAnswer *self);
HmuiAnswerPart *hmui_answer_get_part  (HmuiAnswer *self, guint i);     /* borrowed */
HmuiAnswerPart *hmui_answer_find_part (HmuiAnswer *self, HmuiPartRole role);   /* borrowed; NULL if there is none */

G_END_DECLS
