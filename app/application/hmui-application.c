/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-application.h"
#include "hmui-appearance-keeper.h"
#include "hmui-paths.h"
#include "hmui-resource.h"
#include "hmui-settings.h"
#include "hmui-shop.h"
#include "hmui-style.h"
#include "hmui-window.h"
#include <glib/gi18n.h>

struct _HmuiApplication
{
  GtkApplication parent_instance;
  HmuiSettings *settings;         /* owned */
  HmuiShop *shop;                 /* owned */
  HmuiAppearanceKeeper *appearance;   /* owned */
};

G_DEFINE_FINAL_TYPE (HmuiApplication, hmui_application, GTK_TYPE_APPLICATION)

static void
text_larger_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  hmui_settings_step_text_percent (HMUI_APPLICATION (user_data)->settings, 1);
}

static void
text_smaller_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  hmui_settings_step_text_percent (HMUI_APPLICATION (user_data)->settings, -1);
}

static void
text_normal_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  hmui_settings_step_text_percent (HMUI_APPLICATION (user_data)->settings, 0);
}

static void
shortcuts_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  GtkWindow *window = gtk_application_get_active_window (GTK_APPLICATION (user_data));
  g_autoptr(GtkBuilder) builder = gtk_builder_new_from_resource (HMUI_RESOURCE "window/shortcuts.ui");
  GtkWindow *shortcuts = GTK_WINDOW (gtk_builder_get_object (builder, "shortcuts"));

  gtk_window_set_transient_for (shortcuts, window);
  gtk_window_present (shortcuts);
}

static void
about_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  gtk_show_about_dialog (gtk_application_get_active_window (GTK_APPLICATION (user_data)),
                         "program-name", "Halfmoon",
                         "version", HALFMOON_VERSION,
                         "logo-icon-name", HALFMOON_APP_ID,
                         "license-type", GTK_LICENSE_GPL_3_0,
                         "comments", _("Finds what is wrong with a small engine with the fewest and cheapest checks, and "
                                       "helps to put it back together. The maker’s manual governs."),
                         NULL);
}

static void
quit_action (GSimpleAction *action, GVariant *parameter, gpointer user_data)
{
  GtkWindow *window = gtk_application_get_active_window (GTK_APPLICATION (user_data));

  if (window != NULL)
    gtk_window_close (window);
}

static void
add_actions (HmuiApplication *self)
{
  static const GActionEntry entries[] = {
    { .name = "text-larger", .activate = text_larger_action },
    { .name = "text-smaller", .activate = text_smaller_action },
    { .name = "text-normal", .activate = text_normal_action },
    { .name = "shortcuts", .activate = shortcuts_action },
    { .name = "about", .activate = about_action },
    { .name = "quit", .activate = quit_action },
  };
  g_autoptr(GPropertyAction) units = g_property_action_new ("units", self->settings, "units");
  g_autoptr(GPropertyAction) appearance = g_property_action_new ("appearance", self->settings, "appearance");

  g_action_map_add_action_entries (G_ACTION_MAP (self), entries, G_N_ELEMENTS (entries), self);
  g_action_map_add_action (G_ACTION_MAP (self), G_ACTION (units));
  g_action_map_add_action (G_ACTION_MAP (self), G_ACTION (appearance));
}

static void
add_accelerators (HmuiApplication *self)
{
  static const struct { const char *action; const char *keys[4]; } accelerators[] = {
    { "win.new-diagnosis", { "<Control>n", NULL } },
    { "win.visit::diagnose", { "<Alt>1", NULL } },
    { "win.visit::fasteners", { "<Alt>2", NULL } },
    { "win.visit::torque", { "<Alt>3", NULL } },
    { "app.text-larger", { "<Control>plus", "<Control>equal", "<Control>KP_Add", NULL } },
    { "app.text-smaller", { "<Control>minus", "<Control>KP_Subtract", NULL } },
    { "app.text-normal", { "<Control>0", "<Control>KP_0", NULL } },
    { "app.shortcuts", { "<Control>question", "F1", NULL } },
    { "app.quit", { "<Control>q", NULL } },
    { "win.undo", { "<Control>z", NULL } },
    { "win.redo", { "<Control><Shift>z", "<Control>y", NULL } },
    { "win.menu", { "F10", NULL } },
    { "win.search", { "<Control>k", NULL } },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (accelerators); i++)
    gtk_application_set_accels_for_action (GTK_APPLICATION (self), accelerators[i].action, accelerators[i].keys);
}

static void
hmui_application_startup (GApplication *application)
{
  HmuiApplication *self = HMUI_APPLICATION (application);
  g_autofree char *folder = hmui_paths_dup_shop ();

  G_APPLICATION_CLASS (hmui_application_parent_class)->startup (application);
  self->settings = hmui_settings_new ();
  self->shop = hmui_shop_new (folder);
  self->appearance = hmui_appearance_keeper_new (gdk_display_get_default (), self->settings);
  hmui_style_attach (gdk_display_get_default (), HMUI_RESOURCE "style.css");
  add_actions (self);
  add_accelerators (self);
}

static void
first_frame_cb (GdkFrameClock *clock, gpointer application)
{
  g_signal_handlers_disconnect_by_func (clock, first_frame_cb, application);
  g_application_quit (G_APPLICATION (application));
}

static void
exit_after_first_frame (HmuiApplication *self, GtkWidget *window)
{
  if (g_strcmp0 (g_getenv ("HALFMOON_EXIT_AFTER_FIRST_FRAME"), "1") != 0)
    return;
  gtk_widget_realize (window);
  g_signal_connect_object (gtk_widget_get_frame_clock (window), "after-paint", G_CALLBACK (first_frame_cb), self, 0);
}

static void
hmui_application_activate (GApplication *application)
{
  HmuiApplication *self = HMUI_APPLICATION (application);
  GtkWindow *window = gtk_application_get_active_window (GTK_APPLICATION (application));

  if (window == NULL)
    {
      window = GTK_WINDOW (hmui_window_new (GTK_APPLICATION (application), self->settings, self->shop));
      exit_after_first_frame (self, GTK_WIDGET (window));
    }
  gtk_window_present (window);
}

/* Nothing entered is lost: what is still being written gets written. */
static void
hmui_application_shutdown (GApplication *application)
{
  HmuiApplication *self = HMUI_APPLICATION (application);

  if (self->shop != NULL)
    hmui_shop_flush (self->shop);
  g_clear_object (&self->appearance);
  g_clear_object (&self->shop);
  g_clear_object (&self->settings);
  G_APPLICATION_CLASS (hmui_application_parent_class)->shutdown (application);
}

static void
hmui_application_class_init (HmuiApplicationClass *klass)
{
  GApplicationClass *application_class = G_APPLICATION_CLASS (klass);

  application_class->startup = hmui_application_startup;
  application_class->activate = hmui_application_activate;
  application_class->shutdown = hmui_application_shutdown;
}

static void
hmui_application_init (HmuiApplication *self)
{
}

HmuiApplication *
hmui_application_new (void)
{
  return g_object_new (HMUI_TYPE_APPLICATION,
                       "application-id", HALFMOON_APP_ID,
                       "resource-base-path", "/local/halfmoon/Halfmoon",
                       NULL);
}
