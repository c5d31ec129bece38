/* missing.c - facts that cards ask for and the record lacks (room: compose).
 * Each is told once, with every card it holds and the YAML to paste. */
#include "compose_room.h"

#include <string.h>

static struct missing *missing_find(struct composing *composing, const struct missing *wanted)
{
    for (size_t i = 0; i < composing->missing_count; i++) {
        struct missing *missing = &composing->missing[i];
        if (missing->item == wanted->item && missing->fact == wanted->fact &&
            missing->space == wanted->space && missing->helps == wanted->helps &&
            missing->place.line == wanted->place.line)
            return missing;
    }
    return NULL;
}

static struct missing *missing_add(struct composing *composing, const struct missing *wanted)
{
    composing->missing = arena_grow(composing->arena, composing->missing,
                                    composing->missing_count, &composing->missing_room,
                                    sizeof *composing->missing);
    struct missing *missing = &composing->missing[composing->missing_count++];
    *missing = *wanted;
    return missing;
}

/* The card being made is one of those that it concerns. */
static void card_note(struct composing *composing, const struct missing *wanted)
{
    const char *name = composing->slot->name;
    struct missing *missing = missing_find(composing, wanted);
    if (missing == NULL)
        missing = missing_add(composing, wanted);
    for (size_t i = 0; i < missing->card_count; i++)
        if (text_equal(missing->cards[i], name))
            return;
    missing->cards = arena_grow(composing->arena, missing->cards, missing->card_count,
                                &missing->card_room, sizeof *missing->cards);
    missing->cards[missing->card_count++] = name;
}

static void card_hold(struct composing *composing, const struct missing *wanted)
{
    composing->held = true;
    card_note(composing, wanted);
}

void missing_note(struct composing *composing, enum item_key item, enum gear_field fact,
                  struct place place)
{
    card_hold(composing, &(struct missing){.item = item, .fact = fact, .place = place});
}

void missing_note_for(struct composing *composing, enum item_key item, enum zone_key space,
                      struct place place)
{
    card_hold(composing, &(struct missing){.item = item, .space = space, .place = place});
}

void missing_help_note(struct composing *composing, enum item_key item)
{
    card_note(composing, &(struct missing){.item = item, .helps = true,
                                           .place = composing->in->boat->place});
}

static const char *cards_joined(struct composing *composing, const struct missing *missing)
{
    struct text_builder builder = text_builder_in(composing->arena);
    for (size_t i = 0; i < missing->card_count; i++)
        text_add_format(&builder, "%s%s", i == 0 ? "" : "; ", missing->cards[i]);
    return builder.at;
}

/* Proposed tags stay distinct; "" when all 99 of the class are used. */
static const char *tag_proposal(struct composing *composing, enum item_class class)
{
    size_t *given = class == ITEM_FIRE     ? &composing->proposed[0]
                    : class == ITEM_RESCUE ? &composing->proposed[1]
                                           : &composing->proposed[2];
    const char *tag = boat_free_tag_after(composing->in->boat, class, (*given)++,
                                          composing->arena);
    return tag == NULL ? "" : tag;
}

static const struct asked_item *asked_item_find(const struct composing *composing,
                                                enum item_key item)
{
    for (size_t i = 0; i < composing->asked.count; i++)
        if (composing->asked.rows[i].kind->item == item)
            return &composing->asked.rows[i];
    return NULL;
}

/* The entry to fill in, with every fact that the set's cards ask of the item; the
 * fixed radio has a section of its own. */
static const char *entry_words(struct composing *composing, const struct missing *missing)
{
    const struct item_kind *kind = item_kind_of(missing->item);
    const char *tag = tag_proposal(composing, kind->class);
    const struct asked_item *asked = asked_item_find(composing, missing->item);
    if (missing->item == ITEM_vhf_dsc)
        return text_format(composing->arena,
                           "if she has one, write in the section radio:\n"
                           "  tag: %s\n  zone: \n  side: \n  power_switch: ", tag);
    const char *entry = asked != NULL
                            ? starter_entry_for(asked, tag, missing->space, composing->arena)
                            : text_format(composing->arena,
                                          "- {item: %s, tag: %s, zone: , side: , spot: , how: }",
                                          kind->key, tag);
    return text_format(composing->arena, "if %s has one, add to equipment (record %s):\n  %s",
                       missing->space == ZONE_NONE ? "she" : zone_word(missing->space),
                       kind->record, entry);
}

static const char *whole_item_remedy(struct composing *composing, const struct missing *missing)
{
    const char *entry = entry_words(composing, missing), *space = zone_word(missing->space);
    if (missing->space != ZONE_NONE)
        return text_format(composing->arena,
                           "%s\nif one that is recorded is for this engine too, add %s to its "
                           "serves\nif it has none, add to not_fitted:\n"
                           "  - {item: %s, serves: [%s]}",
                           entry, space, item_word(missing->item), space);
    return text_format(composing->arena, "%s\nif she has none, add to not_fitted:\n  - %s",
                       entry, item_word(missing->item));
}

/* Gear that each engine has serves some engine. */
static const char *spaces_words(struct composing *composing)
{
    const struct boat *boat = composing->in->boat;
    struct text_builder words = text_builder_in(composing->arena);
    for (size_t i = 0; i < boat->engine_space_count; i++)
        text_add_format(&words, "%s[%s]", i == 0 ? "" : " or ",
                        zone_word(boat->engine_spaces[i]));
    text_add(&words, ", or both in one list");
    return words.at;
}

/* What may be written, never what is likely: a pasted guess would be a wrong card. */
static const char *value_words(struct composing *composing, enum gear_field fact)
{
    const struct field *field = gear_field_row(fact);
    struct text_builder words = text_builder_in(composing->arena);
    if (field->kind == FIELD_ANSWER)
        return "(yes or no)";
    if (fact == GEAR_serves)
        return spaces_words(composing);
    if (field->kind == FIELD_LIST || field->kind == FIELD_WORDINGS ||
        field->kind == FIELD_WORDS || field->kind == FIELD_CHOICES)
        return "[...], or [] for none";
    if (field->choices == NULL)
        return "(as it is on the boat)";
    for (size_t i = 0; field->choices[i] != NULL && i < 8; i++)
        text_add_format(&words, "%s%s", i == 0 ? "(" : " or ", field->choices[i]);
    text_add(&words, ")");
    return words.at;
}

static const char *fact_remedy(struct composing *composing, const struct missing *missing)
{
    const struct field *field = gear_field_row(missing->fact);
    return text_format(composing->arena, "look at the boat, then add to this entry (%s):\n  %s: %s",
                       field->about == NULL ? "what is true of it" : field->about, field->key,
                       value_words(composing, missing->fact));
}

/* "it holds back the card X"; a draft is printed all the same. */
static const char *effect_words(struct composing *composing, const struct missing *missing)
{
    return text_format(composing->arena, "%s the card%s %s",
                       composing->in->draft ? "it is missing on" : "it holds back",
                       missing->card_count == 1 ? "" : "s", cards_joined(composing, missing));
}

static void tell_one(struct composing *composing, const struct missing *missing)
{
    enum severity severity = composing->in->draft ? SEVERITY_DEFICIENCY : SEVERITY_HELD;
    const char *effect = effect_words(composing, missing);
    if (missing->fact == GEAR_FIELD_NONE)
        problem_add(composing->problems, severity, missing->place,
                    whole_item_remedy(composing, missing), "%s%s%s is not recorded: %s",
                    item_word(missing->item), missing->space == ZONE_NONE ? "" : " for ",
                    zone_word(missing->space), effect);
    else
        problem_add(composing->problems, severity, missing->place,
                    fact_remedy(composing, missing), "%s of %s is not recorded: %s",
                    gear_field_word(missing->fact), item_word(missing->item), effect);
}

/* Is a card held for want of the item? Then that is told, and what to write with it. */
static bool holds_elsewhere(const struct composing *composing, enum item_key item)
{
    for (size_t i = 0; i < composing->missing_count; i++)
        if (composing->missing[i].item == item && !composing->missing[i].helps)
            return true;
    return false;
}

static void helpful_tell(struct composing *composing, const struct missing *missing)
{
    problem_add(composing->problems, SEVERITY_NOTE, missing->place,
                whole_item_remedy(composing, missing), "%s is not recorded: the card%s %s go%s "
                "without it", item_word(missing->item), missing->card_count == 1 ? "" : "s",
                cards_joined(composing, missing), missing->card_count == 1 ? "es" : "");
}

/* Not looked for on the boat yet, or not since her model was changed. */
static bool is_told_with_others(const struct composing *composing, size_t index)
{
    return is_unsurveyed(composing, &composing->missing[index]) ||
           is_unwalked(composing, &composing->missing[index]);
}

/* What holds cards first: the tags that are proposed then go to what is needed most. */
void missing_tell(struct composing *composing)
{
    const struct procedure_set *procedures = composing->in->procedures;
    enum hull hull = composing->in->boat->catamaran ? HULL_CATAMARAN : HULL_MONOHULL;
    if (composing->missing_count > 0)
        composing->asked = asked_items(procedures->rows, procedures->count, hull,
                                       composing->arena);
    unsurveyed_tell(composing);
    unwalked_tell(composing);
    for (size_t i = 0; i < composing->missing_count; i++)
        if (!composing->missing[i].helps && !is_told_with_others(composing, i))
            tell_one(composing, &composing->missing[i]);
    for (size_t i = 0; i < composing->missing_count; i++)
        if (composing->missing[i].helps && !is_told_with_others(composing, i) &&
            !holds_elsewhere(composing, composing->missing[i].item))
            helpful_tell(composing, &composing->missing[i]);
}

/* For which tags are proposed: not for what nobody has looked for yet. */
const enum item_key *missing_items(const struct composing *composing, size_t *count)
{
    enum item_key *items =
        arena_array(composing->arena, composing->missing_count, sizeof *items);
    *count = 0;
    for (size_t i = 0; i < composing->missing_count; i++)
        if (composing->missing[i].fact == GEAR_FIELD_NONE &&
            !is_told_with_others(composing, i))
            items[(*count)++] = composing->missing[i].item;
    return items;
}
