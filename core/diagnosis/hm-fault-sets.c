/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fault-sets.h"

#include <stdlib.h>

#include "hm-findings.h"

#define SMALL_MODEL 12u
#define BIT(i) (G_GUINT64_CONSTANT (1) << (i))

typedef struct { const HmFindings *findings; double healthy; guint most_faults; GHashTable *weights; double total; } Listing;

static double
finding_likelihood (const HmFindings *findings, const HmFindingTerms *terms, guint64 faults)
{
  double sum = 0;

  faults &= ~terms->repaired;
  for (guint k = 0; k < terms->n_levels; k++)
    {
      double product = terms->alpha[k];
      for (guint64 rest = faults; rest != 0; rest &= rest - 1)
        product *= hm_findings_cumulative (findings, terms->check, terms->levels[k], (guint) __builtin_ctzll (rest));
      sum += product;
    }
  return MAX (sum, 0);
}

/* Adds the weight of one set of faults to what is left of it after the repairs. */
static void
weigh (Listing *listing, guint64 faults)
{
  const HmFindings *findings = listing->findings;
  double weight = listing->healthy, *sum;
  gint64 left = (gint64) (faults & ~findings->repaired);

  if (left == 0)
    return;
  for (guint64 rest = faults; rest != 0; rest &= rest - 1)
    {
      double p = findings->prior[__builtin_ctzll (rest)];
      weight *= p / (1 - p);
    }
  for (guint i = 0; i < findings->terms->len && weight > 0; i++)
    weight *= finding_likelihood (findings, &g_array_index (findings->terms, HmFindingTerms, i), faults);
  if (!(weight > 0))
    return;
  listing->total += weight;
  sum = g_hash_table_lookup (listing->weights, &left);
  if (sum != NULL)
    *sum += weight;
  else
    g_hash_table_insert (listing->weights, g_memdup2 (&left, sizeof left), g_memdup2 (&weight, sizeof weight));
}

static void
list_from (Listing *listing, guint64 faults, guint next, guint size)
{
  guint n = listing->findings->model->n_causes + 1;

  for (guint i = next; i < n; i++)
    {
      if (listing->findings->prior[i] <= 0)
        continue;
      weigh (listing, faults | BIT (i));
      if (size + 1 < listing->most_faults)
        list_from (listing, faults | BIT (i), i + 1, size + 1);
    }
}

/* Likelier first; equal weights in the order of the sets, so that the list is the same everywhere. */
static int
compare_sets (const void *left, const void *right)
{
  const HmFaultSet *a = left, *b = right;

  if (a->weight != b->weight)
    return a->weight > b->weight ? -1 : 1;
  return a->faults < b->faults ? -1 : a->faults > b->faults;
}

gboolean
hm_fault_sets_init (HmFaultSets *self, const HmModel *model, const HmEvidence *events, guint n, guint most)
{
  g_auto (HmFindings) findings = { NULL };
  g_autoptr (GHashTable) weights = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free, g_free);
  Listing listing = { .findings = &findings, .healthy = 1, .weights = weights, .most_faults = model->n_causes <= SMALL_MODEL ? 4 : 3 };
  GHashTableIter iter;
  gpointer faults, weight;
  double sum = 0;

  *self = (HmFaultSets) { NULL };
  hm_findings_init (&findings, model, events, n);
  for (guint i = 0; i <= model->n_causes; i++)
    listing.healthy *= 1 - findings.prior[i];
  list_from (&listing, 0, 0, 0);
  if (!(listing.total > 0))
    return FALSE;
  self->sets = g_new0 (HmFaultSet, g_hash_table_size (weights));
  g_hash_table_iter_init (&iter, weights);
  while (g_hash_table_iter_next (&iter, &faults, &weight))
    self->sets[self->n++] = (HmFaultSet) { *(guint64 *) faults, *(double *) weight };
  qsort (self->sets, self->n, sizeof *self->sets, compare_sets);
  self->n = MIN (self->n, most);
  for (guint i = 0; i < self->n; i++)
    sum += self->sets[i].weight;
  for (guint i = 0; i < self->n; i++)
    self->sets[i].weight /= sum;
  self->kept = sum / listing.total;
  return TRUE;
}

void
hm_fault_sets_clear (HmFaultSets *self)
{
  g_clear_pointer (&self->sets, g_free);
}
