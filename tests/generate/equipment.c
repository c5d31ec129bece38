/* equipment.c - the equipment of a generated boat: which gear she has, where it is, and how it
 * is written. */
#include "gear.h"
#include "places.h"
#include "radio.h"

#include "item_list.h"

#include <string.h>

#define LENGTH(list) ((int)(sizeof(list) / sizeof *(list)))

static const char *const item_keys[] = {
#define KEY_OF(key, ...) #key,
    ITEM_LIST(KEY_OF)
#undef KEY_OF
};

#define ENTRIES_MOST 128
#define DRAWS_MOST 20

/* The entries of one boat while they are written. */
struct writing {
    struct boat_draw *boat;
    bool has[LENGTH(item_keys)];
    int epirbs, serials;
    struct { const struct gear_row *row; struct place_drawn place; } taken[ENTRIES_MOST];
    int taken_count;
};

/* ---- words that are filled in ---- */

typedef void fill_word(struct writing *writing);

static void due_fill(struct writing *writing)
{
    fprintf(writing->boat->file, "%d-%02d", draw_between(&writing->boat->draw, 2027, 2028),
            draw_between(&writing->boat->draw, 1, 12));
}

static void far_fill(struct writing *writing)
{
    fprintf(writing->boat->file, "%d-%02d", draw_between(&writing->boat->draw, 2029, 2033),
            draw_between(&writing->boat->draw, 1, 12));
}

static void persons_fill(struct writing *writing)
{
    fprintf(writing->boat->file, "%d", writing->boat->persons);
}

static void kg_fill(struct writing *writing)
{
    fprintf(writing->boat->file, "%d", draw_between(&writing->boat->draw, 1, 3));
}

static void empty_fill(struct writing *writing)
{
    fprintf(writing->boat->file, "%d", draw_between(&writing->boat->draw, 6, 12));
}

static void rating_fill(struct writing *writing)
{
    static const char *const ratings[] = {"5A 34B", "8A 34B", "13A 70B", NULL};
    fprintf(writing->boat->file, "%s", draw_text(&writing->boat->draw, ratings));
}

static void release_fill(struct writing *writing)
{
    static const char *const releases[] = {"hook", "slip hook", "pull pin", "strap", NULL};
    fprintf(writing->boat->file, "%s", draw_text(&writing->boat->draw, releases));
}

static void serial_fill(struct writing *writing)
{
    fprintf(writing->boat->file, "%05d", 20000 + ++writing->serials);
}

static void beacon_fill(struct writing *writing)
{
    beacon_write(writing->boat, writing->epirbs++);
}

static const struct { const char *word; fill_word *fill; } words[] = {
    {"{due}", due_fill}, {"{far}", far_fill}, {"{persons}", persons_fill}, {"{kg}", kg_fill},
    {"{empty}", empty_fill}, {"{rating}", rating_fill}, {"{release}", release_fill},
    {"{serial}", serial_fill}, {"{beacon}", beacon_fill},
};

/* Writes what the word at `text` stands for. How long the word is; 0: it is none. */
static size_t word_fill(struct writing *writing, const char *text)
{
    for (int i = 0; i < LENGTH(words); i++)
        if (strncmp(text, words[i].word, strlen(words[i].word)) == 0) {
            words[i].fill(writing);
            return strlen(words[i].word);
        }
    return 0;
}

static void fields_fill(struct writing *writing, const char *fields)
{
    while (*fields != '\0') {
        size_t length = word_fill(writing, fields);
        if (length == 0)
            fputc(*fields, writing->boat->file);
        fields += length == 0 ? 1 : length;
    }
}

/* ---- an entry ---- */

/* One of a row's words; an empty place of the list is drawn as well. */
static const char *choice_draw(struct boat_draw *boat, const char *const *choices)
{
    int last = 0;
    for (int i = 0; i < 4; i++)
        last = choices[i] != NULL ? i : last;
    return choices[draw_below(&boat->draw, last + 1)];
}

static const char *how_draw(struct boat_draw *boat, const struct gear_row *row)
{
    if ((row->traits & ALIKE) != 0 && draw_happens(&boat->draw, 90))
        return row->hows[boat->usual_way];
    return choice_draw(boat, row->hows);
}

static void quoted_write(FILE *file, const char *key, const char *value)
{
    if (value != NULL)
        fprintf(file, *value == '{' ? ", %s: %s" : ", %s: \"%s\"", key, value);
}

static void reach_write(const struct boat_draw *boat, const struct gear_row *row,
                        const struct place_drawn *place)
{
    if ((row->traits & REACHED) != 0)
        fprintf(boat->file, ", from_cockpit: %s", place_at_hand(place) ? "yes" : "no");
    if ((row->traits & INVERTED) != 0 && boat_has(boat, FACT(CATAMARAN), 0))
        fprintf(boat->file, ", reach_inverted: yes");
    if ((row->traits & OPENED) == 0)
        return;
    if (place->row->role == ROLE_ENGINE && boat_has(boat, FACT(TWO_SPACES), 0))
        fprintf(boat->file, ", inside: [engine_space_%s]",
                place->hand == HAND_PORT ? "port" : "starboard");
    else
        fprintf(boat->file, place->row->role == ROLE_ENGINE ? ", inside: [engine_space]"
                                                            : ", inside: []");
}

static void worked_write(struct boat_draw *boat, const struct gear_row *row, enum hand hand)
{
    struct place_drawn worked;
    if (row->worked == 0 || !place_draw(boat, row->worked, &worked))
        return;
    place_to_hand(&worked, hand);
    fprintf(boat->file, ", from: {");
    place_write(boat, &worked, ", ");
    fprintf(boat->file, "}");
}

static void serves_write(const struct boat_draw *boat, const struct gear_row *row, enum hand hand)
{
    if ((row->traits & EACH_SPACE) != 0 && boat_has(boat, FACT(TWO_SPACES), 0))
        fprintf(boat->file, ", serves: [engine_space_%s]",
                hand == HAND_PORT ? "port" : "starboard");
}

static void item_mark(struct writing *writing, const char *item)
{
    for (int i = 0; i < LENGTH(item_keys); i++)
        if (strcmp(item_keys[i], item) == 0)
            writing->has[i] = true;
}

static void entry_write(struct writing *writing, const struct gear_row *row,
                        const struct place_drawn *place)
{
    struct boat_draw *boat = writing->boat;
    item_mark(writing, row->item);
    fprintf(boat->file, "  - {item: %s, tag: %c%d", row->item, row->letter,
            ++boat->tags[(int)row->letter]);
    quoted_write(boat->file, "name", choice_draw(boat, row->names));
    fprintf(boat->file, ", ");
    place_write(boat, place, ", ");
    if (draw_happens(&boat->draw, 6))
        place_point_write(boat, place);
    worked_write(boat, row, place->hand);
    quoted_write(boat->file, "how", how_draw(boat, row));
    serves_write(boat, row, place->hand);
    reach_write(boat, row, place);
    if (row->fields != NULL) {
        fprintf(boat->file, ", ");
        fields_fill(writing, row->fields);
    }
    fprintf(boat->file, "}\n");
}

/* ---- which gear ---- */

/* On a boat with two hulls some gear stands in each. */
static bool is_on_each_side(const struct boat_draw *boat, const struct gear_row *row)
{
    return ((row->traits & EACH_SPACE) != 0 && boat_has(boat, FACT(TWO_SPACES), 0)) ||
           ((row->traits & EACH_SIDE) != 0 && boat_has(boat, FACT(CATAMARAN), 0));
}

static bool is_alike(const struct place_drawn *place, const struct place_drawn *other)
{
    return strcmp(place->row->zone, other->row->zone) == 0 && place->hand == other->hand &&
           place->spot == other->spot;
}

/* Rows of one item with names of their own may share a place: the names tell them apart. */
static bool is_taken(const struct writing *writing, const struct gear_row *row,
                     const struct place_drawn *place)
{
    for (int i = 0; i < writing->taken_count; i++) {
        const struct gear_row *other = writing->taken[i].row;
        bool apart = other != row && row->names[0] != NULL;
        if (!apart && strcmp(other->item, row->item) == 0 &&
            is_alike(place, &writing->taken[i].place))
            return true;
    }
    return false;
}

/* Two pieces of a kind never stand in one place. False: none is left. */
static bool free_place_draw(struct writing *writing, const struct gear_row *row,
                            struct place_drawn *place)
{
    for (int i = 0; i < DRAWS_MOST && writing->taken_count < ENTRIES_MOST; i++) {
        if (!place_draw(writing->boat, row->roles, place))
            return false;
        if (!is_taken(writing, row, place)) {
            writing->taken[writing->taken_count].row = row;
            writing->taken[writing->taken_count++].place = *place;
            return true;
        }
    }
    return false;
}

/* How many entries were written. */
static int row_write(struct writing *writing, const struct gear_row *row)
{
    struct place_drawn place;
    if (!free_place_draw(writing, row, &place))
        return 0;
    if (!is_on_each_side(writing->boat, row)) {
        entry_write(writing, row, &place);
        return 1;
    }
    for (int hand = HAND_PORT; hand <= HAND_STARBOARD; hand++) {
        place_to_hand(&place, (enum hand)hand);
        entry_write(writing, row, &place);
    }
    return 2;
}

/* What nine in ten boats have, a poor boat has too; of the rest a poor boat has little. */
static bool row_drawn(struct boat_draw *boat, const struct gear_row *row)
{
    int share = row->share >= 95 ? row->share : row->share * boat->gear_share / 100;
    return boat_has(boat, row->needs, row->never) && draw_happens(&boat->draw, share);
}

static int rows_write(struct writing *writing, const struct gear_row *rows, int count)
{
    int written = 0;
    for (int i = 0; i < count; i++) {
        if (!row_drawn(writing->boat, &rows[i]))
            continue;
        written += row_write(writing, &rows[i]);
        if (draw_happens(&writing->boat->draw, rows[i].doubled))
            written += row_write(writing, &rows[i]);
    }
    return written;
}

static void tags_given_write(const struct boat_draw *boat)
{
    const char *before = "";
    fprintf(boat->file, "tags_given: [");
    for (const char *letter = "FEC"; *letter != '\0'; letter++)
        if (boat->tags[(int)*letter] > 0) {
            fprintf(boat->file, "%s%c%d", before, *letter, boat->tags[(int)*letter]);
            before = ", ";
        }
    fprintf(boat->file, "]\n");
}

void equipment_write(struct boat_draw *boat)
{
    struct writing writing = {.boat = boat};
    if (boat_has(boat, FACT(RADIO), 0))
        item_mark(&writing, "vhf_dsc");
    fprintf(boat->file, "equipment:\n");
    rows_write(&writing, gear_rows, gear_row_count);
    boat->recorded = rows_write(&writing, opening_rows, opening_row_count);
    tags_given_write(boat);
    fprintf(boat->file, "not_fitted:\n");
    for (int i = 0; i < LENGTH(item_keys); i++)
        if (!writing.has[i])
            fprintf(boat->file, "  - %s\n", item_keys[i]);
}
