/* yaml_check.c - looks at the characters of a file before libyaml does (room:
 * yaml): libyaml forgives some that mislead, and stops at the first it does
 * not know. Never judges the structure. */
#include "yaml_reader.h"

#include <string.h>

#include "text.h"
#include "utf8.h"
#include "yaml_slip.h"

#define TOLD_LIMIT 20

/* One kind of fault: told up to a limit, then counted. */
struct tally {
    const char *more;  /* "%zu ..." for what was not told one by one */
    size_t count;
};

struct text_check {
    const struct source *source;
    struct problems *problems;
    struct arena *arena;
};

static bool tally_full(struct tally *tally)
{
    return tally->count++ >= TOLD_LIMIT;
}

static void tally_close(const struct text_check *check, const struct tally *tally)
{
    if (tally->count > TOLD_LIMIT)
        problem_add(check->problems, SEVERITY_ERROR, source_whole(check->source),
                    "put them right in the same way as those that are told",
                    "%zu more %s", tally->count - TOLD_LIMIT, tally->more);
}

static void byte_tell(const struct text_check *check, size_t offset)
{
    unsigned int byte = (unsigned char)check->source->bytes[offset];
    struct place place = source_place(check->source, offset);
    const char *remedy = "save the file with the encoding UTF-8";

    /* In Latin-1 these bytes are the letters of the same number. */
    if (byte >= 0xC0)
        remedy = text_format(check->arena, "%s; the byte may stand for \"%c%c\"", remedy,
                             0xC3, (int)byte - 0x40);
    place.span = 1;
    problem_add(check->problems, SEVERITY_ERROR, place, remedy,
                "the byte 0x%02X is not valid UTF-8", byte);
}

static void character_tell(const struct text_check *check, size_t offset, uint32_t code_point)
{
    struct place place = source_place(check->source, offset);

    place.span = 1;
    problem_add(check->problems, SEVERITY_ERROR, place,
                "delete the character; if the text was copied from elsewhere, type it anew",
                "the character U+%04X is not allowed: %s", (unsigned int)code_point,
                utf8_refusal(code_point));
}

static void false_space_tell(const struct text_check *check, size_t offset, uint32_t code_point)
{
    struct place place = source_place(check->source, offset);

    place.span = 1;
    problem_add(check->problems, SEVERITY_ERROR, place, "type the spaces of the line's start anew",
                "the line is indented with the character U+%04X, which only looks like a space",
                (unsigned int)code_point);
}

/* Tabs and line ends are what a text file is made of. */
static bool character_refused(uint32_t code_point)
{
    if (code_point == '\t' || code_point == '\n' || code_point == '\r')
        return false;
    return utf8_refusal(code_point) != NULL;
}

/* What is told of the characters of a text, and how far a line has come. */
struct characters {
    struct tally bytes, refused, spaces;
    bool indenting;   /* nothing but white space so far */
    bool told;        /* one that looks like a space was told in this line */
};

/* The character that takes the place of one that may not be; 0 where it may. */
static char character_check(const struct text_check *check, struct characters *seen,
                            size_t offset, uint32_t code_point)
{
    bool line_end = code_point == '\n' || code_point == '\r';
    bool blank = code_point == ' ' || code_point == '\t' || looks_like_space(code_point);
    bool indents = seen->indenting && looks_like_space(code_point);

    if (indents && !seen->told && !tally_full(&seen->spaces))
        false_space_tell(check, offset, code_point);
    seen->told = !line_end && (seen->told || indents);
    seen->indenting = line_end || (seen->indenting && blank);
    if (indents)
        return ' ';
    if (!character_refused(code_point))
        return '\0';
    if (!tally_full(&seen->refused))
        character_tell(check, offset, code_point);
    return '_';
}

static void characters_close(const struct text_check *check, const struct characters *seen,
                             bool *wrong)
{
    const struct tally *const tallies[] = {&seen->bytes, &seen->refused, &seen->spaces};

    for (size_t i = 0; i < sizeof tallies / sizeof tallies[0]; i++) {
        tally_close(check, tallies[i]);
        *wrong = *wrong || tallies[i]->count > 0;
    }
}

/* How many bytes from `index` on are visible ASCII or spaces behind it: there is nothing to be
 * said of them. */
static size_t plain_run(const struct source *source, size_t index)
{
    size_t end = index;

    if (source->bytes[index] == ' ')
        return 0;
    while (end < source->length && source->bytes[end] >= ' ' && source->bytes[end] <= '~')
        end++;
    return end - index;
}

/* A copy of the text with "_" for each character that may not be, and a space for
 * what looks like one before a line: columns stay the same, and the rest of the file
 * can still be read for its errors. */
static char *characters_check(const struct text_check *check, size_t *length, bool *wrong)
{
    const struct source *source = check->source;
    struct characters seen = {.bytes.more = "bytes are not valid UTF-8",
                              .refused.more = "characters are not allowed",
                              .spaces.more = "lines are indented with what is no space",
                              .indenting = true};
    char *clean = arena_alloc(check->arena, source->length + 1);
    size_t used = 0;

    for (size_t index = 0; index < source->length;) {
        size_t start = index, plain = plain_run(source, index);
        uint32_t code_point;
        char instead = '_';
        if (plain > 0) {
            memcpy(clean + used, source->bytes + index, plain);
            used += plain;
            index += plain;
            seen.indenting = false;
            continue;
        }
        if (utf8_next(source->bytes, source->length, &index, &code_point)) {
            instead = character_check(check, &seen, start, code_point);
        } else {
            index++;
            seen.indenting = false;
            if (!tally_full(&seen.bytes))
                byte_tell(check, start);
        }
        size_t kept = instead == '\0' ? index - start : 1;
        memcpy(clean + used, instead == '\0' ? source->bytes + start : &instead, kept);
        used += kept;
    }
    characters_close(check, &seen, wrong);
    *length = used;
    return clean;
}

/* Encodings an editor may have chosen; all are refused whole. */
static bool encoding_check(const struct text_check *check)
{
    const char *bytes = check->source->bytes;
    bool marked = check->source->length >= 2 && (memcmp(bytes, "\xFF\xFE", 2) == 0 ||
                                                 memcmp(bytes, "\xFE\xFF", 2) == 0);
    bool wide = check->source->length >= 2 && (bytes[0] == '\0') != (bytes[1] == '\0');

    if (!marked && !wide)
        return true;
    problem_add(check->problems, SEVERITY_ERROR, source_whole(check->source),
                "save the file with the encoding UTF-8",
                "the file is written in UTF-16, not in UTF-8");
    return false;
}

static bool size_check(const struct text_check *check)
{
    if (check->source->length <= YAML_FILE_LIMIT)
        return true;
    problem_add(check->problems, SEVERITY_ERROR, source_whole(check->source),
                "look whether this is the file that was meant",
                "the file has %zu bytes; at most %zu are read", check->source->length,
                YAML_FILE_LIMIT);
    return false;
}

/* A true directive becomes a comment, a text that begins like one a text, so
 * that libyaml finds what else is wrong. */
static void directive_check(const struct text_check *check, char *line, int number,
                            struct tally *directives)
{
    struct place place = {.source = check->source, .line = number, .column = 1, .span = 1};

    line[0] = text_begins(line, "%YAML") || text_begins(line, "%TAG") ? '#' : '_';
    if (tally_full(directives))
        return;
    problem_add(check->problems, SEVERITY_ERROR, place,
                "delete the line; if it belongs to a text, put the text in quotes on one line",
                "a line cannot begin with \"%%\" (YAML directives are not allowed)");
}

static void tab_tell(const struct text_check *check, int line, size_t before, size_t tabs)
{
    struct place place = {.source = check->source, .line = line};

    place.column = (int)before + 1;
    place.span = (int)tabs;
    problem_add(check->problems, SEVERITY_ERROR, place,
                "put two spaces in the place of each tab",
                "the line is indented with a tab; only spaces may indent");
}

/* The white space a line begins with, its tabs told. In a line of nothing else
 * they do no harm, but libyaml stumbles over them: they become spaces. */
static void indentation_check(const struct text_check *check, char *line, size_t length,
                              int number, struct tally *tabs)
{
    size_t blank = 0;

    while (blank < length && (line[blank] == ' ' || line[blank] == '\t'))
        blank++;
    char *tab = memchr(line, '\t', blank);
    if (tab == NULL)
        return;
    if (blank == length) {
        memset(line, ' ', blank);
        return;
    }
    size_t before = (size_t)(tab - line);
    size_t count = 1;
    while (before + count < blank && tab[count] == '\t')
        count++;
    if (!tally_full(tabs))
        tab_tell(check, number, before, count);
}

/* "  - {item: knife}": a spreadsheet put the line into quotes, and doubled those in it. */
static bool line_in_quotes(const char *line, size_t length)
{
    size_t start = 1;

    if (length < 3 || line[0] != '"' || line[length - 1] != '"')
        return false;
    start += strspn(line + start, " ");
    if (line[start] == '-' && line[start + 1] == ' ')
        return true;
    size_t key = key_length(line + start);
    return key > 0 && line[start + key] == ':' &&
           (line[start + key + 1] == ' ' || start + key + 2 == length);
}

/* The line is left out, so that the others can be read for their errors. */
static void quoted_line_check(const struct text_check *check, char *line, size_t length,
                              int number, struct tally *quoted)
{
    struct place place = {.source = check->source, .line = number, .column = 1, .span = 1};

    if (!line_in_quotes(line, length))
        return;
    line[0] = '#';
    if (!tally_full(quoted))
        problem_add(check->problems, SEVERITY_ERROR, place,
                    "take away the quotes at the start and the end of the line; where two quotes "
                    "stand together in it, write one; edit the file with a text editor",
                    "the whole line stands in quotes, as a spreadsheet writes it");
}

/* Changes `bytes`, whose lines `draft` knows. False where tabs indent: what
 * libyaml would say of them is no help. */
static bool lines_check(const struct text_check *check, const struct source *draft,
                        char *bytes, bool *wrong)
{
    struct tally directives = {.more = "lines begin with \"%\""};
    struct tally tabs = {.more = "lines are indented with a tab"};
    struct tally quoted = {.more = "lines stand in quotes"};

    for (int number = 1; (size_t)number <= draft->line_count; number++) {
        size_t length;
        char *line = bytes + draft->line_starts[number - 1];
        (void)source_line(draft, number, &length);
        if (length > 0 && line[0] == '%')
            directive_check(check, line, number, &directives);
        quoted_line_check(check, line, length, number, &quoted);
        indentation_check(check, line, length, number, &tabs);
    }
    tally_close(check, &quoted);
    tally_close(check, &directives);
    tally_close(check, &tabs);
    *wrong = *wrong || directives.count + tabs.count + quoted.count > 0;
    return tabs.count == 0;
}

const struct source *yaml_check_text(const struct source *source, struct arena *arena,
                                     struct problems *problems, bool *wrong)
{
    struct text_check check = {.source = source, .problems = problems, .arena = arena};

    if (!size_check(&check) || !encoding_check(&check)) {
        *wrong = true;
        return NULL;
    }
    size_t length;
    char *bytes = characters_check(&check, &length, wrong);
    const struct source *draft = source_from(arena, source->name, bytes, length);
    if (!lines_check(&check, draft, bytes, wrong))
        return NULL;
    return source_from(arena, source->name, bytes, length);
}
