/* test_plan_generated.c - plans of boats that nobody wrote by hand: a tag stands at one place on
 * all cards of a set, on the side that the record tells, and in the order that was measured. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include "../generate/boats.h"
#include "plan_case.h"
#include "text.h"

enum { SEED = 3, BOATS = 45 };

static const char *const own_boats[] = {
    "tests/fleet/boats/tamarisk.yaml", "tests/fleet/boats/bramble.yaml",
    "tests/fleet/boats/samphire.yaml", "tests/islands/boats/eelgrass.yaml",
    "tests/islands/boats/thrift.yaml", "tests/unusual/boats/plover.yaml", NULL};

static char folder[] = "/tmp/maydeck-generated.XXXXXX";

static const char *boat_path(int index, char *path, size_t size)
{
    snprintf(path, size, "%s/boats/b%05d.yaml", folder, index);
    return path;
}

static int boats_begin(void **state)
{
    char boats[64];
    (void)state;
    assert_non_null(mkdtemp(folder));
    snprintf(boats, sizeof boats, "%s/boats", folder);
    assert_int_equal(mkdir(boats, 0700), 0);
    assert_true(boats_write(folder, SEED, BOATS));
    return 0;
}

static int boats_end(void **state)
{
    char path[64];
    (void)state;
    for (int i = 0; i < BOATS; i++)
        assert_int_equal(unlink(boat_path(i, path, sizeof path)), 0);
    snprintf(path, sizeof path, "%s/base.yaml", folder);
    assert_int_equal(unlink(path), 0);
    snprintf(path, sizeof path, "%s/boats", folder);
    assert_int_equal(rmdir(path), 0);
    return rmdir(folder);
}

/* What is looked at on the plan of each card of a boat; how much of it was there. */
typedef size_t card_look(const struct sheet *card, const struct pen *pen);

static size_t boat_look(const char *path, card_look *look)
{
    size_t looked = 0;
    plan_set_up(NULL);
    plan_boat_begin(path);
    for (size_t i = 0; i < plan_case.set->count; i++) {
        const struct sheet *card = plan_case.set->sheets[i];
        if (!has_plan(card))
            continue;
        struct pen pen = plan_drawn(card, plan_floor());
        if (pen.failed)
            fail_msg("%s: %s", path, case_problems_text(&plan_case.cards));
        looked += look(card, &pen);
    }
    plan_tear_down(NULL);
    return looked;
}

static size_t boats_look(card_look *look)
{
    char path[64];
    size_t looked = 0;
    for (int i = 0; own_boats[i] != NULL; i++)
        looked += boat_look(own_boats[i], look);
    for (int i = 0; i < BOATS; i++)
        looked += boat_look(boat_path(i, path, sizeof path), look);
    return looked;
}

/* ---- one place ---- */

static mpt distance(struct point a, struct point b)
{
    return abs(a.x - b.x) + abs(a.y - b.y);
}

static size_t distances_look(const struct sheet *card, const struct pen *pen)
{
    size_t looked = 0;
    for (size_t i = 0; i < plan_case.set->count; i++) {
        const struct sheet *other = plan_case.set->sheets[i];
        if (other == card || !has_plan(other))
            continue;
        struct pen drawn = plan_drawn(other, plan_floor());
        for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
            const char *tag = sheet_plan(card)->markers[m].tag;
            struct found_tag here = tag_find(pen, tag), there = tag_find(&drawn, tag);
            if (there.count == 0)
                continue;
            looked++;
            if (distance(box_middle(here.left.box), box_middle(there.left.box)) > 1 ||
                distance(box_middle(here.right.box), box_middle(there.right.box)) > 1)
                fail_msg("%s: %s stands elsewhere on %s", card->name, tag, other->name);
        }
    }
    return looked;
}

static void the_largest_distance_between_places_of_a_tag_is_none(void **state)
{
    (void)state;
    assert_true(boats_look(distances_look) > 5000);
}

/* ---- as recorded ---- */

static const struct marker *marker_of_tag(const struct sheet *card, const char *tag)
{
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++)
        if (text_equal(sheet_plan(card)->markers[m].tag, tag))
            return &sheet_plan(card)->markers[m];
    return NULL;
}

/* Where one stands to work it is the place that counts. */
static enum side recorded_side(const struct equipment *gear)
{
    enum side side = worked_side(gear);
    if (!gear->at.given || gear->from.place_zone != NULL || side != SIDE_NONE)
        return side;
    return gear->at.second.milli < 0 ? SIDE_PORT
                                     : gear->at.second.milli > 0 ? SIDE_STARBOARD : SIDE_NONE;
}

static size_t sides_look(const struct sheet *card, const struct pen *pen)
{
    const struct boat *boat = plan_case.cards.boat;
    size_t looked = 0;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        const struct marker *marker = marker_of_tag(card, gear->tag.text);
        enum side side = recorded_side(gear);
        if (marker == NULL || (side != SIDE_PORT && side != SIDE_STARBOARD))
            continue;
        struct area bar = view_bar(card, pen, plan_head_of(marker));
        mpt off = box_middle(tag_find(pen, gear->tag.text).left.box).x - bar.x - bar.width / 2;
        looked++;
        if (side == SIDE_PORT ? off >= 0 : off <= 0)
            fail_msg("%s: %s is not %s", card->name, gear->tag.text, side_word(side));
    }
    return looked;
}

static void what_has_a_side_stands_on_it(void **state)
{
    (void)state;
    assert_true(boats_look(sides_look) > 1500);
}

/* Each hull of several has rows of its own, and so has the deck between them. */
static bool share_rows(const struct marker *a, const struct marker *b)
{
    return plan_head_of(a) == plan_head_of(b) &&
           (plan_case.cards.boat->facts.hull.value == HULL_MONOHULL ||
            (a->side == b->side && a->zone->in_hulls == b->zone->in_hulls));
}

static bool is_measured(const struct equipment *gear)
{
    return gear->at.given && gear->from.place_zone == NULL;
}

/* From where to where a piece surely is, as recorded: a point, or the whole of its zone. */
static void reach_of(const struct equipment *gear, int64_t *from, int64_t *to)
{
    int64_t loa = plan_case.cards.boat->facts.loa_m.milli;
    const struct zone *zone = worked_zone(gear);
    *from = is_measured(gear) ? gear->at.first.milli : zone->from * loa / 100;
    *to = is_measured(gear) ? gear->at.first.milli : zone->to * loa / 100;
}

static size_t order_look_at(const struct sheet *card, const struct pen *pen,
                            const struct equipment *ahead, const struct equipment *abaft)
{
    const struct marker *first = marker_of_tag(card, ahead->tag.text);
    const struct marker *second = marker_of_tag(card, abaft->tag.text);
    int64_t from[2], to[2];
    if (first == NULL || second == NULL || !share_rows(first, second))
        return 0;
    reach_of(ahead, &from[0], &to[0]);
    reach_of(abaft, &from[1], &to[1]);
    if (to[0] >= from[1])
        return 0;
    if (box_middle(tag_find(pen, ahead->tag.text).left.box).y >
        box_middle(tag_find(pen, abaft->tag.text).left.box).y + 1)
        fail_msg("%s: %s stands abaft %s", card->name, ahead->tag.text, abaft->tag.text);
    return 1;
}

static size_t order_look(const struct sheet *card, const struct pen *pen)
{
    const struct boat *boat = plan_case.cards.boat;
    size_t looked = 0;
    for (size_t i = 0; i < boat->equipment_count; i++)
        for (size_t j = 0; j < boat->equipment_count; j++)
            looked += order_look_at(card, pen, &boat->equipment[i], &boat->equipment[j]);
    return looked;
}

static void what_was_recorded_ahead_stands_ahead(void **state)
{
    (void)state;
    assert_true(boats_look(order_look) > 800);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_largest_distance_between_places_of_a_tag_is_none),
        cmocka_unit_test(what_has_a_side_stands_on_it),
        cmocka_unit_test(what_was_recorded_ahead_stands_ahead),
    };
    return cmocka_run_group_tests(tests, boats_begin, boats_end) != 0;
}
