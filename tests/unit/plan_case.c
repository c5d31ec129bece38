/* plan_case.c - boats drawn beside steps, and what of them stands on the page. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>
#include <string.h>

#include "plan_case.h"
#include "text.h"

static const char *const boats[] = {
    "tests/fleet/boats/tamarisk.yaml", "tests/fleet/boats/bramble.yaml",
    "tests/fleet/boats/samphire.yaml", "tests/islands/boats/eelgrass.yaml",
    "tests/islands/boats/sundew.yaml"};
#define BOAT_COUNT (sizeof boats / sizeof *boats)

struct plan_case plan_case;

int plan_set_up(void **state)
{
    (void)state;
    case_begin(&plan_case.cards);
    plan_case.faces = case_faces(&plan_case.cards);
    return 0;
}

int plan_tear_down(void **state)
{
    (void)state;
    faces_close(plan_case.faces);
    case_end(&plan_case.cards);
    return 0;
}

static struct pen empty_plan_pen(void)
{
    return (struct pen){.faces = plan_case.faces, .slots = &plan_case.slots,
                        .arena = plan_case.cards.arena, .problems = plan_case.cards.problems,
                        .paper = paper_of(PAPER_A4)};
}

void plan_boat_begin(const char *boat)
{
    case_boat(&plan_case.cards, boat);
    plan_case.set = case_compose(&plan_case.cards, true);
    struct pen pen = empty_plan_pen();
    plan_case.slots = boat_slots_find(plan_case.set, &pen);
}

const struct sheet *plan_torches(const char *hull, const char *gear)
{
    const char *text = case_boat_text(&plan_case.cards, CASE_RADIO, gear, "  - flares\n");
    const char *monohull = strstr(text, "monohull");
    const char *const whole[] = {
        case_procedure_text(&plan_case.cards, "dark", 10,
                            "steps: [{id: use, sources: [S5], uses: [torch]}]\n",
                            "steps: {use: {act: \"**TAKE** it.\"}}\n"), NULL};
    case_procedures(&plan_case.cards, whole);
    plan_boat_begin(text_format(plan_case.cards.arena, "%.*s%s%s", (int)(monohull - text), text,
                                hull, monohull + strlen("monohull")));
    return case_card(plan_case.set, "dark");
}

bool has_plan(const struct sheet *card)
{
    return card->kind == SHEET_CARD && sheet_block(card, BLOCK_PLAN) != NULL;
}

struct area plan_column(mpt height)
{
    const struct page_needs needs = {.way = 0};
    struct area area = frame_make(paper_of(PAPER_A4), TEMPLATE_CARD, &needs).at[AREA_RIGHT];
    area.height = height;
    return area;
}

mpt plan_floor(void)
{
    struct pen pen = empty_plan_pen();
    return plan_heights(&pen).floor;
}

mpt plan_aim(void)
{
    struct pen pen = empty_plan_pen();
    return plan_heights(&pen).aim;
}

struct pen plan_drawn(const struct sheet *card, mpt height)
{
    struct pen pen = empty_plan_pen();
    pen.sheet = card;
    plan_place(&pen, plan_column(height));
    return pen;
}

void each_plan(plan_look *look)
{
    for (size_t b = 0; b < BOAT_COUNT; b++) {
        plan_boat_begin(boats[b]);
        const mpt heights[] = {plan_floor(), plan_aim()};
        size_t looked = 0;
        for (size_t i = 0; i < plan_case.set->count; i++)
            for (size_t h = 0; has_plan(plan_case.set->sheets[i]) && h < 2; h++, looked++) {
                struct pen pen = plan_drawn(plan_case.set->sheets[i], heights[h]);
                if (pen.failed)
                    fail_msg("%s", case_problems_text(&plan_case.cards));
                look(plan_case.set->sheets[i], &pen);
            }
        assert_true(looked > 6);
    }
}

/* ---- what was drawn ---- */

size_t tags_drawn(const struct pen *pen, struct drawn_tag tags[TAGS_MOST])
{
    size_t count = 0;
    for (size_t i = 1; i < pen->count; i++) {
        const struct page_item *text = &pen->items[i], *box = &pen->items[i - 1];
        if (text->kind != PAGE_TEXT || text->role != ROLE_PLAN_TAG)
            continue;
        assert_int_equal(box->kind, PAGE_BOX);
        assert_int_equal(box->fill, INK_BLACK);
        assert_int_equal(text->fill, INK_WHITE);
        assert_true(text->area.x >= box->area.x);     /* the box holds its text */
        assert_true(text->area.x + text->area.width <= box->area.x + box->area.width);
        assert_true(count < TAGS_MOST);
        tags[count++] = (struct drawn_tag){text->run->text, box->area, box->radius > 0};
    }
    return count;
}

struct point box_middle(struct area box)
{
    return (struct point){box.x + box.width / 2, box.y + box.height / 2};
}

struct found_tag tag_find(const struct pen *pen, const char *text)
{
    struct drawn_tag tags[TAGS_MOST];
    struct found_tag found = {0};
    size_t count = tags_drawn(pen, tags);
    for (size_t i = 0; i < count; i++) {
        if (!text_equal(tags[i].text, text))
            continue;
        if (found.count == 0 || tags[i].box.x < found.left.box.x)
            found.left = tags[i];
        if (found.count == 0 || tags[i].box.x > found.right.box.x)
            found.right = tags[i];
        found.count++;
    }
    return found;
}

struct area view_bar(const struct sheet *card, const struct pen *pen, enum plan_word head)
{
    for (size_t i = 2; i < pen->count; i++)
        if (pen->items[i].kind == PAGE_TEXT && pen->items[i].fill == INK_WHITE &&
            text_equal(pen->items[i].run->text, sheet_plan(card)->words[head]))
            return pen->items[i - 2].area;
    return (struct area){0};
}

static bool boxes_overlap(struct area a, struct area b)
{
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height &&
           b.y < a.y + a.height;
}

bool is_plan_label(const struct page_item *item)
{
    return item->kind == PAGE_TEXT && item->role == ROLE_PLAN_LABEL;
}

/* What lies between a catamaran's hulls lies beside her deck. */
enum plan_word plan_head_of(const struct marker *marker)
{
    const struct boat *boat = plan_case.cards.boat;
    bool sided = marker->drawn == SIDE_PORT || marker->drawn == SIDE_STARBOARD ||
                 marker->drawn == SIDE_BOTH || marker->zone->side != SIDE_NONE;
    bool below = marker->level == LEVEL_BELOW;
    if (boat->facts.hull.value == HULL_CATAMARAN)
        return below && marker->zone->in_hulls && sided ? PLAN_HEAD_HULLS
                                                        : PLAN_HEAD_DECK_SALOON;
    if (!boat_has_cabin(boat))
        return PLAN_HEAD_WHOLE;
    return below ? PLAN_HEAD_BELOW : PLAN_HEAD_DECK;
}

/* A tag that is larger than its least reaches over the edge of a hull that is narrower. */
void each_tag_is_in_its_view(const struct sheet *card, const struct pen *pen)
{
    const mpt slack = MM(0.5);
    for (size_t m = 0; m < sheet_plan(card)->marker_count; m++) {
        const struct marker *marker = &sheet_plan(card)->markers[m];
        struct found_tag found = tag_find(pen, marker->tag);
        struct area bar = view_bar(card, pen, plan_head_of(marker));
        mpt middle = bar.x + bar.width / 2, left = box_middle(found.left.box).x;
        mpt right = box_middle(found.right.box).x;
        enum side side = marker->drawn == SIDE_NONE ? marker->zone->side : marker->drawn;
        if (found.left.box.x < bar.x - slack ||
            found.right.box.x + found.right.box.width > bar.x + bar.width + slack)
            fail_msg("%s: %s stands outside of its view", card->name, marker->tag);
        bool wrong = (side == SIDE_PORT && right >= middle) ||
                     (side == SIDE_STARBOARD && left <= middle) ||
                     (side == SIDE_BOTH && (left >= middle || right <= middle));
        if (wrong)
            fail_msg("%s: %s stands on the wrong side", card->name, marker->tag);
    }
}

/* No tag lies on another, no word on another, and no tag on a word. */
void nothing_covers_another(const struct sheet *card, const struct pen *pen)
{
    struct drawn_tag tags[TAGS_MOST];
    size_t count = tags_drawn(pen, tags);
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < i; j++)
            if (boxes_overlap(tags[i].box, tags[j].box))
                fail_msg("%s: %s lies on %s", card->name, tags[i].text, tags[j].text);
    for (size_t i = 0; i < pen->count; i++) {
        const struct page_item *word = &pen->items[i];
        for (size_t j = 0; is_plan_label(word) && j < count; j++)
            if (boxes_overlap(word->area, tags[j].box))
                fail_msg("%s: %s lies on %s", card->name, tags[j].text, word->run->text);
        for (size_t j = 0; is_plan_label(word) && j < i; j++)
            if (is_plan_label(&pen->items[j]) && boxes_overlap(word->area, pen->items[j].area))
                fail_msg("%s: `%s` lies on `%s`", card->name, word->run->text,
                         pen->items[j].run->text);
    }
}

