/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmt-screen-private.h"

#include <X11/Xutil.h>
#include <gdk-pixbuf/gdk-pixbuf.h>

/* 24-bit TrueColor, as the test screen has it: 0x00RRGGBB a pixel. */
static void
copy_pixels (XImage *image, GdkPixbuf *out)
{
  guchar *pixels = gdk_pixbuf_get_pixels (out);
  int stride = gdk_pixbuf_get_rowstride (out);

  for (int y = 0; y < image->height; y++)
    for (int x = 0; x < image->width; x++)
      {
        gulong pixel = XGetPixel (image, x, y);
        guchar *to = pixels + y * stride + x * 3;
        to[0] = (pixel >> 16) & 0xff;
        to[1] = (pixel >> 8) & 0xff;
        to[2] = pixel & 0xff;
      }
}

gboolean
hmt_screen_save (HmtScreen *self, gulong window, const char *path, GError **error)
{
  Drawable from = window != 0 ? window : self->root;
  g_autoptr(GdkPixbuf) picture = NULL;
  XWindowAttributes attributes;
  XImage *image = NULL;

  if (XGetWindowAttributes (self->display, from, &attributes))
    image = XGetImage (self->display, from, 0, 0, attributes.width, attributes.height, AllPlanes, ZPixmap);
  if (image == NULL)
    {
      g_set_error (error, G_IO_ERROR, G_IO_ERROR_FAILED, "the window cannot be read; it may reach over the screen's edge");
      return FALSE;
    }
  picture = gdk_pixbuf_new (GDK_COLORSPACE_RGB, FALSE, 8, image->width, image->height);
  copy_pixels (image, picture);
  XDestroyImage (image);
  return gdk_pixbuf_save (picture, path, "png", error, NULL);
}
