/* explain_steps.c - why each step says what it says: the case, the gear, the
 * reason, the sources (room: explain). Never chooses a case anew: it shows the
 * one that the card has. */
#include "explain.h"

static const struct item_uses *explained_list_of(const struct item_uses *own,
                                                   const struct item_uses *of_step)
{
    return own != NULL && own->given ? own : of_step;
}

const struct item_uses *step_uses(const struct card_step *step)
{
    return explained_list_of(step->taken == NULL ? NULL : &step->taken->uses, &step->step->uses);
}

const struct item_uses *step_also(const struct card_step *step)
{
    return explained_list_of(step->taken == NULL ? NULL : &step->taken->also, &step->step->also);
}

enum reach step_within(const struct card_step *step)
{
    return step->taken == NULL ? step->step->within.value : step->taken->within.value;
}

/* ---- cases ---- */

void only_where_tell(const struct explaining *explaining, size_t indent,
                     const struct condition *condition)
{
    if (condition != NULL)
        placed_tell(explaining, indent, condition->place, "only where: %s",
                    condition_words(condition, explaining->arena));
}

size_t cases_tried(const struct explaining *explaining, const struct card_step *step)
{
    const struct procedure_step *from = step->step;
    if (step->taken != NULL)
        return (size_t)(step->taken - from->cases) + 1;
    for (size_t i = 0; i < from->case_count; i++)
        if (condition_judge(explaining->composing, from->cases[i].when) == TRUTH_UNKNOWN)
            return i + 1;
    return from->case_count;
}

static const char *case_words(const struct explaining *explaining, const struct step_case *one,
                              size_t count)
{
    if (one->when == NULL)
        return count == 1 ? "every boat" : "every other boat";
    return condition_words(one->when, explaining->arena);
}

static void case_tell(const struct explaining *explaining, const struct card_step *step,
                      size_t index)
{
    const struct procedure_step *from = step->step;
    const struct step_case *one = &from->cases[index];
    const char *verdict = "passed over: ";
    if (one == step->taken)
        verdict = "";
    else if (condition_judge(explaining->composing, one->when) == TRUTH_UNKNOWN)
        verdict = "not to be decided: ";
    placed_tell(explaining, INDENT_REASON, one->place, "%scase %zu of %zu%s: %s", verdict,
                index + 1, from->case_count, one == step->taken ? "" : ", which asks",
                case_words(explaining, one, from->case_count));
}

static void cases_tell(const struct explaining *explaining, const struct card_step *step)
{
    size_t tried = cases_tried(explaining, step);
    only_where_tell(explaining, INDENT_REASON, step->step->when);
    for (size_t i = 0; i < tried; i++)
        case_tell(explaining, step, i);
    if (step->taken == NULL)
        line_tell(explaining, INDENT_REASON, "the step's own words");
}

/* ---- gear ---- */

/* A row of several tags began at one entry; each tag has its own. */
static struct place entry_place(const struct explaining *explaining, const char *tag,
                                struct place otherwise)
{
    const struct boat *boat = explaining->sheet->boat;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (text_equal(boat->equipment[i].tag.text, tag))
            return gear_place(&boat->equipment[i]);
    return otherwise;
}

/* "A B", or the one of them that says something. */
static const char *both_words(const struct explaining *explaining, const char *first,
                              const char *second)
{
    bool two = !text_empty(first) && !text_empty(second);
    return text_format(explaining->arena, "%s%s%s", first, two ? " " : "", second);
}

static void row_item_tell(const struct explaining *explaining, const struct card_row *row,
                          const struct row_item *item)
{
    for (size_t i = 0; i < item->tag_count; i++)
        placed_tell(explaining, INDENT_REASON,
                    entry_place(explaining, item->tags[i], item->origin), "gear %s %s",
                    item->tags[i], item->kind->key);
    if (item->tag_count == 0)
        placed_tell(explaining, INDENT_REASON, item->origin, "gear %s, asked for",
                    item->kind->key);
    const char *called = both_words(explaining, item->name, item->spot);
    line_tell(explaining, INDENT_DETAIL, "%s | %s",
              both_words(explaining, row->place, row->spot),
              both_words(explaining, called, text_plain(explaining->arena, item->end)));
}

static void row_tell(const struct explaining *explaining, const struct card_row *row)
{
    for (size_t i = 0; i < row->item_count; i++)
        row_item_tell(explaining, row, &row->items[i]);
}

static void table_tell(const struct explaining *explaining, const struct card_step *step)
{
    for (size_t g = 0; g < step->table_count; g++) {
        line_tell(explaining, INDENT_REASON, "%s",
                  text_plain(explaining->arena, step->table[g].head));
        for (size_t r = 0; r < step->table[g].row_count; r++)
            row_tell(explaining, &step->table[g].rows[r]);
    }
}

/* ---- the step ---- */

static void reason_tell(const struct explaining *explaining, const struct card_step *step)
{
    const struct step_case *taken = step->taken;
    const struct text_value *reason = taken != NULL ? &taken->because : &step->step->because;
    const char *because = text_for(reason, explaining->sheet->language);
    if (because != NULL)
        line_tell(explaining, INDENT_REASON, "because: %s", because);
    basis_tell(explaining, INDENT_REASON, taken != NULL ? &taken->basis : &step->step->basis);
}

static void step_tell(const struct explaining *explaining, const struct card_step *step)
{
    placed_tell(explaining, INDENT_PART, step->headline.origin, "%d. %s", step->number,
                step->headline.text);
    placed_tell(explaining, INDENT_REASON, step->step->place, "step %s", step->id);
    if (step->step->who.text != NULL)
        line_tell(explaining, INDENT_REASON, "who: %s",
                  text_for(&step->step->who, explaining->sheet->language));
    cases_tell(explaining, step);
    for (size_t i = 0; i < step->lethal_count; i++)
        placed_tell(explaining, INDENT_REASON, step->lethal[i].origin, "printed with it: %s",
                    step->lethal[i].text);
    if (step->taken != NULL && step->taken->report.text != NULL)
        placed_tell(explaining, INDENT_REASON, step->taken->report.place, "the call adds: %s",
                    step->taken->report.text);
    for (size_t i = 0; i < step->condition_count; i++)
        placed_tell(explaining, INDENT_REASON, step->conditions[i].origin, "printed with it: %s",
                    text_plain(explaining->arena, step->conditions[i].text));
    for (size_t i = 0; i < step->row_count; i++)
        row_tell(explaining, &step->rows[i]);
    table_tell(explaining, step);
    figures_tell(explaining, step->id);
    record_tell(explaining, step);
    reason_tell(explaining, step);
    blank_tell(explaining);
}

static void absent_tell(const struct explaining *explaining, const struct procedure_step *step)
{
    placed_tell(explaining, INDENT_PART, step->place, "Not on this card: step %s, only where: %s",
                step->id.text, condition_words(step->when, explaining->arena));
    condition_record_tell(explaining, INDENT_DETAIL, step->when);
    blank_tell(explaining);
}

static const struct card_step *step_made_from(const struct sheet *sheet,
                                              const struct procedure_step *step)
{
    const struct steps_facts *steps = sheet_steps(sheet);
    for (size_t i = 0; i < steps->count; i++)
        if (steps->items[i].step == step)
            return &steps->items[i];
    return NULL;
}

void steps_tell(const struct explaining *explaining)
{
    const struct procedure *procedure = explaining->sheet->procedure;
    for (size_t i = 0; i < procedure->step_count; i++) {
        const struct card_step *step = step_made_from(explaining->sheet, &procedure->steps[i]);
        if (step != NULL)
            step_tell(explaining, step);
        else
            absent_tell(explaining, &procedure->steps[i]);
    }
}
