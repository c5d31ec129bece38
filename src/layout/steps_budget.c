/* steps_budget.c - more steps or places than a card may have, and what makes the steps of a card
 * shorter (room: layout). */
#include "steps.h"

#define STEPS_MOST 8
#define PLACES_MOST 14

static size_t places_of_table(const struct card_step *step)
{
    size_t count = 0;
    for (size_t g = 0; g < step->table_count; g++)
        count += step->table[g].row_count;
    return count;
}

static size_t gear_of(const struct card_step *step)
{
    size_t count = 0;
    for (size_t r = 0; r < step->row_count; r++)
        count += step->rows[r].item_count;
    return count;
}

/* Gear in its rows, and places of its table. */
static size_t step_length(const struct card_step *step)
{
    return gear_of(step) + places_of_table(step);
}

/* The number of the step with the most of them. */
static size_t longest_step(const struct sheet *sheet)
{
    const struct steps_facts *steps = sheet_steps(sheet);
    size_t longest = 0;
    for (size_t i = 0; i < steps->count; i++)
        if (step_length(&steps->items[i]) > step_length(&steps->items[longest]))
            longest = i;
    return longest + 1;
}

struct place longest_step_place(const struct sheet *sheet)
{
    const struct card_step *step = &sheet_steps(sheet)->items[longest_step(sheet) - 1];
    if (places_of_table(step) > step->row_count)
        return step->table[0].rows[0].origin;
    return step->row_count > 0 ? step->rows[0].origin : sheet->boat->facts.name.place;
}

/* What makes the longest step shorter. Gear at one place cannot be entered twice alike:
 * several pieces there are one entry with a count. */
static const char *rows_remedy(const struct pen *pen)
{
    size_t number = longest_step(pen->sheet);
    const struct card_step *step = &sheet_steps(pen->sheet)->items[number - 1];
    if (places_of_table(step) > step->row_count)
        return text_format(pen->arena, "step %zu lists openings at %zu places, port beside "
                           "starboard: enter those that stand side by side as one, with "
                           "`count`, one tag and a short name for all of them, such as in, "
                           "out\nrecord the side of each: openings without one have lines of "
                           "their own", number, places_of_table(step));
    return text_format(pen->arena, "step %zu has the most gear (%zu, at %zu place%s): enter gear "
                       "of one kind at one place as one, with `count`", number, gear_of(step),
                       step->row_count, step->row_count == 1 ? "" : "s");
}

static size_t places_of_rows(const struct steps_facts *steps)
{
    size_t count = 0;
    for (size_t i = 0; i < steps->count; i++)
        count += steps->items[i].row_count;
    return count;
}

/* More places than anybody can go to. What has no room for them has been told already. */
static bool rows_kept(struct pen *pen)
{
    const struct sheet *sheet = pen->sheet;
    size_t count = places_of_rows(sheet_steps(sheet));
    if (count <= PLACES_MOST || pen->failed)
        return count <= PLACES_MOST;
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, longest_step_place(sheet), rows_remedy(pen),
                "%s (%s): gear at %zu places, %d at most", sheet->name, sheet->language, count,
                PLACES_MOST);
    return false;
}

bool budget_kept(struct pen *pen)
{
    const struct sheet *sheet = pen->sheet;
    const struct steps_facts *steps = sheet_steps(sheet);
    if (steps->count <= STEPS_MOST)
        return rows_kept(pen);
    pen->failed = true;
    problem_add(pen->problems, SEVERITY_ERROR, steps->items[STEPS_MOST].headline.origin,
                "make one step of two that are done at one place", "%s (%s): %zu steps, %d at "
                "most", sheet->name, sheet->language, steps->count, STEPS_MOST);
    return false;
}

const char *steps_remedy(const struct pen *pen)
{
    return text_format(pen->arena, "%s\n"
                       "a call with fewer lines makes room too: give a short name_spoken and looks",
                       rows_remedy(pen));
}
