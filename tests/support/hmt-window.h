/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hmt-process.h"
#include "hmt-screen.h"
#include "hmt-tree.h"
G_BEGIN_DECLS

/*
 * A program with one window, driven from outside as a person would: by what is shown, by name. Whatever does not
 * come within the limit fails the test and prints the whole tree, and what the program wrote, on stderr.
 */
#define HMT_LIMIT_MS 10000u

typedef struct {
  HmtProcess *process;            /* owned */
  HmtScreen *screen;              /* owned */
  AtspiAccessible *application;   /* owned */
  gulong window;                  /* its X window */
} HmtWindow;

/** hmt_window_launch: starts the program and waits for its window. Never returns NULL: fails the test instead. */
HmtWindow *hmt_window_launch (const char * const *argv, const char * const *environment);
void hmt_window_free (HmtWindow *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmtWindow, hmt_window_free)

/** hmt_window_fail: fails the test with the tree and the program's output. */
void hmt_window_fail (HmtWindow *self, const char *format, ...) G_GNUC_PRINTF (2, 3) G_GNUC_NORETURN;

/** hmt_window_wait: until something of that role and name is shown. (transfer full), never NULL */
AtspiAccessible *hmt_window_wait (HmtWindow *self, AtspiRole role, const char *name);
AtspiAccessible *hmt_window_wait_pressable (HmtWindow *self, const char *name);
AtspiAccessible *hmt_window_wait_containing (HmtWindow *self, const char *part);

gboolean hmt_window_shows (HmtWindow *self, const char *name);          /* now, exactly or as the first words */
gboolean hmt_window_shows_part (HmtWindow *self, const char *part);     /* now, somewhere in a name */
gboolean hmt_window_has_button (HmtWindow *self, const char *name);
void hmt_window_wait_gone (HmtWindow *self, const char *name);

/** hmt_window_press: waits until the button of that name can be pressed and presses it (the pointer is used where it has no action). */
void hmt_window_press (HmtWindow *self, const char *name);

void hmt_window_press_node (HmtWindow *self, AtspiAccessible *node, const char *name);

/** hmt_window_enter: replaces the text of the entry of that name. */
void hmt_window_enter (HmtWindow *self, const char *entry, const char *text);
char *hmt_window_read (HmtWindow *self, const char *entry);             /* (transfer full) */

/** hmt_window_tab_to: presses Tab until what has that name has the keyboard. Arrows are tried in a group of choices. */
void hmt_window_tab_to (HmtWindow *self, const char *name);
void hmt_window_key (HmtWindow *self, const char *keys);

/** hmt_window_shot: saves @name.png in the folder that HALFMOON_TEST_SCREENS names; nothing if it names none. */
void hmt_window_shot (HmtWindow *self, const char *name);

/** hmt_window_quit: closes the window with the keyboard; anything but a clean end fails the test. */
void hmt_window_quit (HmtWindow *self);

G_END_DECLS
