/* placeholder.c - words and signs that stand where a fact is yet to be written
 * (room: record). On a card they would be printed as a place or a handling. The
 * words are in placeholder_list.h. Never judges what a true fact is. */
#include "record.h"

#include "text.h"

#include "placeholder_list.h"

#include <string.h>

enum grade { ANYWHERE, IN_TEXT, WHOLE, TEXT_ONLY };

struct placeholder {
    enum grade grade;
    const char *word;
};

#define PLACEHOLDER_ROW(language, how_sure, words) {.grade = (how_sure), .word = (words)},
static const struct placeholder nothing_words[] = {PLACEHOLDER_LIST(PLACEHOLDER_ROW)};
#undef PLACEHOLDER_ROW

enum { ROW_COUNT = sizeof nothing_words / sizeof nothing_words[0] };

/* Signs of the same kind, inside a text. */
static const struct { enum grade grade; const char *sign; } nothing_signs[] = {
    {ANYWHERE, "???"}, {ANYWHERE, "___"}, {IN_TEXT, "??"},
    {IN_TEXT, "(?)"},  {IN_TEXT, "[?]"},  {IN_TEXT, "<?>"},
};

static const char ascii_signs[] = " !\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~";

/* Dashes, dots and quotes that typesetting and phones put in for those above. */
static const char *const other_signs[] = {
    "\u2010", "\u2011", "\u2012", "\u2013", "\u2014", "\u2015", "\u2212", "\u00B7", "\u2022",
    "\u2018", "\u2019", "\u201A", "\u201C", "\u201D", "\u201E", "\u00AB", "\u00BB", "\u00BF"};

/* Bytes of the sign at the start of the text; 0 for letters, digits and the rest. */
static size_t sign_length(const char *text)
{
    if (*text == '\0')
        return 0;
    if ((unsigned char)*text < 0x80)
        return strchr(ascii_signs, *text) != NULL ? 1 : 0;
    for (size_t i = 0; i < sizeof other_signs / sizeof other_signs[0]; i++)
        if (text_begins(text, other_signs[i]))
            return strlen(other_signs[i]);
    return 0;
}

static size_t signs_length(const char *text)
{
    size_t length = 0;
    for (size_t sign = sign_length(text); sign > 0; sign = sign_length(text + length))
        length += sign;
    return length;
}

/* How far the text reaches without the signs at its end. */
static size_t length_without_signs(const char *text)
{
    size_t end = 0;
    for (size_t at = 0; text[at] != '\0';) {
        size_t sign = sign_length(text + at);
        at += sign > 0 ? sign : 1;
        end = sign > 0 ? end : at;
    }
    return end;
}

/* Signs in the place of a fact. A name or code may be one sign, as a key of a set
 * that is marked - or +: then only what stands for nothing in all tongues counts. */
static bool only_signs(const char *folded, enum text_use use)
{
    if (text_empty(folded) || folded[signs_length(folded)] != '\0')
        return false;
    return use == TEXT_WORDS || text_equal(folded, "\u2014") ||
           folded[strspn(folded, "?")] == '\0' ||
           (strlen(folded) > 1 && folded[strspn(folded, ".-_~*?")] == '\0');
}

/* One byte more: runs of spaces become one, of more than three x three. */
static void form_add(struct text_builder *form, char byte)
{
    const char *end = form->at + form->length;
    if (byte == ' ' && form->length > 0 && end[-1] == ' ')
        return;
    if (byte == 'x' && form->length > 2 && memcmp(end - 3, "xxx", 3) == 0)
        return;
    text_add_bytes(form, &byte, 1);
}

/* Without signs around it and points inside, a space for a hyphen. */
static const char *whole_form(const char *folded, struct arena *arena)
{
    struct text_builder form = text_builder_in(arena);
    size_t end = length_without_signs(folded);
    for (size_t at = signs_length(folded); at < end; at++)
        if (folded[at] != '.')
            form_add(&form, strchr("-_", folded[at]) != NULL ? ' ' : folded[at]);
    return form.at;
}

/* A space for each run of signs, and one at either end: words to be found whole. */
static const char *words_form(const char *folded, struct arena *arena)
{
    struct text_builder form = text_builder_in(arena);
    form_add(&form, ' ');
    for (size_t at = 0; folded[at] != '\0';) {
        size_t gap = signs_length(folded + at);
        form_add(&form, gap > 0 ? ' ' : folded[at]);
        at += gap > 0 ? gap : 1;
    }
    form_add(&form, ' ');
    return form.at;
}

static bool words_hold_row(const char *words, const char *row)
{
    size_t length = strlen(row);
    for (const char *at = strstr(words, row); at != NULL; at = strstr(at + 1, row))
        if (at[-1] == ' ' && at[length] == ' ')
            return true;
    return false;
}

static bool stands_as_whole(enum grade grade, enum text_use use)
{
    return grade != TEXT_ONLY || use == TEXT_WORDS;
}

static bool stands_inside(enum grade grade, enum text_use use)
{
    return grade == ANYWHERE || (grade == IN_TEXT && use == TEXT_WORDS);
}

static const char *found_inside(const char *folded, enum text_use use, struct arena *arena)
{
    const char *words = words_form(folded, arena);
    for (size_t i = 0; i < sizeof nothing_signs / sizeof nothing_signs[0]; i++)
        if (stands_inside(nothing_signs[i].grade, use) &&
            strstr(folded, nothing_signs[i].sign) != NULL)
            return nothing_signs[i].sign;
    for (size_t i = 0; i < ROW_COUNT; i++)
        if (stands_inside(nothing_words[i].grade, use) &&
            words_hold_row(words, nothing_words[i].word))
            return nothing_words[i].word;
    return NULL;
}

const char *placeholder_in(const char *text, enum text_use use, struct arena *arena)
{
    const char *folded = text_folded(arena, text);
    const char *whole = whole_form(folded, arena);
    if (only_signs(folded, use))
        return text;
    for (size_t i = 0; i < ROW_COUNT; i++)
        if (nothing_words[i].word[0] == whole[0] &&
            stands_as_whole(nothing_words[i].grade, use) &&
            text_equal(nothing_words[i].word, whole))
            return text;
    return found_inside(folded, use, arena);
}
