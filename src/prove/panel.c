/* panel.c - what the call panel and the line on who calls when have people do (room: prove).
 * Gear is known by its tag in a line, the fixed set by the line of the record that a line came
 * from. A line that forbids sends nobody. */
#include "prove_room.h"

#include "phrase.h"
#include "speak.h"

#include <string.h>

bool text_names(const struct text_value *text, const char *name)
{
    size_t length = strlen(name);
    for (const char *at = TEXT_OR_EMPTY(*text); (at = strchr(at, '{')) != NULL; at++)
        if (strncmp(at + 1, name, length) == 0 && at[length + 1] == '}')
            return true;
    return false;
}

/* ---- who calls when ---- */

const char *call_step(const struct visit *visit)
{
    const struct procedure *procedure = visit->sheet->procedure;
    const struct said *said = said_take(visit->composing, &procedure->call_when);
    const char *last = NULL;
    for (size_t i = 0; said != NULL && i < procedure->step_count; i++)
        if (text_names(&said->say, procedure->steps[i].id.text))
            last = procedure->steps[i].id.text;
    return last;
}

bool calls_no_distress(const struct visit *visit)
{
    const struct procedure *procedure = visit->sheet->procedure;
    bool milder = false;
    for (size_t i = 0; i < procedure->call_count; i++) {
        if (condition_truth(visit->composing, procedure->calls[i].when) == TRUTH_NO)
            continue;
        if (procedure->calls[i].signal.value == SIGNAL_MAYDAY)
            return false;
        milder = true;
    }
    return milder;
}

/* ---- the panel ---- */

/* Lines of the panel that mean something whoever the boat is. */
#define PANEL_LINE_LIST(X) X(OUTSIDE_SMOKE) X(UPWIND) X(DECK) X(LEAVE_FIXED)
#define PANEL_LINE(NAME) LINE_##NAME,
enum panel_line { PANEL_LINE_LIST(PANEL_LINE) LINE_COUNT };

struct panel_reading {
    struct visit *visit;
    struct speaker *speaker;
    const char *lines[LINE_COUNT];    /* as they are said */
    struct event event;
};

static void lines_say(struct panel_reading *reading)
{
#define LINE_WORD(NAME) [LINE_##NAME] = WORD_SET_##NAME,
    static const enum word words[LINE_COUNT] = {PANEL_LINE_LIST(LINE_WORD)};
    for (size_t i = 0; i < LINE_COUNT; i++)
        reading->lines[i] = say(reading->speaker,
                                phrase_word(reading->visit->walk->arena, words[i], NULL));
}

static bool says_line(const struct panel_reading *reading, const char *line,
                      enum panel_line wanted)
{
    return text_equal(line, reading->lines[wanted]);
}

static bool is_tag_sign(char sign)
{
    return (sign >= 'A' && sign <= 'Z') || is_digit(sign);
}

static bool line_has_tag(const char *line, const char *tag)
{
    size_t length = tag == NULL ? 0 : strlen(tag);
    for (const char *at = line; length > 0 && (at = strstr(at, tag)) != NULL; at++)
        if (!is_tag_sign(at[length]) && (at == line || !is_tag_sign(at[-1])))
            return true;
    return false;
}

static bool forbids_it(const struct panel_reading *reading, const char *line,
                       const struct equipment *gear)
{
    struct arena *arena = reading->visit->walk->arena;
    const struct phrase *tag = phrase_verbatim(arena, gear->tag.text);
    return text_equal(line, say(reading->speaker,
                                phrase_word(arena, WORD_SET_HANDHELD_BELOW, "tag", tag, NULL)));
}

static void panel_act(void *context, enum act act)
{
    struct panel_reading *reading = context;
    reading->event.act = act;
    event_add(reading->visit, reading->event);
}

/* The radio itself is worked; what else calls is made ready by its state ON or used. */
static void gear_called_for(struct panel_reading *reading, const struct equipment *gear)
{
    enum reach reach = reach_here(reading->visit->composing, gear);
    reading->event.gear = gear;
    if (reach >= REACH_COMPANIONWAY)
        panel_act(reading, ACT_REACH_IN);
    if (reach >= REACH_BELOW)
        panel_act(reading, ACT_GO_BELOW);
    if (gear_in_danger(reading->visit, gear))
        panel_act(reading, ACT_ENTER_SPACE);
    item_acts(reading->visit->sheet->boat, gear, STATE_ANY, panel_act, reading);
    reading->event.gear = NULL;
}

static void gear_of_line(struct panel_reading *reading, const char *line)
{
    const struct boat *boat = reading->visit->sheet->boat;
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (line_has_tag(line, gear->tag.text) && !forbids_it(reading, line, gear))
            gear_called_for(reading, gear);
    }
}

static bool same_place(struct place a, struct place b)
{
    return a.source == b.source && a.line == b.line && a.column == b.column;
}

static void set_of_line(struct panel_reading *reading, const struct card_text *line)
{
    const struct boat *boat = reading->visit->sheet->boat;
    const struct radio_facts *radio = &boat->radio;
    size_t index = 0;
    const struct equipment *set = gear_next(reading->visit->composing, ITEM_vhf_dsc, &index);
    const char *language = reading->visit->sheet->language;
    bool is_key = same_place(line->origin, text_place_for(&radio->distress_key, language));
    if (set == NULL || says_line(reading, line->text, LINE_LEAVE_FIXED))
        return;
    if (same_place(line->origin, radio->second_station.section.place))
        item_acts(boat, set, STATE_ANY, panel_act, reading);    /* its handset, on deck */
    if (is_key ||
        same_place(line->origin, text_place_for(&radio->power_switch, language)) ||
        same_place(line->origin, boat->radio_place))
        gear_called_for(reading, set);
    if (is_key)
        panel_act(reading, ACT_RED_KEY);
}

static bool says_upwind(const struct panel_reading *reading, const char *line)
{
    return says_line(reading, line, LINE_UPWIND) || says_line(reading, line, LINE_DECK);
}

/* Lines of the panel, and the line on who calls, that hold for all of it. */
static flags panel_guards(const struct panel_reading *reading, const struct call_facts *call)
{
    flags guards = sheet_cases(reading->visit->sheet)->count > 0 ? FLAG(GUARD_THIRD_PERSON) : 0;
    for (size_t i = 0; i < call->operate_count; i++) {
        const char *line = call->operate[i].text;
        if (says_line(reading, line, LINE_OUTSIDE_SMOKE))
            guards |= FLAG(GUARD_OUTSIDE_SMOKE);
        if (says_upwind(reading, line))
            guards |= FLAG(GUARD_UPWIND);
    }
    for (size_t i = 0; i < call->act_count; i++)
        if (says_upwind(reading, call->acts[i].text))
            guards |= FLAG(GUARD_UPWIND);
    return guards;
}

void panel_events(struct visit *visit, flags hazards, flags guards)
{
    const struct call_facts *call = sheet_call(visit->sheet);
    struct arena *arena = visit->walk->arena;
    struct panel_reading reading = {
        .visit = visit, .event = {.hazards = hazards},
        .speaker = speaker_new(visit->sheet->words, arena, problems_new(arena))};
    lines_say(&reading);
    reading.event.guards = guards | panel_guards(&reading, call);
    for (size_t i = 0; i < call->operate_count; i++) {
        gear_of_line(&reading, call->operate[i].text);
        set_of_line(&reading, &call->operate[i]);
    }
}
