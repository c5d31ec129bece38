/* yaml_span.c - looking along the bytes of a file that is being changed (room: yaml): lines,
 * white space, commas behind comments. Never changes one. */
#include "yaml_editing.h"

#include <stdint.h>

static bool byte_ends_line(char byte)
{
    return byte == '\n' || byte == '\r';
}

static bool byte_is_blank(char byte)
{
    return byte == ' ' || byte == '\t';
}

size_t line_start_of(const struct yaml_editing *editing, size_t at)
{
    while (at > 0 && !byte_ends_line(editing->bytes[at - 1]))
        at--;
    return at;
}

size_t line_stop_of(const struct yaml_editing *editing, size_t at)
{
    while (at < editing->length && !byte_ends_line(editing->bytes[at]))
        at++;
    return at;
}

size_t line_after(const struct yaml_editing *editing, size_t at)
{
    size_t stop = line_stop_of(editing, at);

    if (stop == editing->length)
        return stop;
    /* CR LF is one line end; the NUL behind the last byte is none */
    return editing->bytes[stop] == '\r' && editing->bytes[stop + 1] == '\n' ? stop + 2
                                                                              : stop + 1;
}

size_t blanks_skip(const struct yaml_editing *editing, size_t at)
{
    while (at < editing->length && byte_is_blank(editing->bytes[at]))
        at++;
    return at;
}

bool bytes_blank(const struct yaml_editing *editing, size_t from, size_t to)
{
    for (; from < to; from++)
        if (!byte_is_blank(editing->bytes[from]))
            return false;
    return true;
}

bool bytes_break(const struct yaml_editing *editing, size_t from, size_t to)
{
    return line_stop_of(editing, from) < to;
}

size_t white_skip(const struct yaml_editing *editing, size_t at)
{
    while (at < editing->length &&
           (byte_is_blank(editing->bytes[at]) || byte_ends_line(editing->bytes[at])))
        at++;
    return at;
}

size_t comma_find(const struct yaml_editing *editing, size_t at)
{
    at = white_skip(editing, at);
    while (at < editing->length && editing->bytes[at] == '#')
        at = white_skip(editing, line_stop_of(editing, at));
    return at < editing->length && editing->bytes[at] == ',' ? at : SIZE_MAX;
}
