/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-key-answer.h"

#include <math.h>

#define SAME_MM 0.001
#define NEAR_SHARE 0.12          /* judgement: keys worth comparing with a socket, common practice, no source */

static int
compare_keys (gconstpointer a, gconstpointer b)
{
  const HmKeyFit *first = a, *second = b;

  if (first->known != second->known)
    return first->known ? -1 : 1;
  if (first->verdict != second->verdict)
    return (int) first->verdict - (int) second->verdict;
  if (first->hold > second->hold || first->hold < second->hold)
    return first->hold > second->hold ? -1 : 1;
  return first->key.number - second->key.number;
}

static void
add_lobe (GArray *found, const HmDrive *recess, const HmHexalobularRow *row, const HmTables *tables)
{
  HmKeyFit one = { { recess->kind, { 0.0 }, row->number, FALSE }, FALSE, HM_FIT_WILL_NOT_GO_ON, 0.0 };
  HmHexalobularFit fit;

  if (row->number == recess->number)
    one = (HmKeyFit) { one.key, TRUE, HM_FIT_FITS, 1.0 };
  else if (recess->kind == HM_DRIVE_HEXALOBULAR && hm_hexalobular_fit (row->number, recess->number, tables, &fit))
    one = (HmKeyFit) { one.key, TRUE, fit.verdict, fit.hold };
  g_array_append_val (found, one);
}

static void
find_lobes (GArray *found, const HmDrive *recess, const HmTables *tables)
{
  gboolean external = recess->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL;
  const HmHexalobularRow *own = hm_hexalobular_find (recess->number, external, tables), *below = NULL, *above = NULL;
  gsize n;
  const HmHexalobularRow *rows = hm_tables_get_hexalobular (tables, &n);

  for (gsize i = 0; own != NULL && i < n; i++)
    if (rows[i].external == external && rows[i].number < own->number && (below == NULL || rows[i].number > below->number))
      below = &rows[i];
    else if (rows[i].external == external && rows[i].number > own->number && (above == NULL || rows[i].number < above->number))
      above = &rows[i];
  if (below != NULL)
    add_lobe (found, recess, below, tables);
  if (own != NULL)
    add_lobe (found, recess, own, tables);
  if (above != NULL)
    add_lobe (found, recess, above, tables);
}

static gboolean
has_key (const GArray *found, const HmDrive *key)
{
  for (guint i = 0; i < found->len; i++)
    if (hm_drive_equal (&g_array_index (found, HmKeyFit, i).key, key))
      return TRUE;
  return FALSE;
}

static void
add_hex_key (GArray *found, const HmDrive *recess, HmDrive key)
{
  HmKeyFit one = { key, TRUE, hm_key_fit (key.size, recess->size), 0.0 };

  if (fabs (key.size.mm - recess->size.mm) <= NEAR_SHARE * recess->size.mm && !has_key (found, &key))
    g_array_append_val (found, one);
}

static void
find_hex_keys (GArray *found, const HmDrive *recess, const HmTables *tables)
{
  gsize n;
  const HmHexRow *rows = hm_tables_get_hex (tables, &n);

  add_hex_key (found, recess, *recess);
  for (gsize i = 0; i < n; i++)
    if (rows[i].min.mm <= 0.0)
      add_hex_key (found, recess, (HmDrive) { HM_DRIVE_HEX_SOCKET, rows[i].nominal, 0, rows[i].inch });
}

GArray *
hm_key_fits (const HmDrive *recess, const HmTables *tables)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (HmKeyFit));

  g_return_val_if_fail (recess != NULL && tables != NULL, found);
  if (recess->kind == HM_DRIVE_HEXALOBULAR || recess->kind == HM_DRIVE_HEXALOBULAR_EXTERNAL)
    find_lobes (found, recess, tables);
  else if (recess->kind == HM_DRIVE_HEX_SOCKET)
    find_hex_keys (found, recess, tables);
  g_array_sort (found, compare_keys);
  return found;
}

static gboolean
has_drive (const HmFastener *fastener, const HmDrive *drive)
{
  for (guint i = 0; i < fastener->n_drives; i++)
    if (hm_drive_equal (&fastener->drives[i], drive))
      return TRUE;
  return FALSE;
}

static void
count_drive (GArray *found, const HmDrive *drive, const HmFastener *fastener)
{
  HmOtherDrive fresh = { *drive, 1, fastener };

  for (guint i = 0; i < found->len; i++)
    {
      HmOtherDrive *one = &g_array_index (found, HmOtherDrive, i);

      if (hm_drive_equal (&one->drive, drive))
        {
          one->count++;
          return;
        }
    }
  g_array_append_val (found, fresh);
}

static int
compare_counts (gconstpointer a, gconstpointer b)
{
  return (int) ((const HmOtherDrive *) b)->count - (int) ((const HmOtherDrive *) a)->count;
}

GArray *
hm_other_drives (const GPtrArray *fasteners, const HmDrive *drive)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (HmOtherDrive));

  g_return_val_if_fail (fasteners != NULL && drive != NULL, found);
  for (guint i = 0; i < fasteners->len; i++)
    {
      const HmFastener *fastener = g_ptr_array_index (fasteners, i);

      for (guint k = 0; has_drive (fastener, drive) && k < fastener->n_drives; k++)
        if (!hm_drive_equal (&fastener->drives[k], drive))
          count_drive (found, &fastener->drives[k], fastener);
    }
  g_array_sort (found, compare_counts);
  return found;
}
