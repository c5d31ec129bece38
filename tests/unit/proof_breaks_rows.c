/* proof_breaks_rows.c - pages on which a place does not come first, a tag not beside its name,
 * or an end that is not what the step wants (rules G32 to G35): see proof_case.h. */
#include <string.h>

#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))

/* ---- G32 ---- */

static void place_below_its_gear(struct proof_try *try, bool broken)
{
    item_move(try_saying(try, "Cockpit locker, PORT"), 0, broken ? MM(9) : 0);
}

static void place_behind_its_gear(struct proof_try *try, bool broken)
{
    item_move(try_saying(try, "Cockpit, STARBOARD"), broken ? MM(60) : 0, 0);
}

static void place_like_other_words(struct proof_try *try, bool broken)
{
    item_face(try, try_saying(try, "Cockpit locker, PORT"), broken ? FACE_TEXT : FACE_BOLD);
}

/* As if the two rows of a step had each the other's place. */
static void places_exchanged(struct proof_try *try, bool broken)
{
    if (!broken)
        return;
    item_say(try, try_saying(try, "Chart table,"), "Companionway,");
    item_say(try, try_saying(try, "Companionway, "), "Chart table,");
}

/* In the step that has two: extinguisher and port. */
static void place_of_another_row(struct proof_try *try, bool broken)
{
    struct card_row *row = try_row(try, 3);
    struct card_row *other = try_row(try, 4);
    if (broken)
        row->place = other->place;
}

static void opening_under_another_place(struct proof_try *try, bool broken)
{
    struct page_item *place = try_saying(try, "Engine space");
    item_move(place, 0, broken ? MM(8) : 0);
}

/* ---- G33 ---- */

static void name_far_from_its_tag(struct proof_try *try, bool broken)
{
    item_move(try_saying(try, "Fuel valve"), broken ? MM(4) : MM(0.5), 0);
}

static void name_on_another_line(struct proof_try *try, bool broken)
{
    item_move(try_saying(try, "Engine stop"), 0, broken ? MM(1) : 0);
}

static void name_of_other_gear(struct proof_try *try, bool broken)
{
    try_item(try, 2)->name = broken ? "Fire port" : try_item(try, 2)->name;
}

/* ---- G34 ---- */

static void end_of_the_contrary(struct proof_try *try, bool broken)
{
    try_item(try, 2)->end = broken ? "= **in line: OPEN**" : "= **across pipe: SHUT**";
}

static void end_without_handling(struct proof_try *try, bool broken)
{
    try_item(try, 2)->end = broken ? "= **ON**" : "= **SHUT**";
}

/* The state is behind the command: TURN OFF, TURN ON. */
static void end_against_a_state_that_is_wanted(struct proof_try *try, bool broken)
{
    try_item(try, 2)->end = broken ? "= **up: ON**" : "= **down: OFF**";
}

static void head_of_openings_of_the_contrary(struct proof_try *try, bool broken)
{
    for (size_t i = 0; i < sheet_steps(&try->card)->count; i++)
        if (try->steps[i].table_count > 0) {
            struct opening_group *group = arena_alloc(try->arena, sizeof *group);
            *group = try->steps[i].table[0];
            group->head = broken ? "**PORT:** in line = **OPEN**" : group->head;
            try->steps[i].table = group;
            try->steps[i].table_count = 1;
        }
}

/* ---- G35 ---- */

static void colour_alone(struct proof_try *try, bool broken)
{
    try_item(try, 2)->end = broken ? "= **red: SHUT**" : "= **red lever down: SHUT**";
}

static void two_colours_alone(struct proof_try *try, bool broken)
{
    try_item(try, 2)->end = broken ? "= **Red White**" : "= **push the red knob**";
}

static const struct proof_break rows[] = {
    {RULE_PLACE_FIRST, "below its gear", "engine_fire", place_below_its_gear},
    {RULE_PLACE_FIRST, "behind its gear", "man_overboard", place_behind_its_gear},
    {RULE_PLACE_FIRST, "not bold", "engine_fire", place_like_other_words},
    {RULE_PLACE_FIRST, "exchanged", "engine_fire", places_exchanged},
    {RULE_PLACE_FIRST, "of another row", "engine_fire", place_of_another_row},
    {RULE_PLACE_FIRST, "opening under another", "flooding", opening_under_another_place},
    {RULE_TAG_BESIDE, "far away", "engine_fire", name_far_from_its_tag},
    {RULE_TAG_BESIDE, "another line", "engine_fire", name_on_another_line},
    {RULE_TAG_BESIDE, "other gear", "engine_fire", name_of_other_gear},
    {RULE_END_STATE, "open, not shut", "engine_fire", end_of_the_contrary},
    {RULE_END_STATE, "on, without handling", "engine_fire", end_without_handling},
    {RULE_END_STATE, "on, not off", "diesel_leak", end_against_a_state_that_is_wanted},
    {RULE_END_STATE, "head of openings", "flooding", head_of_openings_of_the_contrary},
    {RULE_COLOUR_HANDLING, "red", "engine_fire", colour_alone},
    {RULE_COLOUR_HANDLING, "two", "engine_fire", two_colours_alone},
};

const struct proof_breaks breaks_rows = {rows, COUNT_OF(rows)};
