/* rows.c - the rows under a step: which gear, by the places where it is worked (room: compose).
 * Gear of one zone, side and level is one row, where its first piece stands in the order of the
 * step. Never leaves a piece out for want of a row. */
#include "compose_room.h"

/* A piece of gear, or several alike, while the rows are made. */
struct piece {
    const struct equipment *gear;     /* the first of them; NULL: it is not recorded */
    const struct phrase *spot, *end, *condition;
    const char **tags;
    size_t tag_count;
    const struct item_kind *kind;
    struct place origin;
};

/* Gear of one place, while it is gathered. */
struct spot_group {
    const struct phrase *place;
    struct marker marker;             /* where: zone, side and level tell places apart */
    struct piece *pieces;
    size_t count, room;
};

/* The rows of a step while they are made. */
struct row_list {
    struct composing *composing;
    const struct step_gear *wants;
    enum end_state state;             /* what the step wants of the item whose rows are made */
    struct spot_group *groups;
    size_t count, room;
    bool below;                       /* one of them is not reached from deck */
};

/* ---- pieces ---- */

/* May b share an item with a: the same kind of thing, handled the same way? A count of its own
 * keeps a piece to itself. */
static bool is_alike(const struct piece *a, const struct piece *b)
{
    const struct equipment *one = a->gear, *other = b->gear;
    return one->item.value == other->item.value && !one->count.given && !other->count.given &&
           text_equal(one->name.text, other->name.text) && one->kg.milli == other->kg.milli &&
           one->persons.milli == other->persons.milli &&
           one->discharge_s.milli == other->discharge_s.milli &&
           phrase_equal(a->spot, b->spot) && phrase_equal(a->end, b->end) &&
           phrase_equal(a->condition, b->condition);
}

static void tag_add(struct composing *composing, struct piece *piece, const char *tag)
{
    const char **tags = arena_array(composing->arena, piece->tag_count + 1, sizeof *tags);
    for (size_t i = 0; i < piece->tag_count; i++)
        tags[i] = piece->tags[i];
    tags[piece->tag_count++] = tag == NULL ? "" : tag;
    piece->tags = tags;
}

#define TAGS_OF_AN_ITEM_MOST 3

static void piece_gather(struct composing *composing, struct spot_group *group, struct piece piece)
{
    struct piece *before = group->count == 0 ? NULL : &group->pieces[group->count - 1];
    if (before != NULL && before->tag_count < TAGS_OF_AN_ITEM_MOST && is_alike(before, &piece)) {
        tag_add(composing, before, piece.gear->tag.text);
        return;
    }
    group->pieces = arena_grow(composing->arena, group->pieces, group->count, &group->room,
                               sizeof *group->pieces);
    group->pieces[group->count++] = piece;
}

/* ---- places ---- */

static struct spot_group *group_begin(struct row_list *list, const struct phrase *place)
{
    list->groups = arena_grow(list->composing->arena, list->groups, list->count, &list->room,
                              sizeof *list->groups);
    list->groups[list->count] = (struct spot_group){.place = place};
    return &list->groups[list->count++];
}

static bool is_at(const struct spot_group *group, const struct marker *marker)
{
    return group->marker.zone == marker->zone && group->marker.side == marker->side &&
           group->marker.level == marker->level && group->pieces[0].gear != NULL;
}

static struct spot_group *group_at(struct row_list *list, const struct equipment *gear)
{
    struct marker marker = worked_marker_of(list->composing->in->boat, gear);
    for (size_t i = 0; i < list->count; i++)
        if (is_at(&list->groups[i], &marker))
            return &list->groups[i];
    struct spot_group *group = group_begin(list, row_place_phrase(list->composing, gear));
    group->marker = marker;
    return group;
}

/* ---- which gear ---- */

/* Once the engine is stopped nobody starts it again for a control that runs with it alone. */
static void stopped_tell(struct composing *composing, const struct equipment *gear)
{
    for (size_t i = 0; composing->engine_stopped && i < gear->only_when.count; i++)
        if (gear->only_when.items[i].value == ONLY_ENGINE_RUNNING)
            problem_add(composing->problems, SEVERITY_NOTE, gear->only_when.items[i].place,
                        "have it made to work without the engine, or find what else does it",
                        "%s works only with the engine running: %s stops that before",
                        gear->tag.text == NULL ? gear->kind->key : gear->tag.text,
                        composing->slot->name);
}

/* People are where it lies: nobody is sent there. */
static bool is_way_out(const struct equipment *gear)
{
    return gear->item.value == ITEM_hatch;
}

static void gear_add(struct row_list *list, const struct equipment *gear)
{
    struct composing *composing = list->composing;
    struct piece piece = {.gear = gear, .kind = gear->kind, .origin = gear->place,
                          .spot = row_spot_phrase(composing, gear),
                          .end = row_end_phrase(composing, gear, list->state),
                          .condition = row_condition_phrase(composing, gear, list->state)};
    stopped_tell(composing, gear);
    tag_add(composing, &piece, gear->tag.text);
    piece_gather(composing, group_at(list, gear), piece);
    list->below = list->below || (reach_here(composing, gear) > REACH_DECK &&
                                  !is_way_out(gear) && !gear_is_inside_here(composing, gear));
    marker_add(composing, gear);
}

/* In a draft, what is not recorded is seen on the card, not left out. */
static void not_recorded_add(struct row_list *list, enum item_key item, struct place origin)
{
    struct composing *composing = list->composing;
    piece_gather(composing, group_begin(list, word_alone(composing, WORD_NOT_RECORDED)),
              (struct piece){.kind = item_kind_of(item), .origin = origin});
}

/* The step cannot do without the item, and this boat has none that will do. */
static void piece_lacking(struct composing *composing, const struct item_use *item)
{
    composing->held = true;
    problem_add(composing->problems, SEVERITY_HELD, item->place, "give the step a case without it",
                "%s: this step has no words for a boat without %s", composing->slot->name,
                item_word(item->value));
}

/* Gear that lies farther than the step lets people go is not offered. A control inside the
 * burning space is shown all the same: its row says to leave it; so is the way out of those who
 * are where it lies. */
static bool offered(const struct row_list *list, const struct equipment *gear)
{
    return gear_within(list->composing, gear, list->wants->within) || is_way_out(gear) ||
           (gear_is_inside_here(list->composing, gear) && gear->kind->class == ITEM_CONTROL);
}

/* Gear that only helps, of which nothing is recorded: the card is printed without its row. A
 * draft shows what is missing. Of gear that each engine has, the other engine's tells
 * nothing, so it is never of this kind. */
static bool goes_without(struct composing *composing, enum item_key item)
{
    return !composing->in->draft && !item_kind_of(item)->by_engine &&
           !procedure_needs(composing->slot->procedure, item) &&
           fitted_judge(composing, item, NOTE_NOTHING) == TRUTH_UNKNOWN;
}

/* Gear without a recorded side of the question holds the card; gear declared
 * not fitted must have its own case when the step cannot do without it. */
enum need { NEEDED, HELPS };

static void item_rows_add(struct row_list *list, const struct item_use *item, enum need need)
{
    struct composing *composing = list->composing;
    struct condition fitted = {.kind = CONDITION_FITTED, .item = item->value, .place = item->place};
    enum truth truth = condition_judge(composing, &fitted);
    size_t index = 0;
    bool shown = false;
    list->state = item->state;
    if (truth == TRUTH_UNKNOWN)
        not_recorded_add(list, item->value, item->place);
    if (truth == TRUTH_NO && need == NEEDED)
        piece_lacking(composing, item);
    if (truth != TRUTH_YES)
        return;
    for (const struct equipment *gear; (gear = gear_next(composing, item->value, &index)) != NULL;)
        if (offered(list, gear) &&
            (need == HELPS || condition_admits(composing, list->wants->when, gear))) {
            gear_add(list, gear);
            shown = true;
        }
    if (need == NEEDED && !shown)
        piece_lacking(composing, item);
}

/* What keeps a condition from being decided, a row an item. */
static void undecided_add(struct row_list *list, const struct condition *condition)
{
    if (condition == NULL ||
        condition_judge(list->composing, condition) != TRUTH_UNKNOWN)
        return;
    for (size_t i = 0; i < condition->child_count; i++)
        undecided_add(list, condition->children[i]);
    if (condition->item == ITEM_NONE)
        return;
    for (size_t i = 0; i < list->count; i++)
        if (list->groups[i].pieces[0].gear == NULL &&
            list->groups[i].pieces[0].kind->item == condition->item)
            return;
    not_recorded_add(list, condition->item, condition->place);
}

/* ---- what the rows say ---- */

/* The spot of all its pieces; NULL: they lie at several, or none is recorded. */
static const struct phrase *common_spot(const struct spot_group *group)
{
    for (size_t i = 1; i < group->count; i++)
        if (!phrase_equal(group->pieces[i].spot, group->pieces[0].spot))
            return NULL;
    return group->pieces[0].spot;
}

/* "Cockpit, PORT," before a spot. */
static const struct phrase *before_spot(const struct composing *composing, enum word word,
                                        const char *part, const struct phrase *said,
                                        const struct phrase *spot)
{
    return spot == NULL ? said : phrase_word(composing->arena, word, part, said, NULL);
}

static const struct phrase *piece_name(struct composing *composing, const struct piece *piece,
                                       enum capacity_told told)
{
    return piece->gear == NULL ? phrase_item(composing->arena, piece->kind->item)
                               : gear_name(composing, piece->gear, piece->tag_count, told);
}

/* Where the page has no room, an extinguisher has its weight instead of its seconds. */
static struct row_item item_said(struct composing *composing, const struct piece *piece,
                                 const struct phrase *spot)
{
    struct row_item item = {.kind = piece->kind, .tags = piece->tags,
                            .tag_count = piece->tag_count, .origin = piece->origin,
                            .spot = phrase_said(composing, spot),
                            .end = phrase_said(composing, piece->end)};
    const char *names[] = {[CAPACITY_SECONDS] = NULL, [CAPACITY_WEIGHT] = NULL};
    for (enum capacity_told told = CAPACITY_SECONDS; told <= CAPACITY_WEIGHT; told++)
        names[told] = phrase_said(composing,
                                  before_spot(composing, WORD_ROW_NAME, "name",
                                              piece_name(composing, piece, told), spot));
    item.name = names[CAPACITY_SECONDS];
    if (!text_equal(item.name, names[CAPACITY_WEIGHT])) {
        item.lesser = names[CAPACITY_WEIGHT];
        item.yields = YIELDS_SECONDS;
    }
    return item;
}

static struct card_row row_said(struct composing *composing, const struct spot_group *group)
{
    const struct phrase *common = common_spot(group);
    struct row_item *items = arena_array(composing->arena, group->count, sizeof *items);
    for (size_t i = 0; i < group->count; i++)
        items[i] = item_said(composing, &group->pieces[i],
                             common != NULL ? NULL : group->pieces[i].spot);
    return (struct card_row){
        .place = phrase_said(composing, before_spot(composing, WORD_ROW_PLACE, "place",
                                                    group->place, common)),
        .spot = phrase_said(composing, common), .items = items, .item_count = group->count,
        .origin = group->pieces[0].origin};
}

/* Its tags, or what it is called where it has none. */
static const struct phrase *piece_told(struct composing *composing, const struct piece *piece)
{
    const struct phrase *told = NULL;
    for (size_t i = 0; i < piece->tag_count; i++)
        told = phrase_joined(composing->arena, WORD_JOIN_SPACE, told,
                             text_empty(piece->tags[i])
                                 ? piece_name(composing, piece, CAPACITY_WEIGHT)
                                 : phrase_verbatim(composing->arena, piece->tags[i]), NULL);
    return told;
}

static size_t pieces_counted(const struct row_list *list)
{
    size_t count = 0;
    for (size_t i = 0; i < list->count; i++)
        count += list->groups[i].count;
    return count;
}

static void conditions_make(struct row_list *list, struct card_step *step)
{
    struct composing *composing = list->composing;
    struct card_text *lines = arena_array(composing->arena, pieces_counted(list), sizeof *lines);
    for (size_t i = 0; i < list->count; i++)
        for (size_t k = 0; k < list->groups[i].count; k++) {
            const struct piece *piece = &list->groups[i].pieces[k];
            if (piece->condition == NULL)
                continue;
            const struct phrase *line = phrase_word(
                composing->arena, WORD_ROW_CONDITION, "gear", piece_told(composing, piece),
                "conditions", piece->condition, NULL);
            lines[step->condition_count++] =
                (struct card_text){phrase_said(composing, line), piece->origin};
        }
    step->conditions = lines;
}

static void rows_say(struct row_list *list, struct card_step *step)
{
    struct composing *composing = list->composing;
    struct card_row *rows = arena_array(composing->arena, list->count, sizeof *rows);
    for (size_t i = 0; i < list->count; i++)
        rows[i] = row_said(composing, &list->groups[i]);
    step->rows = rows;
    step->row_count = list->count;
    conditions_make(list, step);
}

/* ---- the step ---- */

static bool stops_an_engine(const struct row_list *list)
{
    for (size_t i = 0; i < list->count; i++)
        for (size_t k = 0; k < list->groups[i].count; k++)
            if (list->groups[i].pieces[k].kind->item == ITEM_engine_stop)
                return true;
    return false;
}

bool rows_make(struct composing *composing, const struct step_gear *wants, struct card_step *step)
{
    struct row_list list = {.composing = composing, .wants = wants};
    undecided_add(&list, wants->undecided);
    for (size_t i = 0; i < wants->uses->count; i++)
        item_rows_add(&list, &wants->uses->items[i], NEEDED);
    for (size_t i = 0; i < wants->also->count; i++) {
        const struct item_use *item = &wants->also->items[i];
        if (goes_without(composing, item->value))
            missing_help_note(composing, item->value);
        else
            item_rows_add(&list, item, HELPS);
    }
    composing->engine_stopped = composing->engine_stopped || stops_an_engine(&list);
    rows_say(&list, step);
    return list.below;
}
