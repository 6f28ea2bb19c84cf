/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-answer-build.h"
#include "hm-width-answer.h"
#include "hmui-words-fit.h"
#include <glib/gi18n.h>

/* The case to look at: the loosest; of a socket that does not go on, the tightest. */
static void
draw_case (HmuiAnswerText *text, const HmuiAsker *asker, const HmOpeningRow *opening, const HmHead *head, const HmFit *fit)
{
  HmHead real = hm_head_in_condition (head, asker->condition);
  gboolean goes_on = fit->verdict != HM_FIT_WILL_NOT_GO_ON;

  text->head = goes_on ? real.min : real.max;
  text->opening = goes_on ? opening->max : opening->min;
  text->degrees = goes_on ? fit->free_angle_max : 0.0;
}

static void
add_fit (HmuiAnswerPart *part, const HmuiAsker *asker, const HmSizeFit *one, const HmHead *head)
{
  g_autofree char *socket = hmui_words_socket (one->opening, &asker->format);
  g_autofree char *target = hmui_words_size_name (one->opening->nominal, one->opening->inch, &asker->format);
  g_autofree char *detail = hmui_words_fit_detail (&one->fit, &asker->format);

  HmuiAnswerText text = {
    .tone = hmui_tone_of_fit (one->fit.verdict), .word = hmui_words_fit_verdict (one->fit.verdict), .title = socket,
    .detail = detail, .provenance = &one->opening->provenance, .target = target };

  draw_case (&text, asker, one->opening, head, &one->fit);
  hmui_answer_part_add (part, &text);
}

static void
add_fits (HmuiAnswer *answer, const HmuiAsker *asker, const HmWidthAnswer *width)
{
  g_autofree char *limits = hmui_words_span (width->head.min, width->head.max, &asker->format);
  g_autofree char *note = NULL;
  HmuiAnswerPart *part;

  if (width->origin == HM_WIDTH_MEASURED)
    note = g_strdup_printf (_("No standard head has this size, so it is taken as a head measured: %s across flats. %s"), limits,
                            hmui_words_contact_note ());
  else
    note = g_strdup_printf (_("On heads of %s across flats, the limits of the standards. %s"), limits, hmui_words_contact_note ());
  part = hmui_answer_add_part (answer, HMUI_PART_FITS, _("What fits it"), note);
  for (guint i = 0; i < width->fits->len; i++)
    add_fit (part, asker, &g_array_index (width->fits, HmSizeFit, i), &width->head);
}

static void
add_turns (HmuiAnswer *answer, const HmuiAsker *asker, const HmWidthAnswer *width)
{
  HmuiAnswerPart *part;

  if (width->turns->len == 0)
    return;
  part = hmui_answer_add_part (answer, HMUI_PART_TURNS, _("Other heads the socket of this size goes on"), NULL);
  for (guint i = 0; i < width->turns->len; i++)
    {
      const HmHeadFit *one = &g_array_index (width->turns, HmHeadFit, i);
      g_autofree char *head = hm_drive_format (&one->drive, &asker->format);
      g_autofree char *target = hmui_words_size_name (one->drive.size, one->drive.inch, &asker->format);
      g_autofree char *detail = hmui_words_fit_detail (&one->fit, &asker->format);

      HmuiAnswerText text = {
        .tone = hmui_tone_of_fit (one->fit.verdict), .word = hmui_words_fit_verdict (one->fit.verdict), .title = head,
        .detail = detail, .provenance = &width->opening->provenance, .target = target };

      draw_case (&text, asker, width->opening, &one->head, &one->fit);
      hmui_answer_part_add (part, &text);
    }
}

static void
add_neighbour (HmuiAnswerPart *part, const HmuiAsker *asker, const char *word, const HmOpeningRow *row)
{
  g_autofree char *size = NULL, *name = NULL;

  if (row == NULL)
    return;
  size = hmui_words_size (row->nominal, row->inch, &asker->format);
  name = hmui_words_size_name (row->nominal, row->inch, &asker->format);
  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = word, .title = size, .target = name });
}

static void
add_neighbours (HmuiAnswer *answer, const HmuiAsker *asker, const HmSizeNeighbours *next)
{
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_NEIGHBOURS, _("Sizes next to it"), NULL);

  add_neighbour (part, asker, _("inch, above"), next->inch_above);
  add_neighbour (part, asker, _("inch, below"), next->inch_below);
  add_neighbour (part, asker, _("metric, above"), next->metric_above);
  add_neighbour (part, asker, _("metric, below"), next->metric_below);
}

static void
add_rounded (HmuiAnswer *answer, const HmuiAsker *asker, const HmWidthAnswer *width)
{
  HmProvenance practice = { HM_PROVENANCE_COMMON_PRACTICE, NULL };
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_ROUNDED, _("If the corners are rounded"),
                                               _("Wear safety glasses. Soak a rusted thread in penetrating oil first."));
  g_autofree char *advice = hmui_words_rounded (width, &asker->format);
  g_autofree char *next = NULL, *next_target = NULL;
  const HmOpeningRow *tap_on = width->rounded.drive_on;
  g_autofree char *target = tap_on != NULL ? hmui_words_size_name (tap_on->nominal, tap_on->inch, &asker->format) : NULL;
  g_autofree char *socket = tap_on != NULL ? hmui_words_socket (tap_on, &asker->format) : NULL;

  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = _("tap on"), .title = socket != NULL ? socket : _("nothing that is near"),
                                                  .detail = advice, .provenance = &practice, .target = target });
  if (width->next_up.opening == NULL)
    return;
  next = hmui_words_socket (width->next_up.opening, &asker->format);
  next_target = hmui_words_size_name (width->next_up.opening->nominal, width->next_up.opening->inch, &asker->format);
  hmui_answer_part_add (part, &(HmuiAnswerText) {
    .tone = hmui_tone_of_fit (width->next_up.fit.verdict), .word = hmui_words_fit_verdict (width->next_up.fit.verdict),
    .title = next, .detail = _("The next socket up, if you try it by hand."), .provenance = &width->next_up.opening->provenance, .target = next_target });
}

/* "No standard head has this size. The 9 mm socket goes on the 11/32 in hex: usable." */
static char *
make_socket_lead (const HmuiAsker *asker, const HmWidthAnswer *width)
{
  const HmHeadFit *best = &g_array_index (width->turns, HmHeadFit, 0);
  g_autofree char *socket = hmui_words_socket (width->opening, &asker->format);
  g_autofree char *head = hm_drive_format (&best->drive, &asker->format);

  return g_strdup_printf (_("No standard head has this size.\nThe %s goes on the %s: %s."), socket, head,
                          hmui_words_fit_verdict (best->fit.verdict));
}

/* "Right tool: 11/32 in socket. Nearest metric size: 9 mm socket, usable." */
static char *
make_lead (const HmuiAsker *asker, const HmWidthAnswer *width)
{
  g_autoptr(GArray) others = hm_size_equivalents (&width->head, asker->condition, asker->tables);
  g_autoptr(GString) lead = g_string_new (NULL);
  g_autofree char *own = NULL, *other = NULL;
  const HmSizeFit *nearest = others->len > 0 ? &g_array_index (others, HmSizeFit, 0) : NULL;

  if (width->opening != NULL)
    {
      own = hmui_words_socket (width->opening, &asker->format);
      g_string_append_printf (lead, _("Right tool: %s or wrench."), own);
    }
  else
    g_string_append (lead, _("No wrench has this size."));
  g_string_append (lead, "\n");
  if (nearest == NULL)
    {
      g_string_append (lead, width->drive.inch ? _("No metric size comes near.") : _("No inch size comes near."));
      return g_string_free (g_steal_pointer (&lead), FALSE);
    }
  other = hmui_words_socket (nearest->opening, &asker->format);
  g_string_append_printf (lead, width->drive.inch ? _("Nearest metric size: %s, %s.") : _("Nearest inch size: %s, %s."), other,
                          hmui_words_fit_verdict (nearest->fit.verdict));
  return g_string_free (g_steal_pointer (&lead), FALSE);
}

/* "9 mm on 11/32": that one pair, before all others. */
static void
add_question (HmuiAnswer *answer, const HmuiAsker *asker, const HmLookup *question, const HmWidthAnswer *width)
{
  HmSizeFit one = { hm_opening_find (question->drive.size, question->drive.inch, asker->tables), { 0 } };
  HmuiAnswerPart *part = hmui_answer_add_part (answer, HMUI_PART_QUESTION, _("Your question"), NULL);
  g_autofree char *name = hmui_words_size_name (question->drive.size, question->drive.inch, &asker->format);
  g_autofree char *none = NULL;

  if (one.opening != NULL)
    {
      one.fit = hm_fit (one.opening, &width->head, asker->condition, asker->tables);
      add_fit (part, asker, &one, &width->head);
      return;
    }
  none = g_strdup_printf (_("No socket of %s is made."), name);
  hmui_answer_part_add (part, &(HmuiAnswerText) { .title = none });
}

HmuiAnswer *
hmui_answer_width (const HmuiAsker *asker, const HmLookup *question)
{
  const HmDrive *drive = question->has_head ? &question->head : &question->drive;
  g_autoptr(HmWidthAnswer) width = hm_width_answer_new (drive, asker->condition, asker->tables);
  g_autofree char *title = hm_drive_format (drive, &asker->format);
  g_autofree char *sizes = hmui_words_size (drive->size, drive->inch, &asker->format);
  gboolean is_socket = width->origin == HM_WIDTH_MEASURED && width->turns->len > 0;
  g_autofree char *lead = is_socket ? make_socket_lead (asker, width) : make_lead (asker, width);
  HmuiAnswer *answer = hmui_answer_new (title, sizes, lead);

  hmui_answer_set_drives (answer, drive, 1);
  if (question->has_head)
    add_question (answer, asker, question, width);
  if (is_socket)
    add_turns (answer, asker, width);
  add_fits (answer, asker, width);
  if (!is_socket)
    add_turns (answer, asker, width);
  add_rounded (answer, asker, width);
  add_neighbours (answer, asker, &width->neighbours);
  hmui_answer_add_other_drives (answer, asker, drive);
  hmui_answer_add_heads (answer, asker, width->heads, TRUE);
  hmui_answer_add_places (answer, asker, drive);
  return answer;
}
