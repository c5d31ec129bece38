/* source_place.c - lines, columns and byte offsets of a source (room: base).
 * Columns count characters; a byte that is no valid UTF-8 counts as one. Never
 * points outside the source. */
#include "source.h"

#include <limits.h>
#include <stdint.h>

#include "number.h"
#include "promise.h"
#include "text.h"
#include "utf8.h"

struct place source_whole(const struct source *source)
{
    return (struct place){.source = source};
}

/* Moves one character on; a byte that fits no character is one. */
static void step_over(const char *bytes, size_t length, size_t *index)
{
    uint32_t code_point;

    if (!utf8_next(bytes, length, index, &code_point))
        (*index)++;
}

/* Index of the line an offset stands on: the last that starts at or before. */
static size_t line_find(const struct source *source, size_t offset)
{
    size_t low = 0;
    size_t high = source->line_count;

    promise(high > 0 && source->line_starts[0] == 0);
    while (high - low > 1) {
        size_t middle = low + (high - low) / 2;
        if (source->line_starts[middle] <= offset)
            low = middle;
        else
            high = middle;
    }
    return low;
}

struct place source_place(const struct source *source, size_t byte_offset)
{
    if (byte_offset > source->length)
        byte_offset = source->length;
    size_t line = line_find(source, byte_offset);
    size_t column = 1;

    for (size_t index = source->line_starts[line]; index < byte_offset; column++) {
        size_t next = index;
        step_over(source->bytes, source->length, &next);
        if (next > byte_offset)
            break;
        index = next;
    }
    return (struct place){
        .source = source, .line = int_clipped(line + 1), .column = int_clipped(column)};
}

const char *source_line(const struct source *source, int line, size_t *length)
{
    *length = 0;
    if (line < 1 || (size_t)line > source->line_count)
        return "";
    size_t start = source->line_starts[line - 1];
    size_t end = (size_t)line < source->line_count ? source->line_starts[line] : source->length;

    while (end > start && (source->bytes[end - 1] == '\n' || source->bytes[end - 1] == '\r'))
        end--;
    *length = end - start;
    return source->bytes + start;
}

size_t source_offset(const struct source *source, int line, int column)
{
    if (line < 1)
        return 0;
    if ((size_t)line > source->line_count)
        return source->length;
    size_t length;
    const char *bytes = source_line(source, line, &length);
    size_t index = 0;

    for (int i = 1; i < column && index < length; i++)
        step_over(bytes, length, &index);
    return source->line_starts[line - 1] + index;
}

const char *line_words(struct place there, struct place here, struct arena *arena)
{
    if (there.source == here.source || there.source == NULL)
        return text_format(arena, "line %d", there.line);
    return text_format(arena, "line %d of %s", there.line, there.source->name);
}
