/* base_clocks.c - the clock on board against UTC, as the base's file tells it for each part of
 * the season (room: record). Never guesses an offset: without one nobody is told what UTC is. */
#include "record.h"

#include "number.h"
#include "text.h"

#include <string.h>

enum { OFFSET_HOUR = 60, OFFSET_STEP = 15, AHEAD_MOST = 14, BEHIND_MOST = 12, HOURS_LONGEST = 2 };

/* The figures from `at` on, of which there may be two; -1: there are none, or more. */
static int offset_figures(const char **at)
{
    int value = 0;
    size_t count = strspn(*at, "0123456789");
    if (count == 0 || count > HOURS_LONGEST)
        return -1;
    for (const char *end = *at + count; *at < end; (*at)++)
        value = 10 * value + (**at - '0');
    return value;
}

/* False: it is no time that any place keeps. */
static bool offset_read(const char *text, int *minutes)
{
    bool behind = text[0] == '-';
    if (text[0] != '+' && text[0] != '-' && !text_equal(text, "0"))
        return false;
    const char *at = text + (text[0] == '0' ? 0 : 1);
    int hours = offset_figures(&at), part = 0;
    if (hours >= 0 && *at == ':') {
        at++;
        part = strlen(at) == 2 ? offset_figures(&at) : -1;
    }
    if (hours < 0 || part < 0 || *at != '\0' || part >= OFFSET_HOUR || part % OFFSET_STEP != 0)
        return false;
    *minutes = hours * OFFSET_HOUR + part;
    if (*minutes > (behind ? BEHIND_MOST : AHEAD_MOST) * OFFSET_HOUR)
        return false;
    *minutes = behind ? -*minutes : *minutes;
    return true;
}

static bool clock_read(struct clock *clock, struct problems *problems)
{
    if (clock->offset.text == NULL)
        return false;
    clock->read = offset_read(clock->offset.text, &clock->minutes);
    if (!clock->read)
        problem_add(problems, SEVERITY_ERROR, clock->offset.place,
                    "write the hours that the clock on board is ahead of UTC with a sign: +2, "
                    "+5:30, -3;\nwhere it shows UTC, 0",
                    "\"%s\" is no offset from UTC", clock->offset.text);
    return clock->read;
}

/* Of several, or with one day, nobody would know which holds. */
static bool clock_dated(const struct clock *clock, size_t count, struct problems *problems)
{
    bool both = clock->from.given && clock->to.given;
    if (!both && (count > 1 || clock->from.given || clock->to.given)) {
        problem_add(problems, SEVERITY_ERROR, clock->place,
                    "write from: and to: with each; of one that always holds, neither",
                    "this clock does not tell its first and its last day");
        return false;
    }
    if (clock->from.given && clock->to.given &&
        date_compare(date_last_day(clock->to.date), date_first_day(clock->from.date)) < 0) {
        problem_add(problems, SEVERITY_ERROR, clock->to.place, "correct one of the two dates",
                    "the clock ends %s, before it begins %s", clock->to.text, clock->from.text);
        return false;
    }
    return true;
}

static bool clocks_overlap(const struct clock *a, const struct clock *b)
{
    return date_compare(date_first_day(a->from.date), date_last_day(b->to.date)) <= 0 &&
           date_compare(date_first_day(b->from.date), date_last_day(a->to.date)) <= 0;
}

void clocks_take(struct base_record *base, const struct entries_value *entries,
                 struct arena *arena, struct problems *problems)
{
    struct clock *given = entries->items, *kept = arena_array(arena, entries->count, sizeof *kept);
    size_t count = 0;
    for (size_t i = 0; i < entries->count; i++) {
        bool sound = clock_read(&given[i], problems);
        if (given[i].refused || !clock_dated(&given[i], entries->count, problems) || !sound)
            continue;
        for (size_t k = 0; k < count; k++)
            if (clocks_overlap(&kept[k], &given[i]))
                problem_add(problems, SEVERITY_ERROR, given[i].place,
                            "let each begin the day after the other ends",
                            "two clocks hold on the same day");
        kept[count++] = given[i];
    }
    base->clocks = kept;
    base->clock_count = count;
}

const struct clock *base_clock_on(const struct base_record *base, struct date day)
{
    for (size_t i = 0; base != NULL && i < base->clock_count; i++) {
        const struct clock *clock = &base->clocks[i];
        if ((!clock->from.given || date_compare(date_first_day(clock->from.date), day) <= 0) &&
            (!clock->to.given || date_compare(day, date_last_day(clock->to.date)) <= 0))
            return clock;
    }
    return NULL;
}
