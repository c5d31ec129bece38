/* script_parts.c - the lines of a distress, urgency or safety call that tell who calls whom
 * (room: radio).
 *
 * One function a line; the table at the end is the spoken order of all forms
 * (RR 32.13C, 32.13D, 32.19E, 33.12, 33.35). Never decides which form is told. */
#include "script_draft.h"

#include "promise.h"
#include "text.h"

/* Beside another form the call to all stations joins its signal, told once. */
static bool joins_signal(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    return shape->signal != NULL && shape->called_times > 0 && telling->beside_other;
}

/* A receipt names whom it answers behind the signal. */
static struct script_line part_signal(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    struct line_draft draft = {.count = 0};
    if (shape->signal != NULL) {
        draft_add(&draft, PIECE_STRONG, said_times(telling, shape->signal, shape->signal_times));
        if (joins_signal(telling))
            draft_add(&draft, PIECE_WORDS, "ALL STATIONS, 3 TIMES");
        if (shape->answered != NULL)
            draft_blank(&draft, shape->answered, WIDTH_WORDS);
    }
    return draft_line(telling, ELEMENT_SIGNAL, &draft);
}

static struct script_line part_called(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    if (telling->shape->called_times > 0 && !joins_signal(telling))
        draft_add(&draft, PIECE_WORDS,
                  said_times(telling, telling->called, telling->shape->called_times));
    return draft_line(telling, ELEMENT_ALL_STATIONS, &draft);
}

static struct script_line part_name(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    draft_add(&draft, PIECE_WORDS, SPOKEN_THIS_IS);
    draft_add(&draft, PIECE_STRONG, said_times(telling, telling->name, telling->shape->name_times));
    return draft_line(telling, ELEMENT_NAME, &draft);
}

static void add_mmsi(struct line_draft *draft, const struct telling *telling)
{
    draft_add(draft, PIECE_WORDS, "MMSI");
    draft_add(draft, PIECE_STRONG, telling->mmsi);
}

static struct script_line part_identity(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    if (telling->call_sign != NULL) {
        draft_add(&draft, PIECE_WORDS, "CALL SIGN");
        draft_add(&draft, PIECE_STRONG, telling->call_sign);
    }
    if (telling->mmsi != NULL) {
        if (draft.count > 0)
            draft_add(&draft, PIECE_WORDS, "·");
        add_mmsi(&draft, telling);
    }
    return draft_line(telling, ELEMENT_IDENTITY, &draft);
}

static void add_own_identity(struct line_draft *draft, const struct telling *telling)
{
    draft_add(draft, PIECE_STRONG,
              text_format(telling->arena, "%s %s", telling->shape->message_signal,
                          telling->name));
    if (telling->call_sign != NULL)
        draft_add(draft, PIECE_WORDS, telling->call_sign);
    if (telling->call_sign != NULL && telling->mmsi != NULL)
        draft_add(draft, PIECE_WORDS, "·");
    if (telling->mmsi != NULL)
        draft_add(draft, PIECE_STRONG, telling->mmsi);
}

static struct script_line part_message_signal(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    struct line_draft draft = {.count = 0};
    if (shape->message_signal != NULL && shape->of_another) {
        draft_add(&draft, PIECE_STRONG, shape->message_signal);
        draft_add(&draft, PIECE_WORDS, "THEIR NAME");
        draft_blank(&draft, "name or description of the vessel in distress", WIDTH_WORDS);
    } else if (shape->message_signal != NULL) {
        add_own_identity(&draft, telling);
    }
    return draft_line(telling, ELEMENT_MESSAGE_SIGNAL, &draft);
}

/* Which beacon, and by what its owner is looked up. */
static struct script_line part_beacon(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    struct line_draft draft = {.count = 0};
    if (shape->beacon) {
        draft_add(&draft, PIECE_WORDS, text_format(telling->arena, "MY %s IDENTITY",
                                                   telling->beacon));
        if (telling->beacon_identity != NULL)
            draft_add(&draft, PIECE_STRONG, telling->beacon_identity);
        else
            draft_blank(&draft, "identity on the beacon", WIDTH_WORDS);
    }
    return draft_line(telling, ELEMENT_BEACON, &draft);
}

static struct script_line (*const parts[])(const struct telling *telling) = {
    part_signal, part_called, part_name, part_identity, part_message_signal,
    part_beacon, part_plea, part_latitude, part_longitude, part_nature, part_assistance,
    part_in_water, part_persons_and_end,
};

struct script_line script_part(size_t index, const struct telling *telling)
{
    promise(index < script_part_count());
    return parts[index](telling);
}

size_t script_part_count(void)
{
    return sizeof parts / sizeof parts[0];
}
