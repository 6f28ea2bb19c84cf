/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmui-pattern-view.h"
G_BEGIN_DECLS

/**
 * hmui_pattern_words: a tightening order in words: "Tightening order of 4: 1 top left, 2 bottom right, …". Where a
 * fastener sits is told by the clock on a round joint, by its place in the row on a straight one. Private to this folder.
 * @passes: (array zero-terminated=1)
 * Returns: (transfer full)
 */
char *hmui_pattern_words (HmPattern pattern, const HmuiPatternPoint *points, guint n, const char * const *passes);

G_END_DECLS
