/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-picture.h"
G_BEGIN_DECLS

/* A cranking circuit with every kind of symbol in it, for looking at the drawing widget. */
extern const HmPicture gallery_picture;

G_END_DECLS
