/* register_read.c - a register's lines into rows (room: register). The file is read line by line,
 * never as one table: what a killed run tore, or somebody's editor spoilt, is one row and hides
 * no other. */
#include "csv.h"
#include "register_room.h"

#include <string.h>

#include "utf8.h"

#define COMMENT '#'
#define TORN_HEAD "# torn: "

/* One line that is being taken apart. */
struct line_reading {
    const struct source *source;
    struct arena *arena;
    struct problems *problems;    /* NULL: what is wrong is not told */
    const char *end;              /* of the line */
    char delimiter;               /* '\0' until the first cell is read */
    const char *cells[COLUMN_COUNT - 1];
    size_t at[COLUMN_COUNT - 1];  /* byte of the source where each begins */
    size_t count;
    const char *wrong;            /* what is, at `wrong_at` */
    size_t wrong_at;
};

/* Always false. */
static bool line_refuse(struct line_reading *line, const char *at, const char *wrong)
{
    line->wrong = wrong;
    line->wrong_at = (size_t)(at - line->source->bytes);
    return false;
}

/* ---- cells ---- */

/* The end of the cell; NULL: a quote is not closed, or is followed by something. */
static const char *quoted_take(struct line_reading *line, const char *at,
                               struct text_builder *out)
{
    for (at++; at < line->end; at++) {
        bool doubled = at[0] == '"' && at + 1 < line->end && at[1] == '"';
        if (at[0] == '"' && !doubled)
            return at + 1;
        text_add_bytes(out, at, 1);
        at += doubled ? 1 : 0;
    }
    return NULL;
}

static bool parts_cells(const struct line_reading *line, char sign)
{
    if (line->delimiter != '\0')
        return sign == line->delimiter;
    return sign != '\0' && strchr(CSV_DELIMITERS, sign) != NULL;
}

/* Reads one cell and the sign behind it; `*at` is then behind that. */
static bool cell_take(struct line_reading *line, const char **at)
{
    struct text_builder out = text_builder_in(line->arena);
    const char *begin = *at, *end = begin;
    bool quoted = begin < line->end && *begin == '"';
    text_add(&out, "");
    if (quoted)
        end = quoted_take(line, begin, &out);
    while (!quoted && end < line->end && !parts_cells(line, *end))
        end++;
    if (end == NULL || (end < line->end && !parts_cells(line, *end)))
        return line_refuse(line, begin, "a quote that opens a cell is not closed at its end");
    if (line->count < COLUMN_COUNT - 1) {
        line->at[line->count] = (size_t)(begin - line->source->bytes);
        line->cells[line->count++] =
            quoted ? out.at : arena_copy(line->arena, begin, (size_t)(end - begin));
    }
    if (end < line->end && line->delimiter == '\0')
        line->delimiter = *end;
    *at = end < line->end ? end + 1 : end;
    return end < line->end || line->count >= COLUMN_COUNT - 1 ||
           line_refuse(line, end, "the row ends before its last column");
}

static bool cells_take(struct line_reading *line, const char *at)
{
    while (line->count < COLUMN_COUNT - 1)
        if (!cell_take(line, &at))
            return false;
    return true;
}

/* ---- rows ---- */

static const char *column_text(const struct line_reading *line, enum register_column column)
{
    return line->cells[column - 1];
}

static bool cell_refuse(struct line_reading *line, enum register_column column, const char *wrong)
{
    return line_refuse(line, line->source->bytes + line->at[column - 1],
                       text_format(line->arena, "%s: %s",
                                   choice_word(register_column_words, column), wrong));
}

static bool code_sound(struct line_reading *line)
{
    const char *code, *wrong, *cell = column_text(line, COLUMN_CODE);
    return (code_read(cell, line->arena, &code, &wrong) == CODE_SOUND && text_equal(code, cell)) ||
           cell_refuse(line, COLUMN_CODE, "this is no check code");
}

/* Only what a text of a file may hold: what is no character would be shown on a terminal. */
static bool cell_is_text(const char *cell)
{
    size_t length = strlen(cell);
    for (size_t at = 0; at < length;) {
        uint32_t code_point;
        if (!utf8_next(cell, length, &at, &code_point) || utf8_refusal(code_point) != NULL)
            return false;
    }
    return true;
}

/* No cell of a row is empty: one that is was lost. */
static bool cells_sound(struct line_reading *line)
{
    for (enum register_column column = COLUMN_NONE + 1; column < COLUMN_COUNT; column++) {
        if (text_empty(column_text(line, column)))
            return cell_refuse(line, column, "the cell is empty");
        if (!cell_is_text(column_text(line, column)))
            return cell_refuse(line, column, "it holds what is no letter, figure or sign");
    }
    return true;
}

static bool row_take(struct line_reading *line, struct register_row *row)
{
    *row = (struct register_row){
        .event = choice_find(register_event_words, column_text(line, COLUMN_EVENT)),
        .boat = column_text(line, COLUMN_BOAT), .card = column_text(line, COLUMN_CARD),
        .number = column_text(line, COLUMN_NUMBER), .name = column_text(line, COLUMN_NAME),
        .language = column_text(line, COLUMN_LANGUAGE),
        .paper = column_text(line, COLUMN_PAPER), .code = column_text(line, COLUMN_CODE),
        .place = column_text(line, COLUMN_PLACE), .by = column_text(line, COLUMN_BY),
        .until = column_text(line, COLUMN_UNTIL), .dates = column_text(line, COLUMN_DATES),
        .program = column_text(line, COLUMN_PROGRAM), .texts = column_text(line, COLUMN_TEXTS),
        .content = column_text(line, COLUMN_CONTENT),
        .at = source_place(line->source, line->at[0])};
    if (row->event == EVENT_NONE)
        return cell_refuse(line, COLUMN_EVENT, "neither printed, hung nor taken_down");
    if (!date_parse(column_text(line, COLUMN_DATE), &row->date) || row->date.day == 0)
        return cell_refuse(line, COLUMN_DATE, "this is no date such as 2027-04-30");
    return cells_sound(line) && code_sound(line);
}

/* ---- the file ---- */

static bool is_head(const struct line_reading *line)
{
    return line->count > 0 &&
           text_equal(line->cells[0], choice_word(register_column_words, COLUMN_EVENT));
}

/* What stands in a line. */
enum line_kind { LINE_SKIPPED, LINE_ROW, LINE_DAMAGED };

static enum line_kind line_take(struct line_reading *line, int number, struct register_row *row)
{
    size_t length;
    const char *at = source_line(line->source, number, &length);
    line->end = at + length;
    if (length == 0 || *at == COMMENT)
        return LINE_SKIPPED;
    bool whole = cells_take(line, at);
    if (is_head(line))
        return LINE_SKIPPED;
    return whole && row_take(line, row) ? LINE_ROW : LINE_DAMAGED;
}

static void damage_tell(const struct line_reading *line, struct problems *problems)
{
    problem_add(problems, SEVERITY_ERROR, source_place(line->source, line->wrong_at),
                "put the row right if you know what it said, or begin its line with #; what it is "
                "about\ncounts as not recorded: print or hang that card again",
                "this row of the register is damaged: %s", line->wrong);
}

/* Bytes up to the last line end. */
static size_t whole_length(const struct source *source)
{
    size_t length = source->length;
    while (length > 0 && source->bytes[length - 1] != '\n' && source->bytes[length - 1] != '\r')
        length--;
    return length;
}

/* Of a row whose end was cut off the content cannot be unpacked. */
static bool content_whole(const struct register_row *row, struct arena *arena)
{
    return text_equal(row->content, REGISTER_NOTHING) ||
           content_unpack(row->content, arena) != NULL;
}

struct register_rows register_read(const struct source *source, struct arena *arena,
                                   struct problems *problems)
{
    struct register_row *rows = arena_array(arena, source->line_count, sizeof *rows);
    struct register_rows read = {.rows = rows, .whole = whole_length(source)};
    for (size_t i = 1; i <= source->line_count; i++) {
        struct line_reading line = {.source = source, .arena = arena};
        enum line_kind kind = line_take(&line, (int)i, &rows[read.count]);
        bool torn = source->line_starts[i - 1] >= read.whole;
        if (kind == LINE_ROW && torn)
            read.last_whole = content_whole(&rows[read.count], arena);
        if (kind == LINE_ROW && (!torn || read.last_whole))
            read.count++;
        else if (kind == LINE_DAMAGED && !torn)
            damage_tell(&line, problems);
    }
    return read;
}

/* ---- mending ---- */

/* Quotes in a line that is skipped would be taken for cells' by a spreadsheet. */
static void torn_keep(const struct source *source, size_t from, struct text_builder *out)
{
    text_add(out, TORN_HEAD);
    for (size_t i = from; i < source->length; i++)
        text_add_bytes(out, source->bytes[i] == '"' ? "'" : source->bytes + i, 1);
    text_add(out, "\n");
}

static bool begins_head(const struct source *source, struct arena *arena)
{
    struct text_builder head = text_builder_in(arena);
    register_head_add(&head);
    return source->length <= head.length && memcmp(head.at, source->bytes, source->length) == 0;
}

void register_mend(const struct source *source, const struct register_rows *rows, size_t *kept,
                   struct text_builder *out, struct problems *problems)
{
    bool torn = rows->whole < source->length;
    bool head_alone = rows->whole == 0 && begins_head(source, out->arena);
    *kept = torn && !rows->last_whole ? rows->whole : source->length;
    if (*kept == 0)
        register_head_add(out);
    if (torn && rows->last_whole)
        text_add(out, "\n");
    if (!torn || rows->last_whole || head_alone)
        return;
    torn_keep(source, rows->whole, out);
    /* the source may die before the problems: its name is in the message */
    problem_add(problems, SEVERITY_DEFICIENCY, NO_PLACE,
                "look with `maydeck renew` what counts as printed and hung, and print or hang the "
                "card again\nwhere it lacks",
                "%s:%d: the last row was torn when a run was stopped; it is kept as a line that "
                "begins with #", source->name, source_place(source, rows->whole).line);
}
