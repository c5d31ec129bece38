/* script_parts.c - each line of a distress, urgency or safety call (room: radio).
 *
 * One function a line; the table at the end is the spoken order of all forms
 * (RR 32.13C, 32.13D, 32.19E, 33.12, 33.35). Never decides which form is told. */
#include "script.h"

#include <string.h>

#include "promise.h"
#include "text.h"

#define PIECES_AT_MOST 10

/* Least room for wax-pencil figures: what lets the longitude and its time stand
 * on one line of the panel at the smallest size. Blanks take what is left. */
#define WIDTH_TWO_DIGITS 14
#define WIDTH_THREE_DIGITS 15
#define WIDTH_MINUTES 24
#define WIDTH_TIME 16
#define WIDTH_WORDS 45

/* Nature and assistance share a line of the card up to this many letters; where a person is
 * lost always, since their line is one more. */
#define JOINED_AT_MOST 54

struct line_draft {
    struct script_piece pieces[PIECES_AT_MOST];
    size_t count;
};

static void add(struct line_draft *draft, enum piece_kind kind, const char *text)
{
    promise(draft->count < PIECES_AT_MOST && text != NULL);
    draft->pieces[draft->count++] = (struct script_piece){.kind = kind, .text = text};
}

static void add_blank(struct line_draft *draft, const char *name, int width_mm)
{
    promise(draft->count < PIECES_AT_MOST && width_mm > 0);
    draft->pieces[draft->count++] =
        (struct script_piece){.kind = PIECE_BLANK, .text = name, .width_mm = width_mm};
}

static struct script_line line_from(const struct telling *telling, enum script_element element,
                                    const struct line_draft *draft)
{
    struct script_piece *pieces = arena_array(telling->arena, draft->count, sizeof *pieces);
    if (draft->count > 0)
        memcpy(pieces, draft->pieces, draft->count * sizeof *pieces);
    return (struct script_line){.element = element, .pieces = pieces, .count = draft->count};
}

static const char *repeated(const struct telling *telling, const char *words, int times)
{
    struct text_builder said = text_builder_in(telling->arena);
    for (int i = 0; i < times; i++) {
        text_add(&said, i > 0 ? " " : "");
        text_add(&said, words);
    }
    return said.at;
}

static const char *sentence(const struct telling *telling, const char *words)
{
    return text_ends(words, ".") ? words : text_format(telling->arena, "%s.", words);
}

/* Beside another form the call to all stations joins its signal, told once. */
static void add_all_stations(struct line_draft *draft, const struct telling *telling)
{
    if (telling->shape->all_stations_times > 1 && telling->beside_other)
        add(draft, PIECE_WORDS, "ALL STATIONS, 3 TIMES");
    else
        add(draft, PIECE_WORDS,
            repeated(telling, "ALL STATIONS", telling->shape->all_stations_times));
}

/* Said once, or beside another form, it needs no line of its own. */
static bool joins_signal(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    return shape->signal != NULL && shape->all_stations_times > 0 &&
           (shape->all_stations_times == 1 || telling->beside_other);
}

static struct script_line part_signal(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    struct line_draft draft = {.count = 0};
    if (shape->signal != NULL) {
        add(&draft, PIECE_STRONG, repeated(telling, shape->signal, shape->signal_times));
        if (joins_signal(telling))
            add_all_stations(&draft, telling);
    }
    return line_from(telling, ELEMENT_SIGNAL, &draft);
}

static struct script_line part_all_stations(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    if (telling->shape->all_stations_times > 0 && !joins_signal(telling))
        add_all_stations(&draft, telling);
    return line_from(telling, ELEMENT_ALL_STATIONS, &draft);
}

static struct script_line part_name(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    add(&draft, PIECE_WORDS, SPOKEN_THIS_IS);
    add(&draft, PIECE_STRONG, repeated(telling, telling->name, telling->shape->name_times));
    return line_from(telling, ELEMENT_NAME, &draft);
}

static void add_mmsi(struct line_draft *draft, const struct telling *telling)
{
    add(draft, PIECE_WORDS, "MMSI");
    add(draft, PIECE_STRONG, telling->mmsi);
}

static struct script_line part_identity(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    if (telling->call_sign != NULL) {
        add(&draft, PIECE_WORDS, "CALL SIGN");
        add(&draft, PIECE_STRONG, telling->call_sign);
    }
    if (telling->mmsi != NULL) {
        if (draft.count > 0)
            add(&draft, PIECE_WORDS, "·");
        add_mmsi(&draft, telling);
    }
    return line_from(telling, ELEMENT_IDENTITY, &draft);
}

static void add_own_identity(struct line_draft *draft, const struct telling *telling)
{
    add(draft, PIECE_STRONG, text_format(telling->arena, "%s %s",
                                         telling->shape->message_signal, telling->name));
    if (telling->call_sign != NULL)
        add(draft, PIECE_WORDS, telling->call_sign);
    if (telling->call_sign != NULL && telling->mmsi != NULL)
        add(draft, PIECE_WORDS, "·");
    if (telling->mmsi != NULL)
        add(draft, PIECE_STRONG, telling->mmsi);
}

static struct script_line part_message_signal(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    struct line_draft draft = {.count = 0};
    if (shape->message_signal != NULL && shape->of_another) {
        add(&draft, PIECE_STRONG, shape->message_signal);
        add_blank(&draft, "name or description of the vessel in distress", WIDTH_WORDS);
    } else if (shape->message_signal != NULL) {
        add_own_identity(&draft, telling);
    }
    return line_from(telling, ELEMENT_MESSAGE_SIGNAL, &draft);
}

/* The letter of the side that the cruising area lies on, of those for the two; 0 where it
 * lies on both, or is unknown. */
static char area_letter(enum hemisphere area, const char *letters)
{
    return area == HEMISPHERE_UP ? letters[0] : area == HEMISPHERE_DOWN ? letters[1] : '\0';
}

/* Without a side the crew circles one. */
static void add_hemisphere(struct line_draft *draft, enum hemisphere area, const char *letters,
                           const char *choice)
{
    char letter = area_letter(area, letters);
    if (letter != '\0')
        add(draft, PIECE_STRONG, hemisphere_word(letter));
    else
        add(draft, PIECE_CHOICE, choice);
}

static bool is_one_side(enum hemisphere area)
{
    return area == HEMISPHERE_UP || area == HEMISPHERE_DOWN;
}

/* On both sides of Greenwich the time of the position comes before it, which is
 * heard as well: EAST / WEST leaves it no room in the line of the
 * longitude, and a line more is what full cards have not. */
static bool time_leads(const struct base_record *base)
{
    return base != NULL && !is_one_side(base->longitude.value) &&
           is_one_side(base->latitude.value);
}

static void add_time(struct line_draft *draft)
{
    add_blank(draft, "time UTC", WIDTH_TIME);
    add(draft, PIECE_WORDS, "UTC");
}

static struct script_line part_latitude(const struct telling *telling)
{
    const struct base_record *base = telling->base;
    struct line_draft draft = {.count = 0};
    if (telling->shape->position) {
        if (time_leads(base)) {
            add(&draft, PIECE_WORDS, "AT");
            add_time(&draft);
        }
        add(&draft, PIECE_WORDS, time_leads(base) ? "· LAT" : "LAT");
        add_blank(&draft, BLANK_LATITUDE_DEGREES, WIDTH_TWO_DIGITS);
        add(&draft, PIECE_WORDS, "DEGREES");
        add_blank(&draft, BLANK_LATITUDE_MINUTES, WIDTH_MINUTES);
        add(&draft, PIECE_WORDS, "MINUTES");
        add_hemisphere(&draft, base != NULL ? base->latitude.value : HEMISPHERE_NONE,
                       LETTERS_OF_LATITUDE, "NORTH SOUTH");
    }
    return line_from(telling, ELEMENT_POSITION, &draft);
}

static struct script_line part_longitude(const struct telling *telling)
{
    const struct base_record *base = telling->base;
    struct line_draft draft = {.count = 0};
    if (telling->shape->position) {
        add(&draft, PIECE_WORDS, "LONG");
        add_blank(&draft, BLANK_LONGITUDE_DEGREES, WIDTH_THREE_DIGITS);
        add(&draft, PIECE_WORDS, "DEGREES");
        add_blank(&draft, BLANK_LONGITUDE_MINUTES, WIDTH_MINUTES);
        add(&draft, PIECE_WORDS, "MINUTES");
        add_hemisphere(&draft, base != NULL ? base->longitude.value : HEMISPHERE_NONE,
                       LETTERS_OF_LONGITUDE, "EAST WEST");
        if (!time_leads(base)) {
            add(&draft, PIECE_WORDS, "AT");
            add_time(&draft);
        }
    }
    return line_from(telling, ELEMENT_POSITION, &draft);
}

/* The words of one's own emergency ("I AM ON FIRE") must not slip into a relay,
 * which is about another vessel, nor into a downgrade. */
static const char *nature_phrase(const struct telling *telling)
{
    return telling->shape->takes_nature ? telling->request->nature : NULL;
}

static const char *assistance_phrase(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    return shape->asks && telling->request->assistance != NULL
        ? telling->request->assistance : shape->assistance;
}

static bool on_one_line(const struct telling *telling)
{
    const char *nature = nature_phrase(telling), *assistance = assistance_phrase(telling);
    return nature != NULL && assistance != NULL
        && !text_ends(nature, "...") && !text_equal(nature, assistance)
        && (telling->request->person_lost ||
            strlen(nature) + strlen(assistance) <= JOINED_AT_MOST);
}

/* "I HAVE COLLIDED WITH ..." ends in a blank. */
static void add_nature(struct line_draft *draft, const struct telling *telling,
                       const char *phrase)
{
    if (!text_ends(phrase, " ...")) {
        add(draft, PIECE_STRONG, sentence(telling, phrase));
        return;
    }
    add(draft, PIECE_STRONG, arena_copy(telling->arena, phrase, strlen(phrase) - strlen(" ...")));
    add_blank(draft, "what", WIDTH_WORDS);
}

static struct script_line part_nature(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    const char *phrase = nature_phrase(telling), *assistance = assistance_phrase(telling);
    struct line_draft draft = {.count = 0};
    if (phrase != NULL && !text_equal(phrase, assistance)) {
        add_nature(&draft, telling, phrase);
        if (on_one_line(telling))
            add(&draft, PIECE_STRONG, sentence(telling, assistance));
    } else if (phrase == NULL && shape->nature_blank != NULL) {
        if (shape->nature_lead != NULL)
            add(&draft, PIECE_STRONG, shape->nature_lead);
        add_blank(&draft, shape->nature_blank, WIDTH_WORDS);
    }
    return line_from(telling, ELEMENT_NATURE, &draft);
}

/* Where nothing is said between them, OVER follows on the same line. */
static bool ends_with_assistance(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    return shape->end != NULL && !shape->persons && assistance_phrase(telling) != NULL &&
           !on_one_line(telling);
}

static struct script_line part_assistance(const struct telling *telling)
{
    const char *phrase = assistance_phrase(telling);
    struct line_draft draft = {.count = 0};
    if (phrase != NULL && !on_one_line(telling)) {
        add(&draft, PIECE_STRONG, sentence(telling, phrase));
        if (ends_with_assistance(telling))
            add(&draft, PIECE_STRONG, telling->shape->end);
    } else if (phrase == NULL && telling->shape->asks) {
        add(&draft, PIECE_STRONG, "I REQUIRE");
        add_blank(&draft, "assistance", WIDTH_WORDS);
    }
    return line_from(telling, ELEMENT_ASSISTANCE, &draft);
}

static struct script_line part_plea(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    if (telling->shape->plea != NULL) {
        add(&draft, PIECE_STRONG, telling->shape->plea);
        add_time(&draft);
    }
    return line_from(telling, ELEMENT_OTHER, &draft);
}

/* When they fell tells where the current has taken them: not the time of the call. */
static struct script_line part_in_water(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    if (telling->request->person_lost) {
        add_blank(&draft, "persons in the water", WIDTH_TWO_DIGITS);
        add(&draft, PIECE_WORDS, "IN THE WATER,");
        add_blank(&draft, "persons", WIDTH_TWO_DIGITS);
        add(&draft, PIECE_WORDS, "ON BOARD, FELL AT");
        add_blank(&draft, "time of the fall", WIDTH_TIME);
        add(&draft, PIECE_WORDS, "UTC.");
    }
    return line_from(telling, ELEMENT_OTHER, &draft);
}

static struct script_line part_persons_and_end(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    struct line_draft draft = {.count = 0};
    if (shape->persons) {
        if (!telling->request->person_lost) {
            add_blank(&draft, "persons", WIDTH_TWO_DIGITS);
            add(&draft, PIECE_WORDS, "PERSONS ON BOARD.");
        }
        if (telling->description != NULL && !shape->of_another)
            add(&draft, PIECE_WORDS, sentence(telling, telling->description));
    }
    if (shape->end != NULL && !ends_with_assistance(telling))
        add(&draft, PIECE_STRONG, shape->end);
    return line_from(telling, shape->persons ? ELEMENT_OTHER : ELEMENT_OVER, &draft);
}

static struct script_line (*const parts[])(const struct telling *telling) = {
    part_signal, part_all_stations, part_name, part_identity, part_message_signal,
    part_latitude, part_longitude, part_nature, part_assistance, part_plea,
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
