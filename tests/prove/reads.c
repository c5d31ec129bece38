/* reads.c - which facts of a boat a part of a card hangs on: the atoms of its conditions, the
 * gear it offers, and what the table of hazards asks of that gear. */
#include "reads.h"

#include "trait.h"

#include "promise.h"
#include "text.h"

const struct field_read *field_of(const struct item_read *read, enum gear_field field)
{
    for (size_t i = 0; i < read->field_count; i++)
        if (read->fields[i].field == field)
            return &read->fields[i];
    return NULL;
}

static struct field_read *field_read_of(struct item_read *read, enum gear_field field)
{
    for (size_t i = 0; i < read->field_count; i++)
        if (read->fields[i].field == field)
            return &read->fields[i];
    promise(read->field_count < FIELDS_MOST);
    read->fields[read->field_count] = (struct field_read){.field = field};
    return &read->fields[read->field_count++];
}

static void value_read(struct item_read *read, enum gear_field field, const char *value)
{
    struct field_read *values = field_read_of(read, field);
    for (size_t i = 0; i < values->value_count; i++)
        if (text_equal(values->values[i], value))
            return;
    promise(values->value_count < VALUES_MOST);
    values->values[values->value_count++] = value;
}

/* Where a boat lies upside down, a hand gets what its entry says it gets, wherever it is. The set
 * is not worked there. */
static bool is_read_inverted(const struct reads *reads, enum item_key item)
{
    const struct procedure *procedure = reads->procedure;
    for (size_t i = 0; procedure != NULL && i < procedure->hazards.count; i++)
        if (procedure->hazards.items[i].value == HAZARD_INVERTED)
            return item != ITEM_vhf_dsc;
    return false;
}

static struct item_read *item_read_new(struct reads *reads, enum item_key item)
{
    promise(reads->count < READS_MOST);
    struct item_read *read = &reads->items[reads->count++];
    *read = (struct item_read){
        .item = item,
        .beside_vapour = reads->procedure != NULL && reads->procedure->vapour_from.count > 0};
    if (item == ITEM_engine_stop)
        value_read(read, GEAR_stop, "mechanical");
    if (item == ITEM_bilge_pump_electric)
        value_read(read, GEAR_fed_by, "mains");
    if (item == ITEM_fire_extinguisher)
        value_read(read, GEAR_agent, "powder");
    read->cuts = item == ITEM_battery_isolator_engine || item == ITEM_battery_isolator_service;
    return read;
}

struct item_read *reads_item(struct reads *reads, enum item_key item)
{
    struct item_read *read = NULL;
    for (size_t i = 0; i < reads->count && read == NULL; i++)
        if (reads->items[i].item == item)
            read = &reads->items[i];
    if (read == NULL)
        read = item_read_new(reads, item);
    if (is_read_inverted(reads, item)) {
        value_read(read, GEAR_reach_inverted, "no");
        field_read_of(read, GEAR_reach_inverted)->asked = true;
    }
    return read;
}

static void atom_read(struct reads *reads, const struct condition *condition)
{
    struct item_read *read = reads_item(reads, condition->item);
    bool reach = condition->kind == CONDITION_REACH || condition->kind == CONDITION_BEYOND;
    read->asked = true;
    if (reach)
        read->limits[condition->reach] = true;
    read->fitted_asked = read->fitted_asked || !reach;
    read->apart = read->apart || condition->kind == CONDITION_BEYOND;
    read->inside = read->inside || condition->kind == CONDITION_INSIDE;
    if (condition->kind == CONDITION_IS) {
        value_read(read, condition->field, condition->value);
        field_read_of(read, condition->field)->asked = true;
    }
    if (condition->kind != CONDITION_CUTS)
        return;
    read->cuts = true;
    read->cuts_radio = read->cuts_radio || condition->other == ITEM_vhf_dsc;
    read->cuts_pump = read->cuts_pump || condition->other != ITEM_vhf_dsc;
}

/* ---- what the kind of boat decides ---- */

static enum truth trait_verdict(const struct reads *reads, enum trait trait)
{
    const struct boat *boat = reads->boat;
    if (trait == TRAIT_DSC || trait == TRAIT_CUTTERS_FIT)
        return TRUTH_UNKNOWN;
    if (reads->procedure->per.value == PER_BOAT || boat->engine_space_count == 0)
        return boat_is(boat, trait, ZONE_NONE) ? TRUTH_YES : TRUTH_NO;
    bool first = boat_is(boat, trait, boat->engine_spaces[0]);
    for (size_t i = 1; i < boat->engine_space_count; i++)
        if (boat_is(boat, trait, boat->engine_spaces[i]) != first)
            return TRUTH_UNKNOWN;
    return first ? TRUTH_YES : TRUTH_NO;
}

static enum truth verdict(const struct reads *reads, const struct condition *condition)
{
    bool any = condition->kind != CONDITION_ALL;
    enum truth stop = any ? TRUTH_YES : TRUTH_NO, all = any ? TRUTH_NO : TRUTH_YES;
    if (condition->kind == CONDITION_BOAT)
        return trait_verdict(reads, condition->trait);
    if (condition->child_count == 0)
        return TRUTH_UNKNOWN;
    for (size_t i = 0; i < condition->child_count && all != stop; i++) {
        enum truth child = verdict(reads, condition->children[i]);
        if (child == stop || child == TRUTH_UNKNOWN)
            all = child;
        if (child == stop)
            break;
    }
    if (condition->kind == CONDITION_NONE && all != TRUTH_UNKNOWN)
        return all == TRUTH_YES ? TRUTH_NO : TRUTH_YES;
    return all;
}

static unsigned long traits_asked(const struct condition *condition)
{
    unsigned long asked = condition->kind == CONDITION_BOAT ? 1UL << condition->trait : 0;
    for (size_t i = 0; i < condition->child_count; i++)
        asked |= traits_asked(condition->children[i]);
    return asked;
}

struct trait_answers traits_read(const struct reads *reads, unsigned long traits,
                                 enum zone_key space)
{
    struct trait_answers answers = {0, 0, 0};
    for (unsigned trait = TRAIT_NONE + 1; trait < TRAIT_COUNT; trait++) {
        enum truth truth = trait_verdict(reads, trait);
        if ((traits & 1UL << trait) == 0)
            continue;
        answers.yes |= truth == TRUTH_YES ? 1UL << trait : 0;
        answers.no |= truth == TRUTH_NO ? 1UL << trait : 0;
        answers.of_space |= boat_is(reads->boat, trait, space) ? 1UL << trait : 0;
    }
    return answers;
}

/* What is left open of it on such a boat. */
static enum truth open_verdict(struct reads *reads, const struct condition *condition)
{
    if (condition == NULL)
        return TRUTH_YES;
    reads->traits |= traits_asked(condition);
    return reads->boat == NULL ? TRUTH_UNKNOWN : verdict(reads, condition);
}

/* ---- groups ---- */

enum { GROUP_FACTOR = 1000003 };

/* A number of the list that the atom stands in, if all of it asks the same of other items; else
 * one of the item alone. */
static unsigned long list_number(const struct condition *list, const struct condition *atom)
{
    unsigned long number = (unsigned long)atom->kind * GROUP_FACTOR + (unsigned long)atom->reach;
    bool uniform = list != NULL && list->kind != CONDITION_ALL && list->kind != CONDITION_SURELY &&
                   (atom->kind == CONDITION_REACH || atom->kind == CONDITION_FITTED);
    for (size_t i = 0; uniform && i < list->child_count; i++) {
        const struct condition *child = list->children[i];
        uniform = child->kind == atom->kind && child->reach == atom->reach;
        number = number * GROUP_FACTOR + (unsigned long)child->item;
    }
    return uniform ? number : (unsigned long)atom->item * GROUP_FACTOR * GROUP_FACTOR;
}

/* Those that cut what every boat of forms.c has, and others. */
static void cutters_read(struct reads *reads)
{
    struct item_read *read = reads_item(reads, ITEM_bolt_cutters);
    read->asked = read->fitted_asked = true;
    value_read(read, GEAR_cuts_mm, "12");
    field_read_of(read, GEAR_cuts_mm)->asked = true;
}

static void condition_within(struct reads *reads, const struct condition *list,
                             const struct condition *condition)
{
    if (open_verdict(reads, condition) != TRUTH_UNKNOWN)
        return;
    if (condition->item != ITEM_NONE) {
        atom_read(reads, condition);
        reads_item(reads, condition->item)->group += list_number(list, condition);
    }
    reads->breaths = reads->breaths || condition->kind == CONDITION_BREATHS;
    reads->sting = reads->sting || condition->kind == CONDITION_STING;
    reads->tide = reads->tide || condition->kind == CONDITION_TIDE;
    if (condition->kind == CONDITION_BOAT && condition->trait == TRAIT_DSC)
        reads_item(reads, ITEM_vhf_dsc)->whole = true;
    if (condition->kind == CONDITION_BOAT && condition->trait == TRAIT_CUTTERS_FIT)
        cutters_read(reads);
    for (size_t i = 0; i < condition->child_count; i++)
        condition_within(reads, condition, condition->children[i]);
}

void reads_condition(struct reads *reads, const struct condition *condition)
{
    if (condition != NULL)
        condition_within(reads, NULL, condition);
}

/* ---- parts of a card ---- */

static void reads_uses(struct reads *reads, const struct item_uses *uses)
{
    for (size_t i = 0; i < uses->count; i++)
        reads_item(reads, uses->items[i].value)->offered = true;
}

void reads_step(struct reads *reads, const struct procedure_step *step)
{
    if (open_verdict(reads, step->when) == TRUTH_NO)
        return;
    reads_condition(reads, step->when);
    reads_uses(reads, &step->uses);
    reads_uses(reads, &step->also);
    for (size_t i = 0; i < step->case_count; i++) {
        enum truth open = open_verdict(reads, step->cases[i].when);
        if (open == TRUTH_NO)
            continue;
        reads_condition(reads, step->cases[i].when);
        reads_uses(reads, &step->cases[i].uses);
        reads_uses(reads, &step->cases[i].also);
        if (open == TRUTH_YES)
            return;
    }
}

void reads_said(struct reads *reads, const struct said_list *list)
{
    for (size_t i = 0; i < list->count; i++)
        reads_condition(reads, list->items[i].when);
}

void reads_panel(struct reads *reads)
{
    static const enum item_key radios[] = {ITEM_vhf_dsc, ITEM_vhf_handheld};
    static const enum item_key others[] = {ITEM_epirb, ITEM_flares};
    const struct procedure *procedure = reads->procedure;
    reads_said(reads, &procedure->call_when);
    for (size_t i = 0; i < procedure->call_count; i++)
        reads_condition(reads, procedure->calls[i].when);
    for (size_t i = 0; i < sizeof radios / sizeof *radios; i++)
        reads_item(reads, radios[i])->offered = reads_item(reads, radios[i])->whole = true;
    for (size_t i = 0; i < sizeof others / sizeof *others; i++)
        reads_item(reads, others[i])->limits[REACH_DECK] = true;
}

void reads_procedure(struct reads *reads, const struct procedure *procedure)
{
    reads->procedure = procedure;
    reads_condition(reads, procedure->when);
    for (size_t i = 0; i < procedure->step_count; i++)
        reads_step(reads, &procedure->steps[i]);
    for (size_t i = 0; i < procedure->never_count; i++)
        reads_condition(reads, procedure->nevers[i].when);
    reads_said(reads, &procedure->decision.yes);
    reads_said(reads, &procedure->decision.no);
    reads_panel(reads);
}
