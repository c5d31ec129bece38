/* call_json.c - what a call tells as JSON (room: app). */
#include "call_told.h"

#define CALL_FORMAT "maydeck-call-1"

#define AT(member) offsetof(struct call_line, member)
static const struct json_member call_line_members[] = {
    {"label", JSON_TEXT_OR_NULL, AT(label), NULL, NULL,
     "only in that case; or the word that the set shows"},
    {"text", JSON_TEXT, AT(text), NULL, NULL, "____ where something is to be filled in"},
};
#undef AT
static const struct json_shape call_line_shape = {"line", sizeof(struct call_line),
                                                  MEMBERS_OF(call_line_members)};

#define AT(member) offsetof(struct call_section, member)
static const struct json_member call_section_members[] = {
    {"title", JSON_TEXT_OR_NULL, AT(title), NULL, NULL, NULL},
    {"lines", JSON_LIST, AT(lines), &call_line_shape, NULL, NULL},
};
#undef AT
static const struct json_shape call_section_shape = {"section", sizeof(struct call_section),
                                                     MEMBERS_OF(call_section_members)};

#define AT(member) offsetof(struct call_script, member)
static const struct json_member call_script_members[] = {
    {"kind", JSON_TEXT, AT(kind), NULL, NULL, NULL},
    {"card", JSON_TEXT_OR_NULL, AT(card), NULL, NULL, "its id, where it is a card's call"},
    {"name", JSON_TEXT_OR_NULL, AT(name), NULL, NULL, NULL},
    {"sections", JSON_LIST, AT(sections), &call_section_shape, NULL,
     "first the call, then what else the card says of it"},
};
#undef AT
static const struct json_shape call_script_shape = {"call", sizeof(struct call_script),
                                                    MEMBERS_OF(call_script_members)};

#define AT(member) offsetof(struct position_told, member)
static const struct json_member position_members[] = {
    {"degrees", JSON_TEXT, AT(degrees), NULL, NULL, NULL},
    {"minutes", JSON_TEXT, AT(minutes), NULL, NULL, NULL},
    {"seconds", JSON_TEXT, AT(seconds), NULL, NULL, NULL},
    {"say", JSON_TEXT, AT(say), NULL, NULL, NULL},
    {"of_another", JSON_FLAG, AT(of_another), NULL, NULL, "of the boat that a relay is about"},
    {"doubts", JSON_TEXTS, AT(doubts), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape position_shape = {"position", sizeof(struct position_told),
                                                 MEMBERS_OF(position_members)};

#define AT(member) offsetof(struct bearing_told, member)
static const struct json_member bearing_members[] = {
    {"mark", JSON_TEXT, AT(mark), NULL, NULL, "the true bearing of the mark"},
    {"from_mark", JSON_TEXT, AT(from_mark), NULL, NULL, "the true direction from it"},
    {"point", JSON_TEXT, AT(point), NULL, NULL, "the same as a point of the compass"},
    {"magnetic", JSON_TEXT_OR_NULL, AT(magnetic), NULL, NULL, "as it was given"},
    {"variation", JSON_TEXT_OR_NULL, AT(variation), NULL, NULL, NULL},
    {"variation_on", JSON_TEXT_OR_NULL, AT(variation_on), NULL, NULL, NULL},
    {"say", JSON_TEXT, AT(say), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape bearing_shape = {"bearing", sizeof(struct bearing_told),
                                                MEMBERS_OF(bearing_members)};

struct time_told { const char *said, *about; };

#define AT(member) offsetof(struct time_told, member)
static const struct json_member time_members[] = {
    {"said", JSON_TEXT, AT(said), NULL, NULL, "four figures"},
    {"about", JSON_TEXT, AT(about), NULL, NULL, "how it came about"},
};
#undef AT
static const struct json_shape time_shape = {"time", sizeof(struct time_told),
                                             MEMBERS_OF(time_members)};

struct call_object {
    const char *format, *base, *boat;
    struct json_list calls;
    const struct position_told *position;
    const struct bearing_told *bearing;
    const struct time_told *time;
};

#define AT(member) offsetof(struct call_object, member)
static const struct json_member call_members[] = {
    {"format", JSON_TEXT, AT(format), NULL, NULL, NULL},
    {"base", JSON_TEXT, AT(base), NULL, NULL, "the folder as it was named"},
    {"boat", JSON_TEXT, AT(boat), NULL, NULL, "who calls"},
    {"calls", JSON_LIST, AT(calls), &call_script_shape, NULL, NULL},
    {"position", JSON_OBJECT_OR_NULL, AT(position), &position_shape, NULL, NULL},
    {"bearing", JSON_OBJECT_OR_NULL, AT(bearing), &bearing_shape, NULL, NULL},
    {"time", JSON_OBJECT_OR_NULL, AT(time), &time_shape, NULL, NULL},
};
#undef AT
static const struct json_shape call_shape = {"call", sizeof(struct call_object),
                                             MEMBERS_OF(call_members)};

void call_json_print(const struct options *options, const struct call_told *told,
                     const struct call_place *place, const struct fleet *fleet)
{
    struct position_told position = {0};
    struct bearing_told bearing = {0};
    struct time_told time = {0};
    struct call_object whole = {.format = CALL_FORMAT, .base = options->base,
                                .boat = fleet->boats[0].key, .calls = told->scripts};
    if (place != NULL && place->position_given) {
        position = position_told_of(place, fleet);
        whole.position = &position;
    }
    if (place != NULL && place->bearing_given) {
        bearing = bearing_told_of(&place->bearing, fleet);
        whole.bearing = &bearing;
    }
    if (place != NULL && place->time != NULL) {
        time = (struct time_told){place->time, place->time_told};
        whole.time = &time;
    }
    json_print(&call_shape, &whole, told->arena);
}
