/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/* The X screen of the test: windows, pointer, keyboard, pictures. There is no window manager on it. */
typedef struct _HmtScreen HmtScreen;

HmtScreen *hmt_screen_open (void);          /* (transfer full), or NULL if there is no display */
void hmt_screen_close (HmtScreen *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmtScreen, hmt_screen_close)

/** hmt_screen_find_window: the largest visible window of that process; 0 when there is none (yet). */
gulong hmt_screen_find_window (HmtScreen *self, int pid);

/** hmt_screen_focus: gives @window the keyboard. */
void hmt_screen_focus (HmtScreen *self, gulong window);

void hmt_screen_resize (HmtScreen *self, gulong window, guint width_px, guint height_px);

void hmt_screen_get_size (HmtScreen *self, gulong window, guint *width_px, guint *height_px);

/** hmt_screen_scroll: one notch of the wheel over a place in @window. */
void hmt_screen_scroll (HmtScreen *self, gulong window, int x_px, int y_px, gboolean down);

/** hmt_screen_click: moves the pointer to a place in @window and presses its first button. */
void hmt_screen_click (HmtScreen *self, gulong window, int x_px, int y_px);

/**
 * hmt_screen_press: one key with its modifiers, as on a keyboard: "Tab", "Return", "ctrl+z", "shift+Tab".
 * Returns: %FALSE if there is no key of that name
 */
gboolean hmt_screen_press (HmtScreen *self, const char *keys);

/** hmt_screen_type: @text, key by key; characters that no key has are put on a spare one. */
gboolean hmt_screen_type (HmtScreen *self, const char *text);

/** hmt_screen_save: a picture of @window (0: of the whole screen) as PNG. */
gboolean hmt_screen_save (HmtScreen *self, gulong window, const char *path, GError **error);

G_END_DECLS
