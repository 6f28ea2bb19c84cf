/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-screen-private.h"

#include <X11/Xatom.h>
#include <X11/extensions/XTest.h>

/* A window can be gone before we ask for it; Xlib would end the test for that. */
static int
ignore_error (Display *display, XErrorEvent *event)
{
  return 0;
}

HmtScreen *
hmt_screen_open (void)
{
  Display *display = XOpenDisplay (NULL);
  HmtScreen *self;

  if (display == NULL)
    return NULL;
  XSetErrorHandler (ignore_error);
  self = g_new0 (HmtScreen, 1);
  self->display = display;
  self->root = DefaultRootWindow (display);
  return self;
}

void
hmt_screen_close (HmtScreen *self)
{
  XCloseDisplay (self->display);
  g_free (self);
}

static gulong
window_pid (HmtScreen *self, Window window)
{
  Atom atom = XInternAtom (self->display, "_NET_WM_PID", False), type = None;
  int format = 0;
  gulong n = 0, rest = 0, pid = 0;
  unsigned char *data = NULL;

  if (XGetWindowProperty (self->display, window, atom, 0, 1, False, XA_CARDINAL, &type, &format, &n, &rest,
                          &data) == Success && data != NULL && n == 1 && format == 32)
    pid = *(gulong *) (void *) data;
  if (data != NULL)
    XFree (data);
  return pid;
}

gulong
hmt_screen_find_window (HmtScreen *self, int pid)
{
  Window root, parent, *children = NULL, best = 0;
  guint n = 0;
  gint64 best_area = 0;

  XQueryTree (self->display, self->root, &root, &parent, &children, &n);
  for (guint i = 0; i < n; i++)
    {
      XWindowAttributes attributes;
      gint64 area;
      if (!XGetWindowAttributes (self->display, children[i], &attributes) || attributes.map_state != IsViewable ||
          window_pid (self, children[i]) != (gulong) pid)
        continue;
      area = (gint64) attributes.width * attributes.height;
      if (area > best_area)
        {
          best = children[i];
          best_area = area;
        }
    }
  if (children != NULL)
    XFree (children);
  return best;
}

void
hmt_screen_focus (HmtScreen *self, gulong window)
{
  XRaiseWindow (self->display, window);
  XSetInputFocus (self->display, window, RevertToParent, CurrentTime);
  XSync (self->display, False);
}

void
hmt_screen_resize (HmtScreen *self, gulong window, guint width_px, guint height_px)
{
  XMoveResizeWindow (self->display, window, 0, 0, width_px, height_px);
  XSync (self->display, False);
}

void
hmt_screen_get_size (HmtScreen *self, gulong window, guint *width_px, guint *height_px)
{
  XWindowAttributes attributes = { .width = 0 };
  XGetWindowAttributes (self->display, window, &attributes);
  *width_px = attributes.width;
  *height_px = attributes.height;
}

static void
press_button (HmtScreen *self, gulong window, int x_px, int y_px, guint button)
{
  Window child;
  int x = x_px, y = y_px;

  XTranslateCoordinates (self->display, window, self->root, x_px, y_px, &x, &y, &child);
  XTestFakeMotionEvent (self->display, -1, x, y, CurrentTime);
  XTestFakeButtonEvent (self->display, button, True, CurrentTime);
  XTestFakeButtonEvent (self->display, button, False, CurrentTime);
  XSync (self->display, False);
}

/* X11 protocol: the wheel is buttons 4 (up) and 5 (down). */
void
hmt_screen_scroll (HmtScreen *self, gulong window, int x_px, int y_px, gboolean down)
{
  press_button (self, window, x_px, y_px, down ? 5 : 4);
}

void
hmt_screen_click (HmtScreen *self, gulong window, int x_px, int y_px)
{
  press_button (self, window, x_px, y_px, 1);
}
