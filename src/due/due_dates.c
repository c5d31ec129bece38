/* due_dates.c - the dates of records, gathered (room: due). How long gear is good is told by
 * src/figure; nothing is judged here but what is over. */
#include "due.h"
#include "gear_date.h"

#include <stdlib.h>
#include <string.h>

/* After so many months channel and number of the rescue centre are to be looked up again. */
enum { CONTACT_MONTHS = 12 };

#define OF_BASE "base"

static const char *list_copy(const struct due_list *list, const char *text)
{
    return text == NULL ? "" : arena_copy(list->arena, text, strlen(text));
}

static const char *where_words(const struct due_list *list, struct place place)
{
    return place.source == NULL || place.line == 0
               ? "" : text_format(list->arena, "%s:%d", place.source->name, place.line);
}

/* Its texts become those of the list. */
static void due_add(struct due_list *list, struct due_date date, struct place place)
{
    date.boat = list_copy(list, date.boat);
    date.tag = list_copy(list, date.tag);
    date.item = list_copy(list, date.item);
    date.field = list_copy(list, date.field);
    date.what = list_copy(list, date.what);
    date.where = where_words(list, place);
    list->rows = arena_grow(list->arena, list->rows, list->count, &list->room,
                            sizeof *list->rows);
    list->rows[list->count++] = date;
}

/* ---- gear ---- */

/* The words of a piece: "Seacock" with "engine intake" behind it. */
static const char *item_words(const struct due_list *list, const struct equipment *gear,
                              const struct words *words)
{
    const char *item = words_item(words, gear->kind->item);
    const char *name = text_for(&gear->name, words_language(words));
    return text_empty(name) ? item : text_format(list->arena, "%s, %s", item, name);
}

static void stamp_add(struct due_list *list, const struct due_date *piece,
                      const struct equipment *gear, enum gear_field field,
                      const struct base_record *base, const struct gear_rule *rule)
{
    const struct date_value *value = gear_date_field(gear, field);
    struct due_date date = *piece;
    if (!value->given)
        return;
    date.known = true;
    date.field = gear_field_word(field);
    date.what = text_format(list->arena, "%s %s", date.field, value->text);
    date.last = date_last_valid_day(value->date,
                                    base == NULL ? MONTH_MEANS_UNSAID : base->month_means.value,
                                    rule->year_means);
    due_add(list, date, value->place);
}

/* "serviced 2026-04, and 12 months" */
static void reckoned_add(struct due_list *list, const struct due_date *piece,
                         const struct equipment *gear, const struct gear_date *reckoned)
{
    struct due_date date = *piece;
    date.known = true;
    date.field = gear_field_word(reckoned->field);
    date.what = text_format(list->arena, "%s %s, and %d months", date.field,
                            gear_date_field(gear, reckoned->field)->text, reckoned->months);
    date.last = reckoned->last;
    due_add(list, date, reckoned->place);
}

static void gear_dates_add_due(struct due_list *list, const struct due_date *piece,
                               const struct equipment *gear, const struct base_record *base)
{
    struct gear_date date;
    bool known = gear_date(gear, base, &date);
    if (known && date.stamped) {
        stamp_add(list, piece, gear, GEAR_expires, base, date.rule);
        stamp_add(list, piece, gear, GEAR_service_due, base, date.rule);
    } else if (known) {
        reckoned_add(list, piece, gear, &date);
    } else if (date.rule->needed) {
        struct due_date silent = *piece;
        silent.field = gear_field_word(GEAR_expires);
        silent.what = text_format(list->arena, "no date tells how long it is good: %s",
                                  date.rule->why);
        due_add(list, silent, gear->place);
    }
}

static void tried_add(struct due_list *list, const struct due_date *piece,
                      const struct equipment *gear)
{
    struct due_date silent = *piece;
    if (gear->tried.given || item_field(gear->kind->item, GEAR_tried) < BELONGS_ASKED)
        return;
    silent.field = gear_field_word(GEAR_tried);
    silent.what = "no date tells when it was tried on this boat";
    due_add(list, silent, gear->place);
}

/* ---- a boat ---- */

static void silences_add(struct due_list *list, const struct boat *boat)
{
    for (size_t i = 0; i < boat->silence_count; i++) {
        const struct silence *silence = &boat->silences[i];
        struct due_date date = {.boat = boat->key, .known = silence->until.given,
                                .item = text_format(list->arena, "silenced check %s",
                                                    list_copy(list, silence->check.text)),
                                .field = "until", .what = "no day tells until when it is silenced"};
        if (silence->until.given) {
            date.last = date_last_day(silence->until.date);
            date.what = text_format(list->arena, "silenced until %s: %s", silence->until.text,
                                    list_copy(list, silence->reason.text));
        }
        due_add(list, date, silence->place);
    }
}

static void walk_add(struct due_list *list, const struct boat *boat)
{
    const struct likeness *likeness = &boat->likeness;
    struct due_date silent = {.boat = boat->key, .item = "walk round her", .field = "walked"};
    if (likeness->model == NULL || likeness->unwalked == NULL)
        return;
    silent.what = text_format(list->arena, "no date tells that somebody saw it on her since the "
                              "model changed: %s", likeness->unwalked);
    due_add(list, silent, likeness->walk_place);
}

void due_of_boat(struct due_list *list, const struct boat *boat, const struct base_record *base,
                 const struct words *words)
{
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->kind == NULL)
            continue;
        struct due_date piece = {.boat = boat->key, .tag = gear->tag.text,
                                 .item = item_words(list, gear, words)};
        gear_dates_add_due(list, &piece, gear, base);
        tried_add(list, &piece, gear);
    }
    silences_add(list, boat);
    walk_add(list, boat);
}

/* ---- the base ---- */

/* Does another approval of that card hold longer? */
static bool outlived(const struct base_record *base, const struct approval *approval)
{
    for (size_t i = 0; i < base->approval_count; i++) {
        const struct approval *other = &base->approvals[i];
        if (other != approval && other->until.given &&
            text_equal(other->card.text, approval->card.text) &&
            date_compare(other->until.date, approval->until.date) > 0)
            return true;
    }
    return false;
}

static void approvals_add(struct due_list *list, const struct base_record *base)
{
    for (size_t i = 0; i < base->approval_count; i++) {
        const struct approval *approval = &base->approvals[i];
        if (!approval->until.given || text_empty(approval->card.text) ||
            outlived(base, approval))
            continue;
        struct due_date date = {
            .boat = OF_BASE, .known = true, .last = date_last_day(approval->until.date),
            .item = text_format(list->arena, "approval of %s", approval->card.text),
            .field = "until",
            .what = text_format(list->arena, "approved by %s until %s",
                                list_copy(list, approval->initials.text), approval->until.text)};
        due_add(list, date, approval->until.place);
    }
}

static void centre_date_add(struct due_list *list, const struct base_record *base)
{
    const struct date_value *checked = &base->centre_checked_on;
    struct due_date date = {.boat = OF_BASE, .known = checked->given, .field = "checked_on",
                            .item = text_format(list->arena, "rescue centre %s",
                                                list_copy(list, base->centre_name.text)),
                            .what = "no date tells when its channel and number were looked up"};
    if (checked->given) {
        date.last = date_add_months(date_last_day(checked->date), CONTACT_MONTHS);
        date.what = text_format(list->arena, "channel and number checked on %s, and %d months",
                                checked->text, (int)CONTACT_MONTHS);
    }
    due_add(list, date, checked->given ? checked->place : base->centre_place);
}

/* A clock that another follows is no end. */
static void clock_dates_add(struct due_list *list, const struct base_record *base)
{
    for (size_t i = 0; i < base->clock_count; i++) {
        const struct clock *clock = &base->clocks[i];
        struct date last = date_last_day(clock->to.date);
        if (!clock->to.given || base_clock_on(base, date_days_later(last, 1)) != NULL)
            continue;
        struct due_date date = {
            .boat = OF_BASE, .known = true, .last = last, .field = "to",
            .item = "clock on board against UTC",
            .what = text_format(list->arena, "offset %s ends, and no clock follows it",
                                list_copy(list, clock->offset.text))};
        due_add(list, date, clock->to.place);
    }
}

void due_of_base(struct due_list *list, const struct base_record *base)
{
    list->base = base->name.text;
    approvals_add(list, base);
    centre_date_add(list, base);
    clock_dates_add(list, base);
}

/* ---- the list ---- */

bool due_past(const struct due_date *date, struct date today)
{
    return !date->known || date_compare(date->last, today) < 0;
}

static int due_compare(const void *a, const void *b)
{
    const struct due_date *first = a, *second = b;
    int order = (int)second->known - (int)first->known;
    if (order == 0 && first->known)
        order = date_compare(first->last, second->last);
    order = order != 0 ? order : strcmp(first->boat, second->boat);
    order = order != 0 ? order : tag_compare(first->tag, second->tag);
    order = order != 0 ? order : strcmp(first->item, second->item);
    order = order != 0 ? order : strcmp(first->field, second->field);
    return order != 0 ? order : strcmp(first->what, second->what);
}

void due_sort(struct due_list *list)
{
    if (list->count > 1)
        qsort(list->rows, list->count, sizeof *list->rows, due_compare);
}
