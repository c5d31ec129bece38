/* test_procedure_calls.c - reading who calls when, and the radio messages. */
#include "procedure_case.h"

static void one_of_the_words_is_for_every_boat(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS "calls: [{signal: pan_pan, say: A, from: fixed}]\n"
            "call_when: [{id: a, when: {fitted: torch}}]\n", ALL_TEXTS "call_when: {a: A}\n",
            FAULT(8, "the line that says when to call says nothing to a boat that fits none of "
                  "its cases", "write a last case without when"));
    refused(STEPS CAUTIONS "calls: [{signal: pan_pan, say: A, from: fixed}]\n"
            "call_when: [{id: a}, {id: b}]\n", ALL_TEXTS "call_when: {a: A, b: B}\n",
            FAULT(8, "a case of the line that says when to call has no when, so those after it "
                  "never come", "make it the last, or give it a when"));
    refused(STEPS CAUTIONS "calls: [{signal: pan_pan, say: A, from: fixed}]\n"
            "call_when: [{id: a, when: {fitted: torch}}, {}]\n",
            ALL_TEXTS "call_when: {a: A}\n",
            FAULT(8, "a case of the line that says when to call has no id",
                  "write id: with a short name, and its words under that name in the texts"));
    taken(STEPS CAUTIONS "calls: [{signal: pan_pan, say: A, from: fixed}]\n"
          "call_when: {id: a}\n", ALL_TEXTS "call_when: {a: A}\n");
}

#define CALLS STEPS CAUTIONS "call_when: {}\ncalls:\n"
#define CALLS_TEXTS ALL_TEXTS "call_when: Now.\n"

static void calls_are_ordered_and_told_apart(void **state)
{
    (void)state;
    refused(CALLS "  - {signal: pan_pan, nature: fire, say: A, from: fixed}\n", CALLS_TEXTS,
            FAULT(9, "nature fire goes with signal mayday only",
                  "take it out: only a distress alert has a nature"));
    refused(CALLS "  - {signal: mayday, say: A, from: fixed}\n", CALLS_TEXTS,
            FAULT(9, "a MAYDAY from the fixed radio needs a nature",
                  "write nature: with what the set shall tell, such as nature: fire"));
    refused(CALLS "  - {id: steady, signal: pan_pan, say: A, from: fixed}\n",
            CALLS_TEXTS "calls: {steady: steady}\n",
            FAULT(9, "the card has one call: the words of its id would not be printed",
                  "take it out"));
    refused(CALLS "  - {id: rising, signal: mayday, nature: fire, say: A, from: fixed}\n"
                  "  - {signal: pan_pan, say: A, from: fixed}\n",
            CALLS_TEXTS "calls: {rising: rising}\n",
            FAULT(10, "a card with several calls needs an id for each",
                  "write id: and, under that id in the texts, the word that tells this call "
                  "from the other"));
    refused(CALLS "  - {id: steady, signal: pan_pan, say: A, from: fixed}\n"
                  "  - {id: rising, signal: mayday, nature: fire, say: A, from: fixed}\n",
            CALLS_TEXTS "calls: {steady: steady, rising: rising}\n",
            FAULT(10, "mayday stands after the milder pan_pan", "put the graver call first"));
    test.problems = problems_new(test.arena);
    assert_null(procedure_of(CALLS "  - {signal: mayday, nature: floding, say: A, from: fixed}\n",
                             CALLS_TEXTS));
    expect_errors(1);
    expect_error_with(9, "floding", "flooding");
}

static void every_nature_of_the_set_may_be_called(void **state)
{
    (void)state;
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++) {
        const struct procedure *procedure = procedure_of(
            text_format(test.arena, CALLS "  - {signal: mayday, nature: %s, say: A, from: fixed}\n",
                        choice_word(nature_words, key)), CALLS_TEXTS);
        expect_errors(0);
        assert_int_equal(procedure->calls[0].nature.value, key);
    }
}

static void a_call_has_its_moment(void **state)
{
    (void)state;
    refused(STEPS CAUTIONS "calls: [{signal: pan_pan, say: A, from: fixed}]\n", ALL_TEXTS,
            FAULT(1, "the procedure has a call but no call_when", NULL));
    refused("steps: [{id: stop, sources: [S1], cases: [{report: ON}]}]\n" CAUTIONS, ALL_TEXTS,
            FAULT(5, "report: the procedure has no call that could say it",
                  "take it out, or write calls: with the message"));
    refused(STEPS CAUTIONS "call_when: {}\n", ALL_TEXTS "call_when: Now.\n",
            FAULT(7, "the procedure says when to call but has no call", NULL));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(calls_are_ordered_and_told_apart),
        TEST(every_nature_of_the_set_may_be_called),
        TEST(a_call_has_its_moment),
        TEST(one_of_the_words_is_for_every_boat),
    };
    int failed = cmocka_run_group_tests_name("procedure calls", tests, NULL, NULL);
    return failed != 0;
}
