/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-tables-page.h"
#include "hmui-chart-button.h"
#include "hmui-heading.h"
#include "hmui-place.h"
#include "hmui-resource.h"
#include "hmui-size-table.h"
#include <glib/gi18n.h>

struct _HmuiTablesPage
{
  GtkWidget parent_instance;
  HmKnowledge *knowledge;         /* owned */
  HmuiSettings *settings;         /* owned */
  HmuiSizeTableKind kind;
  GtkFilterListModel *filtered;   /* owned; NULL until a table is shown */
  /* template children */
  GtkFlowBox *kinds;
  GtkColumnView *view;
  GtkEditable *filter;
  GtkLabel *count;
  GtkWidget *copy;
};

G_DEFINE_FINAL_TYPE (HmuiTablesPage, hmui_tables_page, GTK_TYPE_WIDGET)

static void
activated_cb (HmuiTablesPage *self, guint position)
{
  g_autoptr(HmuiSizeRow) row = g_list_model_get_item (G_LIST_MODEL (gtk_column_view_get_model (self->view)), position);

  if (row != NULL && hmui_size_row_get_target (row) != NULL)
    gtk_widget_activate_action (GTK_WIDGET (self), "fasteners.look-up", "s", hmui_size_row_get_target (row));
}

static void
setup_cb (GtkSignalListItemFactory *factory, GtkListItem *item, gpointer user_data)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0.0);
  gtk_widget_add_css_class (label, "numeric");
  gtk_list_item_set_child (item, label);
}

static void
bind_cb (GtkSignalListItemFactory *factory, GtkListItem *item, gpointer column)
{
  HmuiSizeRow *row = gtk_list_item_get_item (item);

  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (item)), hmui_size_row_get_text (row, GPOINTER_TO_UINT (column)));
}

static int
compare_rows (gconstpointer a, gconstpointer b, gpointer column)
{
  return hmui_size_row_compare ((HmuiSizeRow *) a, (HmuiSizeRow *) b, GPOINTER_TO_UINT (column));
}

static void
add_column (HmuiTablesPage *self, guint i)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  g_autoptr(GtkColumnViewColumn) column = NULL;
  g_autoptr(GtkSorter) sorter = GTK_SORTER (gtk_custom_sorter_new (compare_rows, GUINT_TO_POINTER (i), NULL));

  g_signal_connect (factory, "setup", G_CALLBACK (setup_cb), NULL);
  g_signal_connect (factory, "bind", G_CALLBACK (bind_cb), GUINT_TO_POINTER (i));
  column = gtk_column_view_column_new (hmui_size_table_column (self->kind, i), factory);
  gtk_column_view_column_set_sorter (column, sorter);
  gtk_column_view_column_set_resizable (column, TRUE);
  gtk_column_view_append_column (self->view, column);
}

static void
remove_columns (HmuiTablesPage *self)
{
  GListModel *columns = gtk_column_view_get_columns (self->view);

  while (g_list_model_get_n_items (columns) > 0)
    {
      g_autoptr(GtkColumnViewColumn) column = g_list_model_get_item (columns, 0);

      gtk_column_view_remove_column (self->view, column);
    }
}

static gboolean
is_shown (gpointer row, gpointer page)
{
  return hmui_size_row_matches (row, gtk_editable_get_text (HMUI_TABLES_PAGE (page)->filter));
}

static void
show_count (HmuiTablesPage *self)
{
  GListModel *shown = G_LIST_MODEL (gtk_column_view_get_model (self->view));
  guint n = shown != NULL ? g_list_model_get_n_items (shown) : 0;
  g_autofree char *text = n > 0 ? g_strdup_printf (ngettext ("%u row", "%u rows", n), n) : g_strdup (_("No row has that"));

  gtk_label_set_text (self->count, text);
  gtk_widget_set_sensitive (self->copy, n > 0);
}

static void
filter_changed_cb (HmuiTablesPage *self)
{
  if (self->filtered == NULL)
    return;
  gtk_filter_changed (gtk_filter_list_model_get_filter (self->filtered), GTK_FILTER_CHANGE_DIFFERENT);
  show_count (self);
}

static void
stop_filter_cb (HmuiTablesPage *self)
{
  gtk_editable_set_text (self->filter, "");
  filter_changed_cb (self);
}

static void
copy_cb (HmuiTablesPage *self)
{
  GListModel *shown = G_LIST_MODEL (gtk_column_view_get_model (self->view));
  g_autofree char *text = hmui_size_table_to_text (self->kind, shown);
  g_autofree char *said = NULL;
  guint n = g_list_model_get_n_items (shown);
  GtkWidget *place = gtk_widget_get_ancestor (GTK_WIDGET (self), HMUI_TYPE_PLACE);

  gdk_clipboard_set_text (gtk_widget_get_clipboard (GTK_WIDGET (self)), text);
  said = g_strdup_printf (ngettext ("Copied %u row.", "Copied %u rows.", n), n);
  if (place != NULL)
    hmui_place_emit_message (HMUI_PLACE (place), said, FALSE);
}

static void
show_table (HmuiTablesPage *self)
{
  HmFormat format = hmui_settings_get_format (self->settings);
  GListModel *rows = hmui_size_table_rows (self->kind, hm_knowledge_get_tables (self->knowledge), &format);
  GtkSorter *sorter = gtk_column_view_get_sorter (self->view);
  GtkFilterListModel *filtered = gtk_filter_list_model_new (rows, GTK_FILTER (gtk_custom_filter_new (is_shown, self, NULL)));
  GtkSortListModel *sorted = gtk_sort_list_model_new (G_LIST_MODEL (filtered), g_object_ref (sorter));
  g_autoptr(GtkSingleSelection) selection = gtk_single_selection_new (NULL);

  gtk_single_selection_set_autoselect (selection, FALSE);
  gtk_single_selection_set_model (selection, G_LIST_MODEL (sorted));
  g_set_object (&self->filtered, filtered);
  g_object_unref (sorted);
  gtk_column_view_set_model (self->view, NULL);
  remove_columns (self);
  for (guint i = 0; hmui_size_table_column (self->kind, i) != NULL; i++)
    add_column (self, i);
  gtk_column_view_set_model (self->view, GTK_SELECTION_MODEL (selection));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->view), GTK_ACCESSIBLE_PROPERTY_LABEL, hmui_size_table_title (self->kind), -1);
  show_count (self);
}

static void
kind_toggled_cb (HmuiTablesPage *self, GtkToggleButton *button)
{
  if (!gtk_toggle_button_get_active (button))
    return;
  self->kind = (HmuiSizeTableKind) GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (button), "kind"));
  show_table (self);
}

static void
add_kinds (HmuiTablesPage *self)
{
  GtkToggleButton *first = NULL;

  for (guint kind = 0; kind < HMUI_SIZE_TABLE_N; kind++)
    {
      GtkWidget *button = gtk_toggle_button_new_with_label (hmui_size_table_title ((HmuiSizeTableKind) kind));

      if (first == NULL)
        first = GTK_TOGGLE_BUTTON (button);
      else
        gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (button), first);
      gtk_widget_add_css_class (button, "choice");
      g_object_set_data (G_OBJECT (button), "kind", GUINT_TO_POINTER (kind));
      gtk_flow_box_append (self->kinds, button);
      gtk_widget_set_focusable (gtk_widget_get_parent (button), FALSE);
      g_signal_connect_object (button, "toggled", G_CALLBACK (kind_toggled_cb), self, G_CONNECT_SWAPPED);
    }
  gtk_toggle_button_set_active (first, TRUE);
}

static void
hmui_tables_page_dispose (GObject *object)
{
  HmuiTablesPage *self = HMUI_TABLES_PAGE (object);

  g_clear_object (&self->filtered);
  hmui_dispose_template (GTK_WIDGET (object), HMUI_TYPE_TABLES_PAGE);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->knowledge, hm_knowledge_unref);
  G_OBJECT_CLASS (hmui_tables_page_parent_class)->dispose (object);
}

static void
hmui_tables_page_class_init (HmuiTablesPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_tables_page_dispose;
  g_type_ensure (HMUI_TYPE_CHART_BUTTON);
  g_type_ensure (HMUI_TYPE_HEADING);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_RESOURCE "fasteners/hmui-tables-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiTablesPage, kinds);
  gtk_widget_class_bind_template_child (widget_class, HmuiTablesPage, view);
  gtk_widget_class_bind_template_child (widget_class, HmuiTablesPage, filter);
  gtk_widget_class_bind_template_child (widget_class, HmuiTablesPage, count);
  gtk_widget_class_bind_template_child (widget_class, HmuiTablesPage, copy);
  gtk_widget_class_bind_template_callback (widget_class, activated_cb);
  gtk_widget_class_bind_template_callback (widget_class, filter_changed_cb);
  gtk_widget_class_bind_template_callback (widget_class, stop_filter_cb);
  gtk_widget_class_bind_template_callback (widget_class, copy_cb);
}

static void
hmui_tables_page_init (HmuiTablesPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hmui_tables_page_new (HmKnowledge *knowledge, HmuiSettings *settings)
{
  HmuiTablesPage *self = g_object_new (HMUI_TYPE_TABLES_PAGE, NULL);

  self->knowledge = hm_knowledge_ref (knowledge);
  self->settings = g_object_ref (settings);
  add_kinds (self);
  g_signal_connect_object (settings, "notify::units", G_CALLBACK (show_table), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}
