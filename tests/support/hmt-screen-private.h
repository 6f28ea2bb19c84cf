/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <X11/Xlib.h>

#include "hmt-screen.h"

struct _HmtScreen
{
  Display *display;     /* owned */
  Window   root;
};
