/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-prepare-model.h"
G_BEGIN_DECLS

/*
 * HmuiCautionList: the cautions of a step, the serious ones first, each to be acknowledged.
 * Signal "released" (no arguments): whether the instructions may show is other than before.
 */
#define HMUI_TYPE_CAUTION_LIST (hmui_caution_list_get_type ())
G_DECLARE_FINAL_TYPE (HmuiCautionList, hmui_caution_list, HMUI, CAUTION_LIST, GtkWidget)

/** hmui_caution_list_show: @is_new: another step; else the same cautions keep their cards and the focus. */
void hmui_caution_list_show (HmuiCautionList *self, HmuiPrepareModel *model, gboolean is_new);

G_END_DECLS
