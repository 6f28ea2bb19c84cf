/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-caution-card.h"
#include "hmui-draw.h"
#include <glib/gi18n-lib.h>

struct _HmuiCautionCard
{
  GtkWidget       parent_instance;
  GtkImage       *icon;         /* template child */
  GtkLabel       *title_label;  /* template child */
  GtkLabel       *text_label;   /* template child */
  GtkLabel       *defer_label;  /* template child */
  GtkCheckButton *done_check;   /* template child */
  gboolean        serious;
  gboolean        quiet;        /* the box is being set by the program: emit no "acknowledged" */
};
G_DEFINE_FINAL_TYPE (HmuiCautionCard, hmui_caution_card, GTK_TYPE_WIDGET)

enum { PROP_0, PROP_ACKNOWLEDGED, N_PROPS };
static GParamSpec *properties[N_PROPS];
enum { ACKNOWLEDGED, N_SIGNALS };
static guint signals[N_SIGNALS];

static void
set_class (GtkWidget *widget, const char *name, gboolean on)
{
  if (on)
    gtk_widget_add_css_class (widget, name);
  else
    gtk_widget_remove_css_class (widget, name);
}

static void
done_toggled_cb (HmuiCautionCard *self)
{
  gboolean done = gtk_check_button_get_active (self->done_check);

  set_class (GTK_WIDGET (self), "done", done);
  g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_ACKNOWLEDGED]);
  if (done && !self->quiet)
    g_signal_emit (self, signals[ACKNOWLEDGED], 0);
}

static void
show_tone (HmuiCautionCard *self, const HmCaution *caution)
{
  g_autofree char *title = g_strdup_printf ("%s · %s", caution->serious ? _("Danger") : _("Caution"),
                                            hmui_translate (caution->name));

  set_class (GTK_WIDGET (self), "danger", caution->serious);
  set_class (GTK_WIDGET (self), "caution", !caution->serious);
  gtk_image_set_from_icon_name (self->icon, caution->serious ? "hm-danger-symbolic" : "hm-caution-symbolic");
  gtk_label_set_text (self->title_label, title);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, title, -1);
}

static void
hmui_caution_card_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  if (id == PROP_ACKNOWLEDGED)
    g_value_set_boolean (value, hmui_caution_card_get_acknowledged (HMUI_CAUTION_CARD (object)));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hmui_caution_card_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_ACKNOWLEDGED)
    hmui_caution_card_set_acknowledged (HMUI_CAUTION_CARD (object), g_value_get_boolean (value));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hmui_caution_card_dispose (GObject *object)
{
  gtk_widget_dispose_template (GTK_WIDGET (object), HMUI_TYPE_CAUTION_CARD);
  hmui_draw_unparent_children (GTK_WIDGET (object));
  G_OBJECT_CLASS (hmui_caution_card_parent_class)->dispose (object);
}

static void
hmui_caution_card_class_init (HmuiCautionCardClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->dispose = hmui_caution_card_dispose;
  object_class->get_property = hmui_caution_card_get_property;
  object_class->set_property = hmui_caution_card_set_property;
  properties[PROP_ACKNOWLEDGED] =
    g_param_spec_boolean ("acknowledged", NULL, NULL, TRUE,
                          G_PARAM_READWRITE | G_PARAM_EXPLICIT_NOTIFY | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, properties);
  signals[ACKNOWLEDGED] = g_signal_new ("acknowledged", HMUI_TYPE_CAUTION_CARD, G_SIGNAL_RUN_LAST, 0,
                                        NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_css_name (widget_class, "cautioncard");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, HMUI_WIDGETS_RESOURCE "hmui-caution-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HmuiCautionCard, icon);
  gtk_widget_class_bind_template_child (widget_class, HmuiCautionCard, title_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiCautionCard, text_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiCautionCard, defer_label);
  gtk_widget_class_bind_template_child (widget_class, HmuiCautionCard, done_check);
  gtk_widget_class_bind_template_callback (widget_class, done_toggled_cb);
}

static void
hmui_caution_card_init (HmuiCautionCard *self)
{
  GtkLayoutManager *layout;

  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_widget_add_css_class (GTK_WIDGET (self), "card");
  layout = gtk_widget_get_layout_manager (GTK_WIDGET (self));
  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout), GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 6);
}

GtkWidget *
hmui_caution_card_new (void)
{
  return g_object_new (HMUI_TYPE_CAUTION_CARD, NULL);
}

void
hmui_caution_card_set_caution (HmuiCautionCard *self, const HmCaution *caution)
{
  g_autofree char *defer = NULL;

  g_return_if_fail (HMUI_IS_CAUTION_CARD (self) && caution != NULL);
  self->serious = caution->serious;
  hmui_caution_card_set_acknowledged (self, FALSE);
  show_tone (self, caution);
  gtk_label_set_text (self->text_label, hmui_translate (caution->text));
  /* Translators: %s names whose word governs, such as the maker's manual */
  defer = g_strdup_printf (_("Whose word counts: %s"), hmui_translate (caution->defer));
  gtk_label_set_text (self->defer_label, defer);
  gtk_widget_set_visible (GTK_WIDGET (self->defer_label), caution->defer != NULL && caution->defer[0] != '\0');
  gtk_widget_set_visible (GTK_WIDGET (self->done_check), caution->serious);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->done_check), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION,
                                  hmui_translate (caution->text), -1);
  g_object_notify_by_pspec (G_OBJECT (self), properties[PROP_ACKNOWLEDGED]);
}

gboolean
hmui_caution_card_get_acknowledged (HmuiCautionCard *self)
{
  g_return_val_if_fail (HMUI_IS_CAUTION_CARD (self), FALSE);
  return !self->serious || gtk_check_button_get_active (self->done_check);
}

void
hmui_caution_card_set_acknowledged (HmuiCautionCard *self, gboolean acknowledged)
{
  g_return_if_fail (HMUI_IS_CAUTION_CARD (self));
  self->quiet = TRUE;
  gtk_check_button_set_active (self->done_check, acknowledged && self->serious);
  self->quiet = FALSE;
}
