/* identity.c - do the boat's call sign, MMSI and flag hold together (room:
 * radio). Never stops at the first fault: all are told. */
#include "identity.h"

#include "text.h"

/* Overseas territories answer to their parent, so HR and HR agree, GI and GB too. */
static const struct administration *flag_find(const struct boat *boat)
{
    return text_empty(boat->facts.flag.text) ? NULL : administration_find(boat->facts.flag.text);
}

static bool disagree(const struct administration *a, const struct administration *b)
{
    return a != NULL && b != NULL && !text_equal(a->administration, b->administration);
}

static const char *name_of(const struct administration *who)
{
    return who != NULL ? who->name : "not known";
}

static void check_agreement(const struct boat *boat, struct problems *problems)
{
    const struct radio_facts *radio = &boat->radio;
    char digits[MMSI_DIGITS + 1];
    bool mmsi_given = !text_empty(radio->mmsi.text) && mmsi_read(radio->mmsi.text, digits);
    const struct administration *by_mmsi = mmsi_given ? mid_find(digits) : NULL;
    const struct administration *by_call_sign =
        call_sign_given(&radio->call_sign) ? call_sign_find(radio->call_sign.text) : NULL;
    const struct administration *by_flag = flag_find(boat);
    if (disagree(by_mmsi, by_call_sign) || disagree(by_mmsi, by_flag)
        || disagree(by_call_sign, by_flag))
        problem_add(problems, SEVERITY_NOTE,
                    mmsi_given ? radio->mmsi.place : radio->call_sign.place,
                    "compare all three with the ship's papers: one is wrong, or was not changed\n"
                    "with the flag",
                    "MMSI, call sign and flag are not of one country: MMSI %s, call sign %s, "
                    "flag %s", name_of(by_mmsi), name_of(by_call_sign), name_of(by_flag));
}

static void check_flag(const struct boat *boat, struct problems *problems)
{
    const struct text_value *flag = &boat->facts.flag;
    if (boat->facts.specimen.answer != ANSWER_YES && !text_empty(flag->text)
        && flag_find(boat) == NULL)
        problem_add(problems, SEVERITY_NOTE, flag->place,
                    "write the flag as the country's two letters (ISO 3166), such as HR or GB",
                    "flag `%s` is not known here: MMSI and call sign are not compared with it",
                    flag->text);
}

bool identity_check(const struct boat *boat, struct arena *arena, struct problems *problems)
{
    (void)arena;
    size_t before = problems_count(problems, SEVERITY_ERROR);
    call_sign_check(boat, problems);
    mmsi_check(boat, problems);
    check_agreement(boat, problems);
    check_flag(boat, problems);
    return problems_count(problems, SEVERITY_ERROR) == before;
}
