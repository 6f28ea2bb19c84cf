/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-thread.h"
G_BEGIN_DECLS

/*
 * HmuiThreadView: the profiles of a bolt and a hole over each other, in section and to scale, in step at the left and out of
 * step along the way; where they jam is marked. The accessible label says so in words.
 */
#define HMUI_TYPE_THREAD_VIEW (hmui_thread_view_get_type ())
G_DECLARE_FINAL_TYPE (HmuiThreadView, hmui_thread_view, HMUI, THREAD_VIEW, GtkWidget)

/**
 * hmui_thread_view_set:
 * @turns: of the bolt until it jams; 0 if it does not
 * @words: what is to be seen; copied
 */
void hmui_thread_view_set (HmuiThreadView *self, const HmThread *bolt, const HmThread *hole, double turns, const char *words);

G_END_DECLS
