/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hm-fastener-places.h"
#include "hm-key-answer.h"
#include "knowledge-fixture.h"

/* The machines that are shipped: a bolt with a recess of size T40 is also turned by its hexagon. */

static HmFastenerPlaces *
open_places (HmKnowledge **knowledge)
{
  HmFastenerPlaces *places;

  *knowledge = hm_knowledge_open (g_getenv ("HALFMOON_TEST_KNOWLEDGE"), NULL);
  assert_non_null (*knowledge);
  places = hm_fastener_places_new (*knowledge, NULL);
  assert_non_null (places);
  return places;
}

static void
t40_is_also_turned_by_a_half_inch_hexagon (void **state)
{
  g_autoptr (HmKnowledge) knowledge = NULL;
  g_autoptr (HmFastenerPlaces) places = open_places (&knowledge);
  g_autoptr (GArray) others = NULL;
  HmDrive recess, hex;
  gboolean found = FALSE;

  assert_true (hm_drive_parse ("T40", &recess, NULL));
  assert_true (hm_drive_parse ("hex 1/2 in", &hex, NULL));
  others = hm_other_drives (hm_fastener_places_get_fasteners (places), &recess);
  for (guint i = 0; i < others->len; i++)
    found |= hm_drive_equal (&g_array_index (others, HmOtherDrive, i).drive, &hex);
  assert_true (found);
}

static void
places_have_the_drive (void **state)
{
  g_autoptr (HmKnowledge) knowledge = NULL;
  g_autoptr (HmFastenerPlaces) places = open_places (&knowledge);
  g_autoptr (GArray) found = NULL;
  HmDrive hex;

  assert_true (hm_drive_parse ("hex 10 mm", &hex, NULL));
  found = hm_fastener_places_find (places, &hex);
  assert_true (found->len > 0);
  for (guint i = 0; i < found->len; i++)
    {
      const HmFastenerPlace *place = &g_array_index (found, HmFastenerPlace, i);
      gboolean has = FALSE;

      for (guint k = 0; k < place->fastener->n_drives; k++)
        has |= hm_drive_equal (&place->fastener->drives[k], &hex);
      assert_true (has);
      assert_true (place->layout->name[0] != '\0');
    }
}

static void
each_fastener_stands_once (void **state)
{
  g_autoptr (HmKnowledge) knowledge = NULL;
  g_autoptr (HmFastenerPlaces) places = open_places (&knowledge);
  const GPtrArray *all = hm_fastener_places_get_fasteners (places);
  g_autoptr (GHashTable) seen = g_hash_table_new (NULL, NULL);

  assert_true (all->len > 0);
  for (guint i = 0; i < all->len; i++)
    assert_true (g_hash_table_add (seen, g_ptr_array_index (all, i)));
}

int
main (void)
{
  const struct CMUnitTest tests[] = {
    cmocka_unit_test (t40_is_also_turned_by_a_half_inch_hexagon),
    cmocka_unit_test (places_have_the_drive),
    cmocka_unit_test (each_fastener_stands_once),
  };

  return cmocka_run_group_tests_name ("fastener-places", tests, NULL, NULL);
}
