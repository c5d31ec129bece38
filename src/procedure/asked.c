/* asked.c - which items a set of procedures asks a boat's record for, in the order
 * of a walk through the boat (room: procedure). Never looks at a boat. */
#include "asked.h"

#include <stdlib.h>

#include "promise.h"

/* Is the item named, and which fields are asked of it? */
struct naming {
    bool named;
    bool facts[GEAR_FIELD_COUNT];
};

struct asking {
    struct naming *items;             /* one a kind of gear */
    enum hull hull;                   /* none: of both kinds of boats */
    struct arena *arena;
};

/* A zone that the type does not have gives way to the one of its family it has. */
static const struct zone *zone_of_hull(const struct zone *usual, enum hull hull)
{
    if (hull != HULL_CATAMARAN)
        return usual;
    for (enum zone_key key = ZONE_NONE + 1; key < ZONE_COUNT; key++)
        if (zone_of(key)->catamaran_only && zone_of(key)->family == usual->id)
            return zone_of(key);
    return usual;
}

/* Gear whose usual place only boats of another type have is not asked for, whoever names it. */
static void item_note(struct asking *asking, enum item_key item)
{
    promise(item > ITEM_NONE && item < ITEM_COUNT);
    const struct zone *usual = zone_of_hull(zone_of(item_kind_of(item)->usual_zone), asking->hull);
    if (hull_has_zone(asking->hull, usual))
        asking->items[item].named = true;
}

static void fact_note(struct asking *asking, enum item_key item, enum gear_field field)
{
    item_note(asking, item);
    asking->items[item].facts[field] = true;
}

static void list_note(struct asking *asking, const struct item_uses *items)
{
    for (size_t i = 0; i < items->count; i++)
        item_note(asking, items->items[i].value);
}

/* ---- conditions ---- */

/* The hull that a condition of the boat asks for, if it asks for one. */
static enum hull hull_asked(const struct condition *condition)
{
    if (condition->kind != CONDITION_BOAT)
        return HULL_NONE;
    return condition->trait == TRAIT_MONOHULL    ? HULL_MONOHULL
           : condition->trait == TRAIT_CATAMARAN ? HULL_CATAMARAN
           : condition->trait == TRAIT_TRIMARAN  ? HULL_TRIMARAN
                                                 : HULL_NONE;
}

/* Can the condition hold on no boat of the type that is asked for? */
static bool ruled_out(const struct asking *asking, const struct condition *condition)
{
    size_t out = 0, same = 0;
    if (condition == NULL || asking->hull == HULL_NONE)
        return false;
    if (condition->kind == CONDITION_BOAT)
        return hull_asked(condition) != HULL_NONE && hull_asked(condition) != asking->hull;
    for (size_t i = 0; i < condition->child_count; i++) {
        const struct condition *child = condition->children[i];
        out += ruled_out(asking, child) ? 1 : 0;
        same += hull_asked(child) == asking->hull ? 1 : 0;
    }
    if (condition->kind == CONDITION_ALL || condition->kind == CONDITION_SURELY)
        return out > 0;
    if (condition->kind == CONDITION_ANY)
        return out > 0 && out == condition->child_count;
    return condition->kind == CONDITION_NONE && same > 0;
}

static void condition_note(struct asking *asking, const struct condition *condition)
{
    if (condition == NULL || ruled_out(asking, condition))
        return;
    switch (condition->kind) {
    case CONDITION_FITTED:
    case CONDITION_NOT_FITTED:
        item_note(asking, condition->item);
        break;
    case CONDITION_INSIDE:
        fact_note(asking, condition->item, GEAR_inside);
        break;
    case CONDITION_IS:
        fact_note(asking, condition->item, condition->field);
        break;
    case CONDITION_CUTS:
        fact_note(asking, condition->item, GEAR_cuts);
        item_note(asking, condition->other);
        break;
    case CONDITION_REACH:
    case CONDITION_BEYOND:
        fact_note(asking, condition->item, GEAR_from_cockpit);
        break;
    case CONDITION_BOAT:
    case CONDITION_BREATHS:
    case CONDITION_STING:
    case CONDITION_TIDE:
        break;
    case CONDITION_SURELY:
    case CONDITION_ALL:
    case CONDITION_ANY:
    case CONDITION_NONE:
        for (size_t i = 0; i < condition->child_count; i++)
            condition_note(asking, condition->children[i]);
        break;
    }
}

/* ---- procedures ---- */

static void case_note(struct asking *asking, const struct step_case *step_case)
{
    if (ruled_out(asking, step_case->when))
        return;
    condition_note(asking, step_case->when);
    list_note(asking, &step_case->uses);
    list_note(asking, &step_case->also);
}

static void step_note(struct asking *asking, const struct procedure_step *step)
{
    if (ruled_out(asking, step->when))
        return;
    condition_note(asking, step->when);
    list_note(asking, &step->uses);
    list_note(asking, &step->also);
    for (size_t i = 0; i < step->case_count; i++)
        case_note(asking, &step->cases[i]);
}

static void procedure_note(struct asking *asking, const struct procedure *procedure)
{
    if (ruled_out(asking, procedure->when))
        return;
    condition_note(asking, procedure->when);
    for (size_t i = 0; i < procedure->step_count; i++)
        step_note(asking, &procedure->steps[i]);
    for (size_t i = 0; i < procedure->call_count; i++)
        condition_note(asking, procedure->calls[i].when);
    for (size_t i = 0; i < procedure->never_count; i++)
        condition_note(asking, procedure->nevers[i].when);
    for (size_t i = 0; i < procedure->caution_count; i++)
        condition_note(asking, procedure->cautions[i].when);
}

/* ---- the walk ---- */

/* What every entry has anyway. */
static bool is_place(enum gear_field field)
{
    return field == GEAR_item || field == GEAR_tag || field == GEAR_zone || field == GEAR_side ||
           field == GEAR_spot || field == GEAR_how;
}

/* What procedures ask of it, and what else there is a use for. A boat with two engines must
 * say of each piece which one it serves. */
static bool fact_asked(const struct asking *asking, enum item_key item, enum gear_field field)
{
    if (field == GEAR_serves)
        return item_kind_of(item)->by_engine && asking->hull == HULL_CATAMARAN;
    return !is_place(field) && (asking->items[item].facts[field] ||
                                item_field(item, field) >= BELONGS_ASKED);
}

static struct asked_item asked_make(const struct asking *asking, enum item_key item)
{
    const struct item_kind *kind = item_kind_of(item);
    enum gear_field *facts = arena_array(asking->arena, GEAR_FIELD_COUNT, sizeof *facts);
    struct asked_item asked = {
        .kind = kind, .facts = facts,
        .usual = zone_of_hull(zone_of(kind->usual_zone), asking->hull)};
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (fact_asked(asking, item, field))
            facts[asked.fact_count++] = field;
    return asked;
}

static int middle_of(const struct zone *zone)
{
    return zone->from + zone->to;
}

/* 0 on deck, 1 below from the companionway forward, 2 below and aft of it. */
static int leg_of(const struct zone *zone)
{
    if (zone->level != LEVEL_BELOW)
        return 0;
    return middle_of(zone) <= middle_of(zone_of(ZONE_companionway)) ? 1 : 2;
}

static int by_walk(const void *a, const void *b)
{
    const struct asked_item *first = a, *second = b;
    int leg = leg_of(first->usual), along = middle_of(second->usual) - middle_of(first->usual);
    if (leg != leg_of(second->usual))
        return leg - leg_of(second->usual);
    if (along != 0)
        return leg == 2 ? -along : along;
    if (first->usual != second->usual)
        return first->usual < second->usual ? -1 : 1;
    return (int)first->kind->item - (int)second->kind->item;
}

static struct asking procedures_ask(const struct procedure *const *procedures, size_t count,
                                    enum hull hull, struct arena *arena)
{
    struct asking asking = {.hull = hull, .arena = arena,
                            .items = arena_array(arena, ITEM_COUNT, sizeof *asking.items)};
    for (size_t i = 0; i < count; i++)
        procedure_note(&asking, procedures[i]);
    return asking;
}

/* Those that are named, in the order of a walk. */
static struct asked_list named_list(const struct asking *asking)
{
    struct asked_item *rows = arena_array(asking->arena, ITEM_COUNT, sizeof *rows);
    struct asked_list list = {.rows = rows};
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        if (asking->items[item].named)
            rows[list.count++] = asked_make(asking, item);
    if (list.count > 0)
        qsort(rows, list.count, sizeof *rows, by_walk);
    return list;
}

struct asked_list asked_items(const struct procedure *const *procedures, size_t count,
                              enum hull hull, struct arena *arena)
{
    struct asking asking = procedures_ask(procedures, count, hull, arena);
    return named_list(&asking);
}

struct asked_list items_offered(const struct procedure *const *procedures, size_t count,
                                enum hull hull, struct arena *arena)
{
    struct asking asking = procedures_ask(procedures, count, hull, arena);
    for (enum item_key item = ITEM_NONE + 1; item < ITEM_COUNT; item++)
        item_note(&asking, item);
    return named_list(&asking);
}
