/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-answer-build.h"
#include "hm-pitch-text.h"
#include "hm-tap.h"
#include "hm-width-answer.h"
#include "hmui-words-fit.h"
#include "hmui-words-thread.h"
#include <glib/gi18n.h>

#define MOST_MISSES 6

static const HmProvenance from_profile = { HM_PROVENANCE_COMPUTED, "basic profile of ISO 68-1 and ASME B1.1" };
static const HmProvenance from_limits = { HM_PROVENANCE_COMPUTED, "tolerance formulas of ISO 965-1 and ASME B1.1" };
static const HmProvenance from_area = { HM_PROVENANCE_COMPUTED, "stress area of ISO 898-1 and ASME B1.1" };
static const HmProvenance from_drill = { HM_PROVENANCE_COMPUTED, "height of thread of ASME B1.1" };

static void
add_length (HmuiAnswerPart *part, const HmuiAsker *asker, const char *word, HmLength length, const HmProvenance *provenance)
{
  g_autofree char *text = hmui_words_length (length, &asker->format);

  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = word, .title = text, .provenance = provenance });
}

static void
add_fine (HmuiAnswerPart *part, const HmuiAsker *asker, const char *word, HmLength length)
{
  g_autofree char *text = hmui_words_fine_span (length, length, &asker->format);

  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = word, .title = text, .provenance = &from_profile });
}

static void
add_area (HmuiAnswerPart *part, const HmuiAsker *asker, const HmThread *thread)
{
  HmQuantity area = hm_quantity (HM_QUANTITY_AREA, hm_thread_stress_area_mm2 (thread), HM_UNIT_MM2);
  g_autofree char *text = hm_quantity_range_format_both ((HmQuantityRange) { area, area }, &asker->format);

  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = _("stress area"), .title = text, .provenance = &from_area });
}

static void
add_basics (HmuiAnswer *answer, const HmuiAsker *asker, const HmThread *thread, const HmThreadRow *row)
{
  const HmProvenance *size = row != NULL ? &row->provenance : &from_profile;
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_BASICS, _("Basic profile"),
                                               thread->left_hand ? _("Left-hand: it tightens counterclockwise. The sizes are the same.")
                                                                 : NULL);
  g_autofree char *pitch = hm_pitch_format (thread->pitch, thread->form == HM_THREAD_UNIFIED, &asker->format);

  add_length (part, asker, _("major diameter"), thread->major, size);
  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = _("pitch"), .title = pitch, .provenance = size });
  add_fine (part, asker, _("pitch diameter"), hm_thread_pitch_diameter (thread));
  add_fine (part, asker, _("minor diameter"), hm_thread_minor_diameter (thread));
  add_area (part, asker, thread);
}

static void
add_limit (HmuiAnswerPart *part, const HmuiAsker *asker, const char *word, HmLength low, HmLength high)
{
  g_autofree char *least = high.mm <= 0.0 ? hmui_words_fine_span (low, low, &asker->format) : NULL;
  g_autofree char *text = least != NULL ? g_strdup_printf (_("at least %s"), least)
                                        : hmui_words_fine_span (low, high, &asker->format);

  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = word, .title = text, .provenance = &from_limits });
}

static void
add_class (HmuiAnswerPart *part, const HmuiAsker *asker, const HmThread *thread, HmThreadClass of)
{
  gboolean hole = hm_thread_class_is_internal (of);
  HmThreadLimits limits;
  g_autoptr(GError) error = NULL;
  g_autofree char *heading = g_strdup_printf (hole ? _("Hole, class %s") : _("Bolt, class %s"), hm_thread_class_name (of));

  if (!hm_thread_get_limits (thread, of, asker->tables, &limits, &error))
    {
      hmui_answer_part_add (part, &(HmuiAnswerText) { .title = error->message });
      return;
    }
  hmui_answer_part_add (part, &(HmuiAnswerText) { .title = heading });
  add_limit (part, asker, _("major diameter"), limits.major_min, limits.major_max);
  add_limit (part, asker, _("pitch diameter"), limits.pitch_min, limits.pitch_max);
  add_limit (part, asker, _("minor diameter"), limits.minor_min, limits.minor_max);
}

static void
add_limits (HmuiAnswer *answer, const HmuiAsker *asker, const HmThread *thread)
{
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_LIMITS, _("Limits of size"), NULL);

  add_class (part, asker, thread, asker->bolt_class);
  add_class (part, asker, thread, asker->hole_class);
}

static void
add_drill_for (HmuiAnswerPart *part, const HmuiAsker *asker, const HmThread *thread, const char *word, double percent)
{
  g_autofree char *text = hmui_words_drill_for (thread, percent, &asker->format);

  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = word, .title = text, .provenance = &from_drill });
}

static void
add_clearance (HmuiAnswerPart *part, const HmuiAsker *asker, const char *word, HmLength length, const HmProvenance *provenance)
{
  if (length.mm > 0.0)
    add_length (part, asker, word, length, provenance);
}

static void
add_holes (HmuiAnswer *answer, const HmuiAsker *asker, const HmThread *thread)
{
  const HmHoleRow *holes = hm_thread_find_holes (thread, asker->tables);
  g_autofree char *tap = hmui_words_tap_drill (holes, &asker->format);
  g_autofree char *share = tap != NULL ? hmui_words_tap_share (thread, holes, &asker->format) : NULL;
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_HOLES, _("Holes"), NULL);

  if (tap != NULL)
    hmui_answer_part_add (part, &(HmuiAnswerText) { .word = _("tap drill"), .title = tap, .detail = share,
                                                    .provenance = &holes->tap_provenance });
  add_drill_for (part, asker, thread, _("for 75 % of thread"), 75.0);
  add_drill_for (part, asker, thread, _("for 60 % of thread"), 60.0);
  if (holes == NULL)
    return;
  add_clearance (part, asker, _("clearance, close"), holes->close, &holes->provenance);
  add_clearance (part, asker, _("clearance, normal"), holes->normal, &holes->provenance);
  add_clearance (part, asker, _("clearance, loose"), holes->loose, &holes->provenance);
}

static void
add_miss (HmuiAnswerPart *part, const HmuiAsker *asker, const HmThread *thread, const HmNearMiss *miss)
{
  HmProvenance computed = { HM_PROVENANCE_COMPUTED, "from both tolerance bands, usual classes, one diameter engaged" };
  HmThread other = { miss->row->inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, miss->row->major, miss->row->pitch, thread->left_hand };
  g_autofree char *title = hmui_words_near_miss (miss);
  g_autofree char *detail = hmui_words_mating (&miss->mating, &asker->format);

  hmui_answer_part_add (part, &(HmuiAnswerText) {
    .tone = HMUI_TONE_CAUTION, .word = miss->mating.mate == HM_MATE_JAMS ? _("jams") : _("strips"), .title = title, .detail = detail,
    .provenance = &computed, .target = miss->row->name,
    .bolt = miss->thread_is_bolt ? thread : &other, .hole = miss->thread_is_bolt ? &other : thread,
    .turns = miss->mating.mate == HM_MATE_JAMS ? miss->mating.turns_loose : 0.0 });
}

void
hmui_answer_add_misses (HmuiAnswer *answer, const HmuiAsker *asker, const HmThread *thread)
{
  g_autoptr(GArray) misses = hm_thread_near_misses (thread, asker->tables);
  HmuiAnswerPart *part;
  g_autofree char *note = NULL;

  if (misses->len == 0)
    return;
  if (misses->len > MOST_MISSES)
    note = g_strdup_printf (_("Threads that start in it, or on which it starts, and then spoil it. The commonest %d of %u."), MOST_MISSES,
                            misses->len);
  part = hmui_answer_add_part (answer, HMUI_PART_MISSES, _("Near misses"),
                               note != NULL ? note : _("Threads that start in it, or on which it starts, and then spoil it."));
  for (guint i = 0; i < misses->len && i < MOST_MISSES; i++)
    add_miss (part, asker, thread, &g_array_index (misses, HmNearMiss, i));
}

static char *
make_lead (const HmThread *thread, const HmThreadRow *row)
{
  const char *hand = thread->left_hand ? _("Left-hand thread.") : _("Right-hand thread.");

  if (row == NULL)
    return g_strdup_printf (_("In none of the series: a special, or a slip. %s"), hand);
  return g_strdup_printf (_("%s; %s. %s"), hmui_words_series (row->series), hmui_words_use (row->use), hand);
}

/* Sizes are written in the system of the thread first; limits in that of the person. */
static HmuiAsker
in_own_system (const HmuiAsker *asker, gboolean inch)
{
  HmuiAsker own = *asker;

  own.format = hmui_words_own (&asker->format, inch);
  return own;
}

HmuiAnswer *
hmui_answer_thread (const HmuiAsker *asker, const HmThread *thread)
{
  const HmThreadRow *row = hm_thread_find_row (thread, asker->tables);
  g_autofree char *title = hm_thread_format (thread, &asker->format);
  HmuiAsker own = in_own_system (asker, thread->form == HM_THREAD_UNIFIED);
  g_autofree char *major = hmui_words_length (thread->major, &own.format);
  g_autofree char *pitch = hm_pitch_format (thread->pitch, thread->form == HM_THREAD_UNIFIED, &asker->format);
  g_autofree char *sizes = g_strdup_printf (_("%s, pitch %s"), major, pitch);
  g_autofree char *lead = make_lead (thread, row);
  g_autoptr(GPtrArray) heads = hm_heads_of_thread (thread, asker->tables);
  HmuiAnswer *answer = hmui_answer_new (title, sizes, lead);

  add_holes (answer, &own, thread);
  hmui_answer_add_misses (answer, asker, thread);
  add_limits (answer, asker, thread);
  add_basics (answer, &own, thread, row);
  hmui_answer_add_heads (answer, asker, heads, FALSE);
  return answer;
}

HmuiAnswer *
hmui_answer_pipe (const HmuiAsker *asker, const HmThreadRow *row)
{
  g_autofree char *pitch = hm_pitch_format (row->pitch, TRUE, &asker->format);
  HmuiAnswer *answer = hmui_answer_new (row->name, NULL, _("A tapered pipe thread: it seals on its flanks, with sealant. Its size is a name, "
                                                           "not a diameter. No straight thread belongs in it."));
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_BASICS, _("Basic sizes"), NULL);
  HmuiAsker own = in_own_system (asker, row->inch);

  add_length (part, &own, _("outside of the pipe"), row->major, &row->provenance);
  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = _("pitch"), .title = pitch, .provenance = &row->provenance });
  return answer;
}
