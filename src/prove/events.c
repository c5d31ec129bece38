/* events.c - what a card has people do, in its order: what its steps say, what working their
 * gear makes and how far one goes for it, its call, and the cards it leads to (room: prove). */
#include "prove_room.h"

void event_add(struct visit *visit, struct event event)
{
    struct events *events = &visit->events;
    events->at = arena_grow(visit->walk->arena, events->at, events->count, &events->room,
                            sizeof *events->at);
    events->at[events->count++] = event;
}

/* ---- gear ---- */

static const struct item_use *use_in(const struct item_uses *own, const struct item_uses *of_step,
                                     enum item_key item)
{
    return item_use_find(own != NULL && own->given ? own : of_step, item);
}

enum end_state state_wanted(const struct card_step *step, enum item_key item)
{
    const struct step_case *taken = step->taken;
    const struct item_use *use = use_in(taken == NULL ? NULL : &taken->uses, &step->step->uses,
                                        item);
    if (use == NULL)
        use = use_in(taken == NULL ? NULL : &taken->also, &step->step->also, item);
    return use == NULL ? STATE_COUNT : use->state;
}

const struct equipment *row_gear(const struct boat *boat, const struct row_item *item,
                                 size_t index)
{
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->item.value == item->kind->item && !text_empty(item->tags[index]) &&
            text_equal(gear->tag.text, item->tags[index]))
            return gear;
    }
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (boat->equipment[i].kind == item->kind &&
            boat->equipment[i].place.source == item->origin.source &&
            boat->equipment[i].place.line == item->origin.line &&
            boat->equipment[i].place.column == item->origin.column)
            return &boat->equipment[i];
    return NULL;
}

/* Nobody enters what lies open on deck, such as a transom with an outboard. */
bool gear_in_danger(const struct visit *visit, const struct equipment *gear)
{
    return visit->space != ZONE_NONE &&
           reach_here(visit->composing, gear) > REACH_OPEN_DECK &&
           gear_inside(visit->composing, gear, &visit->space, 1) == TRUTH_YES;
}

/* Its row says to leave it. */
static bool is_left(const struct visit *visit, const struct equipment *gear)
{
    enum zone_key space = visit->sheet->space;
    return space != ZONE_NONE && gear->kind->class == ITEM_CONTROL &&
           gear_inside(visit->composing, gear, &space, 1) == TRUTH_YES;
}

struct gear_events {
    struct visit *visit;
    struct event event;
};

static void act_add(void *context, enum act act)
{
    struct gear_events *adding = context;
    adding->event.act = act;
    event_add(adding->visit, adding->event);
}

/* Who leaves by it is below already: its line says so. */
static bool opens_way_out(const struct event *event)
{
    enum item_key item = event->gear->item.value;
    return (event->guards & FLAG(GUARD_WAY_OUT)) != 0 &&
           (item == ITEM_hatch || item == ITEM_escape_hatch);
}

static void reach_add(struct gear_events *adding)
{
    const struct equipment *gear = adding->event.gear;
    if (opens_way_out(&adding->event))
        return;
    enum reach reach = reach_here(adding->visit->composing, gear);
    if (reach >= REACH_COMPANIONWAY)
        act_add(adding, ACT_REACH_IN);
    if (reach >= REACH_BELOW)
        act_add(adding, ACT_GO_BELOW);
    if (gear_in_danger(adding->visit, gear))
        act_add(adding, ACT_ENTER_SPACE);
    if (gear->reach_inverted.answer != ANSWER_YES)
        act_add(adding, ACT_REACH_HIDDEN);
}

static void gear_events_add(struct visit *visit, struct event event, enum end_state state)
{
    struct gear_events adding = {visit, event};
    if (is_left(visit, event.gear) || state == STATE_LEAVE)
        return;
    reach_add(&adding);
    item_acts(visit->sheet->boat, event.gear, state, act_add, &adding);
}

static void item_events(struct visit *visit, struct event event, const struct row_item *item)
{
    enum end_state state = state_wanted(event.step, item->kind->item);
    for (size_t i = 0; i < item->tag_count; i++) {
        event.gear = row_gear(visit->sheet->boat, item, i);
        if (event.gear == NULL)
            failure_add(visit, &event, NULL, "R14",
                        text_format(visit->walk->arena, "%s is not aboard", item->kind->key));
        else
            gear_events_add(visit, event, state);
    }
}

static void row_events(struct visit *visit, struct event event, const struct card_row *rows,
                       size_t count)
{
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < rows[i].item_count; k++)
            item_events(visit, event, &rows[i].items[k]);
}

/* ---- steps ---- */

static void told_acts(struct visit *visit, struct event event, const struct act_values *does)
{
    for (size_t i = 0; i < does->count; i++) {
        event.act = does->items[i].value;
        event_add(visit, event);
    }
}

static void step_events(struct visit *visit, const struct card_step *step, flags hazards)
{
    struct event event = {.step = step, .hazards = hazards, .guards = guards_printed(step)};
    told_acts(visit, event, &step->step->does);
    if (step->taken != NULL)
        told_acts(visit, event, &step->taken->does);
    row_events(visit, event, step->rows, step->row_count);
    for (size_t i = 0; i < step->table_count; i++)
        row_events(visit, event, step->table[i].rows, step->table[i].row_count);
    if (step->taken == NULL && step->step->case_count > 0)
        failure_add(visit, &event, NULL, "R18", "no case of the step is for this boat");
}

/* ---- where it leads ---- */

static void way_add(struct visit *visit, struct way_on way)
{
    visit->ways = arena_grow(visit->walk->arena, visit->ways, visit->way_count,
                             &visit->way_room, sizeof *visit->ways);
    visit->ways[visit->way_count++] = way;
}

static bool step_names(const struct card_step *step, const char *card)
{
    const struct list_value *lethal = step->taken == NULL ? &step->step->lethal
                                                          : &step->taken->lethal;
    bool own = step->taken != NULL && step->taken->act.text != NULL;
    bool named = text_names(own ? &step->taken->act : &step->step->act, card);
    for (size_t i = 0; i < lethal->count; i++)
        named = named || text_names(&lethal->items[i], card);
    return named;
}

/* Cards that the words of the step name. */
static void ways_of_words(struct visit *visit, const struct card_step *step, flags hazards)
{
    const struct procedure *procedure = visit->sheet->procedure;
    for (size_t i = 0; i < procedure->lead_count; i++)
        if (step_names(step, procedure->leads[i].text))
            way_add(visit, (struct way_on){.card = procedure->leads[i].text, .step = step,
                                           .place = procedure->leads[i].place,
                                           .hazards = hazards});
}

static flags hazards_flags(const struct hazard_values *list)
{
    flags found = 0;
    for (size_t i = 0; i < list->count; i++)
        found |= FLAG(list->items[i].value);
    return found;
}

static void way_of_exit(struct visit *visit, const struct card_step *step,
                        const struct said_list *list, flags hazards)
{
    const struct said *said = said_take(visit->composing, list);
    const struct procedure *procedure = visit->sheet->procedure;
    if (said != NULL && said->card.text != NULL)
        way_add(visit, (struct way_on){.card = said->card.text, .step = step,
                                       .place = said->card.place, .required = true,
                                       .hazards = hazards & ~hazards_flags(&said->over)});
    for (size_t i = 0; said != NULL && i < procedure->lead_count; i++)
        if (text_names(&said->say, procedure->leads[i].text))
            way_add(visit, (struct way_on){.card = procedure->leads[i].text, .step = step,
                                           .place = said->place, .hazards = hazards});
}

/* What the answer rules out for those who go on with the steps: one that leads to a card rules
 * it out there. */
static flags over_by(struct visit *visit, const struct said_list *list)
{
    const struct said *said = said_take(visit->composing, list);
    return said == NULL || said->card.text != NULL ? 0 : hazards_flags(&said->over);
}

/* ---- the card ---- */

static flags own_hazards(const struct visit *visit)
{
    const struct procedure *procedure = visit->sheet->procedure;
    flags found = hazards_flags(&procedure->hazards);
    for (size_t i = 0; i < procedure->hazard_case_count; i++)
        if (condition_truth(visit->composing, procedure->hazard_cases[i].when) != TRUTH_NO)
            found |= hazards_flags(&procedure->hazard_cases[i].hazards);
    if (calls_no_distress(visit))
        found |= FLAG(HAZARD_NO_DISTRESS);
    return found;
}

static void call_made(struct visit *visit, const struct card_step *step, flags hazards)
{
    panel_events(visit, hazards, step == NULL ? 0 : guards_printed(step));
    event_add(visit, (struct event){.act = ACT_CALL, .step = step, .hazards = hazards});
}

static bool calls_here(const struct visit *visit, const struct card_step *step, size_t from)
{
    for (size_t i = from; i < visit->events.count; i++)
        if (visit->events.at[i].act == ACT_CALL)
            return true;
    return text_equal(call_step(visit), step->id);
}

/* The question is asked after this step: what its answers lead to, and what they rule out. */
static flags decision_pass(struct visit *visit, const struct card_step *step, flags hazards)
{
    const struct decision *decision = &visit->sheet->procedure->decision;
    if (!decision->given || !text_equal(decision->after.text, step->id))
        return 0;
    way_of_exit(visit, step, &decision->yes, hazards);
    way_of_exit(visit, step, &decision->no, hazards);
    return over_by(visit, &decision->yes) | over_by(visit, &decision->no);
}

void events_make(struct visit *visit)
{
    const struct steps_facts *steps = sheet_steps(visit->sheet);
    flags own = own_hazards(visit), hazards;
    bool called = false;
    visit->hazards = (visit->hazards & ~(FLAG(HAZARD_NO_DISTRESS) |
                                         hazards_flags(&visit->sheet->procedure->over))) | own;
    hazards = visit->hazards;
    if (own & FLAG(HAZARD_SINKING))
        event_add(visit, (struct event){.act = ACT_PREPARE_TO_SINK, .hazards = hazards});
    for (size_t i = 0; i < steps->count; i++) {
        size_t from = visit->events.count;
        step_events(visit, &steps->items[i], hazards);
        if (!called && calls_here(visit, &steps->items[i], from)) {
            call_made(visit, &steps->items[i], visit->hazards);
            called = true;
        }
        ways_of_words(visit, &steps->items[i], hazards);
        hazards &= ~decision_pass(visit, &steps->items[i], hazards);
    }
    if (!called)
        panel_events(visit, visit->hazards, 0);
    event_add(visit, (struct event){.act = ACT_END, .hazards = visit->hazards});
}
