/* charter.c - whether gear lasts through a charter (room: figure). Calendar days
 * alone, no times of day. Never asks what day it is. */
#include "gear_date.h"

#include "promise.h"

/* Days that must be left on a day for the gear to be good on it: 0, since the due
 * day itself still counts. */
enum { DAYS_LEFT_NEEDED = 0 };

static bool good_after(struct date last, struct date day, int days)
{
    return date_days_between(day, last) - days >= DAYS_LEFT_NEEDED;
}

enum charter_outcome charter_outcome(const struct gear_date *date, const struct charter *charter)
{
    if (date_compare(charter->end, charter->start) < 0)
        return CHARTER_DATES_WRONG;
    if (!date->known)
        return CHARTER_NOT_KNOWN;
    if (!good_after(date->last, charter->start, 0))
        return CHARTER_EXPIRED;
    if (!good_after(date->last, charter->end, 0))
        return CHARTER_EXPIRES_DURING;
    return good_after(date->last, charter->end, charter->margin_days) ? CHARTER_OK
                                                                      : CHARTER_OK_INSIDE_MARGIN;
}

bool charter_outcome_fails(enum charter_outcome outcome, const struct gear_rule *rule)
{
    switch (outcome) {
    case CHARTER_EXPIRED:
    case CHARTER_EXPIRES_DURING:
    case CHARTER_DATES_WRONG:
        return true;
    case CHARTER_NOT_KNOWN:
        return rule->needed;
    case CHARTER_OK:
    case CHARTER_OK_INSIDE_MARGIN:
        return false;
    }
    promise_unreached();
}

int charter_margin_days(const struct base_record *base)
{
    return base == NULL ? 0 : (int)((base->margin_days.milli + 999) / 1000);
}
