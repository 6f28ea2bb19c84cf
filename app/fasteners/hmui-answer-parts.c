/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-answer-build.h"
#include "hm-key-answer.h"
#include "hmui-tr.h"
#include "hmui-words-fit.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

#define MOST_PLACES 6            /* the rest is counted in words */

HmuiTone
hmui_tone_of_fit (HmFitVerdict verdict)
{
  switch (verdict)
    {
    case HM_FIT_FITS: return HMUI_TONE_GOOD;
    case HM_FIT_USABLE: return HMUI_TONE_CAUTION;
    case HM_FIT_ROUNDS:
    case HM_FIT_WILL_NOT_GO_ON:
    default: return HMUI_TONE_BAD;
    }
}

static void
add_other_drive (HmuiAnswerPart *part, const HmuiAsker *asker, const HmOtherDrive *other)
{
  g_autofree char *drive = hm_drive_format (&other->drive, &asker->format);
  g_autofree char *tool = hm_drive_tool (&other->drive, &asker->format);
  g_autofree char *detail = g_strdup_printf (_("%s. Both on: %s"), hmui_tr (tool), hmui_tr (other->example->name));

  hmui_answer_part_add (part, &(HmuiAnswerText) { .title = hmui_tr (drive), .detail = detail,
                                                  .provenance = &other->example->provenance, .target = drive });
}

void
hmui_answer_add_other_drives (HmuiAnswer *answer, const HmuiAsker *asker, const HmDrive *drive)
{
  g_autoptr(GArray) others = NULL;
  HmuiAnswerPart *part;

  if (asker->places == NULL)
    return;
  others = hm_other_drives (hm_fastener_places_get_fasteners (asker->places), drive);
  if (others->len == 0)
    return;
  part = hmui_answer_add_part (answer, HMUI_PART_OTHER_DRIVES, _("What else drives it"),
                               _("On combination heads, which have both. Look at the head: not every one does."));
  for (guint i = 0; i < others->len; i++)
    add_other_drive (part, asker, &g_array_index (others, HmOtherDrive, i));
}

static void
add_place (HmuiAnswerPart *part, const HmuiAsker *asker, const HmFastenerPlace *place)
{
  g_autofree char *count = hmui_words_count_and_thread (place->fastener, &asker->format);
  g_autofree char *detail = g_strdup_printf ("%s · %s", hmui_tr (place->layout->name), count);

  hmui_answer_part_add (part, &(HmuiAnswerText) { .title = hmui_tr (place->fastener->name), .detail = detail,
                                                  .provenance = &place->fastener->provenance });
}

void
hmui_answer_add_places (HmuiAnswer *answer, const HmuiAsker *asker, const HmDrive *drive)
{
  g_autoptr(GArray) places = NULL;
  g_autofree char *note = NULL;
  HmuiAnswerPart *part;

  if (asker->places == NULL)
    return;
  places = hm_fastener_places_find (asker->places, drive);
  if (places->len == 0)
    return;
  if (places->len > MOST_PLACES)
    note = g_strdup_printf (_("The first %d of %u."), MOST_PLACES, places->len);
  part = hmui_answer_add_part (answer, HMUI_PART_PLACES, _("Where it is on machines"), note);
  for (guint i = 0; i < places->len && i < MOST_PLACES; i++)
    add_place (part, asker, &g_array_index (places, HmFastenerPlace, i));
}

/* Whether both would read the same but for their standard. */
static gboolean
is_alike (const HmHexRow *a, const HmHexRow *b)
{
  return a->kind == b->kind && a->inch == b->inch && g_str_equal (a->thread, b->thread) && !(a->nominal.mm < b->nominal.mm)
         && !(a->nominal.mm > b->nominal.mm) && !(a->min.mm < b->min.mm) && !(a->min.mm > b->min.mm)
         && !(a->max.mm < b->max.mm) && !(a->max.mm > b->max.mm);
}

/* Whether a row before @i has said it already. */
static gboolean
is_repeated (const GPtrArray *rows, guint i)
{
  for (guint k = 0; k < i; k++)
    if (is_alike (g_ptr_array_index (rows, k), g_ptr_array_index (rows, i)))
      return TRUE;
  return FALSE;
}

/* "ISO 4014 grade A, ISO 4017: across flats 12.73–13.00 mm (…)" */
static char *
head_detail (const GPtrArray *rows, guint i, const HmFormat *format)
{
  const HmHexRow *row = g_ptr_array_index (rows, i);
  g_autoptr(GString) standards = g_string_new (row->standard);
  g_autofree char *limits = NULL;

  for (guint k = i + 1; k < rows->len; k++)
    {
      const HmHexRow *other = g_ptr_array_index (rows, k);

      if (is_alike (row, other))
        g_string_append_printf (standards, ", %s", other->standard);
    }
  if (row->min.mm <= 0.0)
    return g_string_free (g_steal_pointer (&standards), FALSE);
  limits = hmui_words_span (row->min, row->max, format);
  return g_strdup_printf (_("%s: across flats %s"), standards->str, limits);
}

/* "hex 13 mm": what to look up for a head. */
static char *
head_target (const HmHexRow *row, gboolean by_thread)
{
  HmDrive drive = { row->min.mm > 0.0 ? HM_DRIVE_HEX : HM_DRIVE_HEX_SOCKET, row->nominal, 0, row->inch };

  return by_thread ? g_strdup (row->thread[0] == 'M' ? row->thread : NULL) : hm_drive_format (&drive, &hm_format_default);
}

static void
add_head (HmuiAnswerPart *part, const HmuiAsker *asker, const GPtrArray *rows, guint i, gboolean by_thread)
{
  const HmHexRow *row = g_ptr_array_index (rows, i);
  g_autofree char *name = by_thread ? hmui_words_head (row) : hmui_words_head_by_size (row, &asker->format);
  g_autofree char *detail = head_detail (rows, i, &asker->format);
  g_autofree char *target = head_target (row, by_thread);

  hmui_answer_part_add (part, &(HmuiAnswerText) { .title = name, .detail = detail, .provenance = &row->provenance, .target = target });
}

void
hmui_answer_add_heads (HmuiAnswer *answer, const HmuiAsker *asker, const GPtrArray *rows, gboolean by_thread)
{
  HmuiAnswerPart *part;

  if (rows->len == 0)
    return;
  part = hmui_answer_add_part (answer, HMUI_PART_HEADS, by_thread ? _("Heads and threads of this size") : _("Heads, nuts and keys"), NULL);
  for (guint i = 0; i < rows->len; i++)
    if (!is_repeated (rows, i))
      add_head (part, asker, rows, i, by_thread);
}
