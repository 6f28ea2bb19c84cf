/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli-report.h"

#include <glib/gi18n.h>
#include <math.h>

#include "cli-report-json.h"

#define INDENT 4

/* What is open, innermost last. */
typedef enum { PART, LIST, ITEM } Level;

struct _CliReport
{
  CliIo *io;              /* borrowed */
  JsonBuilder *builder;   /* owned; NULL when text is wanted */
  GString *item;          /* owned: the paragraph of the open item; NULL outside of items */
  const HmProvenance *of_items;   /* borrowed: that of the open list; nullable */
  guint n_items, n_facts; /* of the open list; of the open item's paragraph */
  GArray *levels;         /* owned, of Level */
  GPtrArray *cautions;    /* owned */
};

CliReport *
cli_report_new (CliIo *io, const char *format, gboolean json)
{
  CliReport *self = g_new0 (CliReport, 1);

  self->io = io;
  self->levels = g_array_new (FALSE, FALSE, sizeof (Level));
  self->cautions = g_ptr_array_new_with_free_func (g_free);
  if (json)
    {
      self->builder = json_builder_new ();
      json_builder_begin_object (self->builder);
      json_builder_set_member_name (self->builder, "format");
      json_builder_add_string_value (self->builder, format);
    }
  return self;
}

void
cli_report_free (CliReport *self)
{
  g_clear_object (&self->builder);
  if (self->item != NULL)
    g_string_free (self->item, TRUE);
  g_array_unref (self->levels);
  g_ptr_array_unref (self->cautions);
  g_free (self);
}

const HmFormat *
cli_report_get_format (CliReport *self)
{
  return self->builder != NULL ? &hm_format_default : cli_io_get_format (self->io);
}

gboolean
cli_report_is_json (CliReport *self)
{
  return self->builder != NULL;
}

static void
open_level (CliReport *self, Level level, const char *member)
{
  g_array_append_val (self->levels, level);
  if (self->builder == NULL)
    return;
  if (member != NULL)
    json_builder_set_member_name (self->builder, member);
  if (level == LIST)
    json_builder_begin_array (self->builder);
  else
    json_builder_begin_object (self->builder);
}

void
cli_report_begin (CliReport *self, const char *member, const char *title)
{
  if (self->builder == NULL && title != NULL)
    cli_io_title (self->io, title);
  open_level (self, PART, member);
}

void
cli_report_begin_list (CliReport *self, const char *member, const char *title, const HmProvenance *provenance)
{
  self->of_items = provenance;
  self->n_items = 0;
  if (self->builder == NULL && title != NULL)
    cli_io_title (self->io, title);
  open_level (self, LIST, member);
}

void
cli_report_begin_item (CliReport *self, const char *heading)
{
  g_return_if_fail (self->item == NULL);
  open_level (self, ITEM, NULL);
  self->item = g_string_new (heading);
  self->n_items++;
  self->n_facts = 0;
}

static void
end_item (CliReport *self)
{
  if (self->builder == NULL)
    cli_io_print (self->io, INDENT, "  – %s", self->item->str);
  else if (self->of_items != NULL)
    cli_report_provenance (self, *self->of_items);
  g_string_free (self->item, TRUE);
  self->item = NULL;
}

/* In the text one source stands for all items. */
static void
end_list (CliReport *self)
{
  if (self->builder == NULL && self->of_items != NULL && self->n_items > 0)
    cli_report_provenance (self, *self->of_items);
  self->of_items = NULL;
}

void
cli_report_end (CliReport *self)
{
  Level level;

  g_return_if_fail (self->levels->len > 0);
  level = g_array_index (self->levels, Level, self->levels->len - 1);
  g_array_set_size (self->levels, self->levels->len - 1);
  if (level == ITEM)
    end_item (self);
  else if (level == LIST)
    end_list (self);
  if (self->builder != NULL && level == LIST)
    json_builder_end_array (self->builder);
  else if (self->builder != NULL)
    json_builder_end_object (self->builder);
}

static void
name_member (CliReport *self, const char *member)
{
  json_builder_set_member_name (self->builder, member);
}

static void
add_string (CliReport *self, const char *member, const char *text)
{
  name_member (self, member);
  json_builder_add_string_value (self->builder, text);
}

static void
add_double (CliReport *self, const char *member, double value)
{
  name_member (self, member);
  json_builder_add_double_value (self->builder, value);
}

/* A line of its own, or a piece of the open item. An empty label: the text alone. */
static void
print_fact (CliReport *self, const char *label, const char *text, const HmProvenance *provenance)
{
  g_autofree char *fact = label[0] != '\0' ? g_strdup_printf (_("%s: %s"), label, text) : g_strdup (text);
  g_autofree char *source = provenance != NULL ? cli_words_provenance (*provenance) : NULL;
  g_autofree char *whole = source != NULL ? g_strdup_printf ("%s [%s]", fact, source) : g_strdup (fact);

  if (self->item == NULL)
    cli_io_print (self->io, INDENT, "%s", whole);
  else
    g_string_append_printf (self->item, "%s %s", self->n_facts++ > 0 ? ";" : ":", whole);
}

void
cli_report_word (CliReport *self, const char *member, const char *label, const char *word, const char *shown)
{
  if (self->builder != NULL)
    add_string (self, member, word);
  else if (label != NULL)
    print_fact (self, label, shown != NULL ? shown : word, NULL);
}

void
cli_report_count (CliReport *self, const char *member, const char *label, gint64 count)
{
  g_autofree char *text = g_strdup_printf ("%" G_GINT64_FORMAT, count);

  if (self->builder != NULL)
    {
      name_member (self, member);
      json_builder_add_int_value (self->builder, count);
    }
  else if (label != NULL)
    print_fact (self, label, text, NULL);
}

void
cli_report_counts (CliReport *self, const char *member, const char *label, const guint *counts, guint n, const char *shown)
{
  g_autoptr (GString) list = g_string_new (NULL);

  if (self->builder == NULL)
    {
      for (guint i = 0; i < n; i++)
        g_string_append_printf (list, "%s%u", i > 0 ? " " : "", counts[i]);
      print_fact (self, label, shown != NULL ? shown : list->str, NULL);
      return;
    }
  name_member (self, member);
  json_builder_begin_array (self->builder);
  for (guint i = 0; i < n; i++)
    json_builder_add_int_value (self->builder, counts[i]);
  json_builder_end_array (self->builder);
}

void
cli_report_flag (CliReport *self, const char *member, gboolean value)
{
  if (self->builder == NULL)
    return;
  name_member (self, member);
  json_builder_add_boolean_value (self->builder, value);
}

void
cli_report_plain_number (CliReport *self, const char *member, double value)
{
  if (self->builder == NULL)
    return;
  if (isfinite (value))
    {
      add_double (self, member, value);
      return;
    }
  name_member (self, member);
  json_builder_add_null_value (self->builder);
}

/* "0.3438 in (8.731 mm)", the person's own system first. */
static char *
format_fine (HmQuantityRange range, const HmFormat *format)
{
  g_autofree char *inch = hm_quantity_range_format (range, HM_UNIT_INCH, 4, format);
  g_autofree char *metric = hm_quantity_range_format (range, HM_UNIT_MM, 3, format);
  gboolean inch_first = format->system == HM_UNIT_SYSTEM_INCH_FIRST;

  return g_strdup_printf ("%s (%s)", inch_first ? inch : metric, inch_first ? metric : inch);
}

static char *
format_range (HmQuantityRange range, CliDetail detail, const HmFormat *format)
{
  if (range.low.kind == HM_QUANTITY_LENGTH && detail == CLI_FINE)
    return format_fine (range, format);
  if (range.low.kind == HM_QUANTITY_NUMBER)
    return hm_quantity_range_format (range, HM_UNIT_NONE, 2, format);
  return hm_quantity_range_format_both (range, format);
}

static void
add_unit_and_source (CliReport *self, HmQuantityKind kind, const HmProvenance *provenance)
{
  const char *unit = hm_unit_symbol (hm_quantity_kind_base_unit (kind));
  g_autofree char *source = provenance != NULL ? hm_provenance_format (*provenance) : NULL;

  add_string (self, "unit", unit[0] != '\0' ? unit : "1");
  if (source != NULL)
    add_string (self, "provenance", source);
  json_builder_end_object (self->builder);
}

void
cli_report_value (CliReport *self, const char *member, const char *label, HmQuantity value, CliDetail detail,
                  const HmProvenance *provenance)
{
  g_autofree char *text = NULL;

  if (self->builder != NULL)
    {
      name_member (self, member);
      json_builder_begin_object (self->builder);
      add_double (self, "value", value.value);
      add_unit_and_source (self, value.kind, provenance);
      return;
    }
  text = format_range ((HmQuantityRange) { value, value }, detail, cli_report_get_format (self));
  if (label != NULL)
    print_fact (self, label, text, provenance);
}

void
cli_report_range (CliReport *self, const char *member, const char *label, HmQuantity low, HmQuantity high, CliDetail detail,
                  const HmProvenance *provenance)
{
  g_autofree char *text = NULL;

  if (self->builder != NULL)
    {
      name_member (self, member);
      json_builder_begin_object (self->builder);
      add_double (self, "low", low.value);
      add_double (self, "high", high.value);
      add_unit_and_source (self, low.kind, provenance);
      return;
    }
  text = format_range ((HmQuantityRange) { low, high }, detail, cli_report_get_format (self));
  if (label != NULL)
    print_fact (self, label, text, provenance);
}

void
cli_report_degrees (CliReport *self, const char *member, const char *label, double low, double high)
{
  g_autofree char *text = NULL, *marked = NULL;

  if (self->builder != NULL)
    {
      name_member (self, member);
      json_builder_begin_object (self->builder);
      add_double (self, "low", low);
      add_double (self, "high", high);
      add_string (self, "unit", "°");
      json_builder_end_object (self->builder);
      return;
    }
  text = hm_quantity_range_format ((HmQuantityRange) { cli_quantity_number (low), cli_quantity_number (high) }, HM_UNIT_NONE, 1,
                                   cli_report_get_format (self));
  marked = g_strconcat (text, "°", NULL);
  if (label != NULL)
    print_fact (self, label, marked, NULL);
}

void
cli_report_provenance (CliReport *self, HmProvenance provenance)
{
  g_autofree char *source = hm_provenance_format (provenance);
  g_autofree char *shown = cli_words_provenance (provenance);

  if (self->builder != NULL)
    add_string (self, "provenance", source);
  else if (self->item != NULL)
    g_string_append_printf (self->item, " [%s]", shown);
  else
    cli_io_print (self->io, INDENT, "[%s]", shown);
}

void
cli_report_provenance_of_rest (CliReport *self, HmProvenance provenance)
{
  if (self->builder != NULL)
    cli_report_provenance (self, provenance);
}

void
cli_report_say (CliReport *self, const char *sentence)
{
  if (self->builder == NULL)
    cli_io_print (self->io, 0, "%s", sentence);
}

void
cli_report_caution (CliReport *self, const char *sentence)
{
  g_ptr_array_add (self->cautions, g_strdup (sentence));
}

void
cli_report_finish (CliReport *self)
{
  g_autoptr (JsonNode) root = NULL;

  g_return_if_fail (self->levels->len == 0);
  cli_report_caution (self, _("The maker’s manual governs wherever it differs from what is shown."));
  if (self->builder == NULL)
    {
      cli_io_gap (self->io);
      for (guint i = 0; i < self->cautions->len; i++)
        cli_io_print (self->io, INDENT, "! %s", (char *) g_ptr_array_index (self->cautions, i));
      return;
    }
  name_member (self, "cautions");
  json_builder_begin_array (self->builder);
  for (guint i = 0; i < self->cautions->len; i++)
    json_builder_add_string_value (self->builder, g_ptr_array_index (self->cautions, i));
  json_builder_end_array (self->builder);
  json_builder_end_object (self->builder);
  root = json_builder_get_root (self->builder);
  cli_report_json_print (root);
}
