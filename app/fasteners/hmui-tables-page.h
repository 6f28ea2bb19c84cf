/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
#include "hm-knowledge.h"
#include "hmui-settings.h"
G_BEGIN_DECLS

/** HmuiTablesPage: the tables of sizes, one kind at a time; each column sorts. A row activated is looked up. */
#define HMUI_TYPE_TABLES_PAGE (hmui_tables_page_get_type ())
G_DECLARE_FINAL_TYPE (HmuiTablesPage, hmui_tables_page, HMUI, TABLES_PAGE, GtkWidget)

GtkWidget *hmui_tables_page_new (HmKnowledge *knowledge, HmuiSettings *settings);

G_END_DECLS
