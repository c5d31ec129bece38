/* reading_case.c - tagged files read back as texts in the order of reading. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <stdint.h>
#include <cmocka.h>

#include <string.h>

#include "reading_case.h"
#include "pdf_case.h"
#include "text.h"

static void text_keep(struct reading_back *back, const char *type, const char *text)
{
    back->texts = arena_grow(pdf_case.arena, back->texts, back->count, &back->room,
                             sizeof *back->texts);
    back->texts[back->count++] = (struct read){type, text};
}

/* The text between the quotes of a line, without the space behind it. */
static const char *between_quotes(const char *line)
{
    size_t length = strlen(line);
    if (length >= 3 && line[length - 2] == ' ')
        length--;
    return arena_copy(pdf_case.arena, line + 1, length - 2);
}

/* Pages begin with an article each; the lines under an element are indented by two more. */
static size_t articles_take(char *lines, struct reading_back *backs, size_t most)
{
    const char *types[64] = {NULL};
    size_t pages = 0;
    for (char *end; (end = strchr(lines, '\n')) != NULL; lines = end + 1) {
        size_t depth = strspn(lines, " ");
        char *line = lines + depth;
        *end = '\0';
        assert_true(depth / 2 < sizeof types / sizeof *types);
        if (depth == 2) {
            assert_string_equal(line, "Art");
            assert_true(pages < most);
            pages++;
        } else if (*line == '"') {
            text_keep(&backs[pages - 1], types[depth / 2 - 1], between_quotes(line));
        }
        types[depth / 2] = line;
    }
    return pages;
}

/* ---- what is expected ---- */

const char *what_is_left(const struct reading_back *back)
{
    struct text_builder left = text_builder_in(pdf_case.arena);
    for (size_t i = back->next; i < back->count; i++)
        text_add_format(&left, "\n  %s: %s", back->texts[i].type, back->texts[i].text);
    return left.at;
}

void expect_next(struct reading_back *back, const char *type, const char *text)
{
    const char *plain = text_plain(pdf_case.arena, text);
    if (text_empty(plain))
        return;
    if (back->next < back->count && text_equal(back->texts[back->next].type, type) &&
        text_equal(back->texts[back->next].text, plain)) {
        back->next++;
        return;
    }
    fail_msg("%s: not read next: %s: %s\nbut:%s", back->page->id, type, plain,
             what_is_left(back));
}

const char *joined(const char *first, const char *second)
{
    return text_empty(first) || text_empty(second)
               ? text_format(pdf_case.arena, "%s%s", first == NULL ? "" : first,
                             second == NULL ? "" : second)
               : text_format(pdf_case.arena, "%s %s", first, second);
}

void reading_back_take(const char *file, struct reading_back *backs, size_t pages)
{
    char *lines = command_read(text_format(
        pdf_case.arena, "pdfinfo -struct-text %s | awk -f \"$OLDPWD/tests/readback/structure.awk\"",
        file));
    lines = strchr(lines, '\n') + 1;              /* all pages are of one document */
    assert_int_equal(articles_take(lines, backs, pages), pages);
}
