/* explain_record.c - the lines of the record that the choice of a step's words
 * rests on: what is asked of the gear, and what is not fitted (room: compose).
 * Never asks more than the cases that were tried. */
#include "explain.h"

/* What was told already: an item, or one field of it. */
struct asked {
    const char *item, *field;
};

struct record_list {
    const struct explaining *explaining;
    const struct card_step *step;
    struct asked *asked;
    size_t count, room;
};

/* True the first time. */
static bool ask(struct record_list *list, const char *item, const char *field)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->asked[i].item, item) && text_equal(list->asked[i].field, field))
            return false;
    list->asked = arena_grow(list->explaining->arena, list->asked, list->count, &list->room,
                             sizeof *list->asked);
    list->asked[list->count++] = (struct asked){item, field};
    return true;
}

static bool has_row(const struct card_step *step, const char *item)
{
    for (size_t i = 0; i < step->row_count; i++)
        if (step->rows[i].tag_count > 0 && text_equal(step->rows[i].kind->key, item))
            return true;
    return step->table_count > 0 && text_equal(step->table_kind->key, item);
}

static const struct equipment *entry_of(const struct boat *boat, const char *item)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (text_equal(boat->equipment[i].item.text, item))
            return &boat->equipment[i];
    return NULL;
}

/* Fitted, but the rows of the step do not show it. */
static void gear_without_row_tell(const struct explaining *explaining, const char *item)
{
    const struct equipment *gear;
    size_t index = 0;
    while ((gear = gear_next(explaining->composing, item, &index)) != NULL)
        placed_tell(explaining, INDENT_REASON, gear->place, "record: %s %s fitted", item,
                    TEXT_OR_EMPTY(gear->tag));
}

/* What the record says of the engine of that space where it has no piece for it. */
static void engine_tell(const struct explaining *explaining, const char *item, const char *space)
{
    const struct boat *boat = explaining->card->boat_record;
    const struct absence *absence = boat_absence(boat, item, space);
    const struct equipment *other = entry_of(boat, item);
    if (absence != NULL)
        placed_tell(explaining, INDENT_REASON, absence->place, "record: %s not fitted for %s",
                    item, space);
    else if (other != NULL)
        placed_tell(explaining, INDENT_REASON, other->place,
                    "record: %s not recorded for %s, only for the other engine", item, space);
    else
        line_tell(explaining, INDENT_REASON, "record: %s not recorded for %s", item, space);
}

static void fitted_tell(struct record_list *list, const char *item)
{
    const struct boat *boat = list->explaining->card->boat_record;
    const struct absence *whole = boat_absence(boat, item, NULL);
    size_t told = 0;
    if (!ask(list, item, NULL))
        return;
    for (size_t i = 0; whole == NULL && i < boat->engine_space_count; i++)
        if (space_asked(list->explaining->composing, item, boat->engine_spaces[i]) &&
            boat_fitted_for(boat, item, boat->engine_spaces[i]) != ANSWER_YES) {
            engine_tell(list->explaining, item, boat->engine_spaces[i]);
            told++;
        }
    if (boat_fitted(boat, item) == ANSWER_YES && !has_row(list->step, item))
        gear_without_row_tell(list->explaining, item);
    else if (whole != NULL)
        placed_tell(list->explaining, INDENT_REASON, whole->place, "record: %s not fitted", item);
    else if (told == 0 && boat_fitted(boat, item) != ANSWER_YES)
        line_tell(list->explaining, INDENT_REASON, "record: %s not recorded", item);
}

/* What each piece of the gear has under that key. */
static void field_tell(struct record_list *list, const char *item, const char *key)
{
    const struct field *field = field_find(equipment_fields(), key);
    const struct equipment *gear;
    size_t index = 0;
    if (field == NULL || !ask(list, item, key))
        return;
    while ((gear = gear_next(list->explaining->composing, item, &index)) != NULL) {
        const char *value = field_text(field, gear, list->explaining->arena);
        if (value == NULL)
            value = text_equal(key, "cuts") ? "not recorded, which counts as cutting"
                                            : "not recorded";
        placed_tell(list->explaining, INDENT_REASON, gear->place, "record: %s %s %s = %s", item,
                    TEXT_OR_EMPTY(gear->tag), key, value[0] == '\0' ? "nothing" : value);
    }
}

static void gas_tell(const struct record_list *list, const struct boat *boat)
{
    const char *gas = boat->facts.gas.text;
    placed_tell(list->explaining, INDENT_REASON, boat->facts.gas.place, "record: gas %s",
                gas == NULL ? "not recorded, which counts as carried" : gas);
}

static void dsc_tell(const struct record_list *list, const struct boat *boat)
{
    static const char *const words[] = {[ANSWER_NOT_RECORDED] = "not recorded, which counts as yes",
                                        [ANSWER_NO] = "no", [ANSWER_YES] = "yes"};
    placed_tell(list->explaining, INDENT_REASON, boat->radio.dsc.place,
                "record: dsc of the radio %s", words[boat->radio.dsc.answer]);
}

/* What she is, in the word that the condition asks for. */
static void boat_word_tell(struct record_list *list, const char *word)
{
    const struct boat *boat = list->explaining->card->boat_record;
    bool gas = text_equal(word, "gas"), dsc = text_equal(word, "dsc");
    if (!ask(list, "boat", gas || dsc ? word : "type"))
        return;
    if (gas)
        gas_tell(list, boat);
    else if (dsc)
        dsc_tell(list, boat);
    else
        placed_tell(list->explaining, INDENT_REASON, boat->facts.type.place,
                    "record: the boat is a %s", boat->catamaran ? "catamaran" : "monohull");
}

static void condition_tell(struct record_list *list, const struct condition *condition)
{
    if (condition->item != NULL)
        fitted_tell(list, condition->item);
    switch (condition->kind) {
    case CONDITION_INSIDE:
        field_tell(list, condition->item, "zone");
        field_tell(list, condition->item, "inside");
        break;
    case CONDITION_IS:
        field_tell(list, condition->item, condition->field);
        break;
    case CONDITION_CUTS:
        field_tell(list, condition->item, "cuts");
        break;
    case CONDITION_REACH:
    case CONDITION_BEYOND:
        field_tell(list, condition->item, "zone");
        field_tell(list, condition->item, "from_cockpit");
        break;
    case CONDITION_BOAT:
        boat_word_tell(list, condition->words[0]);
        break;
    case CONDITION_SURELY:
    case CONDITION_FITTED:
    case CONDITION_NOT_FITTED:
    case CONDITION_ALL:
    case CONDITION_ANY:
    case CONDITION_NONE:
        break;
    }
    for (size_t i = 0; i < condition->child_count; i++)
        condition_tell(list, condition->children[i]);
}

static void items_tell(struct record_list *list, const struct list_value *items)
{
    for (size_t i = 0; i < items->count; i++)
        fitted_tell(list, items->items[i].text);
}

void record_tell(const struct explaining *explaining, const struct card_step *step)
{
    struct record_list list = {.explaining = explaining, .step = step};
    size_t tried = cases_tried(explaining, step);
    if (step->step->when != NULL)
        condition_tell(&list, step->step->when);
    for (size_t i = 0; i < tried; i++)
        if (step->step->cases[i].when != NULL)
            condition_tell(&list, step->step->cases[i].when);
    items_tell(&list, step_uses(step));
    items_tell(&list, step_also(step));
}
