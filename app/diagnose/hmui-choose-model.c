/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-choose-model.h"
#include "hmui-line.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

struct _HmuiChooseModel
{
  GObject parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  GListStore *complaints, *layouts, *incidents, *causes, *open;   /* owned */
  GPtrArray *rows;                /* owned; of HmDiagnosisRow, behind open; NULL before the store answered */
  int complaint, layout;          /* indices of the knowledge; -1: none */
  HmDiagnosis *fresh;             /* owned; NULL until both are chosen */
};

G_DEFINE_FINAL_TYPE (HmuiChooseModel, hmui_choose_model, G_TYPE_OBJECT)

static void
emit_changed (HmuiChooseModel *self)
{
  g_signal_emit_by_name (self, "changed");
}

static const HmComplaint *
complaint_at (HmuiChooseModel *self, int i)
{
  return &hm_knowledge_get_complaints (hmui_diagnose_model_get_knowledge (self->bench), NULL)[i];
}

static const HmLayout *
layout_at (HmuiChooseModel *self, int i)
{
  return &hm_knowledge_get_layouts (hmui_diagnose_model_get_knowledge (self->bench), NULL)[i];
}

static gboolean
is_covered (HmuiChooseModel *self, int complaint, int layout)
{
  return hm_knowledge_covers (hmui_diagnose_model_get_knowledge (self->bench), complaint_at (self, complaint)->id,
                              layout_at (self, layout)->id);
}

static void
list_complaints (HmuiChooseModel *self)
{
  guint n;
  const HmComplaint *all = hm_knowledge_get_complaints (hmui_diagnose_model_get_knowledge (self->bench), &n);

  g_list_store_remove_all (self->complaints);
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *icon = g_strdup_printf ("hm-%s-symbolic", all[i].id);

      hmui_line_append (self->complaints, i, icon, hmui_tr (all[i].name), hmui_tr (all[i].owner_words), NULL);
    }
}

static gboolean
has_complaints (HmuiChooseModel *self, int layout)
{
  guint n;

  hm_knowledge_get_complaints (hmui_diagnose_model_get_knowledge (self->bench), &n);
  for (guint i = 0; i < n; i++)
    if (is_covered (self, i, layout))
      return TRUE;
  return FALSE;
}

static void
list_layouts (HmuiChooseModel *self)
{
  guint n;
  const HmLayout *all = hm_knowledge_get_layouts (hmui_diagnose_model_get_knowledge (self->bench), &n);

  g_list_store_remove_all (self->layouts);
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *icon = g_strdup_printf ("hm-%s-symbolic", all[i].id);

      if (has_complaints (self, i))
        hmui_line_append (self->layouts, i, icon, hmui_tr (all[i].name), NULL, hmui_tr (all[i].detail));
    }
}

static void
list_told (HmuiChooseModel *self)
{
  HmGuide *guide = self->fresh != NULL ? hm_diagnosis_get_guide (self->fresh) : NULL;
  guint n_incidents = 0, n_causes = 0;
  const HmIncident *incidents = guide != NULL ? hm_guide_get_incidents (guide, &n_incidents) : NULL;
  const HmCause *causes = guide != NULL ? hm_guide_get_causes (guide, &n_causes) : NULL;

  g_list_store_remove_all (self->incidents);
  g_list_store_remove_all (self->causes);
  for (guint i = 0; i < n_incidents; i++)
    hmui_line_append (self->incidents, i, NULL, hmui_tr (incidents[i].name), hmui_tr (incidents[i].detail), NULL);
  for (guint i = 0; i < n_causes; i++)
    hmui_line_append (self->causes, i, NULL, hmui_tr (causes[i].name), NULL, NULL);
}

/* What was ticked for another machine stays ticked where this one has it too. */
static void
carry_over (HmDiagnosis *from, HmDiagnosis *to)
{
  HmGuide *old = hm_diagnosis_get_guide (from), *new = hm_diagnosis_get_guide (to);
  guint n;
  const HmIncident *incidents = hm_guide_get_incidents (old, &n);
  const HmCause *causes;
  int there;

  for (guint i = 0; i < n; i++)
    if (hm_diagnosis_get_incident (from, i) && (there = hm_guide_find_incident (new, incidents[i].id)) >= 0)
      hm_diagnosis_set_incident (to, there, TRUE);
  causes = hm_guide_get_causes (old, &n);
  for (guint i = 0; i < n; i++)
    if (hm_diagnosis_get_replaced (from, i) && (there = hm_guide_find_cause (new, causes[i].id)) >= 0)
      hm_diagnosis_set_replaced (to, there, TRUE);
}

static void
make_fresh (HmuiChooseModel *self)
{
  g_autoptr(HmDiagnosis) before = g_steal_pointer (&self->fresh);
  g_autoptr(GError) error = NULL;

  if (self->complaint >= 0 && self->layout >= 0)
    {
      self->fresh = hm_diagnosis_new (hmui_diagnose_model_get_knowledge (self->bench),
                                      complaint_at (self, self->complaint)->id, layout_at (self, self->layout)->id, &error);
      if (self->fresh == NULL)
        g_signal_emit_by_name (self->bench, "message", error->message, FALSE);
      else if (before != NULL)
        carry_over (before, self->fresh);
    }
  list_told (self);
}

static const char *
complaint_name (HmuiChooseModel *self, const char *id)
{
  guint n;
  const HmComplaint *all = hm_knowledge_get_complaints (hmui_diagnose_model_get_knowledge (self->bench), &n);

  for (guint i = 0; i < n; i++)
    if (g_str_equal (all[i].id, id))
      return hmui_tr (all[i].name);
  return id;
}

static const char *
layout_name (HmuiChooseModel *self, const char *id)
{
  guint n;
  const HmLayout *all = hm_knowledge_get_layouts (hmui_diagnose_model_get_knowledge (self->bench), &n);

  for (guint i = 0; i < n; i++)
    if (g_str_equal (all[i].id, id))
      return hmui_tr (all[i].name);
  return id;
}

static void
list_open (HmuiChooseModel *self)
{
  gint64 now = g_get_real_time () / G_USEC_PER_SEC;

  g_list_store_remove_all (self->open);
  for (guint i = 0; i < self->rows->len; i++)
    {
      const HmDiagnosisRow *row = g_ptr_array_index (self->rows, i);
      g_autofree char *title = g_strdup_printf (_("%s · %s"), complaint_name (self, row->complaint),
                                                layout_name (self, row->layout));
      g_autofree char *when = hmui_words_when (row->changed_at, now);
      g_autofree char *spent = hmui_words_minutes (row->minutes_spent);
      g_autofree char *steps = g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%u step", "%u steps", row->n_entries),
                                                row->n_entries);
      g_autofree char *detail = g_strdup_printf (_("%s · %s · %s spent"), when, steps, spent);

      hmui_line_append (self->open, i, NULL, title, detail, NULL);
    }
}

static void
listed_cb (GObject *source, GAsyncResult *result, gpointer user_data)
{
  g_autoptr(HmuiChooseModel) self = user_data;
  g_autoptr(GError) error = NULL;
  GPtrArray *rows = hmui_shop_list_finish (HMUI_SHOP (source), result, &error);

  if (rows == NULL)
    {
      g_autofree char *text = g_strdup_printf (_("What the shop has kept cannot be read: %s"), error->message);

      g_signal_emit_by_name (self->bench, "message", text, FALSE);
      return;
    }
  g_clear_pointer (&self->rows, g_ptr_array_unref);
  self->rows = rows;
  list_open (self);
  emit_changed (self);
}

static void
hmui_choose_model_finalize (GObject *object)
{
  HmuiChooseModel *self = HMUI_CHOOSE_MODEL (object);

  g_clear_object (&self->fresh);
  g_clear_pointer (&self->rows, g_ptr_array_unref);
  g_object_unref (self->complaints);
  g_object_unref (self->layouts);
  g_object_unref (self->incidents);
  g_object_unref (self->causes);
  g_object_unref (self->open);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_choose_model_parent_class)->finalize (object);
}

static void
hmui_choose_model_class_init (HmuiChooseModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_choose_model_finalize;
  g_signal_new ("changed", HMUI_TYPE_CHOOSE_MODEL, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hmui_choose_model_init (HmuiChooseModel *self)
{
  self->complaints = g_list_store_new (HMUI_TYPE_LINE);
  self->layouts = g_list_store_new (HMUI_TYPE_LINE);
  self->incidents = g_list_store_new (HMUI_TYPE_LINE);
  self->causes = g_list_store_new (HMUI_TYPE_LINE);
  self->open = g_list_store_new (HMUI_TYPE_LINE);
  self->complaint = self->layout = -1;
}

/* The machine of the last diagnosis, where the knowledge still has it. */
static int
find_last_machine (HmuiChooseModel *self)
{
  g_autofree char *last = NULL;
  guint n;
  const HmLayout *all = hm_knowledge_get_layouts (hmui_diagnose_model_get_knowledge (self->bench), &n);

  g_object_get (hmui_diagnose_model_get_settings (self->bench), "last-machine", &last, NULL);
  for (guint i = 0; i < n; i++)
    if (g_strcmp0 (all[i].id, last) == 0 && has_complaints (self, i))
      return i;
  return -1;
}

HmuiChooseModel *
hmui_choose_model_new (HmuiDiagnoseModel *bench)
{
  HmuiChooseModel *self = g_object_new (HMUI_TYPE_CHOOSE_MODEL, NULL);

  self->bench = g_object_ref (bench);
  return self;
}

void
hmui_choose_model_refresh (HmuiChooseModel *self)
{
  guint n;

  if (hmui_diagnose_model_get_knowledge (self->bench) == NULL)
    return;
  g_clear_object (&self->fresh);
  hm_knowledge_get_complaints (hmui_diagnose_model_get_knowledge (self->bench), &n);
  self->complaint = n == 1 ? 0 : -1;
  self->layout = find_last_machine (self);
  list_layouts (self);
  list_complaints (self);
  make_fresh (self);
  emit_changed (self);
  hmui_shop_list_async (hmui_diagnose_model_get_shop (self->bench), listed_cb, g_object_ref (self));
}

GListModel *
hmui_choose_model_get_complaints (HmuiChooseModel *self)
{
  return G_LIST_MODEL (self->complaints);
}

GListModel *
hmui_choose_model_get_layouts (HmuiChooseModel *self)
{
  return G_LIST_MODEL (self->layouts);
}

GListModel *
hmui_choose_model_get_incidents (HmuiChooseModel *self)
{
  return G_LIST_MODEL (self->incidents);
}

GListModel *
hmui_choose_model_get_causes (HmuiChooseModel *self)
{
  return G_LIST_MODEL (self->causes);
}

GListModel *
hmui_choose_model_get_open (HmuiChooseModel *self)
{
  return G_LIST_MODEL (self->open);
}

int
hmui_choose_model_get_complaint (HmuiChooseModel *self)
{
  return self->complaint;
}

int
hmui_choose_model_get_layout (HmuiChooseModel *self)
{
  return self->layout;
}

gboolean
hmui_choose_model_has_complaint (HmuiChooseModel *self, guint complaint)
{
  return self->layout < 0 || is_covered (self, complaint, self->layout);
}

gboolean
hmui_choose_model_get_incident (HmuiChooseModel *self, guint incident)
{
  return self->fresh != NULL && hm_diagnosis_get_incident (self->fresh, incident);
}

gboolean
hmui_choose_model_get_replaced (HmuiChooseModel *self, guint cause)
{
  return self->fresh != NULL && hm_diagnosis_get_replaced (self->fresh, cause);
}

void
hmui_choose_model_set_complaint (HmuiChooseModel *self, guint complaint)
{
  if (self->complaint == (int) complaint)
    return;
  self->complaint = complaint;
  make_fresh (self);
  emit_changed (self);
}

void
hmui_choose_model_set_layout (HmuiChooseModel *self, guint layout)
{
  if (self->layout == (int) layout)
    return;
  self->layout = layout;
  if (self->complaint >= 0 && !is_covered (self, self->complaint, layout))
    self->complaint = -1;
  make_fresh (self);
  emit_changed (self);
}

void
hmui_choose_model_set_incident (HmuiChooseModel *self, guint incident, gboolean happened)
{
  if (self->fresh != NULL)
    hm_diagnosis_set_incident (self->fresh, incident, happened);
}

void
hmui_choose_model_set_replaced (HmuiChooseModel *self, guint cause, gboolean replaced)
{
  if (self->fresh != NULL)
    hm_diagnosis_set_replaced (self->fresh, cause, replaced);
}

gboolean
hmui_choose_model_can_start (HmuiChooseModel *self)
{
  return self->fresh != NULL;
}

void
hmui_choose_model_start (HmuiChooseModel *self)
{
  g_return_if_fail (hmui_choose_model_can_start (self));
  g_object_set (hmui_diagnose_model_get_settings (self->bench), "last-machine", layout_at (self, self->layout)->id, NULL);
  hmui_diagnose_model_start (self->bench, g_steal_pointer (&self->fresh));
}

void
hmui_choose_model_go_on (HmuiChooseModel *self, guint open)
{
  const HmDiagnosisRow *row;

  g_return_if_fail (self->rows != NULL && open < self->rows->len);
  row = g_ptr_array_index (self->rows, open);
  hmui_diagnose_model_resume (self->bench, row->id);
}
