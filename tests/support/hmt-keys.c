/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-screen-private.h"

#include <X11/XKBlib.h>
#include <X11/extensions/XTest.h>
#include <X11/keysym.h>

/* A keycode that the layout leaves empty; taken for characters that have no key of their own. */
static KeyCode
find_spare_keycode (Display *display)
{
  int low, high, per_key;
  KeyCode spare = 0;
  KeySym *map;

  XDisplayKeycodes (display, &low, &high);
  map = XGetKeyboardMapping (display, low, high - low + 1, &per_key);
  for (int code = high; code >= low && spare == 0; code--)
    {
      gboolean empty = TRUE;
      for (int i = 0; i < per_key; i++)
        empty = empty && map[(code - low) * per_key + i] == NoSymbol;
      if (empty)
        spare = code;
    }
  XFree (map);
  return spare;
}

static void
tap (Display *display, KeyCode code, const KeyCode *held, guint n_held)
{
  for (guint i = 0; i < n_held; i++)
    XTestFakeKeyEvent (display, held[i], True, CurrentTime);
  XTestFakeKeyEvent (display, code, True, CurrentTime);
  XTestFakeKeyEvent (display, code, False, CurrentTime);
  for (guint i = n_held; i > 0; i--)
    XTestFakeKeyEvent (display, held[i - 1], False, CurrentTime);
  XSync (display, False);
}

static gboolean
tap_symbol (HmtScreen *self, KeySym symbol, const KeyCode *held, guint n_held)
{
  KeyCode code = XKeysymToKeycode (self->display, symbol);
  KeyCode with[5];
  guint n = 0;

  if (code == 0)
    {
      code = find_spare_keycode (self->display);
      if (code == 0)
        return FALSE;
      XChangeKeyboardMapping (self->display, code, 1, &symbol, 1);
      XSync (self->display, False);
      g_usleep (50000);      /* programs read the new layout when they hear of it */
    }
  for (guint i = 0; i < n_held && n < 4; i++)
    with[n++] = held[i];
  if (XkbKeycodeToKeysym (self->display, code, 0, 0) != symbol &&
      XkbKeycodeToKeysym (self->display, code, 0, 1) == symbol)
    with[n++] = XKeysymToKeycode (self->display, XK_Shift_L);
  tap (self->display, code, with, n);
  return TRUE;
}

gboolean
hmt_screen_press (HmtScreen *self, const char *keys)
{
  g_auto(GStrv) parts = g_strsplit (keys, "+", 5);
  KeyCode held[4];
  guint n_held = 0;
  KeySym symbol;
  guint last = g_strv_length (parts) - 1;

  for (guint i = 0; i < last; i++)
    {
      KeySym modifier = g_str_equal (parts[i], "ctrl")    ? XK_Control_L
                        : g_str_equal (parts[i], "shift") ? XK_Shift_L
                        : g_str_equal (parts[i], "alt")   ? XK_Alt_L
                                                          : NoSymbol;
      if (modifier == NoSymbol)
        return FALSE;
      held[n_held++] = XKeysymToKeycode (self->display, modifier);
    }
  symbol = XStringToKeysym (parts[last]);
  return symbol != NoSymbol && tap_symbol (self, symbol, held, n_held);
}

gboolean
hmt_screen_type (HmtScreen *self, const char *text)
{
  for (const char *p = text; *p != '\0'; p = g_utf8_next_char (p))
    {
      gunichar c = g_utf8_get_char (p);
      KeySym symbol = c < 0x100 ? c : 0x01000000 | c;   /* X11 protocol, appendix A: Latin-1 and Unicode keysyms */
      if (!tap_symbol (self, symbol, NULL, 0))
        return FALSE;
      g_usleep (8000);
    }
  return TRUE;
}
