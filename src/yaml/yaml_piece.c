/* yaml_piece.c - libyaml's events as pieces that need no freeing (room: yaml).
 * An event lives in event_take and nowhere else. Never builds the tree. */
#include "yaml_reader.h"

#include <limits.h>
#include <stdint.h>
#include <string.h>

#include "number.h"
#include "text.h"

#define EVENT_LIMIT 10000
#define ERROR_LIMIT 100

/* Libyaml counts lines and columns from 0, people from 1; a number too large for int
 * stays the largest. */
struct mark mark_from(yaml_mark_t mark)
{
    return (struct mark){
        .index = mark.index,
        .line = int_clipped(mark.line) < INT_MAX ? int_clipped(mark.line) + 1 : INT_MAX,
        .column = int_clipped(mark.column) < INT_MAX ? int_clipped(mark.column) + 1 : INT_MAX,
    };
}

struct place reader_spot(const struct yaml_reader *reader, int line, int column, int span)
{
    return (struct place){
        .source = reader->source, .line = line, .column = column, .span = span};
}

/* Column just after the line's last character that is no white space. */
static int line_end_column(const struct yaml_reader *reader, int line)
{
    size_t length;
    const char *bytes = source_line(reader->clean, line, &length);

    while (length > 0 && (bytes[length - 1] == ' ' || bytes[length - 1] == '\t'))
        length--;
    size_t offset = (size_t)(bytes - reader->clean->bytes) + length;
    return length == 0 ? 1 : source_place(reader->clean, offset).column;
}

/* A place spans one line: what goes on over several is marked to the end of its first. */
struct place reader_place(const struct yaml_reader *reader, struct mark start,
                          struct mark end)
{
    int column = end.line == start.line ? end.column : line_end_column(reader, start.line);
    int span = column > start.column ? column - start.column : 0;

    return reader_spot(reader, start.line, start.column, span);
}

struct place piece_place(const struct yaml_reader *reader, const struct piece *piece)
{
    return reader_place(reader, piece->start, piece->end);
}

/* A byte within a character of UTF-8, not its first. */
static bool byte_continues(char byte)
{
    return ((unsigned char)byte & 0xC0) == 0x80;
}

/* Are the next eight bytes ASCII, so that each begins a character? */
static bool eight_stand_alone(const char *at)
{
    uint64_t eight;
    memcpy(&eight, at, sizeof eight);
    return (eight & UINT64_C(0x8080808080808080)) == 0;
}

/* Walks from the mark asked for last: lines may be long and marks many. */
size_t reader_offset(struct yaml_reader *reader, struct mark mark)
{
    const struct source *clean = reader->clean;
    size_t index = reader->cursor_index;
    size_t offset = reader->cursor_offset;

    while (index < mark.index && offset < clean->length) {
        bool eight = mark.index - index >= 8 && clean->length - offset > 8 &&
                     eight_stand_alone(clean->bytes + offset + 1);
        index += eight ? 8 : 1;
        offset += eight ? 8 : 1;
        while (!eight && byte_continues(clean->bytes[offset]))     /* the NUL at the end does not */
            offset++;
    }
    while (index > mark.index && offset > 0) {
        bool eight = index - mark.index >= 8 && offset >= 8 &&
                     eight_stand_alone(clean->bytes + offset - 8);
        index -= eight ? 8 : 1;
        offset -= eight ? 8 : 1;
        while (!eight && offset > 0 && byte_continues(clean->bytes[offset]))
            offset--;
    }
    reader->cursor_index = index;
    reader->cursor_offset = offset;
    return offset;
}

/* After a hundred errors of one file it says so and reads no further: the rest follows
 * from them or helps nobody. */
void reader_error(struct yaml_reader *reader, struct place place, const char *remedy,
                  const char *format, ...)
{
    va_list list;

    reader->wrong = true;
    if (reader->error_count > ERROR_LIMIT)
        return;
    if (reader->error_count++ == ERROR_LIMIT) {
        problem_add(reader->problems, SEVERITY_ERROR, source_whole(reader->source),
                    "put right what is told, then look at the file again",
                    "the file has more than %d errors; the others are not told", ERROR_LIMIT);
        reader->stopped = true;
        return;
    }
    va_start(list, format);
    char *what = text_format_list(reader->arena, format, list);
    va_end(list);
    problem_add(reader->problems, SEVERITY_ERROR, place, remedy, "%s", what);
}

/* Literal and folded are one to us: both are blocks. */
static enum scalar_style style_from(yaml_scalar_style_t style)
{
    switch (style) {
    case YAML_SINGLE_QUOTED_SCALAR_STYLE:
        return SCALAR_SINGLE;
    case YAML_DOUBLE_QUOTED_SCALAR_STYLE:
        return SCALAR_DOUBLE;
    case YAML_LITERAL_SCALAR_STYLE:
    case YAML_FOLDED_SCALAR_STYLE:
        return SCALAR_BLOCK;
    case YAML_ANY_SCALAR_STYLE:
    case YAML_PLAIN_SCALAR_STYLE:
        break;
    }
    return SCALAR_PLAIN;
}

/* The text is copied, since the event is freed as soon as its piece is made. */
static void scalar_fill(struct yaml_reader *reader, struct piece *piece,
                        const yaml_event_t *event)
{
    piece->kind = PIECE_SCALAR;
    piece->style = style_from(event->data.scalar.style);
    piece->marked = event->data.scalar.anchor != NULL || event->data.scalar.tag != NULL;
    piece->text = arena_copy(reader->arena, (const char *)event->data.scalar.value,
                             event->data.scalar.length);
}

static void sequence_fill(struct piece *piece, const yaml_event_t *event)
{
    piece->kind = PIECE_SEQUENCE;
    piece->flow = event->data.sequence_start.style == YAML_FLOW_SEQUENCE_STYLE;
    piece->marked = event->data.sequence_start.anchor != NULL ||
                    event->data.sequence_start.tag != NULL;
}

static void mapping_fill(struct piece *piece, const yaml_event_t *event)
{
    piece->kind = PIECE_MAPPING;
    piece->flow = event->data.mapping_start.style == YAML_FLOW_MAPPING_STYLE;
    piece->marked = event->data.mapping_start.anchor != NULL ||
                    event->data.mapping_start.tag != NULL;
}

/* False for the start of the stream, which means nothing here. */
static bool piece_fill(struct yaml_reader *reader, struct piece *piece,
                       const yaml_event_t *event)
{
    piece->start = mark_from(event->start_mark);
    piece->end = mark_from(event->end_mark);
    switch (event->type) {
    case YAML_NO_EVENT:
    case YAML_STREAM_START_EVENT:
        return false;
    case YAML_STREAM_END_EVENT:
        piece->kind = PIECE_FILE_END;
        break;
    case YAML_DOCUMENT_START_EVENT:
        piece->kind = PIECE_DOCUMENT;
        break;
    case YAML_DOCUMENT_END_EVENT:
        piece->kind = PIECE_DOCUMENT_END;
        break;
    case YAML_ALIAS_EVENT:
        piece->kind = PIECE_ALIAS;
        break;
    case YAML_SCALAR_EVENT:
        scalar_fill(reader, piece, event);
        break;
    case YAML_SEQUENCE_START_EVENT:
        sequence_fill(piece, event);
        break;
    case YAML_MAPPING_START_EVENT:
        mapping_fill(piece, event);
        break;
    case YAML_SEQUENCE_END_EVENT:
    case YAML_MAPPING_END_EVENT:
        piece->kind = PIECE_END;
        break;
    }
    return true;
}

/* One event into a piece; false where libyaml gives none. */
static bool event_take(struct yaml_reader *reader, struct piece *piece)
{
    bool filled = false;

    while (!filled) {
        yaml_event_t event;
        if (!yaml_parser_parse(&reader->parser, &event))
            return false;
        filled = piece_fill(reader, piece, &event);
        yaml_event_delete(&event);
    }
    return true;
}

/* The note on a folded scalar waits until here: where a syntax error follows,
 * the fold is a part of that and not worth a word of its own. */
struct piece piece_next(struct yaml_reader *reader)
{
    struct piece piece = {.kind = PIECE_STOP};

    if (reader->stopped)
        return piece;
    if (!event_take(reader, &piece)) {
        syntax_tell(reader);
        reader->stopped = true;
        return (struct piece){.kind = PIECE_STOP};
    }
    fold_tell(reader);
    reader->last = piece.kind == PIECE_SCALAR ? piece : (struct piece){.kind = PIECE_STOP};
    if (++reader->event_count > EVENT_LIMIT) {
        reader_error(reader, piece_place(reader, &piece),
                     "look whether this is the file that was meant",
                     "the file has more than %d entries", EVENT_LIMIT);
        reader->stopped = true;
        return (struct piece){.kind = PIECE_STOP};
    }
    return piece;
}
