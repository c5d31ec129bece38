/* call_sign_rules.c - may the call sign in the record be this boat's (room: rules).
 * Never corrects one: the spelling that counts is the licence's. */
#include "rules_room.h"

#include "radio.h"
#include "text.h"

#define COMPARE "compare it with the ship's radio licence"
#define UNKNOWN_SERIES_REMEDY \
    "compare it with the ship's radio licence; if it stands there, the table is the older:\n" \
    "add to the boat's file, with a reason and a date,\n" \
    "`silenced: [{check: call_sign_series_unknown, reason: , until: }]`"

static void series_check(const struct rule_run *run, const struct text_value *value,
                         const struct call_sign *call_sign)
{
    switch (call_sign->series) {
    case SERIES_ALLOCATED:
        if (call_sign->of_a_body)
            rule_tell(run, CHECK_call_sign_of_a_body, value->place, COMPARE,
                      "call sign `%s` is of the series of the %s: no yacht has it",
                      value->text, call_sign->holder->name);
        break;
    case SERIES_UNALLOCATED:
        rule_tell(run, CHECK_call_sign_series_unknown, value->place, UNKNOWN_SERIES_REMEDY,
                  "call sign `%s`: no country holds the series %.2s (ITU table of "
                  RADIO_TABLES_DATED ")", value->text, value->text);
        break;
    case SERIES_HALVED:
        rule_tell(run, CHECK_call_sign_halved, value->place, COMPARE,
                  "call sign `%s`: %s and %s share the series %.2s, and a digit in third place "
                  "does not tell which", value->text, call_sign->holder->name,
                  call_sign->other_holder->name, value->text);
        break;
    case SERIES_IMPOSSIBLE:
        rule_tell(run, CHECK_call_sign_impossible, value->place, COMPARE,
                  "call sign `%s`: none can begin with %.2s", value->text, value->text);
        break;
    }
}

/* Countries deviate from the patterns, so an unusual one is only worth a word. */
static void pattern_check(const struct rule_run *run, const struct text_value *value,
                          const struct call_sign *call_sign)
{
    const char *words = call_sign_pattern_words(call_sign->pattern);
    if (words != NULL)
        rule_tell(run, CHECK_call_sign_pattern, value->place, COMPARE, "call sign `%s` %s",
                  value->text, words);
}

/* A specimen must never carry what could be someone's, a boat never what is not. */
static void specimen_check(const struct rule_run *run, const struct text_value *value,
                           const struct call_sign *call_sign)
{
    if (value->text[0] != 'Q' || call_sign->pattern != PATTERN_SHIP)
        rule_tell(run, CHECK_call_sign_of_specimen, value->place,
                  "give it a ship's call sign beginning with Q, such as QTAB2: nobody holds Q",
                  "call sign `%s` of a specimen boat could be a real one", value->text);
}

static void real_check(const struct rule_run *run, const struct text_value *value,
                       const struct call_sign *call_sign)
{
    if (value->text[0] == 'Q') {
        rule_tell(run, CHECK_call_sign_reserved, value->place,
                  "write the call sign of the ship's radio licence, or mark a boat that is\n"
                  "only an example with `specimen: yes`",
                  "call sign `%s`: nobody holds the series Q; it is for specimen boats",
                  value->text);
        return;
    }
    series_check(run, value, call_sign);
    pattern_check(run, value, call_sign);
}

void call_sign_rules(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    const struct text_value *value = &boat->radio.call_sign;
    struct call_sign call_sign;
    if (text_empty(value->text))
        rule_tell(run, CHECK_call_sign_missing, place_else(value->place, boat->radio_place),
                  "write `call_sign:` from the ship's radio licence, or `call_sign: none`",
                  "call sign not recorded: the call is printed without one");
    if (!call_sign_given(value))
        return;
    if (!call_sign_decode(value->text, &call_sign))
        rule_tell(run, call_sign.fault == CALL_SIGN_LENGTH ? CHECK_call_sign_length
                                                           : CHECK_call_sign_characters,
                  value->place, CALL_SIGN_REMEDY, "call sign `%s`: %s", value->text,
                  call_sign_fault_words(&call_sign, run->arena));
    else if (boat_specimen(boat) == ANSWER_YES)
        specimen_check(run, value, &call_sign);
    else if (boat_specimen(boat) == ANSWER_NO)
        real_check(run, value, &call_sign);
}
