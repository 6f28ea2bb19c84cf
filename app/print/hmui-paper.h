/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/** HmuiPaper: a sheet of paper, upright; points of 1/72 in. A plain value. */
typedef struct { double width_pt, height_pt; } HmuiPaper;

extern const HmuiPaper hmui_paper_a4;       /* ISO 216: 210 × 297 mm */
extern const HmuiPaper hmui_paper_letter;   /* ASME Y14.1, size A: 8 1/2 × 11 in */

/** hmui_paper_parse: "a4" or "letter". Returns: %FALSE, with nothing written, for any other name */
gboolean hmui_paper_parse (const char *name, HmuiPaper *out) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
