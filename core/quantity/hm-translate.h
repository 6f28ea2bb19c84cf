/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/** HmTranslate: looks up one English text; returns a borrowed string, never NULL. Core knows no language: callers pass it in. */
typedef const char *(*HmTranslate) (const char *english);

G_END_DECLS
