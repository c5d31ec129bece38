/* content_make.c - what a sheet says, as lines from which a later print can be told apart in
 * words (room: register): all that is in its check code, and behind it the facts of the record
 * that its gear, its call and its foot follow from. */
#include "boat_facts.h"
#include "fact.h"
#include "gear_date.h"
#include "item_fields.h"
#include "register_room.h"

#include <limits.h>
#include <string.h>

const char *const content_line_words[] = {CONTENT_LINE_LIST(CHOICE_WORD) NULL};
const char *const kept_fact_words[] = {KEPT_FACT_LIST(CHOICE_WORD) NULL};

struct making {
    const struct compose_input *input;
    const struct sheet *sheet;
    struct arena *arena;
    struct text_builder out;
};

/* ---- lines ---- */

/* Tabs and line ends part lines and texts. */
static void content_text(struct text_builder *out, const char *text)
{
    while (*text != '\0') {
        size_t length = 0;
        while ((unsigned char)text[length] >= ' ')
            length++;
        text_add_bytes(out, text, length);
        text += length;
        if (*text != '\0') {
            text_add(out, " ");
            text++;
        }
    }
}

static void content_begin(struct making *making, enum content_line line)
{
    text_add(&making->out, choice_word(content_line_words, line));
}

static void line_text(struct making *making, const char *text)
{
    text_add(&making->out, "\t");
    content_text(&making->out, text == NULL ? "" : text);
}

static void fact_line(struct making *making, enum content_line line, const char *subject,
                      const char *field, const char *value)
{
    if (text_empty(value))
        return;
    content_begin(making, line);
    line_text(making, subject);
    line_text(making, field);
    line_text(making, value);
    text_add(&making->out, "\n");
}

/* ---- what is in the code ---- */

static void said_put(void *of, const struct fact *fact)
{
    struct making *making = of;
    if (fact->kind == FACT_SHOWN)
        return;
    content_begin(making, CONTENT_SAYS);
    line_text(making, fact->name);
    line_text(making, fact->text);
    text_add(&making->out, "\n");
}

static void blocks_put(struct making *making)
{
    const struct sheet *sheet = making->sheet;
    for (size_t i = 0; i < sheet->block_count; i++) {
        if (sheet->blocks[i].key == BLOCK_PAGES)    /* as in the check code */
            continue;
        content_begin(making, CONTENT_BLOCK);
        line_text(making, block_word(sheet->blocks[i].key));
        text_add(&making->out, "\n");
        block_visit(&sheet->blocks[i], making->arena, said_put, making);
    }
}

static void cases_put(struct making *making)
{
    const struct steps_facts *steps = sheet_steps(making->sheet);
    for (size_t i = 0; i < steps->count; i++) {
        const struct card_step *step = &steps->items[i];
        content_begin(making, CONTENT_STEP);
        line_text(making, text_format(making->arena, "%d", step->number));
        line_text(making, step->id);
        line_text(making, step->taken == NULL ? "" : step->taken->id.text);
        text_add(&making->out, "\n");
    }
}

/* ---- gear ---- */

/* Cockpit locker, port, yellow tub */
static const char *place_words(const struct making *making, enum zone_key zone, enum side side,
                               const struct text_value *spot)
{
    const char *language = making->sheet->language;
    struct text_builder out = text_builder_in(making->arena);
    const char *zone_name = words_zone(making->sheet->words, zone);
    const char *side_word = choice_word(side_words, side);
    const char *spot_words = text_for(spot, language);
    text_add(&out, zone_name == NULL ? "" : zone_name);
    if (side_word != NULL)
        text_add_format(&out, ", %s", side_word);
    if (!text_empty(spot_words))
        text_add_format(&out, ", %s", spot_words);
    return out.at;
}

static void content_gear(struct making *making, const char *tag, enum kept_fact field,
                      const char *value)
{
    fact_line(making, CONTENT_GEAR, tag, choice_word(kept_fact_words, field), value);
}

/* Tag, item, zone, side and spot are told in words of their own. */
static bool is_told_apart(enum gear_field field)
{
    return field == GEAR_tag || field == GEAR_item || field == GEAR_zone || field == GEAR_side ||
           field == GEAR_spot;
}

static void gear_put(struct making *making, const struct equipment *gear)
{
    const char *tag = gear->tag.text;
    struct gear_date date;
    content_gear(making, tag, KEPT_ITEM,
              words_item(making->sheet->words, gear->kind->item));
    content_gear(making, tag, KEPT_PLACE,
              place_words(making, gear->zone.value, gear->place_side, &gear->spot));
    if (gear_date(gear, making->input->base, &date))
        content_gear(making, tag, KEPT_GOOD_UNTIL,
                  date_text(making->arena, gear_date_shown(&date)));
    for (enum gear_field field = GEAR_FIELD_NONE + 1; field < GEAR_FIELD_COUNT; field++)
        if (!is_told_apart(field))
            fact_line(making, CONTENT_GEAR, tag, gear_field_word(field),
                      field_text(gear_field_row(field), gear, making->arena));
}

/* As the radio says it: group by group. */
static const char *groups_spelled(const char *identity, struct arena *arena)
{
    struct text_builder out = text_builder_in(arena);
    uint32_t strange;
    for (const char *at = identity; *at != '\0'; at += strspn(at, " ")) {
        size_t length = strcspn(at, " ");
        const char *spelled = spell(arena, arena_copy(arena, at, length), &strange);
        text_add_format(&out, "%s%s", out.length == 0 ? "" : " ", spelled == NULL ? "" : spelled);
        at += length;
    }
    return out.length == 0 ? "" : out.at;
}

/* Identities stand on cards without the tag of the piece that has them. Those of the fixed radio
 * are told as hers. */
static void gear_identity_put(struct making *making, const struct equipment *gear)
{
    if (text_equal(gear->tag.text, making->input->boat->radio.tag.text))
        return;
    const char *piece = text_format(making->arena, "%s %s",
                                    words_item(making->sheet->words, gear->kind->item),
                                    gear->tag.text);
    fact_line(making, CONTENT_FACT, piece, gear_field_word(GEAR_hex_id), gear->hex_id.text);
    fact_line(making, CONTENT_FACT, piece, gear_field_word(GEAR_mmsi), gear->mmsi.text);
    if (!text_empty(gear->hex_id.text))
        fact_line(making, CONTENT_HEARD, piece, gear_field_word(GEAR_hex_id),
                  groups_spelled(gear->hex_id.text, making->arena));
    if (!text_empty(gear->mmsi.text))
        fact_line(making, CONTENT_HEARD, piece, gear_field_word(GEAR_mmsi),
                  mmsi_spelled(making->arena, gear->mmsi.text));
}

/* Signs that a tag begins with and goes on with: few places of a text have both. */
struct tag_starts { bool first[UCHAR_MAX + 1], second[UCHAR_MAX + 1]; };

static void tag_start_add(struct tag_starts *starts, const char *tag)
{
    starts->first[(unsigned char)tag[0]] = true;
    for (size_t i = 0; tag[1] == '\0' && i <= UCHAR_MAX; i++)
        starts->second[i] = true;
    starts->second[(unsigned char)tag[1]] = true;
}

static bool tag_may_start(const struct tag_starts *starts, const char *text, const char *at)
{
    return starts->first[(unsigned char)at[0]] && starts->second[(unsigned char)at[1]] &&
           word_may_begin(text, at);
}

/* The pieces whose tag stands at that place. */
static void tags_at_mark(const struct boat *boat, const char *text, const char *at,
                         bool *standing)
{
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const char *tag = boat->equipment[i].tag.text;
        if (tag != NULL && tag[0] == at[0] && (tag[1] == at[1] || tag[1] == '\0') &&
            !standing[i])
            standing[i] = word_stands_at(text, at, tag);
    }
}

/* By piece of gear: does its tag stand in `said`? As word_stands_in tells, of all tags in one
 * pass. */
static const bool *tags_standing(const struct making *making, const char *said)
{
    const struct boat *boat = making->input->boat;
    bool *standing = arena_array(making->arena, boat->equipment_count, sizeof *standing);
    struct tag_starts starts = {{false}, {false}};
    for (size_t i = 0; i < boat->equipment_count; i++)
        if (!text_empty(boat->equipment[i].tag.text))
            tag_start_add(&starts, boat->equipment[i].tag.text);
    for (const char *at = said; *at != '\0'; at++)
        if (tag_may_start(&starts, said, at))
            tags_at_mark(boat, said, at, standing);
    return standing;
}

/* The gear whose tags stand in `said`, what the sheet says; and the tags of all. */
static void all_gear_put(struct making *making, const char *said)
{
    const struct boat *boat = making->input->boat;
    const bool *standing = tags_standing(making, said);
    struct text_builder tags = text_builder_in(making->arena);
    for (size_t i = 0; i < boat->equipment_count; i++) {
        const struct equipment *gear = &boat->equipment[i];
        if (gear->kind == NULL || text_empty(gear->tag.text))
            continue;
        text_add_format(&tags, "%s%s", tags.length == 0 ? "" : " ", gear->tag.text);
        if (standing[i])
            gear_put(making, gear);
        gear_identity_put(making, gear);
    }
    fact_line(making, CONTENT_FACT, CONTENT_SUBJECT_SHEET,
              choice_word(kept_fact_words, KEPT_TAGS), tags.length == 0 ? "" : tags.at);
}

/* ---- the boat, her radio, the base ---- */

static void heard_line(struct making *making, const char *subject, const char *field,
                       const char *words)
{
    fact_line(making, CONTENT_HEARD, subject, field, words);
}

static void heard_put(struct making *making)
{
    const struct boat *boat = making->input->boat;
    const struct text_value *sign = &boat->radio.call_sign, *mmsi = &boat->radio.mmsi;
    struct name name;
    uint32_t strange;
    const char *key = boat_fact_row(BOAT_name)->key;
    if (!text_empty(boat->facts.name.text) &&
        name_decode(boat->facts.name.text, making->arena, &name)) {
        heard_line(making, CONTENT_SUBJECT_BOAT, key, name.spoken);
        heard_line(making, CONTENT_SUBJECT_BOAT, key, name.spelled);
    }
    if (!text_empty(sign->text))
        heard_line(making, CONTENT_SUBJECT_RADIO, radio_fact_row(RADIO_call_sign)->key,
                   spell(making->arena, sign->text, &strange));
    if (!text_empty(mmsi->text))
        heard_line(making, CONTENT_SUBJECT_RADIO, radio_fact_row(RADIO_mmsi)->key,
                   mmsi_spelled(making->arena, mmsi->text));
}

static void radio_put(struct making *making)
{
    const struct radio_facts *radio = &making->input->boat->radio;
    for (enum radio_fact fact = RADIO_FACT_NONE + 1; fact < RADIO_FACT_COUNT; fact++)
        fact_line(making, CONTENT_FACT, CONTENT_SUBJECT_RADIO, radio_fact_row(fact)->key,
                  field_text(radio_fact_row(fact), radio, making->arena));
}

static void boat_put(struct making *making)
{
    const struct boat_facts *facts = &making->input->boat->facts;
    for (enum boat_fact fact = BOAT_FACT_NONE + 1; fact < BOAT_FACT_COUNT; fact++)
        fact_line(making, CONTENT_FACT, CONTENT_SUBJECT_BOAT, boat_fact_row(fact)->key,
                  field_text(boat_fact_row(fact), facts, making->arena));
}

static void base_put(struct making *making)
{
    const struct base_record *base = making->input->base;
    const struct { const char *field; const struct text_value *value; } rows[] = {
        {"name", &base->name}, {"phone_24h", &base->phone_24h}, {"position", &base->position},
        {"fire_phone", &base->fire_phone}, {"marina", &base->marina}, {"berth", &base->berth},
        {"rescue centre's name", &base->centre_name}, {"rescue centre's call", &base->centre_call},
        {"rescue centre's channel", &base->centre_channel},
        {"rescue centre's phone", &base->centre_phone}, {"variation", &base->variation}};
    for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
        fact_line(making, CONTENT_FACT, CONTENT_SUBJECT_BASE, rows[i].field, rows[i].value->text);
}

/* ---- the sheet ---- */

static const struct approval *approval_standing(const struct compose_input *input,
                                         const struct sheet *sheet)
{
    const struct base_record *base = input->base;
    if (sheet_block(sheet, BLOCK_UNAPPROVED) != NULL)
        return NULL;
    for (size_t i = 0; i < base->approval_count; i++) {
        const struct approval *approval = &base->approvals[i];
        if (text_equal(approval->card.text, sheet->procedure_key) &&
            date_compare(date_first_day(approval->date.date), input->today) <= 0 &&
            date_compare(input->today, approval->until.date) <= 0)
            return approval;
    }
    return NULL;
}

static const char *texts_fingerprint(const struct sheet *sheet, struct arena *arena)
{
    const char *sum = procedure_files_sum(sheet->procedure, sheet->language, arena);
    return text_format(arena, "%.4s-%.4s", sum, sum + 4);
}

static void sheet_put(struct making *making)
{
    const struct approval *approval = approval_standing(making->input, making->sheet);
    fact_line(making, CONTENT_FACT, CONTENT_SUBJECT_SHEET,
              choice_word(kept_fact_words, KEPT_TEXTS),
              texts_fingerprint(making->sheet, making->arena));
    if (approval != NULL)
        fact_line(making, CONTENT_FACT, CONTENT_SUBJECT_SHEET,
                  choice_word(kept_fact_words, KEPT_APPROVAL),
                  text_format(making->arena, "%s, %s, %s to %s", approval->initials.text,
                              approval->qualification.text, approval->date.text,
                              approval->until.text));
}

const char *register_content(const struct compose_input *input, const struct sheet *sheet,
                             struct arena *arena)
{
    struct making making = {.input = input, .sheet = sheet, .arena = arena,
                            .out = text_builder_in(arena)};
    text_add(&making.out, "");
    blocks_put(&making);
    const char *said = arena_copy(arena, making.out.at, making.out.length);
    cases_put(&making);
    all_gear_put(&making, said);
    boat_put(&making);
    radio_put(&making);
    heard_put(&making);
    base_put(&making);
    sheet_put(&making);
    return making.out.at;
}

/* ---- as a row ---- */

/* The earlier of the first date of the gear and the last day of the approval, as they are
 * written; nothing where there is neither. */
static const char *until_of(const struct compose_input *input, const struct sheet *sheet)
{
    const struct approval *approval = approval_standing(input, sheet);
    const char *gear = sheet_footer(sheet)->first_date;
    struct date date;
    if (approval == NULL)
        return text_empty(gear) ? REGISTER_NOTHING : gear;
    if (text_empty(gear) || !date_parse(gear, &date) ||
        date_compare(approval->until.date, date) < 0)
        return approval->until.text;
    return gear;
}

bool sheet_is_registered(const struct sheet *sheet)
{
    return !text_empty(sheet_footer(sheet)->code);
}

struct register_row row_of_sheet(const struct compose_input *input, const struct sheet *sheet,
                                 struct arena *arena)
{
    const struct footer_facts *footer = sheet_footer(sheet);
    return (struct register_row){
        .boat = input->boat->key, .card = sheet->id, .number = sheet->number,
        .name = sheet->name, .language = sheet->language, .code = footer->code,
        .paper = REGISTER_NOTHING, .place = REGISTER_NOTHING, .by = REGISTER_NOTHING,
        .program = REGISTER_NOTHING, .until = until_of(input, sheet),
        .dates = text_empty(footer->dates) ? REGISTER_NOTHING : footer->dates,
        .texts = texts_fingerprint(sheet, arena), .content = REGISTER_NOTHING};
}
