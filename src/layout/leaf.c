/* leaf.c - a card on the front and the back of one leaf: what to do on the front, boxes, plan and
 * call on the back, or the call on a leaf of its own (room: layout). */
#include "boat_slots.h"
#include "boxes.h"
#include "call.h"
#include "pages.h"
#include "steps.h"
#include "words.h"

/* Which page each block stands on; LEAF_ALL: on each. */
enum leaf_page { LEAF_ALL, LEAF_FRONT, LEAF_BACK, LEAF_CALL };
static const enum leaf_page page_of_block[BLOCK_COUNT] = {
    [BLOCK_SIGNS] = LEAF_FRONT, [BLOCK_BERTH] = LEAF_FRONT, [BLOCK_BERTH_SAY] = LEAF_FRONT,
    [BLOCK_ANCHOR] = LEAF_FRONT, [BLOCK_CALL_LINE] = LEAF_FRONT, [BLOCK_STEPS] = LEAF_FRONT,
    [BLOCK_PLAN] = LEAF_BACK, [BLOCK_DECISION] = LEAF_BACK, [BLOCK_NEVER] = LEAF_BACK,
    [BLOCK_CAUTIONS] = LEAF_BACK, [BLOCK_OWN_LINES] = LEAF_BACK,
    [BLOCK_CONTACT] = LEAF_CALL, [BLOCK_CALL] = LEAF_CALL};

static const enum word leaf_words[] = {
    [LEAF_FRONT] = WORD_LEAF_FRONT, [LEAF_BACK] = WORD_LEAF_BACK, [LEAF_CALL] = WORD_LEAF_CALL};

/* ---- splitting ---- */

/* Called by the card's own number and which page of it this is: "Card 3, front". */
static void side_number_set(struct sheet *sheet, enum leaf_page page, struct arena *arena)
{
    struct title_facts *title = arena_alloc(arena, sizeof *title);
    enum word word = leaf_words[page];
    *title = *sheet_title(sheet);
    title->number = words_fill(sheet->words, arena, word, "card", title->number, NULL);
    page_facts_set(sheet, BLOCK_TITLE, (union block_facts){.title = title});
}

/* Messages about it tell that too. */
static void side_title_set(struct sheet *sheet, enum leaf_page page, struct arena *arena)
{
    side_number_set(sheet, page, arena);
    sheet->name = words_fill(sheet->words, arena, leaf_words[page], "card", sheet->name, NULL);
}

/* Behind who calls when: where the words for it are. */
static void call_place_tell(const struct laying *laying, struct sheet *sheet, struct arena *arena)
{
    struct cases_facts *cases = arena_alloc(arena, sizeof *cases);
    enum word where = laying->call_apart ? WORD_LEAF_CALL_APART : WORD_LEAF_CALL_BACK;
    *cases = *sheet_cases(sheet);
    if (cases->count == 0 || sheet_block(sheet, BLOCK_CALL) == NULL)
        return;
    struct card_text *last = &cases->items[cases->count - 1];
    last->text = words_fill(sheet->words, arena, where, "line", last->text, NULL);
    page_facts_set(sheet, BLOCK_CALL_LINE, (union block_facts){.cases = cases});
}

/* The front and the page of the call have the first lines of the footer, the back the others; no
 * line of 100 mm is on the front. */
static void footer_part_set(struct sheet *sheet, enum leaf_page page, struct arena *arena)
{
    struct footer_facts *footer = arena_alloc(arena, sizeof *footer);
    *footer = *sheet_footer(sheet);
    if (page == LEAF_BACK)
        footer->left[0] = footer->code_word = footer->code = footer->printed = "";
    else
        footer->left[1] = footer->dates = "";
    if (page == LEAF_FRONT)
        footer->measure = "";
    page_facts_set(sheet, BLOCK_FOOTER, (union block_facts){.footer = footer});
}

static bool is_on_page(const struct laying *laying, enum block_key key, enum leaf_page page)
{
    enum leaf_page own = page_of_block[key];
    if (own == LEAF_CALL && !laying->call_apart)
        own = LEAF_BACK;
    return own == LEAF_ALL || own == page;
}

static const struct sheet *side_make(const struct laying *laying, const struct sheet *whole,
                                     enum leaf_page page, struct arena *arena)
{
    struct sheet *sheet = page_sheet(whole, &(struct page_place){.count = 1}, arena);
    call_place_tell(laying, sheet, arena);
    for (enum block_key key = BLOCK_NONE; key < BLOCK_COUNT; key++)
        if (!is_on_page(laying, key, page))
            page_block_remove(sheet, key);
    side_title_set(sheet, page, arena);
    footer_part_set(sheet, page, arena);
    return sheet;
}

/* The same of paper that is else of one side: all but the call on the first page. */
static const struct sheet *page_without(const struct sheet *whole, enum block_key removed,
                                        struct arena *arena)
{
    struct sheet *sheet = page_sheet(whole, &(struct page_place){.count = 1}, arena);
    page_block_remove(sheet, removed);
    side_number_set(sheet, LEAF_FRONT, arena);
    return sheet;
}

static const struct sheet *call_behind_make(const struct sheet *whole, struct arena *arena)
{
    struct sheet *sheet = page_sheet(whole, &(struct page_place){.count = 1}, arena);
    for (enum block_key key = BLOCK_NONE; key < BLOCK_COUNT; key++)
        if (page_of_block[key] != LEAF_ALL && key != BLOCK_CALL)
            page_block_remove(sheet, key);
    side_number_set(sheet, LEAF_BACK, arena);
    return sheet;
}

size_t call_behind_split(struct laying *laying, struct pen *pen)
{
    struct sheet *whole = page_sheet(laying->sheets[0], &(struct page_place){.count = 1},
                                     pen->arena);
    call_place_tell(laying, whole, pen->arena);
    laying->sheets[0] = page_without(whole, BLOCK_CALL, pen->arena);
    laying->sheets[1] = call_behind_make(whole, pen->arena);
    laying->templates[1] = TEMPLATE_CARD_CALL;
    return 2;
}

bool call_behind_take(struct laying *laying)
{
    if (laying->call_behind || sheet_block(laying->whole, BLOCK_CALL) == NULL)
        return false;
    laying->call_behind = true;
    laying->trim = trim_nothing();
    return true;
}

size_t leaf_split(struct laying *laying, struct pen *pen)
{
    card_split(laying, pen);
    const struct sheet *whole = laying->sheets[0];
    laying->sheets[0] = side_make(laying, whole, LEAF_FRONT, pen->arena);
    laying->sheets[1] = side_make(laying, whole, LEAF_BACK, pen->arena);
    laying->sheets[2] = side_make(laying, whole, LEAF_CALL, pen->arena);
    laying->templates[1] = TEMPLATE_CARD_BACK;
    laying->templates[2] = TEMPLATE_CARD_CALL;
    return laying->call_apart ? 3 : 2;
}

/* Where the back has no room for it, the call has a leaf of its own before anything yields. */
bool leaf_lessen(struct laying *laying)
{
    bool full = laying->full[1] && !laying->call_apart;
    if (!full)
        return rank_lessen(laying);
    laying->call_apart = true;
    return true;
}

/* ---- the front ---- */

static void front_tell(struct pen *pen, const struct laid_steps *steps, mpt over)
{
    if (steps->excess > 0 && !steps_excess_tell(pen, steps))
        pen_too_long(pen, steps->excess_at, steps->excess,
                     "shorten spot, how or name of this entry", "a line of the steps");
    if (over <= 0)
        return;
    struct steps_cuts cuts = steps_cuts_find(pen, steps, over);
    bool cut = cuts.words != NULL;
    pen_too_long(pen, cut ? cuts.origin : longest_step_place(pen->sheet), over,
                 cut ? cuts.words : steps_remedy(pen), "the block of steps");
}

bool card_front_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct frame frame = frame_make(pen->paper, TEMPLATE_CARD_FRONT, &shared->needs);
    struct area area = frame.at[AREA_LEFT];
    struct laid_steps steps = steps_fit(trial, area);
    mpt over = steps.height - area.height;
    bool kept = budget_kept(pen);
    if (over > 0 || steps.excess > 0) {
        front_tell(pen, &steps, over);
        return false;
    }
    steps_place(pen, &steps, area);
    return kept;
}

/* ---- the back ---- */

struct laid_back {
    struct laid_panel panel;
    struct frame frame;
    struct laid_boxes boxes;
    mpt over;                 /* <= 0: it fits */
};

struct box_column {
    const struct pen *pen;
    struct area area;
    enum box_form form;
    struct laid_boxes boxes;
};

static bool boxes_have_room(void *of, mpt size)
{
    struct box_column *column = of;
    column->boxes = boxes_lay(column->pen, (struct box_measure){size, column->area.width,
                                                                column->form});
    return column->boxes.height <= column->area.height;
}

/* Boxes take the largest size that has room beside the plan. */
static void back_boxes_fit(const struct pen *trial, struct laid_back *back, enum box_form form)
{
    struct box_column column = {.pen = trial, .area = back->frame.at[AREA_LEFT], .form = form};
    struct size_rule rule = size_rule(trial->paper, ROLE_BOX);
    boxes_have_room(&column, size_that_fits(rule, SIZE_STEP, boxes_have_room, &column));
    back->boxes = column.boxes;
    mpt plan = plan_heights(trial).floor, boxes = back->boxes.height;
    back->over = (plan > boxes ? plan : boxes) - column.area.height;
}

static struct laid_back back_at(const struct pen *trial, const struct page_needs *shared,
                                enum box_form form, mpt script_size)
{
    struct page_needs needs = *shared;
    struct laid_back back = {.panel = {.size = script_size}};
    if (sheet_block(trial->sheet, BLOCK_CALL) != NULL)
        back.panel = panel_lay(trial, script_size, safe_width(trial->paper));
    needs.height[AREA_PANEL] = back.panel.height;
    needs.contact_yielded = sheet_block(trial->sheet, BLOCK_CONTACT) == NULL;
    back.frame = frame_make(trial->paper, TEMPLATE_CARD_BACK, &needs);
    back_boxes_fit(trial, &back, form);
    return back;
}

/* The panel's type yields first, then what boxes go without. */
static struct laid_back back_fit(const struct pen *trial, const struct page_needs *shared)
{
    struct size_rule script = size_rule(trial->paper, ROLE_SCRIPT);
    struct laid_back back = {.over = 1};
    for (mpt size = script.aim; size >= script.floor && back.over > 0; size -= SIZE_STEP)
        back = back_at(trial, shared, BOXES_WHOLE, size);
    for (int form = BOXES_WHOLE + 1; form < BOX_FORM_COUNT && back.over > 0; form++)
        back = back_at(trial, shared, (enum box_form)form, script.floor);
    return back;
}

static void back_tell(struct pen *pen, const struct laid_back *back)
{
    const struct warnings_facts *rules = sheet_warnings(pen->sheet, BLOCK_OWN_LINES);
    bool ruled = rules->count > 0;
    pen_too_long(pen, ruled ? rules->items[0].origin : pen->sheet->boat->facts.name.place,
                 back->over,
                 ruled ? "shorten the lines of the base for this card"
                       : "give a short name_spoken and looks: a call with fewer lines makes room",
                 "the back of the card");
}

bool card_back_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct laid_back back = back_fit(trial, &shared->needs);
    struct area left = back.frame.at[AREA_LEFT];
    if (back.over > 0) {
        back_tell(pen, &back);
        return false;
    }
    plan_place(pen, back.frame.at[AREA_RIGHT]);
    boxes_place(pen, &back.boxes, left.x, left.y);
    foot_blocks_place(pen, &back.panel, &back.frame);
    return true;
}

/* ---- the call alone ---- */

struct call_page {
    const struct pen *pen;
    struct page_needs needs;
    struct laid_panel panel;
    struct frame frame;
    size_t lines;             /* of what is said, at the least size */
};

static size_t lines_said(const struct laid_panel *panel)
{
    size_t lines = 0;
    for (size_t i = 0; i < panel->script.count; i++)
        lines += panel->script.phrases[i].words.line_count;
    return lines;
}

/* Without a line of what is said that breaks where it does not at the least size. */
static bool call_has_room(void *of, mpt size)
{
    struct call_page *page = of;
    page->panel = panel_lay(page->pen, size, safe_width(page->pen->paper));
    page->needs.height[AREA_PANEL] = page->panel.height;
    page->frame = frame_make(page->pen->paper, TEMPLATE_CARD_CALL, &page->needs);
    return page->frame.at[AREA_BODY].height >= 0 && lines_said(&page->panel) <= page->lines;
}

/* It stands on the foot, as on other cards, in type as large as that of the distress call. */
bool card_call_place(struct pen *pen, struct pen *trial, const struct shared *shared)
{
    struct call_page page = {.pen = trial, .needs = shared->needs};
    page.needs.contact_yielded = sheet_block(pen->sheet, BLOCK_CONTACT) == NULL;
    struct size_rule rule = spoken_size_rule(pen->paper);
    call_has_room(&page, rule.floor);
    page.lines = lines_said(&page.panel);
    call_has_room(&page, size_that_fits(rule, SIZE_STEP, call_has_room, &page));
    mpt over = -page.frame.at[AREA_BODY].height;
    if (over > 0) {
        pen_too_long(pen, pen->sheet->boat->facts.name.place, over,
                     "give a short name_spoken and looks: a call with fewer lines makes room",
                     "the call panel");
        return false;
    }
    foot_blocks_place(pen, &page.panel, &page.frame);
    return true;
}
