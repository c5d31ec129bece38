/* call_panel.c - the panel at the foot: from where this boat calls, and the script to say
 * (room: compose). How the set is worked is in call_operate.c. */
#include "call_room.h"

#include "promise.h"

enum { CALLS_MOST = 2 };

/* A call as the panel's head is to name it: `several` where more can be made than its script
 * says. */
struct panel { const struct script_request *request; enum call_from from; bool several, apart; };

static struct calling calling_of(struct composing *composing, const struct panel *panel)
{
    enum call_from from = panel->from;
    struct calling calling = {.from = from, .mayday = panel->request->form == SCRIPT_MAYDAY,
                              .other = panel->several, .apart = panel->apart};
    calling.from_deck = from == CALL_FROM_HANDHELD || from == CALL_FROM_HANDHELD_CARRIED;
    calling.most = calling.from_deck                   ? REACH_DECK
                   : from == CALL_FROM_FIXED_IN_FIRE ? REACH_COMPANIONWAY
                                                     : REACH_BELOW;
    calling.can_call = !no_radio_aboard(composing->in->boat);
    if (calling.from_deck)
        calling.can_call = handheld_at_hand(composing) != NULL ||
                           handheld_drafted(composing) != NULL ||
                           (from == CALL_FROM_HANDHELD_CARRIED &&
                            call_first_gear(composing, ITEM_vhf_handheld) != NULL);
    return calling;
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
        .nature = call->say.text, .assistance = call->assist.text,
        .from_handheld = call->from.value == CALL_FROM_HANDHELD ||
                         call->from.value == CALL_FROM_HANDHELD_CARRIED ||
                         by_handheld_only(composing->in->boat)};
}

static enum word panel_title(const struct calling *calling)
{
    if (!calling->can_call)
        return calling->from_deck ? WORD_CALL_NO_RADIO : WORD_CALL_NO_RADIO_ABOARD;
    if (calling->from_deck)
        return WORD_CALL_HANDHELD;
    if (calling->other)
        return WORD_CALL_BOTH;
    return calling->mayday ? WORD_CALL_MAYDAY : WORD_CALL_PAN_PAN;
}

/* NULL: there is nothing to call with, or what there is is not recorded. */
static const struct phrase *call_station(struct composing *composing, const struct calling *calling)
{
    enum item_key wanted = calling->from_deck ? ITEM_vhf_handheld : ITEM_vhf_dsc;
    const struct equipment *gear = calling->from_deck ? handheld_at_hand(composing)
                                                      : call_first_gear(composing, wanted);
    const struct phrase *drafted = gear != NULL ? NULL : item_unrecorded(composing, wanted);
    if (gear == NULL && drafted == NULL && !calling->from_deck)
        gear = call_first_gear(composing, ITEM_vhf_handheld);
    if (gear == NULL)
        return drafted;
    bool handheld = gear->item.value == ITEM_vhf_handheld;
    return call_gear(composing, handheld ? WORD_HANDHELD_AT : WORD_RADIO_AT, gear);
}

/* A draft whose only radio is not recorded: how to call is told, but not what to say. */
static bool is_open(struct composing *composing, const struct calling *calling)
{
    return calling->from_deck && handheld_at_hand(composing) == NULL &&
           handheld_drafted(composing) != NULL;
}

static struct operating panel_make(struct composing *composing, struct sheet *sheet,
                                   const struct panel *panel)
{
    const struct script_request *request = panel->request;
    struct call_facts *call = arena_alloc(composing->arena, sizeof *call);
    struct calling calling = calling_of(composing, panel);
    struct operating operating;
    *call = (struct call_facts){
        .silent = !calling.can_call || is_open(composing, &calling), .origin = sheet->origin,
        .station = phrase_said(composing, call_station(composing, &calling))};
    operating = operate_lines(composing, &calling);
    call->operate = operating.lines;
    call->operate_count = operating.count;
    call->acts = operating.acts;
    call->act_count = operating.act_count;
    call->act_first = operating.act_first;
    calling.other = request->other != NULL;
    call->title = phrase_said(composing, word_alone(composing, panel_title(&calling)));
    block_add(composing, sheet, BLOCK_CALL)->call = call;
    if (call->silent)
        return operating;
    call->script = script_make(request, composing->in->boat, composing->in->base,
                               composing->arena, composing->problems);
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
