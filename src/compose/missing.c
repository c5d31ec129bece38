/* missing.c - facts that cards ask for and the record lacks (room: compose).
 * Each is told once, with every card it holds and the YAML to paste. */
#include "compose.h"

#include <string.h>

static struct missing *missing_find(struct composing *composing, const char *item,
                                    const char *fact, struct place place)
{
    for (size_t i = 0; i < composing->missing_count; i++) {
        struct missing *missing = &composing->missing[i];
        if (text_equal(missing->item, item) && text_equal(missing->fact, fact) &&
            missing->place.line == place.line)
            return missing;
    }
    return NULL;
}

static struct missing *missing_add(struct composing *composing, const char *item,
                                   const char *fact, const char *value_hint, struct place place)
{
    composing->missing = arena_grow(composing->arena, composing->missing,
                                    composing->missing_count, &composing->missing_room,
                                    sizeof *composing->missing);
    struct missing *missing = &composing->missing[composing->missing_count++];
    *missing = (struct missing){.item = item, .fact = fact, .value_hint = value_hint,
                                .place = place};
    return missing;
}

void missing_note(struct composing *composing, const char *item, const char *fact,
                  const char *value_hint, struct place place)
{
    const char *title = composing->slot->title;
    struct missing *missing = missing_find(composing, item, fact, place);
    composing->held = true;
    if (missing == NULL)
        missing = missing_add(composing, item, fact, value_hint, place);
    for (size_t i = 0; i < missing->card_count; i++)
        if (text_equal(missing->cards[i], title))
            return;
    missing->cards = arena_grow(composing->arena, missing->cards, missing->card_count,
                                &missing->card_room, sizeof *missing->cards);
    missing->cards[missing->card_count++] = title;
}

static const char *cards_joined(struct composing *composing, const struct missing *missing)
{
    struct text_builder builder = text_builder_in(composing->arena);
    for (size_t i = 0; i < missing->card_count; i++)
        text_add_format(&builder, "%s%s", i == 0 ? "" : "; ", missing->cards[i]);
    return builder.at;
}

/* Proposed tags stay distinct: each further proposal of a class is one up. */
static const char *tag_proposal(struct composing *composing, enum item_class class)
{
    const char *first = boat_free_tag(composing->in->boat, class, composing->arena);
    int number = 0;
    for (const char *digit = first + 1; *digit != '\0'; digit++)
        number = number * 10 + (*digit - '0');
    size_t *given = class == ITEM_FIRE     ? &composing->proposed[0]
                    : class == ITEM_RESCUE ? &composing->proposed[1]
                                           : &composing->proposed[2];
    return text_format(composing->arena, "%c%d", (char)class, number + (int)(*given)++);
}

static const struct asked_item *asked_find(const struct composing *composing, const char *item)
{
    for (size_t i = 0; i < composing->asked.count; i++)
        if (text_equal(composing->asked.rows[i].kind->key, item))
            return &composing->asked.rows[i];
    return NULL;
}

/* The entry to fill in, with every fact that the set's cards ask of the item; the
 * fixed radio has a section of its own. */
static const char *entry_words(struct composing *composing, const struct missing *missing)
{
    const struct item_kind *kind = item_find(missing->item);
    const char *tag = tag_proposal(composing, kind->class);
    const struct asked_item *asked = asked_find(composing, missing->item);
    if (text_equal(missing->item, "vhf_dsc"))
        return text_format(composing->arena,
                           "if she has one, write in the section radio:\n"
                           "  tag: %s\n  zone: \n  side: \n  power_switch: ", tag);
    const char *entry = asked != NULL
                            ? starter_entry(asked, tag, composing->arena)
                            : text_format(composing->arena,
                                          "- {item: %s, tag: %s, zone: , side: , spot: , how: }",
                                          missing->item, tag);
    return text_format(composing->arena, "if she has one, add to equipment (record %s):\n  %s",
                       kind->record, entry);
}

static const char *whole_item_remedy(struct composing *composing, const struct missing *missing)
{
    return text_format(composing->arena, "%s\nif she has none, add to not_fitted:\n  - %s",
                       entry_words(composing, missing), missing->item);
}

static const char *fact_remedy(struct composing *composing, const struct missing *missing)
{
    const struct field *field = field_find(equipment_fields(), missing->fact);
    return text_format(composing->arena, "add to this entry (%s), for instance:\n  %s: %s",
                       field == NULL || field->about == NULL ? "as it is on the boat"
                                                             : field->about,
                       missing->fact, missing->value_hint);
}

static void tell_one(struct composing *composing, const struct missing *missing)
{
    enum severity severity = composing->in->draft ? SEVERITY_DEFICIENCY : SEVERITY_HELD;
    const char *cards = cards_joined(composing, missing);
    const char *verb = missing->card_count == 1 ? "card" : "cards";
    if (missing->fact == NULL)
        problem_add(composing->problems, severity, missing->place,
                    whole_item_remedy(composing, missing),
                    "%s is not recorded: it holds back the %s %s", missing->item, verb, cards);
    else
        problem_add(composing->problems, severity, missing->place,
                    fact_remedy(composing, missing),
                    "%s of %s is not recorded: it holds back the %s %s", missing->fact,
                    missing->item, verb, cards);
}

void missing_tell(struct composing *composing)
{
    const struct procedure_set *procedures = composing->in->procedures;
    const char *type = composing->in->boat->catamaran ? "catamaran" : "monohull";
    if (composing->missing_count > 0)
        composing->asked = asked_items(procedures->rows, procedures->count, type,
                                       composing->arena);
    for (size_t i = 0; i < composing->missing_count; i++)
        tell_one(composing, &composing->missing[i]);
}

const char *const *missing_items(const struct composing *composing, size_t *count)
{
    const char **items = arena_array(composing->arena, composing->missing_count, sizeof *items);
    *count = 0;
    for (size_t i = 0; i < composing->missing_count; i++)
        if (composing->missing[i].fact == NULL)
            items[(*count)++] = composing->missing[i].item;
    return items;
}
