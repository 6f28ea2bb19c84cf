/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-picture.h"
G_BEGIN_DECLS

/* The pages of the gallery: every widget with invented contents. (transfer floating) */
GtkWidget *gallery_page_circuits (const HmPicture *picture, const char *red, const char *black);
GtkWidget *gallery_page_drawings (void);
GtkWidget *gallery_page_controls (void);
GtkWidget *gallery_page_look     (void);   /* buttons, cards, icons */

G_END_DECLS
