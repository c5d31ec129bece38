/* schema_range.c - a range of numbers as a pattern of texts (room: app): for a number in quotes,
 * which a schema sees as a text. Numbers are written as number_parse_milli reads them. */
#include "schema.h"

#include "promise.h"

enum { RANGE_DIGITS = 9, RANGE_PLACES = 3 };

/* Are these digits all the same? */
static bool is_all_one(const char *digits, size_t count, char digit)
{
    while (count > 0 && digits[count - 1] == digit)
        count--;
    return count == 0;
}

static const char nines[RANGE_DIGITS + 1] = "999999999", zeros[RANGE_DIGITS + 1] = "000000000";

/* Digits from the first to the last, each with any others behind it. */
static void any_behind_add(struct text_builder *out, int first, int last, size_t behind)
{
    if (first == last)
        text_add_format(out, "%c", first);
    else
        text_add_format(out, "[%c-%c]", first, last);
    if (behind > 0)
        text_add_format(out, behind == 1 ? "[0-9]" : "[0-9]{%zu}", behind);
}

/* Texts of `count` digits from the one to the other. Behind a first digit in between stand any
 * others; behind the least and the greatest what is left of `low` and of `high`. */
static void same_length_add(struct text_builder *out, const char *low, const char *high,
                            size_t count)
{
    if (count == 0)
        return;
    size_t behind = count - 1;
    bool low_apart = !is_all_one(low + 1, behind, '0') && low[0] != high[0];
    bool high_apart = !is_all_one(high + 1, behind, '9') && low[0] != high[0];
    int first = low[0] + (low_apart ? 1 : 0), last = high[0] - (high_apart ? 1 : 0);
    bool any = is_all_one(low + 1, behind, '0') && is_all_one(high + 1, behind, '9');
    if (low[0] == high[0] && !any) {
        text_add_bytes(out, low, 1);
        same_length_add(out, low + 1, high + 1, behind);
        return;
    }
    text_add(out, low_apart || high_apart ? "(" : "");
    if (low_apart) {
        text_add_bytes(out, low, 1);
        same_length_add(out, low + 1, nines, behind);
        text_add(out, first <= last ? "|" : "");
    }
    if (first <= last)
        any_behind_add(out, first, last, behind);
    if (high_apart) {
        text_add_format(out, "|%c", high[0]);
        same_length_add(out, zeros, high + 1, behind);
    }
    text_add(out, low_apart || high_apart ? ")" : "");
}

static int64_t digits_highest(size_t count)
{
    int64_t highest = 0;
    for (; count > 0; count--)
        highest = highest * 10 + 9;
    return highest;
}

/* Whole numbers from the one to the other, neither below 0: by length, without zeros in front. */
static void whole_add(struct text_builder *out, int64_t low, int64_t high)
{
    bool first = true;
    for (size_t count = 1; count <= RANGE_DIGITS; count++) {
        int64_t least = count == 1 ? 0 : digits_highest(count - 1) + 1;
        int64_t from = low > least ? low : least;
        int64_t to = high < digits_highest(count) ? high : digits_highest(count);
        if (from > to)
            continue;
        text_add(out, first ? "" : "|");
        same_length_add(out, text_format(out->arena, "%lld", (long long)from),
                        text_format(out->arena, "%lld", (long long)to), count);
        first = false;
    }
}

/* Behind one whole number: its places, from so many thousandths to so many. */
static void places_add(struct text_builder *out, int low, int high)
{
    bool first = true;
    text_add(out, low == 0 ? "(\\.(" : "\\.(");
    for (int count = 1, step = 100; count <= RANGE_PLACES; count++, step /= 10) {
        int from = (low + step - 1) / step, to = high / step;
        if (from > to)
            continue;
        text_add(out, first ? "" : "|");
        same_length_add(out, text_format(out->arena, "%0*d", count, from),
                        text_format(out->arena, "%0*d", count, to), (size_t)count);
        first = false;
    }
    text_add(out, low == 0 ? "))?" : ")");
}

enum { THOUSAND = 1000 };

/* Neither below 0. The whole numbers in between have any places. */
static void decimal_add(struct text_builder *out, int64_t low, int64_t high)
{
    int64_t first = low / THOUSAND, last = high / THOUSAND;
    int from = (int)(low % THOUSAND), to = (int)(high % THOUSAND);
    if (first == last) {
        text_add_format(out, "%lld", (long long)first);
        places_add(out, from, to);
        return;
    }
    if (from > 0) {
        text_add_format(out, "%lld", (long long)first++);
        places_add(out, from, THOUSAND - 1);
        text_add(out, "|");
    }
    if (first < last) {
        text_add(out, "(");
        whole_add(out, first, last - 1);
        text_add(out, ")(\\.[0-9]{1,3})?|");
    }
    text_add_format(out, "%lld", (long long)last);
    places_add(out, 0, to);
}

const char *schema_range(const struct field *field, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    if (field->low == 0 && field->high == 0)
        return field->whole ? "^-?(0|[1-9][0-9]{0,8})(\\.0{1,3})?$"
                            : "^-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,3})?$";
    promise(field->low >= 0);
    text_add(&out, "^(");
    if (field->whole)
        whole_add(&out, (field->low + THOUSAND - 1) / THOUSAND, field->high / THOUSAND);
    else
        decimal_add(&out, field->low, field->high);
    text_add(&out, field->whole ? ")(\\.0{1,3})?$" : ")$");
    return out.at;
}
