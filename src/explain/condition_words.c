/* condition_words.c - a condition in words, for people who ask why (room:
 * explain). Never decides it. */
#include "reasons.h"

/* Where a condition stands: by itself, or within another, where brackets part it. */
enum nesting { OUTERMOST, NESTED };

static void condition_words_add(struct text_builder *out, const struct condition *condition,
                                enum nesting nesting);

static void zones_add(struct text_builder *out, const struct condition *condition)
{
    for (size_t i = 0; i < condition->zone_count; i++)
        text_add_format(out, "%s%s", i == 0 ? "" : " or ", zone_word(condition->zones[i]));
}

/* Where the run of children that ask the same of several items ends. */
static size_t alike_until(const struct condition *group, size_t start)
{
    enum condition_kind kind = group->children[start]->kind;
    size_t end = start + 1;
    if (kind != CONDITION_FITTED && kind != CONDITION_NOT_FITTED)
        return end;
    while (end < group->child_count && group->children[end]->kind == kind)
        end++;
    return end;
}

/* "fire_port, engine_extinguisher fitted": what all must be is said once. All of
 * all needs no brackets. */
static void all_add(struct text_builder *out, const struct condition *group, const char *between)
{
    size_t end;
    for (size_t i = 0; i < group->child_count; i = end) {
        const struct condition *last = group->children[(end = alike_until(group, i)) - 1];
        text_add(out, i == 0 ? "" : between);
        for (size_t k = i; k + 1 < end; k++)
            text_add_format(out, "%s, ", item_word(group->children[k]->item));
        if (last->kind == CONDITION_ALL)
            all_add(out, last, between);
        else
            condition_words_add(out, last, NESTED);
    }
}

static void each_add(struct text_builder *out, const struct condition *group, const char *between)
{
    for (size_t i = 0; i < group->child_count; i++) {
        text_add(out, i == 0 ? "" : between);
        condition_words_add(out, group->children[i], NESTED);
    }
}

static void group_add(struct text_builder *out, const struct condition *group,
                      enum nesting nesting)
{
    bool bracketed = nesting == NESTED || group->kind == CONDITION_NONE;
    text_add(out, group->kind == CONDITION_NONE ? "none of " : "");
    text_add(out, bracketed ? "(" : "");
    if (group->kind == CONDITION_ALL)
        all_add(out, group, nesting == NESTED ? " and " : "; ");
    else
        each_add(out, group, group->kind == CONDITION_ANY ? " or " : ", ");
    text_add(out, bracketed ? ")" : "");
}

static void condition_words_add(struct text_builder *out, const struct condition *condition,
                                enum nesting nesting)
{
    switch (condition->kind) {
    case CONDITION_FITTED:
        text_add_format(out, "%s fitted", item_word(condition->item));
        break;
    case CONDITION_NOT_FITTED:
        text_add_format(out, "%s not fitted", item_word(condition->item));
        break;
    case CONDITION_INSIDE:
        text_add_format(out, "%s inside ", item_word(condition->item));
        zones_add(out, condition);
        break;
    case CONDITION_IS:
        text_add_format(out, "%s %s = %s", item_word(condition->item),
                        gear_field_word(condition->field),
                        condition->value);
        break;
    case CONDITION_CUTS:
        text_add_format(out, "%s cuts %s", item_word(condition->item),
                        item_word(condition->other));
        break;
    case CONDITION_REACH:
        text_add_format(out, "%s reached from %s", item_word(condition->item),
                        reach_words[condition->reach - 1]);
        break;
    case CONDITION_BEYOND:
        text_add_format(out, "a %s not reached from %s", item_word(condition->item),
                        reach_words[condition->reach - 1]);
        break;
    case CONDITION_BOAT:
        text_add(out, trait_sentence(condition->trait));
        break;
    case CONDITION_BREATHS:
        text_add_format(out, "her base begins with %s breaths",
                        choice_word(breaths_words, condition->breaths));
        break;
    case CONDITION_STING:
        text_add_format(out, "her base pours %s on a sting",
                        choice_word(sting_words, condition->sting));
        break;
    case CONDITION_TIDE:
        text_add_format(out, "the tide of her base is %s",
                        choice_word(tide_words, condition->tide));
        break;
    case CONDITION_SURELY:
        text_add(out, "recorded so: ");
        each_add(out, condition, " and ");
        break;
    case CONDITION_ALL:
    case CONDITION_ANY:
    case CONDITION_NONE:
        group_add(out, condition, nesting);
        break;
    }
}

const char *condition_words(const struct condition *condition, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    condition_words_add(&out, condition, OUTERMOST);
    return out.at;
}
