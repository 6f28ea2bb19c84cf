/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-lookup-model.h"
G_BEGIN_DECLS

/** HmuiLookupPage: the answer to what is typed; before that, what may be typed. */
#define HMUI_TYPE_LOOKUP_PAGE (hmui_lookup_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiLookupPage, hmui_lookup_page, HMUI, LOOKUP_PAGE, GtkWidget)

GtkWidget *hmui_lookup_page_new (HmuiLookupModel *model);

G_END_DECLS
