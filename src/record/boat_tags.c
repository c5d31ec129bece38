/* boat_tags.c - the tags of a boat's gear (room: record): a letter for the class
 * and a number, fixed for the boat's life. The next free one is proposed, never
 * given: a tag counts once it stands on the gear. */
#include "record.h"

#include "promise.h"
#include "text.h"

#include <string.h>

enum { TAG_HIGHEST = 99, CLASS_COUNT = 3 };

static const enum item_class class_letters[CLASS_COUNT] = {ITEM_FIRE, ITEM_RESCUE, ITEM_CONTROL};

/* Which tags were ever used on this boat, and the last that was given. */
struct tag_ledger {
    bool used[CLASS_COUNT][TAG_HIGHEST + 1];
    size_t given[CLASS_COUNT];
};

static bool row_of_letter(char letter, size_t *row)
{
    for (*row = 0; *row < CLASS_COUNT; (*row)++)
        if ((char)class_letters[*row] == letter)
            return true;
    return false;
}

bool tag_parse(const char *text, struct tag *tag)
{
    if (text == NULL || !row_of_letter(text[0], &tag->row) || text[1] == '0')
        return false;
    tag->number = 0;
    size_t at = 1;
    for (; is_digit(text[at]) && at <= 2; at++)
        tag->number = tag->number * 10 + (size_t)(text[at] - '0');
    return at > 1 && text[at] == '\0';
}

bool has_tag_form(const char *text)
{
    struct tag tag;
    return tag_parse(text, &tag);
}

const struct equipment *gear_of_tag(const struct boat *boat, const char *tag)
{
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (tag != NULL && text_equal(boat->equipment[i].tag.text, tag))
            return &boat->equipment[i];
    return NULL;
}

static void ledger_mark(struct tag_ledger *ledger, const char *text)
{
    struct tag tag;
    if (tag_parse(text, &tag))
        ledger->used[tag.row][tag.number] = true;
}

static struct tag_ledger ledger_of(const struct boat *boat)
{
    struct tag_ledger ledger = {0};
    struct tag tag;
    for (size_t i = 0; i < boat->equipment_count; i++)
        ledger_mark(&ledger, boat->equipment[i].tag.text);
    for (size_t i = 0; i < boat->retired_tags.count; i++)
        ledger_mark(&ledger, boat->retired_tags.items[i].text);
    for (size_t i = 0; i < boat->likeness.tags.count; i++)
        ledger_mark(&ledger, boat->likeness.tags.items[i].text);
    for (size_t i = 0; i < boat->tags_given.count; i++)
        if (tag_parse(boat->tags_given.items[i].text, &tag))
            ledger.given[tag.row] = tag.number;
    return ledger;
}

static size_t number_highest(const bool *used)
{
    size_t number = TAG_HIGHEST;
    while (number > 0 && !used[number])
        number--;
    return number;
}

/* The number after the highest and the last given, since a gap may be gear whose tag
 * nobody wrote into retired_tags; a gap only when 99 is taken. 0: none left. */
static size_t number_next(const bool *used, size_t given)
{
    size_t highest = number_highest(used);
    if (highest < given)
        highest = given;
    if (highest < TAG_HIGHEST)
        return highest + 1;
    for (size_t number = 1; number <= TAG_HIGHEST; number++)
        if (!used[number])
            return number;
    return 0;
}

/* Takes the next free tag out of the ledger; NULL when all 99 are used. */
static const char *ledger_take(struct tag_ledger *ledger, enum item_class class,
                               struct arena *arena)
{
    size_t row = 0;
    if (!row_of_letter((char)class, &row))
        return NULL;
    size_t number = number_next(ledger->used[row], ledger->given[row]);
    if (number == 0)
        return NULL;
    ledger->used[row][number] = true;
    return text_format(arena, "%c%zu", (char)class, number);
}

const char *boat_free_tag(const struct boat *boat, enum item_class class, struct arena *arena)
{
    struct tag_ledger ledger = ledger_of(boat);
    return ledger_take(&ledger, class, arena);
}

const char *boat_free_tag_after(const struct boat *boat, enum item_class class, size_t given,
                                struct arena *arena)
{
    struct tag_ledger ledger = ledger_of(boat);
    const char *tag = ledger_take(&ledger, class, arena);
    for (size_t i = 0; i < given && tag != NULL; i++)
        tag = ledger_take(&ledger, class, arena);
    return tag;
}

/* ---- tags that fell out ---- */

size_t boat_tag_highest(const struct boat *boat, enum item_class class)
{
    struct tag_ledger ledger = ledger_of(boat);
    size_t row = 0;
    return row_of_letter((char)class, &row) ? number_highest(ledger.used[row]) : 0;
}

size_t boat_tag_given(const struct boat *boat, enum item_class class)
{
    struct tag_ledger ledger = ledger_of(boat);
    size_t row = 0;
    return row_of_letter((char)class, &row) ? ledger.given[row] : 0;
}

static size_t tag_distance(size_t a, size_t b)
{
    return a > b ? a - b : b - a;
}

static const struct equipment *piece_near(const struct boat *boat, size_t row, size_t number)
{
    const struct equipment *near = NULL;
    size_t least = TAG_HIGHEST + 1;
    struct tag tag;
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (tag_parse(boat->equipment[i].tag.text, &tag) && tag.row == row &&
            tag_distance(tag.number, number) < least) {
            near = &boat->equipment[i];
            least = tag_distance(tag.number, number);
        }
    return near;
}

/* "C15, C20 to C24": three and more in a row are told by their ends. */
static void run_add(struct text_builder *out, char letter, size_t first, size_t last)
{
    const char *comma = out->length == 0 ? "" : ", ";
    text_add_format(out, "%s%c%zu", comma, letter, first);
    if (last > first)
        text_add_format(out, "%s%c%zu", last > first + 1 ? " to " : ", ", letter, last);
}

struct tags_lost boat_tags_lost(const struct boat *boat, enum item_class class,
                                struct arena *arena)
{
    struct tags_lost lost = {0};
    struct tag_ledger ledger = ledger_of(boat);
    struct text_builder words = text_builder_in(arena);
    size_t row = 0;
    if (boat->tags_unclear || !row_of_letter((char)class, &row))
        return lost;
    promise(row < CLASS_COUNT && ledger.given[row] <= TAG_HIGHEST);
    const bool *used = ledger.used[row];
    size_t end = number_highest(used) > ledger.given[row] ? number_highest(used)
                                                          : ledger.given[row];
    for (size_t first = 1, last; first <= end; first = last + 1) {
        last = first;
        if (used[first])
            continue;
        while (last < end && !used[last + 1])
            last++;
        if (lost.near == NULL)
            lost.near = piece_near(boat, row, first);
        run_add(&words, (char)class, first, last);
        lost.count += last - first + 1;
    }
    lost.words = words.at;
    return lost;
}

/* ---- what is wrong ---- */

static const char *proposal(struct tag_ledger *ledger, enum item_class class, struct arena *arena)
{
    const char *tag = ledger_take(ledger, class, arena);
    if (tag == NULL)
        return "all 99 tags of this letter are used";
    return text_format(arena, "the next free one, here and on the gear itself: tag: %s", tag);
}

/* A tag of the wrong letter takes none from the gear that it belongs to. */
static bool tag_stands(const struct equipment *gear)
{
    return gear->kind == NULL || gear->tag.text == NULL ||
           gear->tag.text[0] == (char)gear->kind->class;
}

static const struct equipment *first_with(const struct boat_reading *reading,
                                          const struct equipment *gear)
{
    for (const struct equipment *first = reading->gear; first < gear; first++)
        if (text_equal(first->tag.text, gear->tag.text) && tag_stands(first))
            return first;
    return NULL;
}

/* The tag that was meant: c4, "C 4", C04 and C4, as C4; NULL: nobody knows. */
static const char *tag_meant(const char *text, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    struct tag tag;
    for (const char *at = text_upper(arena, text); *at != '\0'; at++) {
        bool letter = out.length == 0 && *at >= 'A' && *at <= 'Z';
        bool digit = out.length > 0 && is_digit(*at) && (*at != '0' || out.length > 1);
        if (letter || digit)
            text_add_bytes(&out, at, 1);
        else if (strchr(" -_.,;0", *at) == NULL)
            return NULL;
    }
    return tag_parse(out.at, &tag) ? out.at : NULL;
}

static void wrong_form_tell(const struct boat_reading *reading, const struct equipment *gear)
{
    const char *meant = tag_meant(gear->tag.text, reading->arena);
    problem_add(reading->problems, SEVERITY_ERROR, gear->tag.place,
                meant != NULL ? text_format(reading->arena, "write %s", meant)
                              : "a tag is F, E or C and a number from 1 to 99 without a zero "
                                "before it, such as C4",
                "%s is not a tag", gear->tag.text);
}

static void wrong_letter_tell(const struct boat_reading *reading, const struct equipment *gear,
                              struct tag_ledger *ledger)
{
    problem_add(reading->problems, SEVERITY_ERROR, gear->tag.place,
                proposal(ledger, gear->kind->class, reading->arena),
                "tag %s has the wrong letter: tags of %s begin with %c", gear->tag.text,
                gear->kind->key, (char)gear->kind->class);
}

/* A copied entry is often one piece that was moved. */
static const char *reuse_remedy(const struct boat_reading *reading, const struct equipment *gear,
                                const struct equipment *first, struct tag_ledger *ledger)
{
    const char *next = proposal(ledger, gear->kind->class, reading->arena);
    return first->kind != gear->kind ? next
        : text_format(reading->arena, "if it is one piece, take out the entry whose place is "
                      "wrong; if two,\n%s", next);
}

/* Used by another, or by something that is gone. */
static void reuse_tell(const struct boat_reading *reading, const struct equipment *gear,
                       struct tag_ledger *ledger)
{
    const struct equipment *first = first_with(reading, gear);
    /* An entry that stands there twice is told as that: its tag would go with it. */
    if (first != NULL && !equipment_same_place(first, gear))
        problem_add(reading->problems, SEVERITY_ERROR, gear->tag.place,
                    reuse_remedy(reading, gear, first, ledger),
                    "tag %s is already that of %s (%s)", gear->tag.text,
                    first->item.value == ITEM_NONE ? "another item" : item_word(first->item.value),
                    line_words(place_or(first->tag.place, first->place), gear->tag.place,
                               reading->arena));
    if (list_holds(&reading->boat->retired_tags, gear->tag.text))
        problem_add(reading->problems, SEVERITY_ERROR, gear->tag.place,
                    proposal(ledger, gear->kind->class, reading->arena),
                    "tag %s is retired: it stood on gear that is gone", gear->tag.text);
}

static void tag_check(const struct boat_reading *reading, const struct equipment *gear,
                      struct tag_ledger *ledger)
{
    struct tag tag;
    if (gear->kind == NULL || (gear->tag.text == NULL && gear->tag.place.line > 0))
        return;   /* told where it was read */
    if (gear->tag.text == NULL)
        problem_add(reading->problems, SEVERITY_ERROR, gear->place,
                    proposal(ledger, gear->kind->class, reading->arena), "item %s has no tag",
                    gear->kind->key);
    else if (!tag_parse(gear->tag.text, &tag))
        wrong_form_tell(reading, gear);
    else if (class_letters[tag.row] != gear->kind->class)
        wrong_letter_tell(reading, gear, ledger);
    else
        reuse_tell(reading, gear, ledger);
}

static void tag_list_check(const struct boat_reading *reading, const char *key,
                           const struct list_value *tags, const char *remedy)
{
    struct tag tag;
    for (size_t i = 0; i < tags->count; i++)
        if (tags->items[i].text != NULL && !tag_parse(tags->items[i].text, &tag))
            problem_add(reading->problems, SEVERITY_ERROR, tags->items[i].place, remedy,
                        "%s: %s is not a tag", key, tags->items[i].text);
}

/* Two last ones of a letter: nobody knows which is. */
static void given_twice_tell(const struct boat_reading *reading)
{
    const struct list_value *given = &reading->boat->tags_given;
    bool seen[CLASS_COUNT] = {false};
    struct tag tag;
    for (size_t i = 0; i < given->count; i++) {
        if (!tag_parse(given->items[i].text, &tag))
            continue;
        if (seen[tag.row])
            problem_add(reading->problems, SEVERITY_ERROR, given->items[i].place,
                        "keep the higher one: of each letter the last tag ever given",
                        "tags_given names two tags of the letter %c",
                        (char)class_letters[tag.row]);
        seen[tag.row] = true;
    }
}

/* Is there a tag that may be one of those that seem to be missing? */
static bool tag_refused(const struct boat_reading *reading)
{
    for (size_t i = 0; i < reading->gear_count; i++)
        if (reading->gear[i].tag.text == NULL || reading->gear[i].kind == NULL)
            return true;
    return !reading->boat->retired_tags.given && reading->boat->retired_tags.place.line > 0;
}

void tags_check(struct boat_reading *reading)
{
    struct problems *all = reading->problems;
    reading->problems = problems_part(all);
    struct tag_ledger ledger = ledger_of(reading->boat);
    for (size_t i = 0; i < reading->gear_count; i++)
        tag_check(reading, &reading->gear[i], &ledger);
    tag_list_check(reading, "retired_tags", &reading->boat->retired_tags,
                   "write tags as they stood on the gear, such as C4");
    tag_list_check(reading, "tags_given", &reading->boat->tags_given,
                   "write the last tag of each letter, such as [F9, E18, C46]");
    given_twice_tell(reading);
    bool sound = problems_settle(all, reading->problems);
    reading->problems = all;
    reading->boat->tags_unclear = !sound || tag_refused(reading);
}
