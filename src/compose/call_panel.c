/* call_panel.c - the panel at the foot: from where this boat calls, and the script to say
 * (room: compose). How the set is worked is in call_operate.c. */
#include "call_room.h"

#include "promise.h"
#include "text.h"

enum { CALLS_MOST = 2 };

/* A call as the panel's head is to name it: `several` where more can be made than its script
 * says. */
struct panel { const struct script_request *request; enum call_from from; bool several, apart; };

static struct calling calling_of(const struct panel *panel)
{
    return (struct calling){.from = panel->from, .other = panel->several, .apart = panel->apart,
                            .mayday = panel->request->form == SCRIPT_MAYDAY};
}

/* Where the record does not tell whether she has a radio the card waits, and says what one
 * would say. */
static bool can_call(const struct composing *composing, const struct ladder *ladder)
{
    if (set_is_first(ladder->calling))
        return !no_radio_aboard(composing->in->boat);
    return ladder_worked(ladder) != NULL;
}

static struct script_request request_of(struct composing *composing,
                                        const struct procedure_call *call)
{
    enum script_form form = SCRIPT_MAYDAY;
    if (call->signal.value == SIGNAL_PAN_PAN)
        form = SCRIPT_PAN_PAN;
    else if (call->signal.value == SIGNAL_SECURITE)
        form = SCRIPT_SECURITE;
    return (struct script_request){
        .form = form, .unrecorded = script_unrecorded(composing),
        .nature = call_nature(composing, call), .assistance = call->assist.text,
        .person_lost = call->nature.value == NATURE_MOB};
}

/* Who speaks by a handheld has sent no alert by the fixed set. */
static bool by_handheld(const struct composing *composing, const struct ladder *ladder)
{
    const struct rung *worked = ladder_worked(ladder);
    return worked != NULL ? is_handheld(worked->means)
                          : by_handheld_only(composing->in->boat) ||
                                !set_is_first(ladder->calling);
}

/* None aboard, none that is reached, or none that may be worked there. */
static enum word no_radio_word(const struct calling *calling)
{
    if (set_is_first(calling))
        return WORD_CALL_NO_RADIO_ABOARD;
    return calling->from == CALL_FROM_ON_DECK ? WORD_CALL_NO_RADIO_IN_REACH : WORD_CALL_NO_RADIO;
}

static enum word panel_title(const struct ladder *ladder)
{
    const struct calling *calling = ladder->calling;
    const struct rung *worked = ladder_worked(ladder);
    if (!calling->can_call)
        return no_radio_word(calling);
    if (!set_is_first(calling) && worked != NULL && is_handheld(worked->means))
        return WORD_CALL_HANDHELD;
    if (calling->other)
        return WORD_CALL_BOTH;
    return calling->mayday ? WORD_CALL_MAYDAY : WORD_CALL_PAN_PAN;
}

/* NULL: there is nothing to call with, or somebody carries it. */
static const struct phrase *call_station(struct composing *composing, const struct ladder *ladder)
{
    const struct rung *worked = ladder_worked(ladder);
    const struct rung *set = ladder_rung(ladder, MEANS_FIXED_SET);
    if (set != NULL && set->drafted != NULL)
        return set->drafted;
    if (worked == NULL || worked->rule->condition == RUNG_CARRIED || worked->drafted != NULL)
        return worked == NULL ? NULL : worked->drafted;
    if (worked->means == MEANS_SECOND_STATION)
        return phrase_word(composing->arena, WORD_SECOND_NAMED, "place",
                           second_station_named(composing), NULL);
    return call_gear(composing, is_handheld(worked->means) ? WORD_HANDHELD_AT : WORD_RADIO_AT,
                     worked->gear);
}

/* A draft whose only radio is not recorded: how to call is told, but not what to say. */
static bool is_open(const struct ladder *ladder)
{
    const struct rung *worked = ladder_worked(ladder);
    return !set_is_first(ladder->calling) && worked != NULL && worked->drafted != NULL;
}

/* The request, and that of the milder call beside it, for the radio that is spoken by. */
static const struct script_request *request_by(const struct composing *composing,
                                               const struct script_request *request,
                                               const struct ladder *ladder)
{
    struct script_request *own = arena_alloc(composing->arena, sizeof *own);
    *own = *request;
    own->from_handheld = by_handheld(composing, ladder);
    if (request->other != NULL)
        own->other = request_by(composing, request->other, ladder);
    return own;
}

/* Without the lines of the milder call: what both say alike stays. */
static const struct script *graver_alone(struct composing *composing, const struct script *both,
                                         const char *milder)
{
    struct script *alone = arena_alloc(composing->arena, sizeof *alone);
    struct script_line *lines = arena_array(composing->arena, both->count, sizeof *lines);
    *alone = (struct script){.lines = lines};
    for (size_t i = 0; i < both->count; i++)
        if (!text_equal(both->lines[i].label, milder))
            lines[alone->count++] = both->lines[i];
    return alone;
}

/* Where an exit names the card that has the words too. */
static const struct script *lesser_script(struct composing *composing, const struct sheet *sheet,
                                          const struct script *script,
                                          const struct script_request *milder)
{
    if (script == NULL || milder == NULL || sheet_decision(sheet)->no_lesser == NULL)
        return NULL;
    return graver_alone(composing, script, milder->label);
}

static struct operating panel_make(struct composing *composing, struct sheet *sheet,
                                   const struct panel *panel)
{
    struct call_facts *call = arena_alloc(composing->arena, sizeof *call);
    struct calling calling = calling_of(panel);
    struct ladder ladder = ladder_make(composing, &calling);
    calling.can_call = can_call(composing, &ladder);
    *call = (struct call_facts){
        .silent = !calling.can_call || is_open(&ladder), .origin = sheet->origin,
        .station = phrase_said(composing, call_station(composing, &ladder))};
    struct operating operating = operate_lines(composing, &ladder);
    const struct script_request *request = request_by(composing, panel->request, &ladder);
    call->operate = operating.lines;
    call->operate_count = operating.count;
    call->yielding = operating.yielding;
    call->acts = operating.acts;
    call->act_count = operating.act_count;
    call->act_first = operating.act_first;
    calling.other = request->other != NULL;
    call->title = phrase_said(composing, word_alone(composing, panel_title(&ladder)));
    block_add(composing, sheet, BLOCK_CALL)->call = call;
    if (call->silent)
        return operating;
    call->script = script_make(request, composing->in->boat, composing->in->base,
                               composing->arena, composing->problems);
    call->lesser = lesser_script(composing, sheet, call->script, request->other);
    if (call->script == NULL)
        composing->held = true;
    return operating;
}

/* What is done without an answer, in a block of its own. */
static void after_make(struct composing *composing, struct sheet *sheet,
                       const struct operating *operating)
{
    struct section_facts *section = arena_alloc(composing->arena, sizeof *section);
    *section = (struct section_facts){.title = "", .lines = operating->after,
                                      .line_count = operating->after_count};
    if (section->line_count > 0)
        block_add(composing, sheet, BLOCK_NO_ANSWER)->section = section;
}

void general_call_make(struct composing *composing, struct sheet *sheet)
{
    struct script_request request = call_request(composing->in->boat, SCRIPT_MAYDAY, NULL);
    request.unrecorded = script_unrecorded(composing);
    struct operating operating = panel_make(
        composing, sheet,
        &(struct panel){.request = &request, .from = CALL_FROM_FIXED, .several = true,
                        .apart = true});
    after_make(composing, sheet, &operating);
}

/* The calls that are for this boat; at most two stand on a card. Where it is not known
 * which, the card is held, and a draft has the first that may be hers. */
static size_t calls_of(struct composing *composing, const struct procedure_call **calls)
{
    const struct procedure *procedure = composing->slot->procedure;
    const struct procedure_call *doubtful = NULL;
    size_t count = 0;
    for (size_t i = 0; i < procedure->call_count && count < CALLS_MOST; i++) {
        enum truth truth = condition_judge(composing, procedure->calls[i].when);
        if (truth == TRUTH_YES)
            calls[count++] = &procedure->calls[i];
        else if (truth == TRUTH_UNKNOWN && doubtful == NULL)
            doubtful = &procedure->calls[i];
    }
    if (count == 0 && doubtful != NULL)
        calls[count++] = doubtful;
    return count;
}

bool card_has_milder_call(struct composing *composing)
{
    const struct procedure_call *calls[CALLS_MOST];
    return calls_of(composing, calls) > 1;
}

/* The word that tells a call from the other, in capitals. */
static const char *call_label(const struct composing *composing, const struct procedure_call *call)
{
    struct arena *arena = composing->arena;
    return phrase_said(composing, phrase_upper(arena, phrase_text(arena, &call->if_)));
}

void card_call_compose(struct composing *composing, struct sheet *sheet)
{
    const struct procedure_call *calls[CALLS_MOST];
    struct script_request requests[CALLS_MOST];
    size_t count = calls_of(composing, calls);
    if (count == 0)
        return;
    promise(count <= CALLS_MOST);
    for (size_t i = 0; i < count; i++) {
        requests[i] = request_of(composing, calls[i]);
        if (count > 1)
            requests[i].label = call_label(composing, calls[i]);
    }
    if (count > 1)
        requests[0].other = &requests[1];
    panel_make(composing, sheet,
               &(struct panel){.request = &requests[0], .from = calls[0]->from.value,
                               .several = count > 1});
}
