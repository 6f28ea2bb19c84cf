/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-answer-build.h"
#include "hm-key-answer.h"
#include "hm-width-answer.h"
#include "hmui-tr.h"
#include "hmui-words-fit.h"
#include <glib/gi18n.h>

static void
add_key (HmuiAnswerPart *part, const HmuiAsker *asker, const HmKeyFit *fit, const HmProvenance *provenance)
{
  g_autofree char *tool = hm_drive_tool (&fit->key, &asker->format);
  g_autofree char *target = hm_drive_format (&fit->key, &asker->format);
  g_autofree char *detail = hmui_words_key_detail (fit);

  hmui_answer_part_add (part, &(HmuiAnswerText) {
    .tone = fit->known ? hmui_tone_of_fit (fit->verdict) : HMUI_TONE_NONE,
    .word = fit->known ? hmui_words_key_verdict (fit->verdict) : _("not known"), .title = hmui_tr (tool), .detail = detail,
    .provenance = provenance, .target = target });
}

static void
add_keys (HmuiAnswer *answer, const HmuiAsker *asker, const HmDrive *drive)
{
  HmProvenance provenance = { HM_PROVENANCE_COMPUTED, "from the nominal sizes" };
  g_autoptr(GArray) keys = hm_key_fits (drive, asker->tables);
  HmuiAnswerPart *part;

  if (keys->len == 0)
    return;
  part = hmui_answer_add_part (answer, HMUI_PART_KEYS, _("What fits it"), NULL);
  for (guint i = 0; i < keys->len; i++)
    add_key (part, asker, &g_array_index (keys, HmKeyFit, i), &provenance);
}

static void
add_size (HmuiAnswerPart *part, const HmuiAsker *asker, const char *word, HmLength length, const HmProvenance *provenance)
{
  HmFormat metric = hmui_words_own (&asker->format, FALSE);
  g_autofree char *size = NULL;

  if (length.mm <= 0.0)
    return;
  size = hmui_words_length (length, &metric);
  hmui_answer_part_add (part, &(HmuiAnswerText) { .word = word, .title = size, .provenance = provenance });
}

static HmuiAnswer *
answer_lobes (const HmuiAsker *asker, const HmDrive *drive, const char *title, const char *lead)
{
  gboolean external = drive->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL;
  const HmHexalobularRow *row = hm_hexalobular_find (drive->number, external, asker->tables);
  HmFormat metric = hmui_words_own (&asker->format, FALSE);   /* the sizes of ISO 10664 */
  g_autofree char *over = row != NULL ? hmui_words_length (row->a, &metric) : NULL;
  g_autofree char *sizes = over != NULL ? g_strdup_printf (_("%s over the points"), over) : NULL;
  HmuiAnswer *answer = hmui_answer_new (title, sizes, lead);
  HmuiAnswerPart *part;

  if (row == NULL)
    return answer;
  hmui_answer_set_lobes (answer, row->a, row->b);
  add_keys (answer, asker, drive);
  part = hmui_answer_add_part (answer, HMUI_PART_BASICS, external ? _("Hexalobular, outside") : _("Hexalobular recess"), NULL);
  add_size (part, asker, _("over the points"), row->a, &row->provenance);
  add_size (part, asker, _("over the hollows"), row->b, &row->provenance);
  return answer;
}

static HmuiAnswer *
answer_hex_key (const HmuiAsker *asker, const HmDrive *drive, const char *title, const char *lead)
{
  g_autofree char *sizes = hmui_words_size (drive->size, drive->inch, &asker->format);
  g_autoptr(GPtrArray) heads = hm_heads_of_size (drive, asker->tables);
  HmuiAnswer *answer = hmui_answer_new (title, sizes, lead);

  add_keys (answer, asker, drive);
  hmui_answer_add_heads (answer, asker, heads, TRUE);
  return answer;
}

static HmuiAnswer *
answer_plain (const HmuiAsker *asker, const HmDrive *drive, const char *title)
{
  g_autofree char *sizes = drive->size.mm > 0.0 ? hmui_words_size (drive->size, drive->inch, &asker->format) : NULL;

  switch (drive->kind)
    {
    case HM_DRIVE_CROSS_H:
    case HM_DRIVE_CROSS_Z:
      return hmui_answer_new (title, sizes, _("Cross recesses of types H and Z (ISO 4757) look alike. Type Z has fine marks between "
                                              "the wings. A bit of the other type slips out: try which sits without rocking."));
    case HM_DRIVE_SLOT:
      return hmui_answer_new (title, sizes, _("The blade should fill the slot, in width and in thickness."));
    case HM_DRIVE_HAND:
      return hmui_answer_new (title, sizes, _("Turned by hand: no tool."));
    default:
      return hmui_answer_new (title, sizes, _("Its limits are not known here."));
    }
}

/* "Right tool: T40 bit. The same head may also take: 1/2 in hex." */
static char *
make_lead (const HmuiAsker *asker, const HmDrive *drive)
{
  g_autofree char *tool = hm_drive_tool (drive, &asker->format);
  g_autofree char *other = NULL;
  g_autoptr(GArray) others = NULL;

  if (asker->places != NULL)
    others = hm_other_drives (hm_fastener_places_get_fasteners (asker->places), drive);
  if (others == NULL || others->len == 0)
    return g_strdup_printf (_("Right tool: %s."), hmui_tr (tool));
  other = hm_drive_format (&g_array_index (others, HmOtherDrive, 0).drive, &asker->format);
  return g_strdup_printf (_("Right tool: %s.\nWithout it: a combination head also takes the %s."), hmui_tr (tool), hmui_tr (other));
}

HmuiAnswer *
hmui_answer_key (const HmuiAsker *asker, const HmDrive *drive)
{
  g_autofree char *title = hm_drive_format (drive, &asker->format);
  g_autofree char *lead = make_lead (asker, drive);
  HmuiAnswer *answer;

  if (drive->kind == HM_DRIVE_HEXALOBULAR || drive->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL)
    answer = answer_lobes (asker, drive, title, lead);
  else if (drive->kind == HM_DRIVE_HEX_SOCKET)
    answer = answer_hex_key (asker, drive, title, lead);
  else
    answer = answer_plain (asker, drive, title);
  hmui_answer_set_drives (answer, drive, 1);
  hmui_answer_add_other_drives (answer, asker, drive);
  hmui_answer_add_places (answer, asker, drive);
  return answer;
}
