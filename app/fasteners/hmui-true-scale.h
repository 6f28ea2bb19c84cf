/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <glib.h>
G_BEGIN_DECLS

/**
 * hmui_true_scale: how many pixels a millimeter of a monitor has.
 * @width_px, @height_px: of the monitor, in the pixels that widgets are laid out in
 * @width_mm, @height_mm: as the monitor reports them; 0 or less if it does not
 * Returns: pixels per millimeter; 0 where the report cannot be true: the two ways disagree, or no screen is as fine or as coarse
 */
double hmui_true_scale (int width_px, int height_px, int width_mm, int height_mm);

G_END_DECLS
