/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once
#include "hm-diagnosis.h"
G_BEGIN_DECLS

/*
 * What the shop enters: for now the diagnoses under way. Every call is on disk (WAL, synchronous=FULL) when it returns.
 */
typedef struct _HmShopStore HmShopStore;

/** hm_shop_store_open: @folder is made with mode 0700 when missing. NULL with %HM_STORE_ERROR */
HmShopStore *hm_shop_store_open (const char *folder, GError **error);
void         hm_shop_store_close (HmShopStore *self);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (HmShopStore, hm_shop_store_close)

/** HmDiagnosisRow: one diagnosis in a list; strings are owned by the row. */
typedef struct { gint64 id; char *complaint, *layout; gint64 changed_at; gboolean closed; guint n_entries; double minutes_spent; } HmDiagnosisRow;
void hm_diagnosis_row_free (HmDiagnosisRow *self);

/**
 * hm_shop_store_save_diagnosis:
 * @id: (inout): 0 for a new one
 * @now: unix seconds; core reads no clock
 */
gboolean hm_shop_store_save_diagnosis (HmShopStore *self, gint64 *id, HmDiagnosis *diagnosis, gint64 now, GError **error) G_GNUC_WARN_UNUSED_RESULT;
/** Newest change first. (transfer full) (element-type HmDiagnosisRow) */
GPtrArray *hm_shop_store_list_diagnoses (HmShopStore *self, gboolean open_only, GError **error);
char *hm_shop_store_load_diagnosis (HmShopStore *self, gint64 id, GError **error);   /* the JSON; NULL with @error */
gboolean hm_shop_store_delete_diagnosis (HmShopStore *self, gint64 id, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
