/* command_call.c - what one boat says on the radio, on the screen (room: app). */
#include "app.h"

#include <stdio.h>

static const struct place no_place = {0};

/* One call of the command. */
struct call {
    const struct options *options;
    const struct fleet *fleet;
    struct call_place place;
};

/* ---- is it asked for rightly? ---- */

static bool boat_chosen(const struct options *options, const struct fleet *fleet)
{
    if (fleet->boat_count == 1)
        return true;
    struct text_builder list = text_builder_in(fleet->arena);
    for (size_t i = 0; i < fleet->boat_count; i++)
        text_add_format(&list, "%s%s", i == 0 ? "name one with --boat: " : ", ",
                        fleet->boat_keys[i]);
    problem_add(fleet->problems, SEVERITY_USE, no_place, list.at,
                "%s %zu boats, and a call is one boat's",
                options->boats.count == 0 ? "this base has" : "--boat names", fleet->boat_count);
    return false;
}

static void nature_refuse(const struct fleet *fleet, const char *nature)
{
    struct text_builder list = text_builder_in(fleet->arena);
    size_t count = 0;
    while (nature_at(count) != NULL)
        count++;
    const char **keys = arena_array(fleet->arena, count, sizeof *keys);
    for (size_t i = 0; i < count; i++) {
        keys[i] = nature_at(i)->key;
        text_add_format(&list, "%s%s", i == 0 ? "natures of distress: " : ", ", keys[i]);
    }
    const char *nearest = text_nearest(nature, keys, count);
    problem_add(fleet->problems, SEVERITY_USE, no_place,
                nearest == NULL ? list.at
                                : text_format(fleet->arena, "did you mean \"%s\"?", nearest),
                "there is no nature of distress \"%s\"", nature);
}

static bool nature_known(const struct options *options, const struct fleet *fleet)
{
    if (options->nature == NULL || nature_find(options->nature) != NULL)
        return true;
    nature_refuse(fleet, options->nature);
    return false;
}

/* ---- what is said ---- */

static void lines_print(const struct call *call, const struct script *script)
{
    if (call->place.position_given)
        script = script_placed(script, &call->place.position, call->fleet->arena);
    fputs(script_text(script, call->fleet->arena), stdout);
}

static const char *without_stars(struct arena *arena, const char *text)
{
    struct text_builder out = text_builder_in(arena);
    for (; *text != '\0'; text++)
        if (*text != '*')
            text_add_bytes(&out, text, 1);
    return out.at;
}

/* The other scripts of the distress card, with the words that stand round them. No
 * position is filled in: in a relay it is another vessel's. */
static void section_print(struct arena *arena, const struct card_section *section)
{
    if (section->script == NULL)
        return;
    printf("\n%s\n", section->title);
    if (section->note != NULL)
        printf("%s\n", without_stars(arena, section->note));
    fputs(script_text(section->script, arena), stdout);
    if (section->end_note != NULL)
        printf("%s\n", without_stars(arena, section->end_note));
}

/* False when the card's script could not be made, which is told as an error. */
static bool card_print(const struct call *call, const struct card *card)
{
    if (!card->call.given)
        problem_add(call->fleet->problems, SEVERITY_USE, no_place,
                    "leave out --card for the general MAYDAY", "the card %s has no call",
                    card->key);
    else if (card->call.script == NULL && !card->held)
        problem_add(call->fleet->problems, SEVERITY_USE, no_place,
                    "the card tells what is left to do: see `maydeck why`",
                    "from the card %s nobody can call: %s", card->key, card->call.title);
    if (card->call.script == NULL)
        return false;
    lines_print(call, card->call.script);
    for (size_t i = 0; i < card->section_count; i++)
        section_print(call->fleet->arena, &card->sections[i]);
    return true;
}

static size_t wanted_count(const struct call *call, const struct card_set *set)
{
    size_t count = 0;
    for (size_t i = 0; i < set->count; i++)
        count += card_wanted(call->options, set->cards[i]) ? 1 : 0;
    return count;
}

/* Where there are several, each below its title. */
static bool cards_print(const struct call *call, const struct card_set *set)
{
    bool titled = wanted_count(call, set) > 1;
    size_t printed = 0;
    for (size_t i = 0; i < set->count; i++) {
        if (!card_wanted(call->options, set->cards[i]))
            continue;
        if (printed > 0)
            puts("");
        if (titled)
            printf("%s:\n", set->cards[i]->name);
        if (!card_print(call, set->cards[i]))
            return false;
        printed++;
    }
    return printed > 0;
}

static bool form_print(const struct call *call, const struct boat *boat)
{
    const struct options *options = call->options;
    const struct fleet *fleet = call->fleet;
    enum script_form form = SCRIPT_MAYDAY;
    if (options->relay)
        form = SCRIPT_RELAY;
    else if (options->downgrade)
        form = SCRIPT_DOWNGRADE;
    else if (options->cancel)
        form = SCRIPT_CANCEL;
    if (options->cancel && !boat_can_alert(boat)) {
        problem_add(fleet->problems, SEVERITY_USE, boat->radio_place,
                    "a beacon's false alert is cancelled by telling the rescue centre its "
                    "identity: --spell",
                    "no distress alert can leave %s: there is none to cancel", boat->key);
        return false;
    }
    struct compose_input input = {.boat = boat, .base = fleet->base};
    const struct script *script = call_script(&input, form, nature_find(options->nature),
                                              fleet->arena, fleet->problems);
    if (script != NULL)
        lines_print(call, script);
    return script != NULL;
}

static bool spelling_print(const struct options *options, const struct fleet *fleet,
                           const struct boat *boat)
{
    const char *spelling = call_spelling(boat, fleet->arena, fleet->problems);
    if (spelling != NULL)
        fputs(spelling, stdout);
    if (spelling != NULL && options->itu_figures && boat->radio.mmsi.text != NULL)
        printf("FOR TRAINING ONLY, the MMSI in the figure words of the Radio Regulations:\n"
               "%s\n", spell_itu_figures(fleet->arena, boat->radio.mmsi.text));
    return spelling != NULL;
}

/* A boat file with errors gives no script: her name or identity may be what is
 * wrong. Facts of gear that hold cards back do not matter here. */
static bool call_print(const struct call *call)
{
    const struct options *options = call->options;
    struct boat_work work = boat_work(options, call->fleet, 0);
    if (work.set == NULL || !work.cards_exist)
        return false;
    if (options->spell)
        return spelling_print(options, call->fleet, work.boat);
    bool printed = options->cards.count > 0 ? cards_print(call, work.set)
                                         : form_print(call, work.boat);
    if (printed)
        call_place_print(&call->place, call->fleet);
    return printed;
}

enum exit_status command_call(const struct options *options)
{
    struct fleet fleet;
    struct call call = {.options = options, .fleet = &fleet};
    bool told = fleet_open(options, &fleet) && boat_chosen(options, &fleet) &&
                nature_known(options, &fleet) && call_place_read(options, &fleet, &call.place) &&
                call_print(&call);
    enum exit_status status = told ? report_of_run(&fleet) : report(&fleet, false);
    fleet_close(&fleet);
    return status;
}
