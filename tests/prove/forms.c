/* forms.c - what a record can say of one kind of gear. */
#include "forms.h"

#include "item_states.h"
#include "text.h"

static const char *const where_told[WHERE_COUNT] = {
    [NOT_RECORDED] = "not recorded", [NOT_FITTED] = "not fitted",
    [ON_OPEN_DECK] = "on open deck", [IN_DECK_LOCKER] = "in a deck locker",
    [AT_COMPANIONWAY] = "at the companionway", [BELOW_DECK] = "below",
    [INSIDE_SPACE] = "inside the space", [IN_GAS_LOCKER] = "in the gas locker",
    [ON_DECK_AND_BELOW] = "one on deck and one below",
    [ON_DECK_AND_INSIDE] = "one on deck and one inside the space"};

static void form_add(struct forms *forms, struct form form, struct arena *arena)
{
    form.told = text_format(arena, "%s %s%s", item_word(form.item),
                            where_told[form.where], form.facts);
    forms->at = arena_grow(arena, forms->at, forms->count, &forms->room, sizeof *forms->at);
    forms->at[forms->count++] = form;
}

struct cuts_form { const char *facts; bool worst, radio, pump; };

/* Is what it cuts asked for by a condition? What is not recorded stands for the worse. */
static bool cuts_are_asked(const struct item_read *read, const struct cuts_form *cuts)
{
    bool asked = read->cuts_radio || read->cuts_pump;
    if (cuts->worst)
        return true;
    return asked && (!cuts->radio || read->cuts_radio) && (!cuts->pump || read->cuts_pump);
}

static void cuts_add(struct forms *forms, const struct item_read *read, struct form form,
                     struct arena *arena)
{
    static const struct cuts_form cuts[] = {
        {"", true, false, false}, {", cuts: []", false, false, false},
        {", cuts: [vhf_dsc]", false, true, false},
        {", cuts: [bilge_pump_electric]", false, false, true},
        {", cuts: [vhf_dsc, bilge_pump_electric]", false, true, true}};
    const char *facts = form.facts;
    bool fine = form.fine;
    for (size_t i = 0; i < sizeof cuts / sizeof *cuts; i++) {
        form.facts = text_format(arena, "%s%s", facts, cuts[i].facts);
        form.fine = fine || !cuts_are_asked(read, &cuts[i]);
        form_add(forms, form, arena);
    }
}

/* Another value than those that are asked for. */
static const char *other_value(const struct field_read *field)
{
    static const struct { enum gear_field field; const char *value; } others[] = {
        {GEAR_stop, "electric"}, {GEAR_fed_by, "battery"}, {GEAR_agent, "water_mist"},
        {GEAR_space, "~"}, {GEAR_drives, "wheel"}, {GEAR_chain_end, "loose"},
        {GEAR_kit, "[]"}, {GEAR_cuts_mm, "6"}};
    for (size_t i = 0; i < sizeof others / sizeof *others; i++)
        if (others[i].field == field->field)
            return others[i].value;
    if (text_equal(field->values[0], "yes"))
        return "no";
    return text_equal(field->values[0], "no") ? "yes" : NULL;
}

static void cuts_or_add(struct forms *forms, const struct item_read *read, struct form form,
                        struct arena *arena)
{
    if (read->cuts)
        cuts_add(forms, read, form, arena);
    else
        form_add(forms, form, arena);
}

/* Each value of the field with all of those behind it. */
static void values_add(struct forms *forms, const struct item_read *read, size_t index,
                       struct form form, struct arena *arena)
{
    const struct field_read *field = &read->fields[index];
    const char *facts = form.facts;
    if (index == read->field_count) {
        cuts_or_add(forms, read, form, arena);
        return;
    }
    if (field->field == GEAR_zone) {
        values_add(forms, read, index + 1, form, arena);
        return;
    }
    const char *other = other_value(field), *key = gear_field_word(field->field);
    for (size_t i = 0; i < field->value_count + (other != NULL ? 1 : 0); i++) {
        const char *value = i < field->value_count ? field->values[i] : other;
        bool space = field->field == GEAR_space && i < field->value_count;
        form.facts = text_format(arena, "%s, %s: %s", facts, key, space ? "@" : value);
        values_add(forms, read, index + 1, form, arena);
        form.fine = form.fine || !field->asked;
    }
    form.facts = facts;
    form.known = false;
    values_add(forms, read, index + 1, form, arena);
}

/* That gear is not inside must be said; where a condition asks for it, it may not be. */
static void inside_add(struct forms *forms, const struct item_read *read, struct form form,
                       struct arena *arena)
{
    form.facts = form.where > NOT_FITTED && form.where != INSIDE_SPACE ? ", inside: []" : "";
    form.known = form.where != NOT_RECORDED && !(read->inside && form.where == INSIDE_SPACE);
    if (form.where <= NOT_FITTED)
        form_add(forms, form, arena);
    else
        values_add(forms, read, 0, form, arena);
    if (form.facts[0] == '\0' || !read->inside)
        return;
    form.facts = "";
    form.known = false;
    values_add(forms, read, 0, form, arena);
}

static bool asks_reach(const struct item_read *read)
{
    return read->limits[REACH_OPEN_DECK] || read->limits[REACH_DECK] ||
           read->limits[REACH_COMPANIONWAY];
}

/* A raft and a radio are in no gas locker; the bottle's valve is nowhere else. */
static const enum item_key never_in_locker[] = {ITEM_liferaft, ITEM_vhf_dsc,
                                                ITEM_lpg_bottle_valve, ITEM_NONE};

/* Places are told apart as far as conditions ask. */
static bool is_told_apart(const struct item_read *read, enum where where)
{
    if (!read->asked && !read->whole)
        return where == ON_OPEN_DECK;
    switch (where) {
    case IN_DECK_LOCKER:
        return read->limits[REACH_OPEN_DECK];
    case AT_COMPANIONWAY:
        return read->whole || read->limits[REACH_COMPANIONWAY];
    case BELOW_DECK:
        return read->whole || asks_reach(read);
    case INSIDE_SPACE:
        return read->whole || read->inside || field_of(read, GEAR_zone) != NULL ||
               read->limits[REACH_BELOW];
    case IN_GAS_LOCKER:
        return false;
    case ON_DECK_AND_BELOW:
        return read->apart;
    case ON_DECK_AND_INSIDE:
        return read->apart && read->limits[REACH_BELOW];
    case NOT_FITTED:
        return read->fitted_asked || read->whole || !asks_reach(read);
    case NOT_RECORDED: case ON_OPEN_DECK: case WHERE_COUNT:
        return true;
    }
    return true;
}

/* A boat with a radio in the space that burns has cards held back, whatever they say. */
static const enum item_key radios[] = {ITEM_vhf_dsc, ITEM_vhf_handheld, ITEM_NONE};

/* Gear that is worked may be anywhere. */
static bool is_worked_there(const struct item_read *read, enum where where)
{
    if (!read->offered)
        return false;
    if (where == IN_GAS_LOCKER)
        return read->beside_vapour && !item_among(never_in_locker, read->item);
    if (where == IN_DECK_LOCKER)
        return read->beside_vapour && read->item != ITEM_vhf_dsc;
    return where == AT_COMPANIONWAY || where == BELOW_DECK || where == INSIDE_SPACE;
}

static bool is_tried(const struct item_read *read, enum where where)
{
    if (where == INSIDE_SPACE && item_among(radios, read->item))
        return false;
    return where <= NOT_FITTED || is_told_apart(read, where) || is_worked_there(read, where);
}

struct forms forms_of(const struct item_read *read, struct arena *arena)
{
    bool placed = read->field_count == 0 && !read->cuts && !read->inside && !read->whole;
    struct forms forms = {.group = placed ? read->group : 0};
    for (enum where where = NOT_RECORDED; where < WHERE_COUNT; where++)
        if (is_tried(read, where))
            inside_add(&forms, read, (struct form){.item = read->item, .where = where,
                                                   .fine = !is_told_apart(read, where)}, arena);
    return forms;
}
