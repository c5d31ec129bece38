/* safety_plan.c - the first card of a set: all gear of the record where it is,
 * what the signs mean, where the cards hang and what the set stands on (room:
 * compose). Never held back: what is not recorded is not on it. */
#include "compose_room.h"

/* ---- what several pages are called ---- */

static const char *page_number(struct composing *composing, size_t page)
{
    return text_format(composing->arena, "%s%c", composing->slot->number, (int)('A' + page));
}

static const char *part_title(struct composing *composing, enum word part)
{
    return text_format(composing->arena, "%s, %s", composing->slot->title,
                       words_get(composing->in->words, part));
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
    const struct words *words = composing->in->words;
    size_t other = part == PLAN_PART_DECK ? 1 : 0;
    pages->signs_of_two[part] =
        part == PLAN_PART_WHOLE ? "" : words_fill(words, composing->arena, two[part], "number",
                                                  page_number(composing, other), NULL);
    for (size_t last = 0; last < SHEET_PAGES_MOST; last++)
        pages->signs_of_many[part][last] =
            words_fill(words, composing->arena, many[part], "first", page_number(composing, 0),
                       "last", page_number(composing, last), NULL);
}

static void pages_make(struct composing *composing, struct sheet *sheet)
{
    struct pages_facts *pages = arena_alloc(composing->arena, sizeof *pages);
    for (size_t i = 0; i < SHEET_PAGES_MOST; i++)
        pages->numbers[i] = words_fill(composing->in->words, composing->arena, WORD_CARD_NUMBER,
                                       "number", page_number(composing, i), NULL);
    pages->titles[PLAN_PART_DECK] = part_title(composing, WORD_SAFETY_DECK);
    pages->titles[PLAN_PART_BELOW] = part_title(composing, WORD_SAFETY_BELOW);
    for (enum plan_part part = PLAN_PART_WHOLE; part < PLAN_PART_COUNT; part++) {
        part_signs_make(composing, pages, part);
        pages->landmarks[part] = plan_landmarks(composing, part, &pages->landmark_counts[part]);
    }
    block_add(composing, sheet, BLOCK_PAGES)->pages = pages;
}

/* ---- where the cards hang ---- */

static const struct zone *zone_hung_in(const struct boat *boat)
{
    const struct zone *zone = zone_of(boat->facts.mounted_zone.value);
    bool between_hulls = zone != NULL && boat->catamaran && zone->in_hulls &&
                         zone->side == SIDE_NONE;
    bool of_catamarans = zone != NULL && !boat->catamaran && zone->catamaran_only;
    return between_hulls || of_catamarans ? NULL : zone;
}

static void here_make(struct composing *composing, struct places_facts *plan)
{
    static const enum word here_words[] = {
        [FACING_BOW] = WORD_HERE_BOW, [FACING_STARBOARD] = WORD_HERE_STARBOARD,
        [FACING_STERN] = WORD_HERE_STERN, [FACING_PORT] = WORD_HERE_PORT};
    const struct boat *boat = composing->in->boat;
    const struct zone *zone = zone_hung_in(boat);
    if (zone == NULL || boat->facts.mounted_faces.value == FACING_NONE)
        return;
    struct equipment hung = {.place_zone = zone, .place_side = zone->side,
                             .place = boat->facts.mounted.place};
    plan->here_given = true;
    plan->here = marker_of(boat, &hung);
    plan->facing = boat->facts.mounted_faces.value;
    plan->here_word = words_get(composing->in->words, WORD_HERE);
    plan->here_words = words_get(composing->in->words, here_words[plan->facing]);
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

static void first_of_tag_add(struct text_builder *out, const struct authority *authority)
{
    text_add_format(out, "%s**%s** %s, %s", out->length == 0 ? "" : ". ", authority->tag.text,
                    authority->issuer.text, authority->id.text);
}

static void next_of_tag_add(struct text_builder *out, const struct authority *authority)
{
    text_add_format(out, "; %s", authority->id.text);
}

/* Sources of one tag stand together, the tag and its issuer said once. */
static const char *sources_joined(struct composing *composing, const struct source_list *list)
{
    struct text_builder out = text_builder_in(composing->arena);
    bool *told = arena_array(composing->arena, list->count, sizeof *told);
    for (size_t i = 0; i < list->count; i++) {
        if (told[i])
            continue;
        first_of_tag_add(&out, list->rows[i]);
        for (size_t j = i + 1; j < list->count; j++) {
            if (!text_equal(list->rows[i]->tag.text, list->rows[j]->tag.text))
                continue;
            next_of_tag_add(&out, list->rows[j]);
            told[j] = true;
        }
    }
    return out.length == 0 ? ""
                           : text_format(composing->arena, "**%s:** %s.",
                                         words_get(composing->in->words, WORD_SOURCES), out.at);
}

/* Only warnings carry a tag, and only those that are printed on this boat's sheets. */
static const char *plan_sources_words(struct composing *composing, const struct sheet_list *others)
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
    plan->places = plan_places(composing, &plan->count);
    here_make(composing, plan);
    for (size_t i = 0; i < boat->equipment_count; i++)
        marker_add(composing, &boat->equipment[i]);
    block_add(composing, sheet, BLOCK_LABELS)->places = plan;
}

static void legend_make(struct composing *composing, struct sheet *sheet)
{
    static const enum word words[] = {WORD_LEGEND_FIRE, WORD_LEGEND_RESCUE, WORD_LEGEND_CONTROL};
    struct legend_facts *legend = arena_alloc(composing->arena, sizeof *legend);
    for (size_t i = 0; i < sizeof words / sizeof *words; i++)
        legend->words[i] = words_get(composing->in->words, words[i]);
    block_add(composing, sheet, BLOCK_LEGEND)->legend = legend;
}

void safety_plan_compose(struct composing *composing, struct sheet *sheet,
                         const struct sheet_list *others)
{
    places_make(composing, sheet);
    legend_make(composing, sheet);
    text_add_block(composing, sheet, BLOCK_SOURCES,
                   (struct card_text){plan_sources_words(composing, others), sheet->origin});
    signs_make(composing, sheet, "", signs_joined(composing));
    text_add_block(composing, sheet, BLOCK_CALL_LINE,
                   (struct card_text){words_get(composing->in->words, WORD_SAFETY_CALL_LINE),
                                      sheet->origin});
    warnings_make(composing, sheet);
    pages_make(composing, sheet);
}
