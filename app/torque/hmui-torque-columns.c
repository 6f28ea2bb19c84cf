/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-columns.h"

#define TWO_COLUMNS_FROM 690   /* px: a window of 900 less the rail of places */
#define LEAST_FORM 312         /* px */
#define MOST_FORM 432
#define WIDEST 1360
#define GAP 24

struct _HmuiTorqueColumns
{
  GtkWidget parent_instance;
  GtkWidget *headline;            /* child */
  GtkWidget *form_scroll, *details_scroll;   /* children */
  GtkBox *form_box, *details_box; /* what scrolls in them */
  GtkWidget *details;             /* in one of the boxes */
  gboolean narrow;                /* details are in the form's box */
  guint arranging;                /* source id; 0: none */
};

static void buildable_init (GtkBuildableIface *iface);

G_DEFINE_FINAL_TYPE_WITH_CODE (HmuiTorqueColumns, hmui_torque_columns, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (GTK_TYPE_BUILDABLE, buildable_init))

/* A child must not change its parent while sizes are given out. */
static gboolean
arrange_cb (gpointer data)
{
  HmuiTorqueColumns *self = data;
  g_autoptr(GtkWidget) details = self->details != NULL ? g_object_ref (self->details) : NULL;

  self->arranging = 0;
  self->narrow = !self->narrow;
  if (details != NULL)
    {
      gtk_box_remove (self->narrow ? self->details_box : self->form_box, details);
      gtk_box_append (self->narrow ? self->form_box : self->details_box, details);
    }
  gtk_widget_set_visible (self->details_scroll, !self->narrow);
  gtk_widget_queue_resize (GTK_WIDGET (self));
  return G_SOURCE_REMOVE;
}

static int
least_width (GtkWidget *child)
{
  int least = 0;

  if (child != NULL)
    gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, &least, NULL, NULL, NULL);
  return least;
}

static int
headline_height (HmuiTorqueColumns *self, int width)
{
  int natural = 0;

  if (self->headline != NULL && gtk_widget_should_layout (self->headline))
    gtk_widget_measure (self->headline, GTK_ORIENTATION_VERTICAL, MAX (width, least_width (self->headline)), NULL, &natural,
                        NULL, NULL);
  return natural;
}

static GtkSizeRequestMode
hmui_torque_columns_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_CONSTANT_SIZE;
}

static void
hmui_torque_columns_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                             int *minimum_baseline, int *natural_baseline)
{
  HmuiTorqueColumns *self = HMUI_TORQUE_COLUMNS (widget);
  int scrolled = MAX (least_width (self->form_scroll), least_width (self->details_scroll));

  *minimum = *natural = 240;
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    *minimum = *natural = MAX (scrolled, least_width (self->headline));
}

static void
place (GtkWidget *child, int x, int y, int width, int height)
{
  if (child != NULL && gtk_widget_should_layout (child))
    gtk_widget_size_allocate (child, &(GtkAllocation) { x, y, MAX (width, least_width (child)), MAX (height, 0) }, -1);
}

static void
place_columns (HmuiTorqueColumns *self, int width, int height)
{
  gboolean mirrored = gtk_widget_get_direction (GTK_WIDGET (self)) == GTK_TEXT_DIR_RTL;
  int used = MIN (width, WIDEST), left = (width - used) / 2;
  int least = least_width (self->form_scroll);
  int form = CLAMP (used * 2 / 5, MAX (LEAST_FORM, least), MAX (MOST_FORM, least));
  int answer = used - form - GAP, top = headline_height (self, answer);
  int answer_x = mirrored ? left : left + form + GAP;

  place (self->form_scroll, mirrored ? left + answer + GAP : left, 0, form, height);
  place (self->headline, answer_x, 0, answer, top);
  place (self->details_scroll, answer_x, top, answer, height - top);
}

static void
hmui_torque_columns_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  HmuiTorqueColumns *self = HMUI_TORQUE_COLUMNS (widget);
  int columns = least_width (self->form_scroll) + GAP + MAX (least_width (self->headline), least_width (self->details_scroll));
  gboolean narrow = width < TWO_COLUMNS_FROM || width < columns;
  int top;

  if (narrow != self->narrow && self->arranging == 0)
    self->arranging = g_idle_add_full (G_PRIORITY_HIGH_IDLE, arrange_cb, self, NULL);
  if (!self->narrow)
    {
      place_columns (self, width, height);
      return;
    }
  top = headline_height (self, width);
  place (self->headline, 0, 0, width, top);
  place (self->form_scroll, 0, top, width, height - top);
}

static void
hmui_torque_columns_add_child (GtkBuildable *buildable, GtkBuilder *builder, GObject *child, const char *type)
{
  HmuiTorqueColumns *self = HMUI_TORQUE_COLUMNS (buildable);

  g_return_if_fail (GTK_IS_WIDGET (child));
  if (g_strcmp0 (type, "headline") == 0)
    {
      self->headline = GTK_WIDGET (child);
      gtk_widget_insert_before (self->headline, GTK_WIDGET (self), self->details_scroll);
    }
  else if (g_strcmp0 (type, "details") == 0)
    {
      self->details = GTK_WIDGET (child);
      gtk_box_append (self->details_box, self->details);
    }
  else
    gtk_box_append (self->form_box, GTK_WIDGET (child));
}

static void
buildable_init (GtkBuildableIface *iface)
{
  iface->add_child = hmui_torque_columns_add_child;
}

static void
hmui_torque_columns_dispose (GObject *object)
{
  HmuiTorqueColumns *self = HMUI_TORQUE_COLUMNS (object);

  g_clear_handle_id (&self->arranging, g_source_remove);
  g_clear_pointer (&self->headline, gtk_widget_unparent);
  g_clear_pointer (&self->form_scroll, gtk_widget_unparent);
  g_clear_pointer (&self->details_scroll, gtk_widget_unparent);
  self->details = NULL;
  G_OBJECT_CLASS (hmui_torque_columns_parent_class)->dispose (object);
}

static void
hmui_torque_columns_class_init (HmuiTorqueColumnsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hmui_torque_columns_dispose;
  widget_class->get_request_mode = hmui_torque_columns_get_request_mode;
  widget_class->measure = hmui_torque_columns_measure;
  widget_class->size_allocate = hmui_torque_columns_size_allocate;
}

static GtkWidget *
make_scroll (HmuiTorqueColumns *self, GtkBox **box)
{
  GtkWidget *scroll = gtk_scrolled_window_new ();

  *box = GTK_BOX (gtk_box_new (GTK_ORIENTATION_VERTICAL, GAP));
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroll), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroll), GTK_WIDGET (*box));
  gtk_widget_add_css_class (GTK_WIDGET (*box), "torque-column");
  gtk_widget_set_parent (scroll, GTK_WIDGET (self));
  return scroll;
}

static void
hmui_torque_columns_init (HmuiTorqueColumns *self)
{
  self->form_scroll = make_scroll (self, &self->form_box);
  self->details_scroll = make_scroll (self, &self->details_box);
}

gboolean
hmui_torque_columns_is_narrow (HmuiTorqueColumns *self)
{
  return self->narrow;
}
