/* block_visit.c - every fact of a block, in order (room: compose). */
#include "fact.h"

#include "promise.h"
#include "text.h"

struct visiting {
    struct arena *arena;
    void (*visit)(void *of, const struct fact *fact);
    void *of;
};

/* Of no line of its own. */
static const struct place nowhere = {.line = 0};

static void give(const struct visiting *visiting, enum fact_kind kind, const char *name,
                 const char *text, struct place origin)
{
    const struct fact fact = {.kind = kind, .name = name, .text = text == NULL ? "" : text,
                              .origin = origin};
    visiting->visit(visiting->of, &fact);
}

/* What stands directly behind the fact before it. */
static void give_behind(const struct visiting *visiting, enum fact_kind kind, const char *name,
                        const char *text, struct place origin)
{
    const struct fact fact = {.kind = kind, .name = name, .text = text == NULL ? "" : text,
                              .joined = true, .origin = origin};
    visiting->visit(visiting->of, &fact);
}

static void give_number(const struct visiting *visiting, const char *name, int64_t number)
{
    give(visiting, FACT_KNOWN, name, text_format(visiting->arena, "%lld", (long long)number),
         nowhere);
}

static void lines_visit(const struct visiting *visiting, const char *name,
                        const struct card_text *lines, size_t count)
{
    for (size_t i = 0; i < count; i++)
        give(visiting, FACT_PRINTED, name, lines[i].text, lines[i].origin);
}

/* Each word and blank label by itself: what is filled in stands between them. */
static void script_visit(const struct visiting *visiting, const struct script *script)
{
    for (size_t i = 0; script != NULL && i < script->count; i++) {
        const struct script_line *line = &script->lines[i];
        give(visiting, FACT_KNOWN, "label", line->label, nowhere);
        for (size_t k = 0; k < line->count; k++) {
            bool words = line->pieces[k].kind == PIECE_WORDS ||
                         line->pieces[k].kind == PIECE_STRONG;
            give(visiting, words ? FACT_PRINTED : FACT_KNOWN, "say", line->pieces[k].text, nowhere);
        }
    }
}

/* ---- head ---- */

static void title_visit(const struct visiting *visiting, const struct title_facts *title)
{
    give(visiting, FACT_PRINTED, "title", title->title, nowhere);
    give(visiting, FACT_PRINTED, "boat", title->boat, nowhere);
    give(visiting, FACT_PRINTED, "number", title->number, nowhere);
}

static void signs_visit(const struct visiting *visiting, const struct signs_facts *signs)
{
    give(visiting, FACT_PRINTED, "word", signs->word, nowhere);
    give(visiting, FACT_PRINTED, "signs", signs->signs, nowhere);
}

/* ---- steps ---- */

/* Which name is printed follows from the room on the page. */
static void row_item_visit(const struct visiting *visiting, const struct row_item *item)
{
    give(visiting, FACT_KNOWN, "full name", item->name, item->origin);
    give(visiting, FACT_KNOWN, "lesser name", item->lesser == NULL ? item->name : item->lesser,
         item->origin);
    for (size_t t = 0; t < item->tag_count; t++)
        give_behind(visiting, FACT_PRINTED, "tag", item->tags[t], item->origin);
    give_behind(visiting, FACT_SHOWN, "name", item->name, item->origin);
    give_behind(visiting, FACT_PRINTED, "own spot", item->spot, item->origin);
    give_behind(visiting, FACT_PRINTED, "end", item->end, item->origin);
}

/* The place and its gear stand behind each other: other rows may have one of them too. */
static void row_visit(const struct visiting *visiting, const struct card_row *row)
{
    give(visiting, FACT_PRINTED, "place", row->place, row->origin);
    give_behind(visiting, FACT_PRINTED, "spot", row->spot, row->origin);
    for (size_t i = 0; i < row->item_count; i++)
        row_item_visit(visiting, &row->items[i]);
}

static void table_visit(const struct visiting *visiting, const struct card_step *step)
{
    for (size_t g = 0; g < step->table_count; g++) {
        give(visiting, FACT_PRINTED, "head", step->table[g].head, nowhere);
        for (size_t r = 0; r < step->table[g].row_count; r++)
            row_visit(visiting, &step->table[g].rows[r]);
    }
}

static void step_visit(const struct visiting *visiting, const struct card_step *step)
{
    give_number(visiting, "step", step->number);
    give(visiting, FACT_PRINTED, "headline", step->headline.text, step->headline.origin);
    lines_visit(visiting, "lethal", step->lethal, step->lethal_count);
    lines_visit(visiting, "condition", step->conditions, step->condition_count);
    for (size_t i = 0; i < step->row_count; i++)
        row_visit(visiting, &step->rows[i]);
    table_visit(visiting, step);
}

static void cases_visit(const struct visiting *visiting, const struct cases_facts *cases)
{
    lines_visit(visiting, "case", cases->items, cases->count);
}

static void steps_visit(const struct visiting *visiting, const struct steps_facts *steps)
{
    for (size_t i = 0; i < steps->count; i++)
        step_visit(visiting, &steps->items[i]);
    for (size_t i = 0; i < steps->figure_count; i++) {
        give(visiting, FACT_KNOWN, "figure of", steps->figures[i].step, nowhere);
        give(visiting, FACT_KNOWN, "figure known", steps->figures[i].text,
             steps->figures[i].origin);
    }
    for (size_t i = 0; i < steps->figure_count; i++)
        give(visiting, FACT_SHOWN, "figure", steps->figures[i].text, steps->figures[i].origin);
}

/* ---- boxes ---- */

static void decision_visit(const struct visiting *visiting, const struct decision_facts *decision)
{
    struct place origin = decision->origin;
    give(visiting, FACT_PRINTED, "ask", decision->ask, origin);
    give(visiting, FACT_PRINTED, "word", decision->yes_word, origin);
    give_behind(visiting, FACT_PRINTED, "yes", decision->yes, origin);
    give(visiting, FACT_PRINTED, "word", decision->no_word, origin);
    give_behind(visiting, FACT_PRINTED, "no", decision->no, origin);
    give(visiting, FACT_KNOWN, "lesser no", decision->no_lesser, origin);
}

/* The signal word belongs to each: a never must not pass for a caution. */
static void warnings_visit(const struct visiting *visiting, const struct warnings_facts *warnings)
{
    for (size_t i = 0; i < warnings->count; i++) {
        const struct card_warning *one = &warnings->items[i];
        give(visiting, FACT_PRINTED, "word", warnings->word, one->origin);
        give_behind(visiting, FACT_PRINTED, "text", one->text, one->origin);
        give(visiting, FACT_CITED, "source", one->tag, one->origin);
    }
}

/* ---- calling ---- */

static void contact_visit(const struct visiting *visiting, const struct contact_facts *contact)
{
    give(visiting, FACT_PRINTED, "left", contact->left, contact->origin);
    give(visiting, FACT_PRINTED, "right", contact->right, contact->origin);
}

static void call_visit(const struct visiting *visiting, const struct call_facts *call)
{
    give(visiting, FACT_PRINTED, "title", call->title, call->origin);
    give(visiting, FACT_PRINTED, "station", call->station, call->origin);
    lines_visit(visiting, "set", call->operate, call->operate_count);
    script_visit(visiting, call->script);
}

static void section_visit(const struct visiting *visiting, const struct section_facts *section)
{
    give(visiting, FACT_PRINTED, "title", section->title, nowhere);
    give(visiting, FACT_PRINTED, "note", section->note, nowhere);
    for (size_t i = 0; i < section->hint_count; i++) {
        give(visiting, FACT_KNOWN, "hint known", section->hints[i].text,
             section->hints[i].origin);
        give(visiting, FACT_SHOWN, "hint", section->hints[i].text, section->hints[i].origin);
    }
    for (size_t i = 0; i < section->line_count; i++) {
        if (section->lead != NULL)
            give(visiting, FACT_PRINTED, "word", section->lead[i], section->lines[i].origin);
        give(visiting, FACT_PRINTED, "line", section->lines[i].text, section->lines[i].origin);
    }
    script_visit(visiting, section->script);
    give(visiting, FACT_PRINTED, "end note", section->end_note, nowhere);
}

/* ---- the boat ---- */

static void marker_visit(const struct visiting *visiting, const struct marker *marker)
{
    give(visiting, FACT_KNOWN, "marker", marker->tag, marker->origin);
    give(visiting, FACT_KNOWN, "zone", marker->zone->key, nowhere);
    give(visiting, FACT_KNOWN, "zone's name", marker->name == NULL ? "" : marker->name, nowhere);
    give(visiting, FACT_KNOWN, "level", marker->level == LEVEL_BELOW ? "below" : "deck", nowhere);
    give_number(visiting, "mm aft", marker->x_mm);
    give_number(visiting, "mm to starboard", marker->y_mm);
}

static void plan_visit(const struct visiting *visiting, const struct plan_facts *plan)
{
    for (size_t i = 0; i < PLAN_WORD_COUNT; i++)
        give(visiting, FACT_KNOWN, "word", plan->words[i], nowhere);
    for (size_t i = 0; i < plan->landmark_count; i++)
        give(visiting, FACT_KNOWN, "landmark", plan->landmarks[i].name, nowhere);
    for (size_t i = 0; i < plan->marker_count; i++)
        marker_visit(visiting, &plan->markers[i]);
}

static void plan_row_visit(const struct visiting *visiting, const struct plan_row *row)
{
    struct place origin = row->marker.origin;
    give(visiting, FACT_PRINTED, "tag", row->marker.tag, origin);
    give(visiting, FACT_PRINTED, "name", row->name, origin);
    give(visiting, FACT_PRINTED, "detail", row->detail, origin);
    marker_visit(visiting, &row->marker);
}

static void places_visit(const struct visiting *visiting, const struct places_facts *places)
{
    for (size_t i = 0; i < places->count; i++) {
        const struct plan_place *place = &places->places[i];
        give(visiting, FACT_PRINTED, "place", place->title, place->marker.origin);
        for (size_t r = 0; r < place->row_count; r++)
            plan_row_visit(visiting, &place->rows[r]);
    }
    give(visiting, FACT_KNOWN, "facing", choice_word(facing_words, places->facing), nowhere);
}

static void index_visit(const struct visiting *visiting, const struct index_facts *index)
{
    for (size_t i = 0; i < index->count; i++) {
        const struct index_entry *entry = &index->entries[i];
        give(visiting, FACT_PRINTED, "entry", entry->name, entry->spots[0].origin);
        for (size_t s = 0; s < entry->spot_count; s++) {
            const struct index_spot *spot = &entry->spots[s];
            for (size_t t = 0; t < spot->tag_count; t++)
                give_behind(visiting, FACT_PRINTED, "tag", spot->tags[t], spot->origin);
            give_behind(visiting, FACT_PRINTED, "at", spot->place, spot->origin);
        }
    }
}

/* The number belongs to its line: another card's must not pass for it. The heads of the columns
 * stand over each. */
static void seen_visit(const struct visiting *visiting, const struct seen_facts *seen)
{
    give(visiting, FACT_PRINTED, "ask", seen->ask, nowhere);
    give(visiting, FACT_PRINTED, "take", seen->take, nowhere);
    for (size_t i = 0; i < seen->count; i++) {
        const struct seen_group *group = &seen->groups[i];
        give(visiting, FACT_PRINTED, "group", group->name, nowhere);
        for (size_t k = 0; k < group->count; k++) {
            const struct seen_line *line = &group->lines[k];
            give(visiting, FACT_PRINTED, "seen", line->text, line->origin);
            give_behind(visiting, FACT_PRINTED, "card", line->number, line->origin);
        }
    }
}

static void legend_visit(const struct visiting *visiting, const struct legend_facts *legend)
{
    for (size_t i = 0; i < sizeof legend->words / sizeof *legend->words; i++)
        give(visiting, FACT_PRINTED, "class", legend->words[i], nowhere);
}

static void rows_visit(const struct visiting *visiting, const struct rows_facts *rows)
{
    for (size_t i = 0; i < rows->count; i++)
        row_visit(visiting, &rows->rows[i]);
}

static void form_blanks_visit(const struct visiting *visiting, const struct form_line *line)
{
    for (size_t i = 0; i < line->blank_count; i++) {
        const struct form_blank *blank = &line->blanks[i];
        give_behind(visiting, FACT_PRINTED, "asked", blank->label, line->origin);
        for (size_t c = 0; c < blank->choice_count; c++)
            give_behind(visiting, FACT_PRINTED, "choice", blank->choices[c], line->origin);
    }
}

/* The cells of a line stand behind each other: other lines may have one of them too. The head of a
 * column stands over all of them. */
static void form_section_visit(const struct visiting *visiting,
                               const struct form_section *section)
{
    give(visiting, FACT_PRINTED, "section", section->title, nowhere);
    give(visiting, FACT_PRINTED, "note", section->note, nowhere);
    for (size_t c = 0; c < section->column_count; c++)
        give(visiting, FACT_PRINTED, "column", section->columns[c].head, nowhere);
    for (size_t i = 0; i < section->line_count; i++) {
        const struct form_line *line = &section->lines[i];
        for (size_t c = 0; c < section->column_count; c++)
            (c == 0 ? give : give_behind)(visiting, FACT_PRINTED, "cell", line->cells[c].text,
                                          line->origin);
        form_blanks_visit(visiting, line);
    }
}

static void form_visit(const struct visiting *visiting, const struct form_facts *form)
{
    for (size_t i = 0; i < form->count; i++)
        form_section_visit(visiting, &form->sections[i]);
}

static void stickers_visit(const struct visiting *visiting, const struct stickers_facts *stickers)
{
    for (size_t i = 0; i < stickers->count; i++) {
        const struct sticker *sticker = &stickers->items[i];
        give(visiting, FACT_PRINTED, "tag", sticker->tag, sticker->origin);
        give_behind(visiting, FACT_PRINTED, "name", sticker->name, sticker->origin);
        for (size_t k = 0; k < sticker->state_count; k++)
            give_behind(visiting, FACT_PRINTED, "state", sticker->states[k], sticker->origin);
        give_behind(visiting, FACT_PRINTED, "foot", stickers->foot, sticker->origin);
    }
}

static void views_visit(const struct visiting *visiting, const struct views_facts *views)
{
    for (size_t i = 0; i < views->count; i++) {
        give(visiting, FACT_PRINTED, "view", views->items[i].number, nowhere);
        give_behind(visiting, FACT_PRINTED, "code", views->items[i].code, nowhere);
    }
}

/* ---- foot ---- */

/* What the dates mean today hangs on today; the dates themselves do not. */
static void footer_visit(const struct visiting *visiting, const struct footer_facts *footer)
{
    for (size_t i = 0; i < sizeof footer->left / sizeof *footer->left; i++)
        give(visiting, FACT_PRINTED, "left", footer->left[i], nowhere);
    give(visiting, FACT_SHOWN, "dates", footer->dates, nowhere);
    give(visiting, FACT_KNOWN, "first date", footer->first_date, nowhere);
    give_number(visiting, "undated", (int64_t)footer->undated);
    give(visiting, FACT_PRINTED, "word", footer->code_word, nowhere);
    give_behind(visiting, FACT_SHOWN, "code", footer->code, nowhere);
    give(visiting, FACT_SHOWN, "printed", footer->printed, nowhere);
    give(visiting, FACT_SHOWN, "measure", footer->measure == NULL ? "" : footer->measure, nowhere);
}

/* ---- all ---- */

void block_visit(const struct block *block, struct arena *arena,
                 void (*visit)(void *of, const struct fact *fact), void *of)
{
    const struct visiting visiting = {arena, visit, of};
    switch (facts_kind_of(block->key)) {
    case FACTS_BARE:
        promise_unreached();
    case FACTS_PAGES:    /* on each page they are its own title and signs */
        break;
    case FACTS_TEXT:
        lines_visit(&visiting, "text", block->facts.text, 1);
        break;
#define FACTS_CASE(name, member) \
    case FACTS_##name: \
        member##_visit(&visiting, block->facts.member); \
        break;
    FACTS_CASE(TITLE, title) FACTS_CASE(SIGNS, signs) FACTS_CASE(CASES, cases)
    FACTS_CASE(STEPS, steps)
    FACTS_CASE(PLAN, plan) FACTS_CASE(DECISION, decision) FACTS_CASE(WARNINGS, warnings)
    FACTS_CASE(CONTACT, contact) FACTS_CASE(CALL, call) FACTS_CASE(SECTION, section)
    FACTS_CASE(PLACES, places) FACTS_CASE(INDEX, index) FACTS_CASE(SEEN, seen)
    FACTS_CASE(LEGEND, legend)
    FACTS_CASE(ROWS, rows) FACTS_CASE(FORM, form) FACTS_CASE(STICKERS, stickers)
    FACTS_CASE(VIEWS, views)
    FACTS_CASE(FOOTER, footer)
#undef FACTS_CASE
    }
}
