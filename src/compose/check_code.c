/* check_code.c - the short code that says whether a card on board equals the
 * base's record (room: compose).
 *
 * CRC-32 (zlib) of the canonical content, which is the card's own: boat, card, number,
 * language, every string in the order of print, then each marker's tag, zone, level and
 * place on the boat in mm. Of what the page may have no room for, all is in it: every figure
 * that belongs to the card, and both names of an extinguisher; of a safety plan in several
 * pages the whole plan. Numbers of other cards are in it where the card names them: they
 * never change. Not in it: how many cards and pages there are, the print date, and what
 * follows from today's date, such as GEAR OUT OF DATE: its place is taken by the gear's first
 * date and the number of undated pieces. An approval is in it, and so its end changes the
 * code. Each item is its length (four bytes, big end first) and its bytes (UTF-8, NFC).
 * Seven Crockford base-32 signs carry the 32 bits, an eighth is the value mod 37; where that
 * is 32 or more the content is hashed again with a counter byte 1, 2, ... appended. It proves
 * equality with the record, not that the record is right; a CRC is no seal against forgery. */
#include "compose.h"

#include <string.h>
#include <zlib.h>

struct canon {
    struct text_builder bytes;
};

static void put(struct canon *canon, const char *string)
{
    size_t length = string == NULL ? 0 : strlen(string);
    char head[4] = {(char)(unsigned char)(length >> 24 & 255),
                    (char)(unsigned char)(length >> 16 & 255),
                    (char)(unsigned char)(length >> 8 & 255), (char)(unsigned char)(length & 255)};
    text_add_bytes(&canon->bytes, head, sizeof head);
    if (length > 0)
        text_add_bytes(&canon->bytes, string, length);
}

static void put_number(struct canon *canon, struct arena *arena, int32_t number)
{
    put(canon, text_format(arena, "%d", (int)number));
}

static void put_step(struct canon *canon, const struct card_step *step, struct arena *arena)
{
    put_number(canon, arena, step->number);
    put(canon, step->headline.text);
    for (size_t i = 0; i < step->lethal_count; i++)
        put(canon, step->lethal[i].text);
    for (size_t i = 0; i < step->row_count; i++) {
        for (size_t t = 0; t < step->rows[i].tag_count; t++)
            put(canon, step->rows[i].tags[t]);
        put(canon, step->rows[i].timed);
        put(canon, step->rows[i].weighed);
        put(canon, step->rows[i].where);
    }
    put(canon, step->table_note);
    for (size_t c = 0; c < TABLE_CELLS; c++)
        put(canon, step->table_heads[c]);
    for (size_t i = 0; i < step->table_count; i++) {
        if (step->table[i].head != NULL)
            put(canon, step->table[i].head);
        for (size_t c = 0; c < TABLE_CELLS; c++) {
            put(canon, step->table[i].cells[c].tag);
            put(canon, step->table[i].cells[c].name);
        }
    }
}

/* The signal word belongs to each: a never must not pass for a caution. */
static void put_warnings(struct canon *canon, const char *word,
                         const struct card_warning *warnings, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        put(canon, word);
        put(canon, warnings[i].text);
        put(canon, warnings[i].tag);
    }
}

static void put_script(struct canon *canon, const struct script *script)
{
    for (size_t i = 0; script != NULL && i < script->count; i++) {
        put(canon, script->lines[i].label);
        for (size_t p = 0; p < script->lines[i].count; p++)
            put(canon, script->lines[i].pieces[p].text);
    }
}

static void put_lines(struct canon *canon, const struct card_text *lines, size_t count)
{
    for (size_t i = 0; i < count; i++)
        put(canon, lines[i].text);
}

static void put_sections(struct canon *canon, const struct card *card)
{
    for (size_t i = 0; i < card->section_count; i++) {
        const struct card_section *section = &card->sections[i];
        put(canon, section->title);
        put(canon, section->note);
        put_lines(canon, section->lines, section->line_count);
        put_script(canon, section->script);
        put(canon, section->end_note);
    }
}

static void put_safety(struct canon *canon, const struct safety_plan *safety,
                       struct arena *arena)
{
    for (size_t i = 0; i < safety->place_count; i++) {
        const struct plan_place *place = &safety->places[i];
        put(canon, place->title);
        for (size_t r = 0; r < place->row_count; r++) {
            for (size_t c = 0; c < place->rows[r].chip_count; c++)
                put(canon, place->rows[r].chips[c]);
            put(canon, place->rows[r].name);
            put(canon, place->rows[r].detail);
        }
    }
    if (safety->here_given) {
        put(canon, safety->here_words);
        put_number(canon, arena, safety->here.x_mm);
        put_number(canon, arena, safety->here.y_mm);
    }
    for (size_t i = 0; i < 3; i++)
        put(canon, safety->legend[i]);
    put(canon, safety->sources);
}

static void put_plan_words(struct canon *canon, const struct card *card)
{
    for (size_t i = 0; i < PLAN_WORD_COUNT; i++)
        put(canon, card->plan_words[i]);
    for (size_t i = 0; i < card->plan_zone_count; i++)
        put(canon, card->plan_zones[i].name);
}

static void put_markers(struct canon *canon, const struct card *card, struct arena *arena)
{
    for (size_t i = 0; i < card->marker_count; i++) {
        const struct marker *marker = &card->markers[i];
        put(canon, marker->tag);
        put(canon, marker->zone->key);
        put(canon, marker->level == LEVEL_BELOW ? "below" : "deck");
        put_number(canon, arena, marker->x_mm);
        put_number(canon, arena, marker->y_mm);
    }
}

static void put_figures(struct canon *canon, const struct card *card)
{
    for (size_t i = 0; i < card->figures_known_count; i++) {
        put(canon, card->figures_known[i].step);
        put(canon, card->figures_known[i].text);
    }
}

static void put_frame(struct canon *canon, const struct card *card)
{
    put(canon, card->boat);
    put(canon, card->key);
    put(canon, card->language);
    put(canon, card->title);
    put(canon, card->number_text);
    put(canon, card->when_word);
    put(canon, card->signs);
    put(canon, card->call_line);
}

const char *check_code(const struct card *card, struct arena *arena)
{
    struct canon canon = {.bytes = text_builder_in(arena)};
    put_frame(&canon, card);
    for (size_t i = 0; i < card->step_count; i++)
        put_step(&canon, &card->steps[i], arena);
    put_figures(&canon, card);
    put(&canon, card->decision.ask);
    put(&canon, card->yes_word);
    put(&canon, card->decision.yes);
    put(&canon, card->no_word);
    put(&canon, card->decision.no);
    put_warnings(&canon, card->never_word, card->nevers, card->never_count);
    put_warnings(&canon, card->caution_word, card->cautions, card->caution_count);
    put_warnings(&canon, card->local_word, card->local_rules, card->local_rule_count);
    put_sections(&canon, card);
    if (card->safety != NULL)
        put_safety(&canon, card->safety, arena);
    put(&canon, card->contact_left);
    put(&canon, card->contact_right);
    put(&canon, card->call.title);
    put(&canon, card->call.station);
    put_lines(&canon, card->call.operate, card->call.operate_count);
    put_script(&canon, card->call.script);
    put(&canon, card->mark);
    put(&canon, card->footer_left[0]);
    put(&canon, card->footer_left[1]);
    put(&canon, card->gear_date);
    put_number(&canon, arena, (int32_t)card->gear_undated);
    put(&canon, card->code_word);
    put_plan_words(&canon, card);
    put_markers(&canon, card, arena);
    return check_code_of((const unsigned char *)canon.bytes.at, canon.bytes.length, arena);
}

static uint32_t hash(const unsigned char *bytes, size_t length, unsigned char counter)
{
    uLong crc = crc32_z(crc32(0L, Z_NULL, 0), bytes, length);
    if (counter > 0)
        crc = crc32(crc, &counter, 1);
    return (uint32_t)crc;
}

const char *check_code_of(const unsigned char *bytes, size_t length, struct arena *arena)
{
    static const char signs[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    uint32_t value = hash(bytes, length, 0);
    for (unsigned char counter = 1; value % 37 >= 32; counter++)
        value = hash(bytes, length, counter);
    char code[10];
    for (size_t i = 0; i < 7; i++)
        code[i < 4 ? i : i + 1] = signs[value >> (30 - 5 * i) & 31];
    code[4] = '-';
    code[8] = signs[value % 37];
    code[9] = '\0';
    return arena_copy(arena, code, 9);
}
