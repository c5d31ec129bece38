/* field_slips.c - the ways in which a hand writes a field of a file wrongly. */
#include "field_slips.h"

#include <string.h>

#include "text.h"

const struct yaml_pair *spot_pair(const struct spot *spot)
{
    return &spot->mapping->pairs[spot->index];
}

/* ---- slips ---- */

static bool value_put(const struct spot *spot, const char *put, struct attempt *attempt)
{
    const struct byte_range *range = &spot_pair(spot)->value->range;
    *attempt = (struct attempt){range->start, range->end, range->start, put, NULL};
    return true;
}

static bool doubled(const struct spot *spot, struct attempt *attempt)
{
    const struct yaml_pair *pair = spot_pair(spot);
    size_t from = pair->key_range.start, to = pair->value->range.end;
    const char *line = text_format(spot->arena, "\n%*s", pair->key_place.column - 1, "");
    const char *gap = spot->mapping->flow ? ", " : line;
    const char *all = arena_copy(spot->arena, spot->source->bytes + from, to - from);
    *attempt = (struct attempt){from, to, to + strlen(gap),
                                text_format(spot->arena, "%s%s%s", all, gap, all), NULL};
    return true;
}

/* The last letter struck twice. */
static bool key_misspelt(const struct spot *spot, struct attempt *attempt)
{
    const struct yaml_pair *pair = spot_pair(spot);
    size_t length = strlen(pair->key);
    *attempt = (struct attempt){pair->key_range.start, pair->key_range.end,
                                pair->key_range.start,
                                text_format(spot->arena, "%s%c", pair->key, pair->key[length - 1]),
                                pair->key};
    return true;
}

static bool placeholder_put(const struct spot *spot, struct attempt *attempt)
{
    return value_put(spot, "tbd", attempt);
}

static bool null_put(const struct spot *spot, struct attempt *attempt)
{
    return value_put(spot, "~", attempt);
}

static bool mapping_put(const struct spot *spot, struct attempt *attempt)
{
    return spot->field->kind != FIELD_SECTION && spot->field->kind != FIELD_ENTRIES &&
           spot->field->kind != FIELD_WORDING && spot->field->kind != FIELD_BY_CHOICE &&
           value_put(spot, "{one: two}", attempt);
}

static bool is_list(const struct field *field)
{
    return field->kind == FIELD_LIST || field->kind == FIELD_WORDINGS ||
           field->kind == FIELD_WORDS || field->kind == FIELD_CHOICES ||
           field->kind == FIELD_PAIR || field->kind == FIELD_ENTRIES;
}

static bool list_put(const struct spot *spot, struct attempt *attempt)
{
    return !is_list(spot->field) && value_put(spot, "[one, two]", attempt);
}

static bool word_put(const struct spot *spot, struct attempt *attempt)
{
    const struct field *field = spot->field;
    return (field->kind == FIELD_ENTRIES || field->kind == FIELD_PAIR ||
            field->kind == FIELD_LIST || field->kind == FIELD_WORDINGS ||
            (field->kind == FIELD_SECTION && field->part->lone == NULL)) &&
           value_put(spot, "word", attempt);
}

/* The last letter of a choice struck twice. */
static bool choice_misspelt(const struct spot *spot, struct attempt *attempt)
{
    const char *text = spot_pair(spot)->value->text;
    if (spot->field->kind != FIELD_CHOICE)
        return false;
    value_put(spot, text_format(spot->arena, "%s%c", text, text[strlen(text) - 1]), attempt);
    attempt->named = text;
    return true;
}

/* What none of the kind can be: a number with its unit, ... */
static bool other_put(const struct spot *spot, struct attempt *attempt)
{
    switch ((int)spot->field->kind) {
    case FIELD_NUMBER:
        return value_put(spot, "4 m", attempt);
    case FIELD_ANSWER:
        return value_put(spot, "maybe", attempt);
    case FIELD_DATE:
        return value_put(spot, "2027-13", attempt);
    case FIELD_PAIR:
        return value_put(spot, "[1]", attempt);
    default:
        return false;
    }
}

static bool too_much_put(const struct spot *spot, struct attempt *attempt)
{
    return spot->field->kind == FIELD_NUMBER && spot->field->high > 0 &&
           value_put(spot, "99999999", attempt);
}

const struct field_slip field_slips[] = {
    {"doubled", doubled}, {"misspelt", key_misspelt}, {"tbd", placeholder_put},
    {"~", null_put}, {"a mapping", mapping_put}, {"a list", list_put}, {"a word", word_put},
    {"a choice misspelt", choice_misspelt}, {"of another kind", other_put},
    {"too much", too_much_put},
};
const size_t field_slip_count = sizeof field_slips / sizeof *field_slips;

/* ---- what is left out ---- */

struct attempt spot_emptied(const struct spot *spot)
{
    struct attempt attempt;
    value_put(spot, "", &attempt);
    attempt.at = spot_pair(spot)->key_range.start;
    return attempt;
}

struct attempt spot_taken_out(const struct spot *spot)
{
    const struct yaml_pair *pairs = spot->mapping->pairs, *pair = spot_pair(spot);
    bool is_first = spot->index == 0, is_last = spot->index + 1 == spot->mapping->count;
    if (!is_first)
        return (struct attempt){.from = pairs[spot->index - 1].value->range.end,
                                .to = pair->value->range.end, .put = ""};
    return (struct attempt){.from = pair->key_range.start,
                            .to = is_last ? pair->value->range.end
                                          : pairs[spot->index + 1].key_range.start,
                            .put = ""};
}

const struct source *spot_changed(const struct spot *spot, const struct attempt *attempt)
{
    const struct source *source = spot->source;
    const char *bytes = text_format(spot->arena, "%.*s%s%s", (int)attempt->from, source->bytes,
                                    attempt->put, source->bytes + attempt->to);
    return source_from(spot->arena, source->name, bytes, strlen(bytes));
}
