/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-appearance-keeper.h"

#define PORTAL "org.freedesktop.portal.Desktop"
#define PORTAL_PATH "/org/freedesktop/portal/desktop"
#define PORTAL_SETTINGS "org.freedesktop.portal.Settings"
#define PREFERS_DARK 1
#define PREFERS_LIGHT 2
#define PLAIN_DPI (96 * 1024)   /* GTK's unit: 1024ths of a dot per inch */

struct _HmuiAppearanceKeeper
{
  GObject parent_instance;
  HmuiSettings *settings;         /* owned */
  GtkSettings *gtk;               /* borrowed from the display */
  GDBusConnection *bus;           /* owned; NULL without one */
  guint subscription;
  gboolean theme_is_dark;         /* what the theme was before we touched it */
  int dpi;                        /* the desktop's own */
  guint32 desktop_prefers;        /* 0: says nothing */
};

G_DEFINE_FINAL_TYPE (HmuiAppearanceKeeper, hmui_appearance_keeper, G_TYPE_OBJECT)

static void
apply_appearance (HmuiAppearanceKeeper *self)
{
  HmuiAppearance wanted = hmui_settings_get_appearance (self->settings);
  gboolean dark = wanted == HMUI_APPEARANCE_DARK;

  if (wanted == HMUI_APPEARANCE_FOLLOW)
    dark = self->desktop_prefers == PREFERS_DARK || (self->desktop_prefers != PREFERS_LIGHT && self->theme_is_dark);
  g_object_set (self->gtk, "gtk-application-prefer-dark-theme", dark, NULL);
}

static void
apply_text_size (HmuiAppearanceKeeper *self)
{
  int percent = hmui_settings_get_text_percent (self->settings);

  if (percent != 100 || self->dpi > 0)
    g_object_set (self->gtk, "gtk-xft-dpi", (self->dpi > 0 ? self->dpi : PLAIN_DPI) / 100 * percent, NULL);
}

static void
take_preference (HmuiAppearanceKeeper *self, GVariant *value)
{
  g_autoptr(GVariant) inner = g_variant_ref (value);

  while (g_variant_is_of_type (inner, G_VARIANT_TYPE_VARIANT))
    {
      GVariant *boxed = inner;

      inner = g_variant_get_variant (boxed);
      g_variant_unref (boxed);
    }
  if (!g_variant_is_of_type (inner, G_VARIANT_TYPE_UINT32))
    return;
  self->desktop_prefers = g_variant_get_uint32 (inner);
  apply_appearance (self);
}

static void
preference_changed_cb (GDBusConnection *bus, const char *sender, const char *path, const char *interface,
                       const char *name, GVariant *parameters, gpointer user_data)
{
  const char *namespace, *key;
  g_autoptr(GVariant) value = NULL;

  if (!g_variant_is_of_type (parameters, G_VARIANT_TYPE ("(ssv)")))
    return;
  g_variant_get (parameters, "(&s&sv)", &namespace, &key, &value);
  if (g_str_equal (namespace, "org.freedesktop.appearance") && g_str_equal (key, "color-scheme"))
    take_preference (user_data, value);
}

/* No portal, no answer: the theme stays as it is. That is no error. */
static void
preference_read_cb (GObject *source, GAsyncResult *result, gpointer user_data)
{
  g_autoptr(HmuiAppearanceKeeper) self = user_data;
  g_autoptr(GVariant) answer = g_dbus_connection_call_finish (G_DBUS_CONNECTION (source), result, NULL);
  g_autoptr(GVariant) value = answer != NULL ? g_variant_get_child_value (answer, 0) : NULL;

  if (value != NULL)
    take_preference (self, value);
}

static void
bus_cb (GObject *source, GAsyncResult *result, gpointer user_data)
{
  g_autoptr(HmuiAppearanceKeeper) self = user_data;

  self->bus = g_bus_get_finish (result, NULL);
  if (self->bus == NULL)
    return;
  g_dbus_connection_set_exit_on_close (self->bus, FALSE);
  self->subscription = g_dbus_connection_signal_subscribe (self->bus, PORTAL, PORTAL_SETTINGS, "SettingChanged", PORTAL_PATH,
                                                           NULL, G_DBUS_SIGNAL_FLAGS_NONE, preference_changed_cb, self, NULL);
  g_dbus_connection_call (self->bus, PORTAL, PORTAL_PATH, PORTAL_SETTINGS, "Read",
                          g_variant_new ("(ss)", "org.freedesktop.appearance", "color-scheme"), G_VARIANT_TYPE ("(v)"),
                          G_DBUS_CALL_FLAGS_NO_AUTO_START, 2000, NULL, preference_read_cb, g_object_ref (self));
}

static void
hmui_appearance_keeper_dispose (GObject *object)
{
  HmuiAppearanceKeeper *self = HMUI_APPEARANCE_KEEPER (object);

  if (self->subscription != 0)
    g_dbus_connection_signal_unsubscribe (self->bus, self->subscription);
  self->subscription = 0;
  g_clear_object (&self->bus);
  g_clear_object (&self->settings);
  G_OBJECT_CLASS (hmui_appearance_keeper_parent_class)->dispose (object);
}

static void
hmui_appearance_keeper_class_init (HmuiAppearanceKeeperClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = hmui_appearance_keeper_dispose;
}

static void
hmui_appearance_keeper_init (HmuiAppearanceKeeper *self)
{
}

HmuiAppearanceKeeper *
hmui_appearance_keeper_new (GdkDisplay *display, HmuiSettings *settings)
{
  HmuiAppearanceKeeper *self = g_object_new (HMUI_TYPE_APPEARANCE_KEEPER, NULL);

  self->settings = g_object_ref (settings);
  self->gtk = gtk_settings_get_for_display (display);
  g_object_get (self->gtk, "gtk-application-prefer-dark-theme", &self->theme_is_dark, "gtk-xft-dpi", &self->dpi, NULL);
  g_signal_connect_object (settings, "notify::appearance", G_CALLBACK (apply_appearance), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (settings, "notify::text-percent", G_CALLBACK (apply_text_size), self, G_CONNECT_SWAPPED);
  if (hmui_settings_get_appearance (settings) != HMUI_APPEARANCE_FOLLOW)
    apply_appearance (self);
  if (hmui_settings_get_text_percent (settings) != 100)
    apply_text_size (self);
  g_bus_get (G_BUS_TYPE_SESSION, NULL, bus_cb, g_object_ref (self));
  return self;
}
