/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-compile-write.h"
#include "hm-fastener-text.h"
#include "hm-limit-text.h"
#include "hm-torque.h"

/* What the shared files and the layouts hold: limits, cautions, layouts, fasteners, access steps. */

/* A bare ratio such as specific gravity has to say that it has no unit, so that a forgotten one is found. */
static gboolean
check_unit (HmSourceEntry *entry, const HmLimit *limit, GError **error)
{
  const char *unit = hm_entry_get (entry, "Unit", NULL);
  HmQuantityKind kind = limit->has_low ? limit->low.kind : limit->high.kind;

  if (unit != NULL && g_strcmp0 (unit, "none") != 0)
    return hm_entry_fail_key (entry, "Unit", error, "“%s”: a unit stands behind its number; only “none” stands here", unit);
  if (kind == HM_QUANTITY_NUMBER && unit == NULL)
    return hm_entry_fail (entry, error, "a number has no unit (a bare ratio such as specific gravity says Unit=none)");
  if (kind != HM_QUANTITY_NUMBER && unit != NULL)
    return hm_entry_fail_key (entry, "Unit", error, "it says “none”, but the numbers have units");
  return TRUE;
}

gboolean
hm_write_limit (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *low, *high, *applies;
  HmLimit limit = { .id = entry->id };

  if (!hm_entry_get_text (entry, "Low", FALSE, &low, error) || !hm_entry_get_text (entry, "High", FALSE, &high, error)
      || !hm_entry_get_text (entry, "Applies", FALSE, &applies, error))
    return FALSE;
  if (!hm_limit_from_text (low, high, &limit, error))
    return hm_entry_fail_at (entry, NULL, error);
  return check_unit (entry, &limit, error)
         && hm_writer_put (self, error, "INSERT INTO bench_limit (entry, applies, low, high) VALUES (?1, ?2, ?3, ?4)",
                           "ittt", entry->row, applies, low, high);
}

gboolean
hm_write_caution (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *text, *defer;
  gboolean serious = FALSE;

  return hm_entry_get_text (entry, "Text", TRUE, &text, error) && hm_entry_get_text (entry, "Defer", TRUE, &defer, error)
         && hm_entry_get_yes_no (entry, "Serious", TRUE, &serious, error)
         && hm_writer_put (self, error, "INSERT INTO caution (entry, text, defer, serious) VALUES (?1, ?2, ?3, ?4)",
                           "itti", entry->row, text, defer, (gint64) serious);
}

gboolean
hm_write_layout (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *detail;
  guint rank;

  return hm_entry_get_text (entry, "Detail", TRUE, &detail, error)
         && hm_entry_get_whole (entry, "Order", 1, 99, &rank, error)
         && hm_writer_put (self, error, "INSERT INTO layout (entry, detail, rank) VALUES (?1, ?2, ?3)", "iti", entry->row, detail,
                           (gint64) rank);
}

static gboolean
read_fastener (HmSourceEntry *entry, HmFastenerText *text, GError **error)
{
  text->id = entry->id;
  return hm_entry_get_text (entry, "Where", TRUE, &text->where, error)
         && hm_entry_get_whole (entry, "Count", 1, 99, &text->count, error)
         && hm_entry_get_text (entry, "Thread", TRUE, &text->thread, error)
         && hm_entry_get_text (entry, "Strength", FALSE, &text->strength, error)
         && hm_entry_get_text (entry, "Drives", TRUE, &text->drives, error)
         && hm_entry_get_text (entry, "Torque", TRUE, &text->torque, error)
         && hm_entry_get_text (entry, "TorqueProvenance", FALSE, &text->torque_provenance, error)
         && hm_entry_get_text (entry, "State", FALSE, &text->state, error)
         && hm_entry_get_text (entry, "Into", FALSE, &text->into, error)
         && hm_entry_get_text (entry, "Pattern", FALSE, &text->pattern, error)
         && hm_entry_get_provenance (entry, &text->provenance, error);
}

/* Better here than when a mechanic holds the wrench. */
static gboolean
check_computable (const HmTables *tables, const HmFastener *fastener, GError **error)
{
  HmTorqueAnswer answer;

  if (fastener->torque_basis != HM_TORQUE_COMPUTED || hm_torque_for_fastener (tables, fastener, &answer, error))
    return TRUE;
  g_prefix_error (error, "Torque=computed: ");
  return FALSE;
}

gboolean
hm_write_fastener (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  HmFastenerText text = { NULL };
  HmFastener fastener;

  if (!read_fastener (entry, &text, error))
    return FALSE;
  if (!hm_fastener_from_text (&text, self->source->tables, &fastener, error)
      || !check_computable (self->source->tables, &fastener, error))
    return hm_entry_fail_at (entry, NULL, error);
  return hm_writer_put (self, error,
                        "INSERT INTO fastener (entry, place, count, thread, strength, drives, torque, torque_provenance,"
                        " state, material, pattern) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)",
                        "ititttttttt", entry->row, text.where, (gint64) text.count, text.thread, text.strength,
                        text.drives, text.torque, text.torque_provenance, text.state, text.into, text.pattern);
}

gboolean
hm_write_access (HmWriter *self, HmSourceEntry *entry, GError **error)
{
  const char *photo, *put_back;
  gboolean blocks = FALSE;

  return hm_entry_get_yes_no (entry, "BlocksVerify", FALSE, &blocks, error)
         && hm_entry_get_text (entry, "Photo", FALSE, &photo, error)
         && hm_entry_get_text (entry, "PutBack", FALSE, &put_back, error)
         && hm_writer_put (self, error, "INSERT INTO access_step (entry, blocks_verify, photo, put_back) VALUES (?1, ?2, ?3, ?4)",
                           "iitt", entry->row, (gint64) blocks, photo, put_back)
         && hm_writer_lines (self, entry, "Do", NULL, 1, error)
         && hm_writer_minutes (self, entry, "Open", NULL, error)
         && hm_writer_minutes (self, entry, "Close", NULL, error)
         && hm_writer_links (self, entry, "Requires", "access", entry->scope, NULL, error)
         && hm_writer_links (self, entry, "Fasteners", "fastener", entry->scope, NULL, error)
         && hm_writer_links (self, entry, "Cautions", "caution", "", NULL, error);
}
