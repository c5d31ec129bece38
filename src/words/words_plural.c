/* words_plural.c - which form a number of things takes in a language, by rules of its file
 * (room: words). A rule looks at the number or at its last digits: that is all that the
 * languages of the world ask of whole numbers. Never knows a language. */
#include "words_room.h"

#include <string.h>

#include "number.h"
#include "text.h"

/* No number of things on a boat has more digits. */
#define RANGE_DIGITS_MOST 6

/* How many digits the text begins with; *value is the number they write. */
static size_t range_digits_read(const char *text, uint64_t *value)
{
    size_t count = 0;
    for (*value = 0; text[count] >= '0' && text[count] <= '9' &&
         count <= RANGE_DIGITS_MOST; count++)
        *value = *value * 10 + (uint64_t)(text[count] - '0');
    return count;
}

/* "4", "2-4", "12-14". False where it is none of them; the digits that a number is looked at
 * in are those of the first of two. */
static bool range_parse(const char *text, struct number_range *range, size_t *last_digits)
{
    range->digits = *last_digits = range_digits_read(text, &range->low);
    range->high = range->low;
    text += range->digits;
    if (range->digits > 0 && *text == '-') {
        *last_digits = range_digits_read(text + 1, &range->high);
        text += 1 + *last_digits;
    }
    return *text == '\0' && range->digits > 0 && *last_digits > 0 &&
           *last_digits <= RANGE_DIGITS_MOST && range->low <= range->high;
}

/* What a list of numbers says: the numbers themselves, or what numbers end in. */
enum number_use { NUMBERS_WHOLE, NUMBERS_ENDS };

static struct number_ranges ranges_read(const struct list_value *list, enum number_use use,
                                        struct arena *arena, struct problems *problems)
{
    struct number_range *at = arena_array(arena, list->count, sizeof *at);
    for (size_t i = 0; i < list->count; i++) {
        size_t last_digits;
        bool sound = range_parse(list->items[i].text, &at[i], &last_digits) &&
                     (use == NUMBERS_WHOLE || last_digits == at[i].digits);
        if (use == NUMBERS_WHOLE)
            at[i].digits = 0;
        if (!sound)
            problem_add(problems, SEVERITY_ERROR, list->items[i].place,
                        "write a number, or two with a hyphen: 1, 2-4; ends of numbers with as "
                        "many digits: 12-14, 03-10",
                        "%s is no number and no range of numbers",
                        text_shown(arena, list->items[i].text));
    }
    return (struct number_ranges){at, list->count};
}

static struct plural_rule rule_understood(const struct plural_entry *entry, struct arena *arena,
                                          struct problems *problems)
{
    const struct plural_rule rule = {
        .given = true,
        .is = ranges_read(&entry->lists.is, NUMBERS_WHOLE, arena, problems),
        .ends = ranges_read(&entry->lists.ends, NUMBERS_ENDS, arena, problems),
        .not_ = ranges_read(&entry->lists.not_, NUMBERS_ENDS, arena, problems)};
    if (rule.is.count == 0 && rule.ends.count == 0)
        problem_add(problems, SEVERITY_ERROR, entry->section.place,
                    "write the numbers it is for: {is: 1} or {ends: 1, not: 11}",
                    "the rule of a form names no numbers");
    return rule;
}

void plural_rules_settle(const struct plural_entry entries[PLURAL_COUNT],
                         struct plural_rule rules[PLURAL_COUNT], struct arena *arena,
                         struct problems *problems)
{
    for (size_t i = 0; i < PLURAL_OTHER; i++)
        if (entries[i].section.given)
            rules[i] = rule_understood(&entries[i], arena, problems);
    rules[PLURAL_OTHER].given = true;
}

/* Is the number, or are its last digits, in one of the ranges? */
static bool ranges_hold(const struct number_ranges *ranges, uint64_t count)
{
    for (size_t i = 0; i < ranges->count; i++) {
        const struct number_range *range = &ranges->at[i];
        uint64_t seen = range->digits == 0
                            ? count : count % (uint64_t)power_of_ten((int)range->digits);
        if (seen >= range->low && seen <= range->high)
            return true;
    }
    return false;
}

enum plural plural_of(const struct plural_rule rules[PLURAL_COUNT], uint64_t count)
{
    for (enum plural form = PLURAL_ZERO; form < PLURAL_OTHER; form++)
        if (rules[form].given && !ranges_hold(&rules[form].not_, count) &&
            (ranges_hold(&rules[form].is, count) || ranges_hold(&rules[form].ends, count)))
            return form;
    return PLURAL_OTHER;
}

bool plural_is_single(const struct plural_rule *rule)
{
    return rule->given && rule->ends.count == 0 && rule->is.count == 1 &&
           rule->is.at[0].low == rule->is.at[0].high;
}
