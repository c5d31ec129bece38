/* printed_read.c - the list of what was printed, read back (room: register). What is not just as
 * it was written is told and left out: a row that is guessed would vouch for a file. */
#include "csv.h"
#include "printed_room.h"

#include <string.h>

#include "sha256.h"

enum { COUNT_DIGITS_MOST = 15, RUN_LETTERS = 16 };

/* One row that is being taken. */
struct row_taking {
    const struct csv_table *table;
    const struct csv_row *row;
    const size_t *columns;         /* where each column stands in the table */
    enum printed_column wrong;     /* the first cell that cannot be so; PRINTED_NONE: none */
    struct arena *arena;
};

static const char *taken_text(const struct row_taking *taking, enum printed_column column)
{
    return csv_cell_text(taking->row, taking->columns[column]);
}

static void taken_refuse(struct row_taking *taking, enum printed_column column)
{
    if (taking->wrong == PRINTED_NONE)
        taking->wrong = column;
}

/* ---- cells ---- */

static const char *text_of_cell(struct row_taking *taking, enum printed_column column)
{
    const char *text = taken_text(taking, column);

    if (text[0] == '\0')
        taken_refuse(taking, column);
    return text;
}

static bool hex_alone(const char *text, size_t length)
{
    return strlen(text) == length && strspn(text, "0123456789abcdef") == length;
}

static const char *sum_of_cell(struct row_taking *taking, enum printed_column column)
{
    const char *text = taken_text(taking, column);

    if (!hex_alone(text, SHA256_TEXT - 1))
        taken_refuse(taking, column);
    return text;
}

/* NULL for what has nothing to say. */
static const char *sum_or_nothing(struct row_taking *taking, enum printed_column column)
{
    return text_equal(taken_text(taking, column), PRINTED_NOTHING) ? NULL
                                                                   : sum_of_cell(taking, column);
}

/* The number that the text begins with, and what stands behind it; NULL: it begins with none. */
static const char *count_take(const char *text, size_t *count)
{
    size_t digits = strspn(text, "0123456789");

    *count = 0;
    for (size_t i = 0; i < digits && digits <= COUNT_DIGITS_MOST; i++)
        *count = 10 * *count + (size_t)(text[i] - '0');
    return digits == 0 || digits > COUNT_DIGITS_MOST ? NULL : text + digits;
}

static size_t count_of_cell(struct row_taking *taking, enum printed_column column)
{
    size_t count;
    const char *rest = count_take(taken_text(taking, column), &count);

    if (rest == NULL || *rest != '\0')
        taken_refuse(taking, column);
    return count;
}

static void cards_of_cell(struct row_taking *taking, struct printed_row *row)
{
    const char *text = taken_text(taking, PRINTED_CARDS), *rest;

    if (text_equal(text, PRINTED_NOTHING))
        return;
    rest = count_take(text, &row->cards);
    if (rest != NULL && text_begins(rest, PRINTED_OF))
        rest = count_take(rest + strlen(PRINTED_OF), &row->of_cards);
    else
        rest = NULL;
    if (rest == NULL || *rest != '\0' || row->of_cards == 0 || row->cards > row->of_cards)
        taken_refuse(taking, PRINTED_CARDS);
}

static bool is_hex(char letter)
{
    return is_digit(letter) || (letter >= 'A' && letter <= 'F');
}

/* The name of a file in the folder itself: with what was written %XX. */
static const char *name_of_cell(struct row_taking *taking, enum printed_column column)
{
    struct text_builder out = text_builder_in(taking->arena);
    const char *text = taken_text(taking, column);

    text_add(&out, "");
    for (const char *at = text; *at != '\0'; at++) {
        bool escaped = *at == '%' && is_hex(at[1]) && is_hex(at[2]);
        char byte = escaped ? (char)(16 * hex_digit_value(at[1]) + hex_digit_value(at[2])) : *at;
        if (byte == '\0' || byte == '/' || (*at == '%' && !escaped))
            taken_refuse(taking, column);
        text_add_bytes(&out, &byte, 1);
        at += escaped ? 2 : 0;
    }
    if (text[0] == '\0')
        taken_refuse(taking, column);
    return out.at;
}

static bool yes_of_cell(struct row_taking *taking, enum printed_column column)
{
    bool yes = text_equal(taken_text(taking, column), PRINTED_YES);

    if (!yes && !text_equal(taken_text(taking, column), PRINTED_NO))
        taken_refuse(taking, column);
    return yes;
}

static struct printed_row printed_take(struct row_taking *taking)
{
    struct printed_row row = {
        .file = name_of_cell(taking, PRINTED_FILE), .sum = sum_of_cell(taking, PRINTED_SUM),
        .bytes = count_of_cell(taking, PRINTED_BYTES), .boat = name_of_cell(taking, PRINTED_BOAT),
        .language = text_of_cell(taking, PRINTED_LANGUAGE),
        .paper = text_of_cell(taking, PRINTED_PAPER),
        .record = sum_or_nothing(taking, PRINTED_RECORD),
        .inputs = sum_or_nothing(taking, PRINTED_INPUTS),
        .version = text_of_cell(taking, PRINTED_VERSION),
        .run = text_of_cell(taking, PRINTED_RUN),
        .complete = yes_of_cell(taking, PRINTED_COMPLETE),
        .deficiencies = count_of_cell(taking, PRINTED_DEFICIENCIES),
        .files = count_of_cell(taking, PRINTED_FILES)};

    cards_of_cell(taking, &row);
    if (!hex_alone(row.run, RUN_LETTERS))
        taken_refuse(taking, PRINTED_RUN);
    if (!date_parse(taken_text(taking, PRINTED_DATE), &row.date) || row.date.day == 0)
        taken_refuse(taking, PRINTED_DATE);
    return row;
}

/* ---- the file ---- */

/* Only the message is kept: the source may die before the problems. */
static void damage_told(struct problems *problems, const struct source *source, int line,
                        const char *what)
{
    problem_add(problems, SEVERITY_DEFICIENCY, NO_PLACE,
                "run maydeck verify on the folder, and print again what is not as listed",
                "%s:%d: the list of what was printed is damaged there: %s", source->name, line,
                what);
}

/* False, told: a column is not there. */
static bool columns_find(const struct csv_table *table, size_t *columns, struct problems *problems)
{
    for (enum printed_column column = PRINTED_NONE + 1; column < PRINTED_COLUMN_COUNT; column++) {
        const char *word = choice_word(printed_column_words, column);
        columns[column] = csv_column_find(table, word);
        if (columns[column] < table->head.count)
            continue;
        damage_told(problems, table->source, 1, "its head lacks a column");
        return false;
    }
    return true;
}

/* Bytes up to the last line end: what a stopped run tore stands behind it. */
static size_t lines_length(const struct source *source)
{
    size_t length = source->length;

    while (length > 0 && source->bytes[length - 1] != '\n')
        length--;
    return length;
}

static bool table_take(struct printed_list *list, const struct csv_table *table,
                       const size_t *columns, struct arena *arena, struct problems *problems)
{
    bool good = true;

    for (size_t i = 0; i < table->count; i++) {
        struct row_taking taking = {.table = table, .row = &table->rows[i], .columns = columns,
                                    .arena = arena};
        struct printed_row row = printed_take(&taking);
        if (taking.wrong == PRINTED_NONE) {
            printed_add(list, &row);
            continue;
        }
        damage_told(problems, table->source,
                    csv_cell_place(table, &table->rows[i], columns[taking.wrong]).line,
                    text_format(arena, "%s cannot be so",
                                csv_cell_name(table, &table->rows[i], columns[taking.wrong],
                                              arena)));
        good = false;
    }
    return good;
}

bool printed_read(struct printed_list *list, const struct source *source, struct arena *arena,
                  struct problems *problems)
{
    size_t length = lines_length(source), columns[PRINTED_COLUMN_COUNT] = {0}, count;
    struct problems *found = problems_new(arena);
    bool torn = length < source->length;

    if (source->length == 0)
        return true;
    const struct source *whole = source_from(arena, source->name, source->bytes, length);
    const struct csv_table *table = length == 0 ? NULL : csv_read(whole, arena, found);
    const struct problem *first = problems_sorted(found, &count);
    if (table == NULL && count > 0)
        damage_told(problems, source, first->place.line, first->what);
    if (torn)
        damage_told(problems, source, source_place(source, length).line,
                    "the last row was torn when a run was stopped");
    return table != NULL && columns_find(table, columns, problems) &&
           table_take(list, table, columns, arena, problems) && !torn;
}
