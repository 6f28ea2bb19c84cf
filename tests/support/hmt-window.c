/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-window.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>
#include <cmocka.h>

#define POLL_MS 40
#define MAX_TABS 120
#define TABS_TOLD 30
#define MAX_NOTCHES 60
#define MARGIN_PX 12

typedef AtspiAccessible *(*Finder) (HmtWindow *self, AtspiRole role, const char *name);

static AtspiAccessible *
find_named (HmtWindow *self, AtspiRole role, const char *name)
{
  return hmt_tree_find (self->application, role, name);
}

static AtspiAccessible *
find_pressable (HmtWindow *self, AtspiRole role, const char *name)
{
  return hmt_tree_find_pressable (self->application, name);
}

static AtspiAccessible *
find_sensitive (HmtWindow *self, AtspiRole role, const char *name)
{
  AtspiAccessible *node = hmt_tree_find_pressable (self->application, name);
  if (node != NULL && !hmt_tree_is_sensitive (node))
    g_clear_object (&node);
  return node;
}

static AtspiAccessible *
find_containing (HmtWindow *self, AtspiRole role, const char *name)
{
  return hmt_tree_find_containing (self->application, role, name);
}

static gint64
deadline (void)
{
  return g_get_monotonic_time () + HMT_LIMIT_MS * G_GINT64_CONSTANT (1000);
}

static AtspiAccessible *
wait_for (HmtWindow *self, Finder find, AtspiRole role, const char *name)
{
  gint64 end = deadline ();
  do
    {
      AtspiAccessible *found = find (self, role, name);
      if (found != NULL)
        return found;
      if (hmt_process_wait (self->process, 0) >= 0)
        hmt_window_fail (self, "the program ended (exit status %d) while “%s” was waited for",
                         hmt_process_wait (self->process, 0), name);
      hmt_sleep_ms (POLL_MS);
    }
  while (g_get_monotonic_time () < end);
  hmt_window_fail (self, "“%s” is not shown%s", name, find == find_sensitive ? ", or cannot be pressed" : "");
}

static gboolean
attach (HmtWindow *self)
{
  int pid = hmt_process_get_pid (self->process);
  if (self->application == NULL)
    self->application = hmt_tree_find_application (pid);
  if (self->window == 0)
    self->window = hmt_screen_find_window (self->screen, pid);
  return self->application != NULL && self->window != 0;
}

HmtWindow *
hmt_window_launch (const char * const *argv, const char * const *environment)
{
  HmtWindow *self = g_new0 (HmtWindow, 1);
  g_autoptr(GError) error = NULL;
  gint64 end = deadline ();

  hmt_tree_init ();
  self->screen = hmt_screen_open ();
  if (self->screen == NULL)
    fail_msg ("there is no X display; run this under tests/support/headless");
  self->process = hmt_process_start (argv, environment, &error);
  if (self->process == NULL)
    fail_msg ("%s", error->message);
  while (!attach (self) && g_get_monotonic_time () < end && hmt_process_wait (self->process, 0) < 0)
    hmt_sleep_ms (POLL_MS);
  if (!attach (self))
    hmt_window_fail (self, "no window of %s came up (exit status %d; -1: it still runs)", argv[0],
                     hmt_process_wait (self->process, 0));
  hmt_screen_focus (self->screen, self->window);
  return self;
}

void
hmt_window_free (HmtWindow *self)
{
  g_clear_object (&self->application);
  g_clear_pointer (&self->process, hmt_process_free);
  g_clear_pointer (&self->screen, hmt_screen_close);
  g_free (self);
}

void
hmt_window_fail (HmtWindow *self, const char *format, ...)
{
  g_autofree char *tree = self->application != NULL ? hmt_tree_dump (self->application) : g_strdup ("(no tree)\n");
  g_autofree char *output = hmt_process_output (self->process);
  g_autofree char *message = NULL;
  va_list arguments;

  va_start (arguments, format);
  message = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  g_printerr ("%s\nshown:\n%swritten by the program:\n%s\n", message, tree, output);
  hmt_window_shot (self, "failure");
  g_clear_pointer (&self->process, hmt_process_free);   /* failing does not come back to those who would */
  fail_msg ("%s", message);
  g_assert_not_reached ();
}

AtspiAccessible *
hmt_window_wait (HmtWindow *self, AtspiRole role, const char *name)
{
  return wait_for (self, find_named, role, name);
}

AtspiAccessible *
hmt_window_wait_pressable (HmtWindow *self, const char *name)
{
  return wait_for (self, find_pressable, HMT_ANY_ROLE, name);
}

AtspiAccessible *
hmt_window_wait_containing (HmtWindow *self, const char *part)
{
  return wait_for (self, find_containing, HMT_ANY_ROLE, part);
}

gboolean
hmt_window_shows (HmtWindow *self, const char *name)
{
  g_autoptr(AtspiAccessible) found = hmt_tree_find (self->application, HMT_ANY_ROLE, name);
  return found != NULL;
}

gboolean
hmt_window_shows_part (HmtWindow *self, const char *part)
{
  g_autoptr(AtspiAccessible) found = hmt_tree_find_containing (self->application, HMT_ANY_ROLE, part);
  return found != NULL;
}

gboolean
hmt_window_has_button (HmtWindow *self, const char *name)
{
  g_autoptr(AtspiAccessible) found = hmt_tree_find_pressable (self->application, name);
  return found != NULL;
}

void
hmt_window_wait_gone (HmtWindow *self, const char *name)
{
  gint64 end = deadline ();
  while (hmt_window_shows (self, name))
    {
      if (g_get_monotonic_time () > end)
        hmt_window_fail (self, "“%s” is still shown", name);
      hmt_sleep_ms (POLL_MS);
    }
}

/* Turns the wheel until @node lies in the window, then clicks the middle of it. Check buttons of GTK 4.8 have no
 * action of their own; a person would click them as well. */
static void
click_with_pointer (HmtWindow *self, AtspiAccessible *node, const char *name)
{
  guint width, height;
  AtspiRect place;

  hmt_screen_get_size (self->screen, self->window, &width, &height);
  for (guint i = 0; i < MAX_NOTCHES; i++)
    {
      int y;
      if (!hmt_tree_get_place (node, &place))
        hmt_window_fail (self, "“%s” has neither an action nor a place on the screen", name);
      y = place.y + place.height / 2;
      if (y > MARGIN_PX && y < (int) height - MARGIN_PX)
        {
          hmt_screen_click (self->screen, self->window, place.x + MIN (place.width, 2 * MARGIN_PX) / 2, y);
          return;
        }
      hmt_screen_scroll (self->screen, self->window, place.x + MARGIN_PX, height / 2, y > 0);
      hmt_sleep_ms (POLL_MS);
    }
  hmt_window_fail (self, "“%s” does not come into sight by scrolling", name);
}

void
hmt_window_press (HmtWindow *self, const char *name)
{
  g_autoptr(AtspiAccessible) node = wait_for (self, find_sensitive, HMT_ANY_ROLE, name);
  hmt_window_press_node (self, node, name);
}

void
hmt_window_press_node (HmtWindow *self, AtspiAccessible *node, const char *name)
{
  if (!hmt_tree_act (node, NULL))
    click_with_pointer (self, node, name);
}

/* The entry itself: its label may bear the same name. */
static AtspiAccessible *
wait_for_entry (HmtWindow *self, const char *name)
{
  static const AtspiRole roles[] = { ATSPI_ROLE_ENTRY, ATSPI_ROLE_TEXT };
  gint64 end = deadline ();
  do
    {
      for (guint i = 0; i < G_N_ELEMENTS (roles); i++)
        {
          AtspiAccessible *found = hmt_tree_find (self->application, roles[i], name);
          if (found != NULL)
            return found;
        }
      hmt_sleep_ms (POLL_MS);
    }
  while (g_get_monotonic_time () < end);
  hmt_window_fail (self, "there is no entry “%s”", name);
}

void
hmt_window_enter (HmtWindow *self, const char *entry, const char *text)
{
  g_autoptr(AtspiAccessible) node = wait_for_entry (self, entry);
  if (!hmt_tree_set_text (node, text))
    hmt_window_fail (self, "the entry “%s” takes no text", entry);
}

char *
hmt_window_read (HmtWindow *self, const char *entry)
{
  g_autoptr(AtspiAccessible) node = wait_for_entry (self, entry);
  return hmt_tree_text (node);
}

static gboolean
name_begins (const char *name, const char *wanted)
{
  gsize length = strlen (wanted);
  return g_str_has_prefix (name, wanted) && !g_ascii_isalnum (name[length]);
}

void
hmt_window_tab_to (HmtWindow *self, const char *name)
{
  g_autoptr(GString) way = g_string_new (NULL);

  for (guint i = 0; i < MAX_TABS; i++)
    {
      g_autoptr(AtspiAccessible) focus = hmt_tree_find_focus (self->application);
      g_autofree char *focused = focus != NULL ? hmt_tree_name (focus) : g_strdup ("");
      gboolean choice = focus != NULL && atspi_accessible_get_role (focus, NULL) == ATSPI_ROLE_RADIO_BUTTON;

      if (name_begins (focused, name))
        return;
      if (i >= MAX_TABS - TABS_TOLD)
        g_string_append_printf (way, " → “%s”", focused);
      hmt_window_key (self, choice && i % 8 < 6 ? "Down" : "Tab");
      if (hmt_process_wait (self->process, 0) >= 0)
        hmt_window_fail (self, "the program ended (exit status %d) on the way from “%s” to “%s”",
                         hmt_process_wait (self->process, 0), focused, name);
    }
  hmt_window_fail (self, "“%s” cannot be reached with the Tab key; the last stops: %s", name, way->str);
}

void
hmt_window_key (HmtWindow *self, const char *keys)
{
  if (!hmt_screen_press (self->screen, keys))
    hmt_window_fail (self, "there is no key “%s”", keys);
  hmt_sleep_ms (POLL_MS);
}

void
hmt_window_shot (HmtWindow *self, const char *name)
{
  const char *folder = g_getenv ("HALFMOON_TEST_SCREENS");
  g_autofree char *file = g_strconcat (name, ".png", NULL);
  g_autofree char *path = NULL;
  g_autoptr(GError) error = NULL;

  if (folder == NULL || self->window == 0)
    return;
  g_mkdir_with_parents (folder, 0755);
  path = g_build_filename (folder, file, NULL);
  if (!hmt_screen_save (self->screen, self->window, path, &error))
    g_printerr ("%s: %s\n", path, error->message);
}

void
hmt_window_quit (HmtWindow *self)
{
  int status;
  hmt_screen_focus (self->screen, self->window);
  hmt_screen_press (self->screen, "ctrl+q");
  status = hmt_process_wait (self->process, HMT_LIMIT_MS);
  if (status != 0)
    hmt_window_fail (self, "after Ctrl+Q the exit status is %d (-1: it still runs)", status);
}
