/* said_lines.c - all that the cards of a set say, a line a fact. */
#include "said_lines.h"

#include <ctype.h>
#include <string.h>

#include "compose.h"
#include "text.h"

/* Facts that change with every other, or with the day. */
static bool is_dated(const char *line)
{
    static const char *const names[] = {"code: ", "dates: ", "printed: "};
    for (size_t i = 0; i < sizeof names / sizeof *names; i++)
        if (text_begins(line + 2, names[i]))
            return true;
    return false;
}

/* Printed or shown, of the lines of sheet_dump. */
static bool is_on_page(const char *line)
{
    return line[0] == ' ' && (line[1] == ' ' || line[1] == '~') && !is_dated(line);
}

/* Without the line of the file that it came from. */
static size_t said_length(const char *line)
{
    size_t length = strcspn(line, "\n");
    const char *origin = memchr(line, '<', length);
    while (origin != NULL && (origin[-1] != ' ' || origin[-2] != ' '))
        origin = memchr(origin + 1, '<', (size_t)(line + length - origin - 1));
    return origin == NULL ? length : (size_t)(origin - line) - 2;
}

static struct said_sheet sheet_said(const struct sheet *sheet, struct arena *arena)
{
    struct text_builder dump = text_builder_in(arena), whole = text_builder_in(arena);
    struct said_sheet said = {.id = sheet->id, .held = sheet->held};
    const char **lines = NULL;
    size_t room = 0;
    sheet_dump(sheet, &dump);
    text_add(&whole, "");
    for (const char *at = dump.at; *at != '\0'; at += strcspn(at, "\n") + 1) {
        if (!is_on_page(at))
            continue;
        lines = arena_grow(arena, lines, said.count, &room, sizeof *lines);
        lines[said.count] = arena_copy(arena, at, said_length(at));
        text_add_format(&whole, "%s\n", lines[said.count++]);
    }
    said.lines = lines;
    said.whole = whole.at;
    return said;
}

struct all_said said_by(const struct sheet *const *sheets, size_t count, struct arena *arena)
{
    struct said_sheet *said = arena_array(arena, count, sizeof *said);
    for (size_t i = 0; i < count; i++)
        said[i] = sheet_said(sheets[i], arena);
    return (struct all_said){said, count};
}

const struct said_sheet *said_sheet(const struct all_said *said, const char *id)
{
    for (size_t i = 0; i < said->count; i++)
        if (text_equal(said->sheets[i].id, id))
            return &said->sheets[i];
    return NULL;
}

bool said_in(const struct said_sheet *sheet, const char *line)
{
    for (size_t i = 0; i < sheet->count; i++)
        if (text_equal(sheet->lines[i], line))
            return true;
    return false;
}

/* The next word, whatever signs stand round it; its length in *length, 0 at the end. */
static const char *word_next(const char *at, size_t *length)
{
    static const char signs[] = " ,.:;*()=·–";
    at += strspn(at, signs);
    *length = strcspn(at, signs);
    return at;
}

/* How many letters two words begin with alike. */
static size_t common_letters(const char *a, const char *b, size_t most)
{
    size_t count = 0;
    while (count < most && tolower((unsigned char)a[count]) == tolower((unsigned char)b[count]))
        count++;
    return count;
}

/* The same word, or a form of it: knife and knives. */
static bool same_word(const char *a, size_t length, const char *b, size_t other)
{
    enum { STEM = 3, ENDING = 3 };
    size_t shorter = length < other ? length : other, longer = length + other - shorter;
    size_t common = common_letters(a, b, shorter);
    return common == longer || (common >= STEM && longer - common <= ENDING);
}

/* Behind the first word of the text that is this one; NULL: none is. */
static const char *behind_word(const char *text, const char *word, size_t length)
{
    size_t other;
    for (text = word_next(text, &other); other > 0; text = word_next(text + other, &other))
        if (same_word(text, other, word, length))
            return text + other;
    return NULL;
}

/* Does `whole` have all words of `part`, in their order? A letter alone, as in "a line", is no
 * word. */
static bool holds_words(const char *whole, const char *part)
{
    size_t length;
    for (part = word_next(part, &length); length > 0 && whole != NULL;
         part = word_next(part + length, &length))
        whole = length == 1 ? whole : behind_word(whole, part, length);
    return whole != NULL;
}

bool said_less(const struct said_sheet *sheet, const char *line)
{
    for (size_t i = 0; i < sheet->count; i++)
        if (holds_words(sheet->lines[i], line))
            return true;
    return false;
}
