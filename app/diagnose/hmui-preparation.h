/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-prepare-model.h"
G_BEGIN_DECLS

/** HmuiPreparation: what to lay out, what to shut and to open first, and, opened in place, how. Hides itself when empty. */
#define HMUI_TYPE_PREPARATION (hmui_preparation_get_type ())
G_DECLARE_FINAL_TYPE (HmuiPreparation, hmui_preparation, HMUI, PREPARATION, GtkWidget)

void hmui_preparation_show (HmuiPreparation *self, HmuiPrepareModel *model);

G_END_DECLS
