/* gear_date.c - the day until which a piece of gear is good, stamped or computed,
 * by the table in gear_rules.c (room: figure). Never asks what day it is and never
 * tells anybody. */
#include "gear_date.h"

#include "promise.h"
#include "text.h"

const enum gear_field gear_date_fields[] = {GEAR_expires,   GEAR_service_due, GEAR_serviced,
                                            GEAR_installed, GEAR_made,        GEAR_FIELD_NONE};

const struct date_value *gear_date_field(const struct equipment *gear, enum gear_field field)
{
    const struct field *row = gear_field_row(field);
    if (row == NULL || row->kind != FIELD_DATE)
        return NULL;
    return (const void *)((const char *)gear + row->offset);
}

/* One finding: what is read, and how. */
struct finding {
    const struct equipment *gear;
    const struct gear_rule *rule;
    enum month_means month_means;
    const struct interval *interval;   /* of the base, or NULL */
};

/* The date of one field, `months` later; not known when it is not recorded. */
static struct gear_date field_date(const struct finding *finding, enum gear_field field, int months)
{
    const struct date_value *value = gear_date_field(finding->gear, field);
    struct gear_date date = {.rule = finding->rule};
    if (value == NULL || !value->given)
        return date;
    struct date mark = value->date;
    if (months > 0 && finding->rule->whole_years)
        mark.month = mark.day = 0;
    date.known = true;
    date.mark = date_add_months(mark, months);
    date.last = date_last_valid_day(date.mark, finding->month_means, finding->rule->year_means);
    date.field = field;
    date.place = value->place;
    date.months = months;
    return date;
}

/* *first becomes `other` when that is known and runs out before it. */
static void keep_first(struct gear_date *first, const struct gear_date *other)
{
    if (other->known && (!first->known || date_compare(other->last, first->last) < 0))
        *first = *other;
}

static struct gear_date stamped_date(const struct finding *finding)
{
    struct gear_date first = field_date(finding, GEAR_expires, 0);
    struct gear_date due = field_date(finding, GEAR_service_due, 0);
    keep_first(&first, &due);
    first.stamped = first.known;
    return first;
}

static int interval_months(const struct interval *interval)
{
    return (int)(interval->months.milli / 1000);
}

/* The base's months for this kind, the shortest where it gave several. */
static const struct interval *interval_of(const struct base_record *base,
                                          const struct equipment *gear)
{
    const struct interval *shortest = NULL;
    for (size_t i = 0; base != NULL && i < base->interval_count; i++) {
        const struct interval *interval = &base->intervals[i];
        if (interval->item.value == gear->kind->item && interval_months(interval) > 0 &&
            (shortest == NULL || interval_months(interval) < interval_months(shortest)))
            shortest = interval;
    }
    return shortest;
}

/* From the first recorded date the rule counts from. */
static struct gear_date counted_date(const struct finding *finding)
{
    const struct gear_rule *rule = finding->rule;
    int months = finding->interval != NULL ? interval_months(finding->interval) : rule->months;
    struct gear_date none = {.rule = rule};
    for (size_t i = 0; months > 0 && i < GEAR_FIELDS_FROM; i++) {
        struct gear_date date = field_date(finding, rule->from[i], months);
        date.interval = finding->interval;
        if (date.known)
            return date;
    }
    return none;
}

/* Its age ends it even where the last service or fitting was late. The age alone
 * makes no date: fitted early, it would run out before. */
static struct gear_date computed_date(const struct finding *finding)
{
    const struct gear_rule *rule = finding->rule;
    struct gear_date first = counted_date(finding);
    if (!first.known || rule->life_months == 0)
        return first;
    struct gear_date age = field_date(finding, GEAR_made, rule->life_months);
    keep_first(&first, &age);
    return first;
}

bool gear_date(const struct equipment *gear, const struct base_record *base,
               struct gear_date *out)
{
    const struct gear_rule *rule = gear_rule_of(gear);
    struct finding finding = {
        .gear = gear, .rule = rule,
        .month_means = base == NULL ? MONTH_MEANS_UNSAID : base->month_means.value};
    if (!rule->months_fixed)
        finding.interval = interval_of(base, gear);
    *out = stamped_date(&finding);
    if (!out->known)
        *out = computed_date(&finding);
    return out->known;
}

void gear_dates_add(struct gear_dates *dates, const struct equipment *gear,
                    const struct base_record *base)
{
    struct gear_date date;
    if (!gear_date(gear, base, &date)) {
        dates->undated += date.rule->needed ? 1 : 0;
        return;
    }
    if (dates->first.known && date_compare(date.last, dates->first.last) >= 0)
        return;
    dates->first = date;
    dates->piece = gear;
}

struct date gear_date_shown(const struct gear_date *date)
{
    bool whole_month = date->mark.month != 0 && date_compare(date->mark, date->last) == 0;
    return whole_month ? date->mark : date->last;
}
