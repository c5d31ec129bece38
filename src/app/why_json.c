/* why_json.c - reasons of cards and figures as JSON (room: app). Knows no reason itself. */
#include "why_json.h"

#include "reasons.h"

#include <string.h>

#define WHY_FORMAT "maydeck-why-1"

/* ---- a line of an explanation ---- */

struct reason_object {
    size_t depth;
    const char *text, *file;
    int line;
};

#define AT(member) offsetof(struct reason_object, member)
static const struct json_member reason_members[] = {
    {"depth", JSON_COUNT, AT(depth), NULL, NULL,
     "0: a part of the card; 1: what belongs to it; 2: a detail"},
    {"text", JSON_TEXT, AT(text), NULL, NULL, NULL},
    {"file", JSON_TEXT_OR_NULL, AT(file), NULL, NULL, "where what it tells is written"},
    {"line", JSON_NUMBER_OR_NULL, AT(line), NULL, NULL, NULL},
};
#undef AT
static const struct json_shape reason_shape = {"reason", sizeof(struct reason_object),
                                               MEMBERS_OF(reason_members)};

static const char *why_copied(struct arena *arena, const char *text)
{
    return text == NULL ? NULL : arena_copy(arena, text, strlen(text));
}

static struct json_list reason_objects_of(const struct reason_list *list, struct arena *arena)
{
    struct reason_object *rows = arena_array(arena, list->count + 1, sizeof *rows);
    for (size_t i = 0; i < list->count; i++) {
        const struct place *place = &list->rows[i].place;
        rows[i] = (struct reason_object){
            list->rows[i].depth, why_copied(arena, list->rows[i].text),
            place->source == NULL ? NULL : why_copied(arena, place->source->name),
            place->source == NULL ? 0 : place->line};
    }
    return (struct json_list){rows, list->count};
}

/* ---- a card, a figure ---- */

struct why_card {
    const char *card, *number, *name, *language, *code;
    bool held;
    struct json_list reasons;
};

#define AT(member) offsetof(struct why_card, member)
static const struct json_member why_card_members[] = {
    {"card", JSON_TEXT, AT(card), NULL, NULL, "its id, as --card takes it"},
    {"number", JSON_TEXT, AT(number), NULL, NULL, NULL},
    {"name", JSON_TEXT, AT(name), NULL, NULL, NULL},
    {"language", JSON_TEXT, AT(language), NULL, NULL, NULL},
    {"held", JSON_FLAG, AT(held), NULL, NULL, "it is held back"},
    {"code", JSON_TEXT_OR_NULL, AT(code), NULL, NULL, "the check code at its foot"},
    {"reasons", JSON_LIST, AT(reasons), &reason_shape, NULL,
     "empty unless --card or --all asks for them"},
};
#undef AT
static const struct json_shape why_card_shape = {"card", sizeof(struct why_card),
                                                 MEMBERS_OF(why_card_members)};

struct why_figure {
    const char *figure, *title;
    struct json_list reasons;
};

#define AT(member) offsetof(struct why_figure, member)
static const struct json_member why_figure_members[] = {
    {"figure", JSON_TEXT, AT(figure), NULL, NULL, "as --figure takes it"},
    {"title", JSON_TEXT, AT(title), NULL, NULL, NULL},
    {"reasons", JSON_LIST, AT(reasons), &reason_shape, NULL, NULL},
};
#undef AT
static const struct json_shape why_figure_shape = {"figure", sizeof(struct why_figure),
                                                   MEMBERS_OF(why_figure_members)};

/* ---- a boat ---- */

struct why_boat {
    const char *boat;
    bool composed;
    struct why_card *card_rows;
    struct why_figure *figure_rows;
    size_t card_room, figure_room;
    struct json_list cards, figures;
};

#define AT(member) offsetof(struct why_boat, member)
static const struct json_member why_boat_members[] = {
    {"boat", JSON_TEXT, AT(boat), NULL, NULL, "her file's name without .yaml"},
    {"composed", JSON_FLAG, AT(composed), NULL, NULL,
     "false: she has no cards, because of errors in her file or in the base's"},
    {"cards", JSON_LIST, AT(cards), &why_card_shape, NULL, NULL},
    {"figures", JSON_LIST, AT(figures), &why_figure_shape, NULL, NULL},
};
#undef AT
static const struct json_shape why_boat_shape = {"boat", sizeof(struct why_boat),
                                                 MEMBERS_OF(why_boat_members)};

void why_boat_add(struct why_gathering *gathering, const char *boat)
{
    gathering->boats = arena_grow(gathering->arena, gathering->boats, gathering->count,
                                  &gathering->room, sizeof *gathering->boats);
    gathering->boats[gathering->count++] = (struct why_boat){
        .boat = why_copied(gathering->arena, boat)};
}

static struct why_boat *last_boat(struct why_gathering *gathering)
{
    return &gathering->boats[gathering->count - 1];
}

void why_boat_composed(struct why_gathering *gathering)
{
    last_boat(gathering)->composed = true;
}

void why_card_add(struct why_gathering *gathering, const struct sheets *sheets,
                  const struct sheet *sheet, enum why_depth depth)
{
    struct arena *arena = gathering->arena;
    struct why_boat *boat = last_boat(gathering);
    const char *code = sheet_footer(sheet)->code;
    struct reason_list reasons = {0};
    if (depth == WHY_EXPLAINED)
        reasons = card_reason_rows(&sheets->input, sheets->set, sheet, sheets->boat->arena);
    boat->card_rows = arena_grow(arena, boat->card_rows, boat->cards.count, &boat->card_room,
                                 sizeof *boat->card_rows);
    boat->card_rows[boat->cards.count++] = (struct why_card){
        .card = why_copied(arena, sheet->id), .number = why_copied(arena, sheet->number),
        .name = why_copied(arena, sheet->name), .language = why_copied(arena, sheet->language),
        .code = text_empty(code) ? NULL : why_copied(arena, code), .held = sheet->held,
        .reasons = reason_objects_of(&reasons, arena)};
    boat->cards.at = boat->card_rows;
}

void why_figure_add(struct why_gathering *gathering, const struct sheets *sheets,
                    const struct figure *figure)
{
    struct arena *arena = gathering->arena;
    struct why_boat *boat = last_boat(gathering);
    struct reason_list reasons = figure_reason_rows(&sheets->input, sheets->set, figure,
                                                    sheets->boat->arena);
    boat->figure_rows = arena_grow(arena, boat->figure_rows, boat->figures.count,
                                   &boat->figure_room, sizeof *boat->figure_rows);
    boat->figure_rows[boat->figures.count++] = (struct why_figure){
        figure->id, figure->title, reason_objects_of(&reasons, arena)};
    boat->figures.at = boat->figure_rows;
}

bool why_told_nothing(const struct why_gathering *gathering)
{
    size_t told = 0;
    for (size_t i = 0; i < gathering->count; i++)
        told += gathering->boats[i].cards.count + gathering->boats[i].figures.count;
    return told == 0;
}

/* ---- the whole ---- */

struct why_object {
    const char *format, *base, *date;
    struct json_list boats;
};

#define AT(member) offsetof(struct why_object, member)
static const struct json_member why_members[] = {
    {"format", JSON_TEXT, AT(format), NULL, NULL, NULL},
    {"base", JSON_TEXT, AT(base), NULL, NULL, "the folder as it was named"},
    {"date", JSON_TEXT, AT(date), NULL, NULL, "today"},
    {"boats", JSON_LIST, AT(boats), &why_boat_shape, NULL, NULL},
};
#undef AT
static const struct json_shape why_shape = {"why", sizeof(struct why_object),
                                            MEMBERS_OF(why_members)};

void why_json_print(const struct options *options, const struct why_gathering *gathering)
{
    const struct why_object whole = {WHY_FORMAT, options->base,
                                     date_text(gathering->arena, options->today),
                                     {gathering->boats, gathering->count}};
    json_print(&why_shape, &whole, gathering->arena);
}
