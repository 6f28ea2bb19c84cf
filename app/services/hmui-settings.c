/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-settings.h"
#include <glib/gi18n.h>
#include <glib/gstdio.h>
#include <locale.h>
#include <unistd.h>

struct _HmuiSettings
{
  GObject parent_instance;
  GSettings *stored;              /* owned; NULL without the schema */
  HmuiUnits units;
  HmuiAppearance appearance;
  int text_percent, window_width, window_height;
  gboolean window_maximized;
  GStrv torque_wrenches;          /* owned; NULL: none */
  char *last_machine;             /* owned; NULL or empty: none */
};

enum { PROP_0, PROP_UNITS, PROP_APPEARANCE, PROP_TEXT_PERCENT, PROP_WINDOW_WIDTH, PROP_WINDOW_HEIGHT,
       PROP_WINDOW_MAXIMIZED, PROP_TORQUE_WRENCHES, PROP_LAST_MACHINE, N_PROPS };

G_DEFINE_ENUM_TYPE (HmuiAppearance, hmui_appearance,
                    G_DEFINE_ENUM_VALUE (HMUI_APPEARANCE_FOLLOW, "follow"),
                    G_DEFINE_ENUM_VALUE (HMUI_APPEARANCE_LIGHT, "light"),
                    G_DEFINE_ENUM_VALUE (HMUI_APPEARANCE_DARK, "dark"))
G_DEFINE_ENUM_TYPE (HmuiUnits, hmui_units,
                    G_DEFINE_ENUM_VALUE (HMUI_UNITS_INCH_FIRST, "inch-first"),
                    G_DEFINE_ENUM_VALUE (HMUI_UNITS_METRIC_FIRST, "metric-first"))
G_DEFINE_FINAL_TYPE (HmuiSettings, hmui_settings, G_TYPE_OBJECT)

static void
hmui_settings_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HmuiSettings *self = HMUI_SETTINGS (object);

  switch (id)
    {
    case PROP_UNITS: g_value_set_enum (value, self->units); break;
    case PROP_APPEARANCE: g_value_set_enum (value, self->appearance); break;
    case PROP_TEXT_PERCENT: g_value_set_int (value, self->text_percent); break;
    case PROP_WINDOW_WIDTH: g_value_set_int (value, self->window_width); break;
    case PROP_WINDOW_HEIGHT: g_value_set_int (value, self->window_height); break;
    case PROP_WINDOW_MAXIMIZED: g_value_set_boolean (value, self->window_maximized); break;
    case PROP_TORQUE_WRENCHES: g_value_set_boxed (value, self->torque_wrenches); break;
    case PROP_LAST_MACHINE: g_value_set_string (value, self->last_machine); break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hmui_settings_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HmuiSettings *self = HMUI_SETTINGS (object);

  switch (id)
    {
    case PROP_UNITS: self->units = g_value_get_enum (value); break;
    case PROP_APPEARANCE: self->appearance = g_value_get_enum (value); break;
    case PROP_TEXT_PERCENT: self->text_percent = g_value_get_int (value); break;
    case PROP_WINDOW_WIDTH: self->window_width = g_value_get_int (value); break;
    case PROP_WINDOW_HEIGHT: self->window_height = g_value_get_int (value); break;
    case PROP_WINDOW_MAXIMIZED: self->window_maximized = g_value_get_boolean (value); break;
    case PROP_TORQUE_WRENCHES:
      g_strfreev (self->torque_wrenches);
      self->torque_wrenches = g_value_dup_boxed (value);
      break;
    case PROP_LAST_MACHINE:
      g_free (self->last_machine);
      self->last_machine = g_value_dup_string (value);
      break;
    default: G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

/* A missing schema would end the process: look before asking for it. */
static GSettings *
find_stored (void)
{
  GSettingsSchemaSource *source = g_settings_schema_source_get_default ();
  g_autoptr(GSettingsSchema) schema = NULL;

  if (source == NULL)
    return NULL;
  schema = g_settings_schema_source_lookup (source, HALFMOON_APP_ID, TRUE);
  return schema != NULL ? g_settings_new_full (schema, NULL, NULL) : NULL;
}

/* An older schema may lack a key; that one is then not kept. */
static void
bind_stored (HmuiSettings *self)
{
  static const char * const keys[] = { "units", "appearance", "text-percent", "window-width", "window-height",
                                       "window-maximized", "torque-wrenches", "last-machine" };
  g_autoptr(GSettingsSchema) schema = NULL;

  self->stored = find_stored ();
  if (self->stored == NULL)
    return;
  g_object_get (self->stored, "settings-schema", &schema, NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (keys); i++)
    if (g_settings_schema_has_key (schema, keys[i]))
      g_settings_bind (self->stored, keys[i], self, keys[i], G_SETTINGS_BIND_DEFAULT);
}

static void
hmui_settings_constructed (GObject *object)
{
  G_OBJECT_CLASS (hmui_settings_parent_class)->constructed (object);
  bind_stored (HMUI_SETTINGS (object));
}

static void
hmui_settings_finalize (GObject *object)
{
  g_clear_object (&HMUI_SETTINGS (object)->stored);
  g_strfreev (HMUI_SETTINGS (object)->torque_wrenches);
  g_free (HMUI_SETTINGS (object)->last_machine);
  G_OBJECT_CLASS (hmui_settings_parent_class)->finalize (object);
}

static void
hmui_settings_class_init (HmuiSettingsClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GParamFlags flags = G_PARAM_READWRITE | G_PARAM_CONSTRUCT | G_PARAM_STATIC_STRINGS;

  object_class->get_property = hmui_settings_get_property;
  object_class->set_property = hmui_settings_set_property;
  object_class->constructed = hmui_settings_constructed;
  object_class->finalize = hmui_settings_finalize;
  g_object_class_install_property (object_class, PROP_UNITS,
    g_param_spec_enum ("units", NULL, NULL, HMUI_TYPE_UNITS, HMUI_UNITS_INCH_FIRST, flags));
  g_object_class_install_property (object_class, PROP_APPEARANCE,
    g_param_spec_enum ("appearance", NULL, NULL, HMUI_TYPE_APPEARANCE, HMUI_APPEARANCE_FOLLOW, flags));
  g_object_class_install_property (object_class, PROP_TEXT_PERCENT,
    g_param_spec_int ("text-percent", NULL, NULL, 80, 200, 100, flags));
  g_object_class_install_property (object_class, PROP_WINDOW_WIDTH,
    g_param_spec_int ("window-width", NULL, NULL, 360, 16384, 1100, flags));
  g_object_class_install_property (object_class, PROP_WINDOW_HEIGHT,
    g_param_spec_int ("window-height", NULL, NULL, 360, 16384, 720, flags));
  g_object_class_install_property (object_class, PROP_WINDOW_MAXIMIZED,
    g_param_spec_boolean ("window-maximized", NULL, NULL, FALSE, flags));
  g_object_class_install_property (object_class, PROP_TORQUE_WRENCHES,
    g_param_spec_boxed ("torque-wrenches", NULL, NULL, G_TYPE_STRV, flags));
  g_object_class_install_property (object_class, PROP_LAST_MACHINE,
    g_param_spec_string ("last-machine", NULL, NULL, "", flags));
}

static void
hmui_settings_init (HmuiSettings *self)
{
}

HmuiSettings *
hmui_settings_new (void)
{
  return g_object_new (HMUI_TYPE_SETTINGS, NULL);
}

/* Tried, not asked for: an administrator may write everywhere but where nobody can. */
static gboolean
can_be_written (const char *folder)
{
  return g_mkdir_with_parents (folder, 0700) == 0 && g_access (folder, W_OK | X_OK) == 0;
}

char *
hmui_settings_dup_warning (HmuiSettings *self)
{
  if (self->stored == NULL)
    return g_strdup (_("The description of the settings is not installed: what you choose in the menu lasts until you close the window."));
  if (!can_be_written (g_get_user_config_dir ()))
    return g_strdup_printf (_("The folder %s cannot be written: what you choose in the menu lasts until you close the window."),
                            g_get_user_config_dir ());
  return NULL;
}

/* A colour scheme asked for by the environment wins over the one that is kept. */
HmuiAppearance
hmui_settings_get_appearance (HmuiSettings *self)
{
  const char *asked = g_getenv ("HALFMOON_COLOR_SCHEME");
  g_autoptr(GEnumClass) nicks = g_type_class_ref (HMUI_TYPE_APPEARANCE);
  GEnumValue *value = asked != NULL ? g_enum_get_value_by_nick (nicks, asked) : NULL;

  return value != NULL ? (HmuiAppearance) value->value : self->appearance;
}

int
hmui_settings_get_text_percent (HmuiSettings *self)
{
  return self->text_percent;
}

void
hmui_settings_step_text_percent (HmuiSettings *self, int steps)
{
  int percent = steps == 0 ? 100 : CLAMP (self->text_percent + 10 * steps, 80, 200);

  g_object_set (self, "text-percent", percent, NULL);
}

HmFormat
hmui_settings_get_format (HmuiSettings *self)
{
  return (HmFormat) {
    .decimal_point = localeconv ()->decimal_point,
    .system = self->units == HMUI_UNITS_METRIC_FIRST ? HM_UNIT_SYSTEM_METRIC_FIRST : HM_UNIT_SYSTEM_INCH_FIRST,
  };
}
