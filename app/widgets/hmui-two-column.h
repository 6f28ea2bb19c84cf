/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiTwoColumn: the main matter on two thirds and a side column on one third from 900 px on, else one below the other.
 * Stays in the middle of a wide screen. In a .ui file: <child type="main">, <child type="side">.
 */
#define HMUI_TYPE_TWO_COLUMN (hmui_two_column_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTwoColumn, hmui_two_column, HMUI, TWO_COLUMN, GtkWidget)

G_END_DECLS
