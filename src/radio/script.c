/* script.c - what is said on the air, in English and in the order of the Radio
 * Regulations (room: radio): the forms, who speaks, and how two forms share one
 * card. Never invents: a name or call sign that cannot be said gives no script. */
#include "script.h"

#include "number.h"
#include "promise.h"
#include "text.h"

/* Counts and order: RR 32.13C and D, 33.12, 33.35, 32.28, 32.19E and F, 32.53. Danger that is
 * over and a beacon that went off by mistake have no form of their own there. */
static const struct form_shape form_shapes[] = {
    [SCRIPT_MAYDAY] = {
        .signal = "MAYDAY", .signal_times = 3, .name_times = 3, .mmsi = MMSI_AFTER_ALERT,
        .message_signal = "MAYDAY", .position = true, .takes_nature = true,
        .nature_lead = "PROBLEM", .nature_blank = "nature",
        .assistance = "I REQUIRE IMMEDIATE ASSISTANCE",
        .asks = true, .persons = true, .end = SPOKEN_OVER},
    [SCRIPT_PAN_PAN] = {
        .signal = "PAN PAN", .signal_times = 3, .called_times = 3, .name_times = 3,
        .mmsi = MMSI_AFTER_URGENCY, .position = true, .takes_nature = true,
        .nature_lead = "PROBLEM", .nature_blank = "problem", .asks = true, .persons = true,
        .end = SPOKEN_OVER},
    [SCRIPT_SECURITE] = {
        .signal = "SECURITE", .signal_times = 3, .called_times = 3, .name_times = 3,
        .mmsi = MMSI_NEVER, .takes_nature = true, .nature_blank = "warning", .end = "OUT"},
    [SCRIPT_RECEIPT] = {
        .signal = "MAYDAY", .signal_times = 1, .name_times = 1, .mmsi = MMSI_NEVER,
        .answered = "their name and call sign", .end = "RECEIVED MAYDAY"},
    [SCRIPT_RELAY] = {
        .signal = "MAYDAY RELAY", .signal_times = 3, .called_times = 3, .name_times = 3,
        .to_centre = true, .mmsi = MMSI_AFTER_ALERT, .message_signal = "MAYDAY", .of_another = true,
        .position = true, .nature_lead = "THEIR PROBLEM", .nature_blank = "nature",
        .persons = true, .end = SPOKEN_OVER},
    [SCRIPT_DOWNGRADE] = {
        .signal = "MAYDAY", .signal_times = 1, .called_times = 3, .name_times = 3,
        .mmsi = MMSI_NEVER, .nature_lead = "DANGER IS OVER", .nature_blank = "what has ended",
        .assistance = "I NO LONGER REQUIRE IMMEDIATE ASSISTANCE", .end = SPOKEN_OVER},
    [SCRIPT_CANCEL] = {
        .called_times = 3, .name_times = 3, .mmsi = MMSI_AFTER_ALERT,
        .plea = "PLEASE CANCEL MY DISTRESS ALERT OF", .end = SPOKEN_OVER},
    [SCRIPT_CANCEL_BEACON] = {
        .called_times = 3, .name_times = 3, .to_centre = true, .mmsi = MMSI_NEVER,
        .beacon = true, .position = true, .plea = "IT SENT AN ALERT BY MISTAKE AT",
        .assistance = "I REQUIRE NO ASSISTANCE", .end = SPOKEN_OVER},
};

bool dsc_ready(const struct boat *boat)
{
    struct mmsi mmsi;
    return boat->radio.dsc.answer == ANSWER_YES
        && boat->radio.mmsi_programmed.answer == ANSWER_YES
        && boat->radio.mmsi.text != NULL
        && mmsi_decode_as(boat->radio.mmsi.text, MMSI_SHIP, &mmsi);
}

/* Does the record leave open whether the set sends an alert with her MMSI? */
static bool dsc_unrecorded(const struct radio_facts *radio)
{
    return radio->dsc.answer != ANSWER_NO && radio->mmsi_programmed.answer != ANSWER_NO;
}

/* NULL where the MMSI is not to be said. */
static const char *mmsi_said(const struct script_request *request, const struct boat *boat,
                             struct arena *arena)
{
    bool ready = dsc_ready(boat);
    if (request->from_handheld ||
        (!ready && (request->unrecorded == NULL || !dsc_unrecorded(&boat->radio))))
        return NULL;
    switch (form_shapes[request->form].mmsi) {
    case MMSI_NEVER:
        return NULL;
    case MMSI_AFTER_URGENCY:
        if (boat->radio.urgency_steps.count == 0)
            return NULL;
        break;
    case MMSI_AFTER_ALERT:
        break;
    }
    return ready ? mmsi_in_threes(arena, boat->radio.mmsi.text) : request->unrecorded;
}

/* What the boat looks like and how long it is, as far as recorded. */
static const char *description_of(const struct boat *boat, struct arena *arena)
{
    const struct boat_facts *facts = &boat->facts;
    const char *english = text_for(&facts->looks, "en");
    const char *looks = text_empty(english) ? NULL : text_upper(arena, english);
    if (!facts->loa_m.given)
        return looks;
    const char *length = number_text_milli(arena, facts->loa_m.milli);
    return looks != NULL ? text_format(arena, "%s, %s METRES", looks, length)
                         : text_format(arena, "LENGTH %s METRES", length);
}

bool call_sign_given(const struct text_value *call_sign)
{
    return !text_empty(call_sign->text) && !text_equal(call_sign->text, "none");
}

/* False, with an error, when it holds what no call sign holds. The same words as the
 * checks have, so that the fault is told once. */
static bool call_sign_sound(const struct text_value *value, struct arena *arena,
                            struct problems *problems)
{
    struct call_sign call_sign;
    if (!call_sign_given(value) || call_sign_decode(value->text, &call_sign))
        return true;
    problem_add(problems, SEVERITY_ERROR, value->place, CALL_SIGN_REMEDY, "call sign `%s`: %s",
                value->text, call_sign_fault_words(&call_sign, arena));
    return false;
}

/* False, with problems, when the boat cannot say who it is. */
static bool speaker_read(struct telling *telling, const struct boat *boat,
                         struct problems *problems)
{
    const struct text_value *call_sign = &boat->radio.call_sign;
    uint32_t bad = 0;
    telling->name = spoken_name(boat, telling->arena, problems);
    bool sound = call_sign_sound(call_sign, telling->arena, problems);
    telling_beacon_set(telling, boat);
    if (sound && call_sign_given(call_sign))
        telling->call_sign = spell(telling->arena, call_sign->text, &bad);
    telling->description = description_of(boat, telling->arena);
    return telling->name != NULL && sound;
}

/* Who is called first. */
static const char *called_of(const struct telling *telling)
{
    const struct base_record *base = telling->base;
    if (!telling->shape->to_centre || base == NULL || text_empty(base->centre_call.text))
        return SPOKEN_ALL_STATIONS;
    return text_upper(telling->arena, base->centre_call.text);
}

static void telling_turn_to(struct telling *telling, const struct script_request *request,
                            const struct boat *boat)
{
    promise(request->form < sizeof form_shapes / sizeof form_shapes[0]);
    telling->request = request;
    telling->shape = &form_shapes[request->form];
    telling->called = called_of(telling);
    if (telling->call_sign == NULL && boat->radio.call_sign.text == NULL)
        telling->call_sign = request->unrecorded;
    telling->mmsi = mmsi_said(request, boat, telling->arena);
}

static bool lines_equal(const struct script_line *a, const struct script_line *b)
{
    if (a->count != b->count)
        return false;
    for (size_t i = 0; i < a->count; i++)
        if (a->pieces[i].kind != b->pieces[i].kind
            || !text_equal(a->pieces[i].text, b->pieces[i].text))
            return false;
    return true;
}

/* Room for every part of both forms. */
struct line_list {
    struct script_line *lines;
    size_t count;
};

static void add_line(struct line_list *list, struct script_line line, const char *label)
{
    if (line.count == 0)
        return;
    promise(list->count < 2 * script_part_count());
    line.label = label;
    list->lines[list->count++] = line;
}

static void add_shared(struct line_list *list, const struct telling *graver,
                       const struct telling *milder, size_t part)
{
    struct script_line first = script_part(part, graver), second = script_part(part, milder);
    if (lines_equal(&first, &second)) {
        add_line(list, first, NULL);
    } else {
        add_line(list, first, graver->request->label);
        add_line(list, second, milder->request->label);
    }
}

/* Both forms say who is calling in the same words. */
static void tell_both(struct line_list *list, struct telling *graver, struct telling *milder)
{
    graver->beside_other = milder->beside_other = true;
    milder->mmsi = graver->mmsi;
    for (size_t part = 0; part < script_part_count(); part++)
        add_shared(list, graver, milder, part);
}

const struct script *script_make(const struct script_request *request, const struct boat *boat,
                                 const struct base_record *base, struct arena *arena,
                                 struct problems *problems)
{
    struct telling telling = {.base = base, .arena = arena};
    if (!speaker_read(&telling, boat, problems))
        return NULL;
    telling_turn_to(&telling, request, boat);
    struct line_list list = {
        .lines = arena_array(arena, 2 * script_part_count(), sizeof(struct script_line))};
    if (request->other != NULL) {
        struct telling milder = telling;
        telling_turn_to(&milder, request->other, boat);
        tell_both(&list, &telling, &milder);
    } else {
        for (size_t part = 0; part < script_part_count(); part++)
            add_line(&list, script_part(part, &telling), NULL);
    }
    struct script *script = arena_alloc(arena, sizeof *script);
    *script = (struct script){.lines = list.lines, .count = list.count};
    return script;
}
