/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-picture.h"
G_BEGIN_DECLS

/** hm_picture_point_from_text: "3,4.5" in grid units. */
gboolean hm_picture_point_from_text (const char *text, HmPoint *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_picture_path_from_text: "1,2 3,2 3,5": two points at least. @out: (transfer full): of #HmPoint */
gboolean hm_picture_path_from_text (const char *text, GArray **out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** hm_picture_size_from_text: "40 x 24", both above 0. */
gboolean hm_picture_size_from_text (const char *text, HmPoint *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
