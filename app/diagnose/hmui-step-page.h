/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-diagnose-model.h"
G_BEGIN_DECLS

/** HmuiStepPage: one check: cautions, what to lay out and open, what to do, the drawing, the answers. */
#define HMUI_TYPE_STEP_PAGE (hmui_step_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiStepPage, hmui_step_page, HMUI, STEP_PAGE, GtkWidget)

GtkWidget *hmui_step_page_new (HmuiDiagnoseModel *bench);

/** hmui_step_page_refresh: shows the bench's check; on a new one the focus goes to its heading.
 * @arrived: another page was in sight before: begin at the top */
void       hmui_step_page_refresh (HmuiStepPage *self, gboolean arrived);

G_END_DECLS
