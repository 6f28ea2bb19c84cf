/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-print.h"
#include "hmui-sheet-pages.h"

#include <string.h>

#define JOB "hmui-print-job"

/* @pages: NULL until the paper is known */
typedef struct { HmSheet *sheet; HmuiSheetPages *pages; } Job;

static void
free_job (gpointer data)
{
  Job *self = data;

  g_clear_pointer (&self->pages, hmui_sheet_pages_free);
  g_clear_pointer (&self->sheet, hm_sheet_free);
  g_free (self);
}

static void
begin_print_cb (GtkPrintOperation *operation, GtkPrintContext *context, gpointer user_data)
{
  Job *job = g_object_get_data (G_OBJECT (operation), JOB);
  const HmuiPaper paper = { gtk_print_context_get_width (context), gtk_print_context_get_height (context) };

  g_clear_pointer (&job->pages, hmui_sheet_pages_free);
  job->pages = hmui_sheet_pages_new (job->sheet, &paper);
  gtk_print_operation_set_n_pages (operation, (int) hmui_sheet_pages_get_n (job->pages));
}

static void
draw_page_cb (GtkPrintOperation *operation, GtkPrintContext *context, int page, gpointer user_data)
{
  Job *job = g_object_get_data (G_OBJECT (operation), JOB);

  hmui_sheet_pages_draw (job->pages, gtk_print_context_get_cairo_context (context), (guint) page);
}

GtkPrintOperation *
hmui_print_operation_new (HmSheet *sheet)
{
  GtkPrintOperation *operation;
  Job *job;

  g_return_val_if_fail (sheet != NULL, NULL);
  operation = gtk_print_operation_new ();
  job = g_new0 (Job, 1);
  job->sheet = sheet;
  g_object_set_data_full (G_OBJECT (operation), JOB, job, free_job);
  gtk_print_operation_set_unit (operation, GTK_UNIT_POINTS);
  gtk_print_operation_set_use_full_page (operation, TRUE);   /* the sheet has margins of its own */
  gtk_print_operation_set_embed_page_setup (operation, TRUE);
  gtk_print_operation_set_job_name (operation, sheet->title);
  g_signal_connect (operation, "begin-print", G_CALLBACK (begin_print_cb), NULL);
  g_signal_connect (operation, "draw-page", G_CALLBACK (draw_page_cb), NULL);
  return operation;
}

HmuiPaper
hmui_print_usual_paper (void)
{
  return strcmp (gtk_paper_size_get_default (), GTK_PAPER_NAME_LETTER) == 0 ? hmui_paper_letter : hmui_paper_a4;
}
