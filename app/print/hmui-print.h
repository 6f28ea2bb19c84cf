/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-sheet.h"
#include "hmui-paper.h"
G_BEGIN_DECLS

/**
 * hmui_print_operation_new: what prints @sheet on the paper that is chosen in its dialog, drawn as in a PDF.
 * @sheet: (transfer full)
 * Returns: (transfer full): to be run by the caller
 */
GtkPrintOperation *hmui_print_operation_new (HmSheet *sheet);

/** hmui_print_usual_paper: letter where the locale's paper is that, else A4. */
HmuiPaper hmui_print_usual_paper (void);

G_END_DECLS
