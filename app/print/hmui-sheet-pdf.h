/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gio/gio.h>
#include "hmui-sheet-pages.h"
G_BEGIN_DECLS

/**
 * hmui_sheet_pdf_new: @sheet as a PDF. The same sheet, paper and time give the same bytes.
 * @made: when it was made, for the PDF's own data
 * Returns: (transfer full), or NULL with %G_IO_ERROR
 */
GBytes *hmui_sheet_pdf_new (const HmSheet *sheet, const HmuiPaper *paper, GDateTime *made, GError **error);

/**
 * hmui_sheet_pdf_save: writes such a PDF, in place of what was there.
 * Returns: %FALSE with %G_IO_ERROR when the file cannot be written; what was there is then unchanged
 */
gboolean hmui_sheet_pdf_save (const HmSheet *sheet, const HmuiPaper *paper, GDateTime *made, GFile *file,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hmui_sheet_pdf_dup_time: the time to print on a sheet: SOURCE_DATE_EPOCH of the environment, else now. (transfer full) */
GDateTime *hmui_sheet_pdf_dup_time (void);

G_END_DECLS
