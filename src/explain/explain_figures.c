/* explain_figures.c - figures explained: on a card, and each alone from what it reads
 * to what a card says of it (room: explain). Never computes: it asks figure. */
#include "explain.h"

#include <string.h>

#include "promise.h"

static const char *verdict_words(enum figure_verdict verdict)
{
    switch (verdict) {
    case FIGURE_FACT:
        return "F, may be printed as a fact";
    case FIGURE_ESTIMATE:
        return "A, may be printed as an order of magnitude";
    case FIGURE_OFFICE:
        return "B, for the base and the skipper, on no card";
    case FIGURE_NEVER:
        return "N, never printed";
    }
    promise_unreached();
}

/* ---- on a card ---- */

static void card_figure_tell(const struct explaining *explaining, const struct card_figure *one)
{
    const struct figure *figure = figure_find(one->id);
    placed_tell(explaining, INDENT_REASON, one->origin, "figure %s (%c): %s", one->id,
                (char)figure->verdict, one->text);
}

void figures_tell(const struct explaining *explaining, const char *step)
{
    const struct steps_facts *steps = sheet_steps(explaining->sheet);
    for (size_t i = 0; i < steps->figure_count; i++)
        if (text_equal(steps->figures[i].step, step))
            card_figure_tell(explaining, &steps->figures[i]);
}

/* Pages are not laid out to explain a card, so whether all find room is not known here. */
static const char figures_yield[] =
    "where a page has no room its card goes without: `maydeck check` tells";

void figures_yield_tell(const struct explaining *explaining)
{
    if (sheet_steps(explaining->sheet)->figure_count == 0)
        return;
    line_tell(explaining, INDENT_PART, "Figures: %s", figures_yield);
    blank_tell(explaining);
}

/* ---- one figure ---- */

static void read_tell(const struct explaining *explaining, const struct figure_result *result)
{
    for (size_t i = 0; i < result->input_count; i++)
        placed_tell(explaining, INDENT_REASON, result->inputs[i].place, "read: %s = %s",
                    result->inputs[i].what, result->inputs[i].value);
    for (size_t i = 0; i < result->lack_count; i++)
        placed_tell(explaining, INDENT_REASON, result->lacks[i].place,
                    "missing: %s of %s (%s)", result->lacks[i].field, result->lacks[i].owner,
                    result->lacks[i].about);
}

/* Tells the result before and after rounding, or why there is none. A figure that says
 * nothing because of its verdict gives that reason where its cards are told, not here. */
static void result_tell(const struct explaining *explaining, const struct figure *figure,
                        const struct figure_result *result)
{
    if (result->before != NULL)
        line_tell(explaining, INDENT_REASON, "result: %s", result->before);
    if (result->after != NULL)
        line_tell(explaining, INDENT_REASON, "rounded: %s", result->after);
    switch (result->status) {
    case FIGURE_VALUE:
        break;
    case FIGURE_INPUT_MISSING:
        line_tell(explaining, INDENT_REASON, "no result: an input is not recorded");
        break;
    case FIGURE_NOT_APPLICABLE:
        if (!text_equal(result->reason, figure->why_not))
            line_tell(explaining, INDENT_REASON, "nothing said: %s", result->reason);
        break;
    }
}

/* False: this card does not carry it. */
static bool carried_tell(const struct explaining *explaining, const struct sheet *sheet,
                         const struct figure *figure)
{
    const struct steps_facts *steps = sheet_steps(sheet);
    bool carried = false;
    for (size_t i = 0; i < steps->figure_count; i++)
        if (text_equal(steps->figures[i].id, figure->id)) {
            line_tell(explaining, INDENT_REASON, "on the card %s: %s", sheet->name,
                      steps->figures[i].text);
            carried = true;
        }
    return carried;
}

static void figure_cards_tell(const struct explaining *explaining, const struct sheet_set *set,
                              const struct figure *figure)
{
    bool carried = false;
    for (size_t i = 0; set != NULL && i < set->count; i++)
        carried = carried_tell(explaining, set->sheets[i], figure) || carried;
    if (figure->in_rows)
        line_tell(explaining, INDENT_REASON,
                  "stands in the row of each extinguisher where it is recorded");
    else if (!carried)
        line_tell(explaining, INDENT_REASON, "on no card%s%s",
                  figure->why_not == NULL ? "" : ": ",
                  figure->why_not == NULL ? "" : figure->why_not);
    if (figure->in_rows || carried)
        line_tell(explaining, INDENT_REASON, "%s", figures_yield);
}

/* ---- for the base ---- */

/* Characters of "seacock C13 bore_mm" before the field. */
static size_t owner_length(const char *what)
{
    const char *field = strrchr(what, ' ');
    return field == NULL ? 0 : (size_t)(field + 1 - what);
}

/* "seacock C13 bore_mm = 38, depth_m = 0.35; boat lwl_m = 11" in one piece, each owner
 * once: `why` has the lines of the files. */
static const char *inputs_text(const struct explaining *explaining,
                               const struct figure_result *result)
{
    struct text_builder text = text_builder_in(explaining->arena);
    const char *owner = "";
    for (size_t i = 0; i < result->input_count; i++) {
        const char *what = result->inputs[i].what;
        size_t length = owner_length(what);
        bool same = length == owner_length(owner) && strncmp(what, owner, length) == 0;
        text_add_format(&text, "%s%s = %s", i == 0 ? "" : same ? ", " : "; ",
                        same ? what + length : what, result->inputs[i].value);
        owner = what;
    }
    return text.at;
}

static void office_tell(const struct explaining *explaining, const struct figure *figure,
                        const struct figure_result *result)
{
    line_tell(explaining, INDENT_REASON, "%s: %s", figure->id, result->after);
    line_tell(explaining, INDENT_DETAIL, "formula: %s", figure->formula);
    line_tell(explaining, INDENT_DETAIL, "read: %s", inputs_text(explaining, result));
}

void figures_for_base(const struct compose_input *input, struct text_builder *out)
{
    struct explaining explaining = {.in = input, .arena = out->arena, .out = out};
    struct figure_record record = {input->boat, input->base};
    const struct figure *figure;
    bool any = false;
    for (size_t i = 0; (figure = figure_at(i)) != NULL; i++) {
        struct figure_result result = {.status = FIGURE_NOT_APPLICABLE};
        if (figure->in_check)
            result = figure_evaluate(figure, &record, out->arena);
        if (result.status != FIGURE_VALUE)
            continue;
        if (!any)
            line_tell(&explaining, INDENT_PART, "%s: figures for the base and the skipper, on no "
                      "card (`maydeck why --figure NAME` tells what is assumed):",
                      input->boat->key);
        any = true;
        office_tell(&explaining, figure, &result);
    }
    if (any)
        blank_tell(&explaining);
}

static void figure_explain(const struct explaining *explaining, const struct sheet_set *set,
                           const struct figure *figure)
{
    const struct compose_input *input = explaining->in;
    struct figure_record record = {input->boat, input->base};
    struct figure_result result = figure_evaluate(figure, &record, explaining->arena);
    line_tell(explaining, INDENT_PART, "Figure %s, %s: %s", figure->id,
              TEXT_OR_EMPTY(input->boat->facts.name), figure->title);
    line_tell(explaining, INDENT_REASON, "verdict: %s", verdict_words(figure->verdict));
    line_tell(explaining, INDENT_REASON, "reads: %s", figure->reads);
    line_tell(explaining, INDENT_REASON, "formula: %s", figure->formula);
    line_tell(explaining, INDENT_REASON, "source: %s", figure->source);
    if (figure->assumed != NULL)
        line_tell(explaining, INDENT_REASON, "assumed, so estimated: %s", figure->assumed);
    read_tell(explaining, &result);
    result_tell(explaining, figure, &result);
    figure_cards_tell(explaining, set, figure);
}

void figure_reasons(const struct compose_input *input, const struct sheet_set *set,
                    const struct figure *figure, struct text_builder *out)
{
    const struct explaining explaining = {.in = input, .arena = out->arena, .out = out};
    figure_explain(&explaining, set, figure);
}

struct reason_list figure_reason_rows(const struct compose_input *input,
                                      const struct sheet_set *set, const struct figure *figure,
                                      struct arena *arena)
{
    struct reason_list rows = {0};
    const struct explaining explaining = {.in = input, .arena = arena, .rows = &rows};
    figure_explain(&explaining, set, figure);
    return rows;
}
