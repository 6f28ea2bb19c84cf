/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gio/gio.h>
#include "hm-quantity.h"
G_BEGIN_DECLS

/** HmuiAppearance: nicks "follow", "light", "dark", as in the settings schema. */
typedef enum { HMUI_APPEARANCE_FOLLOW, HMUI_APPEARANCE_LIGHT, HMUI_APPEARANCE_DARK } HmuiAppearance;
#define HMUI_TYPE_APPEARANCE (hmui_appearance_get_type ())
GType hmui_appearance_get_type (void);

/** HmuiUnits: which system comes first; nicks "inch-first", "metric-first". */
typedef enum { HMUI_UNITS_INCH_FIRST, HMUI_UNITS_METRIC_FIRST } HmuiUnits;
#define HMUI_TYPE_UNITS (hmui_units_get_type ())
GType hmui_units_get_type (void);

/*
 * What the person prefers. Works without the installed settings schema too: then everything has its default and lasts
 * until the program ends.
 *
 * Properties, all read/write: "units" (#HmuiUnits), "appearance" (#HmuiAppearance), "text-percent" (int, 80–200),
 * "window-width", "window-height" (int), "window-maximized" (gboolean), "torque-wrenches" (GStrv: the torque wrenches in
 * the drawer, a line each, see hm_shop_wrench_parse()), "last-machine" (string: the id of the kind of machine that a diagnosis was last started for;
 * empty: none yet).
 */
#define HMUI_TYPE_SETTINGS (hmui_settings_get_type ())
G_DECLARE_FINAL_TYPE (HmuiSettings, hmui_settings, HMUI, SETTINGS, GObject)

HmuiSettings  *hmui_settings_new (void);
char          *hmui_settings_dup_warning (HmuiSettings *self);       /* why settings will not be kept; NULL when they will. (transfer full) */
HmuiAppearance hmui_settings_get_appearance (HmuiSettings *self);
int            hmui_settings_get_text_percent (HmuiSettings *self);
void           hmui_settings_step_text_percent (HmuiSettings *self, int steps);   /* of 10 %; 0: back to 100 % */

/** hmui_settings_get_format: numbers as the locale and the units preference want them. */
HmFormat       hmui_settings_get_format (HmuiSettings *self);

G_END_DECLS
