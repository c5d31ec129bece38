/* safety_plan.c - the first card of a set: all gear of the record where it is,
 * what the signs mean, where the cards hang and what the set stands on (room:
 * compose). Never held back: what is not recorded is not on it. */
#include "compose.h"

bool is_safety_plan(const struct procedure *procedure)
{
    return text_equal(procedure->kind.text, "safety_plan");
}

/* ---- one plan or two ---- */

static void part_add(struct composing *composing, const struct procedure *procedure,
                     enum plan_part part, enum word word)
{
    struct slot *slot = slot_add(composing, procedure, NULL);
    slot->part = part;
    slot->title = text_format(composing->arena, "%s, %s", slot->title,
                              words_get(composing->in->words, word));
    slot->last_part = part == PLAN_PART_BELOW;
    if (part == PLAN_PART_BELOW)
        slot->key = text_format(composing->arena, "%s_2", slot->key);
}

void safety_slots_add(struct composing *composing, const struct procedure *procedure)
{
    size_t whole, deck, below;
    const struct plan_place *places = plan_places(composing, PLAN_PART_WHOLE, &whole);
    plan_places(composing, PLAN_PART_DECK, &deck);
    plan_places(composing, PLAN_PART_BELOW, &below);
    if (plan_rows_count(places, whole) <= PLAN_ROWS_MOST || deck == 0 || below == 0) {
        slot_add(composing, procedure, NULL)->last_part = true;
        return;
    }
    part_add(composing, procedure, PLAN_PART_DECK, WORD_SAFETY_DECK);
    part_add(composing, procedure, PLAN_PART_BELOW, WORD_SAFETY_BELOW);
}

/* "Gear on deck. Below: card 2." */
static const char *signs_words(struct composing *composing, const struct card *card)
{
    enum plan_part part = composing->slot->part;
    if (part == PLAN_PART_WHOLE)
        return card->signs;
    bool deck = part == PLAN_PART_DECK;
    const char *other = text_format(composing->arena, "%d", card->number + (deck ? 1 : -1));
    return words_fill(composing->in->words, composing->arena,
                      deck ? WORD_SAFETY_SIGNS_DECK : WORD_SAFETY_SIGNS_BELOW, "number", other,
                      NULL);
}

/* ---- where the cards hang ---- */

static const struct zone *zone_hung_in(const struct boat *boat)
{
    const struct zone *zone = zone_find(boat->facts.mounted_zone.text);
    bool between_hulls = zone != NULL && boat->catamaran && zone->in_hulls &&
                         zone->side == SIDE_NONE;
    bool of_catamarans = zone != NULL && !boat->catamaran && zone->catamaran_only;
    return between_hulls || of_catamarans ? NULL : zone;
}

static enum facing facing_of(const char *word)
{
    static const char *const words[] = {
        [FACING_BOW] = "bow", [FACING_STARBOARD] = "starboard", [FACING_STERN] = "stern",
        [FACING_PORT] = "port"};
    for (int facing = FACING_BOW; facing <= FACING_PORT; facing++)
        if (text_equal(words[facing], word))
            return (enum facing)facing;
    return FACING_BOW;
}

static void here_make(struct composing *composing, struct safety_plan *plan)
{
    static const enum word facing_words[] = {
        [FACING_BOW] = WORD_HERE_BOW, [FACING_STARBOARD] = WORD_HERE_STARBOARD,
        [FACING_STERN] = WORD_HERE_STERN, [FACING_PORT] = WORD_HERE_PORT};
    const struct boat *boat = composing->in->boat;
    const struct zone *zone = zone_hung_in(boat);
    if (zone == NULL || boat->facts.mounted_faces.text == NULL)
        return;
    struct equipment hung = {.place_zone = zone, .place_side = zone->side,
                             .place = boat->facts.mounted.node->place};
    plan->here_given = true;
    plan->here = marker_of(boat, &hung);
    plan->facing = facing_of(boat->facts.mounted_faces.text);
    plan->here_word = words_get(composing->in->words, WORD_HERE);
    plan->here_words = words_get(composing->in->words, facing_words[plan->facing]);
}

void safety_plan_notes(const struct boat *boat, struct problems *problems)
{
    if (boat->facts.mounted_zone.text == NULL || boat->facts.mounted_faces.text == NULL)
        problem_add(problems, SEVERITY_NOTE, boat->place,
                    "add to boat: the place where her cards hang, and which way one looks who "
                    "reads them there:\n  mounted: {zone: , faces: (bow or stern or port or "
                    "starboard)}",
                    "where the cards hang is not recorded: the safety plan shows no YOU ARE HERE");
    else if (zone_hung_in(boat) == NULL)
        problem_add(problems, SEVERITY_NOTE, boat->facts.mounted_zone.place,
                    "name a zone that this kind of boat has, and one of one hull",
                    "mounted: no single place on this boat is called %s: the safety plan shows no "
                    "YOU ARE HERE", boat->facts.mounted_zone.text);
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

/* Only warnings carry a tag on the card, and only those printed on this boat's. */
static void card_sources_add(struct composing *composing, struct source_list *list,
                             const struct warning *warnings, size_t count,
                             const struct card_warning *printed, size_t printed_count)
{
    for (size_t i = 0; i < count; i++)
        for (size_t j = 0; j < printed_count; j++)
            if (printed[j].text == warnings[i].say.text)
                source_add(composing, list, basis_authority(composing, &warnings[i].basis));
}

static void source_word(struct text_builder *out, const struct authority *authority,
                        bool tag_told)
{
    if (tag_told)
        text_add_format(out, "; %s", authority->id.text);
    else
        text_add_format(out, "%s**%s** %s, %s", out->length == 0 ? "" : ". ",
                        authority->tag.text, authority->issuer.text, authority->id.text);
}

/* Sources of one tag stand together. */
static const char *sources_joined(struct composing *composing, const struct source_list *list)
{
    struct text_builder out = text_builder_in(composing->arena);
    bool *told = arena_array(composing->arena, list->count, sizeof *told);
    for (size_t i = 0; i < list->count; i++) {
        if (told[i])
            continue;
        for (size_t j = i; j < list->count; j++) {
            if (!text_equal(list->rows[i]->tag.text, list->rows[j]->tag.text))
                continue;
            source_word(&out, list->rows[j], told[i]);
            told[i] = told[j] = true;
        }
    }
    return out.length == 0 ? ""
                           : text_format(composing->arena, "**%s:** %s.",
                                         words_get(composing->in->words, WORD_SOURCES), out.at);
}

static const char *sources_words(struct composing *composing, const struct card *const *others,
                                 size_t count)
{
    struct source_list list = {0};
    for (size_t i = 0; i < count; i++) {
        const struct procedure *procedure = others[i]->procedure;
        if (procedure == NULL)
            continue;
        card_sources_add(composing, &list, procedure->nevers, procedure->never_count,
                         others[i]->nevers, others[i]->never_count);
        card_sources_add(composing, &list, procedure->cautions, procedure->caution_count,
                         others[i]->cautions, others[i]->caution_count);
    }
    return sources_joined(composing, &list);
}

/* ---- the card ---- */

static void markers_all(struct composing *composing, enum plan_part part)
{
    const struct boat *boat = composing->in->boat;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        bool below = marker_of(boat, &boat->equipment[i]).level == LEVEL_BELOW;
        if (part == PLAN_PART_WHOLE || below == (part == PLAN_PART_BELOW))
            marker_add(composing, &boat->equipment[i]);
    }
}

void safety_plan_make(struct composing *composing, struct card *card,
                      const struct card *const *others, size_t other_count)
{
    static const enum word legend[3] = {WORD_LEGEND_FIRE, WORD_LEGEND_RESCUE,
                                        WORD_LEGEND_CONTROL};
    struct safety_plan *plan = arena_alloc(composing->arena, sizeof *plan);
    *plan = (struct safety_plan){.part = composing->slot->part, .sources = ""};
    plan->places = plan_places(composing, plan->part, &plan->place_count);
    markers_all(composing, plan->part);
    here_make(composing, plan);
    for (size_t i = 0; i < 3; i++)
        plan->legend[i] = words_get(composing->in->words, legend[i]);
    if (composing->slot->last_part)
        plan->sources = sources_words(composing, others, other_count);
    card->signs = signs_words(composing, card);
    card->call_line = words_get(composing->in->words, WORD_SAFETY_CALL_LINE);
    card->safety = plan;
}
