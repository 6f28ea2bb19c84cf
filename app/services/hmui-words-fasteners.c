/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-words.h"
#include "hmui-tr.h"
#include <glib/gi18n.h>

char *
hmui_words_drives (const HmFastener *fastener, const HmFormat *format)
{
  g_autoptr(GString) text = g_string_new (NULL);

  for (guint i = 0; i < fastener->n_drives; i++)
    {
      g_autofree char *drive = hm_drive_format (&fastener->drives[i], format);

      if (i == 0)
        g_string_append (text, hmui_tr (drive));
      else
        g_string_append_printf (text, _(" or %s"), hmui_tr (drive));
    }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

char *
hmui_words_count_and_thread (const HmFastener *fastener, const HmFormat *format)
{
  g_autofree char *thread = NULL;

  if (!fastener->has_thread)
    return g_strdup_printf ("%u", fastener->count);
  thread = hm_thread_format (&fastener->thread, format);
  return g_strdup_printf (_("%u of %s"), fastener->count, thread);
}

static HmQuantity
torque_quantity (HmTorque torque)
{
  return hm_quantity (HM_QUANTITY_TORQUE, torque.newton_metres, HM_UNIT_NEWTON_METRE);
}

static char *
torque_band (const HmTorqueAnswer *answer, const HmFormat *format)
{
  HmQuantityRange band = { torque_quantity (answer->low), torque_quantity (answer->high) };

  return hm_quantity_range_format_both (band, format);
}

char *
hmui_words_torque_short (const HmTorqueAnswer *answer, const HmFormat *format)
{
  if (answer == NULL)
    return g_strdup (_("see the maker’s manual"));
  switch (answer->basis)
    {
    case HM_TORQUE_BY_HAND: return g_strdup (_("snug by hand"));
    case HM_TORQUE_MANUAL_ONLY: return g_strdup (_("the maker’s manual only"));
    case HM_TORQUE_RANGE:
    case HM_TORQUE_COMPUTED:
    default: return torque_band (answer, format);
    }
}

/* The aim stands below the band only where it is a value of its own. */
char *
hmui_words_torque (const HmTorqueAnswer *answer, const HmFormat *format)
{
  g_autofree char *band = hmui_words_torque_short (answer, format);
  g_autofree char *aim = NULL;
  HmQuantityRange target;

  if (answer == NULL || !(answer->low.newton_metres < answer->high.newton_metres))
    return g_steal_pointer (&band);
  target.low = target.high = torque_quantity (answer->target);
  aim = hm_quantity_range_format_both (target, format);
  return g_strdup_printf (_("%s\naim for %s"), band, aim);
}

char *
hmui_words_pattern (HmPattern pattern)
{
  switch (pattern)
    {
    case HM_PATTERN_CROSS: return g_strdup (_("crosswise, in three rounds"));
    case HM_PATTERN_INLINE: return g_strdup (_("from the middle out, in three rounds"));
    case HM_PATTERN_ROUND: return g_strdup (_("opposite ones in turn, in three rounds"));
    case HM_PATTERN_RECTANGULAR: return g_strdup (_("from the middle out, crosswise, in three rounds"));
    case HM_PATTERN_NONE:
    default: return NULL;
    }
}
