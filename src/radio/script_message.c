/* script_message.c - the lines of a call that tell where the boat is, what is wrong, what she
 * needs and who is aboard (room: radio). Never decides which form is told. */
#include "script_draft.h"

#include <string.h>

#include "text.h"

/* Nature and assistance share a line of the card up to this many letters; where a person is
 * lost always, since their line is one more. */
#define JOINED_AT_MOST 54

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
        draft_add(draft, PIECE_STRONG, hemisphere_word(letter));
    else
        draft_add(draft, PIECE_CHOICE, choice);
}

static bool is_one_side(enum hemisphere area)
{
    return area == HEMISPHERE_UP || area == HEMISPHERE_DOWN;
}

/* On both sides of Greenwich the time of the position comes before it, which is
 * heard as well: EAST / WEST leaves it no room in the line of the
 * longitude, and a line more is what full cards have not. */
static bool time_leads(const struct telling *telling)
{
    const struct base_record *base = telling->base;
    return telling->shape->plea == NULL && base != NULL && !is_one_side(base->longitude.value) &&
           is_one_side(base->latitude.value);
}

/* Another's position must not be taken for one's own. */
static const char *latitude_lead(const struct telling *telling)
{
    return telling->shape->of_another ? "THEIR POSITION LAT" : "LAT";
}

struct script_line part_latitude(const struct telling *telling)
{
    const struct base_record *base = telling->base;
    struct line_draft draft = {.count = 0};
    if (telling->shape->position) {
        if (time_leads(telling)) {
            draft_add(&draft, PIECE_WORDS, "AT");
            draft_time(&draft, telling);
            draft_add(&draft, PIECE_WORDS, "·");
        }
        draft_add(&draft, PIECE_WORDS, latitude_lead(telling));
        draft_blank(&draft, BLANK_LATITUDE_DEGREES, WIDTH_TWO_DIGITS);
        draft_add(&draft, PIECE_WORDS, "DEGREES");
        draft_blank(&draft, BLANK_LATITUDE_MINUTES, WIDTH_MINUTES);
        draft_add(&draft, PIECE_WORDS, "MINUTES");
        add_hemisphere(&draft, base != NULL ? base->latitude.value : HEMISPHERE_NONE,
                       LETTERS_OF_LATITUDE, "NORTH SOUTH");
    }
    return draft_line(telling, ELEMENT_POSITION, &draft);
}

struct script_line part_longitude(const struct telling *telling)
{
    const struct base_record *base = telling->base;
    struct line_draft draft = {.count = 0};
    if (telling->shape->position) {
        draft_add(&draft, PIECE_WORDS, "LONG");
        draft_blank(&draft, BLANK_LONGITUDE_DEGREES, WIDTH_THREE_DIGITS);
        draft_add(&draft, PIECE_WORDS, "DEGREES");
        draft_blank(&draft, BLANK_LONGITUDE_MINUTES, WIDTH_MINUTES);
        draft_add(&draft, PIECE_WORDS, "MINUTES");
        add_hemisphere(&draft, base != NULL ? base->longitude.value : HEMISPHERE_NONE,
                       LETTERS_OF_LONGITUDE, "EAST WEST");
        if (!time_leads(telling) && telling->shape->plea == NULL) {
            draft_add(&draft, PIECE_WORDS, "AT");
            draft_time(&draft, telling);
        }
    }
    return draft_line(telling, ELEMENT_POSITION, &draft);
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

/* Behind a nature that takes more than a line, its last has room for the assistance. */
static bool on_one_line(const struct telling *telling)
{
    const char *nature = nature_phrase(telling), *assistance = assistance_phrase(telling);
    return nature != NULL && assistance != NULL
        && !text_ends(nature, "...") && !text_equal(nature, assistance)
        && (telling->request->person_lost || strlen(nature) > JOINED_AT_MOST ||
            strlen(nature) + strlen(assistance) <= JOINED_AT_MOST);
}

/* "I HAVE COLLIDED WITH ..." ends in a blank. */
static void add_nature(struct line_draft *draft, const struct telling *telling,
                       const char *phrase)
{
    if (!text_ends(phrase, " ...")) {
        draft_add(draft, PIECE_STRONG, said_sentence(telling, phrase));
        return;
    }
    draft_add(draft, PIECE_STRONG,
              arena_copy(telling->arena, phrase, strlen(phrase) - strlen(" ...")));
    draft_blank(draft, "what", WIDTH_WORDS);
}

struct script_line part_nature(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    const char *phrase = nature_phrase(telling), *assistance = assistance_phrase(telling);
    struct line_draft draft = {.count = 0};
    if (phrase != NULL && !text_equal(phrase, assistance)) {
        add_nature(&draft, telling, phrase);
        if (on_one_line(telling))
            draft_add(&draft, PIECE_STRONG, said_sentence(telling, assistance));
    } else if (phrase == NULL && shape->nature_blank != NULL) {
        if (shape->nature_lead != NULL)
            draft_add(&draft, PIECE_STRONG, shape->nature_lead);
        draft_blank(&draft, shape->nature_blank, WIDTH_WORDS);
    }
    return draft_line(telling, ELEMENT_NATURE, &draft);
}

/* Where nothing is said between them, OVER follows on the same line. */
static bool ends_with_assistance(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    return shape->end != NULL && !shape->persons && assistance_phrase(telling) != NULL &&
           !on_one_line(telling);
}

struct script_line part_assistance(const struct telling *telling)
{
    const char *phrase = assistance_phrase(telling);
    struct line_draft draft = {.count = 0};
    if (phrase != NULL && !on_one_line(telling)) {
        draft_add(&draft, PIECE_STRONG, said_sentence(telling, phrase));
        if (ends_with_assistance(telling))
            draft_add(&draft, PIECE_STRONG, telling->shape->end);
    } else if (phrase == NULL && telling->shape->asks) {
        draft_add(&draft, PIECE_STRONG, "I REQUIRE");
        draft_blank(&draft, "assistance", WIDTH_WORDS);
    }
    return draft_line(telling, ELEMENT_ASSISTANCE, &draft);
}

/* A form that tells no more than that ends with it. */
static bool ends_with_plea(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    return shape->plea != NULL && shape->end != NULL && !shape->position;
}

struct script_line part_plea(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    if (telling->shape->plea != NULL) {
        draft_add(&draft, PIECE_STRONG, telling->shape->plea);
        draft_time(&draft, telling);
        if (ends_with_plea(telling))
            draft_add(&draft, PIECE_STRONG, telling->shape->end);
    }
    return draft_line(telling, ELEMENT_OTHER, &draft);
}

/* When they fell tells where the current has taken them: not the time of the call. */
struct script_line part_in_water(const struct telling *telling)
{
    struct line_draft draft = {.count = 0};
    if (telling->request->person_lost) {
        draft_blank(&draft, "persons in the water", WIDTH_TWO_DIGITS);
        draft_add(&draft, PIECE_WORDS, "IN THE WATER,");
        draft_blank(&draft, "persons", WIDTH_TWO_DIGITS);
        draft_add(&draft, PIECE_WORDS, "ON BOARD, FELL AT");
        draft_blank(&draft, "time of the fall", WIDTH_TIME);
        draft_add(&draft, PIECE_WORDS, said_sentence(telling, clock_said(telling)));
    }
    return draft_line(telling, ELEMENT_OTHER, &draft);
}

struct script_line part_persons_and_end(const struct telling *telling)
{
    const struct form_shape *shape = telling->shape;
    struct line_draft draft = {.count = 0};
    if (shape->persons) {
        if (!telling->request->person_lost) {
            draft_blank(&draft, "persons", WIDTH_TWO_DIGITS);
            draft_add(&draft, PIECE_WORDS, "PERSONS ON BOARD.");
        }
        if (telling->description != NULL && !shape->of_another)
            draft_add(&draft, PIECE_WORDS, said_sentence(telling, telling->description));
    }
    if (shape->end != NULL && !ends_with_assistance(telling) && !ends_with_plea(telling))
        draft_add(&draft, PIECE_STRONG, shape->end);
    return draft_line(telling, shape->persons ? ELEMENT_OTHER : ELEMENT_OVER, &draft);
}

