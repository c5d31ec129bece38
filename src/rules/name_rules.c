/* name_rules.c - can the boat's name be called out and spelled, and is it the licence's
 * (room: rules). A name in other letters than A to Z holds the boat back until the
 * licence's spelling, or at least how it is said, is recorded, and so does a name that would
 * be heard as something else: a spelling is proposed, never printed. */
#include "rules_room.h"

#include <string.h>

#include "radio.h"
#include "text.h"

static bool given(const struct text_value *value)
{
    return !text_empty(value->text);
}

static void name_fault_tell(const struct rule_run *run, const struct text_value *value,
                            const struct name *name)
{
    rule_tell(run, CHECK_name_unspeakable, value->place, name_remedy(name, run->arena),
              "name `%s` %s", value->text, name_fault_words(name, run->arena));
}

/* What is written for the radio must be fit for it. */
static void name_field_check(const struct rule_run *run, const struct text_value *value)
{
    struct name name;
    if (given(value) && !name_decode(value->text, run->arena, &name))
        name_fault_tell(run, value, &name);
}

/* The painted name: needed where no other is recorded. With name_spoken alone the call
 * can be made, but what is spelled is perhaps not what the rescuers look up. */
static void painted_check(const struct rule_run *run)
{
    const struct boat_facts *facts = &run->in->boat->facts;
    struct name name;
    if (!given(&facts->name) || given(&facts->name_latin) ||
        name_decode(facts->name.text, run->arena, &name))
        return;
    if (given(&facts->name_spoken))
        rule_tell(run, CHECK_name_latin_missing, facts->name.place,
                  name_remedy(&name, run->arena),
                  "name `%s` is not recorded in Latin letters: the cards spell `%s`",
                  facts->name.text, facts->name_spoken.text);
    else
        name_fault_tell(run, &facts->name, &name);
}

/* The letters and digits of a name that is in capitals already. */
static const char *bare(const struct rule_run *run, const char *upper)
{
    struct text_builder out = text_builder_in(run->arena);
    for (; *upper != '\0'; upper++)
        if ((*upper >= 'A' && *upper <= 'Z') || (*upper >= '0' && *upper <= '9'))
            text_add_bytes(&out, upper, 1);
    return out.at;
}

/* A line copied from another boat's file calls for help in her name. Only Latin names
 * are compared: other alphabets have several spellings. */
static void latin_check(const struct rule_run *run)
{
    const struct boat_facts *facts = &run->in->boat->facts;
    struct name painted, latin;
    if (!given(&facts->name) || !given(&facts->name_latin) ||
        !name_decode(facts->name_latin.text, run->arena, &latin))
        return;
    bool plain = name_decode(facts->name.text, run->arena, &painted);
    const char *expected = plain ? painted.spoken : painted.proposal;
    if (expected == NULL || painted.alphabet != ALPHABET_LATIN)
        return;
    const char *written = bare(run, latin.spoken);
    if (text_equal(written, bare(run, expected)) ||
        (painted.other_proposal != NULL &&
         text_equal(written, bare(run, painted.other_proposal))))
        return;
    rule_tell(run, CHECK_name_latin_differs, facts->name_latin.place,
              "compare it with the ship's radio licence",
              "name_latin `%s` is not how `%s` is spelled as a rule (%s)",
              facts->name_latin.text, facts->name.text, expected);
}

/* ---- what is said and spelled ---- */

static const struct text_value *first_name_given(const struct text_value *first,
                                                 const struct text_value *second)
{
    return given(first) ? first : second;
}

static void roman_check(const struct rule_run *run, const struct text_value *value)
{
    struct name name;
    if (!given(value) || !name_decode(value->text, run->arena, &name) || name.roman == NULL)
        return;
    const char *after = name.spoken + name.roman_at + strlen(name.roman);
    const char *remedy = text_format(run->arena,
        "write how the name is called out, the number as a word, such as\n"
        "`name_spoken: %.*s%s%s`", (int)name.roman_at, name.spoken, name.roman_word, after);
    rule_tell(run, CHECK_name_roman, value->place, remedy,
              "name `%s`: %s can be said as a number or as letters", value->text, name.roman);
}

/* What would be heard as something else is called out by nobody until it is recorded how. */
static void doubt_check(const struct rule_run *run)
{
    static const enum check_name checks[] = {
        [NAME_DOUBT_FIGURES] = CHECK_name_figures,
        [NAME_DOUBT_SIGNAL] = CHECK_name_signal,
        [NAME_DOUBT_LETTERS] = CHECK_name_letters,
    };
    struct name_doubt doubt;
    if (name_doubted(&run->in->boat->facts, run->arena, &doubt))
        rule_tell(run, checks[doubt.kind], doubt.value->place, doubt.remedy, "name `%s`: %s",
                  doubt.value->text, doubt.words);
}

static void spelled_check(const struct rule_run *run, const struct text_value *value)
{
    struct name name;
    if (!given(value) || !name_decode(value->text, run->arena, &name))
        return;
    if (name.typographic)
        rule_tell(run, CHECK_name_apostrophe, value->place,
                  "compare it with the ship's radio licence, and write `name_latin:` with '",
                  "name `%s` has the apostrophe U+2019, which is neither said nor spelled",
                  value->text);
    if (name.length > AIS_NAME_LONGEST)
        rule_tell(run, CHECK_name_long, value->place,
                  "nothing to do: other ships see it cut short, so say the whole name",
                  "name `%s` has %zu characters; AIS shows %d of them", value->text, name.length,
                  AIS_NAME_LONGEST);
}

void name_rules(const struct rule_run *run)
{
    const struct boat_facts *facts = &run->in->boat->facts;
    const struct text_value *licence = first_name_given(&facts->name_latin, &facts->name);
    name_field_check(run, &facts->name_latin);
    name_field_check(run, &facts->name_spoken);
    painted_check(run);
    latin_check(run);
    roman_check(run, first_name_given(&facts->name_spoken, licence));
    doubt_check(run);
    spelled_check(run, licence);
}
