/* due_calendar.c - dates as a calendar of RFC 5545 (room: due): whole days, with line ends CR LF
 * and lines of at most 75 bytes. It asks no clock. */
#include "due.h"
#include "sha256.h"

#include <string.h>

/* Bytes of a line without its end (RFC 5545, 3.1). */
enum { CALENDAR_LINE_MOST = 75, UID_SIGNS = 32 };

/* The first byte of a character? A line is never cut within one. */
static bool begins_character(char byte)
{
    return ((unsigned char)byte & 0xC0) != 0x80;
}

/* One property on as many lines as it takes; each but the first begins with a space. */
static void calendar_line(struct text_builder *out, const char *line)
{
    size_t length = strlen(line), most = CALENDAR_LINE_MOST;
    for (size_t at = 0; at < length;) {
        size_t take = length - at > most ? most : length - at;
        while (at + take < length && !begins_character(line[at + take]))
            take--;
        text_add_format(out, "%s%.*s\r\n", at == 0 ? "" : " ", (int)take, line + at);
        at += take;
        most = CALENDAR_LINE_MOST - 1;
    }
}

/* Of the type TEXT (3.3.11). */
static const char *escaped(const char *text, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    text_add(&out, "");
    for (; *text != '\0'; text++) {
        if (*text == '\n') {
            text_add(&out, "\\n");
            continue;
        }
        if (strchr("\\;,", *text) != NULL)
            text_add(&out, "\\");
        text_add_bytes(&out, text, 1);
    }
    return out.at;
}

/* The same for the same date of the same piece, whatever day it is: a calendar that takes the file
 * again moves the day. */
static const char *uid_of(const struct due_list *list, const struct due_date *date, size_t twin,
                          struct arena *arena)
{
    const char *whole = text_format(arena, "%s\n%s\n%s\n%s\n%s\n%zu",
                                    list->base == NULL ? "" : list->base, date->boat, date->tag,
                                    date->item, date->field, twin);
    char sum[SHA256_TEXT];
    sha256_text((const unsigned char *)whole, strlen(whole), sum);
    return text_format(arena, "%.*s@maydeck", (int)UID_SIGNS, sum);
}

/* How many before it are of the same piece and kind. */
static size_t twin_of(const struct due_list *list, size_t index)
{
    const struct due_date *date = &list->rows[index];
    size_t count = 0;
    for (size_t i = 0; i < index; i++) {
        const struct due_date *other = &list->rows[i];
        count += text_equal(other->boat, date->boat) && text_equal(other->tag, date->tag) &&
                         text_equal(other->item, date->item) &&
                         text_equal(other->field, date->field)
                     ? 1 : 0;
    }
    return count;
}

static const char *day_signs(struct date date, struct arena *arena)
{
    return text_format(arena, "%04d%02d%02d", date.year, date.month, date.day);
}

static void event_add(const struct due_list *list, size_t index, struct date today,
                      struct text_builder *out)
{
    const struct due_date *date = &list->rows[index];
    struct arena *arena = out->arena;
    const char *piece = text_format(arena, "%s: %s%s%s", date->boat, date->item,
                                    date->tag[0] == '\0' ? "" : " ", date->tag);
    calendar_line(out, "BEGIN:VEVENT");
    calendar_line(out, text_format(arena, "UID:%s",
                                  uid_of(list, date, twin_of(list, index), arena)));
    calendar_line(out, text_format(arena, "DTSTAMP:%sT000000Z", day_signs(today, arena)));
    calendar_line(out, text_format(arena, "DTSTART;VALUE=DATE:%s",
                                  day_signs(date->last, arena)));
    calendar_line(out, text_format(arena, "SUMMARY:%s", escaped(piece, arena)));
    calendar_line(out, text_format(arena, "DESCRIPTION:%s",
                                  escaped(text_format(arena, "last good day: %s\n%s", date->what,
                                                      date->where), arena)));
    calendar_line(out, "TRANSP:TRANSPARENT");
    calendar_line(out, "END:VEVENT");
}

size_t due_calendar(const struct due_list *list, struct date today, struct text_builder *out)
{
    size_t count = 0;
    for (size_t i = 0; i < list->count; i++)
        count += list->rows[i].known ? 1 : 0;
    if (count == 0)
        return 0;
    calendar_line(out, "BEGIN:VCALENDAR");
    calendar_line(out, "VERSION:2.0");
    calendar_line(out, "PRODID:-//maydeck//dates of a base//EN");
    calendar_line(out, "CALSCALE:GREGORIAN");
    for (size_t i = 0; i < list->count; i++)
        if (list->rows[i].known)
            event_add(list, i, today, out);
    calendar_line(out, "END:VCALENDAR");
    return count;
}
