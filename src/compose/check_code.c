/* check_code.c - the short code that says whether a sheet on board equals the
 * base's record (room: compose).
 *
 * CRC-32 (zlib) of the canonical content, which is the sheet's own: its id, its language, then
 * each block's word and facts in order, see block_visit. Of what the page may have no room for,
 * all is in it: every figure that belongs to the sheet, and both names of an extinguisher; of a
 * safety plan in several pages the whole plan. Numbers of other cards are in it where the card
 * names them: they never change. Not in it: how many cards and pages there are, the print date,
 * and what follows from today's date, such as GEAR PAST ITS DATE: its place is taken by the gear's
 * first date and the number of undated pieces. An approval is in it, and so its end changes the
 * code. Each item is its length (four bytes, big end first) and its bytes (UTF-8, NFC).
 * Seven Crockford base-32 signs carry the 32 bits, an eighth is the value mod 37; where that
 * is 32 or more the content is hashed again with a counter byte 1, 2, ... appended. It proves
 * equality with the record, not that the record is right; a CRC is no seal against forgery. */
#include "compose_room.h"
#include "fact.h"

#include <string.h>
#include <zlib.h>

static void put(struct text_builder *canon, const char *string)
{
    size_t length = strlen(string);
    char head[4] = {(char)(unsigned char)(length >> 24 & 255),
                    (char)(unsigned char)(length >> 16 & 255),
                    (char)(unsigned char)(length >> 8 & 255), (char)(unsigned char)(length & 255)};
    text_add_bytes(canon, head, sizeof head);
    if (length > 0)
        text_add_bytes(canon, string, length);
}

static void fact_put(void *of, const struct fact *fact)
{
    if (fact->kind != FACT_SHOWN)
        put(of, fact->text);
}

const char *check_code(const struct sheet *sheet, struct arena *arena)
{
    struct text_builder canon = text_builder_in(arena);
    put(&canon, sheet->id);
    put(&canon, sheet->language);
    for (size_t i = 0; i < sheet->block_count; i++) {
        if (sheet->blocks[i].key == BLOCK_PAGES)    /* the code knows nothing of pages */
            continue;
        put(&canon, block_word(sheet->blocks[i].key));
        block_visit(&sheet->blocks[i], arena, fact_put, &canon);
    }
    return check_code_of((const unsigned char *)canon.at, canon.length, arena);
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
