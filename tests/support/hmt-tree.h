/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <atspi/atspi.h>
G_BEGIN_DECLS

G_DEFINE_AUTOPTR_CLEANUP_FUNC (AtspiAccessible, g_object_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (AtspiAction, g_object_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (AtspiComponent, g_object_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (AtspiEditableText, g_object_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (AtspiStateSet, g_object_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (AtspiText, g_object_unref)

/*
 * The tree of accessible objects as a person with a screen reader gets it, read anew at each call: only what is
 * shown now. Objects may vanish while they are read; everything here copes with that. Call hmt_tree_init() once.
 */
void hmt_tree_init (void);

#define HMT_ANY_ROLE ATSPI_ROLE_INVALID

/** hmt_tree_find_application: the program with that process id. (transfer full) (nullable) */
AtspiAccessible *hmt_tree_find_application (int pid);

/**
 * hmt_tree_find:
 * @role: %HMT_ANY_ROLE for any
 * @name: the accessible name; one that is exactly so is preferred, else one that begins so and goes on after a word
 * Returns: (transfer full) (nullable): the first in reading order
 */
AtspiAccessible *hmt_tree_find (AtspiAccessible *root, AtspiRole role, const char *name);

/** hmt_tree_find_containing: the first whose name has @part in it. (transfer full) (nullable) */
AtspiAccessible *hmt_tree_find_containing (AtspiAccessible *root, AtspiRole role, const char *part);

/** hmt_tree_find_pressable: as hmt_tree_find(), but only what can be clicked, toggled or activated. */
AtspiAccessible *hmt_tree_find_pressable (AtspiAccessible *root, const char *name);

/** hmt_tree_find_off: the first of that name that is a button or box and not on. */
AtspiAccessible *hmt_tree_find_off (AtspiAccessible *root, const char *name);

/** hmt_tree_find_focus: what has the keyboard. (transfer full) (nullable) */
AtspiAccessible *hmt_tree_find_focus (AtspiAccessible *root);

char *hmt_tree_name (AtspiAccessible *node);        /* (transfer full), never NULL */
char *hmt_tree_text (AtspiAccessible *node);        /* (transfer full): what an entry holds, else the name */
gboolean hmt_tree_has_state (AtspiAccessible *node, AtspiStateType state);
gboolean hmt_tree_is_on (AtspiAccessible *node);          /* a toggle that is pressed, a box that is ticked */
gboolean hmt_tree_is_sensitive (AtspiAccessible *node);   /* it would take a press now */

/** hmt_tree_get_place: where it lies in its window, in pixels. FALSE, @out untouched, if it takes no room. */
gboolean hmt_tree_get_place (AtspiAccessible *node, AtspiRect *out);

/** hmt_tree_act: does the action of that name; %NULL: a click, toggle or activate. FALSE if it has none. */
gboolean hmt_tree_act (AtspiAccessible *node, const char *action);

/** hmt_tree_set_text: replaces what the entry holds. */
gboolean hmt_tree_set_text (AtspiAccessible *node, const char *text);

/** hmt_tree_dump: role, name, states, actions; one line each, indented. (transfer full) */
char *hmt_tree_dump (AtspiAccessible *root);

/** hmt_tree_pressable_names: the names of everything pressable, in reading order. (transfer full) (element-type utf8) */
GPtrArray *hmt_tree_pressable_names (AtspiAccessible *root);

G_END_DECLS
