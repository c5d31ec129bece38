/* base_rules.c - what the base's own record lacks or has let lapse (room: rules). Told
 * once a run, of no boat. */
#include "rules_room.h"

#include "gear_date.h"
#include "text.h"

enum { CENTRE_MONTHS = 12 };

static void centre_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    const struct date_value *checked = &base->centre_checked_on;
    if (!checked->given)
        rule_tell(run, CHECK_centre_unchecked, base->centre_name.place,
                  "ring the centre or read its own pages, then write checked_on:",
                  "when the rescue centre's channel and number were checked is not recorded");
    else if (date_compare(date_add_months(checked->date, CENTRE_MONTHS), run->in->today) < 0)
        rule_tell(run, CHECK_centre_unchecked, checked->place,
                  "check channel and number again, then write the new date",
                  "the rescue centre's channel and number were last checked on %s, over %d "
                  "months ago", checked->text, CENTRE_MONTHS);
}

static void approvals_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    for (size_t i = 0; i < base->approval_count; i++) {
        const struct approval *approval = &base->approvals[i];
        if (!approval->until.given || approval->card.text == NULL)
            continue;
        if (date_compare(approval->until.date, run->in->today) < 0)
            rule_tell(run, CHECK_approval_lapsed, approval->until.place,
                      "let a qualified person look at the card again",
                      "the approval of %s lapsed on %s: the card says it is not approved",
                      approval->card.text, approval->until.text);
        else if (date_compare(approval->until.date, run->in->to) < 0)
            rule_tell(run, CHECK_approval_lapses_during, approval->until.place,
                      "let a qualified person look at the card again before then",
                      "the approval of %s lapses on %s, before the charter ends",
                      approval->card.text, approval->until.text);
    }
}

static const struct gear_rule *rule_of_item(const char *item)
{
    for (size_t i = 0; gear_rule_at(i) != NULL; i++)
        if (text_equal(gear_rule_at(i)->item, item) && !gear_rule_at(i)->disposable)
            return gear_rule_at(i);
    return NULL;
}

/* Months of the base that nothing is computed from. */
static void intervals_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    for (size_t i = 0; i < base->interval_count; i++) {
        const struct text_value *item = &base->intervals[i].item;
        const struct gear_rule *rule = item->text == NULL ? NULL : rule_of_item(item->text);
        if (rule != NULL && (rule->stamp_only || rule->months_fixed))
            rule_tell(run, CHECK_interval_unused, item->place, "take this entry out",
                      "the months for %s are not used: what counts is %s", item->text,
                      rule->source);
        for (size_t k = 0; k < i; k++)
            if (text_equal(base->intervals[k].item.text, item->text))
                rule_tell(run, CHECK_interval_twice, item->place, "keep one of the two",
                          "%s has an interval already", item->text);
    }
}

void base_rules(const struct rule_run *run)
{
    centre_check(run);
    approvals_check(run);
    intervals_check(run);
}
