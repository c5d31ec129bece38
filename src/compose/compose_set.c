/* compose_set.c - which cards a boat has, numbered, and each composed in turn
 * (room: compose). */
#include "compose.h"
#include "number.h"
#include "promise.h"

const struct slot *slot_of(const struct composing *composing, const char *procedure_key)
{
    for (size_t i = 0; i < composing->slot_count; i++)
        if (text_equal(composing->slots[i].procedure->key.text, procedure_key))
            return &composing->slots[i];
    return NULL;
}

static const char *space_word(const struct composing *composing, enum zone_key space)
{
    enum word word = zone_of(space)->side == SIDE_PORT ? WORD_SPACE_PORT : WORD_SPACE_STARBOARD;
    return words_get(composing->in->words, word);
}

/* P and S are part of a card's number, in every language. */
static const char *side_letter(enum side side)
{
    if (side == SIDE_PORT)
        return "P";
    return side == SIDE_STARBOARD ? "S" : "";
}

/* engine_fire on a boat with two engine spaces: engine_fire_port. */
static void slot_space_name(struct composing *composing, struct slot *slot)
{
    const struct procedure *procedure = slot->procedure;
    slot->key = text_format(composing->arena, "%s_%s", procedure->key.text,
                            side_word(zone_of(slot->space)->side));
    slot->title = text_format(composing->arena, "%s, %s", slot->title,
                              space_word(composing, slot->space));
    slot->number = text_format(composing->arena, "%s%s", slot->number,
                               side_letter(zone_of(slot->space)->side));
}

const char *named_card(struct arena *arena, const char *number, const char *title)
{
    return text_format(arena, "%s %s", number, title);
}

static void slot_name(struct composing *composing, struct slot *slot)
{
    const struct procedure *procedure = slot->procedure;
    slot->key = procedure->key.text;
    slot->title = text_upper(composing->arena, procedure->title.text);
    slot->subject = procedure->subject.text;
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
    *slot = (struct slot){.procedure = procedure, .space = space, .page = ""};
    slot_name(composing, slot);
    return slot;
}

static const char *procedure_name(struct composing *composing,
                                  const struct procedure *procedure)
{
    return named_card(composing->arena,
                     number_text_milli(composing->arena, procedure->number.milli),
                     text_upper(composing->arena, procedure->title.text));
}

static void not_hers_add(struct composing *composing, const struct procedure *procedure)
{
    composing->not_hers = arena_grow(composing->arena, composing->not_hers,
                                     composing->not_hers_count, &composing->not_hers_room,
                                     sizeof *composing->not_hers);
    composing->not_hers[composing->not_hers_count++] = (struct card_not_hers){
        procedure_name(composing, procedure), TEXT_OR_EMPTY(procedure->when_reason)};
}

/* A procedure may belong to some boats only. Where that cannot be decided, the
 * card stays in the set: it is held until the record says. */
static void slots_of_procedure(struct composing *composing, const struct procedure *procedure)
{
    const struct boat *boat = composing->in->boat;
    struct slot probe = {.procedure = procedure, .key = procedure->key.text,
                         .name = procedure_name(composing, procedure)};
    composing->slot = &probe;
    enum truth needed = condition_judge(composing, procedure->when);
    size_t first = composing->slot_count;
    if (needed == TRUTH_NO) {
        not_hers_add(composing, procedure);
        return;
    }
    if (is_safety_plan(procedure))
        safety_slots_add(composing, procedure);
    else if (procedure->per.value == PER_BOAT)
        slot_add(composing, procedure, ZONE_NONE);
    else
        for (size_t i = 0; i < boat->engine_space_count; i++)
            slot_add(composing, procedure, boat->engine_spaces[i]);
    for (size_t i = first; i < composing->slot_count; i++)
        composing->slots[i].undecided = needed == TRUTH_UNKNOWN;
}

void slots_make(struct composing *composing)
{
    const struct procedure_set *procedures = composing->in->procedures;
    for (size_t i = 0; i < procedures->count; i++)
        slots_of_procedure(composing, procedures->rows[i]);
}

struct card_list { const struct card *const *at; size_t count; };

void card_begin(struct composing *composing, const struct slot *slot, struct card *card)
{
    composing->slot = slot;
    composing->held = slot->undecided;
    composing->markers = NULL;
    composing->marker_count = composing->marker_room = 0;
    composing->dates = (struct gear_dates){.undated = 0};
    *card = (struct card){
        .key = slot->key, .procedure_key = slot->procedure->key.text, .space = slot->space,
        .title = slot->title, .name = slot->name, .subject = slot->subject,
        .symbol = slot->procedure->symbol.value, .stripe = slot->procedure->stripe.value,
        .distress = slot->procedure->kind.value == PROCEDURE_DISTRESS,
        .number = slot->number, .page = slot->page,
        .boat = text_upper(composing->arena, composing->in->boat->facts.name.text),
        .language = words_language(composing->in->words), .words = composing->in->words,
        .boat_record = composing->in->boat, .procedure = slot->procedure,
        .origin = source_whole(slot->procedure->source)};
}

static void card_finish(struct composing *composing, struct card *card)
{
    card->markers = composing->markers;
    card->marker_count = composing->marker_count;
    card->held = composing->held;
    promise(card->number != NULL && card->title != NULL && card->boat != NULL);
    surround_make(composing, card);
    card->code = check_code(card, composing->arena);
}

static void card_make(struct composing *composing, const struct slot *slot, struct card *card)
{
    card_begin(composing, slot, card);
    steps_make(composing, card);
    boxes_make(composing, card);
    if (card->distress)
        distress_make(composing, card);
    figures_make(composing, card);
    call_make(composing, card);
    card_finish(composing, card);
}

static void safety_make(struct composing *composing, const struct slot *slot, struct card *card,
                        const struct card_list *others)
{
    card_begin(composing, slot, card);
    boxes_make(composing, card);
    safety_plan_make(composing, card, others->at, others->count);
    card_finish(composing, card);
}

/* All pages of a safety plan carry the code and the dates of the plan as a whole. */
static void safety_page_make(struct composing *composing, const struct slot *slot,
                             struct card *card, const struct card_list *others)
{
    struct slot whole = safety_whole(composing, slot);
    struct card plan;
    safety_make(composing, &whole, &plan, others);
    safety_make(composing, slot, card, others);
    card->code = plan.code;
    card->footer_right = plan.footer_right;
}

/* Safety plans come last: they list what the other cards stand on. */
static const struct card *const *cards_make(struct composing *composing)
{
    size_t count = composing->slot_count;
    struct card *cards = arena_array(composing->arena, count, sizeof *cards);
    const struct card **list = arena_array(composing->arena, count, sizeof *list);
    const struct card_list all = {list, count};
    for (size_t i = 0; i < count; i++) {
        list[i] = &cards[i];
        if (!is_safety_plan(composing->slots[i].procedure))
            card_make(composing, &composing->slots[i], &cards[i]);
    }
    for (size_t i = 0; i < count; i++) {
        if (is_safety_plan(composing->slots[i].procedure))
            safety_page_make(composing, &composing->slots[i], &cards[i], &all);
    }
    return list;
}

const struct card_set *compose_set(const struct compose_input *input, struct arena *arena,
                                   struct problems *problems)
{
    return compose_set_limited(input, &(struct set_limits){.figure_count = 0}, arena, problems);
}

const struct card_set *compose_set_limited(const struct compose_input *input,
                                           const struct set_limits *limits,
                                           struct arena *arena, struct problems *problems)
{
    struct composing composing = {.in = input, .arena = arena, .problems = problems,
                                  .limits = *limits};
    struct card_set *set = arena_alloc(arena, sizeof *set);
    slots_make(&composing);
    set->cards = cards_make(&composing);
    set->count = composing.slot_count;
    for (size_t i = 0; i < set->count; i++)
        set->held += set->cards[i]->held ? 1 : 0;
    set->not_hers = composing.not_hers;
    set->not_hers_count = composing.not_hers_count;
    missing_tell(&composing);
    set->unrecorded = missing_items(&composing, &set->unrecorded_count);
    return set;
}
