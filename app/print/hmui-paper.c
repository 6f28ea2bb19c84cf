/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-paper.h"

#define PT_PER_MM (72.0 / 25.4)

const HmuiPaper hmui_paper_a4 = { 210.0 * PT_PER_MM, 297.0 * PT_PER_MM };
const HmuiPaper hmui_paper_letter = { 8.5 * 72.0, 11.0 * 72.0 };

gboolean
hmui_paper_parse (const char *name, HmuiPaper *out)
{
  g_return_val_if_fail (name != NULL && out != NULL, FALSE);
  if (g_ascii_strcasecmp (name, "a4") == 0)
    *out = hmui_paper_a4;
  else if (g_ascii_strcasecmp (name, "letter") == 0)
    *out = hmui_paper_letter;
  else
    return FALSE;
  return TRUE;
}
