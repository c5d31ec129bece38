/* renew_due.c - cards that are true today and will not be on a day to come, though nobody changes
 * the record (room: app): the set is composed for each day on which a date passes, and compared. */
#include "gear_date.h"
#include "renew.h"

#include <stdlib.h>
#include <string.h>

/* Days on which something may change, after today. */
struct days {
    struct date *at;
    size_t count, room;
    struct arena *arena;
    struct date today, until;
};

static void day_add(struct days *days, struct date day)
{
    if (date_compare(day, days->today) <= 0 || date_compare(day, days->until) > 0)
        return;
    for (size_t i = 0; i < days->count; i++)
        if (date_compare(days->at[i], day) == 0)
            return;
    days->at = arena_grow(days->arena, days->at, days->count, &days->room, sizeof *days->at);
    days->at[days->count++] = day;
}

static int days_compare(const void *a, const void *b)
{
    return date_compare(*(const struct date *)a, *(const struct date *)b);
}

/* The day after the last good one of each piece, and both ends of each approval. */
static struct days changing_days(const struct sheets *sheets, struct date until)
{
    const struct boat *boat = sheets->input.boat;
    const struct base_record *base = sheets->input.base;
    struct days days = {.arena = sheets->boat->arena, .today = sheets->input.today,
                        .until = until};
    struct gear_date date;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].kind != NULL && gear_date(&boat->equipment[i], base, &date))
            day_add(&days, date_days_later(date.last, 1));
    for (size_t i = 0; i < base->approval_count; i++) {
        const struct approval *approval = &base->approvals[i];
        if (approval->date.given)
            day_add(&days, date_first_day(approval->date.date));
        if (approval->until.given)
            day_add(&days, date_days_later(date_last_day(approval->until.date), 1));
    }
    if (days.count > 1)
        qsort(days.at, days.count, sizeof *days.at, days_compare);
    return days;
}

/* The set as it would be composed on that day; what is then wrong with it is told on that day. */
static struct sheets sheets_on(const struct sheets *sheets, struct date day)
{
    struct sheets then = *sheets;
    const struct job *job = sheets->boat->job;
    then.input.today = day;
    then.problems = problems_new(sheets->boat->arena);
    then.set = job->kinds[sheets->part.kind].compose(&then.input, sheets->boat->arena,
                                                     then.problems);
    return then;
}

static const struct sheet *sheet_of_id(const struct sheet_set *set, const char *id)
{
    for (size_t i = 0; i < set->count; i++)
        if (text_equal(set->sheets[i]->id, id))
            return set->sheets[i];
    return NULL;
}

/* Does it hang as it would be printed today? */
static bool hangs_right(const struct renewing *renewing, const struct register_row *now)
{
    for (size_t i = 0; i < renewing->own.count; i++)
        if (same_print(&renewing->own.rows[i], now) && hangs_still(&renewing->own, i))
            return true;
    return false;
}

/* True when the sheet is another on that day. */
static bool changes_on(struct renewing *renewing, const struct sheets *sheets,
                       const struct sheets *then, const struct sheet *sheet)
{
    struct arena *arena = renewing->arena;
    struct register_row now = row_of_sheet(&sheets->input, sheet, arena);
    const struct sheet *later = sheet_of_id(then->set, sheet->id);
    if (!hangs_right(renewing, &now))
        return false;
    struct register_row other = row_of_sheet(&then->input, later == NULL ? sheet : later, arena);
    if (same_print(&other, &now))
        return false;
    now.date = sheets->input.today;
    now.content = content_pack(register_content(&sheets->input, sheet, arena), arena);
    const struct register_rows alone = {.rows = &now, .count = 1};
    struct renew_finding *finding = finding_add(renewing, RENEW_CHANGES, &now);
    finding->on = date_text(arena, then->input.today);
    finding->reasons = renew_reasons(&alone, then, later == NULL ? sheet : later, &now, arena);
    return true;
}

size_t renew_due(struct renewing *renewing, const struct sheets *sheets, struct date until)
{
    struct days days = changing_days(sheets, until);
    const struct sheet_set *set = sheets->set;
    bool *told = arena_array(sheets->boat->arena, set->count, sizeof *told);
    size_t count = 0;
    for (size_t d = 0; d < days.count && renewing->hers.right > 0; d++) {
        struct sheets then = sheets_on(sheets, days.at[d]);
        for (size_t i = 0; then.set != NULL && i < set->count; i++) {
            if (told[i] || set->sheets[i]->held || !sheet_is_registered(set->sheets[i]))
                continue;
            told[i] = changes_on(renewing, sheets, &then, set->sheets[i]);
            count += told[i] ? 1 : 0;
        }
    }
    return count;
}
