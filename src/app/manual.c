/* manual.c - texts of the manual taken apart into paragraphs, terms and lines that are shown as
 * they stand (room: app). How each is told is the business of its form. */
#include "manual.h"

#include <string.h>

const char *const manual_page_words[] = {MANUAL_PAGE_LIST(CHOICE_WORD) NULL};

enum { SHOWN_INDENT = 4, TERM_INDENT = 2, TERM_GAP = 2, WIDEST_TERM = 24, NARROW_LETTERS = 72,
       BENEATH_INDENT = 8 };

struct manual manual_on_screen(struct arena *arena)
{
    return (struct manual){.form = MANUAL_SCREEN, .out = text_builder_in(arena),
                           .width = screen_width()};
}

struct manual manual_as_source(struct arena *arena)
{
    return (struct manual){.form = MANUAL_SOURCE, .out = text_builder_in(arena)};
}

/* ---- lists of terms ---- */

void manual_terms_end(struct manual *manual)
{
    if (manual->within && manual->form == MANUAL_SOURCE)
        source_macro(manual, ".El", NULL);
    manual->owed = manual->owed || manual->within;
    manual->within = false;
}

/* On screen an empty line parts what is told one after the other. */
static void gap_add(struct manual *manual)
{
    if (manual->owed && manual->form == MANUAL_SCREEN)
        text_add(&manual->out, "\n");
    manual->owed = false;
}

void manual_terms(struct manual *manual, size_t widest)
{
    manual_terms_end(manual);
    manual->within = true;
    manual->headed = false;
    bool beside = manual->width >= NARROW_LETTERS && widest > 0;
    widest = widest > WIDEST_TERM ? WIDEST_TERM : widest;
    manual->hanging = beside ? TERM_INDENT + widest + TERM_GAP : 0;
    if (manual->form == MANUAL_SOURCE)
        source_macro(manual, ".Bl", "-tag -width Ds");
    gap_add(manual);
}

void manual_term(struct manual *manual, const char *term, const char *meaning)
{
    if (manual->form == MANUAL_SOURCE) {
        text_add(&manual->out, ".It Ic");
        source_arguments(manual, term, strlen(term));
        text_add(&manual->out, "\n");
        source_words(manual, meaning, strlen(meaning));
        return;
    }
    screen_term(manual, term);
    screen_words(manual, meaning, strlen(meaning),
                 manual->hanging > 0 ? manual->hanging : BENEATH_INDENT);
}

/* ---- options ---- */

/* What it tells of an option that takes one of several words, with these words. */
static const char *option_about(const struct option_row *row, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, row->about);
    for (size_t i = 0; row->choices != NULL && row->choices[i] != NULL; i++)
        text_add_format(&out, "%s%s", i == 0 ? ": " : row->choices[i + 1] == NULL ? " or " : ", ",
                        row->choices[i]);
    return out.at;
}

static void option_source(struct manual *manual, const struct option_row *row)
{
    text_add(&manual->out, ".It");
    if (row->letter != 0)
        text_add_format(&manual->out, " Fl %c ,", row->letter);
    text_add_format(&manual->out, " Fl \\-%s", row->name);
    if (row->argument != NULL)
        text_add_format(&manual->out, " Ar %s", row->argument);
    text_add(&manual->out, "\n");
}

/* -o, --output DIR */
void manual_option(struct manual *manual, const struct option_row *row)
{
    struct arena *arena = manual->out.arena;
    const char *about = option_about(row, arena);
    if (manual->form == MANUAL_SOURCE) {
        option_source(manual, row);
        source_words(manual, about, strlen(about));
        return;
    }
    manual_term(manual,
                text_format(arena, "%s--%s%s%s",
                            row->letter == 0 ? "    " : text_format(arena, "-%c, ", row->letter),
                            row->name, row->argument == NULL ? "" : " ",
                            row->argument == NULL ? "" : row->argument), about);
}

/* ---- sections ---- */

static void title_add(struct manual *manual, const char *macro, const char *title)
{
    manual_terms_end(manual);
    gap_add(manual);
    manual->headed = true;
    if (manual->form == MANUAL_SOURCE)
        source_macro(manual, macro, title);
    else
        text_add_format(&manual->out, "%s\n", title);
}

void manual_section(struct manual *manual, const char *title)
{
    title_add(manual, ".Sh", text_upper(manual->out.arena, title));
}

void manual_part(struct manual *manual, const char *title)
{
    title_add(manual, ".Ss", title);
    manual->owed = false;
}

/* ---- texts ---- */

static size_t spaces_before(const char *line)
{
    return strspn(line, " ");
}

static size_t line_length(const char *line)
{
    return strcspn(line, "\n");
}

static const char *text_line_next(const char *line)
{
    line += line_length(line);
    return *line == '\n' ? line + 1 : line;
}

static bool line_is_shown(const char *line)
{
    return spaces_before(line) >= SHOWN_INDENT && line_length(line) > spaces_before(line);
}

/* Letters of the term that the line begins with; 0: it tells none. */
static size_t term_length(const char *line)
{
    size_t length = line_length(line);
    if (length == 0 || line[0] == ' ')
        return 0;
    for (size_t i = 1; i + 1 < length; i++)
        if (line[i] == ' ' && line[i + 1] == ' ')
            return i;
    return 0;
}

/* The lines from `line` on that go on with what it begins, as one, and what comes after them. */
static const char *lines_joined(const char *line, struct arena *arena, const char **after)
{
    struct text_builder out = text_builder_in(arena);
    bool indented = term_length(line) > 0;
    size_t skip = 0;
    if (indented)
        skip = term_length(line) + spaces_before(line + term_length(line));
    text_add_bytes(&out, line + skip, line_length(line) - skip);
    for (line = text_line_next(line); line_length(line) > 0; line = text_line_next(line)) {
        bool goes_on = indented ? spaces_before(line) == TERM_INDENT
                                : spaces_before(line) == 0 && term_length(line) == 0;
        if (!goes_on)
            break;
        text_add(&out, " ");
        text_add_bytes(&out, line + spaces_before(line),
                       line_length(line) - spaces_before(line));
    }
    *after = line;
    return out.at;
}

static const char *shown_add(struct manual *manual, const char *line)
{
    manual_terms_end(manual);
    gap_add(manual);
    manual->headed = false;
    if (manual->form == MANUAL_SOURCE)
        source_macro(manual, ".Bd", "-literal -offset indent");
    for (; line_is_shown(line); line = text_line_next(line))
        if (manual->form == MANUAL_SOURCE)
            source_shown(manual, line + SHOWN_INDENT, line_length(line) - SHOWN_INDENT);
        else
            text_add_format(&manual->out, "%.*s\n", (int)line_length(line), line);
    if (manual->form == MANUAL_SOURCE)
        source_macro(manual, ".Ed", NULL);
    manual->owed = true;
    return line;
}

/* A term is told as one, so that no backticks need to stand round it. */
static const char *term_of(const char *line, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    for (size_t i = 0; i < term_length(line); i++)
        if (line[i] != '`')
            text_add_bytes(&out, line + i, 1);
    return out.at;
}

static const char *terms_add(struct manual *manual, const char *line)
{
    struct arena *arena = manual->out.arena;
    size_t widest = 0;
    for (const char *at = line; term_length(at) > 0; lines_joined(at, arena, &at))
        widest = strlen(term_of(at, arena)) > widest ? strlen(term_of(at, arena)) : widest;
    manual_terms(manual, widest);
    while (term_length(line) > 0) {
        const char *term = term_of(line, arena);
        const char *meaning = lines_joined(line, arena, &line);
        manual_term(manual, term, meaning);
    }
    return line;
}

static const char *words_add_paragraph(struct manual *manual, const char *line)
{
    const char *words = lines_joined(line, manual->out.arena, &line);
    manual_terms_end(manual);
    gap_add(manual);
    if (manual->form == MANUAL_SCREEN) {
        screen_words(manual, words, strlen(words), 0);
    } else {
        if (!manual->headed)
            source_macro(manual, ".Pp", NULL);
        manual->headed = false;
        source_words(manual, words, strlen(words));
    }
    manual->owed = true;
    return line;
}

void manual_text(struct manual *manual, const char *text)
{
    while (*text != '\0') {
        if (line_length(text) == 0)
            text = text_line_next(text);
        else if (line_is_shown(text))
            text = shown_add(manual, text);
        else if (term_length(text) > 0)
            text = terms_add(manual, text);
        else
            text = words_add_paragraph(manual, text);
    }
}
