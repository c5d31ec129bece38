/* trim.c - what yields where a page has no room for all: whole blocks, figures, hints, and names
 * that have a lesser one (room: layout). What must stand is never touched. */
#include "trim.h"

#include <limits.h>

#include "text.h"

struct trim trim_nothing(void)
{
    struct trim trim = {.of = NULL};
    for (enum block_key key = BLOCK_NONE; key < BLOCK_COUNT; key++)
        trim.least[key] = INT_MAX;
    return trim;
}

static bool figure_stands(const struct trim *trim, const struct card_figure *figure)
{
    return figure->yields < trim->least[BLOCK_STEPS] &&
           (trim->stands == NULL || trim->stands(trim->of, figure));
}

static size_t figures_keep(const struct trim *trim, const struct card_figure *figures,
                           size_t count, struct card_figure *kept)
{
    size_t kept_count = 0;
    for (size_t i = 0; i < count; i++)
        if (figure_stands(trim, &figures[i]))
            kept[kept_count++] = figures[i];
    return kept_count;
}

static const struct row_item *items_trimmed(int least, const struct card_row *row,
                                            struct arena *arena)
{
    struct row_item *trimmed = arena_array(arena, row->item_count, sizeof *trimmed);
    for (size_t i = 0; i < row->item_count; i++) {
        trimmed[i] = row->items[i];
        if (trimmed[i].lesser == NULL || trimmed[i].yields < least)
            continue;
        trimmed[i].name = trimmed[i].lesser;
        trimmed[i].lesser = NULL;
        trimmed[i].yields = YIELDS_NEVER;
    }
    return trimmed;
}

static const struct card_row *rows_trimmed(int least, const struct card_row *rows, size_t count,
                                           struct arena *arena)
{
    struct card_row *trimmed = arena_array(arena, count, sizeof *trimmed);
    for (size_t i = 0; i < count; i++) {
        trimmed[i] = rows[i];
        trimmed[i].items = items_trimmed(least, &rows[i], arena);
    }
    return trimmed;
}

static struct card_step step_trimmed(const struct trim *trim, const struct card_step *step,
                                     struct arena *arena)
{
    struct card_step trimmed = *step;
    struct card_figure *figures = arena_array(arena, step->figure_count, sizeof *figures);
    trimmed.rows = rows_trimmed(trim->least[BLOCK_STEPS], step->rows, step->row_count, arena);
    trimmed.figures = figures;
    trimmed.figure_count = figures_keep(trim, step->figures, step->figure_count, figures);
    return trimmed;
}

static const struct steps_facts *steps_trimmed(const struct trim *trim,
                                               const struct steps_facts *steps,
                                               struct arena *arena)
{
    struct steps_facts *trimmed = arena_alloc(arena, sizeof *trimmed);
    struct card_step *items = arena_array(arena, steps->count, sizeof *items);
    struct card_figure *figures = arena_array(arena, steps->figure_count, sizeof *figures);
    for (size_t i = 0; i < steps->count; i++)
        items[i] = step_trimmed(trim, &steps->items[i], arena);
    *trimmed = (struct steps_facts){
        .items = items, .count = steps->count, .figures = figures,
        .figure_count = figures_keep(trim, steps->figures, steps->figure_count, figures)};
    return trimmed;
}

static const struct rows_facts *list_trimmed(const struct trim *trim,
                                             const struct rows_facts *rows, struct arena *arena)
{
    struct rows_facts *trimmed = arena_alloc(arena, sizeof *trimmed);
    *trimmed = (struct rows_facts){
        rows_trimmed(trim->least[BLOCK_ROWS], rows->rows, rows->count, arena), rows->count};
    return trimmed;
}

static const struct section_facts *section_trimmed(int least,
                                                   const struct section_facts *section,
                                                   struct arena *arena)
{
    struct section_facts *trimmed = arena_alloc(arena, sizeof *trimmed);
    struct card_hint *hints = arena_array(arena, section->hint_count, sizeof *hints);
    *trimmed = *section;
    trimmed->hints = hints;
    trimmed->hint_count = 0;
    for (size_t i = 0; i < section->hint_count; i++)
        if (section->hints[i].yields < least)
            hints[trimmed->hint_count++] = section->hints[i];
    return trimmed;
}

static bool line_yields(const struct trim *trim, const struct call_facts *call)
{
    return call->yielding > 0 && YIELDS_POSITION >= trim->least[BLOCK_CALL];
}

/* The exit hangs on the room of the call's page, wherever it stands itself. */
static bool urgency_yields(const struct trim *trim, const struct call_facts *call)
{
    return call->lesser != NULL && YIELDS_URGENCY >= trim->least[BLOCK_CALL];
}

static void line_remove(struct call_facts *call, struct arena *arena)
{
    struct card_text *lines = arena_array(arena, call->operate_count, sizeof *lines);
    size_t count = 0;
    for (size_t i = 0; i < call->operate_count; i++)
        if (i + 1 != call->yielding)
            lines[count++] = call->operate[i];
    call->operate = lines;
    call->operate_count = count;
    call->yielding = 0;
}

static const struct call_facts *call_trimmed(const struct trim *trim,
                                             const struct call_facts *call, struct arena *arena)
{
    struct call_facts *trimmed = arena_alloc(arena, sizeof *trimmed);
    *trimmed = *call;
    if (line_yields(trim, call))
        line_remove(trimmed, arena);
    if (urgency_yields(trim, call)) {
        trimmed->script = call->lesser;
        trimmed->lesser = NULL;
    }
    return trimmed;
}

static const struct decision_facts *decision_trimmed(const struct sheet *whole,
                                                     const struct trim *trim,
                                                     const struct decision_facts *decision,
                                                     struct arena *arena)
{
    struct decision_facts *trimmed = arena_alloc(arena, sizeof *trimmed);
    *trimmed = *decision;
    if (decision->no_lesser != NULL && urgency_yields(trim, sheet_call(whole)))
        trimmed->no = decision->no_lesser;
    return trimmed;
}

const struct sheet *sheet_trimmed(const struct sheet *whole, const struct trim *trim,
                                  struct arena *arena)
{
    struct sheet *trimmed = arena_alloc(arena, sizeof *trimmed);
    struct block *blocks = arena_array(arena, whole->block_count, sizeof *blocks);
    *trimmed = *whole;
    trimmed->blocks = blocks;
    trimmed->block_count = 0;
    for (size_t i = 0; i < whole->block_count; i++) {
        struct block block = whole->blocks[i];
        if (block.yields >= trim->least[block.key])
            continue;
        if (block.key == BLOCK_STEPS)
            block.facts.steps = steps_trimmed(trim, block.facts.steps, arena);
        if (block.key == BLOCK_ROWS)
            block.facts.rows = list_trimmed(trim, block.facts.rows, arena);
        if (block.key == BLOCK_CALL)
            block.facts.call = call_trimmed(trim, block.facts.call, arena);
        if (block.key == BLOCK_DECISION)
            block.facts.decision = decision_trimmed(whole, trim, block.facts.decision, arena);
        if (facts_kind_of(block.key) == FACTS_SECTION)
            block.facts.section = section_trimmed(trim->least[block.key], block.facts.section,
                                                  arena);
        blocks[trimmed->block_count++] = block;
    }
    return trimmed;
}

/* ---- what yields ---- */

static int highest(int a, int b)
{
    return a > b ? a : b;
}

static int rows_yield(const struct card_row *rows, size_t count)
{
    int most = YIELDS_NEVER;
    for (size_t r = 0; r < count; r++)
        for (size_t i = 0; i < rows[r].item_count; i++)
            most = highest(most, rows[r].items[i].yields);
    return most;
}

static int hints_yield(const struct block *block)
{
    int most = YIELDS_NEVER;
    bool section = facts_kind_of(block->key) == FACTS_SECTION;
    for (size_t i = 0; section && i < block->facts.section->hint_count; i++)
        most = highest(most, block->facts.section->hints[i].yields);
    return most;
}

int yields_highest(const struct sheet *sheet)
{
    const struct steps_facts *steps = sheet_steps(sheet);
    const struct rows_facts *rows = sheet_rows(sheet);
    int most = rows_yield(rows->rows, rows->count);
    if (sheet_block(sheet, BLOCK_CALL) != NULL && sheet_call(sheet)->yielding > 0)
        most = highest(most, YIELDS_POSITION);
    if (sheet_block(sheet, BLOCK_CALL) != NULL && sheet_call(sheet)->lesser != NULL)
        most = highest(most, YIELDS_URGENCY);
    for (size_t i = 0; i < sheet->block_count; i++)
        most = highest(most, highest(sheet->blocks[i].yields, hints_yield(&sheet->blocks[i])));
    for (size_t i = 0; i < steps->figure_count; i++)
        most = highest(most, steps->figures[i].yields);
    for (size_t i = 0; i < steps->count; i++)
        most = highest(most, rows_yield(steps->items[i].rows, steps->items[i].row_count));
    return most;
}

/* ---- what yielded ---- */

struct yielding {
    struct arena *arena;
    struct yielded *list;
    size_t count, room;
};

static void yielded_add(struct yielding *yielding, struct yielded one)
{
    yielding->list = arena_grow(yielding->arena, yielding->list, yielding->count,
                                &yielding->room, sizeof *yielding->list);
    yielding->list[yielding->count++] = one;
}

static void figures_yielded(struct yielding *yielding, const struct steps_facts *steps,
                            const struct trim *trim)
{
    for (size_t i = 0; i < steps->figure_count; i++) {
        const struct card_figure *figure = &steps->figures[i];
        bool too_long = trim->stands != NULL && !trim->stands(trim->of, figure);
        if (!figure_stands(trim, figure))
            yielded_add(yielding, (struct yielded){
                BLOCK_STEPS, figure->id, figure->text,
                too_long ? YIELDED_TOO_LONG : YIELDED_TO_OTHERS, figure->origin});
    }
}

static void rows_yielded(struct yielding *yielding, enum block_key block,
                         const struct card_row *rows, size_t count, const struct trim *trim)
{
    for (size_t r = 0; r < count; r++)
        for (size_t i = 0; i < rows[r].item_count; i++) {
            const struct row_item *item = &rows[r].items[i];
            if (item->lesser != NULL && item->yields >= trim->least[block])
                yielded_add(yielding, (struct yielded){block, NULL, item->name,
                                                       YIELDED_TO_OTHERS, item->origin});
        }
}

static void hints_yielded(struct yielding *yielding, const struct block *block,
                          const struct trim *trim)
{
    bool section = facts_kind_of(block->key) == FACTS_SECTION;
    for (size_t i = 0; section && i < block->facts.section->hint_count; i++) {
        const struct card_hint *hint = &block->facts.section->hints[i];
        if (hint->yields >= trim->least[block->key])
            yielded_add(yielding, (struct yielded){block->key, hint->id, hint->text,
                                                   YIELDED_TO_OTHERS, hint->origin});
    }
}

static void call_yielded(struct yielding *yielding, const struct call_facts *call,
                         const struct trim *trim)
{
    if (!line_yields(trim, call))
        return;
    const struct card_text *line = &call->operate[call->yielding - 1];
    yielded_add(yielding, (struct yielded){BLOCK_CALL, "radio position_read_at", line->text,
                                           YIELDED_TO_OTHERS, line->origin});
}

static bool script_has(const struct script *script, const struct script_line *line)
{
    for (size_t i = 0; i < script->count; i++)
        if (script->lines[i].pieces == line->pieces)
            return true;
    return false;
}

/* The answer that then names the card with the words. */
static void answer_yielded(struct yielding *yielding, const struct sheet *whole,
                           const struct trim *trim)
{
    const struct decision_facts *decision = sheet_decision(whole);
    if (decision->no_lesser != NULL && urgency_yields(trim, sheet_call(whole)))
        yielded_add(yielding, (struct yielded){BLOCK_DECISION, NULL, decision->no,
                                               YIELDED_TO_OTHERS, decision->origin});
}

/* Each piece of what is no longer said. */
static void urgency_yielded(struct yielding *yielding, const struct call_facts *call,
                            const struct trim *trim)
{
    if (!urgency_yields(trim, call))
        return;
    for (size_t i = 0; i < call->script->count; i++) {
        const struct script_line *line = &call->script->lines[i];
        for (size_t p = 0; p < line->count && !script_has(call->lesser, line); p++)
            yielded_add(yielding, (struct yielded){BLOCK_CALL, NULL, line->pieces[p].text,
                                                   YIELDED_TO_OTHERS, call->origin});
    }
}

size_t yielded_list(const struct sheet *whole, const struct trim *trim, struct arena *arena,
                    const struct yielded **list)
{
    struct yielding yielding = {.arena = arena};
    const struct steps_facts *steps = sheet_steps(whole);
    const struct rows_facts *rows = sheet_rows(whole);
    for (size_t i = 0; i < whole->block_count; i++)
        if (whole->blocks[i].yields >= trim->least[whole->blocks[i].key])
            yielded_add(&yielding, (struct yielded){.block = whole->blocks[i].key,
                                                    .origin = whole->origin});
    for (size_t i = 0; i < whole->block_count; i++)
        hints_yielded(&yielding, &whole->blocks[i], trim);
    if (sheet_block(whole, BLOCK_CALL) != NULL)
        call_yielded(&yielding, sheet_call(whole), trim);
    if (sheet_block(whole, BLOCK_CALL) != NULL)
        urgency_yielded(&yielding, sheet_call(whole), trim);
    if (sheet_block(whole, BLOCK_CALL) != NULL && sheet_block(whole, BLOCK_DECISION) != NULL)
        answer_yielded(&yielding, whole, trim);
    figures_yielded(&yielding, steps, trim);
    for (size_t i = 0; i < steps->count; i++)
        rows_yielded(&yielding, BLOCK_STEPS, steps->items[i].rows, steps->items[i].row_count,
                     trim);
    rows_yielded(&yielding, BLOCK_ROWS, rows->rows, rows->count, trim);
    *list = yielding.list;
    return yielding.count;
}
