/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-sheet-pdf.h"

#include <cairo-pdf.h>

static cairo_status_t
take_bytes (void *bytes, const unsigned char *data, unsigned int length)
{
  g_byte_array_append (bytes, data, length);
  return CAIRO_STATUS_SUCCESS;
}

static void
set_metadata (cairo_surface_t *surface, const HmSheet *sheet, GDateTime *made)
{
  g_autoptr (GDateTime) utc = g_date_time_to_utc (made);
  g_autofree char *when = g_date_time_format (utc, "%Y-%m-%dT%H:%M:%SZ");

  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_TITLE, sheet->title);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_SUBJECT, sheet->governs);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATOR, "Halfmoon " HALFMOON_VERSION);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_CREATE_DATE, when);
  cairo_pdf_surface_set_metadata (surface, CAIRO_PDF_METADATA_MOD_DATE, when);
}

static cairo_status_t
draw_pages (const HmSheet *sheet, const HmuiPaper *paper, GDateTime *made, GByteArray *bytes)
{
  g_autoptr (HmuiSheetPages) pages = hmui_sheet_pages_new (sheet, paper);
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream (take_bytes, bytes, paper->width_pt, paper->height_pt);
  cairo_t *cr;
  cairo_status_t status;

  set_metadata (surface, sheet, made);
  cr = cairo_create (surface);
  for (guint page = 0; page < hmui_sheet_pages_get_n (pages); page++)
    {
      hmui_sheet_pages_draw (pages, cr, page);
      cairo_show_page (cr);
    }
  cairo_destroy (cr);
  cairo_surface_finish (surface);
  status = cairo_surface_status (surface);
  cairo_surface_destroy (surface);
  return status;
}

GBytes *
hmui_sheet_pdf_new (const HmSheet *sheet, const HmuiPaper *paper, GDateTime *made, GError **error)
{
  g_autoptr (GByteArray) bytes = g_byte_array_new ();
  cairo_status_t status;

  g_return_val_if_fail (sheet != NULL && paper != NULL && made != NULL, NULL);
  status = draw_pages (sheet, paper, made, bytes);
  if (status == CAIRO_STATUS_SUCCESS)
    return g_byte_array_free_to_bytes (g_steal_pointer (&bytes));
  g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_FAILED, cairo_status_to_string (status));
  return NULL;
}

gboolean
hmui_sheet_pdf_save (const HmSheet *sheet, const HmuiPaper *paper, GDateTime *made, GFile *file, GError **error)
{
  g_autoptr (GBytes) bytes = NULL;

  g_return_val_if_fail (G_IS_FILE (file), FALSE);
  bytes = hmui_sheet_pdf_new (sheet, paper, made, error);
  return bytes != NULL
         && g_file_replace_contents (file, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL, FALSE,
                                     G_FILE_CREATE_NONE, NULL, NULL, error);
}

GDateTime *
hmui_sheet_pdf_dup_time (void)
{
  const char *epoch = g_getenv ("SOURCE_DATE_EPOCH");
  gint64 seconds;

  if (epoch != NULL && g_ascii_string_to_signed (epoch, 10, 0, 253402300799, &seconds, NULL))
    return g_date_time_new_from_unix_utc (seconds);
  return g_date_time_new_now_local ();
}
