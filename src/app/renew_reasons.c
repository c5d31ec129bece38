/* renew_reasons.c - why a card that hangs is another than what would be printed today (room: app):
 * what it said against what the sheet says, and dates of gear that have passed since. */
#include "gear_date.h"
#include "renew.h"

#include <string.h>

/* All that the sheet says, to look for tags. */
static bool sheet_names_tag(const char *content, const struct equipment *gear)
{
    return gear->kind != NULL && !text_empty(gear->tag.text) &&
           content_names(content, gear->tag.text);
}

/* Gear of the sheet that is past its date today, and was not on the day of the row. */
static size_t passed_add(const struct sheets *sheets, const struct register_row *hung,
                         const char *content, struct names *reasons, struct arena *arena)
{
    const struct boat *boat = sheets->input.boat;
    size_t count = 0;
    struct gear_date date;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (!sheet_names_tag(content, gear) || !gear_date(gear, sheets->input.base, &date) ||
            date_compare(date.last, sheets->input.today) >= 0 ||
            date_compare(date.last, hung->date) < 0)
            continue;
        names_add(reasons, text_format(arena, "%s %s: its date has passed, it was good until %s",
                                       words_item(sheets->input.words, gear->kind->item),
                                       gear->tag.text, date_text(arena, date.last)), arena);
        count++;
    }
    return count;
}

struct json_list renew_reasons(const struct register_rows *rows, const struct sheets *sheets,
                               const struct sheet *sheet, const struct register_row *hung,
                               struct arena *arena)
{
    const char *now = register_content(&sheets->input, sheet, arena);
    const struct footer_facts *footer = sheet_footer(sheet);
    const char *packed = content_of(rows, hung);
    const char *old = packed == NULL ? NULL : content_unpack(packed, arena);
    bool code = text_equal(footer->code, hung->code);
    struct register_changes changes = {0};
    struct names reasons = {0};
    size_t passed = text_equal(footer->dates, hung->dates)
                        ? 0 : passed_add(sheets, hung, now, &reasons, arena);
    if (!code && old != NULL)
        changes = register_changes(old, now, arena);
    for (size_t i = 0; i < changes.count; i++)
        names_add(&reasons, changes.at[i], arena);
    if (!code && changes.count == 0)
        names_add(&reasons, "what it said is not in the register: it is not what would be "
                  "printed today", arena);
    else if (code && passed == 0)
        names_add(&reasons, text_format(arena, "its foot says \"%s\", and would say \"%s\" now",
                                        hung->dates, footer->dates), arena);
    return (struct json_list){reasons.at, reasons.count};
}
