/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-widgets.h"

void
hmui_widgets_ensure_types (void)
{
  g_type_ensure (HMUI_TYPE_CAUTION_CARD);
  g_type_ensure (HMUI_TYPE_CIRCUIT_VIEW);
  g_type_ensure (HMUI_TYPE_DRIVE_VIEW);
  g_type_ensure (HMUI_TYPE_FACT_ROW);
  g_type_ensure (HMUI_TYPE_PATTERN_VIEW);
  g_type_ensure (HMUI_TYPE_PROBABILITY_ROW);
  g_type_ensure (HMUI_TYPE_PROVENANCE_CHIP);
  g_type_ensure (HMUI_TYPE_READING_ENTRY);
  g_type_ensure (HMUI_TYPE_STEP_LIST);
}
