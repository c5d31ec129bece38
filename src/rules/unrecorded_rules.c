/* unrecorded_rules.c - facts that cards print where they are recorded, and go without
 * where they are not (room: rules): each lack is a note, one for all pieces that lack the
 * same, so that a line lost from the record is seen. Facts that hold a card back are not
 * here. */
#include "rules_room.h"

#include "boat_facts.h"
#include "text.h"

/* ---- gear ---- */

struct gear_fact {
    enum check_name check;
    enum gear_field field;
    /* NULL: of gear that must have the field */
    bool (*asked)(const struct boat *boat, const struct equipment *gear);
    const char *so;                                 /* what follows from it */
    const char *remedy;
};

/* Beside gear whose side is recorded it is told with that. */
static bool side_asked(const struct boat *boat, const struct equipment *gear)
{
    return side_open(gear) && sided_neighbour(boat, gear) == NULL;
}

/* Gear that is asked for the field, but need not have it. */
static bool drives_asked(const struct boat *boat, const struct equipment *gear)
{
    (void)boat;
    return gear->kind->item == ITEM_autopilot;
}

static bool needs_engine_asked(const struct boat *boat, const struct equipment *gear)
{
    (void)boat;
    return gear->kind->item == ITEM_windlass;
}

static bool kit_asked(const struct boat *boat, const struct equipment *gear)
{
    (void)boat;
    return gear->kind->item == ITEM_first_aid_kit;
}

/* Of catamarans a check of its own asks. */
static bool inverted_asked(const struct boat *boat, const struct equipment *gear)
{
    enum item_key item = gear->kind->item;
    return boat->facts.hull.value != HULL_CATAMARAN &&
           (item == ITEM_epirb || item == ITEM_vhf_handheld || item == ITEM_flares ||
            item == ITEM_liferaft);
}

static bool cuts_mm_asked(const struct boat *boat, const struct equipment *gear)
{
    return gear->kind->item == ITEM_bolt_cutters && boat->facts.rig.value == RIG_SAIL;
}

static const struct gear_fact gear_facts[] = {
    {CHECK_side_unrecorded, GEAR_side, side_asked, "both sides would be searched",
     "face the bow and look on which side each is; then write side: port, side: starboard,\n"
     "side: centre or side: both"},
    {CHECK_how_unrecorded, GEAR_how, NULL, "no card says how a hand works it",
     "work each as in an emergency, then write how in a few words, such as how: {shut: across}\n"
     "or how: hold STOP"},
    {CHECK_opening_unnamed, GEAR_name, NULL, "cards cannot tell them apart",
     "follow the hose to what it serves, then write that as name, such as name: sink drain"},
    {CHECK_extinguisher_unweighed, GEAR_kg, NULL,
     "the safety plan cannot say how large they are",
     "read the weight of the filling off the label, then write it as kg"},
    {CHECK_lever_unrecorded, GEAR_upright, NULL,
     "cards cannot say how its lever stands in neutral",
     "put the lever in neutral and look, the engine stopped; then write upright: yes or\n"
     "upright: no"},
    {CHECK_pieces_uncounted, GEAR_count, NULL,
     "cards speak of one there, and more may stay open",
     "count them in that place, then write count: 1, or how many there are"},
    {CHECK_case_fact_unrecorded, GEAR_drives, drives_asked,
     "the card on lost steering does not count on it",
     "look what it is bolted to, then write drives: rudder or drives: wheel"},
    {CHECK_case_fact_unrecorded, GEAR_needs_engine, needs_engine_asked,
     "the card on the engine cannot say whether it runs without",
     "stop the engine and try it, then write needs_engine: yes or needs_engine: no"},
    {CHECK_case_fact_unrecorded, GEAR_kit, kit_asked,
     "the card on injuries goes by bare hands and cloth",
     "open it and look what is in it, then write that as kit: []"},
    {CHECK_case_fact_unrecorded, GEAR_reach_inverted, inverted_asked,
     "the card on a boat that turned over does not offer it",
     "think her upside down, and look whether a hand gets at it; then write\n"
     "reach_inverted: yes or reach_inverted: no"},
    {CHECK_case_fact_unrecorded, GEAR_cuts_mm, cuts_mm_asked,
     "the card on the mast does not count on them",
     "try them on a piece of her thickest wire, then write what they cut as cuts_mm"},
};

static bool lacks(const struct rule_run *run, const struct gear_fact *fact,
                  const struct equipment *gear)
{
    const struct field *field = gear_field_row(fact->field);
    bool asked = fact->asked != NULL
                     ? fact->asked(run->in->boat, gear)
                     : item_field(gear->kind->item, fact->field) == BELONGS_MUST;
    return asked && field_place(field, gear).line == 0 &&
           field_text(field, gear, run->arena) == NULL;
}

/* One note for all pieces, by their tags, at the first of them. */
static void gear_fact_check(const struct rule_run *run, const struct gear_fact *fact)
{
    const struct boat *boat = run->in->boat;
    struct text_builder tags = text_builder_in(run->arena);
    const struct equipment *first = NULL;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (!lacks(run, fact, gear))
            continue;
        text_add_format(&tags, "%s%s", first == NULL ? "" : ", ",
                        gear->tag.text == NULL ? gear->kind->key : gear->tag.text);
        first = first == NULL ? gear : first;
    }
    if (first != NULL)
        rule_tell(run, fact->check, first->place, fact->remedy,
                  "%s is not recorded of %s: %s", gear_field_word(fact->field), tags.at,
                  fact->so);
}

/* ---- the boat, and her fixed radio ---- */

struct section_fact {
    enum boat_fact boat;     /* the one or the other */
    enum radio_fact radio;
    bool dsc;                /* of sets with a distress key alone */
    bool on_deck;            /* of sets on deck alone */
};

static const struct section_fact of_boat[] = {{.boat = BOAT_looks}};
static const struct section_fact of_radio[] = {
    {.radio = RADIO_spot},
    {.radio = RADIO_position_read_at},
    {.radio = RADIO_power_from_cockpit, .on_deck = true},
    {.radio = RADIO_nature_steps, .dsc = true},
    {.radio = RADIO_urgency_steps, .dsc = true},
    {.radio = RADIO_silence_steps, .dsc = true}};

static const struct field *fact_row(const struct section_fact *fact)
{
    return fact->boat == BOAT_FACT_NONE ? radio_fact_row(fact->radio) : boat_fact_row(fact->boat);
}

struct section {
    const void *record;
    const struct section_fact *facts;
    size_t count;
    bool dsc, on_deck;
};

/* What the section lacks: "spot, nature_steps", and the lines to write. */
struct lacking {
    struct text_builder keys, lines;
    size_t count;
};

static struct lacking lacking_of(const struct rule_run *run, const struct section *section)
{
    struct lacking lacking = {text_builder_in(run->arena), text_builder_in(run->arena), 0};
    for (size_t i = 0; i < section->count; i++) {
        const struct section_fact *fact = &section->facts[i];
        const struct field *field = fact_row(fact);
        if ((fact->dsc && !section->dsc) || (fact->on_deck && !section->on_deck) ||
            field_place(field, section->record).line > 0 ||
            field_text(field, section->record, run->arena) != NULL)
            continue;
        text_add_format(&lacking.keys, "%s%s", lacking.count++ == 0 ? "" : ", ", field->key);
        text_add_format(&lacking.lines, "\n  %s: (%s)", field->key, field->about);
    }
    return lacking;
}

static void boat_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    struct section section = {&boat->facts, of_boat,
                              sizeof of_boat / sizeof *of_boat, false, false};
    struct lacking lacking = lacking_of(run, &section);
    if (lacking.count > 0)
        rule_tell(run, CHECK_boat_fact_unrecorded, boat->place,
                  text_format(run->arena, "look at her from another boat, then add to boat:%s",
                              lacking.lines.at),
                  "%s of the boat %s not recorded: no call says what to look for",
                  lacking.keys.at, lacking.count == 1 ? "is" : "are");
}

static bool radio_on_deck(const struct boat *boat)
{
    const struct zone *zone = zone_of(boat->radio.zone.value);
    return zone != NULL && zone->level != LEVEL_BELOW;
}

static bool has_cutters(const struct boat *boat)
{
    return boat->facts.rig.value == RIG_SAIL && boat_fitted(boat, ITEM_bolt_cutters) == ANSWER_YES;
}

static bool is_any_boat(const struct boat *boat)
{
    (void)boat;
    return true;
}

/* What a card says, or leaves unsaid, by a fact of the boat. */
static const struct boat_case {
    enum boat_fact fact;
    bool (*asked)(const struct boat *boat);
    const char *says, *remedy;
} boat_cases[] = {
    {BOAT_thickest_wire_mm, has_cutters, "the card on the mast does not count on what cuts it",
     "measure it"},
    {BOAT_draught_m, is_any_boat, "the card on going aground does not say it",
     "look it up or measure"},
    {BOAT_lay_down_place, is_any_boat, "the card on who does not breathe does not name it",
     "find the hardest flat floor that two people have room at"},
};

static void boat_case_check(const struct rule_run *run, const struct boat_case *one)
{
    const struct boat *boat = run->in->boat;
    const struct field *field = boat_fact_row(one->fact);
    if (!one->asked(boat) || field_place(field, &boat->facts).line > 0 ||
        field_text(field, &boat->facts, run->arena) != NULL)
        return;
    rule_tell(run, CHECK_case_fact_unrecorded, boat->place,
              text_format(run->arena, "%s, then add to boat:\n  %s: (%s)", one->remedy, field->key,
                          field->about),
              "%s of the boat is not recorded: %s", field->key, one->says);
}

static void radio_check(const struct rule_run *run)
{
    const struct boat *boat = run->in->boat;
    struct section section = {&boat->radio, of_radio,
                              sizeof of_radio / sizeof *of_radio,
                              boat->radio.dsc.answer == ANSWER_YES, radio_on_deck(boat)};
    struct lacking lacking = lacking_of(run, &section);
    if (lacking.count > 0 && boat_fitted(boat, ITEM_vhf_dsc) == ANSWER_YES)
        rule_tell(run, CHECK_radio_fact_unrecorded, boat->radio_place,
                  text_format(run->arena,
                              "look at the set, and into its manual, then add to radio:%s",
                              lacking.lines.at),
                  "%s of the fixed radio %s not recorded: the cards go without",
                  lacking.keys.at, lacking.count == 1 ? "is" : "are");
}

/* ---- which facts there are ---- */

static struct fact_lack gear_lack(const struct gear_fact *fact)
{
    return (struct fact_lack){equipment_fields(), gear_field_word(fact->field),
                              check_at(fact->check)->id, fact->so};
}

/* Of the sections: their rows, and the cases that hang on a fact of the boat. */
static struct fact_lack section_lack(const struct section_fact *fact)
{
    bool boat = fact->boat != BOAT_FACT_NONE;
    return (struct fact_lack){
        boat ? boat_fields() : radio_fields(), fact_row(fact)->key,
        check_at(boat ? CHECK_boat_fact_unrecorded : CHECK_radio_fact_unrecorded)->id,
        boat ? "no call says what to look for" : "the cards go without"};
}

static struct fact_lack case_lack(const struct boat_case *one)
{
    return (struct fact_lack){boat_fields(), boat_fact_row(one->fact)->key,
                              check_at(CHECK_case_fact_unrecorded)->id, one->says};
}

bool fact_lack_at(size_t index, struct fact_lack *lack)
{
    const size_t gear = sizeof gear_facts / sizeof *gear_facts;
    const size_t boat = gear + sizeof of_boat / sizeof *of_boat;
    const size_t cases = boat + sizeof boat_cases / sizeof *boat_cases;
    if (index < gear)
        *lack = gear_lack(&gear_facts[index]);
    else if (index < boat)
        *lack = section_lack(&of_boat[index - gear]);
    else if (index < cases)
        *lack = case_lack(&boat_cases[index - boat]);
    else if (index - cases < sizeof of_radio / sizeof *of_radio)
        *lack = section_lack(&of_radio[index - cases]);
    else
        return false;
    return true;
}

void unrecorded_rules(const struct rule_run *run)
{
    for (size_t i = 0; i < sizeof gear_facts / sizeof *gear_facts; i++)
        gear_fact_check(run, &gear_facts[i]);
    boat_check(run);
    for (size_t i = 0; i < sizeof boat_cases / sizeof *boat_cases; i++)
        boat_case_check(run, &boat_cases[i]);
    radio_check(run);
}
