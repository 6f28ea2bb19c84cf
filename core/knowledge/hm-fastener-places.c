/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fastener-places.h"

struct _HmFastenerPlaces
{
  GPtrArray *guides;        /* owned, of owned HmGuide: one a layout */
  GPtrArray *fasteners;     /* owned, of HmFastener in the guides */
  GArray    *places;        /* owned, of HmFastenerPlace, in the same order */
};

static void
add_fasteners (HmFastenerPlaces *self, const HmLayout *layout, const HmFastener * const *fasteners)
{
  for (guint i = 0; fasteners[i] != NULL; i++)
    {
      HmFastenerPlace place = { fasteners[i], layout };

      if (g_ptr_array_find (self->fasteners, fasteners[i], NULL))
        continue;
      g_ptr_array_add (self->fasteners, (gpointer) fasteners[i]);
      g_array_append_val (self->places, place);
    }
}

static void
add_guide (HmFastenerPlaces *self, HmGuide *guide)
{
  guint n;
  const HmAccessStep *steps = hm_guide_get_access (guide, &n);
  const HmCause *causes;

  g_ptr_array_add (self->guides, guide);
  for (guint i = 0; i < n; i++)
    add_fasteners (self, hm_guide_get_layout (guide), steps[i].fasteners);
  causes = hm_guide_get_causes (guide, &n);
  for (guint i = 0; i < n; i++)
    add_fasteners (self, hm_guide_get_layout (guide), causes[i].remedy->fasteners);
}

/* All complaints of a layout share its fasteners: any one that covers it will do. */
static const char *
find_complaint (HmKnowledge *knowledge, const char *layout)
{
  guint n;
  const HmComplaint *complaints = hm_knowledge_get_complaints (knowledge, &n);

  for (guint i = 0; i < n; i++)
    if (hm_knowledge_covers (knowledge, complaints[i].id, layout))
      return complaints[i].id;
  return NULL;
}

HmFastenerPlaces *
hm_fastener_places_new (HmKnowledge *knowledge, GError **error)
{
  g_autoptr (HmFastenerPlaces) self = NULL;
  guint n;
  const HmLayout *layouts;

  g_return_val_if_fail (knowledge != NULL, NULL);
  self = g_new0 (HmFastenerPlaces, 1);
  self->guides = g_ptr_array_new_with_free_func ((GDestroyNotify) hm_guide_unref);
  self->fasteners = g_ptr_array_new ();
  self->places = g_array_new (FALSE, FALSE, sizeof (HmFastenerPlace));
  layouts = hm_knowledge_get_layouts (knowledge, &n);
  for (guint i = 0; i < n; i++)
    {
      const char *complaint = find_complaint (knowledge, layouts[i].id);
      HmGuide *guide = complaint != NULL ? hm_knowledge_load_guide (knowledge, complaint, layouts[i].id, error) : NULL;

      if (complaint != NULL && guide == NULL)
        return NULL;
      if (guide != NULL)
        add_guide (self, guide);
    }
  return g_steal_pointer (&self);
}

void
hm_fastener_places_free (HmFastenerPlaces *self)
{
  if (self == NULL)
    return;
  g_ptr_array_unref (self->fasteners);
  g_array_unref (self->places);
  g_ptr_array_unref (self->guides);
  g_free (self);
}

const GPtrArray *
hm_fastener_places_get_fasteners (const HmFastenerPlaces *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return self->fasteners;
}

GArray *
hm_fastener_places_find (const HmFastenerPlaces *self, const HmDrive *drive)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (HmFastenerPlace));

  g_return_val_if_fail (self != NULL && drive != NULL, found);
  for (guint i = 0; i < self->places->len; i++)
    {
      const HmFastenerPlace *place = &g_array_index (self->places, HmFastenerPlace, i);

      for (guint k = 0; k < place->fastener->n_drives; k++)
        if (hm_drive_equal (&place->fastener->drives[k], drive))
          {
            g_array_append_val (found, *place);
            break;
          }
    }
  return found;
}
