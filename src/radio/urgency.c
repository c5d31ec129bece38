/* urgency.c - what a boat says is wrong in an urgency call, and what it asks for (room: radio).
 * The standard phrases for use at sea come first; where they have none, words in their manner.
 * Never a distress phrase of its own: a nature of distress has one wording; and never water coming
 * in, which is urgent or grave by what it does next, as the card of flooding asks. */
#include "radio.h"

/* Of a nature of distress the table of natures has the words. */
static const struct problem_row {
    struct urgency_phrase own;
    enum nature_key nature;
} problem_rows[] = {
    {{WORD_URGENT_ENGINE, "I HAVE PROBLEMS WITH ENGINE"}, NATURE_NONE},
    {{WORD_URGENT_STEERING, "I HAVE PROBLEMS WITH STEERING"}, NATURE_NONE},
    {{WORD_URGENT_ROPE, "I HAVE A ROPE IN PROPELLER"}, NATURE_NONE},
    {{WORD_URGENT_MAST, "I HAVE LOST MAST"}, NATURE_NONE},
    {{WORD_URGENT_AGROUND, NULL}, NATURE_GROUNDING},
    {{WORD_URGENT_ADRIFT, NULL}, NATURE_ADRIFT},
    {{WORD_URGENT_HURT, "I HAVE AN INJURED PERSON"}, NATURE_NONE},
    {{WORD_URGENT_ILL, "I HAVE A SICK PERSON"}, NATURE_NONE},
};
#define PROBLEM_COUNT (sizeof problem_rows / sizeof *problem_rows)

static const struct urgency_phrase need_rows[] = {
    {WORD_NEED_DOCTOR, "MEDICAL ASSISTANCE"}, {WORD_NEED_TOW, "A TOW"},
    {WORD_NEED_PUMP, "A PUMP"}, {WORD_NEED_ADVICE, "ADVICE"}};

const struct urgency_phrase *urgency_problem(size_t index)
{
    static struct urgency_phrase rows[PROBLEM_COUNT];
    if (index >= PROBLEM_COUNT)
        return NULL;
    rows[index] = problem_rows[index].own;
    if (problem_rows[index].nature != NATURE_NONE)
        rows[index].phrase = nature_of(problem_rows[index].nature)->phrase;
    return &rows[index];
}

const struct urgency_phrase *urgency_need(size_t index)
{
    return index < sizeof need_rows / sizeof *need_rows ? &need_rows[index] : NULL;
}
