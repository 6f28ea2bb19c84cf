/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gio/gio.h>
G_BEGIN_DECLS

/*
 * HmuiLine: one line of a list, in words: what it is called, a smaller sentence below, a value at the end.
 * Immutable. Any text may be NULL but the title.
 */
#define HMUI_TYPE_LINE (hmui_line_get_type ())
G_DECLARE_FINAL_TYPE (HmuiLine, hmui_line, HMUI, LINE, GObject)

/**
 * hmui_line_new: texts are copied.
 * @index: what it stands for, to its maker
 * @key: a mark before the title ("1", "3"), or NULL
 */
HmuiLine *hmui_line_new (guint index, const char *key, const char *title, const char *detail, const char *value);

/** hmui_line_append: a new line at the end of @list (of #HmuiLine). */
void hmui_line_append (GListStore *list, guint index, const char *key, const char *title, const char *detail, const char *value);

guint       hmui_line_get_index  (HmuiLine *self);
const char *hmui_line_get_key    (HmuiLine *self);
const char *hmui_line_get_title  (HmuiLine *self);
const char *hmui_line_get_detail (HmuiLine *self);
const char *hmui_line_get_value  (HmuiLine *self);

G_END_DECLS
