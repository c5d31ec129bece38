/* proof_breaks_steps.c - cards with too much, without an exit, a source or a channel, or
 * out of order (rules G14, G15, G19, G23, G25, G27, G31): see proof_case.h. */
#include <string.h>

#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))

/* ---- G14: how much ---- */

/* The steps up to so many, the last ones copies of the first. */
static void steps_filled(struct proof_try *try, size_t count)
{
    for (size_t i = sheet_steps(&try->card)->count; i < count; i++)
        try->steps[i] = try->steps[0];
    FACTS(try->arena, &try->card, steps, BLOCK_STEPS)->count = count;
}

static void nine_steps(struct proof_try *try, bool broken)
{
    if (broken)
        steps_filled(try, 9);
}

static void fifteen_rows(struct proof_try *try, bool broken)
{
    size_t rows = 0;
    for (size_t i = 0; i < sheet_steps(&try->card)->count; i++)
        rows += try->steps[i].row_count;
    struct card_row *list = (struct card_row *)(uintptr_t)try->steps[0].rows;
    for (; rows < (broken ? 15 : 14); rows++)
        list[try->steps[0].row_count++] = list[0];
}

static void number_wrong(struct proof_try *try, bool broken)
{
    item_say(try, try_text(try, BLOCK_STEPS, ROLE_NUMBER, 1), broken ? "3" : "2");
}

static void number_lost(struct proof_try *try, bool broken)
{
    if (broken)
        item_remove(try, try_text(try, BLOCK_STEPS, ROLE_NUMBER, 5));
}

static void step_above_its_forerunner(struct proof_try *try, bool broken)
{
    struct page_item *first = try_text(try, BLOCK_STEPS, ROLE_NUMBER, 0);
    struct page_item *second = try_text(try, BLOCK_STEPS, ROLE_NUMBER, 1);
    if (broken)
        item_move(second, 0, first->baseline - second->baseline - MM(4));
}

/* So many warnings of that kind, all like that one. */
static void warnings_filled(struct proof_try *try, enum block_key key, size_t count,
                            struct card_warning one)
{
    struct card_warning *items = arena_array(try->arena, count, sizeof *items);
    struct warnings_facts *warnings = FACTS(try->arena, &try->card, warnings, key);
    for (size_t i = 0; i < count; i++)
        items[i] = one;
    warnings->items = items;
    warnings->count = count;
}

static void fourth_never(struct proof_try *try, bool broken)
{
    warnings_filled(try, BLOCK_NEVER, broken ? 4 : 3,
                    sheet_warnings(&try->card, BLOCK_NEVER)->items[0]);
}

static void fourth_caution(struct proof_try *try, bool broken)
{
    warnings_filled(try, BLOCK_CAUTIONS, broken ? 4 : 3,
                    sheet_warnings(&try->card, BLOCK_CAUTIONS)->items[0]);
}

static void third_own_line(struct proof_try *try, bool broken)
{
    warnings_filled(try, BLOCK_OWN_LINES, broken ? 3 : 2,
                    sheet_warnings(&try->card, BLOCK_NEVER)->items[0]);
}

/* ---- G14: exits ---- */

static void no_words_for_no(struct proof_try *try, bool broken)
{
    struct decision_facts *decision = FACTS(try->arena, &try->card, decision, BLOCK_DECISION);
    decision->no = broken ? "" : decision->no;
}

static void yes_is_not_on_the_page(struct proof_try *try, bool broken)
{
    if (broken)
        item_remove(try, try_saying(try, "YES"));
}

static struct procedure *own_procedure(struct proof_try *try)
{
    struct procedure *procedure = arena_alloc(try->arena, sizeof *procedure);
    *procedure = *try->card.procedure;
    try->card.procedure = procedure;
    return procedure;
}

static void after_no_step(struct proof_try *try, bool broken)
{
    own_procedure(try)->decision.after.text = broken ? "nowhere" : try->steps[2].id;
}

/* ---- G15 ---- */

static void tag_of_no_gear(struct proof_try *try, bool broken)
{
    static const char *const strange[] = {"Z99"};
    if (broken)
        try_item(try, 1)->tags = strange;
}

static void row_without_place(struct proof_try *try, bool broken)
{
    struct card_row *row = try_row(try, 1);
    row->place = broken ? "" : row->place;
}

static void row_without_tag(struct proof_try *try, bool broken)
{
    struct row_item *item = try_item(try, 1);
    item->tag_count = broken ? 0 : item->tag_count;
}

static void table_tag_of_no_gear(struct proof_try *try, bool broken)
{
    static const char *const strange[] = {"Z99"};
    for (size_t i = 0; i < sheet_steps(&try->card)->count; i++)
        if (try->steps[i].table_count > 0 && broken) {
            struct opening_group *group = arena_alloc(try->arena, sizeof *group);
            struct card_row *row = arena_alloc(try->arena, sizeof *row);
            struct row_item *item = arena_alloc(try->arena, sizeof *item);
            *group = try->steps[i].table[0];
            *row = group->rows[0];
            *item = row->items[0];
            item->tags = strange;
            row->items = item;
            row->item_count = 1;
            group->rows = row;
            group->row_count = 1;
            try->steps[i].table = group;
            try->steps[i].table_count = 1;
        }
}

/* ---- G19 ---- */

static void never_without_source(struct proof_try *try, bool broken)
{
    struct card_warning never = sheet_warnings(&try->card, BLOCK_NEVER)->items[0];
    never.tag = broken ? "" : never.tag;
    warnings_filled(try, BLOCK_NEVER, 1, never);
}

/* Where a page has no room for it, the safety plan lists it; of no page's and no plan's it is
 * nobody's. */
static void source_on_no_page(struct proof_try *try, bool broken)
{
    struct card_warning caution = sheet_warnings(&try->card, BLOCK_CAUTIONS)->items[0];
    item_remove(try, try_text(try, BLOCK_CAUTIONS, ROLE_SOURCE_TAG, 0));
    caution.tag = broken ? "Nobody" : caution.tag;
    warnings_filled(try, BLOCK_CAUTIONS, 1, caution);
}

static void caution_without_signal_word(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "CAUTION"), broken ? "Mind" : "CAUTION");
}

static void lethal_after_its_rows(struct proof_try *try, bool broken)
{
    struct page_item *words = try_saying(try, "Only outside the smoke.");
    struct page_item *next = try_text(try, BLOCK_STEPS, ROLE_NUMBER, 5);
    if (broken)
        item_move(words, 0, next->baseline - MM(4) - words->baseline);
}

static void lethal_with_another_step(struct proof_try *try, bool broken)
{
    struct page_item *words = try_saying(try, "Only outside the smoke.");
    struct page_item *before = try_text(try, BLOCK_STEPS, ROLE_NUMBER, 3);
    if (broken)
        item_move(words, 0, before->baseline - MM(8) - words->baseline);
}

/* ---- G23 ---- */

static void channel_not_named(struct proof_try *try, bool broken)
{
    for (size_t i = 0; i < try->page.count && broken; i++)
        if (try->items[i].kind == PAGE_TEXT && try->items[i].block == BLOCK_CALL &&
            strstr(try->items[i].run->text, "16") != NULL)
            item_say(try, &try->items[i], "Channel");
}

static void mmsi_in_one(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "200 014 730"), broken ? "200014730" : "200014 730");
}

/* ---- G25 ---- */

static void approved_after_print(struct proof_try *try, bool broken)
{
    FACTS(try->arena, &try->card, footer, BLOCK_FOOTER)->left[1] =
        broken ? "Approved QA, instructor, 2026-12-24." : "Approved QA, instructor, 2026-11-24.";
}

static void gear_ran_out_before_print(struct proof_try *try, bool broken)
{
    FACTS(try->arena, &try->card, footer, BLOCK_FOOTER)->dates =
        broken ? "Gear dates run to 2026-10." : "Gear dates run to 2026-11.";
}

/* ---- G27 ---- */

/* One block is painted, and read aloud, before another. */
static void call_read_before_steps(struct proof_try *try, bool broken)
{
    struct page_item first = try->items[0];
    if (!broken)
        return;
    for (size_t i = 0; i + 1 < try->page.count; i++)
        if (try->items[i].block == BLOCK_SIGNS) {
            first = try->items[i];
            first.block = BLOCK_CALL;
            memmove(&try->items[i + 1], &try->items[i],
                    (try->page.count++ - i) * sizeof first);
            try->items[i] = first;
            return;
        }
}

/* ---- G31 ---- */

static void four_notes(struct proof_try *try, bool broken)
{
    for (size_t i = 0; i < (broken ? 4 : 3); i++)
        try->steps[i].headline.text = "**QUICKLY** away.";
}

/* ---- all ---- */

static const struct proof_break rows[] = {
    {RULE_STEPS, "nine steps", "engine_fire", nine_steps},
    {RULE_STEPS, "fifteen rows", "engine_fire", fifteen_rows},
    {RULE_STEPS, "number wrong", "engine_fire", number_wrong},
    {RULE_STEPS, "number lost", "engine_fire", number_lost},
    {RULE_STEPS, "not downwards", "engine_fire", step_above_its_forerunner},
    {RULE_NEVERS, "nevers", "engine_fire", fourth_never},
    {RULE_NEVERS, "cautions", "engine_fire", fourth_caution},
    {RULE_NEVERS, "lines of the base", "engine_fire", third_own_line},
    {RULE_EXITS, "no words", "engine_fire", no_words_for_no},
    {RULE_EXITS, "not on the page", "engine_fire", yes_is_not_on_the_page},
    {RULE_EXITS, "after no step", "engine_fire", after_no_step},
    {RULE_TAG_RECORDED, "strange tag", "engine_fire", tag_of_no_gear},
    {RULE_TAG_RECORDED, "no place", "engine_fire", row_without_place},
    {RULE_TAG_RECORDED, "no tag", "engine_fire", row_without_tag},
    {RULE_TAG_RECORDED, "strange tag in the table", "samphire flooding", table_tag_of_no_gear},
    {RULE_WARNING_SOURCE, "no source", "engine_fire", never_without_source},
    {RULE_WARNING_SOURCE, "source on no page", "galley_fire", source_on_no_page},
    {RULE_WARNING_SOURCE, "no signal word", "engine_fire", caution_without_signal_word},
    {RULE_LETHAL, "after its rows", "engine_fire", lethal_after_its_rows},
    {RULE_LETHAL, "with another step", "engine_fire", lethal_with_another_step},
    {RULE_CHANNEL, "not named", "engine_fire", channel_not_named},
    {RULE_DIGITS, "MMSI in one", "engine_fire", mmsi_in_one},
    {RULE_DATES, "approved after print", "engine_fire", approved_after_print},
    {RULE_DATES, "gear ran out", "engine_fire", gear_ran_out_before_print},
    {RULE_ORDER, "call before steps", "engine_fire", call_read_before_steps},
    {RULE_NOTES, "four", "engine_fire", four_notes},
};

const struct proof_breaks breaks_steps = {rows, COUNT_OF(rows)};
