/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-wrench-text.h"
#include "hmui-settings.h"
G_BEGIN_DECLS

/*
 * HmuiWrenchDrawer: the torque wrenches that the shop owns, kept in the settings. Adding and taking out can be undone.
 * Signal "changed" (no arguments).
 */
#define HMUI_TYPE_WRENCH_DRAWER (hmui_wrench_drawer_get_type ())
G_DECLARE_FINAL_TYPE (HmuiWrenchDrawer, hmui_wrench_drawer, HMUI, WRENCH_DRAWER, GObject)

HmuiWrenchDrawer *hmui_wrench_drawer_new (HmuiSettings *settings);

/** hmui_wrench_drawer_get_wrenches: (array length=n): borrowed until the next change. A line that cannot be read is left out. */
const HmShopWrench *hmui_wrench_drawer_get_wrenches (HmuiWrenchDrawer *self, guint *n);

/** hmui_wrench_drawer_dup_line: "10–50 lbf·ft ±4 %", as the person reads numbers. (transfer full) */
char    *hmui_wrench_drawer_dup_line (HmuiWrenchDrawer *self, guint index);

gboolean hmui_wrench_drawer_add    (HmuiWrenchDrawer *self, const char *text, GError **error) G_GNUC_WARN_UNUSED_RESULT;
void     hmui_wrench_drawer_remove (HmuiWrenchDrawer *self, guint index);

gboolean hmui_wrench_drawer_can_undo (HmuiWrenchDrawer *self);
gboolean hmui_wrench_drawer_can_redo (HmuiWrenchDrawer *self);
void     hmui_wrench_drawer_undo     (HmuiWrenchDrawer *self);
void     hmui_wrench_drawer_redo     (HmuiWrenchDrawer *self);

G_END_DECLS
