/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-order-model.h"
#include "hmui-tr.h"
#include "hmui-words-torque.h"
#include <glib/gi18n.h>
#include <string.h>

#define FIRST_BOLTS 6

struct _HmuiOrderModel
{
  GObject parent_instance;
  HmuiSettings *settings;         /* owned */
  HmTables *tables;               /* owned, may be NULL */
  HmTorque full;
  guint layout, n_bolts, scheme;
  HmSequence sequence;
};

G_DEFINE_FINAL_TYPE (HmuiOrderModel, hmui_order_model, G_TYPE_OBJECT)

static void
refresh (HmuiOrderModel *self)
{
  if (!hm_sequence_init (&self->sequence, (HmBoltLayout) self->layout, self->n_bolts))
    self->n_bolts = self->sequence.n_bolts;   /* out of range: the last good one stays */
  g_signal_emit_by_name (self, "changed");
}

static void
hmui_order_model_finalize (GObject *object)
{
  HmuiOrderModel *self = HMUI_ORDER_MODEL (object);

  g_clear_object (&self->settings);
  g_clear_pointer (&self->tables, hm_tables_unref);
  G_OBJECT_CLASS (hmui_order_model_parent_class)->finalize (object);
}

static void
hmui_order_model_class_init (HmuiOrderModelClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_order_model_finalize;
  g_signal_new ("changed", HMUI_TYPE_ORDER_MODEL, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hmui_order_model_init (HmuiOrderModel *self)
{
  self->n_bolts = FIRST_BOLTS;
}

HmuiOrderModel *
hmui_order_model_new (HmuiSettings *settings)
{
  HmuiOrderModel *self = g_object_new (HMUI_TYPE_ORDER_MODEL, NULL);

  self->settings = g_object_ref (settings);
  g_signal_connect_object (settings, "notify::units", G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  refresh (self);
  return self;
}

void
hmui_order_model_set_tables (HmuiOrderModel *self, const HmTables *tables)
{
  g_clear_pointer (&self->tables, hm_tables_unref);
  if (tables != NULL)
    self->tables = hm_tables_ref ((HmTables *) tables);
  refresh (self);
}

void
hmui_order_model_set_torque (HmuiOrderModel *self, HmTorque full)
{
  if (!(full.newton_metres < self->full.newton_metres) && !(full.newton_metres > self->full.newton_metres))
    return;
  self->full = full;
  refresh (self);
}

void
hmui_order_model_set_layout (HmuiOrderModel *self, guint layout)
{
  if (self->layout == layout || layout > HM_LAYOUT_INLINE)
    return;
  self->layout = layout;
  refresh (self);
}

void
hmui_order_model_set_bolts (HmuiOrderModel *self, guint n_bolts)
{
  if (self->n_bolts == n_bolts)
    return;
  self->n_bolts = n_bolts;
  refresh (self);
}

void
hmui_order_model_set_scheme (HmuiOrderModel *self, guint scheme)
{
  if (self->scheme == scheme)
    return;
  self->scheme = scheme;
  refresh (self);
}

guint
hmui_order_model_get_layout (HmuiOrderModel *self)
{
  return self->layout;
}

guint
hmui_order_model_get_scheme (HmuiOrderModel *self)
{
  return self->scheme;
}

/* The @nth scheme of the table; NULL when there are fewer. */
static const char *
find_scheme (HmuiOrderModel *self, guint nth)
{
  gsize n = 0;
  const HmPassRow *rows = self->tables != NULL ? hm_tables_get_passes (self->tables, &n) : NULL;

  for (gsize i = 0; i < n; i++)
    if (i == 0 || strcmp (rows[i].scheme, rows[i - 1].scheme) != 0)
      if (nth-- == 0)
        return rows[i].scheme;
  return NULL;
}

static const HmPassRow *
find_passes (HmuiOrderModel *self, gsize *n)
{
  const char *scheme = find_scheme (self, self->scheme);

  *n = 0;
  return scheme != NULL ? hm_sequence_passes (self->tables, scheme, n) : NULL;
}

GStrv
hmui_order_model_dup_layouts (HmuiOrderModel *self)
{
  GPtrArray *list = g_ptr_array_new ();

  for (HmBoltLayout layout = HM_LAYOUT_ROUND; layout <= HM_LAYOUT_INLINE; layout++)
    g_ptr_array_add (list, g_strdup (hmui_words_bolt_layout (layout)));
  g_ptr_array_add (list, NULL);
  return (GStrv) g_ptr_array_free (list, FALSE);
}

GStrv
hmui_order_model_dup_schemes (HmuiOrderModel *self)
{
  GPtrArray *list = g_ptr_array_new ();
  const char *scheme;

  for (guint i = 0; (scheme = find_scheme (self, i)) != NULL; i++)
    g_ptr_array_add (list, g_strdup (hmui_tr (scheme)));
  g_ptr_array_add (list, NULL);
  return (GStrv) g_ptr_array_free (list, FALSE);
}

const HmSequence *
hmui_order_model_get_sequence (HmuiOrderModel *self)
{
  return &self->sequence;
}

HmPattern
hmui_order_model_get_pattern (HmuiOrderModel *self)
{
  switch (self->sequence.layout)
    {
    case HM_LAYOUT_RECTANGULAR: return HM_PATTERN_RECTANGULAR;
    case HM_LAYOUT_TWO_ROWS: return HM_PATTERN_CROSS;
    case HM_LAYOUT_INLINE: return HM_PATTERN_INLINE;
    case HM_LAYOUT_ROUND:
    default: return HM_PATTERN_ROUND;
    }
}

GStrv
hmui_order_model_dup_passes (HmuiOrderModel *self, gboolean with_torque)
{
  HmFormat format = hmui_settings_get_format (self->settings);
  GPtrArray *list = g_ptr_array_new ();
  gsize n;
  const HmPassRow *passes = find_passes (self, &n);
  HmTorque full = { with_torque ? self->full.newton_metres : 0.0 };

  for (gsize i = 0; i < n; i++)
    g_ptr_array_add (list, hmui_words_pass (&passes[i], full, &format));
  g_ptr_array_add (list, NULL);
  return (GStrv) g_ptr_array_free (list, FALSE);
}

char *
hmui_order_model_dup_note (HmuiOrderModel *self)
{
  const char *rule = _("Snug all by hand first. Each pass goes through all numbers. Loosen in the reverse order.");

  if (self->sequence.layout != (HmBoltLayout) self->layout)
    return g_strdup_printf (_("An odd number cannot stand in two rows: it is drawn round. %s"), rule);
  return g_strdup (rule);
}

gboolean
hmui_order_model_get_provenance (HmuiOrderModel *self, HmProvenance *out)
{
  gsize n;
  const HmPassRow *passes = find_passes (self, &n);

  if (n == 0)
    return FALSE;
  *out = passes[0].provenance;
  return TRUE;
}
