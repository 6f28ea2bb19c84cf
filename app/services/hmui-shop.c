/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-shop.h"

struct _HmuiShop
{
  GObject parent_instance;
  char *folder;                   /* owned */
  HmShopStore *store;             /* owned; the worker's, NULL until its first call */
  GQueue *waiting;                /* owned, of owned GTask */
  gboolean working;
};

/* What a task was asked to do; its task data. */
typedef struct {
  GTaskThreadFunc work;
  HmDiagnosis *diagnosis;         /* owned, or NULL */
  gint64 id;
} Request;

G_DEFINE_FINAL_TYPE (HmuiShop, hmui_shop, G_TYPE_OBJECT)

static void
request_free (Request *self)
{
  g_clear_object (&self->diagnosis);
  g_free (self);
}

static gboolean
ensure_store (HmuiShop *self, GTask *task)
{
  GError *error = NULL;

  if (self->store == NULL)
    self->store = hm_shop_store_open (self->folder, &error);
  if (self->store == NULL)
    g_task_return_error (task, error);
  return self->store != NULL;
}

static void
save_work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  HmuiShop *self = source;
  Request *request = data;
  gint64 now = g_get_real_time () / G_USEC_PER_SEC;
  GError *error = NULL;

  if (!ensure_store (self, task))
    return;
  if (hm_shop_store_save_diagnosis (self->store, &request->id, request->diagnosis, now, &error))
    g_task_return_boolean (task, TRUE);
  else
    g_task_return_error (task, error);
}

static void
list_work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  HmuiShop *self = source;
  GPtrArray *rows;
  GError *error = NULL;

  if (!ensure_store (self, task))
    return;
  rows = hm_shop_store_list_diagnoses (self->store, TRUE, &error);
  if (rows != NULL)
    g_task_return_pointer (task, rows, (GDestroyNotify) g_ptr_array_unref);
  else
    g_task_return_error (task, error);
}

static void
load_work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  HmuiShop *self = source;
  Request *request = data;
  char *json;
  GError *error = NULL;

  if (!ensure_store (self, task))
    return;
  json = hm_shop_store_load_diagnosis (self->store, request->id, &error);
  if (json != NULL)
    g_task_return_pointer (task, json, g_free);
  else
    g_task_return_error (task, error);
}

static void
start_next (HmuiShop *self)
{
  g_autoptr(GTask) task = self->working ? NULL : g_queue_pop_head (self->waiting);
  Request *request;

  if (task == NULL)
    return;
  request = g_task_get_task_data (task);
  self->working = TRUE;
  g_task_run_in_thread (task, request->work);
}

static void
task_completed_cb (GTask *task, GParamSpec *pspec, HmuiShop *self)
{
  self->working = FALSE;
  start_next (self);
}

static void
ask (HmuiShop *self, GTaskThreadFunc work, HmDiagnosis *diagnosis, gint64 id, GAsyncReadyCallback callback, gpointer user_data)
{
  GTask *task = g_task_new (self, NULL, callback, user_data);
  Request *request = g_new0 (Request, 1);

  request->work = work;
  request->diagnosis = diagnosis != NULL ? g_object_ref (diagnosis) : NULL;
  request->id = id;
  g_task_set_task_data (task, request, (GDestroyNotify) request_free);
  g_signal_connect_object (task, "notify::completed", G_CALLBACK (task_completed_cb), self, 0);
  g_queue_push_tail (self->waiting, task);
  start_next (self);
}

static void
hmui_shop_finalize (GObject *object)
{
  HmuiShop *self = HMUI_SHOP (object);

  g_queue_free_full (self->waiting, g_object_unref);   /* empty: a waiting task holds a reference on its shop */
  g_clear_pointer (&self->store, hm_shop_store_close);
  g_free (self->folder);
  G_OBJECT_CLASS (hmui_shop_parent_class)->finalize (object);
}

static void
hmui_shop_class_init (HmuiShopClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_shop_finalize;
}

static void
hmui_shop_init (HmuiShop *self)
{
  self->waiting = g_queue_new ();
}

HmuiShop *
hmui_shop_new (const char *folder)
{
  HmuiShop *self = g_object_new (HMUI_TYPE_SHOP, NULL);

  self->folder = g_strdup (folder);
  return self;
}

void
hmui_shop_save_async (HmuiShop *self, HmDiagnosis *diagnosis, gint64 id, GAsyncReadyCallback callback, gpointer user_data)
{
  g_return_if_fail (HMUI_IS_SHOP (self) && HM_IS_DIAGNOSIS (diagnosis));
  ask (self, save_work, diagnosis, id, callback, user_data);
}

gboolean
hmui_shop_save_finish (HmuiShop *self, GAsyncResult *result, gint64 *id, GError **error)
{
  Request *request = g_task_get_task_data (G_TASK (result));

  if (!g_task_propagate_boolean (G_TASK (result), error))
    return FALSE;
  *id = request->id;
  return TRUE;
}

void
hmui_shop_list_async (HmuiShop *self, GAsyncReadyCallback callback, gpointer user_data)
{
  g_return_if_fail (HMUI_IS_SHOP (self));
  ask (self, list_work, NULL, 0, callback, user_data);
}

GPtrArray *
hmui_shop_list_finish (HmuiShop *self, GAsyncResult *result, GError **error)
{
  return g_task_propagate_pointer (G_TASK (result), error);
}

void
hmui_shop_load_async (HmuiShop *self, gint64 id, GAsyncReadyCallback callback, gpointer user_data)
{
  g_return_if_fail (HMUI_IS_SHOP (self));
  ask (self, load_work, NULL, id, callback, user_data);
}

char *
hmui_shop_load_finish (HmuiShop *self, GAsyncResult *result, GError **error)
{
  return g_task_propagate_pointer (G_TASK (result), error);
}

void
hmui_shop_flush (HmuiShop *self)
{
  g_return_if_fail (HMUI_IS_SHOP (self));
  while (self->working || !g_queue_is_empty (self->waiting))
    g_main_context_iteration (NULL, TRUE);
}
