/* boat_tags.c - the tags of a boat's gear (room: record): a letter for the class
 * and a number, fixed for the boat's life. The next free one is proposed, never
 * given: a tag counts once it stands on the gear. */
#include "record.h"

#include "text.h"

enum { TAG_HIGHEST = 99, CLASS_COUNT = 3 };

static const enum item_class class_letters[CLASS_COUNT] = {ITEM_FIRE, ITEM_RESCUE, ITEM_CONTROL};

/* Which tags were ever used on this boat. */
struct tag_ledger {
    bool used[CLASS_COUNT][TAG_HIGHEST + 1];
};

struct tag {
    size_t row;      /* of class_letters */
    size_t number;
};

static bool row_of_letter(char letter, size_t *row)
{
    for (*row = 0; *row < CLASS_COUNT; (*row)++)
        if ((char)class_letters[*row] == letter)
            return true;
    return false;
}

static bool is_digit(char sign)
{
    return sign >= '0' && sign <= '9';
}

/* F1 to F99, without a leading zero; likewise E and C. */
static bool tag_parse(const char *text, struct tag *tag)
{
    if (text == NULL || !row_of_letter(text[0], &tag->row) || text[1] == '0')
        return false;
    tag->number = 0;
    size_t at = 1;
    for (; is_digit(text[at]) && at <= 2; at++)
        tag->number = tag->number * 10 + (size_t)(text[at] - '0');
    return at > 1 && text[at] == '\0';
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
    for (size_t i = 0; i < boat->equipment_count; i++)
        ledger_mark(&ledger, boat->equipment[i].tag.text);
    for (size_t i = 0; i < boat->retired_tags.count; i++)
        ledger_mark(&ledger, boat->retired_tags.items[i].text);
    return ledger;
}

/* The number after the highest, since a gap may be gear whose tag nobody wrote
 * into retired_tags; a gap only when 99 is taken. 0: none left. */
static size_t number_next(const bool *used)
{
    size_t highest = 0;
    for (size_t number = 1; number <= TAG_HIGHEST; number++)
        if (used[number])
            highest = number;
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
    size_t number = number_next(ledger->used[row]);
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

static void wrong_form_tell(const struct boat_reading *reading, const struct equipment *gear)
{
    problem_add(reading->problems, SEVERITY_ERROR, gear->tag.place,
                "a tag is F, E or C and a number from 1 to 99 without a zero before it, "
                "such as C4", "%s is not a tag", gear->tag.text);
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
                    "tag %s is already that of %s (line %d)", gear->tag.text,
                    text_empty(first->item.text) ? "another item" : first->item.text,
                    place_or(first->tag.place, first->place).line);
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

static void retired_check(const struct boat_reading *reading)
{
    const struct list_value *retired = &reading->boat->retired_tags;
    struct tag tag;
    for (size_t i = 0; i < retired->count; i++)
        if (retired->items[i].text != NULL && !tag_parse(retired->items[i].text, &tag))
            problem_add(reading->problems, SEVERITY_ERROR, retired->items[i].place,
                        "write tags as they stood on the gear, such as C4",
                        "retired_tags: %s is not a tag", retired->items[i].text);
}

void tags_check(struct boat_reading *reading)
{
    struct tag_ledger ledger = ledger_of(reading->boat);
    for (size_t i = 0; i < reading->gear_count; i++)
        tag_check(reading, &reading->gear[i], &ledger);
    retired_check(reading);
}
