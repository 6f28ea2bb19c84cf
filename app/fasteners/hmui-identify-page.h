/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hmui-identify-model.h"
G_BEGIN_DECLS

/** HmuiIdentifyPage: "What is this bolt?": three fields, and beside them what comes near. */
#define HMUI_TYPE_IDENTIFY_PAGE (hmui_identify_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiIdentifyPage, hmui_identify_page, HMUI, IDENTIFY_PAGE, GtkWidget)

GtkWidget *hmui_identify_page_new (HmuiIdentifyModel *model);

G_END_DECLS
