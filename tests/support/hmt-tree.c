/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-tree.h"

#include <locale.h>
#include <string.h>

#define MAX_DEPTH 60   /* a page is some twenty deep */

/* Returns TRUE to stop the walk. */
typedef gboolean (*Visit) (AtspiAccessible *node, guint depth, gpointer data);

typedef struct { AtspiRole role; const char *name; gboolean whole, part, pressable, off; AtspiAccessible *found; } Search;

/* A call to a program that is just closing a page fails now and then: no answer is an answer here. */
static gboolean
answered (GError **error)
{
  gboolean ok = *error == NULL;
  g_clear_error (error);
  return ok;
}

/* What has never been asked for has no object on the bus yet; asking for all of it makes them. */
static void
touch (AtspiAccessible *node, guint depth)
{
  g_autoptr(GError) error = NULL;
  int n = depth < MAX_DEPTH ? atspi_accessible_get_child_count (node, &error) : 0;

  if (!answered (&error))
    return;
  for (int i = 0; i < n; i++)
    {
      g_autoptr(AtspiAccessible) child = atspi_accessible_get_child_at_index (node, i, &error);
      if (answered (&error) && child != NULL)
        touch (child, depth + 1);
    }
}

/* What lies at some point of @page. Pictures that are mere decoration are no objects: a few points are tried. */
static AtspiAccessible *
pick (AtspiAccessible *frame, AtspiAccessible *page)
{
  static const struct { double x, y; } points[] = {
    { 0.5, 0.5 }, { 0.5, 0.02 }, { 0.02, 0.5 }, { 0.98, 0.5 }, { 0.5, 0.98 }, { 0.3, 0.3 }, { 0.7, 0.7 }, { 0.8, 0.2 },
  };
  g_autoptr(AtspiComponent) window = atspi_accessible_get_component_iface (frame);
  AtspiRect all, part;

  if (window == NULL || !hmt_tree_get_place (frame, &all) || !hmt_tree_get_place (page, &part))
    return NULL;
  part.width = MIN (part.width, all.width - part.x);
  part.height = MIN (part.height, all.height - part.y);
  for (guint i = 0; i < G_N_ELEMENTS (points); i++)
    {
      g_autoptr(GError) error = NULL;
      int x = part.x + part.width * points[i].x, y = part.y + part.height * points[i].y;
      AtspiAccessible *at = atspi_component_get_accessible_at_point (window, x, y, ATSPI_COORD_TYPE_WINDOW, &error);
      if (answered (&error) && at != NULL)
        return at;
    }
  return NULL;
}

/* In GTK 4.8 the pages of a stack that are not shown look like the one that is: only what lies under a point of the
 * window tells them apart. */
static gboolean
lies_on_top (AtspiAccessible *frame, AtspiAccessible *page)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(AtspiAccessible) at = pick (frame, page);

  if (at == NULL)
    {
      touch (page, 0);
      at = pick (frame, page);
    }
  while (at != NULL && at != page)
    {
      AtspiAccessible *parent = atspi_accessible_get_parent (at, &error);
      g_object_unref (at);
      at = answered (&error) ? parent : NULL;
    }
  return at != NULL;
}

/* A page of a stack has no place of its own; all else in a window has. */
static gboolean
is_hidden_page (AtspiAccessible *node, AtspiAccessible *frame)
{
  g_autoptr(AtspiComponent) component = atspi_accessible_get_component_iface (node);
  g_autoptr(AtspiAccessible) child = NULL;

  if (component != NULL)
    return FALSE;
  child = atspi_accessible_get_child_at_index (node, 0, NULL);
  return child != NULL && !lies_on_top (frame, child);
}

static gboolean
walk (AtspiAccessible *node, AtspiAccessible *frame, guint depth, Visit visit, gpointer data)
{
  g_autoptr(GError) error = NULL;
  int n;

  if (depth > 1 && (!hmt_tree_has_state (node, ATSPI_STATE_VISIBLE) || is_hidden_page (node, frame)))
    return FALSE;
  if (visit (node, depth, data))
    return TRUE;
  n = depth < MAX_DEPTH ? atspi_accessible_get_child_count (node, &error) : 0;
  if (!answered (&error))
    return FALSE;
  for (int i = 0; i < n; i++)
    {
      g_autoptr(AtspiAccessible) child = atspi_accessible_get_child_at_index (node, i, &error);
      if (answered (&error) && child != NULL && walk (child, depth == 0 ? child : frame, depth + 1, visit, data))
        return TRUE;
    }
  return FALSE;
}

static int
find_action (AtspiAccessible *node, const char *wanted)
{
  static const char * const pressing[] = { "click", "toggle", "activate", "press", NULL };
  g_autoptr(GError) error = NULL;
  g_autoptr(AtspiAction) action = atspi_accessible_get_action_iface (node);
  int n = action != NULL ? atspi_action_get_n_actions (action, &error) : 0;

  if (!answered (&error))
    return -1;
  for (int i = 0; i < n; i++)
    {
      g_autofree char *name = atspi_action_get_action_name (action, i, &error);
      if (answered (&error) && name != NULL &&
          (wanted != NULL ? g_str_equal (name, wanted) : g_strv_contains (pressing, name)))
        return i;
    }
  return -1;
}

static gboolean
is_pressable_role (AtspiAccessible *node)
{
  AtspiRole role = atspi_accessible_get_role (node, NULL);
  return role == ATSPI_ROLE_CHECK_BOX || role == ATSPI_ROLE_RADIO_BUTTON || role == ATSPI_ROLE_TOGGLE_BUTTON ||
         role == ATSPI_ROLE_PUSH_BUTTON || role == ATSPI_ROLE_LINK || role == ATSPI_ROLE_MENU_ITEM;
}

static gboolean
is_pressable (AtspiAccessible *node)
{
  return is_pressable_role (node) || find_action (node, NULL) >= 0;
}

static gboolean
name_matches (const Search *search, const char *name)
{
  gsize length = strlen (search->name);
  if (search->part)
    return strstr (name, search->name) != NULL;
  if (search->whole)
    return g_str_equal (name, search->name);
  return g_str_has_prefix (name, search->name) && !g_ascii_isalnum (name[length]);
}

static gboolean
visit_search (AtspiAccessible *node, guint depth, gpointer data)
{
  Search *search = data;
  g_autofree char *name = hmt_tree_name (node);
  AtspiRect place;

  if (!name_matches (search, name) ||
      (search->role != HMT_ANY_ROLE && atspi_accessible_get_role (node, NULL) != search->role) ||
      (search->pressable && !is_pressable (node)) || (search->off && hmt_tree_is_on (node)) || (depth > 1 && !hmt_tree_get_place (node, &place)))
    return FALSE;
  search->found = g_object_ref (node);
  return TRUE;
}

static gboolean
visit_focus (AtspiAccessible *node, guint depth, gpointer data)
{
  AtspiAccessible **found = data;
  if (depth > 1 && hmt_tree_has_state (node, ATSPI_STATE_FOCUSED))
    g_set_object (found, node);      /* the deepest one wins: a container may say so too */
  return FALSE;
}

static gboolean
visit_dump (AtspiAccessible *node, guint depth, gpointer data)
{
  GString *out = data;
  g_autofree char *role = atspi_accessible_get_role_name (node, NULL);
  g_autofree char *name = hmt_tree_text (node);

  g_string_append_printf (out, "%*s%s “%s”%s%s%s\n", (int) depth * 2, "", role != NULL ? role : "?", name,
                          is_pressable (node) ? " [press]" : "",
                          hmt_tree_has_state (node, ATSPI_STATE_FOCUSED) ? " [focus]" : "",
                          hmt_tree_is_on (node) ? " [on]" : "");
  return FALSE;
}

static gboolean
visit_pressable (AtspiAccessible *node, guint depth, gpointer data)
{
  if (depth > 1 && is_pressable (node))
    g_ptr_array_add (data, hmt_tree_name (node));
  return FALSE;
}

static AtspiAccessible *
search_twice (AtspiAccessible *root, Search search)
{
  search.whole = TRUE;
  walk (root, root, 0, visit_search, &search);
  if (search.found == NULL)
    {
      search.whole = FALSE;
      walk (root, root, 0, visit_search, &search);
    }
  return search.found;
}

void
hmt_tree_init (void)
{
  g_autoptr(AtspiAccessible) desktop = NULL;
  if (atspi_is_initialized ())
    return;
  setlocale (LC_ALL, "");      /* so that what we print of the tree comes out whole */
  atspi_init ();
  desktop = atspi_get_desktop (0);
  atspi_accessible_set_cache_mask (desktop, ATSPI_CACHE_NONE);   /* what the window says now, not what it said */
}

AtspiAccessible *
hmt_tree_find_application (int pid)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(AtspiAccessible) desktop = atspi_get_desktop (0);
  int n = atspi_accessible_get_child_count (desktop, &error);

  if (!answered (&error))
    return NULL;
  for (int i = 0; i < n; i++)
    {
      g_autoptr(AtspiAccessible) child = atspi_accessible_get_child_at_index (desktop, i, &error);
      guint child_pid;
      if (!answered (&error) || child == NULL)
        continue;
      child_pid = atspi_accessible_get_process_id (child, &error);
      if (answered (&error) && child_pid == (guint) pid)
        return g_steal_pointer (&child);
    }
  return NULL;
}

AtspiAccessible *
hmt_tree_find (AtspiAccessible *root, AtspiRole role, const char *name)
{
  return search_twice (root, (Search) { .role = role, .name = name });
}

AtspiAccessible *
hmt_tree_find_containing (AtspiAccessible *root, AtspiRole role, const char *part)
{
  Search search = { .role = role, .name = part, .part = TRUE };
  walk (root, root, 0, visit_search, &search);
  return search.found;
}

AtspiAccessible *
hmt_tree_find_pressable (AtspiAccessible *root, const char *name)
{
  return search_twice (root, (Search) { .role = HMT_ANY_ROLE, .name = name, .pressable = TRUE });
}

AtspiAccessible *
hmt_tree_find_off (AtspiAccessible *root, const char *name)
{
  return search_twice (root, (Search) { .role = HMT_ANY_ROLE, .name = name, .pressable = TRUE, .off = TRUE });
}

AtspiAccessible *
hmt_tree_find_focus (AtspiAccessible *root)
{
  AtspiAccessible *found = NULL;
  walk (root, root, 0, visit_focus, &found);
  return found;
}

char *
hmt_tree_name (AtspiAccessible *node)
{
  char *name = atspi_accessible_get_name (node, NULL);
  return name != NULL ? name : g_strdup ("");
}

char *
hmt_tree_text (AtspiAccessible *node)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(AtspiText) text = atspi_accessible_get_text_iface (node);
  int n = text != NULL ? atspi_text_get_character_count (text, &error) : 0;
  char *content;

  if (!answered (&error) || text == NULL || atspi_accessible_get_role (node, NULL) == ATSPI_ROLE_LABEL)
    return hmt_tree_name (node);
  content = atspi_text_get_text (text, 0, n, &error);
  return answered (&error) && content != NULL ? content : hmt_tree_name (node);
}

gboolean
hmt_tree_has_state (AtspiAccessible *node, AtspiStateType state)
{
  g_autoptr(AtspiStateSet) states = atspi_accessible_get_state_set (node);
  return states != NULL && atspi_state_set_contains (states, state);
}

gboolean
hmt_tree_is_on (AtspiAccessible *node)
{
  return hmt_tree_has_state (node, ATSPI_STATE_CHECKED) || hmt_tree_has_state (node, ATSPI_STATE_PRESSED);
}

gboolean
hmt_tree_is_sensitive (AtspiAccessible *node)
{
  return hmt_tree_has_state (node, ATSPI_STATE_SENSITIVE) || hmt_tree_has_state (node, ATSPI_STATE_ENABLED);
}

gboolean
hmt_tree_get_place (AtspiAccessible *node, AtspiRect *out)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(AtspiComponent) component = atspi_accessible_get_component_iface (node);
  AtspiRect *place = component != NULL ? atspi_component_get_extents (component, ATSPI_COORD_TYPE_WINDOW, &error) : NULL;
  gboolean some = answered (&error) && place != NULL && place->width > 0 && place->height > 0;

  if (some)
    *out = *place;
  g_free (place);
  return some;
}

gboolean
hmt_tree_act (AtspiAccessible *node, const char *name)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(AtspiAction) action = atspi_accessible_get_action_iface (node);
  int i = find_action (node, name);
  gboolean done = i >= 0 && atspi_action_do_action (action, i, &error);
  return answered (&error) && done;
}

gboolean
hmt_tree_set_text (AtspiAccessible *node, const char *text)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(AtspiEditableText) editable = atspi_accessible_get_editable_text_iface (node);
  gboolean done = editable != NULL && atspi_editable_text_set_text_contents (editable, text, &error);
  return answered (&error) && done;
}

char *
hmt_tree_dump (AtspiAccessible *root)
{
  GString *out = g_string_new (NULL);
  walk (root, root, 0, visit_dump, out);
  return g_string_free (out, FALSE);
}

GPtrArray *
hmt_tree_pressable_names (AtspiAccessible *root)
{
  GPtrArray *names = g_ptr_array_new_with_free_func (g_free);
  walk (root, root, 0, visit_pressable, names);
  return names;
}
