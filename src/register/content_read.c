/* content_read.c - what a card said, taken apart into facts of one piece of gear or of one step
 * each (room: register). It reads what content_make.c wrote, and judges nothing. */
#include "register_room.h"

#include <string.h>

const char *const said_words[] = {SAID_LIST(CHOICE_WORD) NULL};

enum { TEXTS_MOST = 3 };

/* Lines that wait until it is known of which gear they are. */
struct waiting {
    struct said_line *lines;
    size_t count, room;
};

struct taking {
    struct content *content;
    size_t line_room, step_room, gear_room, fact_room;
    struct arena *arena;
    const char *block;
    enum facts_kind facts;
    const char *step;             /* id of the step that is being read */
    const char *tag;              /* of the marker or the line of a list that is being read */
    struct waiting place;         /* of all gear until the next place */
    struct waiting item;          /* of the gear whose tags follow */
    const char **place_tags, **item_tags;
    size_t place_tag_count, place_tag_room, item_tag_count, item_tag_room;
};

bool word_may_begin(const char *text, const char *at)
{
    char before = at == text ? ' ' : at[-1];
    return !(is_digit(before) || (before >= 'A' && before <= 'Z') ||
             (before >= 'a' && before <= 'z'));
}

bool word_stands_at(const char *text, const char *at, const char *word)
{
    size_t length = strlen(word);
    if (length == 0 || strncmp(at, word, length) != 0 || !word_may_begin(text, at))
        return false;
    char after = at[length];
    return !(is_digit(after) || (after >= 'A' && after <= 'Z'));
}

bool word_stands_in(const char *text, const char *word)
{
    if (*word == '\0')
        return false;
    for (const char *at = strstr(text, word); at != NULL; at = strstr(at + 1, word))
        if (word_stands_at(text, at, word))
            return true;
    return false;
}

/* ---- lines ---- */

/* Whether a place has a comma behind it hangs on what else stands in its row. */
static const char *text_bare(const char *text, struct arena *arena)
{
    const char *plain = text_plain(arena, text);
    size_t length = strlen(plain);
    return text_ends(plain, ",") ? arena_copy(arena, plain, length - 1) : plain;
}

static struct said_line line_made(const struct taking *taking, enum said_as said, const char *name,
                                  const char *text)
{
    return (struct said_line){.block = taking->block, .step = taking->step, .said = said,
                              .name = name, .text = text_bare(text, taking->arena), .tag = ""};
}

static void said_add(struct taking *taking, struct said_line line, const char *tag)
{
    struct content *content = taking->content;
    if (line.text[0] == '\0')
        return;
    line.tag = tag;
    content->lines = arena_grow(taking->arena, content->lines, content->line_count,
                                &taking->line_room, sizeof *content->lines);
    content->lines[content->line_count++] = line;
}

static void wait_add(struct taking *taking, struct waiting *waiting, struct said_line line)
{
    waiting->lines = arena_grow(taking->arena, waiting->lines, waiting->count, &waiting->room,
                                sizeof *waiting->lines);
    waiting->lines[waiting->count++] = line;
}

/* Each line once for each piece of gear. */
static void waiting_give(struct taking *taking, struct waiting *waiting, const char *const *tags,
                         size_t count)
{
    for (size_t i = 0; i < waiting->count; i++) {
        for (size_t t = 0; t < count; t++)
            said_add(taking, waiting->lines[i], tags[t]);
        if (count == 0)
            said_add(taking, waiting->lines[i], "");
    }
    waiting->count = 0;
}

static void item_end(struct taking *taking)
{
    waiting_give(taking, &taking->item, taking->item_tags, taking->item_tag_count);
    taking->item_tag_count = 0;
}

static void place_end(struct taking *taking)
{
    item_end(taking);
    waiting_give(taking, &taking->place, taking->place_tags, taking->place_tag_count);
    taking->place_tag_count = 0;
    taking->tag = "";
}

static void tag_take(struct taking *taking, const char *tag)
{
    taking->place_tags = arena_grow(taking->arena, taking->place_tags, taking->place_tag_count,
                                    &taking->place_tag_room, sizeof *taking->place_tags);
    taking->place_tags[taking->place_tag_count++] = tag;
    taking->item_tags = arena_grow(taking->arena, taking->item_tags, taking->item_tag_count,
                                   &taking->item_tag_room, sizeof *taking->item_tags);
    taking->item_tags[taking->item_tag_count++] = tag;
    taking->tag = tag;
}

/* ---- blocks ---- */

static const char *step_of_number(const struct taking *taking, const char *number)
{
    for (size_t i = 0; i < taking->content->step_count; i++)
        if (text_equal(taking->content->steps[i].number, number))
            return taking->content->steps[i].id;
    return number;
}

/* A row: its place and spot, then its gear, each its names, tags, spot and end. Whether all gear
 * of a row has a spot or one piece alone makes no difference. */
static void row_says(struct taking *taking, struct said_line line)
{
    bool own_spot = line.said == SAID_OWN_SPOT;
    bool of_item = own_spot || line.said == SAID_FULL_NAME || line.said == SAID_LESSER_NAME ||
                   line.said == SAID_END;
    if (own_spot) {
        line.said = SAID_SPOT;
        line.name = choice_word(said_words, SAID_SPOT);
    }
    if (line.said == SAID_TAG) {
        tag_take(taking, line.text);
    } else if (of_item) {
        if (line.said == SAID_FULL_NAME)
            item_end(taking);
        wait_add(taking, &taking->item, line);
    } else if (line.said == SAID_SPOT) {
        wait_add(taking, &taking->place, line);
    } else {
        place_end(taking);
        if (line.said == SAID_PLACE)
            wait_add(taking, &taking->place, line);
        else
            said_add(taking, line, "");
    }
}

static void step_says(struct taking *taking, struct said_line line)
{
    if (line.said == SAID_STEP || line.said == SAID_FIGURE_OF) {
        place_end(taking);
        taking->step = line.said == SAID_STEP ? step_of_number(taking, line.text) : line.text;
        line.step = taking->step;
    }
    if (line.said != SAID_FIGURE_OF)
        row_says(taking, line);
}

/* A place of the safety plan and its lines, each of which begins with a tag. */
static void plan_list_says(struct taking *taking, struct said_line line)
{
    if (line.said == SAID_PLACE) {
        place_end(taking);
        wait_add(taking, &taking->place, line);
    } else if (line.said == SAID_TAG) {
        tag_take(taking, line.text);
    } else {
        said_add(taking, line, taking->tag);
    }
}

/* An entry, then tags and where they are. */
static void entry_says(struct taking *taking, struct said_line line)
{
    if (line.said == SAID_ENTRY) {
        place_end(taking);
        wait_add(taking, &taking->place, line);
    } else if (line.said == SAID_TAG) {
        tag_take(taking, line.text);
    } else {
        wait_add(taking, &taking->item, line);
        item_end(taking);
    }
}

static void marker_says(struct taking *taking, struct said_line line)
{
    if (line.said == SAID_MARKER)
        taking->tag = line.text;
    said_add(taking, line, taking->tag);
}

static void bare_says(struct taking *taking, struct said_line line)
{
    said_add(taking, line, "");
}

static void block_says(struct taking *taking, const char *name, const char *text)
{
    static void (*const by_kind[])(struct taking *taking, struct said_line line) = {
        [FACTS_STEPS] = step_says, [FACTS_ROWS] = row_says, [FACTS_PLACES] = plan_list_says,
        [FACTS_INDEX] = entry_says, [FACTS_PLAN] = marker_says, [FACTS_FOOTER] = NULL};
    struct said_line line = line_made(taking, choice_find(said_words, name), name, text);
    if (by_kind[taking->facts] == NULL)
        bare_says(taking, line);
    else
        by_kind[taking->facts](taking, line);
}

static void block_take(struct taking *taking, const char *word)
{
    place_end(taking);
    taking->block = word;
    taking->step = "";
    taking->facts = FACTS_BARE;
    for (enum block_key key = BLOCK_NONE + 1; key < BLOCK_COUNT; key++)
        if (text_equal(block_word(key), word))
            taking->facts = facts_kind_of(key);
}

/* ---- the whole ---- */

static void step_take(struct taking *taking, char *const *texts)
{
    struct content *content = taking->content;
    content->steps = arena_grow(taking->arena, content->steps, content->step_count,
                                &taking->step_room, sizeof *content->steps);
    content->steps[content->step_count++] = (struct content_step){texts[0], texts[1], texts[2]};
}

static void fact_take(struct taking *taking, enum content_line kind, char *const *texts)
{
    struct content *content = taking->content;
    struct content_fact fact = {texts[0], texts[1], texts[2], kind == CONTENT_HEARD};
    if (kind == CONTENT_GEAR) {
        content->gear = arena_grow(taking->arena, content->gear, content->gear_count,
                                   &taking->gear_room, sizeof *content->gear);
        content->gear[content->gear_count++] = fact;
        return;
    }
    content->facts = arena_grow(taking->arena, content->facts, content->fact_count,
                                &taking->fact_room, sizeof *content->facts);
    content->facts[content->fact_count++] = fact;
}

/* The texts of a line, which is cut up. */
static enum content_line line_split(char *line, char *texts[TEXTS_MOST])
{
    size_t count = 0;
    for (size_t i = 0; i < TEXTS_MOST; i++)
        texts[i] = line + strlen(line);
    for (char *at = strchr(line, '\t'); at != NULL && count < TEXTS_MOST; at = strchr(at, '\t')) {
        *at++ = '\0';
        texts[count++] = at;
    }
    return choice_find(content_line_words, line);
}

static void content_line_read(struct taking *taking, char *line, enum content_line first,
                      enum content_line last)
{
    char *texts[TEXTS_MOST];
    enum content_line kind = line_split(line, texts);
    if (kind < first || kind > last)
        return;
    if (kind == CONTENT_BLOCK)
        block_take(taking, texts[0]);
    else if (kind == CONTENT_SAYS)
        block_says(taking, texts[0], texts[1]);
    else if (kind == CONTENT_STEP)
        step_take(taking, texts);
    else if (kind != CONTENT_NONE)
        fact_take(taking, kind, texts);
}

/* Lines of these kinds. */
static void lines_read(struct taking *taking, const char *text, enum content_line first,
                       enum content_line last)
{
    for (const char *at = text; *at != '\0';) {
        size_t length = strcspn(at, "\n");
        content_line_read(taking, arena_copy(taking->arena, at, length), first, last);
        at += length + (at[length] == '\n' ? 1 : 0);
    }
}

/* The steps come first: what is said names them by number alone. */
struct content content_read(const char *text, struct arena *arena)
{
    struct content content = {0};
    struct taking taking = {.content = &content, .arena = arena, .block = "", .step = "",
                            .tag = ""};
    lines_read(&taking, text, CONTENT_STEP, CONTENT_COUNT - 1);
    lines_read(&taking, text, CONTENT_BLOCK, CONTENT_SAYS);
    place_end(&taking);
    return content;
}

/* ---- facts ---- */

const char *content_value(const struct content_fact *facts, size_t count, const char *subject,
                          const char *field)
{
    for (size_t i = 0; i < count; i++)
        if (!facts[i].heard && text_equal(facts[i].subject, subject) &&
            text_equal(facts[i].field, field))
            return facts[i].value;
    return NULL;
}

const char *gear_value(const struct content *content, const char *tag, enum kept_fact field)
{
    return content_value(content->gear, content->gear_count, tag,
                         choice_word(kept_fact_words, field));
}

const char *sheet_value(const struct content *content, enum kept_fact field)
{
    return content_value(content->facts, content->fact_count, CONTENT_SUBJECT_SHEET,
                         choice_word(kept_fact_words, field));
}

bool content_names(const char *content, const char *tag)
{
    for (const char *at = content; *at != '\0';) {
        size_t length = strlen(tag);
        if (text_begins(at, choice_word(content_line_words, CONTENT_GEAR))) {
            const char *subject = strchr(at, '\t');
            if (subject != NULL && strncmp(subject + 1, tag, length) == 0 &&
                subject[1 + length] == '\t')
                return true;
        }
        at += strcspn(at, "\n");
        at += *at == '\n' ? 1 : 0;
    }
    return false;
}
