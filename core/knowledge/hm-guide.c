/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-guide.h"
#include "hm-knowledge-private.h"
#include <string.h>

gboolean
hm_read_guide (HmReader *self, GError **error)
{
  /* Each part refers only to those before it. */
  return hm_read_shared (self, error) && hm_read_layout (self, error) && hm_read_causes (self, error)
         && hm_read_checks (self, error) && hm_read_incidents (self, error);
}

HmGuide *
hm_guide_ref (HmGuide *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
hm_guide_unref (HmGuide *self)
{
  if (self == NULL || !g_atomic_ref_count_dec (&self->references))
    return;
  hm_arena_clear (&self->arena);
  g_free (self);
}

const HmComplaint *
hm_guide_get_complaint (const HmGuide *self)
{
  return &self->complaint;
}

const HmLayout *
hm_guide_get_layout (const HmGuide *self)
{
  return &self->layout;
}

const HmCause *
hm_guide_get_causes (const HmGuide *self, guint *n)
{
  if (n != NULL)
    *n = self->n_causes;
  return self->causes;
}

const HmCheck *
hm_guide_get_checks (const HmGuide *self, guint *n)
{
  if (n != NULL)
    *n = self->n_checks;
  return self->checks;
}

const HmAccessStep *
hm_guide_get_access (const HmGuide *self, guint *n)
{
  if (n != NULL)
    *n = self->n_access;
  return self->access;
}

const HmIncident *
hm_guide_get_incidents (const HmGuide *self, guint *n)
{
  if (n != NULL)
    *n = self->n_incidents;
  return self->incidents;
}

/* Every array that is searched starts its items with the id. */
static int
find_by_id (gconstpointer items, guint n, gsize size, const char *id)
{
  g_return_val_if_fail (id != NULL, -1);
  for (guint i = 0; i < n; i++)
    {
      const char *found = *(const char * const *) ((const char *) items + i * size);
      if (strcmp (found, id) == 0)
        return (int) i;
    }
  return -1;
}

G_STATIC_ASSERT (offsetof (HmCause, id) == 0 && offsetof (HmCheck, id) == 0 && offsetof (HmIncident, id) == 0
                 && offsetof (HmAccessStep, id) == 0 && offsetof (HmFinding, id) == 0);

int
hm_guide_find_cause (const HmGuide *self, const char *id)
{
  return find_by_id (self->causes, self->n_causes, sizeof *self->causes, id);
}

int
hm_guide_find_check (const HmGuide *self, const char *id)
{
  return find_by_id (self->checks, self->n_checks, sizeof *self->checks, id);
}

int
hm_guide_find_incident (const HmGuide *self, const char *id)
{
  return find_by_id (self->incidents, self->n_incidents, sizeof *self->incidents, id);
}

int
hm_guide_find_access (const HmGuide *self, const char *id)
{
  return find_by_id (self->access, self->n_access, sizeof *self->access, id);
}

int
hm_check_find_finding (const HmCheck *check, const char *id)
{
  return find_by_id (check->findings, check->n_findings, sizeof *check->findings, id);
}
