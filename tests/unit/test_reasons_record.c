/* test_reasons_record.c - of the record only what decides is told, and words with cases by
 * their cases. */
#include "reasons_case.h"

/* Needs a fact of its own. */
#define MUSTER \
    "  - id: light\n" \
    "    cases:\n" \
    "      - when: {fitted: torch}\n" \
    "        uses: [torch]\n" \
    "      - id: match\n" \
    "    practice: yes\n"
#define MUSTER_TEXTS \
    "  light: {act: \"**TAKE** it.\", cases: {match: {act: \"**STRIKE** one.\"}}}\n"

/* ---- what decides ---- */

#define FIGHT \
    "steps:\n" \
    "  - id: fight\n" \
    "    within: companionway\n" \
    "    cases:\n" \
    "      - id: cut\n" \
    "        when: {any: [{reach: {bucket_lanyard: deck}}, {reach: {knife: companionway}}]}\n" \
    "        also: [knife]\n" \
    "      - {}\n" \
    "    practice: yes\n"
#define FIGHT_TEXTS \
    "steps:\n" \
    "  fight: {act: \"**GO** on deck.\", cases: {cut: {act: \"**CUT** it.\"}}}\n"
static const struct written fight = {FIGHT, FIGHT_TEXTS};

/* Of the alternatives the first that holds; of its pieces those that hold. */
static void only_what_decides_is_told(void **state)
{
    (void)state;
    const char *text = reasons_with(
        fight, GEAR "  - {item: bucket_lanyard, tag: C2, zone: forward_cabin}\n", "");
    expect_part(text, "   record: knife E1 zone = cockpit at text.yaml:17\n"
                      "   record: knife E1 reached from open_deck at text.yaml:17\n"
                      "   record: knife E2 left out: not reached from companionway, but reached "
                      "from below only\n      at text.yaml:18\n");
    expect_none(text, "bucket_lanyard C2");
    text = reasons_with(fight, GEAR "  - {item: bucket_lanyard, tag: C2, zone: cockpit}\n",
                        "");
    expect_part(text, "   record: bucket_lanyard C2 fitted at text.yaml:19\n"
                      "   record: bucket_lanyard C2 zone = cockpit at text.yaml:19\n"
                      "   record: bucket_lanyard C2 reached from open_deck at text.yaml:19\n");
    expect_none(text, "knife E1 zone");
}

/* Where none holds, all are told: what is not recorded counts as below. */
static void all_that_fail_are_told(void **state)
{
    (void)state;
    const char *text = reasons_with(fight, "  - {item: knife, tag: E2, zone: saloon}\n",
                                    "  - bucket_lanyard\n");
    expect_part(text, "   record: bucket_lanyard not fitted at text.yaml:18\n"
                      "   record: knife E2 fitted at text.yaml:16\n"
                      "   record: knife E2 zone = saloon at text.yaml:16\n"
                      "   record: knife E2 from_cockpit = not recorded at text.yaml:16\n"
                      "   record: knife E2 reached from below only at text.yaml:16\n");
}

/* Asked whether one lies beyond reach, the one that does is told; what it is inside of, too. */
static void the_piece_beyond_reach_is_told(void **state)
{
    (void)state;
    const char *text = reasons_with(
        (struct written){
            "steps:\n"
            "  - id: leave\n"
            "    cases:\n"
            "      - {id: leave, when: {beyond: {knife: companionway}}}\n"
            "      - {}\n"
            "    practice: yes\n",
            "steps:\n"
            "  leave: {act: \"**GO** on deck.\", cases: {leave: {act: \"**LEAVE** it.\"}}}\n"},
        GEAR "  - {item: knife, tag: E3, zone: foredeck, inside: [saloon]}\n", "");
    expect_part(text, "   record: knife E2 fitted at text.yaml:18\n"
                      "   record: knife E3 fitted at text.yaml:19\n"
                      "   record: knife E2 zone = saloon at text.yaml:18\n"
                      "   record: knife E2 from_cockpit = not recorded at text.yaml:18\n"
                      "   record: knife E2 reached from below only at text.yaml:18\n"
                      "   record: knife E3 zone = foredeck at text.yaml:19\n"
                      "   record: knife E3 inside = saloon at text.yaml:19\n");
    expect_none(text, "knife E1");
}

/* An alternative that is not known holds nothing where the other one decides. */
static void what_does_not_decide_holds_nothing(void **state)
{
    (void)state;
    const char *gear = "  - {item: knife, tag: E1, zone: cockpit}\n";
    expect_none(reasons_with(fight, gear, ""), "HELD BACK");
    const char *text = reasons_with(
        (struct written){FIGHT MUSTER, FIGHT_TEXTS MUSTER_TEXTS}, gear, "");
    expect_part(text, "Held back by\n   torch is not recorded");
    expect_none(text, "bucket_lanyard is not recorded");
    expect_none(text, "bucket_lanyard not recorded");
}

/* ---- words with cases ---- */

static const struct written words = {
    "steps: [{id: go, practice: yes}]\n"
    "never:\n"
    "  - id: flame\n"
    "    when: {boat: gas}\n"
    "    sources: [S5]\n"
    "  - {id: swim, when: {boat: catamaran}, sources: [S5]}\n"
    "call_when:\n"
    "  - id: pumps\n"
    "    when: {surely: {is: {bilge_pump_electric: {fed_by: mains}}}}\n"
    "  - {id: torch, when: {fitted: torch}}\n"
    "  - {id: all}\n"
    "calls:\n"
    "  - {signal: mayday, nature: fire, say: I AM ON FIRE, from: fixed}\n",
    "steps: {go: {act: \"**GO** on deck.\"}}\n"
    "never:\n"
    "  flame: light a flame.\n"
    "  swim: swim.\n"
    "call_when:\n"
    "  pumps: Pumps stop. Call now.\n"
    "  torch: Call by torch.\n"
    "  all: Call.\n"};
#define PUMP "  - {item: bilge_pump_electric, tag: C2, zone: saloon}\n"

static void words_with_cases_are_told_by_cases(void **state)
{
    (void)state;
    const char *text = reasons_with(words, GEAR PUMP, "");
    expect_part(text, "   when to call: Call by torch. at words.yaml:11\n"
                      "      passed over: case 1 of 3, which asks: recorded so: "
                      "bilge_pump_electric fed_by = mains\n         at logic.yaml:12\n"
                      "      case 2 of 3: torch fitted at logic.yaml:14\n"
                      "      record: bilge_pump_electric C2 fitted at text.yaml:19\n"
                      "      record: bilge_pump_electric C2 fed_by = not recorded at text.yaml:19\n"
                      "      record: torch C1 fitted at text.yaml:16\n");
    text = reasons_with(words, "  - {item: knife, tag: E1, zone: cockpit}\n",
                        "  - torch\n  - bilge_pump_electric\n");
    expect_part(text, "   when to call: Call. at words.yaml:12\n");
    expect_part(text, "      case 3 of 3: every other boat at logic.yaml:15\n");
}

static void warnings_are_told_where_they_are_said(void **state)
{
    (void)state;
    const char *text = reasons_with(words, GEAR PUMP, "");
    expect_part(text, "Never: light a flame. at words.yaml:7\n   called flame at logic.yaml:7\n"
                      "   only where: she carries cooking gas at logic.yaml:8\n"
                      "      record: she carries cooking gas: not recorded, which counts as yes "
                      "at text.yaml\n");
    expect_part(text, "Not on this card: Never: swim. at words.yaml:8\n"
                      "   called swim at logic.yaml:10\n"
                      "   only where: she is a catamaran at logic.yaml:10\n"
                      "      record: she is a catamaran: no at text.yaml:1\n");
}

int main(void)
{
#define TEST(name) cmocka_unit_test_setup_teardown(name, test_begin, test_end)
    const struct CMUnitTest tests[] = {
        TEST(only_what_decides_is_told),
        TEST(all_that_fail_are_told),
        TEST(the_piece_beyond_reach_is_told),
        TEST(what_does_not_decide_holds_nothing),
        TEST(words_with_cases_are_told_by_cases),
        TEST(warnings_are_told_where_they_are_said),
    };
    return cmocka_run_group_tests(tests, NULL, NULL) != 0;
}
