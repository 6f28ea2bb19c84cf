/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-prepare-model.h"
#include "hmui-tr.h"
#include "hmui-words.h"
#include <glib/gi18n.h>

struct _HmuiPrepareModel
{
  GObject parent_instance;
  HmuiDiagnoseModel *bench;       /* owned */
  HmAction action;
  GPtrArray *cautions;            /* owned; borrowed from the guide */
  GPtrArray *opening;             /* owned; borrowed from the guide */
  GPtrArray *fasteners, *tools;   /* owned, NULL-terminated; borrowed from the guide: of the action itself */
};

G_DEFINE_FINAL_TYPE (HmuiPrepareModel, hmui_prepare_model, G_TYPE_OBJECT)

static HmGuide *
guide (HmuiPrepareModel *self)
{
  return hmui_diagnose_model_get_guide (self->bench);
}

static void
append_new (GPtrArray *list, gconstpointer item)
{
  if (!g_ptr_array_find (list, item, NULL))
    g_ptr_array_add (list, (gpointer) item);
}

static void
append_all (GPtrArray *list, gconstpointer const *items)
{
  for (; items != NULL && *items != NULL; items++)
    append_new (list, *items);
}

static void
read_action (HmuiPrepareModel *self)
{
  const HmCheck *checks = hm_guide_get_checks (guide (self), NULL);
  const HmCause *causes = hm_guide_get_causes (guide (self), NULL);

  if (self->action.kind == HM_ACTION_CHECK)
    {
      append_all (self->cautions, (gconstpointer const *) checks[self->action.check].cautions);
      append_all (self->tools, (gconstpointer const *) checks[self->action.check].tools);
    }
  for (guint k = 0; self->action.kind == HM_ACTION_REPAIR && k < self->action.n_causes; k++)
    {
      const HmRemedy *remedy = causes[self->action.causes[k]].remedy;

      append_all (self->cautions, (gconstpointer const *) remedy->cautions);
      append_all (self->tools, (gconstpointer const *) remedy->tools);
      append_all (self->fasteners, (gconstpointer const *) remedy->fasteners);
    }
}

static HmAccessSet
to_open (HmuiPrepareModel *self)
{
  return hm_diagnosis_get_to_open (hmui_diagnose_model_get_diagnosis (self->bench), &self->action);
}

static void
read_access (HmuiPrepareModel *self)
{
  const HmAccessStep *steps = hm_guide_get_access (guide (self), NULL);
  guint order[HM_GUIDE_MAX_ACCESS], n = hm_access_order (guide (self), to_open (self), order);

  for (guint i = 0; i < n; i++)
    {
      g_ptr_array_add (self->opening, (gpointer) &steps[order[i]]);
      append_all (self->cautions, (gconstpointer const *) steps[order[i]].cautions);
    }
}

static int
serious_first (gconstpointer left, gconstpointer right)
{
  const HmCaution *a = *(const HmCaution * const *) left, *b = *(const HmCaution * const *) right;

  return b->serious - a->serious;
}

static void
hmui_prepare_model_finalize (GObject *object)
{
  HmuiPrepareModel *self = HMUI_PREPARE_MODEL (object);

  g_ptr_array_unref (self->cautions);
  g_ptr_array_unref (self->opening);
  g_ptr_array_unref (self->fasteners);
  g_ptr_array_unref (self->tools);
  g_clear_object (&self->bench);
  G_OBJECT_CLASS (hmui_prepare_model_parent_class)->finalize (object);
}

static void
hmui_prepare_model_class_init (HmuiPrepareModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_prepare_model_finalize;
}

static void
hmui_prepare_model_init (HmuiPrepareModel *self)
{
  self->cautions = g_ptr_array_new ();
  self->opening = g_ptr_array_new ();
  self->fasteners = g_ptr_array_new ();
  self->tools = g_ptr_array_new ();
}

HmuiPrepareModel *
hmui_prepare_model_new (HmuiDiagnoseModel *bench)
{
  HmuiPrepareModel *self = g_object_new (HMUI_TYPE_PREPARE_MODEL, NULL);

  self->bench = g_object_ref (bench);
  return self;
}

void
hmui_prepare_model_set_action (HmuiPrepareModel *self, const HmAction *action)
{
  self->action = *action;
  g_ptr_array_set_size (self->cautions, 0);
  g_ptr_array_set_size (self->opening, 0);
  g_ptr_array_set_size (self->fasteners, 0);
  g_ptr_array_set_size (self->tools, 0);
  read_action (self);
  read_access (self);
  g_ptr_array_sort (self->cautions, serious_first);
  g_ptr_array_add (self->fasteners, NULL);
  g_ptr_array_add (self->tools, NULL);
}

GPtrArray *
hmui_prepare_model_get_cautions (HmuiPrepareModel *self)
{
  return self->cautions;
}

gboolean
hmui_prepare_model_get_acknowledged (HmuiPrepareModel *self, const HmCaution *caution)
{
  g_autofree char *id = g_strdup_printf ("caution:%s", caution->id);

  return hmui_diagnose_model_get_tick (self->bench, id);
}

void
hmui_prepare_model_set_acknowledged (HmuiPrepareModel *self, const HmCaution *caution, gboolean done)
{
  g_autofree char *id = g_strdup_printf ("caution:%s", caution->id);

  if (hmui_prepare_model_get_acknowledged (self, caution) != done)
    hmui_diagnose_model_set_tick (self->bench, id, done);
}

gboolean
hmui_prepare_model_is_released (HmuiPrepareModel *self)
{
  for (guint i = 0; i < self->cautions->len; i++)
    {
      const HmCaution *caution = g_ptr_array_index (self->cautions, i);

      if (caution->serious && !hmui_prepare_model_get_acknowledged (self, caution))
        return FALSE;
    }
  return TRUE;
}

GPtrArray *
hmui_prepare_model_get_opening (HmuiPrepareModel *self)
{
  return self->opening;
}

static char *
join (GPtrArray *texts, const char *between)
{
  g_autoptr(GString) joined = g_string_new (NULL);

  for (guint i = 0; i < texts->len; i++)
    g_string_append_printf (joined, "%s%s", i > 0 ? between : "", (const char *) g_ptr_array_index (texts, i));
  return joined->len > 0 ? g_string_free (g_steal_pointer (&joined), FALSE) : NULL;
}

char *
hmui_prepare_model_dup_tools (HmuiPrepareModel *self)
{
  HmFormat format = hmui_diagnose_model_get_format (self->bench);
  g_autoptr(GPtrArray) tools = hm_access_tools (guide (self), to_open (self),
                                                (const HmFastener * const *) (gpointer) self->fasteners->pdata,
                                                (const HmTool * const *) (gpointer) self->tools->pdata, &format);
  g_autoptr(GPtrArray) translated = g_ptr_array_new ();

  for (guint i = 0; i < tools->len; i++)
    g_ptr_array_add (translated, (gpointer) hmui_tr (g_ptr_array_index (tools, i)));
  return join (translated, " · ");
}

char *
hmui_prepare_model_dup_open (HmuiPrepareModel *self)
{
  g_autoptr(GPtrArray) names = g_ptr_array_new ();
  g_autofree char *joined = NULL, *time = NULL;

  for (guint i = 0; i < self->opening->len; i++)
    g_ptr_array_add (names, (gpointer) hmui_tr (((const HmAccessStep *) g_ptr_array_index (self->opening, i))->name));
  joined = join (names, " · ");
  if (joined == NULL)
    return NULL;
  time = hmui_words_minutes (hm_access_open_time (guide (self), to_open (self)).minutes);
  return g_strdup_printf (_("%s: %s (paid once)"), joined, time);
}

char *
hmui_prepare_model_dup_shut (HmuiPrepareModel *self)
{
  const HmAccessStep *steps = hm_guide_get_access (guide (self), NULL);
  const HmCheck *check;
  HmAccessSet shut;
  g_autoptr(GPtrArray) names = g_ptr_array_new ();
  guint order[HM_GUIDE_MAX_ACCESS], n;

  if (self->action.kind != HM_ACTION_CHECK)
    return NULL;
  check = &hm_guide_get_checks (guide (self), NULL)[self->action.check];
  shut = hm_access_dependents (guide (self), hm_access_need (guide (self), check->closed, check->n_closed))
         & hm_diagnosis_get_open (hmui_diagnose_model_get_diagnosis (self->bench));
  n = check->n_closed > 0 ? hm_access_order (guide (self), shut, order) : 0;
  for (guint left = n; left > 0; left--)
    g_ptr_array_add (names, (gpointer) hmui_tr (steps[order[left - 1]].name));
  return join (names, " · ");
}

gboolean
hmui_prepare_model_get_torque (HmuiPrepareModel *self, const HmFastener *fastener, HmTorqueAnswer *out)
{
  const HmTables *tables = hm_knowledge_get_tables (hmui_diagnose_model_get_knowledge (self->bench));
  g_autoptr(GError) error = NULL;

  return hm_torque_for_fastener (tables, fastener, out, &error);
}

HmuiDiagnoseModel *
hmui_prepare_model_get_bench (HmuiPrepareModel *self)
{
  return self->bench;
}
