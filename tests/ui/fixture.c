/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A small window with one of each kind of thing that the driver must be able to read and work. */
#include <gtk/gtk.h>

typedef struct { GtkLabel *said; GtkStack *stack; } Fixture;

static void
say (GtkWidget *widget, Fixture *fixture, const char *what)
{
  g_autofree char *text = g_strdup_printf ("%s %s", what, gtk_widget_get_name (widget));
  gtk_label_set_label (fixture->said, text);
}

static void
clicked_cb (GtkWidget *button, Fixture *fixture)
{
  say (button, fixture, "pressed");
}

static void
toggled_cb (GtkWidget *button, Fixture *fixture)
{
  gboolean on = GTK_IS_CHECK_BUTTON (button) ? gtk_check_button_get_active (GTK_CHECK_BUTTON (button))
                                             : gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (button));
  say (button, fixture, on ? "on" : "off");
}

static void
changed_cb (GtkWidget *entry, Fixture *fixture)
{
  gtk_widget_set_name (entry, gtk_editable_get_text (GTK_EDITABLE (entry)));
  say (entry, fixture, "typed");
}

static void
turn_cb (GtkWidget *button, Fixture *fixture)
{
  gtk_stack_set_visible_child_name (fixture->stack, "second");
}

static void
add (GtkWidget *box, GtkWidget *child, const char *name, const char *signal, GCallback callback, Fixture *fixture)
{
  gtk_widget_set_name (child, name);
  gtk_accessible_update_property (GTK_ACCESSIBLE (child), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_signal_connect (child, signal, callback, fixture);
  gtk_box_append (GTK_BOX (box), child);
}

static GtkWidget *
first_page (Fixture *fixture)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  GtkWidget *one = gtk_check_button_new_with_label ("one"), *two = gtk_check_button_new_with_label ("two");

  gtk_check_button_set_group (GTK_CHECK_BUTTON (two), GTK_CHECK_BUTTON (one));
  add (box, gtk_button_new_with_label ("x"), "button", "clicked", G_CALLBACK (clicked_cb), fixture);
  add (box, gtk_button_new_with_label ("y"), "button below: more words", "clicked", G_CALLBACK (clicked_cb), fixture);
  add (box, gtk_check_button_new_with_label ("c"), "check", "toggled", G_CALLBACK (toggled_cb), fixture);
  add (box, gtk_toggle_button_new_with_label ("t"), "toggle", "toggled", G_CALLBACK (toggled_cb), fixture);
  add (box, one, "one", "toggled", G_CALLBACK (toggled_cb), fixture);
  add (box, two, "two", "toggled", G_CALLBACK (toggled_cb), fixture);
  add (box, gtk_entry_new (), "entry", "changed", G_CALLBACK (changed_cb), fixture);
  add (box, gtk_button_new_with_label ("n"), "turn the page", "clicked", G_CALLBACK (turn_cb), fixture);
  return box;
}

static void
activate_cb (GtkApplication *application, Fixture *fixture)
{
  GtkWidget *window = gtk_application_window_new (application);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);

  fixture->said = GTK_LABEL (gtk_label_new ("nothing yet"));
  fixture->stack = GTK_STACK (gtk_stack_new ());
  gtk_stack_add_named (fixture->stack, first_page (fixture), "first");
  gtk_stack_add_named (fixture->stack, gtk_button_new_with_label ("on the second page"), "second");
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (fixture->said));
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (fixture->stack));
  gtk_window_set_title (GTK_WINDOW (window), "Fixture");
  gtk_window_set_child (GTK_WINDOW (window), box);
  gtk_window_present (GTK_WINDOW (window));
}

static void
quit_cb (GSimpleAction *action, GVariant *parameter, gpointer application)
{
  g_application_quit (G_APPLICATION (application));
}

int
main (int argc, char **argv)
{
  const GActionEntry actions[] = { { .name = "quit", .activate = quit_cb } };
  const char *accels[] = { "<Control>q", NULL };
  g_autoptr(GtkApplication) application = gtk_application_new (HALFMOON_APP_ID ".Fixture", G_APPLICATION_NON_UNIQUE);
  Fixture fixture = { NULL };

  g_action_map_add_action_entries (G_ACTION_MAP (application), actions, 1, application);
  gtk_application_set_accels_for_action (application, "app.quit", accels);
  g_signal_connect (application, "activate", G_CALLBACK (activate_cb), &fixture);
  return g_application_run (G_APPLICATION (application), argc, argv);
}
