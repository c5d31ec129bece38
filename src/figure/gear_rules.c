/* gear_rules.c - the one table of how long each kind of gear is good, whether it
 * must have a date, and why (room: figure). Never computes a date. What is called
 * trade practice here was told by people of the trade and stands on no authority's
 * text that was read: the stamp on the piece and the maker's word go before it. */
#include "capacity.h"
#include "gear_date.h"
#include "text.h"

/* What was never serviced counts from making, which was before any service. */
#define SERVICE {GEAR_serviced, GEAR_made}
#define ANY {GEAR_serviced, GEAR_installed, GEAR_made}

#define PRACTICE "trade practice"
#define STAMP "the date stamped on it or on its certificate, nothing else"

/* One that is thrown away is never serviced: its age or its stamp is all there is. */
#define EXTINGUISHER(key) \
    {.item = key, .disposable = true, .us_rated = true, .from = {GEAR_made}, .months = 144, \
     .year_means = YEAR_MEANS_LAST_DAY, .whole_years = true, .months_fixed = true, \
     .needed = true, .why = "it cannot be refilled or tried: only its age tells", \
     .source = "United States Coast Guard on disposable extinguishers (ACN 002/22): out of " \
               "use at the end of the twelfth year after making"}, \
    {.item = key, .disposable = true, .months_fixed = true, .needed = true, \
     .why = "it cannot be refilled or tried: only its stamp tells", .source = STAMP}, \
    {.item = key, .from = SERVICE, .months = 12, .needed = true, \
     .why = "it loses pressure and its powder cakes without a sign", \
     .source = "United Kingdom note on portable extinguishers (MGN 276, read in a copy): " \
               "basic service every year"}

/* A year without a month means its first day, save where the rule itself says the
 * end of the year. Rows of one item stand together, the particular before the
 * general. */
static const struct gear_rule gear_rules[] = {
    /* fire */
    EXTINGUISHER(ITEM_engine_extinguisher),
    EXTINGUISHER(ITEM_fire_extinguisher),
    {.item = ITEM_fixed_extinguisher, .from = SERVICE, .months = 12, .needed = true,
     .why = "nobody sees a leak of its agent; it must be weighed",
     .source = PRACTICE ": weighed and looked over every year"},
    {.item = ITEM_smoke_alarm, .from = {GEAR_made}, .months = 120, .needed = true,
     .why = "its sensor ages; the test button tries only the horn",
     .source = PRACTICE ": replaced after ten years"},
    {.item = ITEM_co_alarm, .from = {GEAR_made}, .months = 60, .needed = true,
     .why = "its sensor ages; the test button tries only the horn",
     .source = PRACTICE ": good for five to ten years, the shorter taken"},
    {.item = ITEM_gas_alarm, .from = {GEAR_made}, .months = 60, .needed = true,
     .why = "its sensor ages; the test button tries only the horn",
     .source = PRACTICE ": replaced after five years"},
    {.item = ITEM_lpg_hose, .from = {GEAR_made}, .months = 60, .needed = true,
     .why = "rubber cracks where nobody looks, and the gas lies in the bilge",
     .source = PRACTICE ": five years from the date on the hose"},

    /* leaving the boat */
    {.item = ITEM_liferaft, .months_fixed = true, .needed = true,
     .why = "nobody can look inside it: its service card alone tells",
     .source = "the raft's own stamp: intervals differ by raft, use and flag state, so nothing "
               "is computed"},
    {.item = ITEM_hydrostatic_release, .from = {GEAR_installed}, .months = 24, .life_months = 48,
     .needed = true, .why = "it fails unseen, and the raft or the beacon goes down with the boat",
     .source = "Australian guidance for beacons: two years from fitting; " PRACTICE " for rafts; "
               "makers: four years from making at most"},
    {.item = ITEM_epirb, .from = ANY, .needed = true,
     .why = "its battery runs down unseen and a test spends it", .source = STAMP},
    {.item = ITEM_personal_beacon, .from = ANY, .needed = true,
     .why = "its battery runs down unseen and a test spends it", .source = STAMP},
    {.item = ITEM_sart, .from = ANY, .needed = true,
     .why = "its battery runs down unseen and a test spends it", .source = STAMP},
    {.item = ITEM_flares, .from = {GEAR_made}, .months = 36, .needed = true,
     .why = "an old flare may fail or burn the hand that holds it",
     .source = PRACTICE ": about three years from making, where the printed date is lost"},
    {.item = ITEM_grab_bag, .from = SERVICE, .months = 12, .needed = true,
     .why = "it stays shut, and what is packed in it runs out",
     .source = PRACTICE ": gone through every year"},
    {.item = ITEM_water_emergency, .from = SERVICE, .months = 12, .needed = true,
     .why = "stored water goes bad unseen", .source = PRACTICE ": changed every year"},
    {.item = ITEM_first_aid_kit, .from = SERVICE, .months = 12, .needed = true,
     .why = "it stays shut, and medicines and sterile packs run out",
     .source = PRACTICE ": gone through every year"},

    /* in the water */
    {.item = ITEM_lifejacket, .from = SERVICE, .months = 12, .needed = true,
     .why = "a leak, a loose bottle or a spent head shows only when it must lift someone",
     .source = "a yachting association's text on charter craft, of which an extract was read: "
               "serviced every year"},
    {.item = ITEM_harness_tether, .from = SERVICE, .months = 12,
     .why = "wear of webbing and hooks can be seen and felt",
     .source = PRACTICE ": looked over every year"},
    {.item = ITEM_jackstay, .from = {GEAR_installed, GEAR_made}, .months = 36,
     .why = "many are wire, which the sun does not rot",
     .source = PRACTICE ": webbing is good for three to five years in the sun, the shorter taken"},
    {.item = ITEM_mob_light, .from = SERVICE, .months = 12,
     .why = "it is tried at each handing over", .source = PRACTICE ": a new battery every year"},
};

static const struct gear_rule other_kinds = {
    .from = ANY, .why = "nothing in it is known to run out unseen",
    .source = "its own date, or the months the base has set"};

static bool us_rated(const struct equipment *gear)
{
    struct fire_rating rating;
    return gear->rating.text != NULL &&
           fire_rating_parse(gear->rating.text, &rating) == RATING_READ &&
           rating.system == RATING_SYSTEM_US;
}

static bool rule_is_for(const struct gear_rule *rule, const struct equipment *gear)
{
    return rule->item == gear->kind->item &&
           (!rule->disposable || gear->disposable.answer == ANSWER_YES) &&
           (!rule->us_rated || us_rated(gear));
}

const struct gear_rule *gear_rule_of(const struct equipment *gear)
{
    for (size_t i = 0; i < sizeof gear_rules / sizeof gear_rules[0]; i++)
        if (rule_is_for(&gear_rules[i], gear))
            return &gear_rules[i];
    return &other_kinds;
}

const struct gear_rule *gear_rule_at(size_t index)
{
    if (index < sizeof gear_rules / sizeof gear_rules[0])
        return &gear_rules[index];
    return index == sizeof gear_rules / sizeof gear_rules[0] ? &other_kinds : NULL;
}
