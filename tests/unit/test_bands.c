/* test_bands.c - places of a safety plan as bands: what shares one, which list a row stands in,
 * in which order. Places are made up; nothing is drawn. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include "layout/bands.h"
#include "text.h"

#define PLACES_MOST 8
#define ROWS_MOST 12

static struct arena *arena;
static struct plan_place places[PLACES_MOST];
static struct plan_row rows[PLACES_MOST][ROWS_MOST];
static size_t count;

static int set_up(void **state)
{
    (void)state;
    arena = arena_new(1 << 20);
    count = 0;
    return 0;
}

static int tear_down(void **state)
{
    (void)state;
    arena_free(arena);
    return 0;
}

/* One more place, of so many rows with tags that begin with that letter. */
static struct plan_row *place_add(enum zone_key zone, enum side side, size_t row_count, char letter)
{
    struct plan_place *place = &places[count];
    struct marker marker = {.tag = "", .zone = zone_of(zone), .side = side};
    *place = (struct plan_place){.marker = marker, .rows = rows[count], .row_count = row_count,
                                 .zone_name = zone_word(zone)};
    place->title = text_format(arena, "%s, %s", zone_word(zone), side_word(side));
    for (size_t i = 0; i < row_count; i++) {
        rows[count][i] = (struct plan_row){.name = "thing", .detail = "", .marker = marker};
        rows[count][i].marker.tag = text_format(arena, "%c%zu", letter, i + 1);
    }
    return rows[count++];
}

static void list_write(struct text_builder *out, const struct band_list *list)
{
    for (size_t i = 0; i < list->count; i++)
        text_add_format(out, "%s%s%s", i == 0 ? "" : " ", list->rows[i].headed ? "/" : "",
                        list->rows[i].row->marker.tag);
}

/* "left : right | ..."; a stroke before the rows over which the name of their place stands. */
static const char *bands_text(enum way_up up)
{
    struct bands bands = bands_of(places, count, up, arena);
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < bands.count; i++) {
        text_add(&out, i == 0 ? "" : " | ");
        list_write(&out, &bands.at[i].lists[LIST_LEFT]);
        text_add(&out, " : ");
        list_write(&out, &bands.at[i].lists[LIST_RIGHT]);
    }
    return out.at == NULL ? "" : out.at;
}

static void both_sides_of_a_zone_are_one_band(void **state)
{
    (void)state;
    place_add(ZONE_saloon, SIDE_PORT, 2, 'A');
    place_add(ZONE_saloon, SIDE_STARBOARD, 1, 'B');
    place_add(ZONE_cockpit, SIDE_PORT, 1, 'C');
    assert_string_equal(bands_text(BOW_UP), "/A1 A2 : /B1 | /C1 : ");
}

static void families_of_zones_are_one_band(void **state)
{
    (void)state;
    place_add(ZONE_aft_cabin_port, SIDE_PORT, 1, 'A');
    place_add(ZONE_aft_cabin_starboard, SIDE_STARBOARD, 1, 'B');
    assert_string_equal(bands_text(BOW_UP), "/A1 : /B1");
}

/* The chart table to port and the galley to starboard. */
static void neighbours_on_two_sides_share_a_band(void **state)
{
    (void)state;
    place_add(ZONE_navigation_station, SIDE_PORT, 2, 'A');
    place_add(ZONE_galley, SIDE_STARBOARD, 1, 'B');
    place_add(ZONE_aft_heads, SIDE_PORT, 1, 'C');
    place_add(ZONE_cockpit, SIDE_PORT, 1, 'D');
    assert_string_equal(bands_text(BOW_UP), "/A1 A2 : /B1 | /C1 :  | /D1 : ");
}

/* She ends between them. */
static void a_platform_shares_no_band_with_what_is_aboard(void **state)
{
    (void)state;
    place_add(ZONE_pushpit, SIDE_PORT, 1, 'A');
    place_add(ZONE_bathing_platform, SIDE_STARBOARD, 1, 'B');
    assert_string_equal(bands_text(BOW_UP), "/A1 :  |  : /B1");
}

static void what_is_amidships_shares_none(void **state)
{
    (void)state;
    place_add(ZONE_navigation_station, SIDE_PORT, 1, 'A');
    place_add(ZONE_galley, SIDE_CENTRE, 1, 'B');
    assert_string_equal(bands_text(BOW_UP), "/A1 :  |  : /B1");
}

static void what_is_amidships_stands_in_the_shorter_list(void **state)
{
    (void)state;
    place_add(ZONE_saloon, SIDE_NONE, 3, 'C');
    place_add(ZONE_saloon, SIDE_PORT, 3, 'A');
    place_add(ZONE_saloon, SIDE_STARBOARD, 1, 'B');
    assert_string_equal(bands_text(BOW_UP), "/A1 A2 A3 : /B1 /C1 C2 C3");
    count = 1;
    assert_string_equal(bands_text(BOW_UP), "/C2 : /C1 C3");
}

static void what_is_on_both_sides_stands_in_both_lists(void **state)
{
    (void)state;
    place_add(ZONE_side_deck, SIDE_BOTH, 1, 'A');
    assert_string_equal(bands_text(BOW_UP), "/A1 : /A1");
}

/* A side that nobody told follows from where it was measured, well off the middle. */
static void what_was_measured_has_a_side(void **state)
{
    (void)state;
    struct plan_row *row = place_add(ZONE_saloon, SIDE_NONE, 3, 'A');
    row[0].marker.exact = row[1].marker.exact = true;
    row[0].marker.y_mm = -900;
    row[1].marker.y_mm = 900;
    row[2].marker.y_mm = -900;                     /* of the zone, not measured */
    assert_string_equal(bands_text(BOW_UP), "/A1 : /A2 A3");
}

static void turned_all_is_the_other_way_round(void **state)
{
    (void)state;
    place_add(ZONE_saloon, SIDE_PORT, 2, 'A');
    place_add(ZONE_saloon, SIDE_STARBOARD, 1, 'B');
    place_add(ZONE_cockpit, SIDE_PORT, 1, 'C');
    assert_string_equal(bands_text(STERN_UP), " : /C1 | /B1 : /A1 A2");
}

/* Turned, too, a row farther aft stands over the others of its place. */
static void rows_of_a_place_follow_the_boat(void **state)
{
    (void)state;
    struct plan_row *row = place_add(ZONE_saloon, SIDE_PORT, 4, 'A');
    for (size_t i = 0; i < 4; i++)
        row[i].marker.x_mm = i < 2 ? 4000 : 4000 + 100 * (int32_t)i;
    assert_string_equal(bands_text(BOW_UP), "/A1 A2 A3 A4 : ");
    assert_string_equal(bands_text(STERN_UP), " : /A4 A3 A1 A2");
}

static void lines_are_those_of_the_longer_list(void **state)
{
    (void)state;
    place_add(ZONE_saloon, SIDE_PORT, 2, 'A');
    place_add(ZONE_saloon, SIDE_STARBOARD, 4, 'B');
    assert_int_equal(band_lines(&bands_of(places, count, BOW_UP, arena).at[0]), 5);
}

static void no_places_are_no_bands(void **state)
{
    (void)state;
    assert_int_equal(bands_of(places, 0, BOW_UP, arena).count, 0);
}

#define TEST(function) cmocka_unit_test_setup_teardown(function, set_up, tear_down)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(both_sides_of_a_zone_are_one_band),
        TEST(families_of_zones_are_one_band),
        TEST(neighbours_on_two_sides_share_a_band),
        TEST(a_platform_shares_no_band_with_what_is_aboard),
        TEST(what_is_amidships_shares_none),
        TEST(what_is_amidships_stands_in_the_shorter_list),
        TEST(what_is_on_both_sides_stands_in_both_lists),
        TEST(what_was_measured_has_a_side),
        TEST(turned_all_is_the_other_way_round),
        TEST(rows_of_a_place_follow_the_boat),
        TEST(lines_are_those_of_the_longer_list),
        TEST(no_places_are_no_bands),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
