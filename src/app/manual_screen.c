/* manual_screen.c - the manual in lines that the terminal holds (room: app). No word is cut: one
 * that is longer than a line has a line of its own. */
#include "manual.h"
#include "told.h"

#include <stdio.h>
#include <string.h>

enum { WIDTH_DEFAULT = 80, WIDTH_LEAST = 30, WIDTH_MOST = 100, TERM_AT = 2, BESIDE_LEAST = 2 };

size_t screen_width(void)
{
    size_t told = told_columns(), width = told == 0 ? WIDTH_DEFAULT : told;
    return width < WIDTH_LEAST ? WIDTH_LEAST : width > WIDTH_MOST ? WIDTH_MOST : width;
}

/* Letters that a word takes: what goes on with a letter before it takes no room. */
static size_t word_width(const char *word, size_t length)
{
    size_t width = 0;
    for (size_t i = 0; i < length; i++)
        width += ((unsigned char)word[i] & 0xC0u) != 0x80u;
    return width;
}

void screen_term(struct manual *manual, const char *term)
{
    size_t width = word_width(term, strlen(term));
    text_add_format(&manual->out, "%*s%s", TERM_AT, "", term);
    manual->column = TERM_AT + width;
    if (manual->hanging == 0 || manual->column + BESIDE_LEAST > manual->hanging) {
        text_add(&manual->out, "\n");
        manual->column = 0;
    }
}

void screen_words(struct manual *manual, const char *words, size_t length, size_t indent)
{
    const char *end = words + length;
    bool first = true;
    while (words < end) {
        const char *space = memchr(words, ' ', (size_t)(end - words));
        size_t size = (size_t)((space == NULL ? end : space) - words);
        size_t width = word_width(words, size);
        if (!first && manual->column + 1 + width > manual->width) {
            text_add(&manual->out, "\n");
            manual->column = 0;
            first = true;
        }
        if (first)
            text_add_format(&manual->out, "%*s", (int)(indent - manual->column), "");
        else
            text_add(&manual->out, " ");
        manual->column = (first ? indent : manual->column + 1) + width;
        text_add_bytes(&manual->out, words, size);
        first = false;
        words += size + (space == NULL ? 0 : 1);
    }
    text_add(&manual->out, "\n");
    manual->column = 0;
}
