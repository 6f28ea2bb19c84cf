/* SPDX-License-Identifier: GPL-3.0-or-later */
/*
 * Shows every widget, or paints one page into a PNG:
 *   widget-gallery [--dark] [--play] [--text PERCENT] [--knowledge FILE PICTURE RED BLACK] PAGE OUT.png
 * PAGE is circuits, drawings, controls or look.
 */
#include "gallery-pages.h"
#include "gallery-picture.h"
#include "hm-knowledge.h"
#include "hmui-widgets.h"

typedef struct { gboolean dark, play; int text_percent; char **knowledge; const char *page, *out; } Options;

static GtkWidget *
make_page (const char *name, const HmPicture *picture, const char *red, const char *black)
{
  if (g_str_equal (name, "circuits"))
    return gallery_page_circuits (picture, red, black);
  if (g_str_equal (name, "drawings"))
    return gallery_page_drawings ();
  return g_str_equal (name, "controls") ? gallery_page_controls () : gallery_page_look ();
}

static GdkTexture *
paint_window (GtkWidget *window)
{
  g_autoptr(GdkPaintable) paintable = gtk_widget_paintable_new (window);
  GskRenderNode *node = NULL;
  GdkTexture *texture;

  while (node == NULL)
    {
      GtkSnapshot *snapshot = gtk_snapshot_new ();

      gtk_widget_queue_draw (window);
      gtk_test_widget_wait_for_draw (window);
      gdk_paintable_snapshot (paintable, snapshot, gtk_widget_get_width (window), gtk_widget_get_height (window));
      node = gtk_snapshot_free_to_node (snapshot);
    }
  texture = gsk_renderer_render_texture (gtk_native_get_renderer (GTK_NATIVE (window)), node, NULL);
  gsk_render_node_unref (node);
  return texture;
}

static gboolean
read_options (int argc, char **argv, Options *options)
{
  int i = 1;

  *options = (Options) { .text_percent = 100 };
  for (; i < argc && g_str_has_prefix (argv[i], "--"); i++)
    {
      if (g_str_equal (argv[i], "--dark"))
        options->dark = TRUE;
      else if (g_str_equal (argv[i], "--play"))
        options->play = TRUE;
      else if (g_str_equal (argv[i], "--text") && i + 1 < argc)
        options->text_percent = (int) g_ascii_strtoll (argv[++i], NULL, 10);
      else if (g_str_equal (argv[i], "--knowledge") && i + 4 < argc)
        {
          options->knowledge = &argv[i + 1];
          i += 4;
        }
      else
        return FALSE;
    }
  if (argc - i != 2)
    return FALSE;
  options->page = argv[i];
  options->out = argv[i + 1];
  return TRUE;
}

static void
prepare_settings (const Options *options)
{
  g_object_set (gtk_settings_get_default (), "gtk-enable-animations", options->play, "gtk-cursor-blink", FALSE,
                "gtk-application-prefer-dark-theme", options->dark,
                "gtk-xft-dpi", 96 * 1024 * options->text_percent / 100, NULL);
  hmui_widgets_ensure_types ();
  hmui_style_attach (gdk_display_get_default (), "/local/halfmoon/Halfmoon/gallery/style.css");
}

int
main (int argc, char **argv)
{
  g_autoptr(HmKnowledge) knowledge = NULL;
  g_autoptr(GdkTexture) texture = NULL;
  g_autoptr(GError) error = NULL;
  const HmPicture *picture = &gallery_picture;
  const char *red = "solenoid-in", *black = "solenoid-out";
  GtkWidget *window;
  Options options;

  if (!read_options (argc, argv, &options))
    {
      g_printerr ("usage: widget-gallery [--dark] [--play] [--text PERCENT] [--knowledge FILE PICTURE RED BLACK] "
                  "PAGE OUT.png\n");
      return 2;
    }
  gtk_init ();
  prepare_settings (&options);
  if (options.knowledge != NULL)
    {
      knowledge = hm_knowledge_open (options.knowledge[0], &error);
      picture = knowledge != NULL ? hm_knowledge_get_picture (knowledge, options.knowledge[1], &error) : NULL;
      if (picture == NULL)
        g_error ("%s", error->message);
      red = options.knowledge[2];
      black = options.knowledge[3];
    }
  window = gtk_window_new ();
  gtk_widget_add_css_class (window, "halfmoon");
  gtk_window_set_decorated (GTK_WINDOW (window), FALSE);
  gtk_window_set_default_size (GTK_WINDOW (window), 1000, -1);
  gtk_window_set_child (GTK_WINDOW (window), make_page (options.page, picture, red, black));
  gtk_window_present (GTK_WINDOW (window));
  gtk_window_set_focus_visible (GTK_WINDOW (window), TRUE);
  texture = paint_window (window);
  if (!gdk_texture_save_to_png (texture, options.out))
    return 1;
  gtk_window_destroy (GTK_WINDOW (window));
  return 0;
}
