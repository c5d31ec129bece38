/* cells.c - what spreadsheets make of cells: guarding those that they would change, and telling
 * what was meant by those that they did (room: table). What can mean two things is refused. */
#include "table_room.h"

#include <string.h>

#include "date.h"
#include "number.h"
#include "text.h"
#include "utf8.h"

/* ---- guarding ---- */

/* Words of yes and of no that spreadsheets write, in the languages of the coasts. */
static const char *const true_words[] = {"TRUE", "WAHR", "VRAI", "VERO", "VERDADERO",
                                         "VERDADEIRO", "ISTINA", "DO\u011ERU",
                                         "\u0391\u039B\u0397\u0398\u0397\u03A3", NULL};
static const char *const false_words[] = {"FALSE", "FALSCH", "FAUX", "FALSO", "LA\u017D",
                                          "YANLI\u015E", "\u03A8\u0395\u03A5\u0394\u0397\u03A3",
                                          NULL};

static bool word_is_among(const char *const *words, const char *text, struct arena *arena)
{
    const char *upper = text_upper(arena, text);
    for (size_t i = 0; words[i] != NULL; i++)
        if (text_equal(words[i], upper))
            return true;
    return false;
}

static size_t letters_length(const char *text)
{
    size_t length = strlen(text), end = 0;
    uint32_t code_point;
    for (size_t at = 0; utf8_next(text, length, &at, &code_point) &&
                        utf8_is_letter(code_point);)
        end = at;
    return end;
}

/* A small number, which every spreadsheet gives back as it was. */
static bool is_small_whole(const char *text)
{
    size_t digits = strspn(text, "0123456789");
    return digits > 0 && digits <= 4 && text[digits] == '\0' && (text[0] != '0' || digits == 1);
}

/* "May 27", "MAR1": a month, it may be thought, and a number. */
static bool may_be_month(const char *text)
{
    size_t letters = letters_length(text);
    const char *rest = text + letters;
    return letters >= 3 && strpbrk(rest, "0123456789") != NULL &&
           rest[strspn(rest, "0123456789 .,/-:")] == '\0';
}

static bool needs_guard(const char *text, struct arena *arena)
{
    if (text[0] == '\0' || is_small_whole(text))
        return false;
    return letters_length(text) == 0 || may_be_month(text) ||
           word_is_among(true_words, text, arena) || word_is_among(false_words, text, arena);
}

const char *cell_guarded(const char *text, struct arena *arena)
{
    return needs_guard(text, arena) ? text_format(arena, "'%s", text) : text;
}

static const char *guard_off(const char *cell)
{
    return cell[0] == '\'' ? cell + 1 : cell;
}

const char *cell_plain(const char *cell, struct arena *arena)
{
    const char *start = cell + strspn(cell, " ");
    start = guard_off(start);
    start += strspn(start, " ");
    size_t length = strlen(start);
    while (length > 0 && start[length - 1] == ' ')
        length--;
    return text_nfc(arena, arena_copy(arena, start, length));
}

/* ---- dates ---- */

/* 31/05/27 as 31/05/2027: with a full stop or slash between, the year is last. NULL: it is not
 * of that form, or the century is doubtful. */
static const char *year_completed(const char *text, struct arena *arena)
{
    size_t digits = strspn(text, "0123456789");
    char sign = text[digits];
    if (digits < 1 || digits > 2 || (sign != '/' && sign != '.'))
        return NULL;
    const char *second = text + digits + 1;
    size_t more = strspn(second, "0123456789");
    if (more < 1 || more > 2 || second[more] != sign)
        return NULL;
    const char *year = second + more + 1;
    if (!is_digit(year[0]) || !is_digit(year[1]) || year[2] != '\0' || year[0] > '5')
        return NULL;
    return text_format(arena, "%.*s20%s", (int)(year - text), text, year);
}

static struct cell_said date_cell_said(const char *text, struct arena *arena)
{
    struct date date;
    if (date_parse(text, &date))
        return (struct cell_said){.text = text};
    const char *whole = year_completed(text, arena);
    date = date_meant(arena, whole == NULL ? text : whole);
    const char *written = date_text(arena, date);
    if (date.year != 0 && date_parse(written, &date))
        return (struct cell_said){.text = written};
    return (struct cell_said){
        .text = text,
        .fault = date.year != 0 ? "there is no such day"
                                : "it is no date, or can be read as two dates",
        .remedy = "write year, month and day, or less, with hyphens and an apostrophe in front: "
                  "'2027-04-30, '2027-04"};
}

/* ---- numbers ---- */

static struct cell_said number_said(const char *text, struct arena *arena)
{
    static const char digits[] = "0123456789";
    size_t sign = text[0] == '-' ? 1 : 0, whole = strspn(text + sign, digits);
    const char *mark = text + sign + whole;
    size_t parts = mark[0] == '.' || mark[0] == ',' ? strspn(mark + 1, digits) : 0;
    if (whole == 0 || parts == 0 || mark[1 + parts] != '\0')
        return (struct cell_said){.text = text};
    if (parts == 3 && whole <= 3)
        return (struct cell_said){
            .text = text, .fault = "it may be thousands, or three decimals",
            .remedy = "write it without a sign for thousands, and with fewer decimals"};
    char *written = arena_copy(arena, text, strlen(text));
    written[sign + whole] = '.';
    return (struct cell_said){.text = written};
}

static bool numbers_equal(const char *recorded, const char *cell)
{
    int64_t a, b;
    return number_parse_milli(recorded, &a) && number_parse_milli(cell, &b) && a == b;
}

/* ---- answers, texts ---- */

#define ANSWER_LIST(X) X(SAID_NO, "no") X(SAID_YES, "yes")
enum said_answer { SAID_NOTHING, ANSWER_LIST(CHOICE_NAME) };
static const char *const answer_said_words[] = {ANSWER_LIST(CHOICE_WORD) NULL};

static struct cell_said answer_said(const char *text, struct arena *arena)
{
    enum said_answer answer = SAID_NOTHING;
    if (word_is_among(true_words, text, arena))
        answer = SAID_YES;
    else if (word_is_among(false_words, text, arena))
        answer = SAID_NO;
    return (struct cell_said){
        .text = answer == SAID_NOTHING ? text : choice_word(answer_said_words, answer)};
}

/* 5E+12, 2,00E+08: what was a long number, or seemed one. */
static bool is_scientific(const char *text)
{
    size_t digits = strspn(text, "0123456789.,");
    const char *rest = text + digits;
    return digits > 0 && (rest[0] == 'E' || rest[0] == 'e') && (rest[1] == '+' || rest[1] == '-') &&
           is_digit(rest[2]) && rest[2 + strspn(rest + 2, "0123456789")] == '\0';
}

static struct cell_said text_said(const char *text)
{
    struct cell_said said = {.text = text};
    if (is_scientific(text)) {
        said.fault = "the spreadsheet has made a number of it";
        said.remedy = "write it again with an apostrophe in front: '012345";
    }
    return said;
}

/* ---- what a cell says ---- */

/* Without an apostrophe a spreadsheet would take it for a formula, or has. */
static bool is_formula(const char *cell)
{
    const char *start = cell + strspn(cell, " ");
    return start[0] == '=' || start[0] == '@' ||
           ((start[0] == '+' || start[0] == '-') && !is_digit(start[1]));
}

static struct cell_said kind_cell_said(const struct field *field, const char *text,
                                  struct arena *arena)
{
    switch (field->kind) {
    case FIELD_DATE:
        return date_cell_said(text, arena);
    case FIELD_NUMBER:
        return number_said(text, arena);
    case FIELD_ANSWER:
        return answer_said(text, arena);
    case FIELD_TEXT:
        return text_said(text);
    case FIELD_WORDING:
    case FIELD_CHOICE:
    case FIELD_CHOICES:
    case FIELD_PAIRED:
    case FIELD_BY_CHOICE:
    case FIELD_LIST:
    case FIELD_WORDINGS:
    case FIELD_WORDS:
    case FIELD_PAIR:
    case FIELD_SECTION:
    case FIELD_ENTRIES:
    case FIELD_NODE:
        break;
    }
    return (struct cell_said){.text = text};
}

struct cell_said cell_said(const struct field *field, const char *recorded, const char *cell,
                           struct arena *arena)
{
    const char *text = cell_plain(cell, arena);
    struct cell_said said = {.text = text};
    if (text_equal(guard_off(cell), recorded) || text_equal(cell, recorded) ||
        text_equal(text, recorded))
        return (struct cell_said){.text = recorded};
    if (text[0] == '\0')
        return said;
    if (is_formula(cell)) {
        said.fault = "it begins as a formula does";
        said.remedy = "write the value alone; where it does begin so, put an apostrophe before it";
        return said;
    }
    said = kind_cell_said(field, text, arena);
    if (said.fault == NULL && strchr(said.text, '\n') != NULL) {
        said.fault = "it holds a line break";
        said.remedy = "write it on one line";
    }
    if (said.fault == NULL && field->kind == FIELD_NUMBER && numbers_equal(recorded, said.text))
        said.text = recorded;
    return said;
}
