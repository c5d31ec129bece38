/* date_rules.c - gear out of date, before or during the charter, and dates that cannot
 * be (room: rules). How a date is found is src/figure's. */
#include "rules_room.h"

#include "gear_date.h"
#include "text.h"

/* Of the date, of the first one that was refused, or of the piece. */
static struct place date_place(const struct gear_date *date, const struct equipment *gear)
{
    if (date->known)
        return date->place;
    for (const enum gear_field *field = gear_date_fields; *field != GEAR_FIELD_NONE; field++)
        if (gear_date_field(gear, *field)->place.line > 0 &&
            !gear_date_field(gear, *field)->given)
            return gear_date_field(gear, *field)->place;
    return gear->place;
}

/* Where a stamp without a day is not counted to its last one. */
static const char *counted_words(const struct rule_run *run, const struct gear_date *date)
{
    if (date_compare(date->last, date_last_day(date->mark)) == 0)
        return "";
    return text_format(run->arena, ", which counts to %s for want of a %s",
                       date_text(run->arena, date->last), date->mark.month == 0 ? "month" : "day");
}

/* "service_due 2027-04", or "serviced 2026-04-30 and 12 months, 2027-04-30". */
static const char *date_words(const struct rule_run *run, const struct equipment *gear,
                              const struct gear_date *date)
{
    const char *key = gear_field_word(date->field);
    const char *written = gear_date_field(gear, date->field)->text;
    if (date->stamped)
        return text_format(run->arena, "%s %s%s", key, written, counted_words(run, date));
    return text_format(run->arena, "%s %s, so to %s by %s", key, written,
                       date_text(run->arena, gear_date_shown(date)),
                       date->interval != NULL ? "the base's months" : date->rule->source);
}

static const char *day(const struct rule_run *run, struct date date)
{
    return date_text(run->arena, date);
}

static bool has_a_date(const struct equipment *gear)
{
    for (const enum gear_field *field = gear_date_fields; *field != GEAR_FIELD_NONE; field++)
        if (gear_date_field(gear, *field)->given)
            return true;
    return false;
}

#define REPLACE \
    "have it serviced or replaced, then write the date that is stamped on it now"

static void outcome_tell(const struct rule_run *run, const struct equipment *gear,
                         const struct gear_date *date, enum charter_outcome outcome)
{
    struct place place = date_place(date, gear);
    const char *name = gear_named(run, gear);
    switch (outcome) {
    case CHARTER_EXPIRED:
        rule_tell(run, CHECK_gear_expired, place, REPLACE, "%s is out of date on %s: %s", name,
                  day(run, run->in->from), date_words(run, gear, date));
        return;
    case CHARTER_EXPIRES_DURING:
        rule_tell(run, CHECK_gear_expires_during, place, REPLACE,
                  "%s runs out before the boat is back on %s: %s", name, day(run, run->in->to),
                  date_words(run, gear, date));
        return;
    case CHARTER_OK_INSIDE_MARGIN:
        rule_tell(run, CHECK_gear_inside_margin, place,
                  "plan its service: the base wants a margin (margin_days)",
                  "%s runs out within the margin after %s: %s", name, day(run, run->in->to),
                  date_words(run, gear, date));
        return;
    case CHARTER_NOT_KNOWN:
        if (date->rule->needed)
            rule_tell(run, CHECK_gear_date_unknown, place,
                      date->rule->months_fixed && date->rule->from[0] == GEAR_FIELD_NONE
                          ? "read the date stamped on it, and write expires: or service_due:"
                          : "read the date off it, and write expires:, service_due:, serviced: "
                            "or made:",
                      "%s has no %s: not known to be good (%s)", name,
                      has_a_date(gear) ? "date that tells how long it is good" : "date",
                      date->rule->why);
        return;
    case CHARTER_OK:
    case CHARTER_DATES_WRONG:
        return;
    }
}

/* ---- dates that cannot be ---- */

/* What is done to a piece, in the order in which it can happen. */
static const enum gear_field events[] = {GEAR_made, GEAR_installed, GEAR_serviced};
enum { EVENTS = sizeof events / sizeof *events };

static void order_check(const struct rule_run *run, const struct equipment *gear)
{
    for (int later = 1; later < EVENTS; later++)
        for (int earlier = 0; earlier < later; earlier++) {
            const struct date_value *first = gear_date_field(gear, events[earlier]);
            const struct date_value *then = gear_date_field(gear, events[later]);
            /* A service may come before the fitting in this boat, never before the making. */
            if (events[earlier] == GEAR_installed || !first->given || !then->given ||
                date_compare(then->date, first->date) >= 0)
                continue;
            rule_tell(run, CHECK_gear_dates_order, then->place,
                      "read both dates off it again and correct one",
                      "%s: %s %s is before %s %s", gear_named(run, gear),
                      gear_field_word(events[later]), then->text, gear_field_word(events[earlier]),
                      first->text);
        }
}

/* A date of the past that is still to come, by its first day. */
static bool is_to_come(const struct date_value *value, struct date today)
{
    struct date first = value->date;
    first.month = first.month == 0 ? 1 : first.month;
    first.day = first.day == 0 ? 1 : first.day;
    return value->given && date_compare(first, today) > 0;
}

/* Each field that says when something was done; or the clock of the computer is behind. */
static const enum gear_field done_fields[] = {GEAR_made, GEAR_installed, GEAR_serviced, GEAR_tried};

static void to_come_tell(const struct rule_run *run, const struct date_value *value,
                         const char *what)
{
    const char *today = day(run, run->in->today);
    if (!run->in->today_behind && is_to_come(value, run->in->today))
        rule_tell(run, CHECK_gear_date_to_come, value->place,
                  text_format(run->arena,
                              "write the day it was done; a date that is due belongs in "
                              "service_due:. If today\nis not %s, set the clock of the computer, "
                              "or name the day with --date", today),
                  "%s %s is after today, %s", what, value->text, today);
}

static void future_check(const struct rule_run *run, const struct equipment *gear)
{
    for (size_t i = 0; i < sizeof done_fields / sizeof *done_fields; i++)
        to_come_tell(run, gear_date_field(gear, done_fields[i]),
                     text_format(run->arena, "%s: %s", gear_named(run, gear),
                                 gear_field_word(done_fields[i])));
}

/* A year too far, a digit exchanged: such a piece would count as good for ever. */
static void stamp_check(const struct rule_run *run, const struct equipment *gear,
                        enum gear_field field)
{
    const struct date_value *value = gear_date_field(gear, field);
    const struct stamp_limit *limit = stamp_limit_of(gear->kind->item, field);
    if (!value->given || date_compare(date_first_day(value->date),
                                      date_add_months(run->in->today, limit->months)) <= 0)
        return;
    rule_tell(run, CHECK_gear_stamp_too_far, value->place,
              text_format(run->arena, "read the %s off the piece again, and correct the year",
                          field == GEAR_expires ? "date" : "day of its next service"),
              "%s: %s %s is more than %d years ahead: no %s has a stamp so far (%s)",
              gear_named(run, gear), gear_field_word(field), value->text, limit->months / 12,
              item_word(gear->kind->item), limit->source);
}

void date_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    struct charter charter = {run->in->from, run->in->to,
                              run->in->base == NULL ? 0 : charter_margin_days(run->in->base)};
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        struct gear_date date;
        gear_date(gear, run->in->base, &date);
        outcome_tell(run, gear, &date, charter_outcome(&date, &charter));
        order_check(run, gear);
        future_check(run, gear);
        stamp_check(run, gear, GEAR_expires);
        stamp_check(run, gear, GEAR_service_due);
    }
    to_come_tell(run, &boat->likeness.walk.date, "walked");
}
