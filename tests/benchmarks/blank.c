/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The least that a GTK program can do: one empty window, gone after its first painted frame. What Halfmoon's own start is
 * measured against, in the same run and surroundings. */
#include <gtk/gtk.h>

static void
painted_cb (GdkFrameClock *clock, GApplication *application)
{
  g_application_quit (application);
}

static void
realized_cb (GtkWidget *window, GApplication *application)
{
  GdkFrameClock *clock = gtk_widget_get_frame_clock (window);
  g_signal_connect (clock, "after-paint", G_CALLBACK (painted_cb), application);
}

static void
activate_cb (GtkApplication *application, gpointer data)
{
  GtkWidget *window = gtk_application_window_new (application);
  gtk_window_set_default_size (GTK_WINDOW (window), 1100, 800);
  g_signal_connect (window, "realize", G_CALLBACK (realized_cb), application);
  gtk_window_present (GTK_WINDOW (window));
}

int
main (int argc, char **argv)
{
  g_autoptr(GtkApplication) application = gtk_application_new (HALFMOON_APP_ID ".Blank", G_APPLICATION_DEFAULT_FLAGS);
  g_signal_connect (application, "activate", G_CALLBACK (activate_cb), NULL);
  return g_application_run (G_APPLICATION (application), argc, argv);
}
