/* survey_case.h - what tests of surveys share: boats of all kinds, and the lines of gear of a
 * survey in their order. For files with card_fixture.h. */
#ifndef MAYDECK_SURVEY_CASE_H
#define MAYDECK_SURVEY_CASE_H

#include <string.h>

#include "card_fixture.h"
#include "survey.h"
#include "text.h"

static const char *const survey_boats[] = {
    "tests/fleet/boats/tamarisk.yaml", "tests/fleet/boats/samphire.yaml",
    "tests/fleet/boats/bramble.yaml", "tests/islands/boats/thrift.yaml",
    "tests/islands/boats/sundew.yaml", "tests/islands/boats/eelgrass.yaml",
    "tests/unusual/boats/cargo.yaml", "tests/unusual/boats/bare.yaml",
    "tests/hazard/boats/parsley.yaml"};
#define BOATS (sizeof survey_boats / sizeof *survey_boats)

static inline struct compose_input input_of(const struct boat *boat)
{
    struct compose_input input = case_input(&test, false);
    input.boat = boat;
    return input;
}

static inline const struct form_facts *survey_of(const struct boat *boat)
{
    struct compose_input input = input_of(boat);
    const struct sheet_set *set = survey_compose(&input, test.arena, test.problems);
    assert_int_equal(set->count, 1);
    return sheet_form(set->sheets[0]);
}

/* ---- lines ---- */

/* Of sections that name gear: number, sign and tag, what is known, boxes. */
static inline bool names_gear(const struct form_section *section)
{
    return section->column_count > 3 && section->columns[1].kind == FORM_SIGN;
}

/* The lines of gear in their order. */
struct gear_lines {
    const struct form_line **at;
    const struct form_section **sections;
    size_t count, room, section_room;
};

static inline struct gear_lines lines_of(const struct form_facts *form)
{
    struct gear_lines lines = {0};
    for (size_t i = 0; i < form->count; i++)
        for (size_t k = 0; names_gear(&form->sections[i]) &&
                           k < form->sections[i].line_count; k++) {
            lines.at = arena_grow(test.arena, lines.at, lines.count, &lines.room,
                                  sizeof *lines.at);
            lines.sections = arena_grow(test.arena, lines.sections, lines.count,
                                        &lines.section_room, sizeof *lines.sections);
            lines.sections[lines.count] = &form->sections[i];
            lines.at[lines.count++] = &form->sections[i].lines[k];
        }
    return lines;
}

/* That of the piece; the test fails where there is none, or another. */
static inline size_t line_of(const struct gear_lines *lines, const struct equipment *gear)
{
    size_t found = lines->count;
    for (size_t i = 0; i < lines->count; i++) {
        const struct form_cell *cell = &lines->at[i]->cells[1];
        if (cell->kind != gear->kind || !text_equal(cell->text, TEXT_OR_EMPTY(gear->tag)))
            continue;
        if (found < lines->count)
            fail_msg("%s stands twice", cell->text);
        found = i;
    }
    if (found == lines->count)
        fail_msg("%s %s stands nowhere", gear->kind->key, TEXT_OR_EMPTY(gear->tag));
    return found;
}

static inline bool asks(const struct form_line *line, const char *words)
{
    for (size_t i = 0; i < line->blank_count; i++)
        if (strstr(line->blanks[i].label, words) != NULL)
            return true;
    return false;
}

#endif
