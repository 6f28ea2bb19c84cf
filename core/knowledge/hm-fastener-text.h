/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-fastener.h"
#include "hm-tables.h"
G_BEGIN_DECLS

/**
 * HmFastenerText: a fastener as data/knowledge/ writes it. The compiler checks with the same code that the reader
 * reads with. All strings live at least as long as the #HmFastener made from them. @strength, @torque_provenance,
 * @state, @into and @pattern may be NULL.
 */
typedef struct {
  const char *id, *name, *where, *thread, *strength, *drives, *torque, *torque_provenance, *state, *into, *pattern,
             *provenance;
  guint count;
} HmFastenerText;

/** hm_fastener_from_text: %FALSE with the key and what is wrong with it, @out untouched. */
gboolean hm_fastener_from_text (const HmFastenerText *text, const HmTables *tables, HmFastener *out, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
