/* test_rules_name.c - the boat's name, and values that other readers take for something
 * else: each check of the two families told, and not told. Vectors are in
 * test_name_rules.c and test_quotes_rules.c. */
#include "rules_rows.h"

#define NAMED(name) \
    {.boat = "boat: {name: " name ", hull: monohull, rig: sail, loa_m: 12, beam_m: 4, " \
             "persons_max: 4}\n"}

static const struct rule_row rows[] = {
    {"name_unspeakable", NAMED("Nº 1"), 1, "name `Nº 1`", NAMED("Alder")},
    {"name_latin_missing", NAMED("Öre, name_spoken: Orray"), 1,
     "is not recorded in Latin letters: the cards spell `Orray`",
     NAMED("Öre, name_latin: Oere, name_spoken: Orray")},
    {"name_latin_differs", NAMED("Alder, name_latin: Elder"), 1,
     "name_latin `Elder` is not how `Alder` is spelled", NAMED("Alder, name_latin: Alder")},
    {"name_roman", NAMED("Alder II"), 1, "II can be said as a number or as letters",
     NAMED("Alder II, name_spoken: Alder Two")},
    {"name_figures", NAMED("Alder 45"), 1, "name `Alder 45`: how its figures are called out",
     NAMED("Alder 45, name_spoken: Alder Forty-Five")},
    {"name_signal", NAMED("Mayday"), 1, "on the radio MAYDAY is heard as what it says",
     NAMED("Mayday, name_spoken: Yacht Mayday")},
    {"name_letters", NAMED("Mike Two"), 1, "on the radio it is heard as M2",
     NAMED("Mike Two, name_spoken: Yacht Mike Two")},
    {"name_apostrophe", NAMED("L’Exemple"), 1, "has the apostrophe U+2019", NAMED("\"L'Exemple\"")},
    {"name_long", NAMED("Alder of the Long Marsh"), 1, "has 23 characters; AIS shows 20",
     NAMED("Alder of the Marshes")},
};

static const struct rule_row quotes_rows[] = {
    {"without_quotes", NAMED("Off"), 1, "name `Off` is read here", NAMED("\"Off\"")},
};

const struct rule_table rule_table_name = RULE_TABLE(name_rules, rows);
const struct rule_table rule_table_quotes = RULE_TABLE(quotes_rules, quotes_rows);

int main(void)
{
    return rows_run(&rule_table_name) + rows_run(&rule_table_quotes);
}
