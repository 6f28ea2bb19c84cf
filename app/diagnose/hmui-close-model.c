/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-close-model.h"
#include "hmui-line.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

struct _HmuiCloseModel
{
  GObject parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmDiagnosis *shown_of;          /* borrowed; only compared */
  guint shown_after;              /* how long the trail was */
  HmEntry last;                   /* what ended it */
  char *texts[HMUI_CLOSE_N_TEXTS];   /* owned */
  GListStore *look_also, *tell_owner;   /* owned */
};

static const char * const text_ids[] = { "complaint", "cause", "correction" };

G_DEFINE_FINAL_TYPE (HmuiCloseModel, hmui_close_model, G_TYPE_OBJECT)

static HmDiagnosis *
diagnosis (HmuiCloseModel *self)
{
  return hmui_diagnose_model_get_diagnosis (self->bench);
}

static void
clear_texts (HmuiCloseModel *self)
{
  for (gsize i = 0; i < HMUI_CLOSE_N_TEXTS; i++)
    g_clear_pointer (&self->texts[i], g_free);
}

static void
hmui_close_model_finalize (GObject *object)
{
  HmuiCloseModel *self = HMUI_CLOSE_MODEL (object);

  clear_texts (self);
  g_object_unref (self->look_also);
  g_object_unref (self->tell_owner);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_close_model_parent_class)->finalize (object);
}

static void
hmui_close_model_class_init (HmuiCloseModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_close_model_finalize;
}

static void
hmui_close_model_init (HmuiCloseModel *self)
{
  self->look_also = g_list_store_new (HMUI_TYPE_LINE);
  self->tell_owner = g_list_store_new (HMUI_TYPE_LINE);
}

HmuiCloseModel *
hmui_close_model_new (HmuiDiagnoseModel *bench)
{
  HmuiCloseModel *self = g_object_new (HMUI_TYPE_CLOSE_MODEL, NULL);

  self->bench = g_object_ref (bench);
  return self;
}

static void
list_lines (GListStore *list, GPtrArray *lines)
{
  g_list_store_remove_all (list);
  for (guint i = 0; i < lines->len; i++)
    hmui_line_append (list, i, NULL, g_ptr_array_index (lines, i), NULL, NULL);
}

static void
read_write_up (HmuiCloseModel *self)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);
  g_autoptr(HmWriteUp) write_up = hm_diagnosis_write_up (diagnosis (self), &format, hmui_tr);
  const char *generated[] = { write_up->complaint, write_up->cause, write_up->correction };

  clear_texts (self);
  for (gsize i = 0; i < HMUI_CLOSE_N_TEXTS; i++)
    {
      const char *own = hm_diagnosis_get_text (diagnosis (self), text_ids[i]);

      self->texts[i] = g_strdup (own != NULL ? own : generated[i]);
    }
  list_lines (self->look_also, write_up->look_also);
  list_lines (self->tell_owner, write_up->tell_owner);
}

gboolean
hmui_close_model_refresh (HmuiCloseModel *self)
{
  guint n = hm_diagnosis_get_n_entries (diagnosis (self));
  gboolean same = self->shown_of == diagnosis (self) && self->shown_after == n;

  g_return_val_if_fail (n > 0, FALSE);
  self->shown_of = diagnosis (self);
  self->shown_after = n;
  self->last = *hm_diagnosis_get_entry (diagnosis (self), n - 1);
  read_write_up (self);
  return !same;
}

const char *
hmui_close_model_get_text (HmuiCloseModel *self, HmuiCloseText which)
{
  g_return_val_if_fail (which < HMUI_CLOSE_N_TEXTS, NULL);
  return self->texts[which];
}

void
hmui_close_model_set_text (HmuiCloseModel *self, HmuiCloseText which, const char *text)
{
  g_return_if_fail (which < HMUI_CLOSE_N_TEXTS);
  if (g_strcmp0 (self->texts[which], text) == 0)
    return;
  g_free (self->texts[which]);
  self->texts[which] = g_strdup (text);
  hmui_diagnose_model_set_text (self->bench, text_ids[which], text);
}

char *
hmui_close_model_dup_result (HmuiCloseModel *self)
{
  if (self->last.kind == HM_ENTRY_SENT_OUT)
    return g_strdup (_("Sent out: the rest is for a shop with more tools, or a full strip-down. What was found goes with it."));
  if (self->last.result == HM_REPAIR_CHANGED)
    return g_strdup (_("This complaint is gone, but the machine does something else wrong. Start with the new complaint; "
                       "tick under “What has already been replaced?” what was fitted now."));
  return g_strdup (_("Fixed, and tested with the complaint."));
}

char *
hmui_close_model_dup_minutes (HmuiCloseModel *self)
{
  HmDuration work = { 0 }, open = { 0 }, close = { 0 };
  guint n = hm_diagnosis_get_n_entries (diagnosis (self));
  g_autofree char *all = hmui_words_minutes (hm_diagnosis_get_minutes_spent (diagnosis (self)).minutes);
  g_autofree char *work_text = NULL, *open_text = NULL, *close_text = NULL;

  for (guint i = 0; i < n; i++)
    {
      const HmEntry *entry = hm_diagnosis_get_entry (diagnosis (self), i);

      work.minutes += entry->work.minutes;
      open.minutes += entry->open.minutes;
      close.minutes += entry->close.minutes;
    }
  work_text = hmui_words_minutes (work.minutes);
  open_text = hmui_words_minutes (open.minutes);
  close_text = hmui_words_minutes (close.minutes);
  return g_strdup_printf (_("%s: %s checking and repairing, %s opening up, %s putting back"), all, work_text, open_text,
                          close_text);
}

GListModel *
hmui_close_model_get_look_also (HmuiCloseModel *self)
{
  return G_LIST_MODEL (self->look_also);
}

GListModel *
hmui_close_model_get_tell_owner (HmuiCloseModel *self)
{
  return G_LIST_MODEL (self->tell_owner);
}

static void
append_list (GString *text, const char *heading, GListModel *lines)
{
  guint n = g_list_model_get_n_items (lines);

  if (n == 0)
    return;
  g_string_append_printf (text, "\n%s\n", heading);
  for (guint i = 0; i < n; i++)
    {
      g_autoptr(HmuiLine) line = g_list_model_get_item (lines, i);

      g_string_append_printf (text, "• %s\n", hmui_line_get_title (line));
    }
}

char *
hmui_close_model_dup_all (HmuiCloseModel *self)
{
  const char *headings[] = { _("Complaint"), _("Cause"), _("Correction") };
  g_autoptr(GString) text = g_string_new (NULL);
  g_autofree char *minutes = hmui_close_model_dup_minutes (self);

  for (gsize i = 0; i < HMUI_CLOSE_N_TEXTS; i++)
    g_string_append_printf (text, "%s%s\n%s\n", i > 0 ? "\n" : "", headings[i], self->texts[i]);
  append_list (text, _("Look at these too"), G_LIST_MODEL (self->look_also));
  append_list (text, _("Tell the owner"), G_LIST_MODEL (self->tell_owner));
  g_string_append_printf (text, "\n%s\n", minutes);
  return g_string_free (g_steal_pointer (&text), FALSE);
}
