/* content_pack.c - what a card said, short enough for a cell of a table (room: register): DEFLATE
 * in the format of RFC 1950, which ends with a sum of the whole, as base 64 of RFC 4648. So a row
 * that was cut off is known by its content. */
#include "register.h"

#include <string.h>
#include <zlib.h>

static const char pack_signs[] =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/* More than most cards say, and than any does. */
#define CONTENT_ROOM ((size_t)64 * 1024)
#define CONTENT_MOST ((size_t)16 * 1024 * 1024)

static const char *base64_write(const unsigned char *bytes, size_t length, struct arena *arena)
{
    char *out = arena_alloc(arena, length / 3 * 4 + 5);
    size_t at = 0;
    for (size_t i = 0; i < length; i += 3) {
        size_t left = length - i;
        uint32_t three = (uint32_t)bytes[i] << 16;
        three |= left > 1 ? (uint32_t)bytes[i + 1] << 8 : 0;
        three |= left > 2 ? (uint32_t)bytes[i + 2] : 0;
        out[at++] = pack_signs[three >> 18 & 63];
        out[at++] = pack_signs[three >> 12 & 63];
        out[at++] = left > 1 ? pack_signs[three >> 6 & 63] : '=';
        out[at++] = left > 2 ? pack_signs[three & 63] : '=';
    }
    return out;
}

/* The value of one sign; -1: it is none. */
static int sign_value(char sign)
{
    const char *at = sign == '\0' ? NULL : strchr(pack_signs, sign);
    return at == NULL ? -1 : (int)(at - pack_signs);
}

/* NULL: these are not the signs of whole bytes. */
static unsigned char *base64_read(const char *text, struct arena *arena, size_t *length)
{
    size_t signs = strlen(text), ends = 0, at = 0;
    unsigned char *out = arena_alloc(arena, signs / 4 * 3 + 3);
    *length = 0;
    if (signs == 0 || signs % 4 != 0)
        return NULL;
    ends = text_ends(text, "==") ? 2 : text_ends(text, "=") ? 1 : 0;
    for (size_t i = 0; i < signs; i += 4) {
        uint32_t three = 0;
        for (size_t k = i; k < i + 4; k++) {
            int value = k >= signs - ends ? 0 : sign_value(text[k]);
            if (value < 0)
                return NULL;
            three = three << 6 | (uint32_t)value;
        }
        out[at++] = (unsigned char)(three >> 16);
        out[at++] = (unsigned char)(three >> 8 & 255);
        out[at++] = (unsigned char)(three & 255);
    }
    *length = at - ends;
    return out;
}

const char *content_pack(const char *content, struct arena *arena)
{
    uLong length = (uLong)strlen(content);
    uLongf room = compressBound(length);
    unsigned char *out = arena_alloc(arena, room);
    if (compress2(out, &room, (const Bytef *)content, length, Z_BEST_COMPRESSION) != Z_OK)
        arena_exhausted();    /* with room enough, nothing else can stop it */
    return base64_write(out, room, arena);
}

/* Four times the room until it is enough. */
const char *content_unpack(const char *packed, struct arena *arena)
{
    size_t length;
    const unsigned char *bytes = base64_read(packed, arena, &length);
    for (size_t room = CONTENT_ROOM; bytes != NULL && room <= CONTENT_MOST; room *= 4) {
        uLongf got = (uLongf)room;
        char *out = arena_alloc(arena, room + 1);
        int result = uncompress((Bytef *)out, &got, bytes, (uLong)length);
        if (result == Z_OK)
            return memchr(out, '\0', got) == NULL ? out : NULL;
        if (result != Z_BUF_ERROR)
            return NULL;
    }
    return NULL;
}
