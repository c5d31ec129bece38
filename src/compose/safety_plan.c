/* safety_plan.c - the first card of a set: all gear of the record where it is,
 * what the signs mean, where the cards hang and what the set stands on (room:
 * compose). Never held back: what is not recorded is not on it. */
#include "compose_room.h"

#include "promise.h"

bool is_safety_plan(const struct procedure *procedure)
{
    return procedure->kind.value == SHEET_SAFETY_PLAN;
}

/* ---- one plan or more ---- */

static const char *section_title(const struct composing *composing, const char *title,
                                 const struct plan_section *section)
{
    static const enum word parts[] = {
        [PLAN_PART_DECK] = WORD_SAFETY_DECK, [PLAN_PART_BELOW] = WORD_SAFETY_BELOW};
    if (section->part == PLAN_PART_WHOLE)
        return title;
    return text_format(composing->arena, "%s, %s", title,
                       words_get(composing->in->words, parts[section->part]));
}

static void plan_section_add(struct composing *composing, const struct procedure *procedure,
                             const struct plan_section *section)
{
    size_t before = 0;
    for (size_t i = 0; i < composing->slot_count; i++)
        before += composing->slots[i].procedure == procedure ? 1 : 0;
    struct slot *slot = slot_add(composing, procedure, ZONE_NONE);
    slot->section = *section;
    slot->title = section_title(composing, slot->title, section);
    if (before > 0)
        slot->key = text_format(composing->arena, "%s_%zu", slot->key, before + 1);
}

/* The station where the next section begins: as near as can be to that share of the
 * part's lines, a place's title being one. False where no gear stands further aft. */
static bool cut_find(const struct plan_place *places, size_t count, size_t share, int32_t after,
                     int32_t *cut)
{
    size_t before = 0, least = SIZE_MAX;
    for (size_t i = 0; i + 1 < count; i++) {
        before += places[i].row_count + 1;
        size_t off = before > share ? before - share : share - before;
        int32_t next = places[i + 1].marker.x_mm;
        if (places[i].marker.x_mm == next || next <= after || off >= least)
            continue;
        least = off;
        *cut = next;
    }
    return least != SIZE_MAX;
}

static struct plan_section whole_part(enum plan_part part)
{
    return (struct plan_section){part, 1, 1, INT32_MIN, INT32_MAX};
}

/* The sections of a part, from the bow aft; gives how many there are. */
static int sections_cut(struct composing *composing, enum plan_part part,
                        struct plan_section sections[PLAN_PAGES_MOST])
{
    size_t place_count;
    sections[0] = whole_part(part);
    const struct plan_place *places = plan_places(composing, &sections[0], &place_count);
    size_t lines = plan_rows_count(places, place_count) + place_count;
    int wanted = composing->limits.plan_pages[part], count = 1;
    for (int32_t cut; count < wanted && count < PLAN_PAGES_MOST; count++) {
        size_t share = lines * (size_t)count / (size_t)wanted;
        if (!cut_find(places, place_count, share, sections[count - 1].from_mm, &cut))
            break;
        sections[count] = sections[count - 1];
        sections[count - 1].to_mm = sections[count].from_mm = cut;
    }
    promise(count >= 1 && count <= PLAN_PAGES_MOST);
    for (int i = 0; i < count; i++) {
        sections[i].number = i + 1;
        sections[i].of = count;
    }
    return count;
}

static void part_add(struct composing *composing, const struct procedure *procedure,
                     enum plan_part part)
{
    struct plan_section sections[PLAN_PAGES_MOST];
    int count = sections_cut(composing, part, sections);
    for (int i = 0; i < count; i++)
        plan_section_add(composing, procedure, &sections[i]);
}

static size_t rows_in(struct composing *composing, enum plan_part part)
{
    size_t count;
    const struct plan_section section = whole_part(part);
    const struct plan_place *places = plan_places(composing, &section, &count);
    return plan_rows_count(places, count);
}

/* Several pages are A, B ... of one number. */
static void pages_name(struct composing *composing, size_t first)
{
    for (size_t i = first; i < composing->slot_count; i++) {
        struct slot *slot = &composing->slots[i];
        if (composing->slot_count - first > 1)
            slot->page = text_format(composing->arena, "%c", (char)('A' + (char)(i - first)));
        slot->name = named_card(composing->arena,
                               text_format(composing->arena, "%s%s", slot->number, slot->page),
                               slot->title);
    }
}

struct slot safety_whole(struct composing *composing, const struct slot *page)
{
    struct slot whole = *page;
    whole.key = page->procedure->key.text;
    whole.title = text_upper(composing->arena, page->procedure->title.text);
    whole.name = named_card(composing->arena, page->number, whole.title);
    whole.page = "";
    whole.section = whole_part(PLAN_PART_WHOLE);
    whole.last_section = true;
    return whole;
}

void safety_slots_add(struct composing *composing, const struct procedure *procedure)
{
    size_t first = composing->slot_count;
    bool much = rows_in(composing, PLAN_PART_WHOLE) > PLAN_ROWS_MOST ||
                composing->limits.plan_pages[PLAN_PART_WHOLE] > 1;
    if (much && rows_in(composing, PLAN_PART_DECK) > 0 &&
        rows_in(composing, PLAN_PART_BELOW) > 0) {
        part_add(composing, procedure, PLAN_PART_DECK);
        part_add(composing, procedure, PLAN_PART_BELOW);
    } else {
        part_add(composing, procedure, PLAN_PART_WHOLE);
    }
    composing->slots[composing->slot_count - 1].last_section = true;
    pages_name(composing, first);
}

static const struct phrase *page_number(struct composing *composing, const struct slot *slot)
{
    return phrase_verbatim(composing->arena,
                           text_format(composing->arena, "%s%s", slot->number, slot->page));
}

/* "Gear on deck. Below: card 1B."; of more than two pages the first and the last. */
static const struct phrase *pages_signs(struct composing *composing, const struct sheet *sheet)
{
    enum plan_part part = composing->slot->section.part;
    const struct slot *first = slot_of(composing, sheet->procedure_key), *last = first;
    if (text_empty(sheet->page))
        return signs_joined(composing);
    while (last + 1 < composing->slots + composing->slot_count &&
           last[1].procedure == first->procedure)
        last++;
    if (last - first == 1 && part != PLAN_PART_WHOLE) {
        bool deck = part == PLAN_PART_DECK;
        return phrase_word(composing->arena,
                           deck ? WORD_SAFETY_SIGNS_DECK : WORD_SAFETY_SIGNS_BELOW, "number",
                           page_number(composing, deck ? last : first), NULL);
    }
    static const enum word many[] = {
        [PLAN_PART_WHOLE] = WORD_SAFETY_SIGNS_MANY, [PLAN_PART_DECK] = WORD_SAFETY_SIGNS_DECK_MANY,
        [PLAN_PART_BELOW] = WORD_SAFETY_SIGNS_BELOW_MANY};
    return phrase_word(composing->arena, many[part], "first", page_number(composing, first),
                       "last", page_number(composing, last), NULL);
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
    plan->here_word = phrase_said(composing, word_alone(composing, WORD_HERE));
    plan->here_words = phrase_said(composing, word_alone(composing, here_words[plan->facing]));
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

static void markers_all(struct composing *composing)
{
    const struct boat *boat = composing->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        struct marker marker = marker_of(boat, &boat->equipment[i]);
        if (in_section(&marker, &composing->slot->section))
            marker_add(composing, &boat->equipment[i]);
    }
}

static void places_make(struct composing *composing, struct sheet *sheet)
{
    const struct plan_section *section = &composing->slot->section;
    struct places_facts *plan = arena_alloc(composing->arena, sizeof *plan);
    *plan = (struct places_facts){.part = section->part, .number = section->number,
                                  .of = section->of};
    plan->places = plan_places(composing, section, &plan->count);
    here_make(composing, plan);
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
    markers_all(composing);
    legend_make(composing, sheet);
    if (composing->slot->last_section)
        text_add_block(composing, sheet, BLOCK_SOURCES,
                       (struct card_text){phrase_said(composing, plan_sources(composing, others)),
                                          sheet->origin});
    signs_make(composing, sheet, NULL, pages_signs(composing, sheet));
    text_add_block(composing, sheet, BLOCK_CALL_LINE,
                   (struct card_text){
                       phrase_said(composing, word_alone(composing, WORD_SAFETY_CALL_LINE)),
                       sheet->origin});
    warnings_make(composing, sheet);
}
