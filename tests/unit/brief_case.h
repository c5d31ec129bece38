/* brief_case.h - what the tests of the skipper's sheet share: a charter, the composed form, and
 * what its sections say. Includes a fixture's `test`. */
#ifndef MAYDECK_TEST_BRIEF_CASE_H
#define MAYDECK_TEST_BRIEF_CASE_H

#include "brief.h"
#include "text.h"

#include <string.h>

static struct hire hire;

/* A week of May 2027 for six people. */
static inline void hire_begin(void)
{
    hire = (struct hire){.days = {{2027, 5, 1}, {2027, 5, 8}, 0}, .people = 6};
}

static inline const struct sheet_set *brief_set(void)
{
    struct compose_input input = case_input(&test, false);
    struct problems *of_cards = problems_new(test.arena);
    input.hire = &hire;
    test.problems = problems_new(test.arena);
    return brief_compose(&input, compose_set(&input, test.arena, of_cards), test.arena,
                         test.problems);
}

static inline const struct form_facts *brief_form(void)
{
    const struct sheet_set *set = brief_set();
    assert_int_equal(set->count, 1);
    return sheet_form(set->sheets[0]);
}

static inline const char *word_text(enum word word)
{
    return words_get(test.words, word);
}

/* The section of that title. */
static inline const struct form_section *form_section_of(const struct form_facts *form,
                                                         enum word title)
{
    for (size_t i = 0; i < form->count; i++)
        if (text_equal(form->sections[i].title, word_text(title)))
            return &form->sections[i];
    fail_msg("no section %s", word_text(title));
    return NULL;
}

/* A line's cells with bars between; without what marks bold. */
static inline const char *form_line_said(const struct form_line *line, size_t columns)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < columns; i++)
        text_add_format(&out, "%s%s", i > 0 ? "|" : "",
                        line->cells[i].text == NULL ? "" : line->cells[i].text);
    return text_plain(test.arena, out.at);
}

static inline const char *section_said(const struct form_section *section)
{
    struct text_builder out = text_builder_in(test.arena);
    for (size_t i = 0; i < section->line_count; i++)
        text_add_format(&out, "%s\n", form_line_said(&section->lines[i], section->column_count));
    return out.at;
}

/* How many lines of the section hold the words. */
static inline size_t lines_with(const struct form_section *section, const char *words)
{
    size_t count = 0;
    for (size_t i = 0; i < section->line_count; i++)
        count += strstr(form_line_said(&section->lines[i], section->column_count), words) != NULL;
    return count;
}

#endif
