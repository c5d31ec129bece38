/* figure_rows.c - figures on the cards: under the step each serves, as far as the
 * budget of rows goes (room: compose). Never takes a step's or a row's place: what
 * finds no room is left out, and `why` and `check` tell. */
#include "compose.h"

#include "figure.h"

struct figure_list {
    struct card_figure *at;
    size_t count, room;
};

static void figure_add(struct composing *composing, struct figure_list *list,
                       struct card_figure figure)
{
    list->at = arena_grow(composing->arena, list->at, list->count, &list->room,
                          sizeof *list->at);
    list->at[list->count++] = figure;
}

static struct figure_result evaluate(const struct composing *composing,
                                     const struct figure *figure)
{
    struct figure_record record = {composing->in->boat, composing->in->base,
                                   composing->in->words};
    return figure_evaluate(figure, &record, composing->arena);
}

/* The figures of this card that have something to say: the next at or after *index. */
static const struct figure *figure_next(const struct composing *composing, size_t *index,
                                        struct figure_result *result)
{
    for (const struct figure *figure; (figure = figure_at((*index)++)) != NULL;) {
        if (!text_equal(figure->procedure, composing->slot->procedure->key.text))
            continue;
        *result = evaluate(composing, figure);
        if (result->status == FIGURE_VALUE && result->sentence != NULL)
            return figure;
    }
    return NULL;
}

static size_t rows_of(const struct card *card)
{
    size_t rows = 0;
    for (size_t i = 0; i < card->step_count; i++)
        rows += card_step_rows(&card->steps[i]);
    return rows;
}

size_t figures_allowed(const struct composing *composing)
{
    const struct set_limits *limits = &composing->limits;
    for (size_t i = 0; i < limits->figure_count; i++)
        if (text_equal(limits->figures[i].card, composing->slot->key))
            return limits->figures[i].most;
    return CARD_FIGURES_MOST;
}

/* How many figures the card has room for. */
static size_t room_on(const struct composing *composing, const struct card *card)
{
    size_t rows = rows_of(card), room = rows < CARD_ROWS_MOST ? CARD_ROWS_MOST - rows : 0;
    return room < figures_allowed(composing) ? room : figures_allowed(composing);
}

/* ---- extinguishers that share a row ---- */

static const struct equipment *gear_by_tag(const struct boat *boat, const char *tag)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (text_equal(boat->equipment[i].tag.text, tag))
            return &boat->equipment[i];
    return NULL;
}

/* "F3 9 s, F4 6 s"; NULL where one of them is not recorded. */
static const char *row_discharges(const struct composing *composing, const struct card_row *row)
{
    struct text_builder words = text_builder_in(composing->arena);
    for (size_t i = 0; i < row->tag_count; i++) {
        const struct equipment *gear = gear_by_tag(composing->in->boat, row->tags[i]);
        if (gear == NULL || !gear->discharge_s.given)
            return NULL;
        text_add_format(&words, "%s%s %lld s", i == 0 ? "" : ", ", row->tags[i],
                        (long long)(gear->discharge_s.milli / 1000));
    }
    return words.at;
}

/* The first such row of the card that ends its step gets its times in a line below;
 * below another row they would seem to be of that. */
static bool shared_discharge(const struct composing *composing, const struct card *card,
                             struct card_figure *out)
{
    for (size_t s = 0; s < card->step_count; s++) {
        const struct card_step *step = &card->steps[s];
        const struct card_row *row = step->row_count == 0 ? NULL
                                                          : &step->rows[step->row_count - 1];
        const char *seconds = NULL;
        if (row != NULL && row->shared && text_equal(row->kind->key, "fire_extinguisher"))
            seconds = row_discharges(composing, row);
        if (seconds == NULL)
            continue;
        *out = (struct card_figure){
            "discharge", step->id,
            words_fill(composing->in->words, composing->arena, WORD_FIGURE_EMPTY_EACH, "seconds",
                       seconds, NULL), row->origin};
        return true;
    }
    return false;
}

/* ---- steps ---- */

/* A step's own figures, from those chosen for the card. */
static void step_figures_set(struct composing *composing, struct card_step *step,
                             const struct figure_list *chosen)
{
    struct figure_list own = {0};
    for (size_t i = 0; i < chosen->count; i++)
        if (text_equal(chosen->at[i].step, step->id))
            figure_add(composing, &own, chosen->at[i]);
    step->figures = own.at;
    step->figure_count = own.count;
}

static struct figure_list candidates_of(struct composing *composing, const struct card *card)
{
    struct figure_list list = {0};
    struct figure_result result;
    struct card_figure shared;
    size_t index = 0;
    for (const struct figure *figure; (figure = figure_next(composing, &index, &result)) != NULL;)
        figure_add(composing, &list, (struct card_figure){figure->id, figure->step,
                                                          result.sentence, result.origin});
    if (shared_discharge(composing, card, &shared))
        figure_add(composing, &list, shared);
    return list;
}

static void steps_figures_make(struct composing *composing, struct card *card)
{
    struct figure_list all = candidates_of(composing, card), chosen = {0}, left_out = {0};
    size_t room = room_on(composing, card);
    struct card_step *steps = arena_array(composing->arena, card->step_count, sizeof *steps);
    for (size_t i = 0; i < all.count; i++) {
        bool fits = chosen.count < room && step_by_id(card, all.at[i].step) != NULL &&
                    text_code_points(all.at[i].text) <= FIGURE_CHARACTERS_MOST;
        figure_add(composing, fits ? &chosen : &left_out, all.at[i]);
    }
    for (size_t i = 0; i < card->step_count; i++) {
        steps[i] = card->steps[i];
        step_figures_set(composing, &steps[i], &chosen);
    }
    card->steps = steps;
    card->figures = chosen.at;
    card->figure_count = chosen.count;
    card->left_out = left_out.at;
    card->left_out_count = left_out.count;
}

/* ---- the distress card ---- */

/* The card's figures in one line, as its last section. */
static void section_append(struct composing *composing, struct card *card)
{
    struct card_section *sections = arena_array(composing->arena, card->section_count + 1,
                                                sizeof *sections);
    bool station = composing->in->base->centre_antenna_m.given;
    struct card_text *line = arena_array(composing->arena, 1, sizeof *line);
    struct text_builder words = text_builder_in(composing->arena);
    for (size_t i = 0; i < card->figure_count; i++)
        text_add_format(&words, "%s%s", i == 0 ? "" : " ", card->figures[i].text);
    *line = (struct card_text){words.at, card->figures[0].origin};
    for (size_t i = 0; i < card->section_count; i++)
        sections[i] = card->sections[i];
    sections[card->section_count] = (struct card_section){
        .key = "range",
        .title = words_get(composing->in->words,
                           station ? WORD_FIGURE_RANGE_TITLE : WORD_FIGURE_HORIZON_TITLE),
        .lines = line, .line_count = 1};
    card->sections = sections;
    card->section_count++;
}

/* How far the radios reach. */
static void range_section_make(struct composing *composing, struct card *card)
{
    struct figure_list list = candidates_of(composing, card);
    if (figures_allowed(composing) < list.count) {
        card->left_out = list.at;
        card->left_out_count = list.count;
        return;
    }
    if (list.count == 0)
        return;
    card->figures = list.at;
    card->figure_count = list.count;
    section_append(composing, card);
}

void figures_make(struct composing *composing, struct card *card)
{
    if (card->distress)
        range_section_make(composing, card);
    else
        steps_figures_make(composing, card);
}
