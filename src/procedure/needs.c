/* needs.c - which gear a procedure must know of before its card may be printed (room:
 * procedure). What a step can go without is not among it, unless something depends on it:
 * a condition, or the words of another step. Never looks at a boat. */
#include "asked.h"

const struct item_use *item_use_find(const struct item_uses *list, enum item_key item)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->items[i].value == item)
            return &list->items[i];
    return NULL;
}

/* `surely` takes what is not known for no, and so needs to know nothing. */
static bool condition_needs(const struct condition *condition, enum item_key item)
{
    if (condition == NULL || condition->kind == CONDITION_SURELY)
        return false;
    if (condition->item == item || condition->other == item)
        return true;
    for (size_t i = 0; i < condition->child_count; i++)
        if (condition_needs(condition->children[i], item))
            return true;
    return false;
}

static bool step_needs(const struct procedure_step *step, enum item_key item)
{
    bool needs = condition_needs(step->when, item) || item_use_find(&step->uses, item) != NULL;
    for (size_t i = 0; !needs && i < step->case_count; i++)
        needs = condition_needs(step->cases[i].when, item) ||
                item_use_find(&step->cases[i].uses, item) != NULL;
    return needs;
}

static bool said_needs(const struct said_list *list, enum item_key item)
{
    for (size_t i = 0; i < list->count; i++)
        if (condition_needs(list->items[i].when, item))
            return true;
    return false;
}

static bool warnings_need(const struct warning *warnings, size_t count, enum item_key item)
{
    for (size_t i = 0; i < count; i++)
        if (condition_needs(warnings[i].when, item))
            return true;
    return false;
}

static bool calls_need(const struct procedure *procedure, enum item_key item)
{
    for (size_t i = 0; i < procedure->call_count; i++)
        if (condition_needs(procedure->calls[i].when, item))
            return true;
    return false;
}

bool procedure_needs(const struct procedure *procedure, enum item_key item)
{
    bool needs = item_value_find(&procedure->must_know, item) != NULL ||
                 condition_needs(procedure->when, item);
    for (size_t i = 0; !needs && i < procedure->step_count; i++)
        needs = step_needs(&procedure->steps[i], item);
    return needs || said_needs(&procedure->more_signs, item) ||
           said_needs(&procedure->berth, item) || said_needs(&procedure->anchor, item) ||
           said_needs(&procedure->call_when, item) ||
           said_needs(&procedure->decision.yes, item) ||
           said_needs(&procedure->decision.no, item) ||
           warnings_need(procedure->nevers, procedure->never_count, item) ||
           warnings_need(procedure->cautions, procedure->caution_count, item) ||
           calls_need(procedure, item);
}
