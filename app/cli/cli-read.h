/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-lookup.h"
#include "hm-thread-limits.h"
G_BEGIN_DECLS

/*
 * What is typed after an option. @option stands before the message ("--pitch"), NULL for the command's own words. On bad
 * input: %FALSE, @out untouched, and one sentence of what was read and what is accepted.
 */

/** cli_read_length: above 0. A fraction without a unit is inches; anything else wants its unit. */
gboolean cli_read_length (const char *option, const char *text, HmQuantity *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
/** cli_read_force: above 0, with its unit. */
gboolean cli_read_force (const char *option, const char *text, HmForce *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean cli_read_whole (const char *option, const char *text, guint least, guint most, guint *out,
                         GError **error) G_GNUC_WARN_UNUSED_RESULT;
/** cli_read_degrees: 0 to 180; a degree sign or "deg" may follow. */
gboolean cli_read_degrees (const char *option, const char *text, double *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
/** cli_read_class: "6g", "2A"; the case of metric classes counts. */
gboolean cli_read_class (const char *option, const char *text, HmThreadClass *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;
/** cli_read_size: what a tool takes hold of, as hm_lookup_parse() reads it. Threads, and drives that come in no sizes to
 * compare, are refused. */
gboolean cli_read_size (const char *option, const char *text, const HmTables *tables, HmLookup *out,
                        GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** cli_refuse: puts "option: " before the sentence of @error. Returns: %FALSE */
gboolean cli_refuse (const char *option, GError **error);

G_END_DECLS
