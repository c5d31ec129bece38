/* steps_budget.c - more steps or rows than a card may have, and what makes them fewer
 * (room: layout). */
#include "steps.h"

#define STEPS_MOST 8

size_t steps_rows(const struct steps_facts *steps)
{
    size_t rows = 0;
    for (size_t i = 0; i < steps->count; i++)
        rows += card_step_rows(&steps->items[i]);
    return rows;
}

/* The number of the step with the most rows. */
static size_t longest_step(const struct sheet *sheet)
{
    const struct steps_facts *steps = sheet_steps(sheet);
    size_t longest = 0;
    for (size_t i = 0; i < steps->count; i++)
        if (card_step_rows(&steps->items[i]) > card_step_rows(&steps->items[longest]))
            longest = i;
    return longest + 1;
}

/* The entry of the record that the step's first line is about. */
static struct place step_place_told(const struct sheet *sheet, size_t number)
{
    const struct card_step *step = &sheet_steps(sheet)->items[number - 1];
    for (size_t c = 0; step->table_count > step->row_count && c < TABLE_CELLS; c++)
        if (step->table[0].cells[c].name != NULL)
            return step->table[0].cells[c].origin;
    return step->row_count > 0 ? step->rows[0].origin : sheet->boat->facts.name.place;
}

/* What makes the longest step shorter. Gear at one place cannot be entered twice alike:
 * several pieces there are one entry with a count. */
static const char *rows_remedy(const struct pen *pen)
{
    size_t number = longest_step(pen->sheet);
    const struct card_step *step = &sheet_steps(pen->sheet)->items[number - 1];
    if (step->table_count > step->row_count)
        return text_format(pen->arena, "step %zu lists openings in %zu lines, port beside "
                           "starboard: enter those that stand side by side as one, with "
                           "`count`, one tag and a short name for all of them, such as in, "
                           "out\nrecord the side of each: openings without one have lines of "
                           "their own", number, step->table_count);
    return text_format(pen->arena, "step %zu has the most rows (%zu): enter gear of one kind "
                       "at one place as one, with `count`", number, card_step_rows(step));
}

bool budget_kept(struct pen *pen)
{
    const struct sheet *sheet = pen->sheet;
    const struct steps_facts *steps = sheet_steps(sheet);
    size_t rows = steps_rows(steps);
    if (rows <= CARD_ROWS_MOST && steps->count <= STEPS_MOST)
        return true;
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, step_place_told(sheet, longest_step(sheet)),
                rows_remedy(pen), "%s (%s): %zu steps and %zu rows, %d and %d at most", sheet->name,
                sheet->language, steps->count, rows, STEPS_MOST, CARD_ROWS_MOST);
    return false;
}

const char *steps_remedy(const struct pen *pen)
{
    return text_format(pen->arena, "%s\n"
                       "a call with fewer lines makes room too: give a short name_spoken and looks",
                       rows_remedy(pen));
}
