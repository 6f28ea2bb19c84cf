/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gtk/gtk.h>
G_BEGIN_DECLS

/*
 * HmuiStepList: instructions as numbered lines in large type, wrapped at 72 characters.
 */
#define HMUI_TYPE_STEP_LIST (hmui_step_list_get_type ())
G_DECLARE_FINAL_TYPE (HmuiStepList, hmui_step_list, HMUI, STEP_LIST, GtkWidget)

GtkWidget *hmui_step_list_new (void);

/**
 * hmui_step_list_set_steps:
 * @steps: (array zero-terminated=1) (nullable): looked up for translation; copied
 */
void hmui_step_list_set_steps (HmuiStepList *self, const char * const *steps);

G_END_DECLS
