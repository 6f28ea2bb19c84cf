/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "gallery-pages.h"

static const char * const icons[] = {
  "diagnose", "jobs", "fasteners", "torque", "bench", "practice", "no-crank", "rider", "walk-behind", "stationary",
  "handheld", "open-up", "tools", "time", "caution", "danger", "good", "bad",
};

static GtkWidget *
make_button (const char *text, const char *css_class, gboolean toggle, gboolean on)
{
  GtkWidget *button = toggle ? gtk_toggle_button_new () : gtk_button_new ();
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_button_set_child (GTK_BUTTON (button), label);
  if (css_class != NULL)
    gtk_widget_add_css_class (button, css_class);
  if (toggle)
    gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (button), on);
  return button;
}

static GtkWidget *
make_icon_row (int pixels)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, pixels > 20 ? 12 : 24);

  for (guint i = 0; i < G_N_ELEMENTS (icons); i++)
    {
      g_autofree char *name = g_strdup_printf ("hm-%s-symbolic", icons[i]);
      GtkWidget *image = gtk_image_new_from_icon_name (name);

      gtk_image_set_pixel_size (GTK_IMAGE (image), pixels);
      gtk_box_append (GTK_BOX (row), image);
    }
  return row;
}

static GtkWidget *
make_app_icons (void)
{
  static const int sizes[] = { 128, 64, 32, 16 };
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 24);

  for (guint i = 0; i < 2 * G_N_ELEMENTS (sizes); i++)
    {
      GtkWidget *image = gtk_image_new_from_icon_name (i < G_N_ELEMENTS (sizes) ? "local.halfmoon.Halfmoon"
                                                                                : "local.halfmoon.Halfmoon-symbolic");

      gtk_image_set_pixel_size (GTK_IMAGE (image), sizes[i % G_N_ELEMENTS (sizes)]);
      gtk_box_append (GTK_BOX (row), image);
    }
  return row;
}

static GtkWidget *
make_rail (void)
{
  static const char * const names[] = { "Diagnose", "Jobs", "Fasteners", "Torque", "Bench math", "Practice" };
  GtkWidget *list = gtk_list_box_new ();

  gtk_widget_add_css_class (list, "place-rail");
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
      g_autofree char *icon = g_strdup_printf ("hm-%s-symbolic", icons[i]);

      gtk_box_append (GTK_BOX (row), gtk_image_new_from_icon_name (icon));
      gtk_box_append (GTK_BOX (row), gtk_label_new (names[i]));
      gtk_list_box_append (GTK_LIST_BOX (list), row);
    }
  gtk_list_box_select_row (GTK_LIST_BOX (list), gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), 0));
  gtk_widget_set_size_request (list, 192, -1);
  return list;
}

static GtkWidget *
make_buttons (void)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12), *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *check = gtk_check_button_new_with_label ("Battery is new");

  gtk_box_append (GTK_BOX (box), make_button ("One click, nothing turns", "answer", FALSE, FALSE));
  gtk_box_append (GTK_BOX (box), make_button ("It turns too slowly", "answer", TRUE, TRUE));
  gtk_box_append (GTK_BOX (row), make_button ("Jump-started lately", "choice", TRUE, FALSE));
  gtk_box_append (GTK_BOX (row), make_button ("Stood over the winter", "choice", TRUE, TRUE));
  gtk_box_append (GTK_BOX (box), row);
  row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  gtk_box_append (GTK_BOX (row), make_button ("Use this reading", "primary", FALSE, FALSE));
  gtk_box_append (GTK_BOX (row), make_button ("Start", "primary", FALSE, FALSE));
  gtk_widget_set_sensitive (gtk_widget_get_last_child (row), FALSE);
  gtk_box_append (GTK_BOX (row), make_button ("Not sure", "quiet-button", FALSE, FALSE));
  gtk_box_append (GTK_BOX (row), make_button ("Why this step", "link-button", FALSE, FALSE));
  gtk_box_append (GTK_BOX (row), make_button ("Plain", NULL, FALSE, FALSE));
  gtk_box_append (GTK_BOX (box), row);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (check), TRUE);
  gtk_box_append (GTK_BOX (box), check);
  gtk_box_append (GTK_BOX (box), gtk_check_button_new_with_label ("Solenoid is new"));
  gtk_widget_set_hexpand (box, TRUE);
  return box;
}

static GtkWidget *
make_notice (void)
{
  GtkWidget *notice = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12), *label = gtk_label_new ("Answer taken back");

  gtk_widget_add_css_class (notice, "notice");
  gtk_box_append (GTK_BOX (notice), label);
  gtk_box_append (GTK_BOX (notice), gtk_button_new_with_label ("Undo"));
  gtk_widget_set_halign (notice, GTK_ALIGN_CENTER);
  return notice;
}

GtkWidget *
gallery_page_look (void)
{
  GtkWidget *page = gtk_box_new (GTK_ORIENTATION_VERTICAL, 18), *columns = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 24);

  gtk_widget_add_css_class (page, "page");
  gtk_box_append (GTK_BOX (columns), make_rail ());
  gtk_box_append (GTK_BOX (columns), make_buttons ());
  gtk_box_append (GTK_BOX (page), columns);
  gtk_box_append (GTK_BOX (page), make_notice ());
  gtk_box_append (GTK_BOX (page), make_icon_row (16));
  gtk_box_append (GTK_BOX (page), make_icon_row (36));
  gtk_box_append (GTK_BOX (page), make_app_icons ());
  return page;
}
