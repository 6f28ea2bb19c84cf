/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-reading-entry.h"
#include "hmui-draw.h"
#include <glib/gi18n-lib.h>
#include <math.h>

#define PAUSE_MS 900   /* without a key, before an unreadable text is complained about */

struct _HmuiReadingEntry
{
  GtkWidget      parent_instance;
  GtkLabel      *title_label;    /* template child */
  GtkEntry      *entry;          /* template child */
  GtkLabel      *unit_label;     /* template child */
  GtkImage      *message_icon;   /* template child */
  GtkLabel      *message_label;  /* template child */
  HmQuantityKind kind;
  HmUnit         unit;
  HmQuantity     quantity;       /* holds when readable */
  gboolean       readable;
  char          *error;          /* owned; the core's sentence, NULL while there is nothing to say */
  char          *hint, *verdict; /* owned, may be NULL */
  HmuiVerdict    tone;
  guint          pause;          /* source id, 0: none */
};
G_DEFINE_FINAL_TYPE (HmuiReadingEntry, hmui_reading_entry, GTK_TYPE_WIDGET)

enum { QUANTITY_CHANGED, SUBMITTED, N_SIGNALS };
static guint signals[N_SIGNALS];

static void
show_line (HmuiReadingEntry *self, const char *text, const char *icon, const char *css_class)
{
  static const char * const tones[] = { "quiet", "good-text", "caution-text", "danger-text" };

  for (guint i = 0; i < G_N_ELEMENTS (tones); i++)
    {
      gtk_widget_remove_css_class (GTK_WIDGET (self->message_label), tones[i]);
      gtk_widget_remove_css_class (GTK_WIDGET (self->message_icon), tones[i]);
    }
  if (css_class != NULL)
    {
      gtk_widget_add_css_class (GTK_WIDGET (self->message_label), css_class);
      gtk_widget_add_css_class (GTK_WIDGET (self->message_icon), css_class);
    }
  gtk_label_set_text (self->message_label, text != NULL ? text : "");
  gtk_widget_set_visible (GTK_WIDGET (self->message_icon), icon != NULL);
  gtk_image_set_from_icon_name (self->message_icon, icon);
}

/* One line below the field: the complaint comes first, then the verdict, then the hint. */
static void
show_message (HmuiReadingEntry *self)
{
  gboolean wrong = self->error != NULL;

  if (wrong)
    gtk_widget_add_css_class (GTK_WIDGET (self), "invalid");
  else
    gtk_widget_remove_css_class (GTK_WIDGET (self), "invalid");
  if (wrong)
    show_line (self, self->error, "hm-bad-symbolic", "danger-text");
  else if (self->verdict == NULL)
    show_line (self, self->hint, NULL, "quiet");
  else if (self->tone == HMUI_VERDICT_GOOD)
    show_line (self, self->verdict, "hm-good-symbolic", "good-text");
  else if (self->tone == HMUI_VERDICT_BAD)
    show_line (self, self->verdict, "hm-caution-symbolic", "caution-text");
  else
    show_line (self, self->verdict, NULL, NULL);
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID,
                               wrong ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  gtk_label_get_text (self->message_label), -1);
}

static gboolean
same_quantity (HmQuantity a, HmQuantity b)
{
  return a.kind == b.kind && a.unit == b.unit && fabs (a.value - b.value) < 1e-12;
}

/* Reads the field again. @complain: put what is wrong below it. */
static void
read_field (HmuiReadingEntry *self, gboolean complain)
{
  g_autoptr(GError) error = NULL;
  HmQuantity quantity = { 0 };
  gboolean readable = hm_quantity_parse (gtk_editable_get_text (GTK_EDITABLE (self->entry)), self->kind, self->unit,
                                         &quantity, &error);
  gboolean changed = readable != self->readable || (readable && !same_quantity (quantity, self->quantity));

  self->readable = readable;
  self->quantity = quantity;
  g_clear_pointer (&self->error, g_free);
  if (!readable && complain)
    self->error = g_strdup (error->message);
  if (!readable)
    g_clear_pointer (&self->verdict, g_free);
  show_message (self);
  if (changed)
    g_signal_emit (self, signals[QUANTITY_CHANGED], 0);
}

static gboolean
pause_over_cb (gpointer data)
{
  HmuiReadingEntry *self = data;

  self->pause = 0;
  read_field (self, gtk_entry_get_text_length (self->entry) > 0);
  return G_SOURCE_REMOVE;
}

static void
changed_cb (HmuiReadingEntry *self)
{
  g_clear_handle_id (&self->pause, g_source_remove);
  read_field (self, FALSE);
  if (!self->readable)
    self->pause = g_timeout_add (PAUSE_MS, pause_over_cb, self);
}

static void
hmui_reading_entry_dispose (GObject *object)
{
  HmuiReadingEntry *self = HMUI_READING_ENTRY (object);

  g_clear_handle_id (&self->pause, g_source_remove);
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_READING_ENTRY);
  hmui_draw_unparent_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (hmui_reading_entry_parent_class)->dispose (object);
}

static void
hmui_reading_entry_finalize (GObject *object)
{
  HmuiReadingEntry *self = HMUI_READING_ENTRY (object);

  g_free (self->error);
  g_free (self->hint);
  g_free (self->verdict);
  G_OBJECT_CLASS (hmui_reading_entry_parent_class)->finalize (object);
}

static gboolean
hmui_reading_entry_grab_focus (GtkWidget *widget)
{
  return gtk_widget_grab_focus (GTK_WIDGET (HMUI_READING_ENTRY (widget)->entry));
}

static void
bind_template (GtkWidgetClass *widget_class)
{
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_WIDGETS_RESOURCE "hmui-reading-entry.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiReadingEntry, title_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiReadingEntry, entry);
  gtk_widget_class_bind_template_child (widget_class, HmuiReadingEntry, unit_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiReadingEntry, message_icon);
  gtk_widget_class_bind_template_child (widget_class, HmuiReadingEntry, message_label);
  gtk_widget_class_bind_template_callback (widget_class, changed_cb);
  gtk_widget_class_bind_template_callback (widget_class, hmui_reading_entry_submit);
}

static void
hmui_reading_entry_class_init (HmuiReadingEntryClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->dispose = hmui_reading_entry_dispose;
  object_class->finalize = hmui_reading_entry_finalize;
  widget_class->grab_focus = hmui_reading_entry_grab_focus;
  signals[QUANTITY_CHANGED] = g_signal_new ("quantity-changed", HMUI_TYPE_READING_ENTRY, G_SIGNAL_RUN_LAST, 0,
                                            NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[SUBMITTED] = g_signal_new ("submitted", HMUI_TYPE_READING_ENTRY, G_SIGNAL_RUN_LAST, 0,
                                     NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_css_name (widget_class, "readingentry");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  bind_template (widget_class);
}

static void
hmui_reading_entry_init (HmuiReadingEntry *self)
{
  GtkLayoutManager *layout;

  gtk_widget_init_template (GTK_WIDGET (self));
  layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));
  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 6);
}

GtkWidget *
hmui_reading_entry_new (void)
{
  return g_object_new (HMUI_TYPE_READING_ENTRY, NULL);
}

void
hmui_reading_entry_set_kind (HmuiReadingEntry *self, HmQuantityKind kind, HmUnit unit, const char *label)
{
  const char *symbol;
  g_autofree char *name = NULL;

  g_return_if_fail (HMUI_IS_READING_ENTRY (self) && label != NULL);
  self->kind = kind;
  self->unit = unit;
  symbol = hm_unit_symbol (unit);
  /* Translators: the name of a field and the unit that it is in */
  name = symbol[0] != '\0' ? g_strdup_printf (_("%s in %s"), label, symbol) : g_strdup (label);
  gtk_label_set_text (self->title_label, label);
  gtk_label_set_text (self->unit_label, symbol);
  gtk_widget_set_visible (GTK_WIDGET (self->unit_label), symbol[0] != '\0');
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  g_clear_pointer (&self->verdict, g_free);
  gtk_editable_set_text (GTK_EDITABLE (self->entry), "");
  g_clear_handle_id (&self->pause, g_source_remove);
  read_field (self, FALSE);
}

void
hmui_reading_entry_set_hint (HmuiReadingEntry *self, const char *hint)
{
  g_return_if_fail (HMUI_IS_READING_ENTRY (self));
  g_free (self->hint);
  self->hint = g_strdup (hint);
  show_message (self);
}

void
hmui_reading_entry_set_verdict (HmuiReadingEntry *self, const char *text, HmuiVerdict tone)
{
  g_return_if_fail (HMUI_IS_READING_ENTRY (self));
  g_free (self->verdict);
  self->verdict = g_strdup (text);
  self->tone = tone;
  show_message (self);
}

gboolean
hmui_reading_entry_get_quantity (HmuiReadingEntry *self, HmQuantity *out)
{
  g_return_val_if_fail (HMUI_IS_READING_ENTRY (self), FALSE);
  if (self->readable && out != NULL)
    *out = self->quantity;
  return self->readable;
}

void
hmui_reading_entry_submit (HmuiReadingEntry *self)
{
  g_return_if_fail (HMUI_IS_READING_ENTRY (self));
  g_clear_handle_id (&self->pause, g_source_remove);
  read_field (self, TRUE);
  if (self->readable)
    g_signal_emit (self, signals[SUBMITTED], 0);
  else
    gtk_widget_grab_focus (GTK_WIDGET (self->entry));
}

const char *
hmui_reading_entry_get_text (HmuiReadingEntry *self)
{
  g_return_val_if_fail (HMUI_IS_READING_ENTRY (self), NULL);
  return gtk_editable_get_text (GTK_EDITABLE (self->entry));
}

void
hmui_reading_entry_set_text (HmuiReadingEntry *self, const char *text)
{
  g_return_if_fail (HMUI_IS_READING_ENTRY (self) && text != NULL);
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
}
