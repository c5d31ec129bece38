/* call_time.c - the time that a call is rehearsed with, as scripts say it (room: app). Never
 * takes the clock on board for UTC. */
#include "call_place.h"

#include <ctype.h>
#include "text.h"

enum { HOUR = 60, DAY = 24 * HOUR };

/* A time as it is written: 14:30, 1430, with UTC behind it or not. */
struct written_time { int minutes; bool utc; };

static int two_figures(const char *at)
{
    return isdigit((unsigned char)at[0]) && isdigit((unsigned char)at[1])
               ? 10 * (at[0] - '0') + at[1] - '0' : -1;
}

static bool time_parse(const char *text, struct written_time *time)
{
    int hours = two_figures(text);
    const char *rest = hours < 0 ? text : text + (text[2] == ':' ? 3 : 2);
    int minutes = hours < 0 ? -1 : two_figures(rest);
    if (minutes < 0 || hours * HOUR >= DAY || minutes >= HOUR)
        return false;
    time->minutes = hours * HOUR + minutes;
    time->utc = text_equal(rest + 2, " UTC");
    return time->utc || rest[2] == '\0';
}

static const char *clock_figures(struct arena *arena, int minutes)
{
    return text_format(arena, "%02d%02d", minutes / HOUR, minutes % HOUR);
}

/* Without a clock of the base the script has local time, and UTC is none of it. */
static bool local_take(const struct written_time *time, const struct fleet *fleet,
                       struct call_place *place)
{
    struct place base = fleet->base == NULL ? NO_PLACE : fleet->base->area_place;
    if (time->utc) {
        problem_add(fleet->problems, SEVERITY_ERROR, base,
                    "record `clocks:` in base.yaml, such as {offset: +2}; or give the time of the\n"
                    "clock on board",
                    "what UTC is on board is not recorded: the call says local time");
        return false;
    }
    place->time = clock_figures(fleet->arena, time->minutes);
    place->time_told = text_format(fleet->arena, "%s by the clock on board; what that is in UTC is "
                                   "not recorded", place->time);
    return true;
}

static const char *day_words(int minutes)
{
    return minutes < 0 ? ", the day before" : minutes >= DAY ? ", the day after" : "";
}

static bool utc_take(const struct written_time *time, const struct options *options,
                     const struct fleet *fleet, struct call_place *place)
{
    const struct clock *clock = base_clock_on(fleet->base, options->today);
    if (!time->utc && clock == NULL) {
        problem_add(fleet->problems, SEVERITY_ERROR, fleet->base->clocks[0].place,
                    "add a clock with from: and to: for that day to clocks: in base.yaml; or give "
                    "the\ntime in UTC, such as \"10:30 UTC\"",
                    "none of the base's clocks holds on that day");
        return false;
    }
    int utc = time->minutes - (time->utc ? 0 : clock->minutes);
    place->time = clock_figures(fleet->arena, (utc + DAY) % DAY);
    place->time_told =
        time->utc ? text_format(fleet->arena, "%s UTC", place->time)
                  : text_format(fleet->arena, "%s by the clock on board (UTC %s) is %s UTC%s",
                                clock_figures(fleet->arena, time->minutes), clock->offset.text,
                                place->time, day_words(utc));
    return true;
}

bool call_time_read(const struct options *options, const struct fleet *fleet,
                    struct call_place *place)
{
    struct written_time time;
    if (options->time == NULL)
        return true;
    if (!time_parse(options->time, &time)) {
        problem_add(fleet->problems, SEVERITY_USE, NO_PLACE,
                    "write hours and minutes of 24 hours: 14:30, or \"10:30 UTC\"",
                    "--time \"%s\" is no time", options->time);
        return false;
    }
    if (fleet->base == NULL)
        return false;
    return fleet->base->clock_count == 0 ? local_take(&time, fleet, place)
                                         : utc_take(&time, options, fleet, place);
}
