/* proof_breaks_plan.c - plans whose tags stand wrong or say the wrong thing, whose
 * leaders cross, whose lines are weak (rules G20, G21): see proof_case.h. */
#include <string.h>

#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))

static const struct marker *marker_of(const struct proof_try *try, const char *tag)
{
    for (size_t i = 0; i < sheet_plan(&try->card)->marker_count; i++)
        if (strcmp(sheet_plan(&try->card)->markers[i].tag, tag) == 0)
            return &sheet_plan(&try->card)->markers[i];
    return NULL;
}

/* The first tag on the plan of gear on that side; its frame is painted before it. */
static struct page_item *tag_on(struct proof_try *try, enum side side)
{
    for (size_t n = 0; n < sheet_plan(&try->card)->marker_count; n++) {
        struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, n);
        const struct marker *marker = marker_of(try, tag->run->text);
        if (marker != NULL && marker->side == side)
            return tag;
    }
    return try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, sheet_plan(&try->card)->marker_count);
}

static void tag_move(struct page_item *tag, mpt right, mpt down)
{
    item_move(tag, right, down);
    item_move(tag - 1, right, down);
}

/* ---- where tags stand ---- */

static void tag_beside_the_boat(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    if (broken)
        tag_move(tag, -MM(25), 0);
}

static void tag_ahead_of_the_bow(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    struct page_item *hull = try_thing(try, BLOCK_PLAN, PAGE_PATH, 0);
    if (broken)
        tag_move(tag, 0, hull->area.y - tag->area.y);
}

/* A catamaran's net ends abaft her bows: between them is water. */
static void tag_between_the_bows(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    struct page_item *hull = try_thing(try, BLOCK_PLAN, PAGE_PATH, 0);
    struct page_item *other = try_thing(try, BLOCK_PLAN, PAGE_PATH, 1);
    mpt middle = (hull->area.x + other->area.x + other->area.width) / 2;
    if (broken)
        tag_move(tag, middle - tag->area.x - tag->area.width / 2,
                 hull->area.y + MM(1) - tag->area.y);
}

/* Mirrored about the middle of the boat. */
static void across_the_boat(struct proof_try *try, enum side side, bool broken)
{
    struct page_item *tag = tag_on(try, side), *hull = try_thing(try, BLOCK_PLAN, PAGE_PATH, 0);
    mpt middle = 2 * hull->area.x + hull->area.width, own = 2 * tag->area.x + tag->area.width;
    if (broken)
        tag_move(tag, middle - own, 0);
}

static void port_on_starboard(struct proof_try *try, bool broken)
{
    across_the_boat(try, SIDE_PORT, broken);
}

static void starboard_on_port(struct proof_try *try, bool broken)
{
    across_the_boat(try, SIDE_STARBOARD, broken);
}

/* ---- in the second drawing, of what is on deck ---- */

/* The first tag in that drawing of a monohull, of gear on that side. */
static struct page_item *tag_in(struct proof_try *try, size_t view, enum side side)
{
    struct area hull = try_thing(try, BLOCK_PLAN, PAGE_PATH, view)->area;
    for (size_t n = 0;; n++) {
        struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, n);
        const struct marker *marker = marker_of(try, tag->run->text);
        if (marker != NULL && marker->side == side && tag->area.x > hull.x &&
            tag->area.x < hull.x + hull.width)
            return tag;
    }
}

static void port_on_starboard_of_the_deck(struct proof_try *try, bool broken)
{
    struct page_item *tag = tag_in(try, 1, SIDE_PORT);
    struct area hull = try_thing(try, BLOCK_PLAN, PAGE_PATH, 1)->area;
    if (broken)
        tag_move(tag, 2 * hull.x + hull.width - 2 * tag->area.x - tag->area.width, 0);
}

static void tag_beside_the_deck(struct proof_try *try, bool broken)
{
    struct page_item *tag = tag_in(try, 1, SIDE_STARBOARD);
    struct area hull = try_thing(try, BLOCK_PLAN, PAGE_PATH, 1)->area;
    if (broken)
        tag_move(tag, hull.x + hull.width - tag->area.x, 0);
}

/* From the deck to the same place below. */
static void tag_in_the_other_drawing(struct proof_try *try, bool broken)
{
    struct page_item *tag = tag_in(try, 1, SIDE_PORT);
    mpt left = try_thing(try, BLOCK_PLAN, PAGE_PATH, 0)->area.x -
               try_thing(try, BLOCK_PLAN, PAGE_PATH, 1)->area.x;
    if (broken)
        tag_move(tag, left, 0);
}

/* Of gear on both sides the tag to starboard stands below that to port. */
static void both_on_one_side(struct proof_try *try, bool broken)
{
    struct page_item *tags[2] = {NULL, NULL};
    for (size_t i = 0; i < try->page.count; i++) {
        struct page_item *item = &try->items[i];
        const struct marker *marker = item->kind == PAGE_TEXT && item->role == ROLE_PLAN_TAG
                                          ? marker_of(try, item->run->text) : NULL;
        if (marker != NULL && marker->drawn == SIDE_BOTH)
            tags[tags[0] == NULL ? 0 : 1] = item;
    }
    if (broken)
        tag_move(tags[1], tags[0]->area.x - tags[1]->area.x, MM(5));
}

/* A catamaran's middle is half way between her hulls. */
static void port_on_starboard_catamaran(struct proof_try *try, bool broken)
{
    struct page_item *tag = tag_on(try, SIDE_PORT);
    struct page_item *hull = try_thing(try, BLOCK_PLAN, PAGE_PATH, 0);
    struct page_item *other = try_thing(try, BLOCK_PLAN, PAGE_PATH, 1);
    mpt middle = hull->area.x + other->area.x + other->area.width;
    if (broken)
        tag_move(tag, middle - 2 * tag->area.x - tag->area.width, 0);
}

/* ---- which tags ---- */

static void another_tag(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    item_say(try, tag, broken ? "Z9" : tag->run->text);
}

static void shape_of_the_other_level(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0), *frame = tag - 1;
    bool square = frame->radius == 0;
    if (broken)
        frame->radius = square ? frame->area.height / 2 : 0;
}

static void mark_without_words(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    struct page_item *mark = item_add(try, PAGE_BOX);
    mark->area = (struct area){tag[-1].area.x, tag[-1].area.y, MM(0.8), MM(0.8)};
    mark->fill = broken ? INK_BLACK : INK_GREY;
    mark->block = BLOCK_PLAN;
}

static void tag_not_drawn(struct proof_try *try, bool broken)
{
    if (broken)
        item_remove(try, try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0));
}

static void tag_drawn_twice(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    struct page_item *other = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 1);
    item_say(try, other, broken ? tag->run->text : other->run->text);
}

static void tag_in_no_words(struct proof_try *try, bool broken)
{
    const char *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0)->run->text;
    for (size_t i = 0; i < try->page.count && broken; i++) {
        struct page_item *item = &try->items[i];
        bool words = item->kind == PAGE_TEXT && item->block != BLOCK_PLAN;
        if (words && strstr(item->run->text, tag) != NULL)
            item_say(try, item, "gone");
    }
}

static void tag_without_frame(struct proof_try *try, bool broken)
{
    struct page_item *tag = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 0);
    if (broken)
        item_remove(try, tag - 1);
}

/* ---- leaders ---- */

static struct page_item *leader_of(struct proof_try *try, size_t n)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].part == PART_LEADER && try->items[i].stroke == INK_BLACK && n-- == 0)
            return &try->items[i];
    return try_thing(try, BLOCK_LEADERS, PAGE_LINE, try->page.count);
}

static void leaders_cross(struct proof_try *try, bool broken)
{
    struct page_item *first = leader_of(try, 0), *second = leader_of(try, 1);
    struct point to = first->to;
    if (!broken)
        return;
    first->to = second->to;
    second->to = to;
}

/* So near that it seems to belong to that tag. */
static void leader_by_a_foreign_tag(struct proof_try *try, bool broken)
{
    struct page_item *frame = try_text(try, BLOCK_PLAN, ROLE_PLAN_TAG, 1) - 1;
    mpt y = frame->area.y - (broken ? MM(0.4) : MM(0.6)), x = frame->area.x;
    struct page_item *line = line_add(try, (struct point){x, y},
                                      (struct point){x + frame->area.width, y}, INK_BLACK,
                                      MM(0.35));
    line->part = PART_LEADER;
    line->block = BLOCK_PLAN;
}

/* ---- G21 ---- */

static void outline_thin(struct proof_try *try, bool broken)
{
    try_thing(try, BLOCK_PLAN, PAGE_PATH, 0)->line_width = broken ? MM(0.8) : MM(0.9);
}

static void bulkhead_thin(struct proof_try *try, bool broken)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].kind == PAGE_LINE && try->items[i].block == BLOCK_PLAN &&
            try->items[i].part == PART_NONE)
            try->items[i].line_width = broken ? MM(0.3) : MM(0.35);
}

/* The head's arrow is a path too, and the hulls follow it. */
static void large_outline_thin(struct proof_try *try, bool broken)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].kind == PAGE_PATH && try->items[i].fill == INK_NONE)
            try->items[i].line_width = broken ? MM(1.5) : MM(1.6);
}

static void large_bulkhead_thin(struct proof_try *try, bool broken)
{
    for (size_t i = 0; i < try->page.count; i++)
        if (try->items[i].part == PART_BAND)
            try->items[i].line_width = broken ? MM(0.5) : MM(0.6);
}

static void head_low(struct proof_try *try, bool broken)
{
    try_thing(try, BLOCK_TITLE, PAGE_BOX, 0)->area.height = broken ? MM(14.5) : MM(14.8);
}

/* 60 % of 7 % of 210 mm are 8.82 mm of capitals: 35.2 pt. */
static void head_letters_low(struct proof_try *try, bool broken)
{
    struct page_item *title = try_text(try, BLOCK_TITLE, ROLE_TITLE, 0);
    item_resize(try, title, broken ? 34000 : 36000);
}

/* ---- all ---- */

static const struct proof_break rows[] = {
    {RULE_MARKERS_INSIDE, "beside", "engine_fire", tag_beside_the_boat},
    {RULE_MARKERS_INSIDE, "ahead", "engine_fire", tag_ahead_of_the_bow},
    {RULE_MARKERS_INSIDE, "between the bows", "samphire flooding", tag_between_the_bows},
    {RULE_MARKER_SIDE, "port", "engine_fire", port_on_starboard},
    {RULE_MARKER_SIDE, "starboard", "engine_fire", starboard_on_port},
    {RULE_MARKER_SIDE, "catamaran", "samphire flooding", port_on_starboard_catamaran},
    {RULE_MARKER_SIDE, "on deck", "engine_fire", port_on_starboard_of_the_deck},
    {RULE_MARKER_SIDE, "both on one side", "engine_fire", both_on_one_side},
    {RULE_MARKERS_INSIDE, "beside the deck", "engine_fire", tag_beside_the_deck},
    {RULE_MARKER_LEVEL, "other drawing", "engine_fire", tag_in_the_other_drawing},
    {RULE_MARKER_LEVEL, "other shape", "engine_fire", shape_of_the_other_level},
    {RULE_MARKER_LEVEL, "catamaran", "samphire flooding", shape_of_the_other_level},
    {RULE_MARK_NAMED, "no words", "engine_fire", mark_without_words},
    {RULE_MARKERS_ROWS, "another tag", "engine_fire", another_tag},
    {RULE_MARKERS_ROWS, "not drawn", "engine_fire", tag_not_drawn},
    {RULE_MARKERS_ROWS, "drawn twice", "engine_fire", tag_drawn_twice},
    {RULE_MARKERS_ROWS, "in no words", "engine_fire", tag_in_no_words},
    {RULE_MARKERS_ROWS, "no frame", "engine_fire", tag_without_frame},
    {RULE_LEADERS, "cross", "bramble safety_plan", leaders_cross},
    {RULE_LEADERS, "foreign tag", "engine_fire", leader_by_a_foreign_tag},
    {RULE_PLAN_LINES, "outline", "engine_fire", outline_thin},
    {RULE_PLAN_LINES, "bulkhead", "engine_fire", bulkhead_thin},
    {RULE_PLAN_LINES, "outline, large", "safety_plan_2", large_outline_thin},
    {RULE_PLAN_LINES, "bulkhead, large", "safety_plan_2", large_bulkhead_thin},
    {RULE_PLAN_HEADER, "low", "safety_plan", head_low},
    {RULE_PLAN_HEADER, "low letters", "safety_plan", head_letters_low},
};

const struct proof_breaks breaks_plan = {rows, COUNT_OF(rows)};
