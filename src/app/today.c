/* today.c - whether today can be the day that the clock or --date gives (room: app): nothing that
 * was read or checked lies in days to come. A clock that stands behind calls all gear in date. */
#include "fleet.h"

/* The day something was done, and where that is written. */
struct done {
    struct date date;              /* its first day; year 0: none is known */
    const struct date_value *written;
    const char *what, *remedy;
};

static void done_keep(struct done *last, const struct date_value *value, const char *what,
                      const char *remedy)
{
    struct date first = date_first_day(value->date);
    if (value->given && (last->date.year == 0 || date_compare(first, last->date) > 0))
        *last = (struct done){first, value, what, remedy};
}

#define SET_CLOCK "set the clock of the computer, or name the day with --date"

/* The last that is known of the program's own texts and of the base. */
static struct done done_last(const struct fleet *fleet)
{
    struct done last = {0};
    for (size_t i = 0; fleet->authorities != NULL && i < fleet->authorities->count; i++)
        done_keep(&last, &fleet->authorities->rows[i].read, "a source of the texts was read on",
                  SET_CLOCK);
    if (fleet->base != NULL)
        done_keep(&last, &fleet->base->centre_checked_on, "the rescue centre was checked on",
                  SET_CLOCK "; if today is right, correct\nchecked_on");
    return last;
}

/* Where the texts were read it may be a day later than here. */
enum { DAYS_BETWEEN_ZONES = 1 };

bool today_sound(const struct options *options, unsigned needs, struct fleet *fleet)
{
    bool holds = (needs & NEED_ANY_DAY) == 0;
    struct done last = done_last(fleet);
    if (last.date.year == 0 || (needs & NEED_NO_DAY) != 0 ||
        date_days_between(options->today, last.date) <= DAYS_BETWEEN_ZONES)
        return true;
    problem_add_check(fleet->problems, "today_behind",
                      holds ? SEVERITY_ERROR : SEVERITY_DEFICIENCY,
                      last.written->place, last.remedy,
                      "today would be %s, but %s %s: no date of gear can be judged",
                      date_text(fleet->arena, options->today), last.what,
                      last.written->text);
    fleet->today_behind = true;
    return !holds;
}
