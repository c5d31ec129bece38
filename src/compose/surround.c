/* surround.c - what every card carries around its instructions: title band,
 * contact line, footer, marks (room: compose). */
#include "compose_room.h"

#include "promise.h"

/* An approval of a month counts from that month's first day to its last. */
static bool approval_holds(const struct approval *approval, struct date today)
{
    return date_compare(date_first_day(approval->date.date), today) <= 0 &&
           date_compare(today, approval->until.date) <= 0;
}

static const struct approval *approval_of(const struct composing *composing,
                                          const struct sheet *sheet)
{
    const struct base_record *base = composing->in->base;
    for (size_t i = 0; i < base->approval_count; i++) {
        const struct approval *approval = &base->approvals[i];
        if (text_equal(approval->card.text, sheet->procedure_key) &&
            approval_holds(approval, composing->in->today))
            return approval;
    }
    return NULL;
}

static void mark_add(struct text_builder *builder, const char *mark)
{
    text_add_format(builder, "%s%s", builder->length == 0 ? "" : " · ", mark);
}

static const char *marks_joined(struct composing *composing, const struct approval *approval)
{
    const struct words *words = composing->in->words;
    struct text_builder builder = text_builder_in(composing->arena);
    if (composing->in->boat->facts.specimen.answer == ANSWER_YES)
        mark_add(&builder, words_get(words, WORD_MARK_SPECIMEN));
    if (composing->held)
        mark_add(&builder, words_get(words, WORD_MARK_DRAFT));
    if (approval == NULL)
        mark_add(&builder, words_get(words, WORD_MARK_NOT_APPROVED));
    return builder.at;
}

static const char *approval_words(struct composing *composing, const struct approval *approval)
{
    const struct words *words = composing->in->words;
    if (approval == NULL)
        return words_get(words, WORD_DEFER_ORDER);
    return text_format(composing->arena, "%s %s", words_get(words, WORD_DEFER_ORDER),
                       words_fill(words, composing->arena, WORD_APPROVED, "initials",
                                  approval->initials.text, "qualification",
                                  approval->qualification.text, "date", approval->date.text,
                                  NULL));
}

static const char *gear_date_words(struct composing *composing)
{
    const struct gear_date *first = &composing->dates.first;
    return first->known ? date_text(composing->arena, gear_date_shown(first)) : "";
}

/* As the checks of the record find them, so that card and check say the same. */
static const char *dates_words(struct composing *composing)
{
    const struct words *words = composing->in->words;
    const struct gear_dates *dates = &composing->dates;
    const char *replace = words_get(words, WORD_REPLACE);
    if (!dates->first.known)
        return text_format(composing->arena, "%s %s", words_get(words, WORD_GEAR_DATES_NONE),
                           replace);
    enum word word = WORD_GEAR_DATES;
    if (date_compare(dates->first.last, composing->in->today) < 0)
        word = WORD_GEAR_DATES_PAST;
    else if (dates->undated > 0)
        word = WORD_GEAR_DATES_SOME;
    return text_format(composing->arena, "%s %s",
                       words_fill(words, composing->arena, word, "date", gear_date_words(composing),
                                  "count", text_format(composing->arena, "%zu", dates->undated),
                                  NULL), replace);
}

/* The rescue centre's number stands first; the base's is not for emergencies. */
void contact_make(struct composing *composing, struct sheet *sheet)
{
    const struct base_record *base = composing->in->base;
    const struct words *words = composing->in->words;
    const char *phone = TEXT_OR_EMPTY(base->centre_phone);
    struct contact_facts *contact = arena_alloc(composing->arena, sizeof *contact);
    contact->origin = base->centre_name.place;
    contact->left = text_format(composing->arena, "**%s %s** %s%s%s",
                                words_get(words, WORD_RESCUE_CENTRE), base->centre_name.text,
                                phone, text_empty(phone) ? "" : " · ",
                                words_get(words, WORD_CHANNEL_16));
    contact->right = text_format(composing->arena, "**%s** %s", words_get(words, WORD_BASE_PHONE),
                                 base->phone_24h.text);
    block_add(composing, sheet, BLOCK_CONTACT)->contact = contact;
}

static void plan_words_make(struct composing *composing, struct plan_facts *plan)
{
    static const enum word plan_words[PLAN_WORD_COUNT] = {
        [PLAN_BOW] = WORD_PLAN_BOW,
        [PLAN_PORT] = WORD_PLAN_PORT,
        [PLAN_PORT_HINT] = WORD_PLAN_PORT_HINT,
        [PLAN_STARBOARD] = WORD_PLAN_STARBOARD,
        [PLAN_STARBOARD_HINT] = WORD_PLAN_STARBOARD_HINT,
        [PLAN_FACING] = WORD_PLAN_FACING,
        [PLAN_DECK] = WORD_PLAN_DECK,
        [PLAN_BELOW] = WORD_PLAN_BELOW};
    for (size_t i = 0; i < PLAN_WORD_COUNT; i++)
        plan->words[i] = words_get(composing->in->words, plan_words[i]);
}

/* Has the zone a port and a starboard part of its own? */
static bool is_sided_family(const struct zone *zone)
{
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++)
        if (zone_of(key)->side == SIDE_PORT && zone_of(key)->family == zone->id)
            return true;
    return false;
}

/* A name in the middle of the plan must be true of the middle of the boat. */
static bool is_landmark(const struct zone *zone, const struct boat *boat)
{
    if (!zone->drawn || zone->side == SIDE_PORT || zone->side == SIDE_STARBOARD)
        return false;
    if (boat->catamaran)
        return !zone->in_hulls && !is_sided_family(zone);
    return !zone->catamaran_only;
}

/* A safety plan of the deck names what is on deck, the other what is below. */
static bool of_part(const struct zone *zone, enum plan_part part)
{
    switch (part) {
    case PLAN_PART_WHOLE:
        return true;
    case PLAN_PART_DECK:
        return zone->level != LEVEL_BELOW;
    case PLAN_PART_BELOW:
        return zone->level == LEVEL_BELOW;
    }
    promise_unreached();
}

/* Landmarks of this kind of boat. */
const struct plan_zone *plan_landmarks(struct composing *composing, enum plan_part part,
                                       size_t *count)
{
    const struct boat *boat = composing->in->boat;
    struct plan_zone *zones = arena_array(composing->arena, ZONE_COUNT, sizeof *zones);
    *count = 0;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++) {
        const struct zone *zone = zone_of(key);
        bool deck_landmark = part == PLAN_PART_DECK &&
                             (key == ZONE_coachroof || (!boat->catamaran && key == ZONE_foredeck));
        if (of_part(zone, part) && (is_landmark(zone, boat) || deck_landmark))
            zones[(*count)++] = (struct plan_zone){zone, words_zone(composing->in->words, key)};
    }
    return zones;
}

static void plan_make(struct composing *composing, struct sheet *sheet)
{
    struct plan_facts *plan = arena_alloc(composing->arena, sizeof *plan);
    plan->markers = composing->markers;
    plan->marker_count = composing->marker_count;
    plan_words_make(composing, plan);
    plan->landmarks = plan_landmarks(composing, PLAN_PART_WHOLE, &plan->landmark_count);
    block_add(composing, sheet, BLOCK_PLAN)->plan = plan;
}

static void title_make(struct composing *composing, struct sheet *sheet)
{
    struct title_facts *title = arena_alloc(composing->arena, sizeof *title);
    *title = (struct title_facts){
        .title = composing->slot->title,
        .boat = text_upper(composing->arena, composing->in->boat->facts.name.text),
        .number = words_fill(composing->in->words, composing->arena, WORD_CARD_NUMBER, "number",
                             sheet->number, NULL),
        .symbol = sheet->procedure->symbol.value, .stripe = sheet->procedure->stripe.value};
    block_add(composing, sheet, BLOCK_TITLE)->title = title;
}

static void footer_make(struct composing *composing, struct sheet *sheet)
{
    const struct words *words = composing->in->words;
    struct footer_facts *footer = arena_alloc(composing->arena, sizeof *footer);
    *footer = (struct footer_facts){
        .left = {words_get(words, WORD_DEFER),
                 approval_words(composing, approval_of(composing, sheet))},
        .dates = dates_words(composing), .first_date = gear_date_words(composing),
        .undated = composing->dates.undated, .code_word = words_get(words, WORD_CHECK_CODE),
        .code = "",
        .printed = text_format(composing->arena, "%s · %s",
                               words_fill(words, composing->arena, WORD_PRINTED, "date",
                                          date_text(composing->arena, composing->in->today),
                                          NULL),
                               words_get(words, WORD_LANGUAGE))};
    composing->footer = footer;
    block_add(composing, sheet, BLOCK_FOOTER)->footer = footer;
}

void mark_make(struct composing *composing, struct sheet *sheet)
{
    text_add_block(composing, sheet, BLOCK_MARK,
                   (struct card_text){marks_joined(composing, approval_of(composing, sheet)),
                                      sheet->origin});
}

void surround_make(struct composing *composing, struct sheet *sheet)
{
    title_make(composing, sheet);
    plan_make(composing, sheet);
    footer_make(composing, sheet);
}
