/* spoken_name.c - the boat's name as it is called out, and as it is spelled (room:
 * radio): which of its three fields that is. Never guesses a spelling. */
#include "radio.h"

#include "text.h"

/* NULL, with an error, when the field cannot be called out. */
static const char *name_said(const struct text_value *value, struct arena *arena,
                             struct problems *problems)
{
    struct name name;
    if (name_decode(value->text, arena, &name))
        return name.spoken;
    problem_add(problems, SEVERITY_ERROR, value->place, name_remedy(&name, arena),
                "name `%s` %s", value->text, name_fault_words(&name, arena));
    return NULL;
}

static const struct text_value *latin_or_painted(const struct boat_facts *facts)
{
    return text_empty(facts->name_latin.text) ? &facts->name : &facts->name_latin;
}

static void nameless_tell(const struct boat *boat, struct problems *problems)
{
    problem_add(problems, SEVERITY_ERROR, boat->place, "write `name:` under `boat:`",
                "the boat has no name to call out");
}

const char *spoken_name(const struct boat *boat, struct arena *arena, struct problems *problems)
{
    const struct boat_facts *facts = &boat->facts;
    struct name_doubt doubt;
    if (name_doubted(facts, arena, &doubt)) {
        problem_add(problems, SEVERITY_ERROR, doubt.value->place, doubt.remedy, "name `%s`: %s",
                    doubt.value->text, doubt.words);
        return NULL;
    }
    if (!text_empty(facts->name_spoken.text))
        return name_said(&facts->name_spoken, arena, problems);
    if (!text_empty(latin_or_painted(facts)->text))
        return name_said(latin_or_painted(facts), arena, problems);
    nameless_tell(boat, problems);
    return NULL;
}

const char *spelled_name(const struct boat *boat, struct arena *arena, struct problems *problems)
{
    const struct boat_facts *facts = &boat->facts;
    const struct text_value *licence = latin_or_painted(facts);
    struct name name;
    if (!text_empty(licence->text) && name_decode(licence->text, arena, &name))
        return name.spoken;
    return spoken_name(boat, arena, problems);
}
