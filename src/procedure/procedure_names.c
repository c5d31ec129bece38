/* procedure_names.c - {names} in the texts of a procedure: of its steps, or of other cards,
 * whose numbers are filled in (room: procedure). Whether a card of that name exists is asked
 * of the whole set; the number is filled in when the card is composed. */
#include "procedure_texts.h"

#include <string.h>

#include "text.h"

/* Letters that engine spaces and pages have not. */
#define FORM_LETTERS "TUVWXYZ"

/* A {name} in a text: the name, and how long it is with its braces. */
struct braced {
    const char *name;
    size_t length;
};

/* The length of the {name} at the start of `text`; 0: there is none. */
static size_t braced_length(const char *text)
{
    size_t inside = strspn(text + 1, "abcdefghijklmnopqrstuvwxyz0123456789_");
    return inside > 0 && text[1 + inside] == '}' ? inside + 2 : 0;
}

/* The next {name} from `*at` on, which goes behind it. length 0: no more. */
static struct braced braced_next(struct arena *arena, const char **at)
{
    const char *open = strchr(*at, '{');
    while (open != NULL && braced_length(open) == 0)
        open = strchr(open + 1, '{');
    if (open == NULL)
        return (struct braced){0};
    size_t length = braced_length(open);
    *at = open + length;
    return (struct braced){arena_copy(arena, open + 1, length - 2), length};
}

static bool has_stray_brace(const char *text)
{
    while (*text != '\0') {
        size_t length = *text == '{' ? braced_length(text) : 0;
        if (length == 0 && (*text == '{' || *text == '}'))
            return true;
        text += length > 0 ? length : 1;
    }
    return false;
}

/* True when the text may hold the names that it holds. */
static bool braces_check(const struct procedure_reading *reading, const struct wanted_text *row,
                         const struct text_value *text)
{
    if (row->naming == NAMES_NOTHING && strpbrk(text->text, "{}") != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, text->place,
                    "write it without { }: numbers are filled in only in act, lethal, "
                    "signs, berth, anchor, call_when, yes and no", "%s holds a brace",
                    row->field.key);
    else if (has_stray_brace(text->text))
        problem_add(reading->problems, SEVERITY_ERROR, text->place,
                    "write {id}, with the id of a step or the name of a procedure in small "
                    "letters", "%s holds a brace that is not part of a {name}", row->field.key);
    else
        return row->naming != NAMES_NOTHING;
    return false;
}

void names_note(struct procedure_reading *reading, const struct wanted_text *row,
                const struct text_value *text)
{
    if (text->text == NULL || !braces_check(reading, row, text))
        return;
    const char *at = text->text;
    for (struct braced braced; (braced = braced_next(reading->arena, &at)).length > 0;) {
        if ((row->naming == NAMES_BASE_TOO && choice_find(base_name_words, braced.name) > 0) ||
            choice_find(boat_name_words, braced.name) > 0)
            continue;
        reading->names = arena_grow(reading->arena, reading->names, reading->name_count,
                                    &reading->name_room, sizeof *reading->names);
        reading->names[reading->name_count++] =
            (struct text_value){.text = braced.name, .place = text->place};
    }
}

/* ---- two languages ---- */

static bool holds_name(struct arena *arena, const char *text, const char *name)
{
    for (struct braced braced; (braced = braced_next(arena, &text)).length > 0;)
        if (text_equal(braced.name, name))
            return true;
    return false;
}

/* A name of `text` that `other` has not, or NULL. */
static const char *name_lacking(struct arena *arena, const char *text, const char *other)
{
    for (struct braced braced; (braced = braced_next(arena, &text)).length > 0;)
        if (!holds_name(arena, other, braced.name))
            return braced.name;
    return NULL;
}

void names_compare(struct procedure_reading *reading, const struct wanted_text *row,
                   const struct text_value *first, const struct text_value *other)
{
    if (!braces_check(reading, row, other))
        return;
    const char *lacks = name_lacking(reading->arena, first->text, other->text);
    const char *has = name_lacking(reading->arena, other->text, first->text);
    if (lacks != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, other->place,
                    text_format(reading->arena, "write {%s} where the number belongs", lacks),
                    "%s has no {%s}, which it has in the first language", row->field.key, lacks);
    if (has != NULL)
        problem_add(reading->problems, SEVERITY_ERROR, other->place,
                    text_format(reading->arena, "take {%s} out, or write it in the first "
                                "language too", has),
                    "%s has {%s}, which it has not in the first language", row->field.key, has);
}

/* ---- where names lead ---- */

void names_settle(struct procedure_reading *reading)
{
    struct procedure *procedure = reading->procedure;
    struct text_value *leads =
        arena_array(reading->arena, reading->name_count, sizeof *leads);
    for (size_t i = 0; i < reading->name_count; i++)
        if (!procedure_has_step(procedure, reading->names[i].text))
            leads[procedure->lead_count++] = reading->names[i];
    procedure->leads = leads;
}

static bool set_has(const struct procedure_set *set, const char *key)
{
    for (size_t i = 0; i < set->count; i++)
        if (text_equal(set->rows[i]->key.text, key))
            return true;
    return false;
}

/* The nearest of the procedure's steps and the set's cards. */
static const char *lead_remedy(const struct procedure_set *set,
                               const struct procedure *procedure, const char *name,
                               struct arena *arena)
{
    size_t count = 0;
    const char **known =
        arena_array(arena, procedure->step_count + set->count, sizeof *known);
    for (size_t i = 0; i < procedure->step_count; i++)
        known[count++] = procedure->steps[i].id.text;
    for (size_t i = 0; i < set->count; i++)
        known[count++] = set->rows[i]->key.text;
    return text_nearest_remedy(arena, name, known, count,
                               "write the id of a step of this procedure, or the name of another");
}

static void exits_check(const struct procedure_set *set, const struct said_list *exits,
                        struct arena *arena, struct problems *problems)
{
    const struct procedure none = {0};
    for (size_t i = 0; i < exits->count; i++) {
        const struct text_value *card = &exits->items[i].card;
        if (card->text != NULL && !set_has(set, card->text))
            problem_add(problems, SEVERITY_ERROR, card->place,
                        lead_remedy(set, &none, card->text, arena),
                        "card: no procedure is called %s", card->text);
    }
}

static void leads_check(const struct procedure_set *set, const struct procedure *procedure,
                        struct arena *arena, struct problems *problems)
{
    exits_check(set, &procedure->decision.yes, arena, problems);
    exits_check(set, &procedure->decision.no, arena, problems);
    for (size_t i = 0; i < procedure->lead_count; i++) {
        const struct text_value *name = &procedure->leads[i];
        if (!set_has(set, name->text))
            problem_add(problems, SEVERITY_ERROR, name->place,
                        lead_remedy(set, procedure, name->text, arena),
                        "{%s} is neither a step of this procedure nor a card", name->text);
    }
}

/* ---- forms of one card ---- */

static bool is_form_of(const struct procedure *form, const struct procedure *of)
{
    return form->form_of.text != NULL && text_equal(form->form_of.text, of->key.text);
}

bool procedures_are_forms(const struct procedure *one, const struct procedure *other)
{
    return is_form_of(one, other) || is_form_of(other, one);
}

/* Another form has the number of a card of the set, and a letter that no engine space's card
 * and no second page has. */
static void form_check(const struct procedure_set *set, const struct procedure *procedure,
                       struct problems *problems)
{
    const struct text_value *of = &procedure->form_of;
    const struct procedure *same = NULL;
    for (size_t i = 0; of->text != NULL && i < set->count; i++)
        if (is_form_of(procedure, set->rows[i]))
            same = set->rows[i];
    if (of->text != NULL && same == NULL)
        problem_add(problems, SEVERITY_ERROR, of->place, "write the key of a procedure",
                    "form_of: no procedure is called %s", of->text);
    else if (same != NULL && same->number.milli != procedure->number.milli)
        problem_add(problems, SEVERITY_ERROR, procedure->number.place,
                    "give both one number", "%s is a form of %s and has another number",
                    procedure->key.text, of->text);
    if (of->text != NULL && (procedure->form_letter.text == NULL ||
                             strspn(procedure->form_letter.text, FORM_LETTERS) != 1 ||
                             procedure->form_letter.text[1] != '\0'))
        problem_add(problems, SEVERITY_ERROR, of->place,
                    "write form_letter: with one of " FORM_LETTERS,
                    "another form of a card needs a letter of its own");
}

bool procedure_set_check(const struct procedure_set *set, struct arena *arena,
                         struct problems *all)
{
    struct problems *problems = problems_part(all);
    for (size_t i = 0; i < set->count; i++) {
        leads_check(set, set->rows[i], arena, problems);
        form_check(set, set->rows[i], problems);
    }
    seen_alone_check(set, arena, problems);
    return problems_settle(all, problems);
}
