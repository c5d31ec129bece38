/* proof_breaks_wording.c - cards whose words are long, joined, negative or left to be
 * filled in (rules G12, G13, G25): see proof_case.h. */
#include <string.h>

#include "proof_case.h"

#define COUNT_OF(list) (sizeof list / sizeof *(list))

/* The headline of the second step, in the card. */
static void headline_says(struct proof_try *try, const char *text)
{
    try->steps[1].headline.text = text;
}

static void never_says(struct proof_try *try, const char *text)
{
    struct warnings_facts *nevers = FACTS(try->arena, &try->card, warnings, BLOCK_NEVER);
    struct card_warning *items = arena_array(try->arena, nevers->count, sizeof *items);
    memcpy(items, nevers->items, nevers->count * sizeof *items);
    items[0].text = text;
    nevers->items = items;
}

/* ---- G12 ---- */

static void row_in_capitals(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "Engine stop"), broken ? "THE RED ENGINE STOP"
                                                         : "RED ENGINE STOP");
}

static void long_command_in_capitals(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "STOP"), broken ? "STOP THE OLD ENGINE AT ONCE NOW"
                                                  : "STOP THE OLD ENGINE AT ONCE");
}

static void hyphen_at_the_end(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "Engine stop"), broken ? "Engine extin-" : "Engine 1 -");
}

static void tab_in_words(struct proof_try *try, bool broken)
{
    struct page_item *item = try_saying(try, "Engine stop");
    struct run *run = arena_alloc(try->arena, sizeof *run);
    *run = *item->run;
    run->text = broken ? "Engine\tstop" : "Engine stop";
    item->run = run;
}

static void two_actions_with_and(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**SHUT AND LOCK** the hatch." : "**SHUT** locker and hatch.");
}

static void two_actions_with_then(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**STOP THEN SHUT** it." : "**STOP** it. Shut it.");
}

static void no_verb_first(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**QUICKLY** shut it." : "**SHUT** it quickly.");
}

static void condition_without_a_verb(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**IT SPREADS: QUICKLY** away." : "**IT SPREADS: LEAVE** it.");
}

static void passive(struct proof_try *try, bool broken)
{
    never_says(try, broken ? "the valve should be left open" : "leave the valve open");
}

static void two_negatives(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**LEAVE** it. Do not look, never open."
                              : "**LEAVE** it. Do not look.");
}

/* ---- G13 ---- */

static void sentence_of_21_words(struct proof_try *try, bool broken)
{
    never_says(try, broken ? "a b c d e f g h i j k l m n o p q r s t u."
                           : "a b c d e f g h i j k l m n o p q r s t.");
}

static void sentence_of_13_words(struct proof_try *try, bool broken)
{
    never_says(try, broken ? "a b c d e f g h i j k l m." : "a b c d e f g h i j k l.");
}

static void signs_of_21_words(struct proof_try *try, bool broken)
{
    FACTS(try->arena, &try->card, signs, BLOCK_SIGNS)->signs =
        broken ? "a b c d e f g h i j k l m n o p q r s t u"
               : "a b c d e f g h i j k · l m n o p q r s t u";
}

static void command_of_7_words(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**SHUT A B C D E F** now." : "**SHUT A B C D E** now.");
}

static void command_of_33_characters(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**SHUT ABCDEFGHIJKLMNOPQRSTUVWXYZAB** it."
                              : "**SHUT ABCDEFGHIJKLMNOPQRSTUVWXYZA** it.");
}

static void headline_of_11_words(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**SHUT** a b c d e f g h i j." : "**SHUT** a b c d e f g h i.");
}

static void headline_of_51_characters(struct proof_try *try, bool broken)
{
    headline_says(try, broken ? "**SHUT** abcdefghijklmnopqrstuvwxyzabcdefghijklmnopqrst"
                              : "**SHUT** abcdefghijklmnopqrstuvwxyzabcdefghijklmnopqrs");
}

/* ---- G25 ---- */

static void left_to_fill_in(struct proof_try *try, bool broken, const char *words)
{
    item_say(try, try_saying(try, "Engine stop"), broken ? words : "Engine stop");
}

static void braces_left(struct proof_try *try, bool broken)
{
    left_to_fill_in(try, broken, "Engine {item}");
}

static void todo_left(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "Engine stop"), broken ? "TODO: name" : "TODOS SANTOS");
}

static void crosses_left(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "Engine stop"), broken ? "Engine xx" : "Engine XX, todo");
}

static void lorem_left(struct proof_try *try, bool broken)
{
    item_say(try, try_saying(try, "Engine stop"), broken ? "Lorem ipsum" : "Floremar");
}

static void question_marks_left(struct proof_try *try, bool broken)
{
    left_to_fill_in(try, broken, "Engine ???");
}

static void underscores_left(struct proof_try *try, bool broken)
{
    left_to_fill_in(try, broken, "Engine ____");
}

static void stars_left(struct proof_try *try, bool broken)
{
    left_to_fill_in(try, broken, "**Engine** stop");
}

/* ---- all ---- */

static const struct proof_break rows[] = {
    {RULE_CAPITALS, "row", "engine_fire", row_in_capitals},
    {RULE_CAPITALS, "command", "engine_fire", long_command_in_capitals},
    {RULE_HYPHEN, "end of a line", "engine_fire", hyphen_at_the_end},
    {RULE_TABS, "tab", "engine_fire", tab_in_words},
    {RULE_ONE_ACTION, "and", "engine_fire", two_actions_with_and},
    {RULE_ONE_ACTION, "then", "engine_fire", two_actions_with_then},
    {RULE_VERB_FIRST, "adverb", "engine_fire", no_verb_first},
    {RULE_VERB_FIRST, "condition", "engine_fire", condition_without_a_verb},
    {RULE_PASSIVE, "should be", "engine_fire", passive},
    {RULE_NEGATIVE, "two", "engine_fire", two_negatives},
    {RULE_SENTENCE_LONGEST, "21 words", "engine_fire", sentence_of_21_words},
    {RULE_SENTENCE_LONGEST, "signs of 21 words", "engine_fire", signs_of_21_words},
    {RULE_SENTENCE, "13 words", "engine_fire", sentence_of_13_words},
    {RULE_HEADLINE, "command of 7 words", "engine_fire", command_of_7_words},
    {RULE_HEADLINE, "command of 33 letters", "engine_fire", command_of_33_characters},
    {RULE_HEADLINE, "11 words", "engine_fire", headline_of_11_words},
    {RULE_HEADLINE, "51 letters", "engine_fire", headline_of_51_characters},
    {RULE_PLACEHOLDERS, "braces", "engine_fire", braces_left},
    {RULE_PLACEHOLDERS, "to do", "engine_fire", todo_left},
    {RULE_PLACEHOLDERS, "crosses", "engine_fire", crosses_left},
    {RULE_PLACEHOLDERS, "lorem", "engine_fire", lorem_left},
    {RULE_PLACEHOLDERS, "question marks", "engine_fire", question_marks_left},
    {RULE_PLACEHOLDERS, "underscores", "engine_fire", underscores_left},
    {RULE_PLACEHOLDERS, "stars", "engine_fire", stars_left},
};

const struct proof_breaks breaks_wording = {rows, COUNT_OF(rows)};
