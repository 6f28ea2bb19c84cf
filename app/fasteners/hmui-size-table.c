/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-size-table.h"
#include "hm-size.h"
#include "hm-tap.h"
#include "hm-pitch-text.h"
#include "hmui-tr.h"
#include "hmui-words-fit.h"
#include "hmui-words-thread.h"
#include <glib/gi18n.h>

struct _HmuiSizeRow
{
  GObject parent_instance;
  char *text[HMUI_SIZE_TABLE_MAX_COLUMNS];     /* owned */
  double key[HMUI_SIZE_TABLE_MAX_COLUMNS];     /* what it sorts by; 0: by its text */
  char *target;                                /* owned */
};

G_DEFINE_FINAL_TYPE (HmuiSizeRow, hmui_size_row, G_TYPE_OBJECT)

static void
hmui_size_row_finalize (GObject *object)
{
  HmuiSizeRow *self = HMUI_SIZE_ROW (object);

  for (guint i = 0; i < HMUI_SIZE_TABLE_MAX_COLUMNS; i++)
    g_free (self->text[i]);
  g_free (self->target);
  G_OBJECT_CLASS (hmui_size_row_parent_class)->finalize (object);
}

static void
hmui_size_row_class_init (HmuiSizeRowClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hmui_size_row_finalize;
}

static void
hmui_size_row_init (HmuiSizeRow *self)
{
}

const char *
hmui_size_row_get_text (HmuiSizeRow *self, guint column)
{
  g_return_val_if_fail (column < HMUI_SIZE_TABLE_MAX_COLUMNS, "");
  return self->text[column] != NULL ? self->text[column] : "";
}

const char *
hmui_size_row_get_target (HmuiSizeRow *self)
{
  return self->target;
}

int
hmui_size_row_compare (HmuiSizeRow *a, HmuiSizeRow *b, guint column)
{
  double first = a->key[column], second = b->key[column];

  if (first > 0.0 || second > 0.0)
    return first < second ? -1 : first > second;
  return g_utf8_collate (hmui_size_row_get_text (a, column), hmui_size_row_get_text (b, column));
}

const char *
hmui_size_table_title (HmuiSizeTableKind kind)
{
  switch (kind)
    {
    case HMUI_SIZE_TABLE_HEADS: return _("Heads and keys");
    case HMUI_SIZE_TABLE_HEXALOBULAR: return _("Hexalobular");
    case HMUI_SIZE_TABLE_SOCKETS: return _("Sockets");
    case HMUI_SIZE_TABLE_THREADS:
    case HMUI_SIZE_TABLE_N:
    default: return _("Threads");
    }
}

static const char * const columns[HMUI_SIZE_TABLE_N][HMUI_SIZE_TABLE_MAX_COLUMNS + 1] = {
  [HMUI_SIZE_TABLE_THREADS] = { N_("Thread"), N_("Major diameter"), N_("Pitch"), N_("Tap drill"), N_("Series"), N_("Use"), N_("From"), NULL },
  [HMUI_SIZE_TABLE_HEADS] = { N_("Size"), N_("Thread"), N_("Head"), N_("Across flats"), N_("From"), NULL },
  [HMUI_SIZE_TABLE_HEXALOBULAR] = { N_("Size"), N_("Over the points"), N_("Over the hollows"), N_("From"), NULL },
  [HMUI_SIZE_TABLE_SOCKETS] = { N_("Socket"), N_("Nearest of the other system"), N_("On a head of this size"), N_("Opening"), N_("From"), NULL },
};

const char *
hmui_size_table_column (HmuiSizeTableKind kind, guint column)
{
  g_return_val_if_fail ((guint) kind < HMUI_SIZE_TABLE_N && column <= HMUI_SIZE_TABLE_MAX_COLUMNS, NULL);
  return columns[kind][column] != NULL ? _(columns[kind][column]) : NULL;
}

/* Takes @text. */
static void
set_cell (HmuiSizeRow *row, guint column, char *text, double key)
{
  row->text[column] = text;
  row->key[column] = key;
}

static void
set_source (HmuiSizeRow *row, guint column, const HmProvenance *provenance)
{
  const char *source = provenance->source != NULL && provenance->source[0] != '\0' ? provenance->source
                                                                                   : hm_provenance_kind_name (provenance->kind);

  set_cell (row, column, g_strdup (hmui_tr (source)), 0.0);
}

static HmuiSizeRow *
append (GListStore *store)
{
  g_autoptr(HmuiSizeRow) row = g_object_new (HMUI_TYPE_SIZE_ROW, NULL);

  g_list_store_append (store, row);
  return row;                     /* the store has it */
}

static void
add_threads (GListStore *store, const HmTables *tables, const HmFormat *format)
{
  gsize n;
  const HmThreadRow *rows = hm_tables_get_threads (tables, &n);

  for (gsize i = 0; i < n; i++)
    {
      HmuiSizeRow *row = append (store);
      HmThread thread = { rows[i].inch ? HM_THREAD_UNIFIED : HM_THREAD_ISO_METRIC, rows[i].major, rows[i].pitch, FALSE };
      HmFormat own = hmui_words_own (format, rows[i].inch);
      const HmHoleRow *holes = rows[i].series == HM_SERIES_NPT ? NULL : hm_thread_find_holes (&thread, tables);

      set_cell (row, 0, g_strdup (rows[i].name), rows[i].major.mm);
      set_cell (row, 1, hmui_words_length (rows[i].major, &own), rows[i].major.mm);
      set_cell (row, 2, hm_pitch_format (rows[i].pitch, rows[i].inch, format), rows[i].pitch.mm);
      set_cell (row, 3, holes != NULL ? g_strdup (holes->tap_drill_name) : NULL, holes != NULL ? holes->tap_drill.mm : 0.0);
      set_cell (row, 4, g_strdup (hmui_words_series (rows[i].series)), 0.0);
      set_cell (row, 5, g_strdup (hmui_words_use (rows[i].use)), 0.0);
      set_source (row, 6, &rows[i].provenance);
      row->target = g_strdup (rows[i].name);
    }
}

static void
add_heads (GListStore *store, const HmTables *tables, const HmFormat *format)
{
  gsize n;
  const HmHexRow *rows = hm_tables_get_hex (tables, &n);

  for (gsize i = 0; i < n; i++)
    {
      HmuiSizeRow *row = append (store);
      gboolean key = rows[i].min.mm <= 0.0;
      HmDrive drive = { key ? HM_DRIVE_HEX_SOCKET : HM_DRIVE_HEX, rows[i].nominal, 0, rows[i].inch };

      set_cell (row, 0, hmui_words_size (rows[i].nominal, rows[i].inch, format), rows[i].nominal.mm);
      set_cell (row, 1, g_strdup (rows[i].thread), 0.0);
      set_cell (row, 2, g_strdup (hmui_words_head_kind (rows[i].kind)), 0.0);
      set_cell (row, 3, key ? g_strdup (_("key size")) : hmui_words_span (rows[i].min, rows[i].max, format), rows[i].max.mm);
      set_source (row, 4, &rows[i].provenance);
      row->target = hm_drive_format (&drive, format);
    }
}

static void
add_hexalobular (GListStore *store, const HmTables *tables, const HmFormat *format)
{
  gsize n;
  const HmHexalobularRow *rows = hm_tables_get_hexalobular (tables, &n);
  HmFormat metric = hmui_words_own (format, FALSE);

  for (gsize i = 0; i < n; i++)
    {
      HmuiSizeRow *row = append (store);
      HmDrive drive = { rows[i].external ? HM_DRIVE_HEXALOBULAR_EXTERNAL : HM_DRIVE_HEXALOBULAR, { 0.0 }, rows[i].number, FALSE };

      set_cell (row, 0, hm_drive_format (&drive, format), rows[i].number);
      set_cell (row, 1, hmui_words_length (rows[i].a, &metric), rows[i].a.mm);
      set_cell (row, 2, rows[i].b.mm > 0.0 ? hmui_words_length (rows[i].b, &metric) : NULL, rows[i].b.mm);
      set_source (row, 3, &rows[i].provenance);
      row->target = hm_drive_format (&drive, format);
    }
}

/* The nearest size of the other system on a head that this one belongs on. */
static void
set_equivalent (HmuiSizeRow *row, const HmOpeningRow *opening, const HmTables *tables, const HmFormat *format)
{
  HmDrive drive = { HM_DRIVE_HEX, opening->nominal, 0, opening->inch };
  g_autoptr(HmWidthAnswer) answer = hm_width_answer_new (&drive, HM_HEAD_CLEAN, tables);
  g_autoptr(GArray) others = hm_size_equivalents (&answer->head, HM_HEAD_CLEAN, tables);
  const HmSizeFit *nearest = others->len > 0 ? &g_array_index (others, HmSizeFit, 0) : NULL;

  if (nearest == NULL)
    return;
  set_cell (row, 1, hmui_words_size_name (nearest->opening->nominal, nearest->opening->inch, format), nearest->opening->nominal.mm);
  set_cell (row, 2, g_strdup (hmui_words_fit_verdict (nearest->fit.verdict)), 0.0);
}

static void
add_sockets (GListStore *store, const HmTables *tables, const HmFormat *format)
{
  gsize n;
  const HmOpeningRow *rows = hm_tables_get_openings (tables, &n);

  for (gsize i = 0; i < n; i++)
    {
      HmuiSizeRow *row = append (store);

      set_cell (row, 0, hmui_words_size (rows[i].nominal, rows[i].inch, format), rows[i].nominal.mm);
      set_equivalent (row, &rows[i], tables, format);
      set_cell (row, 3, hmui_words_span (rows[i].min, rows[i].max, format), rows[i].min.mm);
      set_source (row, 4, &rows[i].provenance);
      row->target = hmui_words_size_name (rows[i].nominal, rows[i].inch, format);
    }
}

GListModel *
hmui_size_table_rows (HmuiSizeTableKind kind, const HmTables *tables, const HmFormat *format)
{
  GListStore *store = g_list_store_new (HMUI_TYPE_SIZE_ROW);

  switch (kind)
    {
    case HMUI_SIZE_TABLE_HEADS: add_heads (store, tables, format); break;
    case HMUI_SIZE_TABLE_HEXALOBULAR: add_hexalobular (store, tables, format); break;
    case HMUI_SIZE_TABLE_SOCKETS: add_sockets (store, tables, format); break;
    case HMUI_SIZE_TABLE_THREADS:
    case HMUI_SIZE_TABLE_N:
    default: add_threads (store, tables, format); break;
    }
  return G_LIST_MODEL (store);
}
