/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-size-table.h"
#include "hm-unit.h"
#include <glib/gi18n.h>
#include <string.h>

#define MOST_WORDS 32

/* The units of a column whose cells have both; NULL where they have none, or write it in full. */
static const char * const lengths[HMUI_SIZE_TABLE_N][HMUI_SIZE_TABLE_MAX_COLUMNS] = {
  [HMUI_SIZE_TABLE_THREADS] = { NULL, "in", "tpi" },
  [HMUI_SIZE_TABLE_HEADS] = { "in", NULL, NULL, "in" },
  [HMUI_SIZE_TABLE_HEXALOBULAR] = { NULL, "in", "in" },
  [HMUI_SIZE_TABLE_SOCKETS] = { "in", NULL, NULL, "in" },
};

/* Lower case, plain blanks, "x" for "×". */
static char *
fold (const char *text)
{
  g_autofree char *lower = g_utf8_casefold (text, -1);
  g_autoptr(GString) folded = g_string_new (lower);

  g_string_replace (folded, "\302\240", " ", 0);
  g_string_replace (folded, "×", "x", 0);
  return g_strstrip (g_string_free (g_steal_pointer (&folded), FALSE));
}

/* Whether @word stands in @text with nothing before it that it would be the end of: "16" is not in "5/16", nor "9" in "19". */
static gboolean
has_word (const char *text, const char *word)
{
  for (const char *at = strstr (text, word); at != NULL; at = strstr (at + 1, word))
    if (at == text || (!g_ascii_isalnum (at[-1]) && strchr (".,/", at[-1]) == NULL))
      return TRUE;
  return FALSE;
}

static gboolean
is_unit (const char *word)
{
  return word != NULL && (g_str_equal (word, "mm") || g_str_equal (word, "in") || g_str_equal (word, "tpi"));
}

gboolean
hmui_size_row_matches (HmuiSizeRow *self, const char *words)
{
  g_autofree char *wanted = fold (words), *text = NULL;
  g_auto(GStrv) parts = g_strsplit (wanted, " ", MOST_WORDS);
  g_autoptr(GString) row = g_string_new (NULL);

  for (guint i = 0; i < HMUI_SIZE_TABLE_MAX_COLUMNS; i++)
    g_string_append_printf (row, "%s\n", hmui_size_row_get_text (self, i));
  text = fold (row->str);
  for (guint i = 0; parts[i] != NULL; i++)
    {
      gboolean with_unit = g_ascii_isdigit (parts[i][0]) && is_unit (parts[i + 1]);
      g_autofree char *word = with_unit ? g_strdup_printf ("%s %s", parts[i], parts[i + 1]) : g_strdup (parts[i]);

      if (!has_word (text, word))
        return FALSE;
      i += with_unit ? 1 : 0;
    }
  return TRUE;
}

static void
append_cell (GString *text, guint column, const char *cell)
{
  g_autoptr(GString) plain = g_string_new (cell);

  g_string_replace (plain, "\302\240", " ", 0);
  g_string_replace (plain, "\t", " ", 0);
  g_string_replace (plain, "\n", " ", 0);
  g_string_append_printf (text, "%s%s", column > 0 ? "\t" : "", plain->str);
}

static void
append_heading (GString *text, HmuiSizeTableKind kind, guint column)
{
  const char *other = lengths[kind][column];
  g_autofree char *with_units = NULL;

  if (other != NULL)   /* Translators: a heading and the two units that its cells are in */
    with_units = g_strdup_printf (_("%s (%s, %s)"), hmui_size_table_column (kind, column), hm_unit_symbol (HM_UNIT_MM), other);
  append_cell (text, column, with_units != NULL ? with_units : hmui_size_table_column (kind, column));
}

char *
hmui_size_table_to_text (HmuiSizeTableKind kind, GListModel *rows)
{
  g_autoptr(GString) text = g_string_new (NULL);
  guint n_columns = 0;

  g_return_val_if_fail ((guint) kind < HMUI_SIZE_TABLE_N && G_IS_LIST_MODEL (rows), NULL);
  for (; hmui_size_table_column (kind, n_columns) != NULL; n_columns++)
    append_heading (text, kind, n_columns);
  g_string_append_c (text, '\n');
  for (guint i = 0; i < g_list_model_get_n_items (rows); i++)
    {
      g_autoptr(HmuiSizeRow) row = g_list_model_get_item (rows, i);

      for (guint column = 0; column < n_columns; column++)
        append_cell (text, column, hmui_size_row_get_text (row, column));
      g_string_append_c (text, '\n');
    }
  return g_string_free (g_steal_pointer (&text), FALSE);
}
