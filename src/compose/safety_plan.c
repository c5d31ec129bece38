/* safety_plan.c - the first card of a set: all gear of the record where it is,
 * what the signs mean, where the cards hang and what the set stands on (room:
 * compose). Never held back: what is not recorded is not on it. */
#include "card_set.h"

/* ---- what several pages are called ---- */

static const struct phrase *page_named(struct composing *composing, size_t index)
{
    return phrase_verbatim(composing->arena, page_number(composing, index));
}

static const char *part_title(struct composing *composing, enum word part)
{
    return phrase_said(composing,
                       phrase_word(composing->arena, WORD_JOIN_COMMA, "before",
                                   phrase_verbatim(composing->arena, composing->slot->title),
                                   "next", word_alone(composing, part), NULL));
}

/* "Gear on deck. Below: card 1B."; of more than two pages the first and the last. */
static void part_signs_make(struct composing *composing, struct pages_facts *pages,
                            enum plan_part part)
{
    static const enum word two[PLAN_PART_COUNT] = {
        [PLAN_PART_DECK] = WORD_SAFETY_SIGNS_DECK, [PLAN_PART_BELOW] = WORD_SAFETY_SIGNS_BELOW};
    static const enum word many[PLAN_PART_COUNT] = {
        [PLAN_PART_WHOLE] = WORD_SAFETY_SIGNS_MANY, [PLAN_PART_DECK] = WORD_SAFETY_SIGNS_DECK_MANY,
        [PLAN_PART_BELOW] = WORD_SAFETY_SIGNS_BELOW_MANY};
    struct arena *arena = composing->arena;
    size_t other = part == PLAN_PART_DECK ? 1 : 0;
    pages->signs_of_two[part] =
        part == PLAN_PART_WHOLE
            ? "" : phrase_said(composing, phrase_word(arena, two[part], "number",
                                                      page_named(composing, other), NULL));
    for (size_t last = 1; last < SHEET_PAGES_MOST; last++)
        pages->signs_of_many[part][last] =
            phrase_said(composing, phrase_word(arena, many[part], "first",
                                               page_named(composing, 0), "last",
                                               page_named(composing, last), NULL));
}

/* The pages with the index of cards. */
static void seen_pages_make(struct composing *composing, const struct sheet *sheet,
                            struct pages_facts *pages, const struct sheet_list *others)
{
    pages->titles[PLAN_PAGE_SEEN] = part_title(composing, WORD_SAFETY_SEEN);
    pages->call_lines[PLAN_PAGE_SEEN] = seen_call_line(composing, sheet, others);
    for (size_t i = 0; i < SHEET_PAGES_MOST; i++)
        pages->signs_of_many[PLAN_PAGE_SEEN][i] =
            phrase_said(composing, word_alone(composing, WORD_SAFETY_SIGNS_SEEN));
}

static void pages_make(struct composing *composing, struct sheet *sheet,
                       const struct sheet_list *others)
{
    struct pages_facts *pages = pages_add(composing, sheet);
    pages->titles[PLAN_PART_DECK] = part_title(composing, WORD_SAFETY_DECK);
    pages->titles[PLAN_PART_BELOW] = part_title(composing, WORD_SAFETY_BELOW);
    for (enum plan_part part = PLAN_PART_WHOLE; part < PLAN_PART_COUNT; part++)
        part_signs_make(composing, pages, part);
    seen_pages_make(composing, sheet, pages, others);
}

/* ---- where the cards hang ---- */

static const struct zone *zone_hung_in(const struct boat *boat)
{
    const struct zone *zone = zone_of(boat->facts.mounted_zone.value);
    bool between_hulls = zone != NULL && boat->catamaran && zone->in_hulls &&
                         zone->side == SIDE_NONE;
    bool of_others = zone != NULL && !hull_has_zone(boat->facts.hull.value, zone);
    return between_hulls || of_others ? NULL : zone;
}

/* NULL: the record does not tell where. */
static const struct marker *here_marker(struct composing *composing)
{
    const struct boat *boat = composing->in->boat;
    const struct zone *zone = zone_hung_in(boat);
    if (zone == NULL || boat->facts.mounted_faces.value == FACING_NONE)
        return NULL;
    struct equipment hung = {.place_zone = zone, .place_side = zone->side,
                             .place = boat->facts.mounted.place};
    struct marker *here = arena_alloc(composing->arena, sizeof *here);
    *here = marker_of(boat, &hung);
    return here;
}

void safety_plan_notes(const struct boat *boat, struct problems *problems)
{
    if (boat->facts.mounted_zone.value == ZONE_NONE ||
        boat->facts.mounted_faces.value == FACING_NONE)
        problem_add(problems, SEVERITY_NOTE, boat->place,
                    "add to boat: the place where her cards hang, and which way one looks who "
                    "reads them there:\n  mounted: {zone: , faces: (bow or stern or port or "
                    "starboard)}",
                    "where the cards hang is not recorded: the safety plan shows no YOU ARE HERE");
    else if (zone_hung_in(boat) == NULL)
        problem_add(problems, SEVERITY_NOTE, boat->facts.mounted_zone.place,
                    "name a zone that this kind of boat has, and one of one hull",
                    "mounted: no single place on this boat is called %s: the safety plan shows no "
                    "YOU ARE HERE", zone_word(boat->facts.mounted_zone.value));
}

/* ---- what the set stands on ---- */

struct source_list {
    const struct authority **rows;
    size_t count, room;
};

static void source_add(struct composing *composing, struct source_list *list,
                       const struct authority *authority)
{
    if (authority == NULL)
        return;
    for (size_t i = 0; i < list->count; i++)
        if (list->rows[i] == authority)
            return;
    list->rows = arena_grow(composing->arena, list->rows, list->count, &list->room,
                            sizeof *list->rows);
    list->rows[list->count++] = authority;
}

static void sources_add(struct composing *composing, struct source_list *list,
                        const struct warnings_facts *warnings)
{
    for (size_t i = 0; i < warnings->count; i++)
        source_add(composing, list, warnings->items[i].source);
}

/* All that is cited under the tag of this source, which is the first of them. */
static const struct phrase *source_cited(struct composing *composing,
                                         const struct source_list *list, size_t first)
{
    struct arena *arena = composing->arena;
    const struct authority *source = list->rows[first];
    const struct phrase **ids = arena_array(arena, list->count, sizeof *ids);
    size_t count = 0;
    for (size_t i = first; i < list->count; i++)
        if (text_equal(list->rows[i]->tag.text, source->tag.text))
            ids[count++] = phrase_verbatim(arena, list->rows[i]->id.text);
    return phrase_word(arena, WORD_SOURCE, "tag", phrase_verbatim(arena, source->tag.text),
                       "issuer", phrase_verbatim(arena, source->issuer.text), "ids",
                       phrase_list(arena, WORD_JOIN_SEMICOLON, ids, count), NULL);
}

static bool source_tag_is_new(const struct source_list *list, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (text_equal(list->rows[i]->tag.text, list->rows[index]->tag.text))
            return false;
    return true;
}

/* Sources of one tag stand together; NULL: there are none. */
static const struct phrase *sources_joined(struct composing *composing,
                                           const struct source_list *list)
{
    const struct phrase **cited = arena_array(composing->arena, list->count, sizeof *cited);
    size_t count = 0;
    for (size_t i = 0; i < list->count; i++)
        if (source_tag_is_new(list, i))
            cited[count++] = source_cited(composing, list, i);
    if (count == 0)
        return NULL;
    return phrase_word(composing->arena, WORD_SOURCES, "sources",
                       phrase_list(composing->arena, WORD_JOIN_STOP, cited, count), NULL);
}

/* Only warnings carry a tag, and only those that are printed on this boat's sheets. */
static const struct phrase *plan_sources(struct composing *composing,
                                         const struct sheet_list *others)
{
    struct source_list list = {0};
    for (size_t i = 0; i < others->count; i++) {
        sources_add(composing, &list, sheet_warnings(others->at[i], BLOCK_NEVER));
        sources_add(composing, &list, sheet_warnings(others->at[i], BLOCK_CAUTIONS));
    }
    return sources_joined(composing, &list);
}

/* ---- the sheet ---- */

static void places_make(struct composing *composing, struct sheet *sheet)
{
    const struct boat *boat = composing->in->boat;
    struct places_facts *plan = arena_alloc(composing->arena, sizeof *plan);
    const struct marker *here = here_marker(composing);
    plan->to = 1000;
    plan->places = plan_places(composing, here, &plan->count);
    plan->facing = here == NULL ? FACING_NONE : boat->facts.mounted_faces.value;
    for (size_t i = 0; i < boat->equipment_count; i++)
        gear_dates_add(&composing->dates, &boat->equipment[i], composing->in->base);
    block_add(composing, sheet, BLOCK_LABELS)->places = plan;
}

static void legend_make(struct composing *composing, struct sheet *sheet)
{
    static const enum word words[] = {WORD_LEGEND_FIRE, WORD_LEGEND_RESCUE, WORD_LEGEND_CONTROL};
    struct legend_facts *legend = arena_alloc(composing->arena, sizeof *legend);
    for (size_t i = 0; i < sizeof words / sizeof *words; i++)
        legend->words[i] = phrase_said(composing, word_alone(composing, words[i]));
    block_add(composing, sheet, BLOCK_LEGEND)->legend = legend;
}

void safety_plan_compose(struct composing *composing, struct sheet *sheet,
                         const struct sheet_list *others)
{
    places_make(composing, sheet);
    struct plan_facts *plan = plan_make(composing, sheet);
    if (sheet_places(sheet)->facing == FACING_STERN)
        plan->told = phrase_said(composing, word_alone(composing, WORD_PLAN_TOLD_STERN));
    legend_make(composing, sheet);
    index_make(composing, sheet);
    text_add_block(composing, sheet, BLOCK_SOURCES,
                   (struct card_text){phrase_said(composing, plan_sources(composing, others)),
                                      sheet->origin});
    signs_make(composing, sheet, NULL, signs_joined(composing, sheet));
    cases_add_block(composing, sheet,
                    (struct card_text){
                        phrase_said(composing, word_alone(composing, WORD_SAFETY_CALL_LINE)),
                        sheet->origin});
    warnings_make(composing, sheet);
    seen_make(composing, sheet, others);
    pages_make(composing, sheet, others);
}
