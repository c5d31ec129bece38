/* base_rules.c - what only the base can put right (room: rules): the rescue centre's
 * channel and number, the sea area. Told once a run, of no boat, so no boat can
 * silence it. */
#include "rules_room.h"

#include "gear_date.h"
#include "text.h"

/* A year after the last day the mark covers. */
static bool older_than_a_year(struct date checked, struct date today)
{
    checked = date_last_day(checked);
    checked.year++;
    return date_compare(checked, today) < 0;
}

static const char *centre_words(const struct base_record *base)
{
    return base->centre_name.text == NULL ? "the rescue centre" : base->centre_name.text;
}

static void centre_date_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    static const char remedy[] =
        "look its channel and number up with the coastguard or in the list of radio signals,\n"
        "correct them, then write the day as checked_on in the section rescue_centre:";
    if (!base->centre_checked_on.given)
        rule_tell(run, CHECK_centre_unchecked, place_else(base->centre_channel.place,
                                                          base->centre_place), remedy,
                  "when channel and number of %s were last checked is not recorded",
                  centre_words(base));
    else if (older_than_a_year(base->centre_checked_on.date, run->in->today))
        rule_tell(run, CHECK_centre_check_old, base->centre_checked_on.place, remedy,
                  "channel and number of %s were last checked on %s, more than 12 months ago",
                  centre_words(base), base->centre_checked_on.text);
}

static void centre_contact_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    bool call = !text_empty(base->centre_call.text), phone = !text_empty(base->centre_phone.text);
    if (call && phone)
        return;
    rule_tell(run, CHECK_centre_contact_unrecorded, place_else(base->centre_name.place,
                                                               base->centre_place),
              "ask the coastguard, then write call and phone in the section rescue_centre:",
              "%s%s%s of %s %s not recorded", call ? "" : "call", call || phone ? "" : " and ",
              phone ? "" : "phone", centre_words(base), call || phone ? "is" : "are");
}

/* The crew rings at night, in a harbour whose name they may never have read. */
static void berth_name_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    bool marina = base->marina.text != NULL, berth = base->berth.text != NULL;
    if (!marina || !berth)
        rule_tell(run, CHECK_berth_unnamed, base->ashore_place,
                  "ask the harbour office what the fire brigade knows, then write marina and berth "
                  "in\nthe section ashore:",
                  "%s%s%s of the base's own berths %s not recorded: cards cannot tell what to say",
                  marina ? "" : "marina", marina || berth ? "" : " and ", berth ? "" : "berth",
                  marina || berth ? "is" : "are");
}

static void sea_area_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    if (base->sea_area.value == SEA_AREA_NONE)
        rule_tell(run, CHECK_sea_area_unrecorded,
                  place_else(base->sea_area.place, base->area_place),
                  "look it up in the list of radio signals, then write sea_area: A1, A2, A3 or "
                  "A4 in\nthe section cruising_area:",
                  "the radio sea area is not recorded: the cards take it for one where VHF may not "
                  "be heard");
}

/* Once the clocks have changed, a card that knows the last season's alone tells nobody UTC. */
static void clocks_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    struct date days[] = {run->in->today, run->in->to};
    if (base->clock_count == 0)
        rule_tell(run, CHECK_clock_unrecorded, base->area_place,
                  "write how far the clock on board is ahead of UTC, with the days between which\n"
                  "it is, such as clocks: [{offset: +2, from: 2027-03-28, to: 2027-10-30}]",
                  "the clock on board against UTC is not recorded: calls give LOCAL TIME");
    for (size_t i = 0; base->clock_count > 0 && i < sizeof days / sizeof *days; i++) {
        if (base_clock_on(base, days[i]) != NULL)
            continue;
        rule_tell(run, CHECK_clock_lapsed, base->clocks[base->clock_count - 1].place,
                  "add the clock of that part of the season: offset, from and to; then print "
                  "the\ndistress call anew",
                  "no clock of the base holds on %s: the card tells UTC for other days alone",
                  date_text(run->arena, days[i]));
        return;
    }
}

static const struct gear_rule *rule_of_item(enum item_key item)
{
    for (size_t i = 0; gear_rule_at(i) != NULL; i++)
        if (gear_rule_at(i)->item == item && !gear_rule_at(i)->disposable)
            return gear_rule_at(i);
    return NULL;
}

/* Months of the base that nothing is computed from. */
static void intervals_use_check(const struct rule_run *run)
{
    const struct base_record *base = run->in->base;
    for (size_t i = 0; i < base->interval_count; i++) {
        const struct item_value *item = &base->intervals[i].item;
        const struct gear_rule *rule =
            item->value == ITEM_NONE ? NULL : rule_of_item(item->value);
        if (rule != NULL && rule->months_fixed)
            rule_tell(run, CHECK_interval_unused, item->place, "take this entry out",
                      "the months for %s are not used: what counts is %s",
                      item_word(item->value),
                      rule->source);
        for (size_t k = 0; k < i; k++)
            if (base->intervals[k].item.value == item->value)
                rule_tell(run, CHECK_interval_twice, item->place, "keep one of the two",
                          "%s has an interval already", item_word(item->value));
    }
}

void base_rules(const struct rule_run *run)
{
    centre_date_check(run);
    centre_contact_check(run);
    berth_name_check(run);
    sea_area_check(run);
    clocks_check(run);
    intervals_use_check(run);
}
