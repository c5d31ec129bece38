/* command_call.c - what one boat says on the radio, on the screen (room: app). */
#include "call_told.h"
#include "job.h"

#include <string.h>

/* One call of the command. */
struct call {
    const struct options *options;
    const struct fleet *fleet;
    struct call_place place;
    struct boat_job *boat;    /* who calls */
    struct call_told told;
    bool shown;               /* all that was asked for was told; else nothing is */
};

/* ---- is it asked for rightly? ---- */

static bool boat_chosen(const struct options *options, const struct fleet *fleet)
{
    if (fleet->boat_count == 1)
        return true;
    struct text_builder list = text_builder_in(fleet->arena);
    for (size_t i = 0; i < fleet->boat_count; i++)
        text_add_format(&list, "%s%s", i == 0 ? "name one with --boat: " : ", ",
                        fleet->boats[i].key);
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE, list.at,
                "%s %zu boats, and a call is one boat's",
                options->boats.count == 0 ? "this base has" : "--boat names", fleet->boat_count);
    return false;
}

static bool nature_sound(const struct options *options)
{
    return options->nature == NULL || choice_find(nature_words, options->nature) > 0;
}

/* What cards call the natures. */
static struct known_names natures_known(const struct fleet *fleet)
{
    struct known_name *rows = arena_array(fleet->arena, NATURE_COUNT, sizeof *rows);
    size_t count = 0;
    if (fleet->first_language == NULL)
        return (struct known_names){0};
    for (enum nature_key key = NATURE_NONE + 1; key < NATURE_COUNT; key++) {
        const char *printed = words_get(fleet->first_language, nature_of(key)->brief);
        rows[count++] = (struct known_name){name_plain(fleet->arena, printed),
                                            choice_word(nature_words, key), printed};
    }
    return (struct known_names){rows, count, NULL};
}

static const char *nature_remedy(const struct options *options, const struct fleet *fleet)
{
    struct known_names known = natures_known(fleet);
    struct text_builder list = text_builder_in(fleet->arena);
    for (size_t i = 0; nature_words[i] != NULL; i++)
        text_add_format(&list, "%s%s", i == 0 ? "natures of distress: " : ", ", nature_words[i]);
    return known_remedy(fleet->arena, &known, options->nature, nature_words, list.at);
}

static bool nature_known(const struct options *options, const struct fleet *fleet)
{
    if (nature_sound(options))
        return true;
    problem_add(fleet->problems, SEVERITY_USE, NO_PLACE, nature_remedy(options, fleet),
                "there is no nature of distress \"%s\"", options->nature);
    return false;
}

/* ---- what is said ---- */

/* The script with the place and time that are given. */
static void lines_tell(struct call *call, const struct script *script)
{
    struct arena *arena = call->told.arena;
    if (call->place.position_given)
        script = script_placed(script, &call->place.position, arena);
    if (call->place.time != NULL)
        script = script_timed(script, call->place.time, arena);
    told_lines_add(&call->told, script);
}

static void said_line_tell(struct call *call, const char *lead, const char *line)
{
    if (line != NULL)
        told_line_add(&call->told, lead, "  ", text_plain(call->told.arena, line));
}

/* The other blocks of the distress card, as they stand on it. No position and no time is filled
 * in: in a relay they are another boat's. */
static void card_section_tell(struct call *call, const struct section_facts *section)
{
    told_section_add(&call->told, text_empty(section->title) ? NULL : section->title);
    said_line_tell(call, NULL, section->note);
    for (size_t i = 0; i < section->hint_count; i++)
        said_line_tell(call, NULL, section->hints[i].text);
    for (size_t i = 0; i < section->line_count; i++)
        said_line_tell(call, section->lead == NULL ? NULL : section->lead[i],
                       section->lines[i].text);
    if (section->script != NULL)
        told_lines_add(&call->told, section->script);
    said_line_tell(call, NULL, section->end_note);
}

static void card_sections_tell(struct call *call, const struct sheet *sheet)
{
    for (size_t i = 0; i < sheet->block_count; i++)
        if (facts_kind_of(sheet->blocks[i].key) == FACTS_SECTION)
            card_section_tell(call, sheet->blocks[i].facts.section);
}

/* False when the card's script could not be made, which is told as an error. */
static bool card_tell(struct call *call, const struct sheet_name *card)
{
    struct boat_job *boat = call->boat;
    struct compose_input input = compose_input_of(boat, boat->job->languages.rows[0]);
    const struct sheet *sheet = sheet_calls(&input, card->id, boat->arena, boat->problems);
    const struct call_facts *panel = sheet_call(sheet);
    if (sheet->unsafe) {
        problem_add(boat->problems, SEVERITY_HELD, NO_PLACE,
                    "put right what is told of the base's own text of it",
                    "the card %s says nothing: it is held back", card->id);
        return false;
    }
    if (sheet_block(sheet, BLOCK_CALL) == NULL)
        problem_add(boat->problems, SEVERITY_USE, NO_PLACE,
                    "leave out --card for the general MAYDAY", "the card %s has no call",
                    card->id);
    else if (panel->silent)
        problem_add(boat->problems, SEVERITY_USE, NO_PLACE,
                    "the card tells what is left to do: see `maydeck why`",
                    "from the card %s nobody can call: %s", card->id, panel->title);
    if (panel->script == NULL)
        return false;
    told_script_add(&call->told, "card", card->id, card->name);
    lines_tell(call, panel->script);
    card_sections_tell(call, sheet);
    return true;
}

/* The cards of hers that --card asks for. */
struct asked_cards {
    const struct sheet_name **at;
    size_t count;
};

static struct asked_cards cards_choose(const struct call *call, const struct sheet_name *names,
                                       size_t count)
{
    struct asked_cards asked = {.at = arena_array(call->boat->arena, count, sizeof *asked.at)};
    for (size_t i = 0; i < count; i++)
        if (card_named(call->options, names[i].id, names[i].procedure_key))
            asked.at[asked.count++] = &names[i];
    return asked;
}

/* False, with a problem each, when one that is asked for is none of hers. */
static bool cards_known(const struct call *call, const struct sheet_name *names, size_t count)
{
    struct names keys = {0}, known = {0};
    bool all = true;
    for (size_t i = 0; i < count; i++) {
        names_add(&keys, names[i].id, call->boat->arena);
        names_add(&known, names[i].id, call->boat->arena);
        names_add(&known, names[i].procedure_key, call->boat->arena);
    }
    for (size_t i = 0; i < call->options->cards.count; i++) {
        if (names_hold(&known, call->options->cards.at[i]))
            continue;
        no_such_card(call->boat, &keys, call->options->cards.at[i]);
        all = false;
    }
    return all;
}

static bool cards_tell(struct call *call)
{
    size_t count;
    struct compose_input input = compose_input_of(call->boat, call->boat->job->languages.rows[0]);
    const struct sheet_name *names = sheet_names(&input, call->boat->arena, &count);
    struct asked_cards asked = cards_choose(call, names, count);
    if (!cards_known(call, names, count))
        return false;
    for (size_t i = 0; i < asked.count; i++)
        if (!card_tell(call, asked.at[i]))
            return false;
    return asked.count > 0;
}

/* As JSON names them. */
static const char *const form_words[SCRIPT_FORM_COUNT] = {
    [SCRIPT_MAYDAY] = "mayday", [SCRIPT_PAN_PAN] = "pan_pan", [SCRIPT_SECURITE] = "securite",
    [SCRIPT_RECEIPT] = "receipt", [SCRIPT_RELAY] = "relay", [SCRIPT_DOWNGRADE] = "downgrade",
    [SCRIPT_CANCEL] = "cancel", [SCRIPT_CANCEL_BEACON] = "cancel_beacon"};

static enum script_form form_asked(const struct options *options)
{
    const struct { bool asked; enum script_form form; } rows[] = {
        {options->pan_pan, SCRIPT_PAN_PAN}, {options->securite, SCRIPT_SECURITE},
        {options->receipt, SCRIPT_RECEIPT}, {options->relay, SCRIPT_RELAY},
        {options->downgrade, SCRIPT_DOWNGRADE}, {options->cancel, SCRIPT_CANCEL},
        {options->cancel_beacon, SCRIPT_CANCEL_BEACON}};
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        if (rows[i].asked)
            return rows[i].form;
    return SCRIPT_MAYDAY;
}

/* False, with a problem, where nothing aboard can have sent what is to be cancelled. */
static bool can_cancel(const struct options *options, struct boat_job *boat)
{
    bool radio = options->cancel && !boat_can_alert(boat->boat);
    bool beacon = options->cancel_beacon && !boat_has_beacon(boat->boat);
    if (radio)
        problem_add(boat->problems, SEVERITY_USE, boat->boat->radio_place,
                    "a beacon's false alert is told with --cancel-beacon",
                    "no distress alert can leave %s: there is none to cancel", boat->key);
    if (beacon)
        problem_add(boat->problems, SEVERITY_USE, boat->boat->place,
                    "a radio's false alert is cancelled with --cancel",
                    "no beacon is recorded on %s", boat->key);
    return !radio && !beacon;
}

static bool form_tell(struct call *call)
{
    const struct options *options = call->options;
    struct boat_job *boat = call->boat;
    if (!can_cancel(options, boat))
        return false;
    struct compose_input input = compose_input_of(boat, NULL);
    const struct nature *nature =
        options->nature == NULL ? NULL : nature_of(choice_find(nature_words, options->nature));
    const struct script *script =
        call_script(&input, form_asked(options), nature, boat->arena, boat->problems);
    if (script == NULL)
        return false;
    told_script_add(&call->told, form_words[form_asked(options)], NULL, NULL);
    lines_tell(call, script);
    return true;
}

/* A line each. */
static void text_lines_tell(struct call *call, const char *text)
{
    while (*text != '\0') {
        size_t length = strcspn(text, "\n");
        told_line_add(&call->told, NULL, "", arena_copy(call->told.arena, text, length));
        text += length + (text[length] == '\n' ? 1 : 0);
    }
}

static bool spelling_tell(struct call *call)
{
    struct boat_job *boat = call->boat;
    const char *mmsi = boat->boat->radio.mmsi.text;
    const char *spelling = call_spelling(boat->boat, boat->arena, boat->problems);
    if (spelling == NULL)
        return false;
    told_script_add(&call->told, "spelling", NULL, NULL);
    text_lines_tell(call, spelling);
    if (call->options->itu_figures && mmsi != NULL) {
        told_line_add(&call->told, NULL, "",
                      "FOR TRAINING ONLY, the MMSI in the figure words of the Radio "
                      "Regulations:");
        text_lines_tell(call, spell_itu_figures(boat->arena, mmsi));
    }
    return true;
}

static bool call_tell(struct call *call)
{
    if (call->options->spell)
        return spelling_tell(call);
    return call->options->cards.count > 0 ? cards_tell(call) : form_tell(call);
}

/* While her own arena lives. */
static void call_show(const struct call *call)
{
    const struct call_place *place = call->options->spell ? NULL : &call->place;
    if (call->options->json)
        call_json_print(call->options, &call->told, place, call->fleet);
    else
        call_text_print(&call->told, place, call->fleet);
}

/* A boat file with errors gives no script: her name or identity may be what is
 * wrong. Facts of gear that hold cards back do not matter here. */
static void boat_call(void *run, struct boat_job *boat)
{
    struct call *call = run;
    call->boat = boat;
    call->told = (struct call_told){.arena = boat->arena};
    call->shown = boat->sound && call_tell(call);
    if (call->shown)
        call_show(call);
}

/* Procedures and words are read for the call of a card alone, and to tell what a nature was
 * meant for: all others are said in words that the radio regulations give. */
static bool texts_needed(const struct options *options)
{
    return options->cards.count > 0 || !nature_sound(options);
}

enum exit_status command_call(const struct options *options)
{
    static const struct job_use use = {.last = STEP_JUDGE, .end = boat_call};
    struct fleet fleet;
    struct call call = {.options = options, .fleet = &fleet};
    if (fleet_open(options, NEED_ANY_DAY | (texts_needed(options) ? NEED_TEXTS : 0), &fleet) &&
        boat_chosen(options, &fleet) && nature_known(options, &fleet) &&
        call_place_read(options, &fleet, &call.place)) {
        struct job job = job_of(options, &fleet);
        job_run(&job, &use, &call);
    }
    enum exit_status status = call.shown ? report_of_run(&fleet)
                                         : report(&fleet, SEVERITY_HELD);
    fleet_close(&fleet);
    return status;
}
