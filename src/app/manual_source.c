/* manual_source.c - the manual as mdoc(7), the source that man(1) shows (room: app). What is
 * written `so` gets the macro of what it looks like: an option, a path, a placeholder, a word. */
#include "manual.h"

#include <ctype.h>
#include <string.h>

#include "utf8.h"

enum { SOURCE_WIDTH = 72, MACRO_LETTERS = 3 };

/* Marks that stand at the word before them, and would by a macro's rules. */
#define MARKS ".,:;)?!"

/* ---- letters ---- */

/* Names of files, options and the like are typed. */
static enum hyphens hyphens_of(const char *word, size_t length)
{
    if (word[0] == '-')
        return WORDS_TYPED;
    for (size_t i = 0; i + 1 < length; i++)
        if (strchr("/._=", word[i]) != NULL || isdigit((unsigned char)word[i]) != 0 ||
            (isupper((unsigned char)word[i]) != 0 && isupper((unsigned char)word[i + 1]) != 0))
            return WORDS_TYPED;
    return WORDS_READ;
}

/* How the letter is written; NULL: as it is. */
static const char *letter_source(char letter, enum hyphens hyphens)
{
    switch (letter) {
    case '\\':
        return "\\e";
    case '\'':
        return hyphens == WORDS_TYPED ? "\\(aq" : NULL;
    case '`':
        return "\\(ga";
    case '^':
        return "\\(ha";
    case '~':
        return "\\(ti";
    case '"':
        return "\\(dq";
    case '-':
        return hyphens == WORDS_TYPED ? "\\-" : NULL;
    default:
        return NULL;
    }
}

size_t source_letters(struct manual *manual, const char *word, size_t length,
                      enum hyphens hyphens)
{
    size_t before = manual->out.length;
    uint32_t point = 0;
    for (size_t i = 0; i < length;) {
        const char *source = letter_source(word[i], hyphens);
        if (source != NULL)
            text_add(&manual->out, source);
        else if (((unsigned char)word[i] & 0x80u) == 0)
            text_add_bytes(&manual->out, word + i, 1);
        else if (utf8_next(word, length, &i, &point)) {
            text_add_format(&manual->out, "\\[u%04X]", (unsigned)point);
            continue;
        }
        i++;
    }
    return manual->out.length - before;
}

/* ---- macros ---- */

void source_arguments(struct manual *manual, const char *words, size_t length)
{
    const char *end = words + length;
    while (words < end) {
        size_t size = 0;
        while (words + size < end && words[size] != ' ')
            size++;
        text_add(&manual->out, " ");
        /* a short word can be a macro's name, or a mark that stands by itself */
        if (size > 0 && size <= MACRO_LETTERS)
            text_add(&manual->out, "\\&");
        source_letters(manual, words, size, WORDS_TYPED);
        if (size > 0 && strchr(MARKS, words[size - 1]) != NULL)
            text_add(&manual->out, "\\&");
        for (words += size; words < end && *words == ' ';)
            words++;
    }
}

void source_macro(struct manual *manual, const char *macro, const char *arguments)
{
    text_add_format(&manual->out, "%s%s%s\n", macro, arguments == NULL ? "" : " ",
                    arguments == NULL ? "" : arguments);
    manual->column = 0;
}

void source_shown(struct manual *manual, const char *line, size_t length)
{
    if (length > 0 && (line[0] == '.' || line[0] == '\''))
        text_add(&manual->out, "\\&");
    source_letters(manual, line, length, WORDS_TYPED);
    text_add(&manual->out, "\n");
}

static const char *macro_of(const char *word, size_t length)
{
    bool spaced = memchr(word, ' ', length) != NULL;
    bool capitals = true;
    for (size_t i = 0; i < length; i++)
        capitals = capitals && (isupper((unsigned char)word[i]) != 0 || word[i] == '_');
    if (capitals && length > 1)
        return ".Ar";
    if (!spaced && word[0] != '{' &&
        (memchr(word, '/', length) != NULL ||
         (memchr(word, '.', length) != NULL && isalpha((unsigned char)word[length - 1]) != 0)))
        return ".Pa";
    return ".Ic";
}

/* `word` on a line of its own, with the marks directly before and behind it. Returns what comes
 * after them. */
static const char *marked_add(struct manual *manual, const char *word, const char *end)
{
    bool bracket = *word == '(';
    const char *start = word + 1 + (bracket ? 1 : 0);
    const char *close = memchr(start, '`', (size_t)(end - start));
    if (close == NULL)
        close = end - 1;
    if (manual->column > 0)
        text_add(&manual->out, "\n");
    size_t length = (size_t)(close - start);
    text_add_format(&manual->out, "%s%s", macro_of(start, length), bracket ? " (" : "");
    source_arguments(manual, start, length);
    for (start = close + 1; start < end && *start != ' '; start++)
        text_add_format(&manual->out, " %s%c", strchr(MARKS, *start) != NULL ? "" : "Ns ",
                        *start);
    text_add(&manual->out, "\n");
    manual->column = 0;
    return start;
}

/* ---- running text ---- */

/* A sentence ends a line, as those who read the source expect. */
static bool sentence_ends_line(const char *word, size_t length)
{
    while (length > 1 && strchr(")\"", word[length - 1]) != NULL)
        length--;
    return length > 0 && strchr(".?!", word[length - 1]) != NULL;
}

static void source_word_add(struct manual *manual, const char *word, size_t length)
{
    if (manual->column > 0 && manual->column + 1 + length > SOURCE_WIDTH) {
        text_add(&manual->out, "\n");
        manual->column = 0;
    }
    if (manual->column > 0) {
        text_add(&manual->out, " ");
        manual->column++;
    } else if (word[0] == '.' || word[0] == '\'') {
        text_add(&manual->out, "\\&");
    }
    manual->column += source_letters(manual, word, length, hyphens_of(word, length));
    if (sentence_ends_line(word, length)) {
        text_add(&manual->out, "\n");
        manual->column = 0;
    }
}

void source_words(struct manual *manual, const char *words, size_t length)
{
    const char *end = words + length;
    manual->column = 0;
    while (words < end) {
        size_t size = 0;
        if (*words == ' ') {
            words++;
            continue;
        }
        if (*words == '`' || (*words == '(' && words + 1 < end && words[1] == '`')) {
            words = marked_add(manual, words, end);
            continue;
        }
        while (words + size < end && words[size] != ' ')
            size++;
        source_word_add(manual, words, size);
        words += size;
    }
    if (manual->column > 0)
        text_add(&manual->out, "\n");
    manual->column = 0;
}
