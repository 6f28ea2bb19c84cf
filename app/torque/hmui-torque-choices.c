/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hmui-torque-model-private.h"
#include "hmui-tr.h"
#include "hmui-words-torque.h"
#include <glib/gi18n.h>
#include <string.h>

static const HmUnit extra_units[] = { HM_UNIT_NONE, HM_UNIT_KILOGRAM_METRE, HM_UNIT_OUNCE_INCH };

/* Whether an earlier row names the same class for another size. */
static gboolean
is_again (const HmStrengthRow *rows, gsize index, const HmThread *thread)
{
  for (gsize i = 0; i < index; i++)
    if (strcmp (rows[i].name, rows[index].name) == 0 && (thread == NULL || hm_tightening_suits (&rows[i], thread)))
      return TRUE;
  return FALSE;
}

/* The classes that this thread is made in, each once; all of them while there is no thread. */
static GPtrArray *
list_strengths (HmuiTorqueModel *self)
{
  GPtrArray *found = g_ptr_array_new ();
  const HmThread *thread = self->has_thread ? &self->question.thread : NULL;
  gsize n = 0;
  const HmStrengthRow *rows = self->tables != NULL ? hm_tables_get_strength (self->tables, &n) : NULL;

  for (gsize i = 0; i < n; i++)
    if ((thread == NULL || hm_tightening_suits (&rows[i], thread)) && !is_again (rows, i, thread))
      g_ptr_array_add (found, (gpointer) &rows[i]);
  return found;
}

const char *
hmui_torque_choices_find_strength (HmuiTorqueModel *self, guint index)
{
  g_autoptr(GPtrArray) rows = list_strengths (self);

  if (index == 0 || index > rows->len)
    return NULL;
  return ((const HmStrengthRow *) g_ptr_array_index (rows, index - 1))->name;
}

guint
hmui_torque_choices_index_of_strength (HmuiTorqueModel *self, const char *strength)
{
  g_autoptr(GPtrArray) rows = list_strengths (self);

  for (guint i = 0; strength != NULL && i < rows->len; i++)
    if (strcmp (((const HmStrengthRow *) g_ptr_array_index (rows, i))->name, strength) == 0)
      return i + 1;
  return 0;
}

const HmSpecialRow *
hmui_torque_choices_find_special (HmuiTorqueModel *self)
{
  guint joint = self->choices[HMUI_TORQUE_CHOICE_JOINT], nth = self->choices[HMUI_TORQUE_CHOICE_SPECIAL], seen = 0;
  gsize n = 0;
  const HmSpecialRow *rows = self->tables != NULL ? hm_tables_get_specials (self->tables, &n) : NULL;

  for (gsize i = 0; i < n; i++)
    if (joint > 0 && rows[i].joint == (HmSpecialJoint) (joint - 1) && ++seen == nth)
      return &rows[i];
  return NULL;
}

HmUnit
hmui_torque_choices_get_extra_unit (HmuiTorqueModel *self)
{
  return extra_units[MIN (self->choices[HMUI_TORQUE_CHOICE_EXTRA_UNIT], G_N_ELEMENTS (extra_units) - 1)];
}

static void
add (GPtrArray *list, const char *text)
{
  g_ptr_array_add (list, g_strdup (text));
}

static void
add_strengths (HmuiTorqueModel *self, GPtrArray *list)
{
  g_autoptr(GPtrArray) rows = list_strengths (self);

  add (list, _("Not known: read the marks on the head"));
  for (guint i = 0; i < rows->len; i++)
    {
      const HmStrengthRow *row = g_ptr_array_index (rows, i);

      g_ptr_array_add (list, g_strdup_printf ("%s · %s", row->name, row->standard));
    }
}

static void
add_specials (HmuiTorqueModel *self, GPtrArray *list)
{
  guint joint = self->choices[HMUI_TORQUE_CHOICE_JOINT];
  gsize n = 0;
  const HmSpecialRow *rows = self->tables != NULL ? hm_tables_get_specials (self->tables, &n) : NULL;

  add (list, _("Choose which"));
  for (gsize i = 0; i < n; i++)
    if (joint > 0 && rows[i].joint == (HmSpecialJoint) (joint - 1))
      add (list, hmui_tr (rows[i].name));
}

static void
add_enum (HmuiTorqueChoice choice, GPtrArray *list)
{
  switch (choice)
    {
    case HMUI_TORQUE_CHOICE_JOINT:
      add (list, _("Bolt, screw or nut: worked out"));
      for (HmSpecialJoint joint = HM_SPECIAL_SPARK_PLUG; joint <= HM_SPECIAL_TAPER; joint++)
        add (list, hmui_words_special (joint));
      break;
    case HMUI_TORQUE_CHOICE_FRICTION:
      for (HmFriction friction = 0; friction < HM_FRICTION_N_STATES; friction++)
        add (list, hmui_words_friction (friction));
      break;
    case HMUI_TORQUE_CHOICE_SEAT:
      for (HmSeat seat = 0; seat < HM_SEAT_N_SEATS; seat++)
        add (list, hmui_words_seat (seat));
      break;
    case HMUI_TORQUE_CHOICE_INTO:
      for (HmMaterial into = 0; into < HM_MATERIAL_N_MATERIALS; into++)
        add (list, hmui_words_material (into));
      break;
    case HMUI_TORQUE_CHOICE_ADAPTER:
      add (list, _("None"));
      add (list, _("Straight ahead"));
      add (list, _("At an angle"));
      break;
    case HMUI_TORQUE_CHOICE_EXTRA_UNIT:
      add (list, _("No more units"));
      for (guint i = 1; i < G_N_ELEMENTS (extra_units); i++)
        add (list, hm_unit_symbol (extra_units[i]));
      break;
    case HMUI_TORQUE_CHOICE_SPECIAL:
    case HMUI_TORQUE_CHOICE_STRENGTH:
    case HMUI_TORQUE_N_CHOICES:
    default: break;
    }
}

GStrv
hmui_torque_model_dup_choices (HmuiTorqueModel *self, HmuiTorqueChoice choice)
{
  GPtrArray *list = g_ptr_array_new ();

  if (choice == HMUI_TORQUE_CHOICE_STRENGTH)
    add_strengths (self, list);
  else if (choice == HMUI_TORQUE_CHOICE_SPECIAL)
    add_specials (self, list);
  else
    add_enum (choice, list);
  g_ptr_array_add (list, NULL);
  return (GStrv) g_ptr_array_free (list, FALSE);
}

GStrv
hmui_torque_model_dup_usual_threads (HmuiTorqueModel *self)
{
  GPtrArray *list = g_ptr_array_new ();
  gsize n = 0;
  const HmThreadRow *rows = self->tables != NULL ? hm_tables_get_threads (self->tables, &n) : NULL;

  for (gsize i = 0; i < n; i++)
    if (rows[i].use == HM_USE_USUAL && rows[i].series != HM_SERIES_NPT)
      add (list, rows[i].name);
  g_ptr_array_add (list, NULL);
  return (GStrv) g_ptr_array_free (list, FALSE);
}
