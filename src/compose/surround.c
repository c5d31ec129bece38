/* surround.c - what every card carries around its instructions: title band,
 * plan, contact line, footer, marks (room: compose). */
#include "compose_room.h"
#include "approval.h"
#include "fingerprint.h"

/* One that stands today for the text of this very sheet, in its language. */
static const struct approval *approval_of(const struct composing *composing,
                                          const struct sheet *sheet)
{
    const struct compose_input *in = composing->in;
    const char *fingerprint = NULL;
    for (size_t i = 0; i < in->base->approval_count; i++) {
        const struct approval *approval = &in->base->approvals[i];
        if (!text_equal(approval->card.text, sheet->procedure_key))
            continue;
        if (fingerprint == NULL)
            fingerprint = procedure_fingerprint(sheet->procedure, in->authorities, in->words,
                                                composing->arena);
        if (approval_state(approval, fingerprint, in->today) == APPROVAL_STANDS)
            return approval;
    }
    return NULL;
}

/* NULL: the card is the program's. */
static const struct phrase *mark_of_origin(const struct composing *composing,
                                           const struct sheet *sheet)
{
    enum procedure_origin origin = sheet->procedure->origin;
    if (origin == PROCEDURE_OF_PROGRAM)
        return NULL;
    return word_alone(composing, origin == PROCEDURE_CHANGED ? WORD_MARK_CHANGED
                                                             : WORD_MARK_OF_BASE);
}

/* Beside the mark of a base's own card the others are short: a strip holds all three. */
static const struct phrase *marks(struct composing *composing, const struct sheet *sheet)
{
    const struct phrase *own = mark_of_origin(composing, sheet), *specimen = NULL, *draft = NULL;
    if (composing->in->boat->facts.specimen.answer == ANSWER_YES)
        specimen = word_alone(composing, own == NULL ? WORD_MARK_SPECIMEN
                                                     : WORD_MARK_SPECIMEN_SHORT);
    if (composing->held || composing->drafted)
        draft = word_alone(composing, own == NULL ? WORD_MARK_DRAFT : WORD_MARK_DRAFT_SHORT);
    return phrase_joined(composing->arena, WORD_JOIN_DOT, specimen, draft, own);
}

static const struct phrase *approved(struct composing *composing,
                                     const struct approval *approval)
{
    struct arena *arena = composing->arena;
    if (approval == NULL)
        return NULL;
    return phrase_word(arena, WORD_APPROVED, "initials",
                       phrase_verbatim(arena, approval->initials.text), "qualification",
                       phrase_text(arena, &approval->qualification), "date",
                       phrase_verbatim(arena, approval->date.text), NULL);
}

/* Who may change the order, and who approved the card. */
static const struct phrase *order_and_approval(struct composing *composing,
                                               const struct approval *approval)
{
    return phrase_joined(composing->arena, WORD_JOIN_SPACE,
                         word_alone(composing, WORD_DEFER_ORDER),
                         approved(composing, approval), NULL);
}

/* NULL: no piece has one. */
static const struct phrase *first_gear_date(struct composing *composing)
{
    const struct gear_date *first = &composing->dates.first;
    return first->known ? phrase_date(composing->arena, gear_date_shown(first)) : NULL;
}

/* As the checks of the record find them, so that card and check say the same. */
static const struct phrase *gear_dates_told(struct composing *composing)
{
    const struct gear_dates *dates = &composing->dates;
    const struct phrase *first = first_gear_date(composing);
    if (!dates->first.known)
        return word_alone(composing, WORD_GEAR_DATES_NONE);
    if (date_compare(dates->first.last, composing->in->today) < 0)
        return phrase_word(composing->arena, WORD_GEAR_DATES_PAST, "date", first, NULL);
    if (dates->undated > 0)
        return phrase_counted(composing->arena, WORD_GEAR_DATES_SOME, dates->undated, "date",
                              first, "count",
                              phrase_number(composing->arena, (int64_t)dates->undated), NULL);
    return phrase_word(composing->arena, WORD_GEAR_DATES, "date", first, NULL);
}

/* A sheet that is the index of cards and no more: dates of gear would be of nothing on it. */
static bool is_index_alone(const struct sheet *sheet)
{
    return sheet_block(sheet, BLOCK_SEEN) != NULL && sheet_block(sheet, BLOCK_LABELS) == NULL;
}

static const struct phrase *dates_and_replacing(struct composing *composing,
                                                const struct sheet *sheet)
{
    const struct phrase *replacing = word_alone(composing, WORD_REPLACE);
    if (is_index_alone(sheet))
        return replacing;
    return phrase_joined(composing->arena, WORD_JOIN_SPACE, gear_dates_told(composing),
                         replacing, NULL);
}

/* Of the rescue centre. */
static const struct phrase *phone_phrase(struct composing *composing)
{
    const struct text_value *phone = &composing->in->base->centre_phone;
    return phone->text == NULL ? unrecorded(composing)
                               : phrase_verbatim(composing->arena, phone->text);
}

/* The rescue centre's number stands first; the base's is not for emergencies. */
void contact_make(struct composing *composing, struct sheet *sheet)
{
    const struct base_record *base = composing->in->base;
    struct arena *arena = composing->arena;
    struct contact_facts *contact = arena_alloc(arena, sizeof *contact);
    const struct phrase *ways = phrase_joined(arena, WORD_JOIN_DOT,
                                              phone_phrase(composing),
                                              word_alone(composing, WORD_CHANNEL_16), NULL);
    contact->origin = base->centre_name.place;
    contact->left = phrase_said(
        composing, phrase_word(arena, WORD_CONTACT_CENTRE, "name",
                               phrase_verbatim(arena, base->centre_name.text), "ways", ways, NULL));
    contact->right = phrase_said(
        composing, phrase_word(arena, WORD_CONTACT_BASE, "phone",
                               phrase_verbatim(arena, base->phone_24h.text), NULL));
    block_add(composing, sheet, BLOCK_CONTACT)->contact = contact;
}

static void plan_words_make(struct composing *composing, struct plan_facts *plan)
{
    static const enum word plan_words[PLAN_WORD_COUNT] = {
        [PLAN_BOW] = WORD_PLAN_BOW,
        [PLAN_STERN] = WORD_PLAN_STERN,
        [PLAN_PORT] = WORD_PLAN_PORT,
        [PLAN_PORT_HINT] = WORD_PLAN_PORT_HINT,
        [PLAN_STARBOARD] = WORD_PLAN_STARBOARD,
        [PLAN_STARBOARD_HINT] = WORD_PLAN_STARBOARD_HINT,
        [PLAN_FACING] = WORD_PLAN_FACING,
        [PLAN_FACING_STERN] = WORD_PLAN_FACING_STERN,
        [PLAN_DECK] = WORD_PLAN_DECK,
        [PLAN_BELOW] = WORD_PLAN_BELOW,
        [PLAN_HEAD_BELOW] = WORD_PLAN_HEAD_BELOW,
        [PLAN_HEAD_DECK] = WORD_PLAN_HEAD_DECK,
        [PLAN_HEAD_HULLS] = WORD_PLAN_HEAD_HULLS,
        [PLAN_HEAD_DECK_SALOON] = WORD_PLAN_HEAD_DECK_SALOON,
        [PLAN_HEAD_WHOLE] = WORD_PLAN_HEAD_WHOLE};
    for (size_t i = 0; i < PLAN_WORD_COUNT; i++)
        plan->words[i] = phrase_said(composing, word_alone(composing, plan_words[i]));
}

/* Has the zone a port and a starboard part of its own? */
static bool is_sided_family(const struct zone *zone)
{
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++)
        if (zone_of(key)->side == SIDE_PORT && zone_of(key)->family == zone->id)
            return true;
    return false;
}

/* Has she an engine there? Where none is recorded, what most boats of her hull have. */
static bool has_engine_in(const struct boat *boat, enum zone_key space)
{
    for (size_t i = 0; i < boat->engine_count; i++)
        if (boat->engines[i].space.value == space)
            return true;
    return !boat->engines_given && space != ZONE_generator_space;
}

static bool holds_gear(const struct boat *boat, const struct zone *zone)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].place_zone == zone)
            return true;
    return false;
}

/* Is it a place of this very boat? A room that nobody recorded is one where gear lies in it. */
static bool is_hers(const struct boat *boat, const struct zone *zone)
{
    if (!hull_has_zone(boat->facts.hull.value, zone))
        return false;
    if (zone->family == ZONE_engine_space)
        return has_engine_in(boat, zone->id);
    if (zone->id == ZONE_trampoline && !boat_is(boat, TRAIT_SAIL, ZONE_NONE))
        return holds_gear(boat, zone);
    enum answer room = boat_room(boat, zone);
    return room == ANSWER_YES || (room == ANSWER_NOT_RECORDED && holds_gear(boat, zone));
}

/* A name in the middle of the plan must be true of the middle of the boat. */
static bool is_landmark(const struct zone *zone, const struct boat *boat)
{
    if ((!zone->drawn && !zone->room) || zone->side == SIDE_PORT || zone->side == SIDE_STARBOARD)
        return false;
    if (boat->catamaran && (zone->in_hulls || is_sided_family(zone)))
        return false;
    if (boat->facts.hull.value == HULL_TRIMARAN && zone->multihull_only)
        return false;                          /* her nets lie beside the middle hull */
    return is_hers(boat, zone);
}

/* A room in one hull of several, for a plan that shows each hull by itself. */
static bool is_hull_landmark(const struct zone *zone, const struct boat *boat)
{
    return boat->catamaran && zone->drawn && zone->in_hulls && zone->side != SIDE_NONE &&
           is_hers(boat, zone);
}

static bool holds_gear_on(const struct boat *boat, const struct zone *zone, enum side side)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].place_zone == zone && boat->equipment[i].place_side == side)
            return true;
    return false;
}

/* Landmarks of a boat, while they are gathered. */
struct landmarks {
    struct composing *composing;
    struct plan_zone *zones;
    size_t count;
};

static void landmark_add(struct landmarks *landmarks, const struct zone *zone, enum side side)
{
    struct composing *composing = landmarks->composing;
    landmarks->zones[landmarks->count++] = (struct plan_zone){
        zone, phrase_said(composing, phrase_zone(composing->arena, zone)), side, !zone->drawn};
}

/* Of a catamaran's rooms that both hulls may have, those in which gear tells the hull. */
static void hull_rooms_add(struct landmarks *landmarks, const struct zone *zone)
{
    const struct boat *boat = landmarks->composing->in->boat;
    if (!boat->catamaran || !zone->in_hulls || !zone->room || zone->side != SIDE_NONE ||
        !is_hers(boat, zone))
        return;
    for (enum side side = SIDE_PORT; side <= SIDE_STARBOARD; side++)
        if (holds_gear_on(boat, zone, side))
            landmark_add(landmarks, zone, side);
}

/* Landmarks of this kind of boat. */
static const struct plan_zone *plan_landmarks(struct composing *composing, size_t *count)
{
    const struct boat *boat = composing->in->boat;
    struct landmarks landmarks = {composing,
                                  arena_array(composing->arena, 2 * ZONE_COUNT,
                                              sizeof *landmarks.zones), 0};
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const struct zone *zone = zone_of(key);
        bool in_hull = is_hull_landmark(zone, boat);
        if (is_landmark(zone, boat) || in_hull)
            landmark_add(&landmarks, zone, in_hull ? zone->side : SIDE_NONE);
        hull_rooms_add(&landmarks, zone);
    }
    *count = landmarks.count;
    return landmarks.zones;
}

/* ---- where nobody enters ---- */

static void hatched_add(struct plan_facts *plan, enum zone_key *zones, enum zone_key zone)
{
    for (size_t i = 0; i < plan->hatched_count; i++)
        if (zones[i] == zone)
            return;
    if (zone != ZONE_NONE)
        zones[plan->hatched_count++] = zone;
}

/* The engine space of the card, the zone that its procedure is about, and where its vapours come
 * from. */
static void plan_hatched_find(struct composing *composing, struct plan_facts *plan)
{
    const struct procedure *procedure = composing->slot->procedure;
    const struct item_values *sources = &procedure->vapour_from;
    enum zone_key *zones = arena_array(composing->arena,
                                       composing->in->boat->equipment_count + 2, sizeof *zones);
    plan->hatched = zones;
    hatched_add(plan, zones, composing->slot->space);
    hatched_add(plan, zones, procedure->danger_in.value);
    for (size_t i = 0; i < sources->count; i++) {
        size_t index = 0;
        for (const struct equipment *source;
             (source = gear_next(composing, sources->items[i].value, &index)) != NULL;)
            hatched_add(plan, zones, source->zone.value);
    }
}

struct plan_facts *plan_make(struct composing *composing, struct sheet *sheet)
{
    struct plan_facts *plan = arena_alloc(composing->arena, sizeof *plan);
    plan->markers = composing->markers;
    plan->marker_count = composing->marker_count;
    plan_words_make(composing, plan);
    plan->told = phrase_said(composing, word_alone(composing, WORD_PLAN_TOLD));
    plan->landmarks = plan_landmarks(composing, &plan->landmark_count);
    plan_hatched_find(composing, plan);
    block_add(composing, sheet, BLOCK_PLAN)->plan = plan;
    return plan;
}

static const struct phrase *card_number(struct composing *composing, const char *number)
{
    return phrase_word(composing->arena, WORD_CARD_NUMBER, "number",
                       phrase_verbatim(composing->arena, number), NULL);
}

const char *page_number(struct composing *composing, size_t index)
{
    return text_format(composing->arena, "%s%c", composing->slot->number, (int)('A' + index));
}

struct pages_facts *pages_add(struct composing *composing, struct sheet *sheet)
{
    struct pages_facts *pages = arena_alloc(composing->arena, sizeof *pages);
    for (size_t i = 0; i < SHEET_PAGES_MOST; i++)
        pages->numbers[i] = phrase_said(composing,
                                        card_number(composing, page_number(composing, i)));
    block_add(composing, sheet, BLOCK_PAGES)->pages = pages;
    return pages;
}

static void title_make(struct composing *composing, struct sheet *sheet)
{
    struct title_facts *title = arena_alloc(composing->arena, sizeof *title);
    *title = (struct title_facts){
        .title = composing->slot->title,
        .boat = text_upper(composing->arena, composing->in->boat->facts.name.text),
        .number = phrase_said(composing, card_number(composing, sheet->number)),
        .symbol = sheet->procedure->symbol.value, .stripe = sheet->procedure->stripe.value};
    block_add(composing, sheet, BLOCK_TITLE)->title = title;
}

static const struct phrase *printed(struct composing *composing)
{
    struct arena *arena = composing->arena;
    return phrase_joined(arena, WORD_JOIN_DOT,
                         phrase_word(arena, WORD_PRINTED, "date",
                                     phrase_date(arena, composing->in->today), NULL),
                         word_alone(composing, WORD_LANGUAGE), NULL);
}

static void footer_make(struct composing *composing, struct sheet *sheet)
{
    struct footer_facts *footer = arena_alloc(composing->arena, sizeof *footer);
    const struct approval *approval = approval_of(composing, sheet);
    *footer = (struct footer_facts){
        .left = {phrase_said(composing, word_alone(composing, WORD_DEFER)),
                 phrase_said(composing, order_and_approval(composing, approval))},
        .dates = phrase_said(composing, dates_and_replacing(composing, sheet)),
        .first_date = phrase_said(composing, first_gear_date(composing)),
        .undated = composing->dates.undated,
        .code_word = "", .code = "",
        .printed = phrase_said(composing, printed(composing)),
        .measure = phrase_said(composing, word_alone(composing, WORD_MEASURE))};
    composing->footer = footer;
    block_add(composing, sheet, BLOCK_FOOTER)->footer = footer;
}

/* The word is in the code too. */
void code_make(struct composing *composing, const struct sheet *sheet)
{
    struct footer_facts *footer = composing->footer;
    footer->code_word = phrase_said(composing, word_alone(composing, WORD_CHECK_CODE));
    footer->code = check_code(sheet, composing->arena);
}

static void one_mark_make(struct composing *composing, struct sheet *sheet, enum block_key block,
                          const struct phrase *mark)
{
    if (mark != NULL)
        text_add_block(composing, sheet, block,
                       (struct card_text){phrase_said(composing, mark), sheet->origin});
}

void mark_make(struct composing *composing, struct sheet *sheet)
{
    one_mark_make(composing, sheet, BLOCK_MARK, marks(composing, sheet));
    if (approval_of(composing, sheet) == NULL)
        one_mark_make(composing, sheet, BLOCK_UNAPPROVED,
                      word_alone(composing, WORD_MARK_NOT_APPROVED));
}

void surround_make(struct composing *composing, struct sheet *sheet)
{
    title_make(composing, sheet);
    footer_make(composing, sheet);
}
