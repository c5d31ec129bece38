/* compose_set.c - a boat's whole set: which sheets she has, each with its name and number,
 * and each composed in turn (room: compose). Takes the procedures, the boat and the base;
 * gives the sheets, those that are not hers with the reason, and what the record lacks.
 *
 * A slot is a sheet that is planned: slots come first, since the text of one sheet names
 * others by their numbers. */
#include "card_set.h"
#include "number.h"
#include "promise.h"

const struct slot *slot_of(const struct composing *composing, const char *procedure_key)
{
    for (size_t i = 0; i < composing->slot_count; i++)
        if (text_equal(composing->slots[i].procedure->key.text, procedure_key))
            return &composing->slots[i];
    return NULL;
}

/* What parts the cards of a boat with several engine spaces. Letters are part of a card's number,
 * in every language. */
static const struct space_name {
    enum zone_key space;
    const char *key, *letter;
    enum word word;
} space_names[] = {{ZONE_engine_space, "main", "M", WORD_SPACE_MAIN},
                   {ZONE_engine_space_port, "port", "P", WORD_SPACE_PORT},
                   {ZONE_engine_space_starboard, "starboard", "S", WORD_SPACE_STARBOARD},
                   {ZONE_generator_space, "generator", "G", WORD_SPACE_GENERATOR}};

static const struct space_name *space_name_of(enum zone_key space)
{
    size_t i = 0;
    while (space_names[i].space != space)
        promise(++i < sizeof space_names / sizeof *space_names);
    return &space_names[i];
}

/* The card's title, in capitals. */
static const struct phrase *title_phrase(const struct composing *composing,
                                         const struct procedure *procedure)
{
    struct arena *arena = composing->arena;
    return phrase_upper(arena, phrase_text(arena, &procedure->title));
}

const struct phrase *slot_space_phrase(const struct composing *composing,
                                       const struct slot *slot)
{
    if (slot->space == ZONE_NONE || composing->in->boat->engine_space_count < 2)
        return NULL;
    return word_alone(composing, space_name_of(slot->space)->word);
}

/* Adds the space to the key, title and number of a card that each engine space has one of:
 * engine_fire_port, "ENGINE FIRE, PORT", 3P. */
static void slot_space_name(struct composing *composing, struct slot *slot)
{
    const struct procedure *procedure = slot->procedure;
    const struct space_name *name = space_name_of(slot->space);
    slot->key = text_format(composing->arena, "%s_%s", procedure->key.text, name->key);
    slot->title = phrase_said(composing,
                              phrase_joined(composing->arena, WORD_JOIN_COMMA,
                                            title_phrase(composing, procedure),
                                            word_alone(composing, name->word), NULL));
    slot->number = text_format(composing->arena, "%s%s", slot->number, name->letter);
}

const char *named_card(struct arena *arena, const char *number, const char *title)
{
    return text_format(arena, "%s %s", number, title);
}

/* Gives the slot its key, title, number and name. The number is the procedure's own and is
 * the same on every boat; what is known of the boat only adds to it. */
static void slot_name(struct composing *composing, struct slot *slot)
{
    const struct procedure *procedure = slot->procedure;
    slot->key = procedure->key.text;
    slot->title = phrase_said(composing, title_phrase(composing, procedure));
    slot->number = number_text_milli(composing->arena, procedure->number.milli);
    if (slot->space != ZONE_NONE && composing->in->boat->engine_space_count > 1)
        slot_space_name(composing, slot);
    slot->name = named_card(composing->arena, slot->number, slot->title);
}

struct slot *slot_add(struct composing *composing, const struct procedure *procedure,
                      enum zone_key space)
{
    composing->slots = arena_grow(composing->arena, composing->slots, composing->slot_count,
                                  &composing->slot_room, sizeof *composing->slots);
    struct slot *slot = &composing->slots[composing->slot_count++];
    *slot = (struct slot){.procedure = procedure, .space = space};
    slot_name(composing, slot);
    return slot;
}

const char *procedure_name(struct composing *composing, const struct procedure *procedure)
{
    return named_card(composing->arena,
                     number_text_milli(composing->arena, procedure->number.milli),
                     phrase_said(composing, title_phrase(composing, procedure)));
}

static void not_hers_add(struct composing *composing, const struct procedure *procedure,
                         const struct text_value *left_out)
{
    composing->not_hers = arena_grow(composing->arena, composing->not_hers,
                                     composing->not_hers_count, &composing->not_hers_room,
                                     sizeof *composing->not_hers);
    composing->not_hers[composing->not_hers_count++] = (struct sheet_not_hers){
        .name = procedure_name(composing, procedure), .procedure_key = procedure->key.text,
        .reason = left_out != NULL
                      ? left_out_reason(left_out, composing->arena)
                      : phrase_said(composing,
                                    phrase_text(composing->arena, &procedure->when_reason)),
        .left_out = left_out != NULL};
}

/* A procedure may belong to some boats only. Where that cannot be decided, the
 * card stays in the set: it is held until the record says. */
static void slots_of_procedure(struct composing *composing, const struct procedure *procedure)
{
    const struct boat *boat = composing->in->boat;
    /* whether she needs the card is judged as on a card of its own: what that misses is
     * then told under its name */
    struct slot probe = {.procedure = procedure, .key = procedure->key.text,
                         .name = procedure_name(composing, procedure)};
    slot_take(composing, &probe);
    enum truth needed = condition_judge(composing, procedure->when);
    size_t first = composing->slot_count;
    const struct text_value *left_out = card_left_out(composing->in, procedure);
    if (needed == TRUTH_NO || left_out != NULL) {
        not_hers_add(composing, procedure, needed == TRUTH_NO ? NULL : left_out);
        return;
    }
    if (procedure->per.value == PER_BOAT)
        slot_add(composing, procedure, ZONE_NONE);
    else
        for (size_t i = 0; i < boat->engine_space_count; i++)
            slot_add(composing, procedure, boat->engine_spaces[i]);
    for (size_t i = first; i < composing->slot_count; i++)
        composing->slots[i].undecided = needed == TRUTH_UNKNOWN;
}

/* A boat that has a card and another form of it tells the two apart by the letter of the form. */
static void slot_form_letter(struct composing *composing, struct slot *slot)
{
    const struct procedure *procedure = slot->procedure;
    if (slot_of(composing, TEXT_OR_EMPTY(procedure->form_of)) == NULL)
        return;
    slot->number = text_format(composing->arena, "%s%s", slot->number,
                               procedure->form_letter.text);
    slot->name = named_card(composing->arena, slot->number, slot->title);
}

void slots_make(struct composing *composing)
{
    const struct procedure_set *procedures = composing->in->procedures;
    for (size_t i = 0; i < procedures->count; i++)
        if (!card_not_asked_for(composing->in, procedures->rows[i]))
            slots_of_procedure(composing, procedures->rows[i]);
    for (size_t i = 0; i < composing->slot_count; i++)
        slot_form_letter(composing, &composing->slots[i]);
}

static bool slot_is_named(const struct composing *composing, const char *card)
{
    for (size_t i = 0; i < composing->slot_count; i++)
        if (text_equal(composing->slots[i].key, card) ||
            text_equal(composing->slots[i].procedure->key.text, card))
            return true;
    return false;
}

/* A line in her own file for a card that is none of hers. */
static void lines_without_card_tell(const struct composing *composing)
{
    const struct own_lines *lines = &composing->in->boat->own_lines;
    for (size_t i = 0; i < lines->count; i++) {
        const struct text_value *card = &lines->rows[i].card;
        if (!slot_is_named(composing, card->text))
            problem_add(composing->problems, SEVERITY_NOTE, card->place,
                        "take the line out of her file, or name a card that she has",
                        "the line for the card %s stands nowhere: this boat has no such card",
                        card->text);
    }
}

/* Those that tell what the others stand on come last. */
static const struct sheet *const *sheets_make(struct composing *composing)
{
    size_t count = composing->slot_count;
    struct sheet *sheets = arena_array(composing->arena, count, sizeof *sheets);
    const struct sheet **list = arena_array(composing->arena, count, sizeof *list);
    const struct sheet_list all = {list, count};
    for (enum sheet_turn turn = ALONE; turn <= AFTER_OTHERS; turn++)
        for (size_t i = 0; i < count; i++) {
            const struct slot *slot = &composing->slots[i];
            list[i] = &sheets[i];
            if (sheet_turn_of(slot->procedure->kind.value) == turn)
                sheet_make(composing, slot, &all, &sheets[i]);
        }
    return list;
}

const struct sheet_set *compose_set(const struct compose_input *input, struct arena *arena,
                                    struct problems *problems)
{
    struct composing composing = {.in = input, .arena = arena, .problems = problems};
    struct sheet_set *set = arena_alloc(arena, sizeof *set);
    slots_make(&composing);
    lines_without_card_tell(&composing);
    set->sheets = sheets_make(&composing);
    set->count = composing.slot_count;
    for (size_t i = 0; i < set->count; i++)
        set->held += set->sheets[i]->held ? 1 : 0;
    set->not_hers = composing.not_hers;
    set->not_hers_count = composing.not_hers_count;
    missing_tell(&composing);
    set->unrecorded = missing_items(&composing, &set->unrecorded_count);
    return set;
}
