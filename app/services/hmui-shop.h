/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include <gio/gio.h>
#include "hm-shop-store.h"
G_BEGIN_DECLS

/*
 * The shop's own store, off the main thread: one call after the other on one worker, in the order they were asked.
 * The file is opened at the first call.
 */
#define HMUI_TYPE_SHOP (hmui_shop_get_type ())
G_DECLARE_FINAL_TYPE (HmuiShop, hmui_shop, HMUI, SHOP, GObject)

HmuiShop *hmui_shop_new (const char *folder);

/**
 * hmui_shop_save_async:
 * @diagnosis: nobody may touch it until the answer has come
 * @id: 0 for a new one
 */
void       hmui_shop_save_async  (HmuiShop *self, HmDiagnosis *diagnosis, gint64 id, GAsyncReadyCallback callback, gpointer user_data);
gboolean   hmui_shop_save_finish (HmuiShop *self, GAsyncResult *result, gint64 *id, GError **error) G_GNUC_WARN_UNUSED_RESULT;

/** The diagnoses not yet closed, newest change first. */
void       hmui_shop_list_async  (HmuiShop *self, GAsyncReadyCallback callback, gpointer user_data);
GPtrArray *hmui_shop_list_finish (HmuiShop *self, GAsyncResult *result, GError **error);   /* (transfer full) of HmDiagnosisRow */

void       hmui_shop_load_async  (HmuiShop *self, gint64 id, GAsyncReadyCallback callback, gpointer user_data);
char      *hmui_shop_load_finish (HmuiShop *self, GAsyncResult *result, GError **error);   /* (transfer full): JSON */

/** hmui_shop_flush: returns when everything asked for is on disk. For the end of the program. */
void       hmui_shop_flush (HmuiShop *self);

G_END_DECLS
